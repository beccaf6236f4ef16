package roof

import (
	"sunclause/facts/working"
	"sunclause/schema"
)

// Parts is what the parts drawn on the roof come to.
type Parts struct {
	FixingsDrawn   working.Number `json:"fixings_drawn" words:"hooks and other fixings on the drawing"`
	FixingsCounted working.Number `json:"fixings_counted" words:"hooks and other fixings counted on site"`
	PlanesOverPlan working.Number `json:"planes_over_roof_plan" words:"horizontal projection of the planes with modules over that of the whole roof"`
}

var planesOverPlan = working.NewFormula("q_plan", "", "A_planes / A_plan", working.ByDefinition)

func partsOf(in *schema.Installation) Parts {
	var counts, areas []working.Number
	for i := range in.Roof.Planes {
		p := &in.Roof.Planes[i]
		counts = append(counts, working.Length("n", p.Fixings, p.Member("fixings")))
		areas = append(areas, planArea(p))
	}
	if in.Roof.Planes == nil {
		at := in.Roof.Member("planes")
		counts, areas = []working.Number{working.Unknown("n", "", at)}, []working.Number{working.Unknown("A", "m²", at)}
	}
	return Parts{
		FixingsDrawn:   working.Sum("n", "", counts...),
		FixingsCounted: working.Stated("n_site", "", in.Handover.AsBuilt.Fixings),
		PlanesOverPlan: planesOverPlan.Of(working.Sum("A_planes", "m²", areas...), working.Stated("A_plan", "m²", in.Roof.PlanAreaM2)),
	}
}

var planOfPlane = working.NewFormula("A", "m²", "l_eaves · l_slope · cos(α) / 1000000", working.ByDefinition)

// planArea is the horizontal projection of a plane. One with sloping sides is taken for
// half of the rectangle around it, the least that hips leave of it.
func planArea(p *schema.Plane) working.Number {
	whole := planOfPlane.Of(working.Stated("l_eaves", "mm", p.EavesLengthMm), working.Stated("l_slope", "mm", p.SlopeLengthMm), working.Stated("α", "°", p.PitchDeg))
	if p.LeftEdge.Is("sloping") || p.RightEdge.Is("sloping") {
		return working.Product("A", "m²", working.ByDefinition, working.Figure("q", "", 0.5, "a triangle in its rectangle", working.ByDefinition), whole)
	}
	return whole
}

// partsMass is the mass of the rails, fixings, screws and clamps on the plane by their
// sheets, in kg.
func (s *slope) partsMass() working.Number {
	p := s.doc
	m := pieces{of: map[*schema.FixingDatasheet]float64{}}
	for i := range p.Rails {
		m.add(p.Rails[i].Datasheet.To(), p.Rails[i].LengthMm, 0.001)
	}
	for i := range p.Fixings {
		m.count(p.Fixings[i].Datasheet.To())
		m.add(p.Fixings[i].Screw.To(), p.Fixings[i].Screws, 1)
	}
	for i := range p.Clamps {
		m.count(p.Clamps[i].Datasheet.To())
	}
	for _, list := range []struct {
		stated bool
		name   string
	}{{p.Rails != nil, "rails"}, {p.Fixings != nil, "fixings"}, {p.Clamps != nil, "clamps"}} {
		if !list.stated {
			m.missing = append(m.missing, working.Unstated(p.Member(list.name)))
		}
	}
	if m.missing != nil {
		return working.Unknown("m_parts", "kg", m.missing...)
	}
	var masses []working.Number
	for _, sheet := range m.order {
		n := working.Figure("n", "", working.Round(m.of[sheet]), "pieces, or metres of rail, on the plane", working.ByDefinition).ChosenBy(p.At())
		masses = append(masses, working.Product("m_n", "kg", working.ByDefinition, n, working.Stated("m", "kg", sheet.MassKg)))
	}
	return working.Sum("m_parts", "kg", masses...)
}

// pieces counts pieces, or metres, of each datasheet.
type pieces struct {
	of      map[*schema.FixingDatasheet]float64
	order   []*schema.FixingDatasheet
	missing []working.Gap
}

func (p *pieces) count(sheet *schema.FixingDatasheet) {
	if _, there := p.of[sheet]; !there {
		p.order = append(p.order, sheet)
	}
	p.of[sheet]++
}

// add counts so many pieces, where it is stated how many.
func (p *pieces) add(sheet *schema.FixingDatasheet, n schema.Number, share float64) {
	if !n.Stated() && len(p.missing) < maxNamed {
		p.missing = append(p.missing, working.Unstated(n.At()))
	}
	p.count(sheet)
	p.of[sheet] += n.Value*share - 1
}
