package schema

import (
	"iter"
	"maps"
	"slices"
	"strconv"
	"strings"
)

// Statement is something that a document states and a rule could judge: a number, a
// yes or no, a word of a list, a date. Ids, references and texts in free words are
// none.
type Statement struct {
	At string // JSON pointer
	As string // the same with [] for the number of an item and * for a key, as people say it: roof.planes[].pitch_deg

	// Within are the members on the way to it and itself, each by the name under which
	// its object is defined: roof.planes, plane.pitch_deg.
	Within []string
}

// Statements lists what an installation states, in the order of the text.
func (s *Source) Statements() iter.Seq[Statement] {
	return func(yield func(Statement) bool) {
		if s.root != nil {
			(&statements{yield: yield}).walk(&shapeOfInstallation, s.root, Statement{})
		}
	}
}

type statements struct {
	yield func(Statement) bool
	ended bool
}

func (w *statements) walk(s *shape, n *node, in Statement) {
	for i := range n.children {
		c := &n.children[i]
		switch {
		case w.ended:
			return
		case n.kind == isList:
			w.walk(s.each, c, in.below(strconv.Itoa(i), "[]"))
		case s.each != nil:
			w.walk(s.each, c, in.below(c.name, "*"))
		default:
			m := s.member(c.name)
			if m == nil {
				continue
			}
			below := in.below(c.name, c.name)
			below.Within = append(slices.Clip(in.Within), s.memberName(m))
			switch {
			case len(c.children) > 0:
				w.walk(m.shape, c, below)
			case m.states():
				w.ended = !w.yield(below)
			}
		}
	}
}

// below is a place below a statement, without what it is within.
func (s Statement) below(name, spoken string) Statement {
	as := s.As + spoken
	if s.As != "" && spoken != "[]" {
		as = s.As + "." + spoken
	}
	return Statement{At: s.At + "/" + escape(name), As: as, Within: s.Within}
}

// states reports whether a value of this shape is one that a rule could judge.
func (s *shape) states() bool {
	return s.kind == isNumber || s.kind == isTrue || s.kind == isText && (len(s.words) > 0 || s == &shapeOfDate)
}

// memberName is a member by the name under which its object is defined.
func (s *shape) memberName(m *memberShape) string {
	object, _, _ := strings.Cut(s.defined[strings.LastIndexByte(s.defined, '/')+1:], ".")
	return object + "." + m.name
}

// StatementNames lists what installations can state, and the objects and lists in
// which it stands, each by the name under which its object is defined.
func StatementNames() []string {
	names := map[string]bool{}
	var walk func(s *shape)
	walk = func(s *shape) {
		for s.each != nil {
			s = s.each
		}
		for i := range s.members {
			m := &s.members[i]
			name := s.memberName(m)
			if names[name] || m.kind != isObject && m.kind != isList && !m.states() {
				continue
			}
			names[name] = m.states() || holdsObjects(m.shape)
			walk(m.shape)
		}
	}
	walk(&shapeOfInstallation)
	maps.DeleteFunc(names, func(_ string, counts bool) bool { return !counts })
	return slices.Sorted(maps.Keys(names))
}

// holdsObjects reports whether it is an object of members, or a list of such. What
// stands under keys is reached by references.
func holdsObjects(s *shape) bool {
	return s.kind == isObject && s.each == nil || s.kind == isList && s.each.kind == isObject
}
