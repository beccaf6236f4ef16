package book_test

import (
	"testing"

	"sunclause/facts/book"
	"sunclause/facts/working"
	"sunclause/schema"
)

func TestCover(t *testing.T) {
	b := book.Book{Tables: map[string]*book.Table{"sizes": {
		Name: "sizes", Title: "sizes", Columns: []book.Column{{Name: "up_to"}, {Name: "size", Unit: "mm²"}},
		Rows: []map[string]any{{"up_to": 35.0, "size": 10.0}, {"up_to": 50.0, "size": 16.0}, {"up_to": 95.0, "size": 25.0}},
	}}}
	for _, c := range []struct{ of, want float64 }{{1, 10}, {35, 10}, {35.1, 16}, {50, 16}, {95, 25}, {96, 0}} {
		n := b.Cover("sizes", "up_to", working.Stated("S", "mm²", schema.NewNumber("/s", c.of)), "size", "S_b")
		if n.Known() != (c.want > 0) || n.Known() && n.Value() != c.want {
			t.Errorf("%v: %v (known %t), want %v", c.of, n.Value(), n.Known(), c.want)
		}
	}
	if n := b.Cover("sizes", "up_to", working.Unknown("S", "mm²", "/s"), "size", "S_b"); n.Known() || n.Missing()[0] != "/s" {
		t.Errorf("an unknown quantity is covered by %v, for want of %v", n.Value(), n.Missing())
	}
	if n := b.Cover("none", "up_to", working.Stated("S", "mm²", schema.NewNumber("/s", 1)), "size", "S_b"); n.Known() {
		t.Errorf("a table that is not there says %v", n.Value())
	}
}
