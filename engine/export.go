package engine

import (
	"encoding/json"
	"fmt"
	"os"
	"path/filepath"
	"strings"

	"sunclause/facts"
)

// WriteForOPA writes the rules, the data and the facts of one installation as
// plain files, so that the opa command can be put the same question: opa eval
// -d DIR/rules -i DIR/input.json QUERY. It is how sunclause is compared with
// opa, and a way to look into a rule with opa's own tools.
func (s *RuleSet) WriteForOPA(dir string, f *facts.Facts) (query string, err error) {
	data, err := json.Marshal(s.data())
	if err != nil {
		return "", fmt.Errorf("data of rule set %s: %w", s.Name, err)
	}
	files := map[string]string{"input.json": inputOf(f).String(), "rules/data.json": string(data)}
	for name, m := range s.modules {
		files["rules/"+strings.NewReplacer("/", "_", ":", "_").Replace(name)] = m.String()
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
	return s.question(), nil
}

// RowsOf names the requirements whose row is the comparison of that number,
// which opa finds broken.
func (s *RuleSet) RowsOf(number int) []string {
	var ids []string
	for _, q := range s.Requirements {
		if !q.Rego && s.asked[q].row.number == number {
			ids = append(ids, q.ID)
		}
	}
	return ids
}
