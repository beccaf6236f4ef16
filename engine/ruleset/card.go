package ruleset

import (
	"fmt"

	"sunclause/engine/catalogue"
	"sunclause/schema"
)

// cardProblems holds one card to the facts, parameters and tables that there are.
type cardProblems struct {
	set   *RuleSet
	src   *schema.Source
	found schema.Problems
}

func (p *cardProblems) add(at, what, remedy string) {
	p.found = append(p.found, p.src.ProblemAt(at, what, remedy))
}

// check reads what a card compares into the requirement.
func (p *cardProblems) check(c cardFile, r *Requirement) {
	of, ok := catalogue.Of(r.Subject)
	if !ok {
		p.add(c.Subject.At(), fmt.Sprintf("there are no facts called %q", r.Subject), catalogue.DidYouMean(r.Subject, catalogue.Names()))
		return
	}
	if r.Rego {
		r.Condition = p.shown(of, c.Measure)
	} else {
		r.Condition = p.condition(of, c.Pointer.Member("require"), c.Require)
	}
	r.When = c.stage()
	for i, w := range c.When {
		r.When = append(r.When, p.condition(of, fmt.Sprintf("%s/%d", c.Pointer.Member("when"), i), w))
	}
	r.When = append(r.When, c.term()...)
	if c.Since.Stated() && c.Until.Stated() && c.Since.Value > c.Until.Value {
		p.add(c.Until.At(), "the last day is before the first", "look at since and until")
	}
	if r.Rego && !c.Broken.Stated() && !c.Measure.Stated() {
		p.add(c.At(), "the card says neither what is measured nor what is wrong when the rule speaks", `add measure, or broken: "…"`)
	}
}

// condition reads one comparison, or a group of which one has to hold.
func (p *cardProblems) condition(of *catalogue.Subject, at string, written any) Condition {
	switch w := written.(type) {
	case string:
		c, _ := p.line(of, at, w)
		return c
	case map[string]any:
		each, _ := w["any_of"].([]any)
		group := Condition{AnyOf: []Condition{}}
		for i, one := range each {
			text, _ := one.(string)
			c, _ := p.line(of, fmt.Sprintf("%s/any_of/%d", at, i), text)
			group.AnyOf = append(group.AnyOf, c)
		}
		return group
	}
	p.add(at, "nothing is compared", "write one comparison, as voc_max_v at_most 600, or any_of with a list of such")
	return Condition{}
}

// shown reads what the card of a Rego rule shows beside its outcome: a fact, or a
// comparison, which decides nothing there.
func (p *cardProblems) shown(of *catalogue.Subject, measure schema.Text) Condition {
	if !measure.Stated() {
		return Condition{}
	}
	if words := wordsOf(measure.Value); len(words) == 1 {
		r := &lineReader{cardProblems: p, of: of, at: measure.At(), words: words}
		f, _ := r.fact(0, words[0].text)
		return Condition{Fact: f.name}
	}
	c, _ := p.line(of, measure.At(), measure.Value)
	return c
}
