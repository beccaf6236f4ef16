package roof

import (
	"sunclause/facts/working"
	"sunclause/schema"
)

// nearest is the least distance from a module to those sides and lines of the plane
// that are of a kind. A side that is not said to be anything could be of it.
func (s *slope) nearest(symbol string, m *laid, of func(string) bool) working.Number {
	r, p := &m.edges, s.doc
	var all []working.Number
	for _, side := range []struct {
		what     schema.Text
		distance working.Number
	}{{p.LeftEdge, r.left}, {p.RightEdge, r.right}, {p.TopEdge, r.ridge}, {p.BottomEdge, r.eaves}} {
		switch {
		case !side.what.Stated():
			return working.Unknown(symbol, "mm", side.what.At())
		case side.what.Is("sloping") && p.Edges == nil: // its line should be among the edges
			return working.Unknown(symbol, "mm", p.Member("edges"))
		case of(side.what.Value):
			all = append(all, side.distance)
		}
	}
	for _, e := range p.Edges {
		if of(e.Kind.Value) {
			all = append(all, toLine(&m.box, e))
		}
	}
	if len(all) == 0 {
		return working.Unknown(symbol, "mm", p.Member("edges"))
	}
	return working.Least(symbol, "mm", all...)
}

// hasWalls reports whether a side or line of the plane is a party or compartment
// wall. Lines left out could hold one.
func (s *slope) hasWalls() working.Flag {
	p := s.doc
	var missing []string
	for _, side := range []schema.Text{p.LeftEdge, p.RightEdge, p.TopEdge, p.BottomEdge} {
		if !side.Stated() {
			missing = append(missing, side.At())
		} else if isWall(side.Value) {
			return working.KnownFlag(true, side.At())
		}
	}
	for _, e := range p.Edges {
		if isWall(e.Kind.Value) {
			return working.KnownFlag(true, e.Kind.At())
		}
	}
	if p.Edges == nil {
		missing = append(missing, p.Member("edges"))
	}
	if missing != nil {
		return working.UnknownFlag(missing...)
	}
	return working.KnownFlag(false, p.At())
}
