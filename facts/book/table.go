package book

import "sunclause/facts/working"

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
	return b.Pick(table, DownTo(key, of)).Number(want, symbol)
}

// Keyed looks a word up in a table and takes the cell of the wanted column.
func (b Book) Keyed(table, key string, of working.Text, want, symbol string) working.Number {
	return b.Pick(table, Is(key, of)).Figure(want, symbol)
}

func (t *Table) unit(column string) string {
	for _, c := range t.Columns {
		if c.Name == column {
			return c.Unit
		}
	}
	return ""
}
