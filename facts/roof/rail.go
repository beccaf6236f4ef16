package roof

import (
	"cmp"
	"slices"

	"sunclause/facts/working"
	"sunclause/schema"
)

// rail is one rail with what it carries and what carries it.
type rail struct {
	doc      *schema.Rail
	across   bool           // it runs across the slope
	at       working.Number // its middle line
	from, to working.Number // its ends
	modules  []int          // that lie on it, in the order of the document
	width    []working.Number
	line     []working.Number // design load away from the roof of each module on it, kN/m
	fixings  []int            // that are said to hold it, along the rail
	held     [2]int           // the first and last of them that do not stand beyond its ends
	shortest working.Number   // span between two of them; not there where there are no two
	layers   []working.Gap    // what keeps the load on it from being known
	unplaced []working.Gap    // what keeps the modules on it from being known
}

// assignLoads finds what lies on each rail and what holds it.
func (s *slope) assignLoads() {
	for i := range s.doc.Fixings {
		s.directFixings[s.doc.Fixings[i].Module.Value]++
	}
	upper, unsaid := s.stackedRails()
	onRail := s.onRails()
	for i := range s.doc.Rails {
		doc := &s.doc.Rails[i]
		r := rail{doc: doc, across: doc.Direction.Is("across_slope"), layers: unsaid}
		x, y := working.Stated("x", "mm", doc.XMm), working.Stated("y", "mm", doc.YMm)
		r.at, r.from = y, x
		if !r.across {
			r.at, r.from = x, y
		}
		r.to = working.Sum("x_end", "mm", r.from.As("x_0"), working.Stated("l_rail", "mm", doc.LengthMm))
		if len(upper) == 0 || slices.Contains(upper, i) {
			s.modulesAbove(&r, i)
		}
		r.unplaced = slices.Concat(r.to.Missing(), s.unplacedReasons)
		r.fixings = onRail[doc.ID.Value]
		s.inOrder(&r)
		s.rails = append(s.rails, r)
		s.railByID[doc.ID.Value] = i
	}
	// A rail whose end is not known may share any module with the others.
	var endless []working.Gap
	for i := range s.rails {
		if missing := s.rails[i].to.Missing(); len(endless) < maxNamed {
			endless = append(endless, missing...)
		}
	}
	for i := range s.rails {
		s.rails[i].layers = slices.Concat(s.rails[i].layers, endless)
		if s.tooManyRails != "" {
			s.rails[i].unplaced = append(s.rails[i].unplaced, working.Unstated(s.tooManyRails))
		}
		s.shareModules(&s.rails[i])
	}
}

// maxNamed is how many members are named of a list whose parts all lack the same;
// else each of thousands of fixings would name each of thousands of modules.
const maxNamed = 10

// maxRailsBelow is the most rails that can lie below one module; with more of them
// the places are wrong, and the loads not known.
const maxRailsBelow = 8

// stackedRails finds the rails that lie on other rails. The load of the rails below
// them comes in points that are not worked out here.
func (s *slope) stackedRails() (upper []int, missing []working.Gap) {
	for i, r := range s.doc.Rails {
		if (!r.CarriedBy.Stated() || r.CarriedBy.Is("rails_below")) && len(missing) < maxNamed {
			missing = append(missing, working.Unstated(r.CarriedBy.At()))
		}
		if r.CarriedBy.Is("rails_below") {
			upper = append(upper, i)
		}
	}
	return upper, missing
}

// along gives the ends of a box in the direction of the rail, and square to it.
func (r *rail) along(b *box) (from, to, low, high *working.Number) {
	if r.across {
		return &b.left, &b.right, &b.bottom, &b.top
	}
	return &b.bottom, &b.top, &b.left, &b.right
}

// alongBounds does for the bounds of a box what along does.
func (r *rail) alongBounds(b *bounds) (from, to, low, high float64) {
	if r.across {
		return b.left, b.right, b.bottom, b.top
	}
	return b.bottom, b.top, b.left, b.right
}

// modulesAbove finds the modules that the rail runs below.
func (s *slope) modulesAbove(r *rail, i int) {
	if !r.to.Known() || s.unplacedReasons != nil {
		return
	}
	at, start, end := r.at.Value(), r.from.Value(), r.to.Value()
	for j := range s.bounds {
		from, to, low, high := r.alongBounds(&s.bounds[j])
		if low <= at && at <= high && from < end && start < to {
			m := &s.layout[j]
			if len(m.rails) == maxRailsBelow {
				s.tooManyRails = m.doc.At()
				continue
			}
			r.modules = append(r.modules, j)
			m.rails = append(m.rails, i)
		}
	}
}

// Formulas of what lies on a rail.
var (
	equalWidth   = working.NewFormula("t", "mm", "(y_1 − y_0) / n_rails", beams)
	lineOfModule = working.NewFormula("w_d", "kN/m", "u · t / 1000", statics)
	leverWidth   = working.NewFormula("t", "mm", "(y_1 − y_0) · |(y_other − (y_0 + y_1) / 2) / (y_other − y_rail)|", statics)
)

// shareModules works out what part of each module lies on the rail: between two
// lines of rails by the law of the lever, between more of them in equal parts. Rails
// in one line, end to end, count once.
func (s *slope) shareModules(r *rail) {
	for _, j := range r.modules {
		m := &s.layout[j]
		_, _, y0, y1 := r.along(&m.box)
		low, high := y0.As("y_0"), y1.As("y_1")
		lines := s.railLines(m)
		width := equalWidth.Of(low, high, working.Counted("n_rails", len(lines), m.doc.At()))
		if len(lines) == 2 {
			other := lines[0]
			if other.at.Value() == r.at.Value() {
				other = lines[1]
			}
			width = leverWidth.Of(low, high, r.at.As("y_rail"), other.at.As("y_other"))
		}
		r.width = append(r.width, width)
		r.line = append(r.line, lineOfModule.Of(m.uplift, width))
	}
}

// railLines are the rails below a module, those in one line once.
func (s *slope) railLines(m *placedModule) []*rail {
	var lines []*rail
	for _, i := range m.rails {
		r := &s.rails[i]
		if !slices.ContainsFunc(lines, func(l *rail) bool { return l.across == r.across && l.at.Value() == r.at.Value() }) {
			lines = append(lines, r)
		}
	}
	return lines
}

// onRails finds the fixings of each rail, by its id.
func (s *slope) onRails() map[string][]int {
	found := map[string][]int{}
	for i := range s.doc.Fixings {
		if rail := s.doc.Fixings[i].Rail; rail.Stated() {
			found[rail.Value] = append(found[rail.Value], i)
		}
	}
	return found
}

// inOrder puts the fixings of a rail in their order along it.
func (s *slope) inOrder(r *rail) {
	at := func(i int) float64 { return s.fixingAt(r, i).Value() }
	slices.SortStableFunc(r.fixings, func(a, b int) int { return cmp.Compare(at(a), at(b)) })
	r.held = [2]int{0, len(r.fixings) - 1}
	for k, i := range r.fixings {
		s.order[i] = k
	}
	for r.held[0] <= r.held[1] && s.beyondEnd(r, r.fixings[r.held[0]]) {
		r.held[0]++
	}
	for r.held[0] <= r.held[1] && s.beyondEnd(r, r.fixings[r.held[1]]) {
		r.held[1]--
	}
}

// fixingAt is where a fixing stands along a rail.
func (s *slope) fixingAt(r *rail, i int) working.Number {
	if f := &s.doc.Fixings[i]; r.across {
		return working.Stated("x", "mm", f.XMm)
	}
	return working.Stated("x", "mm", s.doc.Fixings[i].YMm)
}

// railOf finds a rail by the reference to it.
func (s *slope) railOf(ref schema.Text) *rail {
	i, ok := s.railByID[ref.Value]
	if !ok || !ref.Stated() {
		return nil
	}
	return &s.rails[i]
}
