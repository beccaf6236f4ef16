package trial

import (
	"maps"
	"slices"
	"strings"

	"sunclause/engine/catalogue"
	"sunclause/engine/judge"
	"sunclause/engine/ruleset"
	"sunclause/facts"
)

// Generated makes the cases that only restate a row, of the set's own rows. Where
// no figure stands, that is where words, lists of words and what is yes or no are
// compared, they are all there is to it: a case that is met, one that is not, one
// that is not shown for each fact left out, and one that does not apply for each
// condition. Where a figure stands, somebody has to write it a second time, in cases
// on either side of it; from one of those that is not met follow the cases for facts
// left out and for conditions without a figure.
func Generated(set *ruleset.RuleSet, written []Case) []Case {
	var all []Case
	for _, q := range set.Own() {
		switch {
		case q.Rego:
		case !HasFigure(q):
			all = append(all, casesFor(set, q)...)
		default:
			all = append(all, casesFrom(set, q, written)...)
		}
	}
	return all
}

// casesFrom makes the cases that follow from one that somebody wrote. A row with a
// group of comparisons, or a condition that looks a table up, is left to people.
func casesFrom(set *ruleset.RuleSet, q *ruleset.Requirement, written []Case) []Case {
	i := slices.IndexFunc(written, func(c Case) bool { return c.Requirement == q.ID && c.Want == judge.NotMet })
	if i < 0 || slices.ContainsFunc(q.Compared(), func(c ruleset.Condition) bool { return c.AnyOf != nil }) ||
		slices.ContainsFunc(q.When, func(c ruleset.Condition) bool { return c.Limit.Cell != nil || c.Limit.Factor != nil }) {
		return nil
	}
	r := &rowCases{set: set, row: q, domain: map[string][]any{}}
	r.takeDomains()
	broken := written[i].given
	for _, name := range r.names {
		left := maps.Clone(broken)
		delete(left, name)
		r.add(judge.NotShown, name+" is not known", left)
	}
	for i, c := range q.When {
		if isFigure(q, c) {
			continue
		}
		for _, v := range r.domain[c.Fact] {
			other := maps.Clone(broken)
			if other[c.Fact] = v; !r.holds(c, other) && r.applies(other, i) {
				r.add(judge.NotApplicable, "it does not apply without "+c.String(), other)
				break
			}
		}
	}
	return r.cases
}

// HasFigure reports whether a row compares a number or a day.
func HasFigure(q *ruleset.Requirement) bool {
	return slices.ContainsFunc(q.Compared(), func(c ruleset.Condition) bool { return isFigure(q, c) })
}

func isFigure(q *ruleset.Requirement, c ruleset.Condition) bool {
	of, _ := catalogue.Of(q.Subject)
	return slices.ContainsFunc(c.Each(), func(one ruleset.Condition) bool {
		_, f, _ := of.Find(one.Fact)
		return f.Kind == catalogue.Number || one.Comparison == "since" || one.Comparison == "until"
	})
}

// Words that no row names.
const (
	something = "something"
	another   = "anything else"
)

// assignment gives facts values, by the names that the row has for them.
type assignment map[string]any

// rowCases makes the cases of one row.
type rowCases struct {
	set    *ruleset.RuleSet
	row    *ruleset.Requirement
	domain map[string][]any // the values that a fact of the row may be given
	names  []string         // of the facts, in order
	cases  []Case
}

func casesFor(set *ruleset.RuleSet, q *ruleset.Requirement) []Case {
	r := &rowCases{set: set, row: q, domain: map[string][]any{}}
	r.takeDomains()
	for _, met := range r.metOnes() {
		r.add(judge.Met, "what it asks for is there", met)
	}
	broken := r.find(func(a assignment) bool { return r.applies(a, -1) && !r.holds(q.Condition, a) })
	if broken == nil {
		return r.cases
	}
	r.add(judge.NotMet, "what it asks for is not there", broken)
	for _, name := range r.names {
		left := r.find(func(a assignment) bool {
			return r.applies(a, -1) && !r.holds(q.Condition, a) && r.matters(name, a)
		})
		if left != nil {
			delete(left, name)
			r.add(judge.NotShown, name+" is not known", left)
		}
	}
	for i, c := range q.When {
		off := func(a assignment) bool { return r.applies(a, i) && !r.holds(c, a) }
		found := r.find(func(a assignment) bool { return off(a) && !r.holds(q.Condition, a) })
		if found == nil {
			found = r.find(off)
		}
		if found != nil {
			r.add(judge.NotApplicable, "it does not apply without "+c.String(), found)
		}
	}
	return r.cases
}

// matters reports whether nothing could be said if a fact were not known: some
// comparison hangs on it alone.
func (r *rowCases) matters(name string, a assignment) bool {
	return slices.ContainsFunc(r.row.Compared(), func(c ruleset.Condition) bool {
		about := func(one ruleset.Condition) bool { return slices.Contains(one.Facts(), name) }
		return slices.ContainsFunc(c.Each(), about) && !slices.ContainsFunc(c.Each(), func(one ruleset.Condition) bool { return !about(one) && r.holds(one, a) })
	})
}

// metOnes are cases in which the row is kept: one for each value that keeps it of
// the fact that it asks about.
func (r *rowCases) metOnes() []assignment {
	var all []assignment
	values := r.domain[r.row.Each()[0].Fact]
	for _, v := range values[:min(len(values), mostMet)] {
		met := r.find(func(a assignment) bool {
			return same(a[r.row.Each()[0].Fact], v) && r.applies(a, -1) && r.holds(r.row.Condition, a)
		})
		if met != nil {
			all = append(all, met)
		}
	}
	return all
}

func same(a, b any) bool {
	x, isList := a.([]string)
	y, alsoList := b.([]string)
	if isList || alsoList {
		return isList && alsoList && slices.Equal(x, y)
	}
	return a == b
}

// takeDomains lists for each fact of the row the words that the row compares it
// with, and another; or yes and no; or the lists of such words.
func (r *rowCases) takeDomains() {
	of, _ := catalogue.Of(r.row.Subject)
	words := map[string][]string{}
	for _, c := range r.row.Compared() {
		for _, name := range c.Facts() {
			words[name] = append(words[name], []string{}...)
		}
		for _, one := range c.Each() {
			named := r.wordsOf(one)
			words[one.Fact] = append(words[one.Fact], named...)
			if to := one.Limit.Fact; to != "" {
				words[to] = append(words[to], named...)
			}
		}
	}
	for name, named := range words {
		_, f, _ := of.Find(name)
		slices.Sort(named)
		named = slices.Compact(named)
		r.names = append(r.names, name)
		switch f.Kind {
		case catalogue.Number: // somebody wrote a case with one
		case catalogue.Flag:
			r.domain[name] = []any{true, false}
		case catalogue.List:
			r.domain[name] = []any{named, []string{another}}
			for _, w := range named {
				r.domain[name] = append(r.domain[name], []string{w})
			}
		default:
			for _, w := range append(named, another) {
				r.domain[name] = append(r.domain[name], w)
			}
		}
	}
	slices.Sort(r.names)
}

// wordsOf are the words that a comparison names; one of ours where it is with
// another fact.
func (r *rowCases) wordsOf(c ruleset.Condition) []string {
	if c.Limit.Fact != "" {
		return []string{something}
	}
	switch v := r.set.Value(c.Limit).(type) {
	case string:
		return []string{v}
	case []string:
		return v
	}
	return nil
}

// applies reports whether every condition but one holds.
func (r *rowCases) applies(a assignment, but int) bool {
	for i, c := range r.row.When {
		if i != but && !r.holds(c, a) {
			return false
		}
	}
	return true
}

// holds reports whether a comparison, or one of a group, holds for facts that are
// all known.
func (r *rowCases) holds(c ruleset.Condition, a assignment) bool {
	return slices.ContainsFunc(c.Each(), func(one ruleset.Condition) bool {
		limit := r.set.Value(one.Limit)
		if one.Limit.Fact != "" {
			limit = a[one.Limit.Fact]
		}
		return catalogue.Holds(one.Comparison, catalogue.ValueOf(a[one.Fact]), catalogue.ValueOf(limit))
	})
}

// Bounds on the work for a row that somebody made very long.
const (
	mostTried = 5000 // assignments in one search
	mostMet   = 20   // values for which there is a case that is met
)

// find is the first assignment of values to all facts for which something is so;
// nil when there is none.
func (r *rowCases) find(so func(assignment) bool) assignment {
	a := assignment{}
	tried := 0
	var give func(i int) bool
	give = func(i int) bool {
		if i == len(r.names) {
			tried++
			return so(a)
		}
		for _, v := range r.domain[r.names[i]] {
			if a[r.names[i]] = v; give(i + 1) {
				return true
			}
			if tried > mostTried {
				return false
			}
		}
		return false
	}
	if !give(0) {
		return nil
	}
	return maps.Clone(a)
}

// add makes a case of an assignment.
func (r *rowCases) add(want judge.Outcome, says string, a assignment) {
	r.cases = append(r.cases, Case{
		Requirement: r.row.ID, Says: "generated: " + says, File: r.row.File, Line: r.row.Line, Want: want, Generated: true, facts: partWith(r.row, a),
	})
}

// partWith makes facts in which there is one part, with those of an assignment, in
// an installation with its own. All others are unknown.
func partWith(q *ruleset.Requirement, a assignment) *facts.Facts {
	own, whole := map[string]any{}, map[string]any{}
	for name, v := range a {
		if of, ofWhole := strings.CutPrefix(name, catalogue.Whole+"."); ofWhole {
			whole[of] = v
		} else {
			own[name] = v
		}
	}
	f := catalogue.Blank()
	catalogue.Installation().Put(f, catalogue.Whole, whole)
	if of, _ := catalogue.Of(q.Subject); of.Many {
		of.Put(f, tried, own)
	} else {
		of.Put(f, catalogue.Whole, own)
	}
	return f
}
