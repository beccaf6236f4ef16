package judge

import (
	"fmt"
	"reflect"
	"slices"
	"strconv"
	"strings"

	"sunclause/engine/catalogue"
	"sunclause/facts/working"
)

// Describe puts a judgment into one line: what was measured against what is allowed.
func (j Judgment) Describe() string {
	switch {
	case j.Outcome == NotShown:
		return "not shown: " + j.SayMissing()
	case j.Outcome == NotApplicable:
		return "does not apply"
	case j.Message != "":
		return j.Message
	case j.Outcome == NotMet && j.Requirement.Broken != "":
		return j.Requirement.Broken
	case j.Measured == nil:
		return strings.ReplaceAll(string(j.Outcome), "_", " ")
	}
	return j.sayMeasured()
}

// SayMissing says why a requirement is not shown, or why it is not known whether one
// applies that holds either way.
func (j Judgment) SayMissing() string { return working.Spoken(j.Missing) }

// allowedWords say how a value must stand to its limit.
var allowedWords = map[string]string{
	"at_most": "at most", "at_least": "at least", "below": "below", "above": "above",
	"equals": "", "differs": "anything but", "one_of": "one of", "none_of": "none of",
	"since": "on or after", "until": "on or before", "includes": "one that includes", "lacks": "one without",
}

func (j Judgment) sayMeasured() string {
	c := j.Compared()
	about := shortWords(catalogue.Words(j.Requirement.Subject, c.Fact))
	if j.Limit == nil || c.Comparison == "" {
		return about + ": " + write(*j.Measured, decimals)
	}
	value, limit := pair(*j.Measured, *j.Limit)
	allowed := strings.TrimSpace(allowedWords[c.Comparison] + " " + limit)
	if place := j.otherPlace(); place != "" {
		allowed += ", by " + working.SpokenPlace(place)
	}
	says := fmt.Sprintf("%s: %s; allowed %s%s", about, value, allowed, sayMargin(j))
	for _, other := range j.others {
		says += "; or else " + other.sayMeasured()
	}
	return says
}

// otherPlace is where another word stands or comes from with which a word of the part
// should agree and does not; "" where it is only the part itself that says so.
func (j Judgment) otherPlace() string {
	subject, known := catalogue.Of(j.Requirement.Subject)
	if c := j.Compared(); j.Outcome != NotMet || c.Comparison != "equals" || !known || !j.facts.Known() {
		return ""
	}
	f, own := subject.Fact(j.Compared().Limit.Fact)
	if !own || f.Kind != catalogue.Text {
		return ""
	}
	at := j.facts.Word(f).At()
	if m, own := subject.Fact(j.Compared().Fact); at == j.Subject.At || own && m.Kind == catalogue.Text && j.facts.Word(m).At() == at {
		return ""
	}
	return at
}

// ValueAndLimit are what was measured and what is allowed, each in a few words;
// "" where it is not known or there is none.
func (j Judgment) ValueAndLimit() (value, limit string) {
	allowed := allowedWords[j.Compared().Comparison]
	switch {
	case j.Measured != nil && j.Limit != nil:
		value, limit = pair(*j.Measured, *j.Limit)
	case j.Measured != nil:
		value = write(*j.Measured, decimals)
	case j.Limit != nil:
		limit = write(*j.Limit, decimals)
	}
	if limit != "" {
		limit = strings.TrimSpace(allowed + " " + limit)
	}
	return value, limit
}

// About says in a few words what a value that is a word, yes or no is about; ""
// for a number, whose requirement already says it.
func (j Judgment) About() string {
	if j.Measured == nil {
		return ""
	}
	if _, number := j.Measured.Value.(float64); number {
		return ""
	}
	return shortWords(catalogue.Words(j.Requirement.Subject, j.Compared().Fact))
}

// decimals is how many a quantity is shown with at the most.
const decimals = 2

// shortWords is the head of what a fact is: up to the first pause.
func shortWords(words string) string {
	if i := strings.IndexAny(words, ":;,"); i > 0 {
		words = words[:i]
	}
	return strings.TrimPrefix(words, "whether ")
}

func sayMargin(j Judgment) string {
	if j.MarginPct == nil {
		return ""
	}
	switch m := *j.MarginPct; {
	case m < 0:
		return fmt.Sprintf(" (%s %% beyond)", short(-m, 1))
	case j.Outcome == Met:
		return fmt.Sprintf(" (%s %% in hand)", short(m, 1))
	}
	return ""
}

// pair writes a value and its limit, numbers with as few decimals as keep them
// apart. Of a long list that is asked for one word, it says whether that is
// among how many.
func pair(a, b Quantity) (value, limit string) {
	if names, long := a.Value.([]string); long && len(names) > mostListed {
		if asked, one := b.Value.(string); one {
			return among(names, asked), asked
		}
	}
	for digits := decimals; digits < 6; digits++ {
		x, y := write(a, digits), write(b, digits)
		if x != y || reflect.DeepEqual(a.Value, b.Value) { // lists cannot be compared by ==
			return x, y
		}
	}
	return write(a, 9), write(b, 9)
}

func among(names []string, asked string) string {
	if slices.Contains(names, asked) {
		return fmt.Sprintf("%s, among %d", asked, len(names))
	}
	return fmt.Sprintf("%d others", len(names))
}

func write(q Quantity, decimals int) string {
	switch v := q.Value.(type) {
	case float64:
		return strings.TrimSpace(short(v, decimals) + " " + q.Unit)
	case bool:
		if v {
			return "yes"
		}
		return "no"
	case string:
		return v
	case []string:
		return Some(v)
	case []float64:
		words := make([]string, len(v))
		for i, n := range v {
			words[i] = short(n, decimals)
		}
		return strings.TrimSpace(Some(words) + " " + q.Unit)
	}
	return ""
}

// mostListed is how many words of a list are named.
const mostListed = 5

// Many counts things: 1 string, 2 strings.
func Many(n int, word string) string { return fmt.Sprintf("%d %s", n, Plural(n, word)) }

// Plural is a word for so many things.
func Plural(n int, word string) string {
	stem, y := strings.CutSuffix(word, "y")
	switch {
	case n == 1:
		return word
	case y:
		return stem + "ies"
	}
	return word + "s"
}

// Some names the first of a list, and says how many more there are.
func Some(names []string) string {
	if len(names) <= mostListed {
		return strings.Join(names, ", ")
	}
	return fmt.Sprintf("%s and %d more", strings.Join(names[:mostListed], ", "), len(names)-mostListed)
}

// short writes a number with at most so many decimals; small numbers get more,
// so that 0.0125 does not become 0.
func short(v float64, decimals int) string {
	if v != 0 && v > -1 && v < 1 {
		decimals += 2
	}
	s := strconv.FormatFloat(v, 'f', decimals, 64)
	if strings.Contains(s, ".") {
		s = strings.TrimRight(strings.TrimRight(s, "0"), ".")
	}
	if s == "-0" {
		s = "0"
	}
	return s
}

// WriteValue writes a value with its unit for people.
func WriteValue(v any, unit string) string {
	if list, ok := v.([]string); ok {
		return strings.Join(list, ", ")
	}
	return write(Quantity{Value: v, Unit: unit}, decimals)
}
