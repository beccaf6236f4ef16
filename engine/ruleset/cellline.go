package ruleset

import (
	"fmt"
	"maps"
	"slices"
	"strings"

	"sunclause/engine/catalogue"
	"sunclause/facts/book"
)

// keyComparisons are how the cells of a column may stand to the fact that picks
// the row, by the kind of the fact.
var keyComparisons = map[catalogue.Kind][]string{
	catalogue.Number: {"equals", "at_least", "at_most"},
	catalogue.Text:   {"equals"},
}

// cell reads a limit that stands in a table: TABLE.COLUMN where COLUMN equals
// FACT and COLUMN at_least FACT.
func (r *lineReader) cell(f namedFact) Operand {
	name, column, _ := strings.Cut(r.take().text, ".")
	t, ok := r.set.Book.Tables[name]
	if !ok {
		r.refuse(r.next-1, fmt.Sprintf("the rule set has no table %q", name), catalogue.DidYouMean(name, slices.Sorted(maps.Keys(r.set.Book.Tables))))
		return Operand{}
	}
	if f.Kind != catalogue.Number && f.Kind != catalogue.Text {
		r.refuse(r.next-1, fmt.Sprintf("a table holds numbers and words, which cannot limit a %s", f.Kind), "")
		return Operand{}
	}
	c := &Cell{Table: name, Column: r.column(t, r.next-1, column)}
	r.comparable(t, r.next-1, column, f)
	r.next++ // where
	for {
		k, ok := r.key(t)
		if !ok {
			return Operand{Cell: c}
		}
		c.Keys = append(c.Keys, k)
		if !r.takes("and") {
			break
		}
	}
	if steps := slices.DeleteFunc(slices.Clone(c.Keys), func(k Key) bool { return k.Comparison == "equals" }); len(steps) > 1 {
		r.refuse(r.next-1, "two columns are gone through by steps", "let all but one be equals")
	}
	return Operand{Cell: c}
}

func (r *lineReader) column(t *book.Table, word int, name string) string {
	names := make([]string, len(t.Columns))
	for i, c := range t.Columns {
		names[i] = c.Name
	}
	if !slices.Contains(names, name) {
		r.refuse(word, fmt.Sprintf("table %s has no column %q", t.Name, name), catalogue.DidYouMean(name, names))
	}
	return name
}

// comparable refuses a column that has no cell of the kind of a fact, and so never
// limits it or picks a row by it.
func (r *lineReader) comparable(t *book.Table, word int, column string, f namedFact) {
	has := func(cell any) bool {
		_, isNumber := cell.(float64)
		return cell != nil && isNumber == (f.Kind == catalogue.Number) || cell == book.Any
	}
	known := slices.ContainsFunc(t.Columns, func(c book.Column) bool { return c.Name == column })
	if known && len(t.Rows) > 0 && !slices.ContainsFunc(t.Rows, func(row map[string]any) bool { return has(row[column]) }) {
		r.refuse(word, fmt.Sprintf("column %s of table %s has no %s in it, and %s is one", column, t.Name, f.Kind, f.name), "")
	}
}

// key reads what picks the row: COLUMN COMPARISON FACT.
func (r *lineReader) key(t *book.Table) (Key, bool) {
	before := len(r.found)
	if r.left() < 3 {
		r.refuse(len(r.words)-1, "what picks the row of the table is not said whole", "write where COLUMN equals FACT, at_least or at_most for the nearest step")
		return Key{}, false
	}
	k := Key{Column: r.take().text, Comparison: r.take().text}
	r.column(t, r.next-2, k.Column)
	named := r.take().text
	f, ok := r.fact(r.next-1, named)
	if !ok {
		return k, false
	}
	k.Fact = f.name
	r.comparable(t, r.next-3, k.Column, f)
	if allowed := keyComparisons[f.Kind]; !slices.Contains(allowed, k.Comparison) {
		remedy := "a row is picked by numbers and words"
		if len(allowed) > 0 {
			remedy = "it can be " + strings.Join(allowed, ", ")
		}
		r.refuse(r.next-2, fmt.Sprintf("a row cannot be picked by %q of %s, which is a %s", k.Comparison, k.Fact, f.Kind), remedy)
	}
	return k, len(r.found) == before
}
