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
// part that it names; where it has neither, nothing may be stated there. A row may hold
// only where something is stated at another path, or unless it is. Rows about one thing
// are judged together.
func (d *deriver) fits() []Fit {
	all := []Fit{}
	t := d.book.Tables["fits"]
	if t == nil {
		return all
	}
	kinds := d.in.Kinds()
	place, open := map[string]int{}, map[string][]working.Gap{} // by what fits; open is what leaves it open
	for _, row := range t.Rows {
		word := func(column string) string { s, _ := row[column].(string); return s }
		i, ok := place[word("fit")]
		if !ok {
			i = len(all)
			place[word("fit")] = i
			all = append(all, Fit{Subject: working.Subject{ID: word("fit"), At: "/commissioning", Name: word("title")}, Misfits: working.Counted("n", 0, "")})
		}
		holds := d.holds(word("where"), word("unless"))
		if holds.Known() && !holds.Value() {
			continue
		}
		for _, p := range schema.Places(d.in, word("path")) {
			is := p.Value
			switch {
			case !p.Stated() || slices.Contains(strings.Fields(word("words")), is) || isOf(kinds[is], strings.Fields(word("kinds"))):
			case !holds.Known():
				open[word("fit")] = append(open[word("fit")], holds.Missing()...)
			default:
				all[i].misfit(p.Text, kinds[is])
			}
		}
	}
	for fit, missing := range open {
		if f := &all[place[fit]]; f.Misfits.Value() == 0 {
			f.Misfits = working.Unknown("n", "", missing...)
		}
	}
	return all
}

// holds reports whether a row holds: where something is stated at one path, and nothing
// at another.
func (d *deriver) holds(where, unless string) working.Flag {
	holds := working.KnownFlag(true, "")
	if where != "" {
		holds = d.stated(where)
	}
	if unless != "" {
		holds = working.All(holds, working.Not(d.stated(unless)))
	}
	return holds
}

// stated reports whether something is stated where a path leads; that is not known where
// a list on the way is not stated.
func (d *deriver) stated(path string) working.Flag {
	var missing []working.Gap
	for _, p := range schema.Places(d.in, path) {
		if p.Stated() {
			return working.KnownFlag(true, p.At())
		}
		if p.Part == (schema.Pointer{}) { // it is the list
			missing = append(missing, working.Unstated(p.At()))
		}
	}
	if missing != nil {
		return working.UnknownFlag(missing...)
	}
	return working.KnownFlag(false, "")
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
