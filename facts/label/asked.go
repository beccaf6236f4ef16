package label

import (
	"fmt"
	"maps"
	"slices"
	"strings"

	"sunclause/facts/book"
)

// asked is one row of a label table: a legend, the kind of place where it is
// due, and when.
type asked struct {
	legend, place, where, due, prints string
}

// tablePrefix begins the names of the tables that ask for labels. A set adds
// labels to those of the sets below with a table of its own, as in labels_gb.
const tablePrefix = "labels"

// rowsOf lists the rows of all label tables of a book, table by table in order
// of their names.
func rowsOf(b book.Book) []asked {
	var all []asked
	for _, name := range slices.Sorted(maps.Keys(b.Tables)) {
		if name != tablePrefix && !strings.HasPrefix(name, tablePrefix+"_") {
			continue
		}
		for _, row := range b.Tables[name].Rows {
			cell := func(column string) string {
				word, _ := row[column].(string)
				return word
			}
			all = append(all, asked{cell("legend"), cell("place"), cell("where"), cell("due"), cell("prints")})
		}
	}
	return all
}

// noWord is what is missing when a table uses a word that is not known here.
func noWord(column, word string, known []string) string {
	return fmt.Sprintf("a label table of the rule set has the %s %q; it can be %s", column, word, strings.Join(known, ", "))
}
