// Package judge holds installations to rule sets. For every requirement and
// every part it is about, it states one of four outcomes: met, not met, not
// shown, not applicable.
package judge

import (
	"cmp"
	"context"
	"fmt"
	"slices"

	"sunclause/engine/catalogue"
	"sunclause/engine/ruleset"
	"sunclause/facts"
	"sunclause/facts/working"
	"sunclause/schema"
)

// Options are the choices of one check.
type Options struct {
	Strict   bool   // a requirement with level should counts as one with shall
	Date     string // day on which departures are held against their term; the design date when empty
	Designed string // day of design, instead of the document's
}

// Result is everything that a check states of one installation.
type Result struct {
	Document  *schema.Document
	RuleSet   *ruleset.RuleSet
	Facts     *facts.Facts
	Unlikely  []Unlikely // numbers at which somebody has to look again, in the order of the document
	Judgments []Judgment // every requirement and every part it is about, in the order of the document
	Unjudged  []Unjudged // what the document states and nothing judges
	Notes     []string   // what the reader should know beside them
	Passes    bool
}

// Check judges one installation by a rule set, whole or not at all: an error
// means that nothing was judged.
func Check(ctx context.Context, set *ruleset.RuleSet, doc *schema.Document, o Options) (*Result, error) {
	in := &doc.Installation
	if o.Designed != "" {
		moved := in.DesignedOn(o.Designed)
		in = &moved
	}
	r, err := Derived(ctx, set, doc, facts.Derive(in, set.Book), o)
	if err == nil && o.Designed != "" {
		r.Notes = append(r.Notes, fmt.Sprintf("judged as if designed on %s; the document says %s", o.Designed, cmp.Or(doc.Installation.Project.DesignDate.Value, "nothing of it")))
	}
	return r, err
}

// Derived judges the facts of an installation, for those who have derived them.
func Derived(ctx context.Context, set *ruleset.RuleSet, doc *schema.Document, f *facts.Facts, o Options) (*Result, error) {
	e, err := newEvaluation(ctx, set, f)
	if err != nil {
		return nil, err
	}
	r := &Result{
		Document: doc, RuleSet: set, Facts: f, Unlikely: unlikely(doc), Judgments: e.judgeAll(doc), Unjudged: unjudged(doc, set), Notes: derivedNotes(f),
	}
	r.depart(o)
	r.Passes = r.passes(o)
	return r, nil
}

// Requirement judges one requirement of a set for every part it is about, where
// there is no document, as in the tests of a rule set.
func Requirement(ctx context.Context, set *ruleset.RuleSet, f *facts.Facts, q *ruleset.Requirement) ([]Judgment, error) {
	e, err := newEvaluation(ctx, set, f)
	if err != nil {
		return nil, err
	}
	of, _ := catalogue.Of(q.Subject)
	var all []Judgment
	for _, b := range e.blocksOf(of, []*ruleset.Requirement{q}, nil) {
		all = e.judgeBlock(b, all)
	}
	return all, nil
}

// passes reports whether nothing binding is left open: an unlikely value, or a
// shall that is not met, and not departed from, or a shall not shown, fails the check.
func (r *Result) passes(o Options) bool {
	if slices.ContainsFunc(r.Unlikely, Unlikely.FailsCheck) {
		return false
	}
	for _, j := range r.Judgments {
		if j.FailsCheck(o.Strict) {
			return false
		}
	}
	return true
}

// Number is the working of what a judgment measured; nil when that is no number.
func (r *Result) Number(j Judgment) *working.Number {
	return r.numberOf(j, j.Compared().Fact)
}

// LimitNumber is the working of the fact that a judgment was held against; nil
// when that is no fact by itself, or no number.
func (r *Result) LimitNumber(j Judgment) *working.Number {
	limit := j.Compared().Limit
	if limit.Factor != nil {
		return nil
	}
	return r.numberOf(j, limit.Fact)
}

func (r *Result) numberOf(j Judgment, fact string) *working.Number {
	own, _ := catalogue.Of(j.Requirement.Subject)
	of, f, ok := own.Find(fact)
	if !ok || !j.facts.Known() {
		return nil
	}
	if of != own {
		whole, _ := of.Parts(r.Facts)
		return whole[0].Working(f)
	}
	return j.facts.Working(f)
}
