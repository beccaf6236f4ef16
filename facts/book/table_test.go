package book_test

import (
	"fmt"
	"testing"

	"sunclause/facts/book"
	"sunclause/facts/working"
	"sunclause/schema"
)

func tables() book.Book {
	return book.Book{
		Parameters: map[string]book.Parameter{
			"factor": {Name: "factor", Number: 1.25, Unit: "A", Set: "test"},
			"method": {Name: "method", Text: "table", IsText: true, Set: "test"},
		},
		Tables: map[string]*book.Table{"steps": {
			Name: "steps", Title: "factors", Set: "test", Columns: []book.Column{{Name: "at_least_c", Unit: "°C"}, {Name: "factor", Unit: "%"}},
			Rows: []map[string]any{
				{"at_least_c": 0.0, "factor": 1.1, "mounting": "on_roof"},
				{"at_least_c": -10.0, "factor": 1.2, "mounting": "in_roof"},
				{"at_least_c": -5.0, "mounting": "no factor"},
			},
		}},
	}
}

func TestStep(t *testing.T) {
	b := tables()
	for _, c := range []struct {
		of      float64
		want    float64
		missing string
	}{
		{25, 1.1, ""}, {0, 1.1, ""}, {-10, 1.2, ""}, {-6, 1.2, ""},
		{-0.1, 0, "[/t]"}, // the row of −5 has no factor
		{-10.1, 0, "[/t]"},
	} {
		n := b.Step("steps", "at_least_c", working.Stated("T", "°C", schema.NewNumber("/t", c.of)), "factor", "K")
		if c.missing != "" {
			if n.Known() || fmt.Sprint(working.Pointers(n.Missing())) != c.missing {
				t.Errorf("at %v: %v, missing %v, want it unknown, missing %s", c.of, n.Value(), n.Missing(), c.missing)
			}
		} else if !n.Known() || n.Value() != c.want || n.Unit() != "%" || !n.Lookup() {
			t.Errorf("at %v: %v %s (missing %v), want %v %%", c.of, n.Value(), n.Unit(), n.Missing(), c.want)
		}
	}
	if n := b.Step("steps", "at_least_c", working.Unknown("T", "°C", "/t"), "factor", "K"); n.Known() || fmt.Sprint(working.Pointers(n.Missing())) != "[/t]" {
		t.Errorf("of an unknown quantity: %v, missing %v", n.Value(), n.Missing())
	}
	if n := b.Step("none", "k", working.NoNumber("T", ""), "factor", "K"); fmt.Sprint(working.Pointers(n.Missing())) != "[the rule set has no table none]" {
		t.Errorf("without a table: missing %v", n.Missing())
	}
}

func TestKeyed(t *testing.T) {
	b := tables()
	n := b.Keyed("steps", "mounting", working.KnownText("in_roof", "/m"), "factor", "K")
	if !n.Known() || n.Value() != 1.2 || fmt.Sprint(n.Pointers()) != "[/m]" || n.Origin() != "table steps of test" {
		t.Errorf("in_roof: %v from %v, %s", n.Value(), n.Pointers(), n.Origin())
	}
	for word, w := range map[string]working.Text{"a word not in the table": working.KnownText("facade", "/m"), "a row without the cell": working.KnownText("no factor", "/m"), "no word": working.UnknownText("/m")} {
		if n := b.Keyed("steps", "mounting", w, "factor", "K"); n.Known() || fmt.Sprint(working.Pointers(n.Missing())) != "[/m]" {
			t.Errorf("%s: %v, missing %v, want it unknown, missing /m", word, n.Value(), n.Missing())
		}
	}
}

func TestParameters(t *testing.T) {
	b := tables()
	if n := b.Number("factor", "K"); n.Value() != 1.25 || n.Unit() != "A" || n.Origin() != "parameter factor of test" {
		t.Errorf("factor is %v %s, %s", n.Value(), n.Unit(), n.Origin())
	}
	if w := b.Word("method"); w.Value() != "table" {
		t.Errorf("method is %q", w.Value())
	}
	for name, missing := range map[string][]working.Gap{
		"a word taken as a number": b.Number("method", "K").Missing(), "a number taken as a word": b.Word("factor").Missing(),
		"no such number": b.Number("none", "K").Missing(), "no such word": b.Word("none").Missing(),
	} {
		if len(missing) != 1 {
			t.Errorf("%s: missing %v, want the parameter named", name, missing)
		}
	}
}
