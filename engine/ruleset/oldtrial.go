package ruleset

import (
	"encoding/json"
	"fmt"
	"reflect"
	"slices"
	"strings"

	"sunclause/schema"
)

// oldTrial is a requirement with its cases in the form of older versions, in which
// each case had all facts.
type oldTrial struct {
	id    string
	cases []oldCase
	notes notes
}

// oldCase is a case of it.
type oldCase struct {
	says    string
	outcome string
	facts   givenFacts
	others  string // other parts, as a text of YAML; "" where there are none
	notes   notes
}

// givenFacts are the facts of a case in the order of the text, those of the
// installation behind its name, each as a text of YAML.
type givenFacts []givenFact

type givenFact struct{ name, value string }

// notes are the comments on something: the lines above it, and what stands beside.
type notes struct {
	above  []string
	beside string
}

func (g givenFacts) value(name string) (string, bool) {
	i := slices.IndexFunc(g, func(f givenFact) bool { return f.name == name })
	if i < 0 {
		return "", false
	}
	return g[i].value, true
}

// oldTrials reads the tests of requirements in a file, where they are in the older
// form. A requirement that is tried in several places has all its cases at the
// first.
func oldTrials(src *schema.Source) []oldTrial {
	root, _ := src.Root().(map[string]any)
	list, _ := root["requirements"].([]any)
	var all []oldTrial
	for i, one := range list {
		members, _ := one.(map[string]any)
		id, _ := members["requirement"].(string)
		cases, _ := members["cases"].([]any)
		if id == "" {
			return nil
		}
		t := oldTrial{id: id}
		for j, c := range cases {
			t.cases = append(t.cases, oldCaseAt(src, fmt.Sprintf("/requirements/%d/cases/%d", i, j), c))
		}
		all = append(all, t)
	}
	return all
}

func oldCaseAt(src *schema.Source, at string, one any) oldCase {
	members, _ := one.(map[string]any)
	c := oldCase{}
	c.says, _ = members["says"].(string)
	c.outcome, _ = members["outcome"].(string)
	for _, of := range []struct{ member, prefix string }{{"facts", ""}, {"installation", "installation."}} {
		values, _ := members[of.member].(map[string]any)
		for _, m := range src.Members(at + "/" + of.member) {
			if m.Name != "id" {
				c.facts = append(c.facts, givenFact{of.prefix + m.Name, flowText(src, at+"/"+of.member+"/"+m.Name, values[m.Name])})
			}
		}
	}
	if others := members["others"]; others != nil {
		c.others = flowText(src, at+"/others", others)
	}
	return c
}

// flowText writes a value as YAML within brackets.
func flowText(src *schema.Source, at string, v any) string {
	switch v := v.(type) {
	case string:
		return yamlText(v, true)
	case []any:
		each := make([]string, len(v))
		for i, one := range v {
			each[i] = flowText(src, fmt.Sprintf("%s/%d", at, i), one)
		}
		return "[" + strings.Join(each, ", ") + "]"
	case map[string]any:
		var each []string
		for _, m := range src.Members(at) {
			each = append(each, m.Name+": "+flowText(src, at+"/"+m.Name, v[m.Name]))
		}
		return "{" + strings.Join(each, ", ") + "}"
	case json.Number, bool:
		return fmt.Sprint(v)
	}
	return "null"
}

// outcomes are those that a case can have, in the order in which they stand.
var outcomes = []string{"met", "not_met", "not_applicable", "not_shown"}

// newCases are the cases of one outcome in the present form.
type newCases struct {
	outcome string
	cases   []string // each as a text of YAML
	notes   []notes  // of each
}

// changes puts the cases of a requirement into the present form: each says what is
// different from the first that is met, or from the first that is not.
func (t oldTrial) changes() []newCases {
	var all []newCases
	var base *oldCase
	for _, outcome := range outcomes {
		n := newCases{outcome: outcome}
		for _, c := range t.cases {
			if c.outcome != outcome {
				continue
			}
			from := base
			if from == nil {
				from = &oldCase{}
			}
			n.cases, n.notes = append(n.cases, c.changeOf(*from)), append(n.notes, c.notes)
			if base == nil || outcome == "not_met" && len(n.cases) == 1 {
				base = &c
			}
		}
		if len(n.cases) > 0 {
			all = append(all, n)
		}
	}
	return all
}

// changeOf says what is different in a case, as a text of YAML.
func (c oldCase) changeOf(base oldCase) string {
	var changed, without []string
	for _, f := range c.facts {
		if was, had := base.facts.value(f.name); !had || was != f.value {
			changed = append(changed, f.name+": "+f.value)
		}
	}
	for _, f := range base.facts {
		if _, has := c.facts.value(f.name); !has {
			without = append(without, f.name)
		}
	}
	says := c.says
	if c.saidBy(changed, without) {
		says = ""
	}
	if c.others != base.others {
		if c.others == "" {
			c.others = "{}"
		}
		changed = append(changed, "others: "+c.others)
	}
	var members []string
	if says != "" {
		members = append(members, "says: "+yamlText(says, true))
	}
	switch {
	case len(without) == 1 && says == "" && len(changed) == 0:
		return without[0]
	case len(without) == 1:
		members = append(members, "without: "+without[0])
	case len(without) > 1:
		members = append(members, "without: ["+strings.Join(without, ", ")+"]")
	}
	return "{" + strings.Join(append(members, changed...), ", ") + "}"
}

// plainWords say nothing that a change does not say itself.
var plainWords = strings.Fields("at the limit just past above below beyond exactly so as required not known otherwise no yes also one more only is it")

// saidBy reports whether what a case says of itself is said by what is different in
// it: every word of it is one of theirs, or a plain one.
func (c oldCase) saidBy(changed, without []string) bool {
	apart := func(r rune) bool { return strings.ContainsRune(" _.,:;\"'[]-", r) }
	theirs := strings.FieldsFunc(strings.ToLower(strings.Join(append(changed, without...), " ")), apart)
	return !slices.ContainsFunc(strings.FieldsFunc(strings.ToLower(c.says), apart), func(word string) bool {
		return !slices.Contains(theirs, word) && !slices.Contains(plainWords, word)
	})
}

// OldTrials are the tests of requirements in a file that are in the older form, each
// as a problem that says what it would be.
func OldTrials(src *schema.Source) schema.Problems {
	var found schema.Problems
	for i, t := range oldTrials(src) {
		found = append(found, src.ProblemAt(fmt.Sprintf("/requirements/%d", i),
			"this is written in the form of older versions; now it is "+t.line(), "sunclause ruleset upgrade FOLDER rewrites a whole set"))
	}
	return found
}

// line is the requirement with its cases on one line.
func (t oldTrial) line() string {
	var each []string
	for _, n := range t.changes() {
		each = append(each, n.line())
	}
	return t.id + ": {" + strings.Join(each, ", ") + "}"
}

func (n newCases) line() string {
	if len(n.cases) == 1 {
		return n.outcome + ": " + n.cases[0]
	}
	return n.outcome + ": [" + strings.Join(n.cases, ", ") + "]"
}

func (n newCases) hasNotes() bool {
	return slices.ContainsFunc(n.notes, func(of notes) bool { return !reflect.DeepEqual(of, notes{}) })
}
