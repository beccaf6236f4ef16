package ruleset

import (
	"context"
	"maps"
	"slices"

	"sunclause/engine/rego"
	"sunclause/facts/book"
)

// Only is the set with nothing but one requirement, which may be a changed copy
// of one of its own. It judges that one alone, and so quickly that many variants
// can be tried.
func (s *RuleSet) Only(q Requirement) *RuleSet {
	only := &RuleSet{
		Name: s.Name, Title: s.Title, Version: s.Version, Book: s.Book,
		Requirements: []*Requirement{&q}, byID: map[string]*Requirement{q.ID: &q}, library: s.library,
	}
	if q.Rego {
		only.rules = s.rules
	}
	only.resolve()
	return only
}

// WithRules is the set with other Rego rules, which are given its data.
func (s *RuleSet) WithRules(ctx context.Context, rules *rego.Rules) (*RuleSet, error) {
	changed := *s
	changed.rules = rules
	return &changed, changed.prepareRules(ctx)
}

// WithParameter is the set with another value of one parameter.
func (s *RuleSet) WithParameter(ctx context.Context, p book.Parameter) (*RuleSet, error) {
	changed := *s
	changed.Book.Parameters = maps.Clone(s.Book.Parameters)
	changed.Book.Parameters[p.Name] = p
	changed.Requirements = append([]*Requirement{}, s.Requirements...)
	changed.byID = maps.Clone(s.byID)
	changed.resolve()
	return &changed, changed.prepareRules(ctx)
}

// WithColumn is the set with every number in a column of a table put through a
// function. Rego rules keep the table that they have.
func (s *RuleSet) WithColumn(table, column string, change func(float64) float64) *RuleSet {
	changed := *s
	changed.Book.Tables = maps.Clone(s.Book.Tables)
	t := *s.Book.Tables[table]
	t.Rows = slices.Clone(t.Rows)
	for i, row := range t.Rows {
		if v, isNumber := row[column].(float64); isNumber {
			t.Rows[i] = maps.Clone(row)
			t.Rows[i][column] = change(v)
		}
	}
	changed.Book.Tables[table] = &t
	return &changed
}
