package engine

import (
	"encoding/json"
	"fmt"
	"strconv"
	"strings"
)

// data is what rules see as data: limit rows and conditions for the general
// module, and the parameters and tables for rules that want them.
func (s *RuleSet) data() map[string]any {
	var rows []any
	for _, r := range s.Requirements {
		if !r.Rego {
			row := map[string]any{"id": r.ID, "subject": r.Subject, "comparison": r.Comparison, "measure": factPath(r.Measure), "limit": s.operandData(r.Limit)}
			rows = append(rows, row)
		}
	}
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
	return map[string]any{"rows": list(rows), "conditions": s.conditionsData(), "parameters": parameters, "tables": tables}
}

func list(items []any) []any {
	if items == nil {
		return []any{}
	}
	return items
}

// conditionsData lists each condition once, under an id of its own, and notes
// which of them stand before each requirement.
func (s *RuleSet) conditionsData() []any {
	s.conditions = map[*Requirement][]string{}
	ids := map[string]string{}
	all := []any{}
	for _, r := range s.Requirements {
		for _, w := range r.When {
			same := fmt.Sprintf("%s %s %s %#v", r.Subject, w.Fact, w.Comparison, w.Limit)
			if ids[same] == "" {
				ids[same] = fmt.Sprintf("condition %d", len(ids)+1)
				all = append(all, map[string]any{"id": ids[same], "subject": r.Subject, "fact": factPath(w.Fact), "comparison": w.Comparison, "limit": s.operandData(w.Limit)})
			}
			s.conditions[r] = append(s.conditions[r], ids[same])
		}
	}
	return all
}

// factPath tells the general module whether a fact is the subject's own or the
// installation's.
func factPath(name string) map[string]any {
	if whole, ok := strings.CutPrefix(name, wholeInstallation+"."); ok {
		return map[string]any{"installation": whole}
	}
	return map[string]any{"own": name}
}

func (s *RuleSet) operandData(o Operand) map[string]any {
	if o.Fact != "" {
		return map[string]any{"fact": factPath(o.Fact)}
	}
	return map[string]any{"value": forRego(s.operandValue(o))}
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
