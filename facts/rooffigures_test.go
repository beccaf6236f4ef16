package facts_test

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"go.yaml.in/yaml/v3"

	"sunclause/facts/book"
	"sunclause/facts/working"
	"sunclause/schema"
)

// withRoof adds the figures of the roof that the set iec ships: its formulas have
// angles, powers and logarithms, and their working is to be true as well.
func withRoof(t testing.TB, b book.Book) book.Book {
	t.Helper()
	from := working.Source{Document: "figures of the tests", How: working.CommonPractice}
	var room struct {
		Parameters map[string]struct {
			Unit  string
			Value any
		}
	}
	readYAML(t, "../policies/iec/roof.yaml", &room)
	for name, p := range room.Parameters {
		if p.Unit == "" {
			p.Unit = schema.UnitOf(name)
		}
		known := book.Parameter{Name: name, Unit: p.Unit, Source: from, Set: "test"}
		if known.Text, known.IsText = p.Value.(string); !known.IsText {
			known.Number = number(p.Value)
		}
		b.Parameters[name] = known
	}
	for _, name := range []string{"terrain_categories", "duopitch_suction", "timber_duration", "timber_classes"} {
		var file struct {
			Title string
			Rows  []map[string]any
		}
		readYAML(t, filepath.Join("../policies/iec/tables", name+".yaml"), &file)
		for _, row := range file.Rows {
			for k, v := range row {
				if _, isText := v.(string); !isText {
					row[k] = number(v)
				}
			}
		}
		b.Tables[name] = &book.Table{Name: name, Title: strings.ToLower(file.Title), Source: from, Set: "test", Rows: file.Rows}
	}
	return b
}

func number(v any) float64 {
	switch v := v.(type) {
	case int:
		return float64(v)
	case float64:
		return v
	}
	return 0
}

func readYAML(t testing.TB, name string, into any) {
	t.Helper()
	raw, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	if err := yaml.Unmarshal(raw, into); err != nil {
		t.Fatal(err)
	}
}
