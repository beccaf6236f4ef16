package book

import (
	"slices"

	"sunclause/facts/working"
)

// Any in a key column of a table holds for every word and number.
const Any = "any"

// Key is one condition on the rows of a table.
type Key struct {
	column  string
	word    working.Text
	number  working.Number
	numeric bool
	step    step
}

// step is how a numeric key takes the rows of a column of steps.
type step int

const (
	exact step = iota
	up         // the next higher step
	down       // the next lower step
)

// Is asks for rows with a word in a column.
func Is(column string, word working.Text) Key { return Key{column: column, word: word} }

// Equals asks for rows with a number in a column.
func Equals(column string, n working.Number) Key {
	return Key{column: column, number: n, numeric: true}
}

// UpTo asks for the row with the least number in a column that is not below the
// quantity: where a book says that a value between two rows takes the next
// higher one.
func UpTo(column string, n working.Number) Key {
	return Key{column: column, number: n, numeric: true, step: up}
}

// DownTo asks for the row with the greatest number in a column that is not above
// the quantity.
func DownTo(column string, n working.Number) Key {
	return Key{column: column, number: n, numeric: true, step: down}
}

func (k *Key) known() bool {
	if k.numeric {
		return k.number.Known()
	}
	return k.word.Known()
}

// missing says why a key is not known; of one that is, that the table with a title
// has no row for it.
func (k *Key) missing(title string) []working.Gap {
	switch {
	case k.numeric && !k.number.Known():
		return k.number.Missing()
	case k.numeric:
		says := ""
		if k.number.Formula() != "" {
			says = k.number.Symbol() + " = " + k.number.Written()
		}
		return k.number.Doubted(working.OffTable, title, says)
	case !k.word.Known():
		return k.word.Missing()
	case k.word.At() != "":
		return []working.Gap{{At: k.word.At(), Why: working.OffTable, Stated: k.word.Value(), With: title}}
	}
	return nil
}

// match is how a row stands to a key.
type match int

const (
	no match = iota
	maybe
	yes
)

func (k *Key) match(cell any) match {
	n, isNumber := cell.(float64)
	switch {
	case cell == Any:
		return yes
	case cell == nil:
		return no
	case !k.known():
		return maybe
	case isNumber && k.numeric && k.covers(n), !k.numeric && cell == k.word.Value():
		return yes
	}
	return no
}

// covers reports whether the quantity is at the step of a row, or may take it.
func (k *Key) covers(step float64) bool {
	switch k.step {
	case up:
		return step >= k.number.Value()
	case down:
		return step <= k.number.Value()
	}
	return step == k.number.Value()
}

// Row is the row of a table that was picked by its keys, or the reason why none
// was.
type Row struct {
	table   *Table
	cells   map[string]any
	keys    []Key
	missing []working.Gap
	lacked  bool // no row of the table holds; nothing was unknown
}

// Pick takes the first row that every key holds for, and among the steps of an
// UpTo or DownTo the nearest. Where a row could hold if something unknown were known, and
// comes before one that does, there is no answer: a table is never guessed at.
func (b Book) Pick(table string, keys ...Key) Row {
	t, ok := b.Tables[table]
	if !ok {
		return Row{missing: []working.Gap{working.Unstated(lacks("table", table))}}
	}
	r := Row{table: t, keys: keys}
	best := no
	for _, cells := range t.Rows {
		m := matchAll(keys, cells)
		if m != no && (best == no || nearer(keys, cells, r.cells)) {
			best, r.cells = m, cells
		}
	}
	if best == yes {
		return r
	}
	return Row{table: t, keys: keys, missing: t.unmet(keys, best), lacked: best == no}
}

// matchAll is how a row stands to all keys: as to the one it suits least.
func matchAll(keys []Key, cells map[string]any) match {
	m := yes
	for i := range keys {
		if m = min(m, keys[i].match(cells[keys[i].column])); m == no {
			break
		}
	}
	return m
}

// nearer reports whether a row is on a nearer step than another.
func nearer(keys []Key, cells, than map[string]any) bool {
	for _, k := range keys {
		a, isNumber := cells[k.column].(float64)
		b, wasNumber := than[k.column].(float64)
		if k.step != exact && isNumber && wasNumber && a != b {
			return (a < b) == (k.step == up)
		}
	}
	return false
}

// unmet says what is the matter with the unknown keys, or with all where no row
// holds for them.
func (t *Table) unmet(keys []Key, best match) []working.Gap {
	var gaps []working.Gap
	for i := range keys {
		if k := &keys[i]; best == no || !k.known() {
			gaps = append(gaps, k.missing(t.Title)...)
		}
	}
	return gaps
}

// Lacked reports whether every key was known and the table has no such row.
func (r Row) Lacked() bool {
	return r.lacked && !slices.ContainsFunc(r.keys, func(k Key) bool { return !k.known() })
}

// Number takes a cell of the row as a quantity that was looked up with the
// numbers among the keys.
func (r Row) Number(column, symbol string) working.Number {
	v, missing, ok := r.cell(column)
	if !ok {
		return working.Unknown(symbol, r.unit(column), missing...)
	}
	var numbers []working.Number
	for _, k := range r.keys {
		if k.numeric && k.known() {
			numbers = append(numbers, k.number)
		}
	}
	found := working.Lookup{Symbol: symbol, Unit: r.unit(column), Text: "table “" + r.table.Title + "”", Source: r.table.Source}
	return found.Of(func(...float64) float64 { return v }, numbers...).ChosenBy(r.chosenBy())
}

// Figure takes a cell of the row as a figure of the rule set, as it stands there.
func (r Row) Figure(column, symbol string) working.Number {
	v, missing, ok := r.cell(column)
	if !ok {
		return working.Unknown(symbol, r.unit(column), missing...)
	}
	return working.Figure(symbol, r.unit(column), v, "table "+r.table.Name+" of "+r.table.Set, r.table.Source).ChosenBy(r.chosenBy())
}

// cell is a number of the row; without one, missing says why.
func (r Row) cell(column string) (v float64, missing []working.Gap, ok bool) {
	if r.cells == nil {
		return 0, r.missing, false
	}
	if v, ok = r.cells[column].(float64); !ok {
		return 0, r.table.unmet(r.keys, no), false
	}
	return v, nil, true
}

// chosenBy is the place of the first word among the keys that the document states.
func (r Row) chosenBy() string {
	for _, k := range r.keys {
		if !k.numeric && k.known() && k.word.At() != "" {
			return k.word.At()
		}
	}
	return ""
}

// Word takes a cell of the row as a word.
func (r Row) Word(column string) working.Text {
	if r.cells == nil {
		return working.UnknownText(r.missing...)
	}
	if v, ok := r.cells[column].(string); ok {
		return working.KnownText(v, "")
	}
	return working.UnknownText(r.table.unmet(r.keys, no)...)
}

func (r Row) unit(column string) string {
	if r.table == nil {
		return ""
	}
	return r.table.unit(column)
}
