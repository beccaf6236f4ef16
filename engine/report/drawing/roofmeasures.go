package drawing

import (
	"fmt"
	"math"
)

// distances draws how far the modules stay from each side of the plane.
func (s *planSketch) distances() {
	if len(s.modules) == 0 {
		return
	}
	left, right, low, high := math.Inf(1), math.Inf(-1), math.Inf(1), math.Inf(-1)
	for _, b := range s.modules {
		left, right = math.Min(left, b.x), math.Max(right, b.x+b.w)
		low, high = math.Min(low, b.y), math.Max(high, b.y+b.h)
	}
	length, slope := s.plane.EavesLengthMm.Value, s.plane.SlopeLengthMm.Value
	below, beside := s.y(0)+14, s.x(0)-12
	s.measure(s.x(0), below, s.x(left), below, left)
	s.measure(s.x(right), below, s.x(length), below, length-right)
	s.measure(beside, s.y(0), beside, s.y(low), low)
	s.measure(beside, s.y(high), beside, s.y(slope), slope-high)
}

// measure draws one distance with its figure in mm.
func (s *planSketch) measure(x1, y1, x2, y2, mm float64) {
	s.line("measure", x1, y1, x2, y2)
	words := fmt.Sprintf("%.0f", mm)
	if x1 == x2 {
		s.line("measure", x1-3, y1, x1+3, y1)
		s.line("measure", x2-3, y2, x2+3, y2)
		s.add(`<g transform="translate(%s %s) rotate(-90)"><text class="small" text-anchor="middle">%s</text></g>`, num(x1-4), num((y1+y2)/2), words)
		return
	}
	s.line("measure", x1, y1-3, x1, y1+3)
	s.line("measure", x2, y2-3, x2, y2+3)
	s.text("small", (x1+x2)/2, y1+13, "middle", words, 0)
}

// clearances draws how far each opening stands from the nearest module, as long
// as there are few enough modules to read it.
func (s *planSketch) clearances() {
	if s.scale < legible {
		return
	}
	for _, o := range s.plane.Openings {
		if !o.WidthMm.Stated() || !o.LengthMm.Stated() {
			continue // it may reach nearer than it can be drawn
		}
		opening := box{o.XMm.Value, o.YMm.Value, o.WidthMm.Value, o.LengthMm.Value}
		if from, to, mm := s.nearest(opening); mm >= 1 && !math.IsInf(mm, 1) {
			s.line("measure", s.x(from[0]), s.y(from[1]), s.x(to[0]), s.y(to[1]))
			s.text("small", s.x((from[0]+to[0])/2)+2, s.y((from[1]+to[1])/2)-3, "middle", fmt.Sprintf("%.0f", mm), 0)
		}
	}
}

// nearest finds the shortest way from an opening to a module: from where, to
// where on the plane, and how long it is, in mm.
func (s *planSketch) nearest(o box) (from, to [2]float64, mm float64) {
	mm = math.Inf(1)
	for _, m := range s.plane.Modules {
		b, ok := s.modules[m.ID.Value]
		if !ok {
			continue
		}
		x1, x2 := between(o.x, o.w, b.x, b.w)
		y1, y2 := between(o.y, o.h, b.y, b.h)
		if d := math.Hypot(x2-x1, y2-y1); d < mm {
			from, to, mm = [2]float64{x1, y1}, [2]float64{x2, y2}, d
		}
	}
	return from, to, mm
}

// between is where the shortest way from one stretch to another begins and ends:
// both in the middle of what they share, where they do.
func between(a, length, b, other float64) (from, to float64) {
	switch low, high := math.Max(a, b), math.Min(a+length, b+other); {
	case low <= high:
		return (low + high) / 2, (low + high) / 2
	case a < b:
		return a + length, b
	default:
		return a, b + other
	}
}
