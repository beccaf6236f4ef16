package ruleset

import (
	"fmt"
	"slices"
	"strings"

	"sunclause/engine/catalogue"
	"sunclause/schema"
)

// cardProblems holds one card to the facts and parameters that there are.
type cardProblems struct {
	set   *RuleSet
	src   *schema.Source
	found schema.Problems
}

func (p *cardProblems) add(at, what, remedy string) {
	p.found = append(p.found, p.src.ProblemAt(at, what, remedy))
}

func (p *cardProblems) check(c cardFile, r *Requirement) {
	k, ok := catalogue.Of(r.Subject)
	if !ok {
		p.add(c.Subject.At(), fmt.Sprintf("there are no facts called %q", r.Subject), catalogue.DidYouMean(r.Subject, catalogue.Names()))
		return
	}
	if c.Measure.Stated() || !r.Rego {
		p.comparison(k, c.Measure, c.Comparison, c.Limit, r.Rego)
	}
	for _, w := range c.When {
		p.comparison(k, w.Fact, w.Comparison, w.Limit, false)
	}
	if c.Since.Stated() && c.Until.Stated() && c.Since.Value > c.Until.Value {
		p.add(c.Until.At(), "the last day is before the first", "look at since and until")
	}
	if r.Rego && !c.Broken.Stated() && !c.Measure.Stated() {
		p.add(c.At(), "the card says neither what is measured nor what is wrong when the rule speaks", `add measure, or broken: "…"`)
	}
}

// comparison checks one comparison of a fact with a limit. A card of a Rego
// rule may show a fact without one.
func (p *cardProblems) comparison(k *catalogue.Subject, fact, comparison schema.Text, limit operandFile, shownOnly bool) {
	f, ok := p.fact(k, fact)
	if !ok || shownOnly && !comparison.Stated() && !limit.Stated() {
		return
	}
	if f.Kind == catalogue.Text && slices.Contains([]string{"since", "until"}, comparison.Value) && !strings.HasSuffix(fact.Value, "date") {
		p.add(comparison.At(), fmt.Sprintf("%s is no date, which cannot be compared by %q", fact.Value, comparison.Value), "it can be compared by equals, differs, one_of, none_of")
		return
	}
	if !f.Kind.Allows(comparison.Value) {
		p.add(comparison.At(), fmt.Sprintf("%s is a %s, which cannot be compared by %q", fact.Value, f.Kind, comparison.Value), "it can be compared by "+strings.Join(f.Kind.Comparisons(), ", "))
		return
	}
	want := f.Kind
	if want == catalogue.List {
		want = catalogue.Text // a list is asked for one of its words
	}
	p.limit(k, want, comparison.Value, limit)
}

// fact finds a fact of the subject, or of the installation when it is named so.
func (p *cardProblems) fact(k *catalogue.Subject, name schema.Text) (*catalogue.Fact, bool) {
	of, f, ok := k.Find(name.Value)
	if !ok {
		own := strings.TrimPrefix(name.Value, catalogue.Whole+".")
		p.add(name.At(), fmt.Sprintf("%s have no fact called %q", of.Name, own), catalogue.DidYouMean(own, of.FactNames()))
	}
	return f, ok
}

// limit checks that a limit is given in one way, and is of the fact's kind.
func (p *cardProblems) limit(k *catalogue.Subject, want catalogue.Kind, comparison string, limit operandFile) {
	ways := 0
	for _, given := range []bool{limit.Value != nil, limit.Fact.Stated(), limit.Parameter.Stated()} {
		if given {
			ways++
		}
	}
	if ways != 1 {
		p.add(limit.At(), "a limit is one of value, fact and parameter", "give exactly one of the three")
		return
	}
	switch {
	case limit.Fact.Stated():
		if f, ok := p.fact(k, limit.Fact); ok && f.Kind != want {
			p.add(limit.Fact.At(), fmt.Sprintf("%s is a %s and cannot limit a %s", limit.Fact.Value, f.Kind, want), "")
		}
	case limit.Parameter.Stated():
		p.parameter(want, limit.Parameter)
	default:
		p.value(want, comparison, limit)
	}
}

func (p *cardProblems) parameter(want catalogue.Kind, name schema.Text) {
	b, ok := p.set.Book.Parameters[name.Value]
	switch {
	case !ok:
		p.add(name.At(), fmt.Sprintf("the rule set has no parameter %q", name.Value), catalogue.DidYouMean(name.Value, p.set.parameterNames()))
	case b.IsText != (want == catalogue.Text):
		p.add(name.At(), fmt.Sprintf("parameter %q cannot limit a %s", name.Value, want), "")
	}
}

func (p *cardProblems) value(want catalogue.Kind, comparison string, limit operandFile) {
	var got catalogue.Kind
	switch Plain(limit.Value).(type) {
	case float64:
		got = catalogue.Number
	case string:
		got = catalogue.Text
	case bool:
		got = catalogue.Flag
	case []string:
		got = catalogue.List
	}
	if slices.Contains([]string{"since", "until"}, comparison) {
		if day, _ := Plain(limit.Value).(string); !schema.IsDay(day) {
			p.add(limit.At()+"/value", fmt.Sprintf("the limit does not suit the comparison %q", comparison), "it needs a day here, as 2026-03-02")
		}
		return
	}
	ofMany := slices.Contains([]string{"one_of", "none_of"}, comparison)
	if ofMany && got != catalogue.List || !ofMany && got != want {
		needs := want
		if ofMany {
			needs = "list of words"
		}
		p.add(limit.At()+"/value", fmt.Sprintf("the limit does not suit the comparison %q", comparison), fmt.Sprintf("it needs a %s here", needs))
	}
}
