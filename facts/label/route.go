package label

import (
	"slices"

	"sunclause/facts/book"
	"sunclause/facts/working"
	"sunclause/schema"
)

var (
	stretchEnd = working.NewFormula("x", "m", "x + l_i", working.ByDefinition)
	distance   = working.NewFormula("l", "m", "x_2 − x_1", working.ByDefinition)
)

// route is a run of cable as one sees it who looks for its warnings.
type route struct {
	at        string
	stretches []stretch
	labels    []point
	unplaced  []string // what is missing to place stretches or labels
}

// stretch is one segment on the route.
type stretch struct {
	from, to working.Number
	through  bool         // it is itself a passage through a wall, floor or roof
	need     working.Flag // whether its function is not evident, so that it must be marked
	straight working.Flag // whether it is straight and visible
	ends     schema.Text
	passage  schema.CablePassage
	place    schema.Text
}

// point is a warning on the route.
type point struct {
	at   working.Number
	side string // of a passage: from_side, to_side or ""
}

// hiddenPlaces are those where a label along the cable cannot be read.
var hiddenPlaces = []string{"underground", "switchgear"}

// passagePlaces are the places that are themselves a passage.
var passagePlaces = []string{"roof_penetration", "wall_penetration", "floor_penetration"}

var unreadablePlaces = slices.Concat(hiddenPlaces, passagePlaces)

// follow puts the stretches one after the other.
func (w *route) follow(r *schema.Run) {
	if r.Segments == nil {
		w.unplaced = append(w.unplaced, r.Member("segments"))
	}
	from := working.Sum("x", "m")
	for i := range r.Segments {
		s := &r.Segments[i]
		length := working.Stated("l_i", "m", s.LengthM)
		to := stretchEnd.Of(from, length)
		w.unplaced = append(w.unplaced, length.Missing()...)
		w.stretches = append(w.stretches, stretchOf(s, from, to))
		from = to
	}
}

func stretchOf(s *schema.Segment, from, to working.Number) stretch {
	return stretch{
		from: from, to: to, ends: s.EndsAt, passage: s.Passage, place: s.Place,
		through:  slices.Contains(passagePlaces, s.Place.Value),
		need:     needOf(s),
		straight: working.All(working.StatedFlag(s.Straight), working.StatedFlag(s.Visible)),
	}
}

// needOf reports whether a stretch must be marked: its function is not evident,
// and it is not where nobody could read a label.
func needOf(s *schema.Segment) working.Flag {
	unreadable := working.StatedText(s.Place).OneOf(unreadablePlaces...)
	return working.All(working.Not(unreadable), working.Not(working.StatedFlag(s.FunctionEvident)))
}

// warnings places the warnings of the run on its route.
func (w *route) warnings(j *job, r *schema.Run) {
	if j.in.Labels == nil {
		w.unplaced = append(w.unplaced, "/labels")
	}
	legends := j.legendAlong()
	if legends == nil {
		w.unplaced = append(w.unplaced, "the label tables of the rule set have no row for the place "+pvCable)
	}
	for _, l := range j.alongRun(r, legends) {
		at := working.Stated("x", "m", l.PositionM)
		w.unplaced = append(w.unplaced, at.Missing()...)
		w.labels = append(w.labels, point{at, l.Side.Value})
	}
	slices.SortStableFunc(w.labels, func(a, b point) int {
		switch {
		case a.at.Value() < b.at.Value():
			return -1
		case a.at.Value() > b.at.Value():
			return 1
		}
		return 0
	})
}

// mustMarkSome reports whether any stretch must be marked.
func (w *route) mustMarkSome(r *schema.Run) working.Flag {
	var needs []working.Flag
	if r.Segments == nil {
		needs = append(needs, working.UnknownFlag(r.Member("segments")))
	}
	for _, s := range w.stretches {
		needs = append(needs, s.need)
	}
	return working.Any(needs...)
}

// length adds up what must be marked.
func (w *route) length() working.Number {
	var parts []working.Number
	for _, s := range w.stretches {
		switch {
		case !s.need.Known():
			return working.Unknown("l_mark", "m", s.need.Missing()...)
		case s.need.Value():
			parts = append(parts, between("l_i", s.from, s.to))
		}
	}
	if len(w.stretches) == 0 && w.unplaced != nil {
		return working.Unknown("l_mark", "m", w.unplaced...)
	}
	return working.Sum("l_mark", "m", parts...)
}

// between is the distance from one place on the route to another.
func between(symbol string, from, to working.Number) working.Number {
	return distance.Of(to.As("x_2"), from.As("x_1")).As(symbol)
}

// spacing is how far apart warnings may be on a stretch.
func (s *stretch) spacing(b book.Book) working.Number {
	switch {
	case !s.straight.Known():
		return working.Unknown("d_max", "m", s.straight.Missing()...)
	case s.straight.Value():
		return b.Number("label_spacing_straight_max_m", "d_max")
	}
	return b.Number("label_spacing_other_max_m", "d_max")
}
