package roof

import (
	"math"
	"slices"

	"sunclause/facts/working"
	"sunclause/schema"
)

// outlineEdges are the lines that can be a sloping side of a plane. A wall on the plane
// or a joint in it bounds no plane.
var outlineEdges = []string{"hip", "valley", "verge", "abutment", "parapet"}

// point is a place on the plane as a box without extent.
func point(x, y schema.Number) box {
	left, bottom := working.Stated("x", "mm", x), working.Stated("y", "mm", y)
	return box{left: left, right: left.As("x_r"), bottom: bottom, top: bottom.As("y_t")}
}

// inside is how far a box stays inside the outline of the plane; below zero it reaches
// beyond. The four sides bound the plane, and where a side is sloping, the lines that
// are drawn for it.
func (s *slope) inside(b *box) working.Number {
	r := s.borders(b)
	all := []working.Number{r.eaves, r.ridge, r.left, r.right}
	return working.Least("d_in", "mm", append(all, s.insideSlopingSides(b)...)...)
}

// insideSlopingSides are the distances of a box from the lines of the sloping sides.
func (s *slope) insideSlopingSides(b *box) []working.Number {
	var all []working.Number
	for _, side := range []struct {
		what schema.Text
		left bool
	}{{s.doc.LeftEdge, true}, {s.doc.RightEdge, false}} {
		if !side.what.Is("sloping") {
			continue
		}
		lines := s.linesOfSide(side.left)
		if len(lines) == 0 {
			all = append(all, working.Unknown("d_in", "mm", s.doc.Member("edges")))
		}
		for _, e := range lines {
			if d, beside := insideLine(b, e, side.left); beside {
				all = append(all, d)
			}
		}
	}
	return all
}

// linesOfSide are the lines drawn on the left or the right half of the plane that
// can be its side.
func (s *slope) linesOfSide(left bool) []*schema.RoofEdge {
	var all []*schema.RoofEdge
	for i := range s.doc.Edges {
		e := &s.doc.Edges[i]
		rises := e.FromYMm.Value != e.ToYMm.Value
		if middle := (e.FromXMm.Value + e.ToXMm.Value) / 2; rises && slices.Contains(outlineEdges, e.Kind.Value) && (middle < s.doc.EavesLengthMm.Value/2) == left {
			all = append(all, e)
		}
	}
	return all
}

// insideLine is how far a box stays on the inner side of a line, square to it, at those
// heights at which the line runs beside it; at none it is not beside.
func insideLine(b *box, e *schema.RoofEdge, left bool) (distance working.Number, beside bool) {
	xa, ya, xb, yb := e.FromXMm, e.FromYMm, e.ToXMm, e.ToYMm
	if low, high := min(ya.Value, yb.Value), max(ya.Value, yb.Value); b.top.Known() && (b.top.Value() < low || b.bottom.Value() > high) {
		return distance, false
	}
	edge := b.right
	if left {
		edge = b.left
	}
	f := working.Lookup{Symbol: "d_" + e.ID.Value, Unit: "mm", Text: "distance to the line, square to it; below zero where it reaches beyond", Source: working.ByDefinition}
	return f.Of(func(x ...float64) float64 {
		return squareInside(x[0], x[1], x[2], x[3], x[4], x[5], x[6], left)
	}, edge, b.bottom, b.top, working.Stated("x_a", "mm", xa), working.Stated("y_a", "mm", ya), working.Stated("x_b", "mm", xb), working.Stated("y_b", "mm", yb)), true
}

// squareInside measures from the lower and the upper end of the edge of a box, as far
// as the line runs beside them.
func squareInside(x, bottom, top, xa, ya, xb, yb float64, left bool) float64 {
	dx, dy := xb-xa, math.Abs(yb-ya)
	inward := -1.0
	if left {
		inward = 1
	}
	at := func(y float64) float64 { // square to the line, at the height y
		y = min(max(y, min(ya, yb)), max(ya, yb))
		return inward * (x - xa - (y-ya)*(xb-xa)/(yb-ya)) * dy / math.Hypot(dx, dy)
	}
	return min(at(bottom), at(top))
}
