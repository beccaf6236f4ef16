package engine

import (
	"encoding/json"
	"strconv"
)

// data is what rules see as data: the comparisons for the general module, and
// the parameters and tables for rules that want them.
func (s *RuleSet) data() map[string]any {
	c := s.number()
	parameters := map[string]any{}
	for name, p := range s.Book.Parameters {
		parameters[name] = forRego(p.Number)
		if p.IsText {
			parameters[name] = p.Text
		}
	}
	tables := map[string]any{}
	for name, t := range s.Book.Tables {
		tables[name] = map[string]any{"title": t.Title, "rows": tableRows(t.Rows)}
	}
	return map[string]any{"comparisons": c.plain, "between": c.between, "parameters": parameters, "tables": tables}
}

// operandValue is the plain value of a limit that is no fact.
func (s *RuleSet) operandValue(o Operand) any {
	if o.Parameter == "" {
		return o.Value
	}
	p := s.Book.Parameters[o.Parameter]
	if p.IsText {
		return p.Text
	}
	return p.Number
}

func tableRows(rows []map[string]any) []any {
	all := make([]any, len(rows))
	for i, r := range rows {
		cells := map[string]any{}
		for k, v := range r {
			cells[k] = forRego(v)
		}
		all[i] = cells
	}
	return all
}

// forRego writes a number in plain decimal, which Rego compares exactly and fast.
func forRego(v any) any {
	switch v := v.(type) {
	case float64:
		return json.Number(strconv.FormatFloat(v, 'f', -1, 64))
	case []string:
		words := make([]any, len(v))
		for i, w := range v {
			words[i] = w
		}
		return words
	}
	return v
}
