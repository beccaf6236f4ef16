package book

import (
	"slices"

	"sunclause/facts/working"
)

// Table is one table of a rule set: rows of named cells, each a float64 or a
// string, in the order of the book.
type Table struct {
	Name    string
	Title   string
	Source  working.Source
	Columns []Column
	Rows    []map[string]any
	Set     string // name of the rule set that holds it
}

// Column is one column: its name and the unit of its cells, "" for words,
// counts and factors.
type Column struct{ Name, Unit string }

// Step looks a quantity up in a table whose key column falls or rises in steps:
// it takes the row with the greatest key that is not above the quantity, and
// from it the cell of the wanted column. Below the last step the table has no
// answer, and the result is unknown: a table is never extended or interpolated.
func (b Book) Step(table, key string, of working.Number, want, symbol string) working.Number {
	t, ok := b.Tables[table]
	if !ok {
		return working.Unknown(symbol, "", lacks("table", table))
	}
	var best map[string]any
	for _, row := range t.Rows {
		k, isNumber := row[key].(float64)
		if isNumber && k <= of.Value() && (best == nil || k > best[key].(float64)) {
			best = row
		}
	}
	return t.cell(best, want, symbol, of)
}

// Keyed looks a word up in a table and takes the cell of the wanted column.
func (b Book) Keyed(table, key string, of working.Text, want, symbol string) working.Number {
	t, ok := b.Tables[table]
	if !ok {
		return working.Unknown(symbol, "", lacks("table", table))
	}
	if !of.Known() {
		return working.Unknown(symbol, t.unit(want), of.Missing()...)
	}
	for _, row := range t.Rows {
		if row[key] != of.Value() {
			continue
		}
		if v, ok := row[want].(float64); ok {
			return working.Figure(symbol, t.unit(want), v, "table "+t.Name+" of "+t.Set, t.Source).ChosenBy(of.At())
		}
	}
	return working.Unknown(symbol, t.unit(want), of.At())
}

// cell turns a cell into a quantity that was looked up with another. Without
// the cell the quantity is unknown because no step of the table covers it.
func (t *Table) cell(row map[string]any, want, symbol string, of working.Number) working.Number {
	f := working.Lookup{Symbol: symbol, Unit: t.unit(want), Text: "table “" + t.Title + "”", Source: t.Source}
	v, ok := row[want].(float64)
	if !ok {
		return working.Unknown(symbol, f.Unit, slices.Concat(of.Missing(), of.Pointers())...)
	}
	return f.Of(func(...float64) float64 { return v }, of)
}

func (t *Table) unit(column string) string {
	for _, c := range t.Columns {
		if c.Name == column {
			return c.Unit
		}
	}
	return ""
}
