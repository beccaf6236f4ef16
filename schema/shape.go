package schema

import (
	"cmp"
	"slices"
	"strconv"
)

// A document is held first against shapes, which say what its schemas say as
// plain data (shapes.go, generated). What fits them is in order for sure, as
// nearly all documents are. The schemas themselves, whose compiling takes longer
// than all the rest of a check, are only asked for the words of what is wrong.

// shape is a subschema. Which of the limits count depends on the kind.
type shape struct {
	kind kind

	words []string // of which a text or number is one

	form    func(string) bool // of a text, or of the keys of an object
	pattern string            // the same as a regular expression
	fewest  int               // of characters, items or keys
	most    int

	least, greatest float64 // of a number
	above           bool    // whether it must be greater than the least
	whole           bool    // whether it must be a whole number

	defined string        // where an object is defined: file and fragment
	members []memberShape // of an object, sorted by name
	must    int           // how many of them it must have
	each    *shape        // items of a list; what stands under each key of an object
}

type memberShape struct {
	name string
	must bool
	*shape
	plausible *plausible // of a number: the values that nobody has to look at again; else nil
}

// fits reports whether a value is as its schema wants it, for sure. It says no
// also where it cannot tell. No member stands twice in an object of the tree.
func (s *shape) fits(n *node) bool {
	switch {
	case n.kind == isFalse && s.kind == isTrue:
		return true
	case n.kind != s.kind:
		return false
	}
	switch s.kind {
	case isText:
		return s.fitsText(n.text)
	case isNumber:
		return s.fitsNumber(n.text)
	case isList:
		return len(n.children) >= s.fewest && len(n.children) <= s.most && s.fitsEach(n)
	case isObject:
		if s.each == nil {
			return s.fitsMembers(n)
		}
		return len(n.children) <= s.most && s.fitsEach(n)
	}
	return true
}

func (s *shape) fitsText(text string) bool {
	switch {
	case s.words != nil:
		return slices.Contains(s.words, text)
	case s.form != nil:
		return s.form(text)
	}
	return len(text) >= s.fewest && len(text) <= s.most // a character has at least one byte
}

// surelyExact is how many characters a number may have so that it is told from
// every other such number, and from a limit, after it was made a float64.
const surelyExact = 15

func (s *shape) fitsNumber(text string) bool {
	if s.words != nil {
		return slices.Contains(s.words, text)
	}
	if len(text) > surelyExact || s.whole && !isWhole(text) {
		return false
	}
	v, err := strconv.ParseFloat(text, 64)
	return err == nil && v <= s.greatest && (v > s.least || v == s.least && !s.above)
}

// isWhole reports whether a number is written without point and exponent.
func isWhole(text string) bool {
	for i := range len(text) {
		if text[i] != '-' && (text[i] < '0' || text[i] > '9') {
			return false
		}
	}
	return true
}

func (s *shape) fitsEach(n *node) bool {
	for i := range n.children {
		if c := &n.children[i]; s.form != nil && !s.form(c.name) || !s.each.fits(c) {
			return false
		}
	}
	return true
}

func (s *shape) fitsMembers(n *node) bool {
	had := 0
	for i := range n.children {
		m := s.member(n.children[i].name)
		if m == nil || !m.fits(&n.children[i]) {
			return false
		}
		if m.must {
			had++
		}
	}
	return had == s.must
}

func (s *shape) member(name string) *memberShape {
	i, ok := slices.BinarySearchFunc(s.members, name, func(m memberShape, name string) int { return cmp.Compare(m.name, name) })
	if !ok {
		return nil
	}
	return &s.members[i]
}
