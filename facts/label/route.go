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
	unplaced  []working.Gap // what is missing to place stretches or labels
}

// stretch is one segment on the route.
type stretch struct {
	from, to working.Number
	through  bool         // it is itself a passage through a wall, floor or roof
	mustMark working.Flag // whether its function is not evident, so that it must be marked
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
func (r *route) follow(run *schema.Run) {
	if run.Segments == nil {
		r.unplaced = append(r.unplaced, working.Unstated(run.Member("segments")))
	}
	from := working.Sum("x", "m")
	for i := range run.Segments {
		s := &run.Segments[i]
		length := working.Stated("l_i", "m", s.LengthM)
		to := stretchEnd.Of(from, length)
		r.unplaced = append(r.unplaced, length.Missing()...)
		r.stretches = append(r.stretches, stretchOf(s, from, to))
		from = to
	}
}

func stretchOf(s *schema.Segment, from, to working.Number) stretch {
	return stretch{
		from: from, to: to, ends: s.EndsAt, passage: s.Passage, place: s.Place,
		through:  slices.Contains(passagePlaces, s.Place.Value),
		mustMark: mustMarkStretch(s),
		straight: working.All(working.StatedFlag(s.Straight), working.StatedFlag(s.Visible)),
	}
}

// mustMarkStretch reports whether a stretch must be marked: its function is not evident,
// and it is not where nobody could read a label.
func mustMarkStretch(s *schema.Segment) working.Flag {
	unreadable := working.StatedText(s.Place).OneOf(unreadablePlaces...)
	return working.All(working.Not(unreadable), working.Not(working.StatedFlag(s.FunctionEvident)))
}

// warnings places the warnings of the run on its route.
func (r *route) warnings(j *job, run *schema.Run) {
	if j.in.Labels == nil {
		r.unplaced = append(r.unplaced, working.Unstated("/labels"))
	}
	legends := j.legendAlong()
	if legends == nil {
		r.unplaced = append(r.unplaced, working.Unstated("the label tables of the rule set have no row for the place "+pvCable))
	}
	for _, l := range j.alongRun(run, legends) {
		at := working.Stated("x", "m", l.PositionM)
		r.unplaced = append(r.unplaced, at.Missing()...)
		r.labels = append(r.labels, point{at, l.Side.Value})
	}
	slices.SortStableFunc(r.labels, func(a, b point) int {
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
func (r *route) mustMarkSome(run *schema.Run) working.Flag {
	var needs []working.Flag
	if run.Segments == nil {
		needs = append(needs, working.UnknownFlag(run.Member("segments")))
	}
	for _, s := range r.stretches {
		needs = append(needs, s.mustMark)
	}
	return working.Any(needs...)
}

// length adds up what must be marked.
func (r *route) length() working.Number {
	var parts []working.Number
	for _, s := range r.stretches {
		switch {
		case !s.mustMark.Known():
			return working.Unknown("l_mark", "m", s.mustMark.Missing()...)
		case s.mustMark.Value():
			parts = append(parts, between("l_i", s.from, s.to))
		}
	}
	if len(r.stretches) == 0 && r.unplaced != nil {
		return working.Unknown("l_mark", "m", r.unplaced...)
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
