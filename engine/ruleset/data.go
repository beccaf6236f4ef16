package ruleset

import "sunclause/engine/rego"

// data is what Rego rules see as data: the parameters and tables.
func (s *RuleSet) data() map[string]any {
	parameters := map[string]any{}
	for name, p := range s.Book.Parameters {
		parameters[name] = rego.Plain(p.Number)
		if p.IsText {
			parameters[name] = p.Text
		}
	}
	tables := map[string]any{}
	for name, t := range s.Book.Tables {
		tables[name] = map[string]any{"title": t.Title, "rows": tableRows(t.Rows)}
	}
	return map[string]any{"parameters": parameters, "tables": tables}
}

func tableRows(rows []map[string]any) []any {
	all := make([]any, len(rows))
	for i, r := range rows {
		cells := map[string]any{}
		for k, v := range r {
			cells[k] = rego.Plain(v)
		}
		all[i] = cells
	}
	return all
}

// Value is the plain value of a limit that is no fact: float64, string, bool or
// []string.
func (s *RuleSet) Value(o Operand) any {
	if o.Parameter == "" {
		return o.Value
	}
	p := s.Book.Parameters[o.Parameter]
	if p.IsText {
		return p.Text
	}
	return p.Number
}

// FactorOf is what a limit is multiplied with; 1 where there is no factor.
func (s *RuleSet) FactorOf(o Operand) float64 {
	switch f := o.Factor; {
	case f == nil:
		return 1
	case f.Parameter != "":
		return s.Book.Parameters[f.Parameter].Number
	default:
		return f.Number
	}
}
