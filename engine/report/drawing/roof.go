package drawing

import (
	"fmt"
	"html/template"
	"math"
	"strconv"
	"strings"

	"sunclause/engine/judge"
	"sunclause/facts/working"
	"sunclause/schema"
)

// Sizes of the roof plan, in units of the drawing.
const (
	planLength = 860.0 // of the plane along the eaves, where it is no steeper than wide
	planHeight = 640.0 // at most
	planMargin = 46.0
)

// roofDrawings are plans of the planes that carry modules, to scale, as seen
// square to the slope from outside with the eaves below.
func roofDrawings(r *judge.Result, found map[string]string) []Drawing {
	var all []Drawing
	planes := r.Document.Installation.Roof.Planes
	for i := range planes {
		p := &planes[i]
		if len(p.Modules) == 0 || !p.EavesLengthMm.Stated() || !p.SlopeLengthMm.Stated() {
			continue
		}
		words := "to scale, seen square to the slope with the eaves below. Dashed: timbers. Small squares: clamps, and green where the maker allows them. Crosses: fixings. Figures in mm."
		svg, pins := drawPlane(p, found)
		if len(pins) > 0 {
			words += " Not met or not shown: " + strings.Join(pins, "; ") + "."
		}
		all = append(all, Drawing{Name: "roof-" + p.ID.Value, Title: "Roof plane " + p.ID.Value, Words: words, SVG: svg})
	}
	return all
}

// planSketch draws one plane.
type planSketch struct {
	svg
	plane    *schema.Plane
	scale    float64 // units a millimetre
	modules  map[string]box
	findings map[string]string // by part: the title of what is worst there
	pins     []string          // what each pin stands for, in order
}

// box is a rectangle on the plane, in mm.
type box struct{ x, y, w, h float64 }

// mostPins keeps a plan readable; whatever is beyond stays red.
const mostPins = 20

// pin marks a part of which something is not met or not shown with a number.
func (s *planSketch) pin(id string, x, y float64) {
	title := s.findings[id]
	if title == "" || len(s.pins) == mostPins {
		return
	}
	s.pins = append(s.pins, fmt.Sprintf("%d %s, %s", len(s.pins)+1, id, title))
	s.circle("pin", x, y, 7)
	s.text("number", x, y+3.5, "middle", strconv.Itoa(len(s.pins)), 0)
}

func drawPlane(p *schema.Plane, found map[string]string) (svg template.HTML, pins []string) {
	length, slope := p.EavesLengthMm.Value, p.SlopeLengthMm.Value
	s := &planSketch{plane: p, scale: math.Min(planLength/length, planHeight/slope), findings: found}
	s.modules = s.boxes()
	s.width, s.height = length*s.scale+2*planMargin, slope*s.scale+2*planMargin
	s.rect("plane", planMargin, planMargin, length*s.scale, slope*s.scale)
	s.timbers()
	s.openings()
	s.placed()
	s.rails()
	s.clamps()
	s.fixings()
	s.edges()
	s.distances()
	s.clearances()
	return s.done("plan", "Plan of roof plane "+p.ID.Value), s.pins
}

func (s *planSketch) x(mm float64) float64 { return planMargin + mm*s.scale }

func (s *planSketch) y(mm float64) float64 {
	return planMargin + (s.plane.SlopeLengthMm.Value-mm)*s.scale
}

func (s *planSketch) box(class string, b box) {
	s.rect(class, s.x(b.x), s.y(b.y+b.h), b.w*s.scale, b.h*s.scale)
}

// classOf adds to a class that something is wrong with the part.
func (s *planSketch) classOf(class, id string) string {
	if s.findings[id] != "" {
		return class + " found"
	}
	return class
}

// sheetOf is the datasheet of a module: that of its string, or its own where it
// belongs to none.
func sheetOf(m schema.PlacedModule) *schema.Module {
	if m.String.Stated() {
		return m.String.To().Module.To()
	}
	return m.Module.To()
}

// boxes are the outlines of the modules, by id; one whose size or place is not
// stated has none.
func (s *planSketch) boxes() map[string]box {
	all := map[string]box{}
	for _, m := range s.plane.Modules {
		sheet := sheetOf(m)
		b := box{m.XMm.Value, m.YMm.Value, sheet.WidthMm.Value, sheet.LengthMm.Value}
		if m.Orientation.Is("landscape") {
			b.w, b.h = b.h, b.w
		}
		if m.XMm.Stated() && m.YMm.Stated() && b.w > 0 && b.h > 0 {
			all[m.ID.Value] = b
		}
	}
	return all
}

// timbers draws the middle lines of the rafters or purlins.
func (s *planSketch) timbers() {
	r := s.plane.Rafters
	var at []float64
	for _, l := range r.Lines {
		at = append(at, l.AtMm.Value)
	}
	for i := 0.0; len(r.Lines) == 0 && r.SpacingMm.Value > 0 && i < r.Count.Value; i++ {
		at = append(at, r.FirstMm.Value+i*r.SpacingMm.Value)
	}
	length, slope := s.plane.EavesLengthMm.Value, s.plane.SlopeLengthMm.Value
	for _, mm := range at {
		switch across := r.Direction.Is("across_slope"); {
		case across && mm <= slope:
			s.line("timber", s.x(0), s.y(mm), s.x(length), s.y(mm))
		case !across && mm <= length:
			s.line("timber", s.x(mm), s.y(0), s.x(mm), s.y(slope))
		}
	}
}

func (s *planSketch) openings() {
	for _, o := range s.plane.Openings {
		b := box{o.XMm.Value, o.YMm.Value, o.WidthMm.Value, o.LengthMm.Value}
		s.box(s.classOf("opening", o.ID.Value), b)
		s.line("cross", s.x(b.x), s.y(b.y), s.x(b.x+b.w), s.y(b.y+b.h))
		s.pin(o.ID.Value, s.x(b.x+b.w/2), s.y(b.y+b.h/2))
		s.text("small", s.x(b.x+b.w/2), s.y(b.y+b.h)-3, "middle", o.ID.Value, 8)
	}
}

func (s *planSketch) placed() {
	for _, m := range s.plane.Modules {
		b, ok := s.modules[m.ID.Value]
		if !ok {
			continue
		}
		s.box(s.classOf("module", m.ID.Value), b)
		if b.w*s.scale > 30 {
			s.text("small", s.x(b.x+b.w/2), s.y(b.y+b.h/2)+4, "middle", m.ID.Value, int(b.w*s.scale/6.2))
		}
		s.zones(m, b)
		s.pin(m.ID.Value, s.x(b.x)+11, s.y(b.y+b.h)+11)
	}
}

// legible is the scale from which on there is room for what is drawn at single
// modules; a roof of hundreds of them has none.
const legible = 0.03

// zones draws where the maker allows clamps on a module's long sides.
func (s *planSketch) zones(m schema.PlacedModule, b box) {
	if s.scale < legible {
		return
	}
	upright := !m.Orientation.Is("landscape")
	for _, z := range sheetOf(m).ClampZones {
		sidesUp := z.Side.Is("long") == upright // the side with the zone runs up the slope
		for _, far := range []bool{false, true} {
			s.zone(b, z, sidesUp, far)
		}
	}
}

// zone draws one zone on the two sides that have it, measured from the lower or
// left corner, or from the far one.
func (s *planSketch) zone(b box, z schema.ClampZone, sidesUp, far bool) {
	from, to := z.FromMm.Value, z.ToMm.Value
	side := b.w
	if sidesUp {
		side = b.h
	}
	if far {
		from, to = side-to, side-from
	}
	if sidesUp {
		s.line("zone", s.x(b.x), s.y(b.y+from), s.x(b.x), s.y(b.y+to))
		s.line("zone", s.x(b.x+b.w), s.y(b.y+from), s.x(b.x+b.w), s.y(b.y+to))
		return
	}
	s.line("zone", s.x(b.x+from), s.y(b.y), s.x(b.x+to), s.y(b.y))
	s.line("zone", s.x(b.x+from), s.y(b.y+b.h), s.x(b.x+to), s.y(b.y+b.h))
}

func (s *planSketch) rails() {
	for _, r := range s.plane.Rails {
		x, y := r.XMm.Value, r.YMm.Value
		x2, y2 := x+r.LengthMm.Value, y
		if r.Direction.Is("up_slope") {
			x2, y2 = x, y+r.LengthMm.Value
		}
		s.line(s.classOf("rail", r.ID.Value), s.x(x), s.y(y), s.x(x2), s.y(y2))
		s.pin(r.ID.Value, s.x(x)-12, s.y(y))
	}
}

// clamps draws each clamp where it grips the first module that it holds.
func (s *planSketch) clamps() {
	for _, c := range s.plane.Clamps {
		if len(c.Holds) == 0 {
			continue
		}
		h := c.Holds[0]
		b, ok := s.modules[h.Module.Value]
		if !ok || !h.FromCornerMm.Stated() {
			continue
		}
		x, y := gripped(b, h)
		s.rect(s.classOf("clamp", c.ID.Value), s.x(x)-2.2, s.y(y)-2.2, 4.4, 4.4)
		s.pin(c.ID.Value, s.x(x)+10, s.y(y)+10)
	}
}

// gripped is the place on the plane where a clamp grips a module. A corner that
// is not stated is the lower or left one.
func gripped(b box, h schema.ClampHold) (x, y float64) {
	along := h.FromCornerMm.Value
	switch h.Side.Value {
	case "left", "right":
		if h.Corner.Is("upper") {
			along = b.h - along
		}
		x, y = b.x, b.y+along
		if h.Side.Is("right") {
			x += b.w
		}
	default:
		if h.Corner.Is("right") {
			along = b.w - along
		}
		x, y = b.x+along, b.y
		if h.Side.Is("upper") {
			y += b.h
		}
	}
	return x, y
}

func (s *planSketch) fixings() {
	const cross = "M-2.6 -2.6L2.6 2.6M-2.6 2.6L2.6 -2.6"
	for _, f := range s.plane.Fixings {
		s.path(s.classOf("fixing", f.ID.Value), cross, s.x(f.XMm.Value), s.y(f.YMm.Value))
		s.pin(f.ID.Value, s.x(f.XMm.Value), s.y(f.YMm.Value)-11)
	}
}

// edges names the four sides and draws whatever line the plane has besides.
func (s *planSketch) edges() {
	length, slope := s.plane.EavesLengthMm.Value, s.plane.SlopeLengthMm.Value
	for _, e := range s.plane.Edges {
		s.line("rail", s.x(e.FromXMm.Value), s.y(e.FromYMm.Value), s.x(e.ToXMm.Value), s.y(e.ToYMm.Value))
	}
	s.text("small", s.x(length/2), s.y(0)+36, "middle", s.plane.BottomEdge.Value+", "+metres(length), 40)
	s.text("small", s.x(length/2), s.y(slope)-28, "middle", s.plane.TopEdge.Value, 20)
	s.add(`<g transform="translate(%s %s) rotate(-90)"><text class="small" text-anchor="middle">%s</text></g>`,
		num(s.x(0)-34), num(s.y(slope/2)), s.plane.LeftEdge.Value+", "+metres(slope))
	s.add(`<g transform="translate(%s %s) rotate(90)"><text class="small" text-anchor="middle">%s</text></g>`,
		num(s.x(length)+34), num(s.y(slope/2)), s.plane.RightEdge.Value)
}

func metres(mm float64) string { return working.Plain(math.Round(mm/10)/100) + " m" }
