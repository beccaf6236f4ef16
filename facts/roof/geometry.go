package roof

import (
	"cmp"
	"slices"

	"sunclause/facts/working"
	"sunclause/schema"
)

// Geometry is what the measures of a plane say of each other.
type Geometry struct {
	TopEdge        working.Text   `json:"top_edge" words:"what its upper side is"`
	BottomEdge     working.Text   `json:"bottom_edge" words:"what its lower side is"`
	RidgeOverEaves working.Number `json:"ridge_over_eaves_m" words:"height of the ridge above the eaves, as stated"`
	RiseOffM       working.Number `json:"rise_disagreement_m" words:"difference between that and what slope length and pitch give"`
	RiseMayOffM    working.Number `json:"rise_tolerance_m" words:"how far the two may be apart"`
	PlanShare      working.Number `json:"plan_over_building_width" words:"horizontal projection of the slope over the width of the building"`
	EavesShare     working.Number `json:"eaves_over_building_length" words:"length of the eaves over the length of the building"`
	CoveredShare   working.Number `json:"modules_over_plane" words:"area of the modules over that of the plane"`
	DrawnInsideMm  working.Number `json:"lines_inside_plane_mm" words:"least distance of the ends of lines drawn on it to its four sides; below zero they reach beyond"`
	Lines          working.Number `json:"lines" words:"lines drawn on it besides its four sides"`
	Pathways       working.Number `json:"pathways" words:"strips kept clear for access"`
	PathClearMm    working.Number `json:"pathway_clearance_mm" words:"least distance of a module from a strip kept clear; below zero it lies in the strip"`
	ProjectionOff  working.Number `json:"projection_disagreement_mm" words:"difference between how far the modules stand above the slope and the gap below them with the height of their frames"`
	ProjectionMay  working.Number `json:"projection_tolerance_mm" words:"how far the two may be apart: the profile of the covering counts"`
	MountingKgM2   working.Number `json:"mounting_kg_per_m2" words:"mass of rails, hooks, clamps and cable on a square metre of modules"`
	MountingKg     working.Number `json:"mounting_mass_kg" words:"mass of rails, hooks, clamps and cable, as stated"`
	PartsKg        working.Number `json:"parts_mass_kg" words:"mass of the rails, hooks, screws and clamps drawn, by their datasheets"`
	MountingShare  working.Number `json:"mounting_over_parts" words:"mass of the mounting as stated over that of the parts drawn"`
	CoveringLeast  working.Number `json:"covering_load_least_kn_per_m2" words:"least load that the covering as stated makes on a square metre of slope"`
	BeyondCovering working.Number `json:"dead_beyond_covering_kn_per_m2" words:"existing dead load beyond that of the covering as stated"`
}

// Formulas of the measures of a plane.
var (
	ridgeOverEaves = working.NewFormula("Δh", "m", "h_ridge − h_eaves", working.ByDefinition)
	riseOff        = working.NewFormula("δ_h", "m", "|Δh − l_slope / 1000 · sin(α)|", working.ByDefinition)
	riseMayOff     = working.NewFormula("δ_h,max", "m", "greatest of δ_0, δ_q · l_slope / 1000 · sin(α)", working.ByDefinition)
	planShare      = working.NewFormula("q_b", "", "l_slope / 1000 · cos(α) / b", working.ByDefinition)
	eavesShare     = working.NewFormula("q_l", "", "l_eaves / 1000 / l", working.ByDefinition)
	coveredShare   = working.NewFormula("q_A", "", "1000000 · A_modules / (l_eaves · l_slope)", working.ByDefinition)
	projectionOff  = working.NewFormula("δ_up", "mm", "|d_up − d_gap − h_f|", working.ByDefinition)
	mountingShare  = working.NewFormula("m_a", "kg/m²", "m_rails / A_modules", working.ByDefinition)
	coveringLeast  = working.NewFormula("g_least", "kN/m²", "q_c · 9.81 · m_c · n_c / 1000", working.ByDefinition)
	beyondCovering = working.NewFormula("Δg", "kN/m²", "g_roof − 9.81 · m_c · n_c / 1000", working.ByDefinition)
)

func (s *slope) geometry() Geometry {
	p := s.doc
	slopeLength, eaves := working.Stated("l_slope", "mm", p.SlopeLengthMm), working.Stated("l_eaves", "mm", p.EavesLengthMm)
	g := Geometry{
		TopEdge:        working.StatedText(p.TopEdge),
		BottomEdge:     working.StatedText(p.BottomEdge),
		RidgeOverEaves: ridgeOverEaves.Of(working.Stated("h_ridge", "m", p.RidgeHeightM), working.Stated("h_eaves", "m", p.EavesHeightM)),
		RiseMayOffM:    riseMayOff.Of(s.param("rise_tolerance_least_m", "δ_0"), s.param("rise_tolerance_share", "δ_q"), slopeLength, s.pitch),
		PlanShare:      planShare.Of(slopeLength, s.pitch, working.Stated("b", "m", p.BuildingWidthM)),
		EavesShare:     eavesShare.Of(eaves, working.Stated("l", "m", p.BuildingLengthM)),
		CoveredShare:   coveredShare.Of(s.dead.AreaM2.As("A_modules"), eaves, slopeLength),
		Lines:          working.Length("n", p.Edges, p.Member("edges")),
		Pathways:       working.Length("n", p.Pathways, p.Member("pathways")),
		MountingKgM2:   mountingShare.Of(working.Stated("m_rails", "kg", p.MountingMassKg), s.dead.AreaM2.As("A_modules")),
	}
	g.RiseOffM = riseOff.Of(g.RidgeOverEaves, slopeLength, s.pitch)
	g.MountingKg, g.PartsKg = working.Stated("m_rails", "kg", p.MountingMassKg), s.partsMass()
	g.MountingShare = working.Ratio("q_m", g.MountingKg, g.PartsKg)
	g.DrawnInsideMm = s.drawnInside()
	g.PathClearMm = s.clearOfPathways()
	s.projection(&g)
	mass, layers := working.Stated("m_c", "kg/m²", p.Covering.MassKgPerM2), working.Stated("n_c", "", p.Covering.Layers)
	g.CoveringLeast = coveringLeast.Of(s.param("covering_load_share_least", "q_c"), mass, layers)
	g.BeyondCovering = beyondCovering.Of(s.dead.RoofDead, mass, layers)
	return g
}

// projection holds how far the modules stand above the slope against the gap below
// them and the height of their frames. The gap may be measured from the top or from the
// foot of the profile of the covering.
func (s *slope) projection(g *Geometry) {
	var frames []working.Number
	for i := range s.layout {
		frames = append(frames, working.Stated("h_f", "mm", s.layout[i].sheet.ThicknessMm))
	}
	frame := working.Greatest("h_f", "mm", unlike(frames)...)
	if len(frames) == 0 {
		frame = working.Unknown("h_f", "mm", s.doc.Member("modules"))
	}
	g.ProjectionOff = projectionOff.Of(working.Stated("d_up", "mm", s.doc.ProjectionMm), working.Stated("d_gap", "mm", s.doc.GapUnderModulesMm), frame)
	g.ProjectionMay = s.param("projection_tolerance_least_mm", "δ_0")
	if profile := s.doc.Covering.ProfileHeightMm; profile.Stated() {
		g.ProjectionMay = working.Sum("δ_max", "mm", g.ProjectionMay, working.Stated("h_profile", "mm", profile))
	}
}

// unlike leaves of some numbers of the document each member standing once.
func unlike(all []working.Number) []working.Number {
	same := func(a, b working.Number) bool { return a.At() == b.At() }
	return slices.CompactFunc(slices.SortedFunc(slices.Values(all), func(a, b working.Number) int { return cmp.Compare(a.At(), b.At()) }), same)
}

// drawnInside is the least distance of the ends of the lines on the plane to its sides.
func (s *slope) drawnInside() working.Number {
	at := s.doc.Member("edges")
	var all []working.Number
	for i := range s.doc.Edges {
		e := &s.doc.Edges[i]
		for _, end := range []box{point(e.FromXMm, e.FromYMm), point(e.ToXMm, e.ToYMm)} {
			b := s.borders(&end)
			all = append(all, b.eaves, b.ridge, b.left, b.right)
		}
	}
	if len(all) == 0 {
		return working.Unknown("d_in", "mm", at)
	}
	return working.Least("d_in", "mm", all...)
}

// strip is an access pathway as a box: it runs from side to side of the plane.
func (s *slope) strip(p *schema.RoofPathway) box {
	from := working.Stated("x", "mm", p.FromMm)
	to := working.Sum("x_r", "mm", from, working.Stated("w", "mm", p.WidthMm))
	zero := working.Figure("0", "mm", 0, "the lower or left side", working.ByDefinition)
	switch {
	case p.Direction.Is("up_slope"):
		return box{left: from, right: to, bottom: zero, top: working.Stated("l_slope", "mm", s.doc.SlopeLengthMm)}
	case p.Direction.Is("across_slope"):
		return box{left: zero, right: working.Stated("l_eaves", "mm", s.doc.EavesLengthMm), bottom: from, top: to}
	}
	unknown := working.Unknown("x_r", "mm", p.Direction.At())
	return box{left: from, right: unknown, bottom: from, top: unknown}
}

// clearOfPathways is the least gap between a module and a strip that is kept clear.
func (s *slope) clearOfPathways() working.Number {
	at := s.doc.Member("pathways")
	missing := slices.Clone(s.unplacedReasons)
	var nearest working.Number
	for i := range s.doc.Pathways {
		strip := s.strip(&s.doc.Pathways[i])
		if !strip.known() {
			missing = append(missing, strip.missing()...)
			continue
		}
		flat := strip.bounds()
		for j := range s.bounds {
			if d := s.bounds[j].gap(&flat); missing == nil && (!nearest.Known() || d < nearest.Value()) {
				nearest = gap(&s.layout[j].box, &strip)
			}
		}
	}
	if len(missing) > 0 || !nearest.Known() {
		return working.Unknown("d_path", "mm", append(missing, working.Unstated(at))...)
	}
	return nearest.As("d_path")
}
