package ruleset

import (
	"encoding/json"
	"fmt"
	"regexp"
	"slices"
	"strings"

	"sunclause/engine/catalogue"
	"sunclause/schema"
)

// oldCard is a row, or the card of a Rego rule, in the form of older versions: what
// is compared in three members, conditions as objects.
type oldCard struct {
	subject    string
	isRule     bool
	members    map[string]any
	parameters map[string]bool // names that the set and those below it have; nil where they are not known
}

// oldMembers are those that the present form has not.
var oldMembers = []string{"measure", "comparison", "limit"}

// isOld reports whether a row or card is in the older form.
func (o oldCard) isOld() bool {
	has := func(name string) bool { _, ok := o.members[name]; return ok }
	if has("comparison") || has("limit") || has("measure") && !o.isRule {
		return true
	}
	when, _ := o.members["when"].([]any)
	return slices.ContainsFunc(when, func(w any) bool {
		c, ok := w.(map[string]any)
		return ok && c["any_of"] == nil
	})
}

// newForm is a card in the present form, a text for each member; what the card has
// not is "".
type newForm struct {
	stage   string
	when    []string
	place   []int  // of each condition among the old ones
	staged  int    // the place of the condition that became the stage
	compare string // of a row what it requires, of a rule what it measures
}

// upgraded puts the card into the present form.
func (o oldCard) upgraded() (n newForm, err error) {
	when, _ := o.members["when"].([]any)
	for i, w := range when {
		c, isObject := w.(map[string]any)
		if !isObject {
			line, _ := w.(string)
			n.when, n.place = append(n.when, line), append(n.place, i)
			continue
		}
		if stage := o.stage(c); stage != "" && n.stage == "" {
			n.stage, n.staged = stage, i
			continue
		}
		line, err := o.line(c["fact"], c["comparison"], c["limit"])
		if err != nil {
			return n, fmt.Errorf("condition %d: %w", i+1, err)
		}
		n.when, n.place = append(n.when, line), append(n.place, i)
	}
	fact, _ := o.members["measure"].(string)
	switch {
	case fact == "" && o.isRule:
	case o.members["comparison"] == nil && o.isRule:
		n.compare = fact
	default:
		n.compare, err = o.line(fact, o.members["comparison"], o.members["limit"])
	}
	return n, err
}

// stage is what a condition asks the stage of the work to be; "" for any other
// condition.
func (o oldCard) stage(c map[string]any) string {
	own := o.subject == catalogue.Whole && c["fact"] == "stage"
	if c["comparison"] != "equals" || c["fact"] != catalogue.Whole+".stage" && !own {
		return ""
	}
	limit, _ := c["limit"].(map[string]any)
	word, _ := limit["value"].(string)
	if word != "design" && word != "as_built" {
		return ""
	}
	return word
}

// line puts a comparison on one line.
func (o oldCard) line(fact, comparison, limit any) (string, error) {
	name, _ := fact.(string)
	how, _ := comparison.(string)
	to, _ := limit.(map[string]any)
	if name == "" || how == "" || len(to) != 1 {
		return "", fmt.Errorf("it does not say which fact is compared how with one limit")
	}
	if yes, isFlag := to["value"].(bool); isFlag && how == "equals" {
		if yes {
			return name, nil
		}
		return "not " + name, nil
	}
	text, err := o.limit(name, to)
	return name + " " + how + " " + text, err
}

func (o oldCard) limit(fact string, to map[string]any) (string, error) {
	if name, ok := to["fact"].(string); ok {
		if o.isText(fact) || o.mayBeParameter(name) {
			return catalogue.FullName(o.subject, name), nil
		}
		return name, nil
	}
	if name, ok := to["parameter"].(string); ok {
		of, _ := catalogue.Of(o.subject)
		if of != nil {
			if _, isFact := of.Fact(name); isFact || o.isText(fact) {
				return parameterPrefix + name, nil
			}
		}
		return name, nil
	}
	switch v := to["value"].(type) {
	case []any:
		words := make([]string, len(v))
		for i, w := range v {
			words[i] = o.word(fmt.Sprint(w), false)
		}
		return strings.Join(words, " "), nil
	case string:
		return o.word(v, true), nil
	case bool:
		if v {
			return "yes", nil
		}
		return "no", nil
	case json.Number, int, float64:
		return fmt.Sprint(v), nil
	}
	return "", fmt.Errorf("its limit is no number, word, fact or parameter")
}

// mayBeParameter reports whether a word is the name of a parameter, or whether it is
// one is not known: it is then written so that it can be nothing else.
func (o oldCard) mayBeParameter(word string) bool {
	return o.parameters[word] || o.parameters == nil && aName.MatchString(word)
}

var aName = regexp.MustCompile(`^[a-z][a-z0-9_]*$`)

// isText reports whether a fact is a word, or a list of words.
func (o oldCard) isText(fact string) bool {
	of, ok := catalogue.Of(o.subject)
	if !ok {
		return false
	}
	_, f, ok := of.Find(fact)
	return ok && (f.Kind == catalogue.Text || f.Kind == catalogue.List)
}

var bareWord = regexp.MustCompile(`^[\pL\pN_.+/-]+$`)

// word writes a word of a limit: in quotes where it would else be the name of
// something, or several words.
func (o oldCard) word(word string, mayBeName bool) string {
	of, _ := catalogue.Of(o.subject)
	isName := o.mayBeParameter(word)
	if of != nil && mayBeName {
		f, isFact := of.Fact(word)
		isName = isName || isFact && f.Kind == catalogue.Text
	}
	if bareWord.MatchString(word) && !(mayBeName && isName) && !beginsAsName(word) {
		return word
	}
	return inQuotes(word)
}

// says writes the new members on one line, for those who are told of them.
func (n newForm) says(isRule bool) string {
	var members []string
	if n.stage != "" {
		members = append(members, "stage: "+n.stage)
	}
	if len(n.when) > 0 {
		members = append(members, "when: "+flowList(n.when))
	}
	if n.compare != "" {
		members = append(members, compareMember(isRule)+": "+yamlText(n.compare, false))
	}
	return strings.Join(members, ", ")
}

func compareMember(isRule bool) string {
	if isRule {
		return "measure"
	}
	return "require"
}

// flowList writes lines as a list in brackets.
func flowList(lines []string) string {
	each := make([]string, len(lines))
	for i, l := range lines {
		each[i] = yamlText(l, true)
	}
	return "[" + strings.Join(each, ", ") + "]"
}

var (
	plainYAML     = regexp.MustCompile(`^[\pL_][^\n\\]*$`)
	notPlain      = regexp.MustCompile(`: | #|:$|^(true|false|null|yes|no|on|off)$`)
	notPlainInRow = regexp.MustCompile(`[\[\]{},]`)
)

// yamlText writes a text as YAML, within brackets or not.
func yamlText(text string, inBrackets bool) string {
	if plainYAML.MatchString(text) && !notPlain.MatchString(text) && !(inBrackets && notPlainInRow.MatchString(text)) {
		return text
	}
	raw, _ := json.Marshal(text) // a text of JSON is one of YAML
	return string(raw)
}

const (
	olderForm   = "this is written in the form of older versions"
	howUpgraded = "sunclause ruleset upgrade FOLDER rewrites a whole set"
)

// oldRows are the rows of a file that are in the older form, each as a problem that
// says what it would be.
func oldRows(src *schema.Source) schema.Problems {
	root, _ := src.Root().(map[string]any)
	rows, _ := root["requirements"].([]any)
	var found schema.Problems
	for i, row := range rows {
		members, _ := row.(map[string]any)
		subject, _ := members["subject"].(string)
		if p := (oldCard{subject: subject, members: members}).problem(src, fmt.Sprintf("/requirements/%d", i)); p != nil {
			found = append(found, *p)
		}
	}
	return found
}

// problem says what an old card would be in the present form; nil when it is not
// old.
func (o oldCard) problem(src *schema.Source, at string) *schema.Problem {
	if !o.isOld() {
		return nil
	}
	what := olderForm
	if n, err := o.upgraded(); err == nil {
		what += "; now it is " + n.says(o.isRule)
	}
	p := src.ProblemAt(at, what, howUpgraded)
	return &p
}
