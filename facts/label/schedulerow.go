package label

import (
	"fmt"
	"maps"
	"slices"
	"strings"

	"sunclause/facts/book"
)

// scheduleRow is one row of a label table: a legend, the kind of place where it
// is due, and when.
type scheduleRow struct {
	legend, place, where, due, prints string
}

// tablePrefix begins the names of the tables that ask for labels. A set adds
// labels to those of the sets below with a table of its own, as in labels_gb.
const tablePrefix = "labels"

// scheduleRows lists the rows of all label tables of a book, table by table in order
// of their names.
func scheduleRows(b book.Book) []scheduleRow {
	var all []scheduleRow
	for _, name := range slices.Sorted(maps.Keys(b.Tables)) {
		if name != tablePrefix && !strings.HasPrefix(name, tablePrefix+"_") {
			continue
		}
		for _, row := range b.Tables[name].Rows {
			cell := func(column string) string {
				word, _ := row[column].(string)
				return word
			}
			all = append(all, scheduleRow{cell("legend"), cell("place"), cell("where"), cell("due"), cell("prints")})
		}
	}
	return all
}

// unknownWord is what is missing when a table uses a word that is not known here.
func unknownWord(column, word string, known []string) string {
	return fmt.Sprintf("a label table of the rule set has the %s %q; it can be %s", column, word, strings.Join(known, ", "))
}
