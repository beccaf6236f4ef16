package roof

import (
	"math"

	"sunclause/facts/working"
	"sunclause/schema"
)

// box is a rectangle on the plane, in mm.
type box struct{ left, right, bottom, top working.Number }

// placedModule is one module where it lies.
type placedModule struct {
	doc   *schema.PlacedModule
	sheet *schema.Module
	box   box
	edges borders
	mass  working.Number // kg
	area  working.Number // m²
	dead  working.Number // kN/m² of the module alone
	rails []int          // rails it lies on

	zones  working.Names  // of the wind
	net    working.Number // coefficient of uplift
	pull   working.Number // Pa, characteristic
	uplift working.Number // kN/m², design
}

// placeModules puts every module of the plane where it lies.
func (s *slope) placeModules() {
	for i := range s.doc.Modules {
		s.layout = append(s.layout, s.place(&s.doc.Modules[i]))
		s.bounds = append(s.bounds, s.layout[i].box.bounds())
	}
	s.unplacedReasons = s.unplaced()
	for i := range s.layout {
		s.moduleByID[s.layout[i].doc.ID.Value] = &s.layout[i]
	}
	s.clamps = s.clampsOnModules()
}

// Formulas of modules and of the rectangles that they cover.
var (
	moduleArea = working.NewFormula("A", "m²", "l · w / 1000000", working.ByDefinition)
	moduleDead = working.NewFormula("g", "kN/m²", "9.81 · m / A / 1000", working.ByDefinition)
	gapBetween = working.NewFormula("d", "mm", "greatest of x_2 − x_r1, x_1 − x_r2, y_2 − y_t1, y_1 − y_t2", working.ByDefinition)
)

// place puts a module where it lies.
func (s *slope) place(doc *schema.PlacedModule) placedModule {
	sheet := sheetOf(doc)
	long, short := working.Stated("l", "mm", sheet.LengthMm), working.Stated("w", "mm", sheet.WidthMm)
	m := placedModule{doc: doc, sheet: sheet, mass: working.Stated("m", "kg", sheet.MassKg), area: moduleArea.Of(long, short)}
	m.dead = moduleDead.Of(m.mass, m.area)
	if doc.Orientation.Is("portrait") {
		long, short = short, long
	}
	m.box = rectangle(doc.XMm, doc.YMm, long, short)
	m.edges = s.borders(&m.box)
	return m
}

// sheetOf is the datasheet of a placed module: its own, or that of its string.
func sheetOf(m *schema.PlacedModule) *schema.Module {
	if !m.Module.Stated() && m.String.Stated() {
		return m.String.To().Module.To()
	}
	return m.Module.To()
}

// rectangle is the box of something whose lower left corner is stated.
func rectangle(x, y schema.Number, width, height working.Number) box {
	left, bottom := working.Stated("x", "mm", x), working.Stated("y", "mm", y)
	return box{left: left, bottom: bottom, right: working.Sum("x_r", "mm", left, width.As("d_x")), top: working.Sum("y_t", "mm", bottom, height.As("d_y"))}
}

func (b *box) known() bool { return b.right.Known() && b.top.Known() }

// missing names what keeps the box from being known.
func (b *box) missing() []working.Gap { return append(b.right.Missing(), b.top.Missing()...) }

// gap is how far two boxes are apart along the one axis on which they do not
// overlap; below zero it is how deep they overlap.
func gap(a, b *box) working.Number {
	return gapBetween.Of(b.left.As("x_2"), a.right.As("x_r1"), a.left.As("x_1"), b.right.As("x_r2"), b.bottom.As("y_2"), a.top.As("y_t1"), a.bottom.As("y_1"), b.top.As("y_t2"))
}

// bounds are a box without its working, to find one of many.
type bounds struct{ left, right, bottom, top float64 }

func (b *box) bounds() bounds {
	return bounds{b.left.Value(), b.right.Value(), b.bottom.Value(), b.top.Value()}
}

// gap is the gap of two boxes.
func (a *bounds) gap(b *bounds) float64 {
	return max(b.left-a.right, a.left-b.right, b.bottom-a.top, a.bottom-b.top)
}

// apart is the straight distance between two boxes, corner to corner where they
// overlap on neither axis; 0 where one touches or covers the other.
func apart(a, b *box) float64 {
	dx := max(b.left.Value()-a.right.Value(), a.left.Value()-b.right.Value(), 0)
	dy := max(b.bottom.Value()-a.top.Value(), a.bottom.Value()-b.top.Value(), 0)
	return math.Hypot(dx, dy)
}

// borders are the distances from a box to the four sides of the plane, each
// below zero where the box reaches beyond it, and the nearer of left and right.
type borders struct{ eaves, ridge, left, right, side working.Number }

func (s *slope) borders(b *box) borders {
	r := borders{
		eaves: b.bottom.As("d_eaves"),
		left:  b.left.As("d_left"),
		ridge: working.Difference("d_ridge", "mm", working.Stated("l_slope", "mm", s.doc.SlopeLengthMm), b.top),
		right: working.Difference("d_right", "mm", working.Stated("l_eaves", "mm", s.doc.EavesLengthMm), b.right),
	}
	r.side = working.Least("d_side", "mm", r.left, r.right)
	return r
}

// toLine is the distance from a box to a line drawn on the plane; 0 where the
// line crosses it.
func toLine(b *box, e schema.RoofEdge) working.Number {
	f := working.Lookup{Symbol: "d_" + e.ID.Value, Unit: "mm", Text: "shortest distance to the line", Source: working.ByDefinition}
	return f.Of(func(x ...float64) float64 { return boxToSegment(x[0], x[1], x[2], x[3], x[4], x[5], x[6], x[7]) },
		b.left, b.right, b.bottom, b.top, working.Stated("x_a", "mm", e.FromXMm), working.Stated("y_a", "mm", e.FromYMm),
		working.Stated("x_b", "mm", e.ToXMm), working.Stated("y_b", "mm", e.ToYMm))
}

// boxToSegment measures by the ends of the line to the box and the corners of
// the box to the line, unless the line runs through the box.
func boxToSegment(left, right, bottom, top, xa, ya, xb, yb float64) float64 {
	dx, dy := xb-xa, yb-ya
	if t0, t1 := clip(xa, dx, left, right, 0, 1); t0 <= t1 {
		if t0, t1 = clip(ya, dy, bottom, top, t0, t1); t0 <= t1 {
			return 0
		}
	}
	best := math.Inf(1)
	for _, p := range [][2]float64{{left, bottom}, {left, top}, {right, bottom}, {right, top}} {
		t := 0.0
		if l := dx*dx + dy*dy; l > 0 {
			t = min(1, max(0, ((p[0]-xa)*dx+(p[1]-ya)*dy)/l))
		}
		best = min(best, math.Hypot(xa+t*dx-p[0], ya+t*dy-p[1]))
	}
	for _, p := range [][2]float64{{xa, ya}, {xb, yb}} {
		best = min(best, math.Hypot(max(left-p[0], p[0]-right, 0), max(bottom-p[1], p[1]-top, 0)))
	}
	return best
}

// clip keeps of the stretch t0 to t1 of a line what lies between two bounds.
func clip(from, step, low, high, t0, t1 float64) (float64, float64) {
	if step == 0 {
		if from < low || from > high {
			return 1, 0
		}
		return t0, t1
	}
	a, b := (low-from)/step, (high-from)/step
	return max(t0, min(a, b)), min(t1, max(a, b))
}
