// Package label derives the facts of labels: which legends are put up, which
// ones the rule set's label tables ask for on this installation and where, how
// each run of cable is marked along its route, and whether the values printed
// agree with those derived.
package label

import (
	"sunclause/facts/book"
	"sunclause/facts/cable"
	"sunclause/facts/circuit"
	"sunclause/facts/pvstring"
	"sunclause/facts/working"
	"sunclause/schema"
)

// Facts are the facts of the labels of an installation.
type Facts struct {
	Labels   []Label // nil when the document states none
	Places   []Place
	Markings []Marking // by run
	Legends  working.Names
}

// Derive derives the facts of labels.
func Derive(in *schema.Installation, c *circuit.Circuit, pv pvstring.Facts, cables cable.Facts, b book.Book) Facts {
	j := jobOf(in, c, pv, cables, b)
	f := Facts{Legends: Legends(in), Labels: j.labels(), Markings: make([]Marking, len(in.Cables))}
	for i := range in.Cables {
		f.Markings[i] = j.marking(i)
	}
	f.Places = j.schedule(f.Markings)
	return f
}

// Legends lists the legends of the labels put up; unknown when the document
// states no labels, or when one of them does not say what it is.
func Legends(in *schema.Installation) working.Names {
	if in.Labels == nil {
		return working.UnknownList("/labels")
	}
	var put []string
	for i := range in.Labels {
		if l := in.Labels[i].Legend; !l.Stated() {
			return working.UnknownList(l.At())
		}
		put = append(put, in.Labels[i].Legend.Value)
	}
	return working.List(put...)
}
