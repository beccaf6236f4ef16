package engine

import (
	"context"
	"fmt"
	"iter"
	"maps"
	"math"
	"reflect"
	"slices"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"

	"sunclause/facts"
	"sunclause/facts/book"
	"sunclause/facts/working"
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
// change it runs the trials and tells whether one of them noticed.
func (s *RuleSet) Mutate(ctx context.Context, trials []Trial) ([]Mutation, error) {
	byID := map[string][]Trial{}
	for _, t := range trials {
		byID[t.Requirement] = append(byID[t.Requirement], t)
	}
	var all []Mutation
	for _, q := range s.Own() {
		for _, m := range s.mutants(q) {
			noticed, err := m.try(ctx, s, byID[q.ID])
			if err != nil {
				return nil, err
			}
			all = append(all, Mutation{q.ID, m.what, q.File, q.Line, noticed})
		}
	}
	figures, err := s.mutateFigures(ctx, byID)
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

// mutant is a requirement with one change.
type mutant struct {
	what string
	q    *Requirement            // the requirement as changed
	rule *ast.Compiler           // for a change in the body of a Rego rule: the modules with it
	data func(*facts.Facts) bool // for a change of a limit that is a fact: changes the facts instead
}

func (s *RuleSet) mutants(q *Requirement) []mutant {
	var all []mutant
	if q.Rego {
		all = append(all, s.ruleMutants(q)...)
	} else {
		all = append(all, comparisonMutants(q)...)
		all = append(all, s.limitMutants(q)...)
	}
	for i, w := range q.When {
		m := *q
		m.When = slices.Delete(slices.Clone(q.When), i, i+1)
		all = append(all, mutant{what: fmt.Sprintf("condition on %s dropped", w.Fact), q: &m})
	}
	return all
}

// opposite turns a comparison round; besides moves it by the limit itself.
var (
	opposite = map[string]string{
		"at_most": "above", "at_least": "below", "below": "at_least", "above": "at_most",
		"equals": "differs", "differs": "equals", "one_of": "none_of", "none_of": "one_of", "includes": "lacks", "lacks": "includes",
	}
	besides = map[string]string{"at_most": "below", "at_least": "above", "below": "at_most", "above": "at_least"}
)

func comparisonMutants(q *Requirement) []mutant {
	var all []mutant
	for _, table := range []map[string]string{opposite, besides} {
		if to, ok := table[q.Comparison]; ok {
			m := *q
			m.Comparison = to
			all = append(all, mutant{what: q.Comparison + " became " + to, q: &m})
		}
	}
	return all
}

// limitMutants shifts a numeric limit either way: a whole number by one, any
// other by a hundredth.
func (s *RuleSet) limitMutants(q *Requirement) []mutant {
	if subjectKinds[q.Subject].byName[q.Measure].kind != aNumber {
		return nil
	}
	var all []mutant
	for _, up := range []bool{true, false} {
		words := map[bool]string{true: "limit shifted up", false: "limit shifted down"}[up]
		if strings.HasPrefix(q.Limit.Fact, wholeInstallation+".") {
			continue // the fact is of another part than the one that a trial is about
		}
		if q.Limit.Fact != "" {
			all = append(all, mutant{what: words, q: q, data: shiftFact(q, up)})
			continue
		}
		v, ok := s.operandValue(q.Limit).(float64)
		if !ok {
			continue
		}
		m := *q
		m.Limit = Operand{Value: shifted(v, up)}
		all = append(all, mutant{what: words, q: &m})
	}
	return all
}

func shifted(v float64, up bool) float64 {
	by := 1.0
	if v != math.Trunc(v) {
		by = math.Abs(v) / 100
	}
	if !up {
		by = -by
	}
	return v + by
}

// shiftFact shifts a limit that is a fact of the subject, where it is known.
func shiftFact(q *Requirement, up bool) func(*facts.Facts) bool {
	return func(f *facts.Facts) bool {
		k := subjectKinds[q.Subject]
		field, ok := k.byName[q.Limit.Fact]
		if !ok {
			return false
		}
		subjects, _ := subjectsOf(f, k)
		changed := false
		for _, v := range subjects {
			n := v.FieldByIndex(field.index)
			if w := n.Interface().(working.Number); w.Known() {
				n.Set(reflect.ValueOf(working.Figure(field.name, "", shifted(w.Value(), up), "a test", working.ByDefinition)))
				changed = true
			}
		}
		return changed
	}
}

// try runs the trials of the requirement against the mutant.
func (m mutant) try(ctx context.Context, s *RuleSet, trials []Trial) (bool, error) {
	alone, err := s.alone(ctx, m)
	if err != nil {
		return false, err
	}
	for _, t := range trials {
		if m.data != nil {
			t.facts = copyFacts(t.facts)
			if !m.data(t.facts) {
				continue
			}
		}
		got, err := alone.outcome(ctx, t)
		if err != nil {
			return false, err
		}
		if got != t.Want {
			return true, nil
		}
	}
	return false, nil
}

// alone is the set with nothing but the mutant.
func (s *RuleSet) alone(ctx context.Context, m mutant) (*RuleSet, error) {
	only := &RuleSet{
		Name: s.Name, Book: s.Book, Requirements: []*Requirement{m.q}, byID: map[string]*Requirement{m.q.ID: m.q},
		modules: s.modules, compiler: s.compiler,
	}
	if m.q.Rego {
		only.rooms = s.rooms
	}
	if m.rule != nil {
		only.compiler = m.rule
	}
	return only, only.prepareQuery(ctx)
}

// copyFacts copies the lists of facts, so that a fact can be changed.
func copyFacts(f *facts.Facts) *facts.Facts {
	c := *f
	v := reflect.ValueOf(&c).Elem()
	for _, k := range subjectKinds {
		if list := v.Field(k.field); k.list && !list.IsNil() {
			clone := reflect.MakeSlice(list.Type(), list.Len(), list.Len())
			reflect.Copy(clone, list)
			list.Set(clone)
		}
	}
	return &c
}

// mutateFigures shifts the set's own parameters that no limit row of its own
// names: those that facts are worked out with, that Rego rules read, and that
// the set changed for the rows of a set below. Parameters that are words are
// emptied.
func (s *RuleSet) mutateFigures(ctx context.Context, byID map[string][]Trial) ([]Mutation, error) {
	var all []Mutation
	for _, name := range s.parameterNames() {
		p := s.Book.Parameters[name]
		if p.Set != s.Name || slices.ContainsFunc(s.Own(), func(q *Requirement) bool { return q.Limit.Parameter == name }) {
			continue
		}
		trials := s.trialsOf(name, byID)
		for what, changed := range weakened(p) {
			noticed, err := s.withParameter(changed).notices(ctx, trials)
			if err != nil {
				return nil, err
			}
			all = append(all, Mutation{"parameter " + name, what, "", 0, noticed})
		}
	}
	return all, nil
}

// trialsOf are the tests of the figures and of the requirements that look at a
// parameter.
func (s *RuleSet) trialsOf(parameter string, byID map[string][]Trial) []Trial {
	trials := slices.Clone(byID[""])
	for _, q := range s.Requirements {
		if q.uses(parameter) {
			trials = append(trials, byID[q.ID]...)
		}
	}
	return trials
}

// weakened gives the other values that a parameter is tried with.
func weakened(p book.Parameter) iter.Seq2[string, book.Parameter] {
	return func(yield func(string, book.Parameter) bool) {
		if p.IsText {
			p.Text = ""
			yield("emptied", p)
			return
		}
		up, down := p, p
		up.Number, down.Number = shifted(p.Number, true), shifted(p.Number, false)
		if yield("shifted up", up) {
			yield("shifted down", down)
		}
	}
}

// withParameter is the set with another value of one parameter.
func (s *RuleSet) withParameter(p book.Parameter) *RuleSet {
	m := *s
	m.Book.Parameters = maps.Clone(s.Book.Parameters)
	m.Book.Parameters[p.Name] = p
	return &m
}

// notices tells whether a trial of a changed set goes otherwise than it says.
func (s *RuleSet) notices(ctx context.Context, trials []Trial) (bool, error) {
	if err := s.prepareQuery(ctx); err != nil {
		return false, err
	}
	for _, t := range trials {
		if got, err := s.run(ctx, t); err != nil || got != "" {
			return true, err
		}
	}
	return false, nil
}
