package roof

import (
	"cmp"
	"math"
	"slices"

	"sunclause/facts/working"
	"sunclause/schema"
)

// bar is one rail with what it carries and what carries it. Along is its own
// direction, across the other.
type bar struct {
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
	layers   []string         // what keeps the load on it from being known
	unplaced []string         // what keeps the modules on it from being known
}

// carry finds what lies on each rail and what holds it.
func (s *slope) carry() {
	for i := range s.doc.Fixings {
		s.railless[s.doc.Fixings[i].Module.Value]++
	}
	upper, unsaid := s.layers()
	onRail := s.onRails()
	for i := range s.doc.Rails {
		doc := &s.doc.Rails[i]
		r := bar{doc: doc, across: doc.Direction.Is("across_slope"), layers: unsaid}
		x, y := working.Stated("x", "mm", doc.XMm), working.Stated("y", "mm", doc.YMm)
		r.at, r.from = y, x
		if !r.across {
			r.at, r.from = x, y
		}
		r.to = working.Sum("x_end", "mm", r.from.As("x_0"), working.Stated("l_rail", "mm", doc.LengthMm))
		if len(upper) == 0 || slices.Contains(upper, i) {
			s.under(&r, i)
		}
		r.unplaced = slices.Concat(r.to.Missing(), s.lost)
		r.fixings = onRail[doc.ID.Value]
		s.inOrder(&r)
		s.bars = append(s.bars, r)
		s.railAt[doc.ID.Value] = i
	}
	// A rail whose end is not known may share any module with the others.
	var endless []string
	for i := range s.bars {
		if missing := s.bars[i].to.Missing(); len(endless) < enough {
			endless = append(endless, missing...)
		}
	}
	for i := range s.bars {
		s.bars[i].layers = slices.Concat(s.bars[i].layers, endless)
		if s.crowded != "" {
			s.bars[i].unplaced = append(s.bars[i].unplaced, s.crowded)
		}
		s.share(&s.bars[i])
	}
}

// enough is how many members are named of a list that lacks the same in all its
// parts; each of thousands of fixings would name each of thousands of modules.
const enough = 10

// railsMost is the most rails that can lie below one module; with more of them
// the places are wrong, and the loads not known.
const railsMost = 8

// layers finds the rails that lie on other rails. The load of the rails below
// them comes in points that are not worked out here.
func (s *slope) layers() (upper []int, missing []string) {
	for i, r := range s.doc.Rails {
		if (!r.CarriedBy.Stated() || r.CarriedBy.Is("rails_below")) && len(missing) < enough {
			missing = append(missing, r.CarriedBy.At())
		}
		if r.CarriedBy.Is("rails_below") {
			upper = append(upper, i)
		}
	}
	return upper, missing
}

// along gives the ends of a box in the direction of the rail, and square to it.
func (r *bar) along(b *box) (from, to, low, high *working.Number) {
	if r.across {
		return &b.left, &b.right, &b.bottom, &b.top
	}
	return &b.bottom, &b.top, &b.left, &b.right
}

// stretch does for a box without working what along does.
func (r *bar) stretch(b *plain) (from, to, low, high float64) {
	if r.across {
		return b.left, b.right, b.bottom, b.top
	}
	return b.bottom, b.top, b.left, b.right
}

// under finds the modules that the rail runs below.
func (s *slope) under(r *bar, i int) {
	if !r.to.Known() || s.lost != nil {
		return
	}
	at, start, end := r.at.Value(), r.from.Value(), r.to.Value()
	for j := range s.plain {
		from, to, low, high := r.stretch(&s.plain[j])
		if low <= at && at <= high && from < end && start < to {
			m := &s.layout[j]
			if len(m.bars) == railsMost {
				s.crowded = m.doc.At()
				continue
			}
			r.modules = append(r.modules, j)
			m.bars = append(m.bars, i)
		}
	}
}

// share works out what part of each module lies on the rail: between two lines of
// rails by the law of the lever, between more of them in equal parts. Rails in one
// line, end to end, count once.
func (s *slope) share(r *bar) {
	for _, j := range r.modules {
		m := &s.layout[j]
		_, _, y0, y1 := r.along(&m.box)
		low, high := y0.As("y_0"), y1.As("y_1")
		t := working.Closure{Symbol: "t", Unit: "mm", Text: "(y_1 − y_0) / n_rails", Source: beams}
		lines := s.lines(m)
		width := t.Of(func(x ...float64) float64 { return (x[1] - x[0]) / x[2] }, low, high, working.Counted("n_rails", len(lines), m.doc.At()))
		if len(lines) == 2 {
			other := lines[0]
			if other.at.Value() == r.at.Value() {
				other = lines[1]
			}
			level := working.Lookup{Symbol: "t", Unit: "mm", Text: "(y_1 − y_0) · lever of the other rail about the middle of the module, over the distance of the two", Source: statics}
			width = level.Of(func(x ...float64) float64 {
				return (x[1] - x[0]) * math.Abs((x[3]-(x[0]+x[1])/2)/(x[3]-x[2]))
			}, low, high, r.at.As("y_rail"), other.at.As("y_other"))
		}
		r.width = append(r.width, width)
		r.line = append(r.line, working.Closure{Symbol: "w_d", Unit: "kN/m", Text: "u · t / 1000", Source: statics}.Of(
			func(x ...float64) float64 { return x[0] * x[1] / 1000 }, m.uplift, width))
	}
}

// lines are the rails below a module, those in one line once.
func (s *slope) lines(m *laid) []*bar {
	var lines []*bar
	for _, i := range m.bars {
		r := &s.bars[i]
		if !slices.ContainsFunc(lines, func(l *bar) bool { return l.across == r.across && l.at.Value() == r.at.Value() }) {
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
func (s *slope) inOrder(r *bar) {
	at := func(i int) float64 { return s.fixingAt(r, i).Value() }
	slices.SortStableFunc(r.fixings, func(a, b int) int { return cmp.Compare(at(a), at(b)) })
	r.held = [2]int{0, len(r.fixings) - 1}
	for k, i := range r.fixings {
		s.order[i] = k
	}
	for r.held[0] <= r.held[1] && s.beyond(r, r.fixings[r.held[0]]) {
		r.held[0]++
	}
	for r.held[0] <= r.held[1] && s.beyond(r, r.fixings[r.held[1]]) {
		r.held[1]--
	}
}

// fixingAt is where a fixing stands along a rail.
func (s *slope) fixingAt(r *bar, i int) working.Number {
	if f := &s.doc.Fixings[i]; r.across {
		return working.Stated("x", "mm", f.XMm)
	}
	return working.Stated("x", "mm", s.doc.Fixings[i].YMm)
}

// barOf finds a rail by the reference to it.
func (s *slope) barOf(ref schema.Text) *bar {
	i, ok := s.railAt[ref.Value]
	if !ok || !ref.Stated() {
		return nil
	}
	return &s.bars[i]
}
