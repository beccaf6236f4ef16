package ruleset

import (
	"cmp"
	"encoding/json"
	"fmt"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"sunclause/engine/catalogue"
	"sunclause/engine/rego"
	"sunclause/facts"
)

// WriteForOPA writes the rules, the data and the facts of one installation as
// plain files, so that the opa command can be put the same question: opa eval
// -d DIR/rules -i DIR/input.json QUERY. Limit rows are written as data for
// policies/lib/limit.rego, which says in Rego what a row means; query asks it
// for the comparisons that are broken. It is how sunclause is compared with opa,
// and a way to look into a rule with opa's own tools.
func (s *RuleSet) WriteForOPA(dir string, f *facts.Facts) (query string, err error) {
	all := s.data()
	maps.Copy(all, s.comparisonData())
	data, err := json.Marshal(all)
	if err != nil {
		return "", fmt.Errorf("data of rule set %s: %w", s.Name, err)
	}
	files := map[string]string{"input.json": rego.Input(f), "rules/data.json": string(data)}
	for _, m := range s.library {
		files["rules/"+flat(m.name)] = m.text
	}
	query = "broken = data.lib.limit.broken"
	if s.rules != nil {
		for name, text := range s.rules.Sources() {
			files["rules/"+flat(name)] = text
		}
		query += "; " + s.rules.Query()
	}
	for name, text := range files {
		name = filepath.Join(dir, name)
		if err := os.MkdirAll(filepath.Dir(name), 0o755); err != nil {
			return "", err
		}
		if err := os.WriteFile(name, []byte(text), 0o644); err != nil {
			return "", err
		}
	}
	return query, nil
}

// flat is the name of a file without its folders.
func flat(name string) string { return strings.NewReplacer("/", "_", ":", "_").Replace(name) }

// comparisonData writes the comparisons of the set as policies/lib/limit.rego
// reads them: those with a plain value by how they compare, those of a fact with
// another or with the cell of a table, and the groups of which one has to hold.
func (s *RuleSet) comparisonData() map[string]any {
	plain, between, groups := map[string]any{}, []any{}, []any{}
	for _, how := range catalogue.Comparisons() {
		plain[how] = []any{}
	}
	for _, c := range s.inOrder() {
		d := map[string]any{"number": c.Number, "subject": c.Subject.Name}
		switch {
		case c.AnyOf != nil:
			d["any_of"] = c.numbers()
			groups = append(groups, d)
		case c.LimitFact != nil:
			d["comparison"], d["fact"], d["limit"] = c.How, c.Fact.path(), c.LimitFact.path()
			d["factor"] = rego.Plain(c.Factor)
			between = append(between, d)
		case c.LimitCell != nil:
			d["comparison"], d["fact"], d["limit"] = c.How, c.Fact.path(), c.LimitCell.path()
			d["factor"] = rego.Plain(c.Factor)
			between = append(between, d)
		default:
			d["fact"], d["limit"] = c.Fact.Name, rego.Plain(c.Limit.Plain())
			plain[c.How] = append(plain[c.How].([]any), d)
		}
	}
	return map[string]any{"comparisons": plain, "between": between, "groups": groups}
}

// numbers name the comparisons of a group, and whether each is about the whole
// installation.
func (c *Comparison) numbers() []any {
	var all []any
	for _, one := range c.AnyOf {
		all = append(all, map[string]any{"number": one.Number, "whole": one.Subject.Name == catalogue.Whole})
	}
	return all
}

// path says where a cell stands: its table and column, and which facts pick the
// row.
func (c *CellReading) path() map[string]any {
	keys := []any{}
	for _, k := range c.Keys {
		keys = append(keys, map[string]any{"column": k.Column, "comparison": k.How, "fact": k.Reading.path()})
	}
	return map[string]any{"table": c.Table, "column": c.Column, "keys": keys}
}

func (s *RuleSet) inOrder() []*Comparison {
	return slices.SortedFunc(maps.Values(s.comparisons), func(a, b *Comparison) int { return cmp.Compare(a.Number, b.Number) })
}

// path says whether a fact is the part's own or the installation's.
func (r Reading) path() map[string]any {
	if r.Whole {
		return map[string]any{"installation": r.Name}
	}
	return map[string]any{"own": r.Name}
}

// RowsOf names the requirements whose row is the comparison of that number,
// which opa finds broken.
func (s *RuleSet) RowsOf(number int) []string {
	var ids []string
	for _, q := range s.Requirements {
		if q.row != nil && q.row.Number == number {
			ids = append(ids, q.ID)
		}
	}
	return ids
}
