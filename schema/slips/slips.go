// Package slips makes documents with a single slip in them: a decimal point, a
// wrong word, a list left out, a reference to the part beside. What slips there
// are follows from the schema of the document, from its lists of words, its
// references and the units in its names, so that a new member is slipped too.
//
// Open texts are left as they are, since no other text is a wrong one; only the
// words of a label are read by others, and the figures in them are slipped.
//
// Only tests and the program that writes slips import it.
package slips

import (
	"fmt"
	"maps"
	"slices"
	"strconv"

	"sunclause/schema"
)

// Slip is one change to a document that somebody may make without noticing it.
type Slip struct {
	Class   string // what kind of slip it is, one of Classes
	Pointer string // JSON pointer of the value that is wrong
	Shape   string // the pointer with [] for the places in lists and * for the ids of sheets
	What    string // what became of the value, in words
	edits   []edit
}

// Classes are the kinds of slip, in the order in which they are listed.
var Classes = []string{
	word, answer, tenTimes, tenth, thousandTimes, thousandth, sign,
	emptied, leftOut, itemGone, partGone,
	moved, movedFar, turned, day, year, century, dates, hour,
	reference, swapped, printed, blank,
}

// The kinds of slip.
const (
	word          = "another word of the list"
	answer        = "an answer turned"
	tenTimes      = "ten times the value"
	tenth         = "a tenth of the value"
	thousandTimes = "a thousand times the value"
	thousandth    = "a thousandth of the value"
	sign          = "the sign turned"
	emptied       = "a list emptied"
	leftOut       = "a list left out"
	itemGone      = "an item left out"
	partGone      = "a part left out with what refers to it"
	moved         = "moved by 10 mm"
	movedFar      = "moved by a module's width"
	turned        = "x for y"
	day           = "a date moved by a day"
	year          = "a date moved by a year"
	century       = "a date moved by a century"
	dates         = "two dates swapped"
	hour          = "a time moved by an hour"
	reference     = "another part of the kind"
	swapped       = "two values of a sheet swapped"
	printed       = "another figure in the words of a label"
	blank         = "a text emptied"
)

// Of lists every slip of a document, given as its plain values in JSON.
func Of(document map[string]any) ([]Slip, error) {
	return made(document, (*generator).slip)
}

// made is what a visitor makes of the values of a document, once it knows them all.
func made(document map[string]any, visit func(g *generator, v any, n *node, at place)) ([]Slip, error) {
	root, err := readSchema()
	if err != nil {
		return nil, err
	}
	g := &generator{document: document, families: map[string][]string{}}
	if err := root.walk(document, place{}, g.meet); err != nil {
		return nil, err
	}
	err = root.walk(document, place{}, func(v any, n *node, at place) { visit(g, v, n, at) })
	return g.slips, err
}

// In is a document with the slip, which shares with it what did not change.
func (s Slip) In(document map[string]any) map[string]any {
	for _, e := range s.edits {
		document = e.in(document, e.path).(map[string]any)
	}
	return document
}

// edit is one value put in the place of another, or taken out.
type edit struct {
	path []string
	to   any
	out  bool
}

func (e edit) in(v any, path []string) any {
	if len(path) == 0 {
		return e.to
	}
	last := e.out && len(path) == 1
	switch v := v.(type) {
	case map[string]any:
		v = maps.Clone(v)
		if last {
			delete(v, path[0])
		} else {
			v[path[0]] = e.in(v[path[0]], path[1:])
		}
		return v
	case []any:
		i, _ := strconv.Atoi(path[0]) // the path came from walking the document
		v = slices.Clone(v)
		if last {
			return slices.Delete(v, i, i+1)
		}
		v[i] = e.in(v[i], path[1:])
		return v
	}
	return v
}

// generator goes through a document and notes its slips.
type generator struct {
	document map[string]any
	families map[string][]string // by id: the ids of all parts of its list, or of all sheets of its kind
	refers   []place             // where the values are that refer to parts
	slips    []Slip
}

// slip notes the slips of one value.
func (g *generator) slip(v any, n *node, at place) {
	switch v := v.(type) {
	case bool:
		g.add(answer, at, fmt.Sprintf("%v for %v", !v, v), set(at, !v))
	case float64:
		g.number(v, n, at)
	case string:
		g.text(v, n, at)
	case []any:
		g.list(v, n, at)
	case map[string]any:
		g.pairs(v, n, at)
	}
}

func (g *generator) add(class string, at place, what string, edits ...edit) {
	g.slips = append(g.slips, Slip{class, at.pointer(), at.shape, what, edits})
}

func set(at place, to any) edit { return edit{path: at.path, to: to} }

// change notes a slip that puts another value in the place of one.
func (g *generator) change(class string, at place, from, to any) {
	if from != to {
		g.add(class, at, fmt.Sprintf("%v for %v", to, from), set(at, to))
	}
}

// place is where a value stands.
type place struct {
	path  []string
	shape string
}

func (p place) member(name, shown string) place {
	return place{append(slices.Clip(slices.Clone(p.path)), name), p.shape + "/" + shown}
}

func (p place) pointer() string {
	at := ""
	for _, name := range p.path {
		at = schema.NewPointer(at).Member(name)
	}
	return at
}

func (p place) name() string {
	if len(p.path) == 0 {
		return ""
	}
	return p.path[len(p.path)-1]
}
