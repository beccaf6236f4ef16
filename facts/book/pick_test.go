package book_test

import (
	"fmt"
	"testing"

	"sunclause/facts/book"
	"sunclause/facts/working"
	"sunclause/schema"
)

func capacities() book.Book {
	return book.Book{Tables: map[string]*book.Table{
		"capacity": {Name: "capacity", Title: "capacities", Columns: []book.Column{{Name: "csa_mm2", Unit: "mm²"}, {Name: "c", Unit: "A"}},
			Rows: []map[string]any{{"csa_mm2": 4.0, "c": 36.0}, {"csa_mm2": 6.0}}},
		"index": {Name: "index", Title: "which table", Columns: []book.Column{{Name: "kind"}, {Name: "method"}, {Name: "loaded"}, {Name: "table"}},
			Rows: []map[string]any{
				{"kind": "solar", "method": "B", "loaded": 2.0, "table": "conduit"},
				{"kind": "solar", "method": "any", "loaded": 2.0, "table": "solar"},
				{"kind": "flat", "method": "any", "loaded": "any", "table": "flat"}}},
		"group": {Name: "group", Title: "factors", Columns: []book.Column{{Name: "arrangement"}, {Name: "circuits"}, {Name: "factor"}},
			Rows: []map[string]any{
				{"arrangement": "ceiling", "circuits": 1.0, "factor": 0.95},
				{"arrangement": "any", "circuits": 1.0, "factor": 1.0},
				{"arrangement": "bunched", "circuits": 20.0, "factor": 0.38},
				{"arrangement": "bunched", "circuits": 2.0, "factor": 0.8}}},
	}}
}

func stated(at string, v float64) working.Number {
	return working.Stated("x", "", schema.NewNumber(at, v))
}

func TestPickWord(t *testing.T) {
	b := capacities()
	unknown := working.UnknownText("/method")
	for _, c := range []struct {
		name         string
		kind, method working.Text
		loaded       working.Number
		want         string
		missing      string
	}{
		{"the first row that holds", working.KnownText("solar", "/kind"), working.KnownText("B", "/method"), stated("/n", 2), "conduit", ""},
		{"any holds for every word", working.KnownText("solar", "/kind"), working.KnownText("C", "/method"), stated("/n", 2), "solar", ""},
		{"and for one not known", working.KnownText("flat", "/kind"), unknown, stated("/n", 3), "flat", ""},
		{"a row before it may hold", working.KnownText("solar", "/kind"), unknown, stated("/n", 2), "", "[/method]"},
		{"no such row", working.KnownText("solar", "/kind"), working.KnownText("C", "/method"), stated("/n", 3), "", "[/kind /method /n]"},
		{"a number that is not known", working.KnownText("solar", "/kind"), working.KnownText("C", "/method"), working.Unknown("n", "", "/n"), "", "[/n]"},
	} {
		row := b.Pick("index", book.Is("kind", c.kind), book.Is("method", c.method), book.Equals("loaded", c.loaded))
		w := row.Word("table")
		if w.Known() != (c.want != "") || w.Known() && w.Value() != c.want || !w.Known() && fmt.Sprint(working.Pointers(w.Missing())) != c.missing {
			t.Errorf("%s: %q, missing %v, want %q, missing %s", c.name, w.Value(), w.Missing(), c.want, c.missing)
		}
		if row.Lacked() != (c.name == "no such row") {
			t.Errorf("%s: lacked is %t", c.name, row.Lacked())
		}
	}
}

// Nothing is interpolated: a size that the table has not is unknown.
func TestPickNumber(t *testing.T) {
	b := capacities()
	for _, c := range []struct{ size, want float64 }{{4, 36}, {5, 0}, {6, 0}, {3.9, 0}} {
		n := b.Pick("capacity", book.Equals("csa_mm2", stated("/csa", c.size))).Number("c", "I")
		if n.Known() != (c.want > 0) || n.Known() && (n.Value() != c.want || n.Unit() != "A" || !n.Lookup()) {
			t.Errorf("%v mm²: %v %s", c.size, n.Value(), n.Unit())
		}
		if want := "[/csa]"; !n.Known() && fmt.Sprint(working.Pointers(n.Missing())) != want || n.Known() && fmt.Sprint(n.Pointers()) != want {
			t.Errorf("%v mm²: missing %v, from %v, want %s", c.size, n.Missing(), n.Pointers(), want)
		}
	}
	if n := b.Pick("none", book.Equals("csa_mm2", stated("/csa", 4))).Number("c", "I"); fmt.Sprint(working.Pointers(n.Missing())) != "[the rule set has no table none]" {
		t.Errorf("without the table: missing %v", n.Missing())
	}
	if w := b.Pick("none").Word("c"); fmt.Sprint(working.Pointers(w.Missing())) != "[the rule set has no table none]" {
		t.Errorf("without the table: missing %v", w.Missing())
	}
	if w := b.Pick("capacity", book.Equals("csa_mm2", stated("/csa", 4))).Word("c"); w.Known() {
		t.Errorf("a number is taken as the word %q", w.Value())
	}
}

// A value between two rows goes by the higher one, in whatever order they stand.
func TestPickUpTo(t *testing.T) {
	b := capacities()
	bunched, unknown := working.KnownText("bunched", "/a"), working.UnknownText("/a")
	for _, c := range []struct {
		arrangement working.Text
		circuits    float64
		want        float64
		missing     string
	}{
		{bunched, 1, 1, ""}, {bunched, 2, 0.8, ""}, {bunched, 3, 0.38, ""}, {bunched, 20, 0.38, ""}, {bunched, 21, 0, "[/a /n]"},
		{working.KnownText("ceiling", "/a"), 1, 0.95, ""}, {unknown, 1, 0, "[/a]"}, {unknown, 2, 0, "[/a]"}, {working.KnownText("ladder", "/a"), 1, 1, ""}, {working.KnownText("ladder", "/a"), 2, 0, "[/a /n]"},
	} {
		n := b.Pick("group", book.Is("arrangement", c.arrangement), book.UpTo("circuits", stated("/n", c.circuits))).Number("factor", "C")
		if n.Known() != (c.want > 0) || n.Known() && n.Value() != c.want || !n.Known() && fmt.Sprint(working.Pointers(n.Missing())) != c.missing {
			t.Errorf("%s %v: %v, missing %v, want %v, missing %s", c.arrangement.Value(), c.circuits, n.Value(), n.Missing(), c.want, c.missing)
		}
	}
	n := b.Pick("group", book.Is("arrangement", bunched), book.UpTo("circuits", working.Unknown("n", "", "/n"))).Number("factor", "C")
	if n.Known() || fmt.Sprint(working.Pointers(n.Missing())) != "[/n]" {
		t.Errorf("a count that is not known: %v, missing %v", n.Value(), n.Missing())
	}
}

// A quantity between two steps takes the lower one with DownTo, in whatever
// order they stand; an unknown one takes none, though the table begins at zero.
func TestPickDownTo(t *testing.T) {
	b := capacities()
	bunched := working.KnownText("bunched", "/a")
	for _, c := range []struct{ circuits, want float64 }{{1, 1}, {2, 0.8}, {19, 0.8}, {20, 0.38}, {50, 0.38}} {
		n := b.Pick("group", book.Is("arrangement", bunched), book.DownTo("circuits", stated("/n", c.circuits))).Number("factor", "C")
		if !n.Known() || n.Value() != c.want {
			t.Errorf("%v circuits: %v, missing %v, want %v", c.circuits, n.Value(), n.Missing(), c.want)
		}
	}
	below := b.Pick("group", book.DownTo("circuits", stated("/n", 0.5))).Number("factor", "C")
	if below.Known() || fmt.Sprint(below.Missing()) != "[/n off_table 0.5 factors]" {
		t.Errorf("below the lowest step: %v, missing %v", below.Value(), below.Missing())
	}
	n := b.Pick("group", book.DownTo("circuits", working.Unknown("n", "", "/n"))).Number("factor", "C")
	if n.Known() || fmt.Sprint(working.Pointers(n.Missing())) != "[/n]" {
		t.Errorf("a count that is not known: %v, missing %v", n.Value(), n.Missing())
	}
}
