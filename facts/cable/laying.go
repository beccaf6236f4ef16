package cable

import (
	"sunclause/facts/working"
	"sunclause/schema"
)

// Laying holds what else the document says of how a stretch is laid, so that rows can
// hold one word of it against another.
type Laying struct {
	Last             working.Flag   `json:"last" words:"whether its run ends with it"`
	EndsAt           working.Text   `json:"ends_at" words:"what the route does where it ends"`
	RoofSpaceRoute   working.Text   `json:"roof_space_route" words:"way through a roof space; none, where it lies elsewhere and no such way is stated"`
	GroupArrangement working.Text   `json:"group_arrangement" words:"how the circuits beside it lie; none, where it lies alone"`
	Conductors       working.Number `json:"current_carrying_conductors" words:"current-carrying conductors in the same enclosure or bundle, its own included"`
	ConductorsMost   working.Number `json:"current_carrying_conductors_max" words:"most that the circuits side by side can have: four each"`
	LoadedConductors working.Number `json:"loaded_conductors" words:"loaded conductors of its run"`
	Visible          working.Flag   `json:"visible" words:"whether people see the cable or its enclosure"`
}

// conductorsMost: three lines and a neutral that is loaded too are the most that one
// circuit has.
var conductorsMost = working.NewFormula("n_c,max", "", "4 · n_all", working.ByDefinition)

func layingOf(f *Run, r *schema.Run, n int) Laying {
	s := &r.Segments[n]
	return Laying{
		Last:             working.KnownFlag(n == len(r.Segments)-1, s.At()),
		EndsAt:           working.StatedText(s.EndsAt),
		RoofSpaceRoute:   roofSpaceRoute(s),
		GroupArrangement: groupArrangement(s),
		Conductors:       working.Stated("n_c", "", s.CurrentCarryingConductors),
		ConductorsMost:   conductorsMost.Of(working.Stated("n_all", "", s.GroupedCircuits)),
		LoadedConductors: f.Loaded,
		Visible:          working.StatedFlag(s.Visible),
	}
}

// roofSpaceRoute is the way through a roof space; elsewhere there is none unless one
// is stated.
func roofSpaceRoute(s *schema.Segment) working.Text {
	if s.Place.Stated() && !s.Place.Is("roof_space") && !s.RoofSpaceRoute.Stated() {
		return working.KnownText("none", s.Place.At())
	}
	return working.StatedText(s.RoofSpaceRoute)
}

// groupArrangement is how the circuits beside a stretch lie; whatever is stated, one
// that lies alone has none beside it.
func groupArrangement(s *schema.Segment) working.Text {
	if s.GroupedCircuits.Stated() && s.GroupedCircuits.Value == 1 {
		return working.KnownText("none", s.GroupedCircuits.At())
	}
	return working.StatedText(s.GroupArrangement)
}

// Colours holds by what the conductors of a run are told apart.
type Colours struct {
	ColourPositive  working.Text `json:"colour_positive" words:"colour of its positive or line conductors, or of a protective one"`
	ColourNegative  working.Text `json:"colour_negative" words:"colour of its negative or neutral conductors; none, where an AC run has no neutral"`
	ColoursDiffer   working.Flag `json:"colours_differ" words:"whether positive and negative, or line and neutral, have colours of their own"`
	PolarityMarked  working.Flag `json:"polarity_marked" words:"whether polarity or phase is marked at both ends"`
	ToldApartAtEnds working.Flag `json:"poles_told_apart" words:"whether the poles are told apart by colour, or by marks at both ends"`
}

func coloursOf(r *schema.Run) Colours {
	c := Colours{
		ColourPositive: working.StatedText(r.ColourPositive),
		ColourNegative: working.StatedText(r.ColourNegative),
		PolarityMarked: working.All(working.StatedFlag(r.Start.PolarityMarked), working.StatedFlag(r.End.PolarityMarked)),
	}
	if r.Service.Is("ac") && r.NeutralConductor.Stated() && !r.NeutralConductor.Value && !r.ColourNegative.Stated() {
		c.ColourNegative = working.KnownText("none", r.NeutralConductor.At())
	}
	c.ColoursDiffer = working.Not(working.Same(c.ColourPositive, c.ColourNegative))
	c.ToldApartAtEnds = working.Any(c.ColoursDiffer, c.PolarityMarked)
	return c
}
