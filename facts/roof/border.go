package roof

import (
	"slices"

	"sunclause/facts/working"
	"sunclause/schema"
)

// What the sides and lines of a plane may be: an edge of the roof, or a wall that
// keeps fire from the next building.
var (
	roofEdges = []string{"ridge", "mono_ridge", "eaves", "verge", "hip", "valley", "parapet"}
	fireWalls = []string{"party_wall", "compartment_wall"}
)

// nearest is the least distance from a module to those sides and lines of the plane
// that are of some kinds. A side that is not said to be anything could be of them.
func (s *slope) nearest(symbol string, m *placedModule, kinds []string) working.Number {
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
		case slices.Contains(kinds, side.what.Value):
			all = append(all, side.distance)
		}
	}
	for _, e := range p.Edges {
		if slices.Contains(kinds, e.Kind.Value) {
			all = append(all, toLine(&m.box, e))
		}
	}
	if len(all) == 0 {
		return working.Unknown(symbol, "mm", p.Member("edges"))
	}
	return working.Least(symbol, "mm", all...)
}

// hasFireWall reports whether a side or line of the plane is a party or compartment
// wall. Lines left out could hold one.
func (s *slope) hasFireWall() working.Flag {
	p := s.doc
	var walls []working.Flag
	for _, side := range []schema.Text{p.LeftEdge, p.RightEdge, p.TopEdge, p.BottomEdge} {
		walls = append(walls, working.StatedText(side).OneOf(fireWalls...))
	}
	for _, e := range p.Edges {
		walls = append(walls, working.StatedText(e.Kind).OneOf(fireWalls...))
	}
	if p.Edges == nil {
		walls = append(walls, working.UnknownFlag(p.Member("edges")))
	}
	return working.Any(walls...)
}
