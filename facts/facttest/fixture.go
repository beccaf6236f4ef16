package facttest

import (
	"fmt"

	"sunclause/facts/book"
	"sunclause/facts/working"
)

// Module is the sheet of the module that most tests of the rooms lay, a new one
// each time. Ten of them in series have 495 V at STC, 569.25 V by the factor 1.15
// and 544.5 V at −15 °C by their coefficient; by the factor 1.25 their design
// current is 17.375 A.
func Module() map[string]any {
	return map[string]any{"technology": "mono_si", "pmax_w": 540, "voc_v": 49.5, "isc_a": 13.9, "vmp_v": 41.2, "imp_a": 13.1,
		"voc_coeff_pct_per_k": -0.25, "bifacial": false}
}

// source is where the figures of the tests come from.
var source = working.Source{Document: "figures of the tests", How: working.CommonPractice}

// Book makes a book with parameters and no tables yet: a parameter is a float64 or
// a word.
func Book(parameters map[string]any) book.Book {
	b := book.Book{Parameters: map[string]book.Parameter{}, Tables: map[string]*book.Table{}}
	for name, v := range parameters {
		p := book.Parameter{Name: name, Source: source, Set: "test"}
		p.Number, _ = v.(float64)
		p.Text, p.IsText = v.(string)
		b.Parameters[name] = p
	}
	return b
}

// Table adds a table of two columns to a book, where facts look a figure up by its
// key. Cells come in pairs, key and figure; each is a float64 or a word.
func Table(b book.Book, name, key, figure string, cells ...any) {
	t := &book.Table{Name: name, Title: name, Source: source, Set: "test", Columns: []book.Column{{Name: key}, {Name: figure}}}
	for i := 0; i < len(cells); i += 2 {
		t.Rows = append(t.Rows, map[string]any{key: cells[i], figure: cells[i+1]})
	}
	b.Tables[name] = t
}

// Shown writes a number or flag, or what is missing.
func Shown(f Unknowable) string {
	switch f := f.(type) {
	case working.Number:
		if f.Known() {
			return working.Plain(f.Value())
		}
	case working.Flag:
		if f.Known() {
			return fmt.Sprint(f.Value())
		}
	}
	return fmt.Sprint(f.Missing())
}
