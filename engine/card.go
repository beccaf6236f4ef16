package engine

import (
	"fmt"
	"slices"
	"strings"

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
	k, ok := subjectKinds[r.Subject]
	if !ok {
		p.add(c.Subject.At(), fmt.Sprintf("there are no facts called %q", r.Subject), orElse(r.Subject, subjectNames()))
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
func (p *cardProblems) comparison(k subjectKind, fact, comparison schema.Text, limit operandFile, shownOnly bool) {
	f, ok := p.fact(k, fact)
	if !ok || shownOnly && !comparison.Stated() && !limit.Stated() {
		return
	}
	if f.kind == aText && slices.Contains([]string{"since", "until"}, comparison.Value) && !strings.HasSuffix(fact.Value, "date") {
		p.add(comparison.At(), fmt.Sprintf("%s is no date, which cannot be compared by %q", fact.Value, comparison.Value), "it can be compared by equals, differs, one_of, none_of")
		return
	}
	if !allows(f.kind, comparison.Value) {
		p.add(comparison.At(), fmt.Sprintf("%s is a %s, which cannot be compared by %q", fact.Value, f.kind, comparison.Value), "it can be compared by "+strings.Join(comparisons[f.kind], ", "))
		return
	}
	want := f.kind
	if want == aList {
		want = aText // a list is asked for one of its words
	}
	p.limit(k, want, comparison.Value, limit)
}

// fact finds a fact of the subject, or of the installation when it is named so.
func (p *cardProblems) fact(k subjectKind, name schema.Text) (factField, bool) {
	own, whole := strings.CutPrefix(name.Value, wholeInstallation+".")
	if whole {
		k = subjectKinds[wholeInstallation]
	}
	f, ok := k.byName[own]
	if !ok {
		p.add(name.At(), fmt.Sprintf("%s have no fact called %q", k.name, own), orElse(own, k.names()))
	}
	return f, ok
}

func orElse(word string, candidates []string) string {
	if near := schema.Nearest(word, candidates); near != "" {
		return fmt.Sprintf("did you mean %q?", near)
	}
	if more := len(candidates) - mostNamed; more > 0 {
		return fmt.Sprintf("there are %s and %d more; docs/facts.md lists facts, sunclause rules figures", strings.Join(candidates[:mostNamed], ", "), more)
	}
	return "there are " + strings.Join(candidates, ", ")
}

// mostNamed is how many names a message lists where none is near.
const mostNamed = 20

// limit checks that a limit is given in one way, and is of the fact's kind.
func (p *cardProblems) limit(k subjectKind, want kind, comparison string, limit operandFile) {
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
		if f, ok := p.fact(k, limit.Fact); ok && f.kind != want {
			p.add(limit.Fact.At(), fmt.Sprintf("%s is a %s and cannot limit a %s", limit.Fact.Value, f.kind, want), "")
		}
	case limit.Parameter.Stated():
		p.parameter(want, limit.Parameter)
	default:
		p.value(want, comparison, limit)
	}
}

func (p *cardProblems) parameter(want kind, name schema.Text) {
	b, ok := p.set.Book.Parameters[name.Value]
	switch {
	case !ok:
		p.add(name.At(), fmt.Sprintf("the rule set has no parameter %q", name.Value), orElse(name.Value, p.set.parameterNames()))
	case b.IsText != (want == aText):
		p.add(name.At(), fmt.Sprintf("parameter %q cannot limit a %s", name.Value, want), "")
	}
}

func (p *cardProblems) value(want kind, comparison string, limit operandFile) {
	var got kind
	switch plainValue(limit.Value).(type) {
	case float64:
		got = aNumber
	case string:
		got = aText
	case bool:
		got = aFlag
	case []string:
		got = aList
	}
	if slices.Contains([]string{"since", "until"}, comparison) {
		if day, _ := plainValue(limit.Value).(string); !schema.IsDay(day) {
			p.add(limit.At()+"/value", fmt.Sprintf("the limit does not suit the comparison %q", comparison), "it needs a day here, as 2026-03-02")
		}
		return
	}
	ofMany := slices.Contains([]string{"one_of", "none_of"}, comparison)
	if ofMany && got != aList || !ofMany && got != want {
		needs := want
		if ofMany {
			needs = "list of words"
		}
		p.add(limit.At()+"/value", fmt.Sprintf("the limit does not suit the comparison %q", comparison), fmt.Sprintf("it needs a %s here", needs))
	}
}
