package roof

import "sunclause/facts/working"

// Plane holds the facts of one plane of the roof.
type Plane struct {
	working.Subject
	Pressure
	Strips
	Snow
	DeadLoad
	ArealLoads
	Frame
	Cover
	Geometry

	PitchDeg     working.Number `json:"pitch_deg" words:"pitch, from the horizontal"`
	Shape        working.Text   `json:"roof_shape" words:"shape of the roof as a whole"`
	Openings     working.Number `json:"openings" words:"openings in it"`
	Penetrations working.Number `json:"penetrations" words:"places where something goes through the covering"`
	Rails        working.Number `json:"rails" words:"rails on it"`
	Fixings      working.Number `json:"fixings" words:"fixings in it"`
	GapUnderMm   working.Number `json:"gap_under_modules_mm" words:"gap from the covering to the underside of the modules"`
	ProjectionMm working.Number `json:"projection_mm" words:"how far the modules stand above the slope"`
	TiltDeg      working.Number `json:"tilt_to_roof_deg" words:"angle between the modules and the plane"`
	EngineerFor  working.Names  `json:"engineer_wanted_for" words:"what about it wants a structural engineer"`
	EngineerWant working.Flag   `json:"engineer_wanted" words:"whether something about it wants a structural engineer"`
}

func (s *slope) planeFacts() Plane {
	p := s.doc
	f := Plane{
		Subject:    working.Subject{ID: p.ID.Value, At: p.At(), Name: "plane " + p.ID.Value},
		Pressure:   s.wind,
		Strips:     s.strips(),
		Snow:       s.snow,
		DeadLoad:   s.dead,
		ArealLoads: s.areal,
		Frame:      s.frame(),
		Cover:      s.cover(),
		Geometry:   s.geometry(),

		PitchDeg:     s.pitch,
		Shape:        working.StatedText(s.in.Roof.Shape),
		Openings:     working.Length("n", p.Openings, p.Member("openings")),
		Penetrations: working.Length("n", p.Penetrations, p.Member("penetrations")),
		Rails:        working.Length("n", p.Rails, p.Member("rails")),
		Fixings:      working.Length("n", p.Fixings, p.Member("fixings")),
		GapUnderMm:   working.Stated("d_gap", "mm", p.GapUnderModulesMm),
		ProjectionMm: working.Stated("d_up", "mm", p.ProjectionMm),
		TiltDeg:      working.Stated("β", "°", p.TiltToRoofDeg),
	}
	s.engineerFacts(&f)
	return f
}

// Frame is what carries the plane.
type Frame struct {
	Structure      working.Text   `json:"structure" words:"kind of structure"`
	AsSupported    working.Flag   `json:"structure_as_supported" words:"whether the kind of structure agrees with its supports, the direction of its timbers and their class"`
	TimberEvidence working.Text   `json:"timber_evidence" words:"how the strength class is known"`
	TimberDensity  working.Number `json:"timber_density_kg_per_m3" words:"characteristic density of the timber"`
	FrameCondition working.Text   `json:"structure_condition" words:"condition of the timber"`
	TimbersRun     working.Text   `json:"timbers_run" words:"direction of the timbers that carry it: up_slope, unless stated otherwise"`
	EvenlySpaced   working.Flag   `json:"timbers_evenly_spaced" words:"whether its timbers are stated by their first one, spacing and count, and not one by one"`
	BeyondSpacings working.Number `json:"plane_beyond_timbers_spacings" words:"how far the plane goes on beyond its last timber, in spacings"`
	OnEdge         working.Number `json:"timber_height_over_width" words:"height of a timber over its width"`
	SpanShare      working.Number `json:"timber_span_over_slope" words:"span of a timber over the length of the slope"`
	BattensOnSlope working.Number `json:"batten_spacing_over_slope" words:"spacing of the battens over the length of the slope"`
	RafterSpacing  working.Number `json:"rafter_spacing_mm" words:"distance of the rafters from middle to middle"`
	BendingBefore  working.Number `json:"rafter_bending_before" words:"bending stress over strength in a rafter without the array"`
	BendingAfter   working.Number `json:"rafter_bending" words:"bending stress over strength in a rafter with the array"`
}

// Formulas of the measures of timbers and battens.
var (
	beyondTimbers   = working.NewFormula("k", "", "(l − x_0 − (n_r − 1) · s_r) / s_r", working.ByDefinition)
	heightOverWidth = working.NewFormula("h/b", "", "h / b", working.ByDefinition)
)

func (s *slope) frame() Frame {
	r := s.doc.Rafters
	slopeLength, spacing := working.Stated("l", "mm", s.doc.SlopeLengthMm), working.Stated("s_r", "mm", r.SpacingMm)
	along := working.Stated("l", "mm", s.doc.EavesLengthMm)
	if r.Direction.Is("across_slope") {
		along = slopeLength
	}
	roof := s.dead.RoofDead
	loaded := working.Sum("g_all", "kN/m²", roof, s.dead.ArrayKnM2)
	return Frame{
		Structure:      working.StatedText(r.Structure),
		AsSupported:    s.asSupported(),
		TimberEvidence: working.StatedText(r.TimberEvidence),
		TimberDensity:  s.material("density_kg_per_m3", "ρ_k", r.TimberClass, r.TimberDensityKgPerM3),
		FrameCondition: working.StatedText(r.Condition),
		TimbersRun:     s.timbersRun(),
		EvenlySpaced:   working.KnownFlag(len(r.Lines) == 0, r.Member("lines")),
		BeyondSpacings: beyondTimbers.Of(along, working.Stated("x_0", "mm", r.FirstMm), working.Stated("n_r", "", r.Count), spacing),
		OnEdge:         heightOverWidth.Of(working.Stated("h", "mm", r.HeightMm), working.Stated("b", "mm", r.WidthMm)),
		SpanShare:      working.Ratio("L/l", working.Stated("L", "mm", r.SpanMm), slopeLength),
		BattensOnSlope: working.Ratio("d_b/l", working.Stated("d_b", "mm", s.doc.Covering.BattenSpacingMm), slopeLength),
		RafterSpacing:  spacing,
		BendingBefore:  s.bending(roof),
		BendingAfter:   s.bending(loaded),
	}
}

// asSupported reports whether the kind of structure agrees with what else is stated of
// it: trusses have members of their own as supports and run up the slope, and neither
// steel nor concrete has a strength class of timber.
func (s *slope) asSupported() working.Flag {
	r := s.doc.Rafters
	if !r.Structure.Stated() {
		return working.UnknownFlag(r.Structure.At())
	}
	is := working.StatedText(r.Structure)
	truss := is.OneOf("trussed_rafter", "attic_truss")
	var agree []working.Flag
	if r.Supports.Stated() {
		agree = append(agree, same(truss, working.StatedText(r.Supports).OneOf("truss_members")))
	}
	if r.Direction.Is("across_slope") {
		agree = append(agree, working.Not(is.OneOf("cut_roof", "trussed_rafter", "attic_truss")))
	}
	if r.TimberClass.Stated() {
		agree = append(agree, working.Not(is.OneOf("steel_frame", "concrete_deck")))
	}
	return working.All(append(agree, working.KnownFlag(true, r.Structure.At()))...)
}

// same reports whether two things are both so or both not so.
func same(a, b working.Flag) working.Flag {
	return working.Any(working.All(a, b), working.All(working.Not(a), working.Not(b)))
}

// Formulas of a rafter in bending.
var (
	bendingLaw = en1995("6.1.6", working.Memory)

	rafterLoad      = working.NewFormula("w_r", "kN/m", "(γ_G · g · cos(α) + γ_Q · s · cos(α)²) · s_r / 1000", combination)
	rafterStress    = working.NewFormula("σ_m", "N/mm²", "w_r · L² / 8 / (b · h² / 6)", bendingLaw)
	bendingStrength = working.NewFormula("f_md", "N/mm²", "k_mod · k_sys · k_h · f_mk / γ_M", en1995("2.4.1, 3.2, 6.6", working.Memory))
	bendingShare    = working.NewFormula("σ/f", "", "σ_m / f_md", bendingLaw)
	depthFactor     = working.NewFormula("k_h", "", "(150 / h)^0.2, at least 1 and at most 1.3", en1995("3.2(3), (3.1)", working.Memory)) // for shallow timber
)

// bending is the stress in a rafter as a simple beam between its supports, under
// dead load and snow, over what its timber bears.
func (s *slope) bending(dead working.Number) working.Number {
	r := s.doc.Rafters
	b, h := working.Stated("b", "mm", r.WidthMm), working.Stated("h", "mm", r.HeightMm)
	load := rafterLoad.Of(s.param("load_factor_dead", "γ_G"), dead.For("g"), s.pitch, s.param("load_factor_variable", "γ_Q"), s.snow.SnowKnM2, working.Stated("s_r", "mm", r.SpacingMm))
	strength := bendingStrength.Of(s.duration("snow_load_duration"), s.system(), depthFactor.Of(h),
		s.material("bending_n_per_mm2", "f_mk", r.TimberClass, r.TimberBendingNPerMm2), s.param("timber_factor", "γ_M"))
	return bendingShare.Of(rafterStress.Of(load, working.Stated("L", "mm", r.SpanMm), b, h), strength)
}

// system is 1.1 where battens spread the load over rafters no more than 610 mm
// apart.
func (s *slope) system() working.Number {
	share, spacing := s.doc.Rafters.BattensShareLoad, s.doc.Rafters.SpacingMm
	if !share.Stated() || !spacing.Stated() {
		return working.Unknown("k_sys", "", share.At(), spacing.At())
	}
	k := 1.0
	if share.Value && spacing.Value <= 610 {
		k = 1.1
	}
	return working.Figure("k_sys", "", k, "battens that share the load", en1995("6.6", working.Memory)).ChosenBy(share.At())
}
