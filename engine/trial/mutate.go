package trial

import (
	"context"
	"fmt"
	"iter"
	"math"
	"slices"
	"strings"

	"sunclause/engine/catalogue"
	"sunclause/engine/ruleset"
	"sunclause/facts"
	"sunclause/facts/book"
)

// Mutation is one small change to a rule set that its tests ought to notice.
type Mutation struct {
	Requirement string // or the parameter
	What        string
	File        string
	Line        int
	Noticed     bool
}

// Mutate changes the set's own requirements and parameters one at a time: each
// limit shifted either way, each comparison turned round and moved by the
// limit itself, each condition dropped, each parameter weakened. For each
// change it runs the cases that somebody wrote, never those that were made of the
// row itself, and says whether one of them noticed. What none noticed is tried on
// documents, of which every finding is known; there may be none (nil).
func Mutate(ctx context.Context, set *ruleset.RuleSet, cases []Case, documents iter.Seq[*facts.Facts]) ([]Mutation, error) {
	byID := map[string][]Case{}
	for _, c := range cases {
		if !c.Generated {
			byID[c.Requirement] = append(byID[c.Requirement], c)
		}
	}
	var all []Mutation
	var left []pending
	for _, q := range set.Own() {
		mutants, err := mutants(ctx, set, q)
		if err != nil {
			return nil, err
		}
		for _, m := range mutants {
			noticed, err := m.noticedBy(ctx, byID[q.ID])
			if err != nil {
				return nil, err
			}
			if !noticed {
				left = append(left, pending{m, q, len(all)})
			}
			all = append(all, Mutation{q.ID, m.what, q.File, q.Line, noticed})
		}
	}
	if documents != nil {
		for f := range documents {
			var err error
			if left, err = tryOn(ctx, set, f, left, all); err != nil {
				return nil, err
			}
		}
	}
	figures, err := mutateFigures(ctx, set, byID)
	return append(all, figures...), err
}

// Score is the part of the mutations that were noticed, in %; 100 when there
// were none.
func Score(all []Mutation) float64 {
	if len(all) == 0 {
		return 100
	}
	noticed := 0
	for _, m := range all {
		if m.Noticed {
			noticed++
		}
	}
	return 100 * float64(noticed) / float64(len(all))
}

// mutant is the set with nothing but one requirement, which has one change.
type mutant struct {
	what string
	set  *ruleset.RuleSet
	// facts is, for a change of a limit that is a fact, the change made in the
	// facts instead; false when none was made.
	facts func(*facts.Facts) (*facts.Facts, bool)
}

// mutants lists the changed forms of one requirement.
func mutants(ctx context.Context, set *ruleset.RuleSet, q *ruleset.Requirement) ([]mutant, error) {
	var all []mutant
	changed := func(what string, q ruleset.Requirement) {
		all = append(all, mutant{what: what, set: set.Only(q)})
	}
	if q.Rego {
		for _, m := range set.Rules().Mutants(q.ID) {
			variant, err := set.Only(*q).WithRules(ctx, m.Rules)
			if err != nil {
				return nil, err
			}
			all = append(all, mutant{what: m.What, set: variant})
		}
	} else {
		for i := range q.Each() {
			turnComparison(*q, i, changed)
			all = append(all, limitMutants(set, q, i)...)
		}
		for i, c := range q.AnyOf {
			m := *q
			m.AnyOf = slices.Delete(slices.Clone(q.AnyOf), i, i+1)
			changed(fmt.Sprintf("%s dropped from any_of", c), m)
		}
	}
	for i, w := range q.When {
		m := *q
		m.When = slices.Delete(slices.Clone(q.When), i, i+1)
		changed(fmt.Sprintf("condition %s dropped", w), m)
	}
	return all, nil
}

// with is the requirement with another comparison in the place of the i-th.
func with(q ruleset.Requirement, i int, c ruleset.Condition) ruleset.Requirement {
	if q.AnyOf == nil {
		q.Condition = c
		return q
	}
	q.AnyOf = slices.Clone(q.AnyOf)
	q.AnyOf[i] = c
	return q
}

// opposite turns a comparison round; besides moves it by the limit itself.
var (
	opposite = map[string]string{
		"at_most": "above", "at_least": "below", "below": "at_least", "above": "at_most",
		"equals": "differs", "differs": "equals", "one_of": "none_of", "none_of": "one_of", "includes": "lacks", "lacks": "includes",
	}
	besides = map[string]string{"at_most": "below", "at_least": "above", "below": "at_most", "above": "at_least"}
)

func turnComparison(q ruleset.Requirement, i int, changed func(string, ruleset.Requirement)) {
	c := q.Each()[i]
	for _, table := range []map[string]string{opposite, besides} {
		if to, ok := table[c.Comparison]; ok {
			turned := c
			turned.Comparison = to
			changed(c.Comparison+" became "+to, with(q, i, turned))
		}
	}
}

// limitMutants shifts the numeric limit of one comparison either way: a whole
// number by one, any other by a hundredth. Where there is a factor that is shifted,
// and of a limit in a table the whole column.
func limitMutants(set *ruleset.RuleSet, q *ruleset.Requirement, i int) []mutant {
	of, _ := catalogue.Of(q.Subject)
	c := q.Each()[i]
	if _, f, ok := of.Find(c.Fact); !ok || f.Kind != catalogue.Number {
		return nil
	}
	var all []mutant
	for _, shift := range shifts {
		m := mutant{what: "limit " + shift.words}
		changed := c
		switch limit := c.Limit; {
		case limit.Factor != nil:
			changed.Limit.Factor = &ruleset.Factor{Number: shift.shifted(set.FactorOf(limit))}
			m.set = set.Only(with(*q, i, changed))
		case limit.Cell != nil:
			m.set = set.WithColumn(limit.Cell.Table, limit.Cell.Column, shift.shifted).Only(*q)
		case strings.HasPrefix(limit.Fact, catalogue.Whole+"."):
			continue // the fact is of another part than the one that a case is about
		case limit.Fact != "":
			fact, _ := of.Fact(limit.Fact)
			m.set = set.Only(*q)
			m.facts = func(f *facts.Facts) (*facts.Facts, bool) { return of.Changed(f, fact, shift.shifted) }
		default:
			v, isNumber := set.Value(limit).(float64)
			if !isNumber {
				continue
			}
			changed.Limit = ruleset.Operand{Value: shift.shifted(v)}
			m.set = set.Only(with(*q, i, changed))
		}
		all = append(all, m)
	}
	return all
}

// shift moves a figure a little.
type shift struct {
	words string
	sign  float64
}

var shifts = []shift{{"shifted up", 1}, {"shifted down", -1}}

func (s shift) shifted(v float64) float64 {
	by := 1.0
	if v != math.Trunc(v) {
		by = math.Abs(v) / 100
	}
	return v + s.sign*by
}

// noticedBy runs the cases of the requirement against the mutant.
func (m mutant) noticedBy(ctx context.Context, cases []Case) (bool, error) {
	for _, c := range cases {
		if m.facts != nil {
			changed, ok := m.facts(c.facts)
			if !ok {
				continue
			}
			c.facts = changed
		}
		got, err := c.outcome(ctx, m.set)
		if err != nil {
			return false, err
		}
		if got != c.Want {
			return true, nil
		}
	}
	return false, nil
}

// mutateFigures shifts the set's own parameters that no limit row of its own
// names: those that facts are worked out with, that Rego rules read, and that
// the set changed for the rows of a set below. Parameters that are words are
// emptied.
func mutateFigures(ctx context.Context, set *ruleset.RuleSet, byID map[string][]Case) ([]Mutation, error) {
	var all []Mutation
	own := set.Own()
	for _, p := range set.Parameters() {
		if p.Set != set.Name || slices.ContainsFunc(own, func(q *ruleset.Requirement) bool { return q.RowUses(p.Name) }) {
			continue
		}
		cases := casesOf(set, p.Name, byID)
		for what, changed := range weakened(p) {
			variant, err := set.WithParameter(ctx, changed)
			if err != nil {
				return nil, err
			}
			noticed, err := notices(ctx, variant, cases)
			if err != nil {
				return nil, err
			}
			all = append(all, Mutation{"parameter " + p.Name, what, "", 0, noticed})
		}
	}
	return all, nil
}

// casesOf are the tests of the figures and of the requirements that look at a
// parameter.
func casesOf(set *ruleset.RuleSet, parameter string, byID map[string][]Case) []Case {
	cases := slices.Clone(byID[""])
	for _, q := range set.Requirements {
		if set.Uses(q, parameter) {
			cases = append(cases, byID[q.ID]...)
		}
	}
	return cases
}

// weakened gives the other values that a parameter is tried with.
func weakened(p book.Parameter) iter.Seq2[string, book.Parameter] {
	return func(yield func(string, book.Parameter) bool) {
		if p.IsText {
			p.Text = ""
			yield("emptied", p)
			return
		}
		for _, s := range shifts {
			changed := p
			changed.Number = s.shifted(p.Number)
			if !yield(s.words, changed) {
				return
			}
		}
	}
}

// notices reports whether a case goes otherwise than it says with a changed set.
func notices(ctx context.Context, set *ruleset.RuleSet, cases []Case) (bool, error) {
	for _, c := range cases {
		if got, err := c.run(ctx, set); err != nil || got != "" {
			return true, err
		}
	}
	return false, nil
}
