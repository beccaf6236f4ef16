package ruleset

import (
	"fmt"
	"regexp"
	"slices"
	"strconv"
	"strings"

	"sunclause/engine/catalogue"
	"sunclause/schema"
)

// A comparison is one line, in a row as in the card of a Rego rule:
//
//	fuse_fitted
//	not bypassed
//	voc_max_v at_most inverter_dc_voltage_max_v
//	service one_of pv_string pv_array
//	fuse_rated_a at_least fuse_factor times isc_stc_a
//	loop_ohm at_most external_loop_maxima.loop_ohm where arrangement equals arrangement
//
// What a name stands for is decided by what there is of that name. One that could
// be two things is refused; SUBJECT.fact, installation.fact, parameters.name and
// 'a word in quotes' say which is meant.

// parameterPrefix stands before the name of a parameter where it must be told
// from something else.
const parameterPrefix = "parameters."

// lineReader reads one comparison about a subject.
type lineReader struct {
	*cardProblems
	of    *catalogue.Subject
	at    string // JSON pointer of the text
	words []lineWord
	next  int
}

// lineWord is one word of a line. In quotes it is itself, and never a name.
type lineWord struct {
	text    string
	quoted  bool
	written string
}

var lineWords = regexp.MustCompile(`'[^']*'|"[^"]*"|\S+`)

func wordsOf(text string) []lineWord {
	var words []lineWord
	for _, w := range lineWords.FindAllString(text, -1) {
		one := lineWord{w, false, w}
		if n := len(w); n > 1 && (w[0] == '\'' || w[0] == '"') && w[n-1] == w[0] {
			one.text, one.quoted = w[1:n-1], true
		}
		words = append(words, one)
	}
	return words
}

// line reads the text of one comparison; ok is false when it was refused.
func (p *cardProblems) line(of *catalogue.Subject, at, text string) (c Condition, ok bool) {
	before := len(p.found)
	r := &lineReader{cardProblems: p, of: of, at: at, words: wordsOf(text)}
	c = r.comparison()
	if len(p.found) == before && r.next < len(r.words) {
		r.refuse(r.next, fmt.Sprintf("%s is one word too many", r.words[r.next].written), "a word with spaces in it stands in quotes")
	}
	return c, len(p.found) == before
}

// refuse makes a problem of one word of the line; of the last, where there is no
// such word.
func (r *lineReader) refuse(word int, what, remedy string) {
	var upTo []string
	for _, w := range r.words[:min(word+1, len(r.words))] {
		upTo = append(upTo, w.written)
	}
	r.found = append(r.found, r.src.ProblemAtWord(r.at, upTo, what, remedy))
}

// take takes the next word; "" at the end of the line.
func (r *lineReader) take() lineWord {
	r.next++
	if r.next > len(r.words) {
		return lineWord{}
	}
	return r.words[r.next-1]
}

// takes takes the next word if it is a certain one.
func (r *lineReader) takes(word string) bool {
	if r.next < len(r.words) && r.words[r.next].written == word {
		r.next++
		return true
	}
	return false
}

func (r *lineReader) left() int { return len(r.words) - r.next }

func (r *lineReader) comparison() Condition {
	negated := r.takes("not")
	if r.left() == 0 {
		r.refuse(r.next, "nothing is compared", "name a fact, how it must stand, and to what, as in voc_max_v at_most 600")
		return Condition{}
	}
	c := Condition{Fact: r.take().text, Comparison: "equals", Limit: Operand{Value: !negated}}
	f, ok := r.fact(r.next-1, c.Fact)
	if !ok {
		return c
	}
	c.Fact = f.name
	if negated || r.left() == 0 {
		if f.Kind != catalogue.Flag {
			r.refuse(r.next-1, fmt.Sprintf("%s is a %s, which does not stand alone", c.Fact, f.Kind), "say how it must stand to what: "+strings.Join(f.Kind.Comparisons(), ", "))
		}
		return c
	}
	c.Comparison = r.take().text
	if r.allowed(f) {
		c.Limit = r.limit(f, c.Comparison)
	}
	return c
}

// namedFact is a fact with the name that rows have for it.
type namedFact struct {
	*catalogue.Fact
	name string
}

// fact finds a fact of the subject, or of the installation when it is named so.
func (r *lineReader) fact(word int, name string) (namedFact, bool) {
	name = strings.TrimPrefix(name, r.of.Name+".")
	of, f, ok := r.of.Find(name)
	if !ok {
		own := strings.TrimPrefix(name, catalogue.Whole+".")
		r.refuse(word, fmt.Sprintf("%s have no fact called %q", of.Name, own), catalogue.DidYouMean(own, of.FactNames()))
	}
	return namedFact{f, name}, ok
}

// allowed reports whether the comparison just taken is one for facts of the kind.
func (r *lineReader) allowed(f namedFact) bool {
	how := r.words[r.next-1].written
	if all := catalogue.Comparisons(); !slices.Contains(all, how) {
		r.refuse(r.next-1, fmt.Sprintf("%q is no comparison", how), catalogue.DidYouMean(how, all))
		return false
	}
	allows := f.Kind.Comparisons()
	if f.Kind == catalogue.Text && !strings.HasSuffix(f.name, "date") {
		allows = slices.DeleteFunc(slices.Clone(allows), isOfDays)
	}
	if !slices.Contains(allows, how) {
		what := fmt.Sprintf("%s is a %s, which cannot be compared by %q", f.name, f.Kind, how)
		if isOfDays(how) {
			what = fmt.Sprintf("%s is no date, which cannot be compared by %q", f.name, how)
		}
		r.refuse(r.next-1, what, "it can be compared by "+strings.Join(allows, ", "))
		return false
	}
	return true
}

func isOfDays(how string) bool { return how == "since" || how == "until" }

// limit reads what a fact is compared with.
func (r *lineReader) limit(f namedFact, how string) Operand {
	want := f.Kind
	if want == catalogue.List {
		want = catalogue.Text // a list is asked for one of its words
	}
	if r.left() == 0 {
		r.refuse(r.next-1, fmt.Sprintf("%s is compared with nothing", f.name), "add the limit: a number, a word, a fact or a parameter")
		return Operand{}
	}
	if how == "one_of" || how == "none_of" {
		return r.list(want)
	}
	var factor *Factor
	if r.left() > 1 && r.words[r.next+1].written == "times" {
		factor = r.factor(want)
	}
	var limit Operand
	if r.left() > 1 && r.words[r.next+1].written == "where" {
		limit = r.cell(f)
	} else {
		limit = r.operand(want, how)
	}
	limit.Factor = factor
	return limit
}

// list reads the words or numbers of a one_of.
func (r *lineReader) list(want catalogue.Kind) Operand {
	var words []string
	var numbers []float64
	for r.left() > 0 {
		w := r.take()
		if strings.HasSuffix(w.written, ",") {
			r.refuse(r.next-1, fmt.Sprintf("%q ends in a comma", w.written), "words of a list stand one after the other, without commas")
			break
		}
		if !w.quoted && beginsAsName(w.text) {
			r.refuse(r.next-1, fmt.Sprintf("%s is a name, and a list has none", w.text), "write out the words or numbers; a word that begins so stands in quotes")
			break
		}
		words = append(words, w.text)
		if want == catalogue.Number {
			n, isNumber := r.number(w)
			if !isNumber {
				r.refuse(r.next-1, fmt.Sprintf("%s is no number", w.written), "a number is compared with numbers here")
				break
			}
			numbers = append(numbers, n)
		}
	}
	if want == catalogue.Number {
		return Operand{Value: numbers}
	}
	return Operand{Value: words}
}

var plainNumber = regexp.MustCompile(`^-?[0-9]{1,15}(\.[0-9]{1,15})?([eE][+-]?[0-9]{1,2})?$`)

func (r *lineReader) number(w lineWord) (float64, bool) {
	if w.quoted || !plainNumber.MatchString(w.text) {
		return 0, false
	}
	n, err := strconv.ParseFloat(w.text, 64)
	return n, err == nil
}

// factor reads what stands before times.
func (r *lineReader) factor(want catalogue.Kind) *Factor {
	w := r.take()
	r.next++ // times
	if n, ok := r.number(w); ok && want == catalogue.Number {
		return &Factor{Number: n}
	}
	name := strings.TrimPrefix(w.text, parameterPrefix)
	b, ok := r.set.Book.Parameters[name]
	switch {
	case want != catalogue.Number:
		r.refuse(r.next-1, fmt.Sprintf("a %s has no factor", want), "only a number is taken times another")
	case !ok:
		r.refuse(r.next-2, fmt.Sprintf("%q is neither a number nor a parameter", w.text), catalogue.DidYouMean(name, r.set.parameterNames()))
	case b.IsText:
		r.refuse(r.next-2, fmt.Sprintf("parameter %q is a word and no factor", name), "")
	}
	return &Factor{Parameter: name}
}

// operand reads a limit of one word: what stands for itself, or a name.
func (r *lineReader) operand(want catalogue.Kind, how string) Operand {
	w := r.take()
	at := r.next - 1
	switch plain, isPlain := r.plain(w, want); {
	case isPlain && (want != catalogue.Text || w.quoted && !isOfDays(how)):
		return Operand{Value: plain}
	case w.quoted && want != catalogue.Text:
		r.refuse(at, fmt.Sprintf("%s is a word", w.written), fmt.Sprintf("it needs a %s here", want))
		return Operand{}
	}
	meanings := r.meanings(w.text, want, how)
	switch {
	case len(meanings) == 1:
		return meanings[0].operand
	case len(meanings) == 0 && isOfDays(how):
		r.refuse(at, fmt.Sprintf("the limit does not suit the comparison %q", how), "it needs a day here, as 2026-03-02")
	case len(meanings) > 1:
		ways := make([]string, len(meanings))
		for i, m := range meanings {
			ways[i] = fmt.Sprintf("%s for the %s", m.written, m.what)
		}
		r.refuse(at, fmt.Sprintf("%q could be the %s or the %s", w.text, meanings[0].what, meanings[1].what), "write "+strings.Join(ways, ", "))
	default:
		r.unknownLimit(at, w.text, want)
	}
	return Operand{}
}

// plain is a word that stands for itself: a number, yes or no, or, where words
// are compared, any.
func (r *lineReader) plain(w lineWord, want catalogue.Kind) (any, bool) {
	switch want {
	case catalogue.Number:
		return r.number(w)
	case catalogue.Flag:
		yes, ok := map[string]bool{"yes": true, "true": true, "no": false, "false": false}[w.text]
		return yes, ok
	}
	return w.text, true
}

// meaning is one of the things that a name can stand for.
type meaning struct {
	what    string
	written string // so that it can be nothing else
	operand Operand
}

// beginsAsName reports whether a word begins as names do, with parameters or the
// name of a list of facts and a dot. Without quotes it is then never a word that
// stands for itself, so that a misspelt name is not taken for one.
func beginsAsName(word string) bool {
	first, _, dotted := strings.Cut(word, ".")
	_, isList := catalogue.Of(first)
	return dotted && (isList || first+"." == parameterPrefix)
}

// meanings lists what a name can stand for as a limit of a kind.
func (r *lineReader) meanings(name string, want catalogue.Kind, how string) []meaning {
	var all []meaning
	plainName := strings.TrimPrefix(name, r.of.Name+".")
	if _, f, ok := r.of.Find(plainName); ok && f.Kind == want {
		all = append(all, meaning{"fact", catalogue.FullName(r.of.Name, plainName), Operand{Fact: plainName}})
	}
	parameter := strings.TrimPrefix(name, parameterPrefix)
	if b, ok := r.set.Book.Parameters[parameter]; ok && b.IsText == (want == catalogue.Text) && want != catalogue.Flag {
		all = append(all, meaning{"parameter", parameterPrefix + parameter, Operand{Parameter: parameter}})
	}
	if want == catalogue.Text && !beginsAsName(name) && (!isOfDays(how) || schema.IsDay(name)) {
		all = append(all, meaning{"word", "'" + name + "'", Operand{Value: name}})
	}
	return all
}

// unknownLimit refuses a limit that stands for nothing of the kind.
func (r *lineReader) unknownLimit(at int, name string, want catalogue.Kind) {
	own := strings.TrimPrefix(name, r.of.Name+".")
	of, f, isFact := r.of.Find(own)
	parameter, named := strings.CutPrefix(name, parameterPrefix)
	_, isParameter := r.set.Book.Parameters[parameter]
	switch {
	case isFact:
		r.refuse(at, fmt.Sprintf("%s is a %s and cannot limit a %s", name, f.Kind, want), "")
	case isParameter:
		r.refuse(at, fmt.Sprintf("parameter %q cannot limit a %s", parameter, want), "")
	case named:
		r.refuse(at, fmt.Sprintf("the rule set has no parameter %q", parameter), catalogue.DidYouMean(parameter, r.set.parameterNames()))
	case of != r.of || own != name:
		own = strings.TrimPrefix(own, catalogue.Whole+".")
		r.refuse(at, fmt.Sprintf("%s have no fact called %q", of.Name, own), catalogue.DidYouMean(own, of.FactNames()))
	default:
		var names []string
		for _, f := range r.of.Facts {
			if f.Kind == want {
				names = append(names, f.Name)
			}
		}
		if want != catalogue.Flag {
			names = append(names, r.set.parameterNames()...)
		}
		r.refuse(at, fmt.Sprintf("%q is no %s, nor the name of a fact or parameter that is one", name, want), nearestOrNothing(name, names))
	}
}

func nearestOrNothing(name string, names []string) string {
	if near := schema.Nearest(name, names); near != "" {
		return fmt.Sprintf("did you mean %q?", near)
	}
	return "docs/facts.md lists facts, sunclause rules figures"
}
