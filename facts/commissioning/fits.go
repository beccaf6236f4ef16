package commissioning

import (
	"slices"
	"strings"

	"sunclause/facts/working"
	"sunclause/schema"
)

// Fit holds whether words of the records and papers fit what they are about: an
// instrument the reading taken with it, a test the part tested, a way the office that
// it leads to.
type Fit struct {
	working.Subject

	Misfits working.Number `json:"misfits" words:"places where a word does not fit what it is about"`
}

// fits holds the words of the document to the table of what fits: of each row the path
// of a member (schema.Places), and the words that may stand there, or the kinds of the
// part that it names. Rows about one thing are judged together.
func (d *deriver) fits() []Fit {
	all := []Fit{}
	t := d.book.Tables["fits"]
	if t == nil {
		return all
	}
	kinds := d.in.Kinds()
	place := map[string]int{}
	for _, row := range t.Rows {
		word := func(column string) string { s, _ := row[column].(string); return s }
		i, ok := place[word("fit")]
		if !ok {
			i = len(all)
			place[word("fit")] = i
			all = append(all, Fit{Subject: working.Subject{ID: word("fit"), At: "/commissioning", Name: word("title")}, Misfits: working.Counted("n", 0, "")})
		}
		for _, p := range schema.Places(d.in, word("path")) {
			if is := p.Value; p.Stated() && !slices.Contains(strings.Fields(word("words")), is) && !isOf(kinds[is], strings.Fields(word("kinds"))) {
				all[i].misfit(p.Text, kinds[is])
			}
		}
	}
	return all
}

// isOf reports whether a kind is one of some, instrument.pv_tester also an instrument.
func isOf(kind string, some []string) bool {
	return slices.ContainsFunc(some, func(s string) bool { return kind == s || strings.HasPrefix(kind, s+".") })
}

// misfit counts a word that does not fit; the first is named.
func (f *Fit) misfit(word schema.Text, kind string) {
	if f.Misfits.Value() == 0 {
		f.At = word.At()
		f.Name += ": " + schema.Spoken(word.At()) + " is " + word.Value
		if kind != "" {
			f.Name += ", " + strings.NewReplacer("_", " ", ".", " ").Replace(kind)
		}
	}
	f.Misfits = working.Counted("n", int(f.Misfits.Value())+1, f.At)
}
