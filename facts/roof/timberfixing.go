package roof

import (
	"sunclause/facts/working"
	"sunclause/schema"
)

// TimberFixing is how a fixing holds in the timber below it.
type TimberFixing struct {
	Member         working.Text   `json:"member" words:"what it is fixed into"`
	InTimber       working.Flag   `json:"in_timber" words:"whether that is timber of the roof: rafter, noggin or purlin"`
	PlateShown     working.Flag   `json:"plate_as_plane_shows" words:"whether the plane has what its plate is said to lie on"`
	MemberShown    working.Flag   `json:"member_as_plane_shows" words:"whether the plane has what it is said to be fixed into"`
	TestedInTimber working.Flag   `json:"kit_tested_in_timber" words:"whether it was tested with its screws in timber"`
	TestedInBatten working.Flag   `json:"kit_tested_in_batten" words:"whether it was tested on battens or boards alone"`
	OffTimberMm    working.Number `json:"off_timber_mm" words:"distance from the middle line of the nearest rafter, or from the noggin it names"`
	OffMiddleMm    working.Number `json:"off_middle_mm" words:"distance of the screws from the middle line of the timber, as stated"`
	OffDrawnMm     working.Number `json:"off_middle_disagreement_mm" words:"difference between that distance and the one from its place to the timber"`
	HalfWidthMm    working.Number `json:"timber_half_width_mm" words:"half the width of the timber"`
	WidthMm        working.Number `json:"timber_width_mm" words:"width of the timber"`
	WidthMinMm     working.Number `json:"timber_width_min_mm" words:"smallest width of timber that its maker allows"`
	TimberSound    working.Flag   `json:"timber_sound" words:"whether the timber was found sound and did not split"`
	NogginHeld     working.Flag   `json:"noggin_fixed_at_both_ends" words:"whether both ends of its noggin are fixed"`
	Screws         working.Number `json:"screws" words:"screws in it"`
	ScrewsMin      working.Number `json:"screws_min" words:"fewest screws that its maker allows"`
	Arrangement    working.Text   `json:"screw_arrangement" words:"how the screws stand to the grain: in_line, side_by_side or staggered"`
	DiameterMm     working.Number `json:"screw_diameter_mm" words:"diameter of its screws"`
	DepthMm        working.Number `json:"screw_depth_mm" words:"thread of a screw inside the timber"`
	EdgeMm         working.Number `json:"screw_edge_mm" words:"distance of the screws from the edge of the timber"`
	EndMm          working.Number `json:"screw_end_mm" words:"distance of the nearest screw from the end of the timber"`
	EndOverSlope   working.Number `json:"end_distance_over_half_timber" words:"distance of the nearest screw from the end of the timber over half of the plane along the timber"`
	SpacingMm      working.Number `json:"screw_spacing_mm" words:"distance from screw to screw"`
	TimberDepthMm  working.Number `json:"timber_depth_mm" words:"depth of the timber"`
	AngleDeg       working.Number `json:"screw_angle_deg" words:"angle between the screws and the grain"`
	PullKn         working.Number `json:"screw_pull_kn" words:"design pull on the screws, with the lever of the hook"`
	WithdrawalKn   working.Number `json:"withdrawal_kn" words:"design resistance of the screws against withdrawal"`
	TensionKn      working.Number `json:"screw_tension_kn" words:"design resistance of the screws themselves"`
	ShearKn        working.Number `json:"screw_shear_kn" words:"design resistance of the screws against the load down the slope"`
	Combined       working.Number `json:"screw_combined" words:"pull and load down the slope together over what the screws bear; no more than 1"`
	DepthDueMm     working.Number `json:"screw_depth_due_mm" words:"thread inside the timber that is due"`
	EdgeDueMm      working.Number `json:"screw_edge_due_mm" words:"distance from the edge of the timber that is due"`
	EndDueMm       working.Number `json:"screw_end_due_mm" words:"distance from the end of the timber that is due"`
	SpacingDueMm   working.Number `json:"screw_spacing_due_mm" words:"distance from screw to screw along the grain that is due"`
}

// timber is what screws hold in. How far they are off its middle is taken as the greater
// of what is stated and of what their place shows.
type timber struct {
	width, height, density, offMiddle working.Number
}

// screwLoads are the design loads that the screws of a fixing have to bear.
type screwLoads struct {
	up    working.Number // away from the roof
	along working.Number // down the slope with snow
	slide working.Number // down the slope while the wind lifts
}

// Formulas of screws in timber, and the clauses of Eurocode 5 that give them.
var (
	screwDistances = en1995("8.7.2, table 8.6", working.Read)

	offDrawn         = working.NewFormula("Δe", "mm", "|e_m − d_t|", working.ByDefinition)
	endOverSlope     = working.NewFormula("2a/l", "", "2 · a_end / l", working.ByDefinition)
	halfWidth        = working.NewFormula("b_2", "mm", "b / 2", working.ByDefinition)
	leverPull        = working.NewFormula("T", "kN", "F_d · (1 + e / c)", statics)
	diameters        = working.NewFormula("a_min", "mm", "n_d · d", screwDistances)
	edgeInLine       = working.NewFormula("a_edge", "mm", "b / 2 − e_m", working.ByDefinition)
	edgeAcross       = working.NewFormula("a_edge", "mm", "b / 2 − e_m − a_1 / 2", working.ByDefinition) // the screws stand apart across the timber too
	screwsTogether   = working.NewFormula("n_ef", "", "n^0.9", en1995("8.7.2, (8.41)", working.Read))
	eighthOfD        = working.NewFormula("d/8", "", "d / 8", en1995("8.7.2, (8.40)", working.Read))
	strengthByRule   = working.NewFormula("f_ax", "N/mm²", "0.52 · d^−0.5 · l_ef^−0.1 · ρ_k^0.8", en1995("8.7.2, (8.39)", working.Read))
	strengthBySheet  = working.NewFormula("f_ax", "N/mm²", "f_sheet · (ρ_k / ρ_a)^0.8", en1995("8.7.2, (8.40a)", working.Read))
	withdrawal       = working.NewFormula("F_ax,Rk", "N", "n_ef · f_ax · d · l_ef · k_d / (1.2 · cos(α_s)² + sin(α_s)²)", en1995("8.7.2, (8.38)", working.Read))
	withdrawalDesign = working.NewFormula("F_ax,Rd", "kN", "k_mod · F_ax,Rk / γ_M / 1000", en1995("2.4.3", working.Memory))
	screwTension     = working.NewFormula("F_t,Rd", "kN", "n_ef · f_tens / γ_M2", en1995("8.7.2, (8.40c)", working.Read))
)

// leastScrewAngle is the least angle between a screw and the grain, in degrees, that the
// clause of withdrawal covers.
const leastScrewAngle = 30

func (s *slope) timberFixingOf(doc *schema.Fixing, sheet *schema.FixingDatasheet, screw *schema.ScrewDatasheet, loads screwLoads) TimberFixing {
	noggin := s.nogginOf(doc)
	t := s.timberOf(doc, noggin)
	stated, drawn := working.Stated("e_m", "mm", doc.OffMiddleMm), s.offTimber(doc, noggin)
	t.offMiddle = working.Greatest("e_m", "mm", stated, drawn)
	f := TimberFixing{
		Member:         working.StatedText(doc.Member),
		InTimber:       s.inTimber(doc.Member),
		TestedInTimber: working.StatedFlag(sheet.Load.TestedInTimber),
		TestedInBatten: working.StatedFlag(sheet.Load.TestedInBatten),
		OffTimberMm:    drawn,
		OffMiddleMm:    stated,
		OffDrawnMm:     offDrawn.Of(stated, drawn),
		HalfWidthMm:    halfWidth.Of(t.width),
		WidthMm:        t.width,
		WidthMinMm:     working.Stated("b_min", "mm", sheet.Hook.MemberWidthMinMm),
		TimberSound:    working.StatedFlag(doc.TimberSound),
		NogginHeld:     working.StatedFlag(noggin.FixedAtBothEnds),
		Screws:         working.Stated("n", "", doc.Screws),
		ScrewsMin:      working.Stated("n_min", "", sheet.Hook.ScrewsMin),
		Arrangement:    working.StatedText(doc.ScrewArrangement),
		AngleDeg:       working.Stated("α_s", "°", doc.ScrewAngleDeg),
	}
	f.PlateShown = s.plateShown(doc.PlateOn)
	f.MemberShown = memberShown(f.InTimber, doc.Member.At())
	f.PullKn = f.pullOn(loads.up, &sheet.Hook)
	if f.InTimber.Known() && !f.InTimber.Value() {
		f.outsideTimber(doc.Member.At())
		return f
	}
	s.spacings(&f, doc, screw, t)
	f.DepthMm = s.depth(doc, &sheet.Hook, screw, t)
	s.withdraw(&f, screw, t)
	s.distancesDue(&f, screw)
	s.shear(&f, doc, &sheet.Hook, screw, t)
	f.combinedUtilization(loads)
	return f
}

// pullOn works out the pull on the screws of a hook: the load acts at an arm from
// the middle of the screws, and the plate turns about its edge on the other side.
func (f *TimberFixing) pullOn(load working.Number, hook *schema.HookDatasheet) working.Number {
	return leverPull.Of(load.As("F_d"), working.Stated("e", "mm", hook.LeverArmMm), working.Stated("c", "mm", hook.PivotDistanceMm))
}

// outsideTimber leaves unknown what only screws in timber have.
func (f *TimberFixing) outsideTimber(at string) {
	for _, n := range []*working.Number{&f.OffDrawnMm, &f.DiameterMm, &f.DepthMm, &f.EdgeMm, &f.EndMm, &f.EndOverSlope, &f.SpacingMm,
		&f.TimberDepthMm, &f.WithdrawalKn, &f.TensionKn, &f.ShearKn, &f.Combined,
		&f.DepthDueMm, &f.EdgeDueMm, &f.EndDueMm, &f.SpacingDueMm} {
		*n = working.Unknown("n", "", at)
	}
}

// spacings works out how far the screws are from each other and from the edges of the
// timber.
func (s *slope) spacings(f *TimberFixing, doc *schema.Fixing, screw *schema.ScrewDatasheet, t timber) {
	f.DiameterMm = working.Stated("d", "mm", screw.DiameterMm)
	spacing := working.Stated("a_1", "mm", doc.ScrewSpacingMm)
	edge := edgeAcross.Of(t.width, t.offMiddle, spacing)
	switch {
	case !doc.ScrewArrangement.Stated():
		edge = working.Unknown("a_edge", "mm", doc.ScrewArrangement.At())
	case doc.ScrewArrangement.Is("in_line"):
		edge = edgeInLine.Of(t.width, t.offMiddle)
	}
	f.EdgeMm, f.EndMm, f.SpacingMm = edge, working.Stated("a_end", "mm", doc.EndDistanceMm), spacing
	f.TimberDepthMm = t.height
	along := s.doc.SlopeLengthMm
	if s.timbersRun().Value() == "across_slope" {
		along = s.doc.EavesLengthMm
	}
	f.EndOverSlope = endOverSlope.Of(f.EndMm, working.Stated("l", "mm", along))
}

// withdraw works out what pull the screws bear in the timber.
func (s *slope) withdraw(f *TimberFixing, screw *schema.ScrewDatasheet, t timber) {
	n := screwsTogether.Of(f.Screws)
	small := working.Least("k_d", "", eighthOfD.Of(f.DiameterMm), working.Figure("1", "", 1, "the rule", en1995("8.7.2, (8.40)", working.Read)))
	if !byRule(screw) {
		small = working.Figure("k_d", "", 1, "a declared withdrawal parameter", en1995("8.7.2, (8.40a)", working.Read))
	}
	rk := withdrawal.Of(n, f.strength(screw, t), f.DiameterMm, f.DepthMm, small, f.AngleDeg)
	if rk.Known() && f.AngleDeg.Value() < leastScrewAngle {
		rk = working.Unknown("F_ax,Rk", "N", rk.Pointers()...)
	}
	f.WithdrawalKn = withdrawalDesign.Of(s.duration("wind_load_duration"), rk, s.param("timber_connection_factor", "γ_M"))
	f.TensionKn = screwTension.Of(n, working.Stated("f_tens", "kN", screw.TensionKn), s.param("steel_tension_factor", "γ_M2"))
}

// byRule reports whether the screw is one for which Eurocode 5 gives the withdrawal
// strength itself: 6 to 12 mm thick, with a core of 0.6 to 0.75 of that. For any
// other the maker has to declare it.
func byRule(screw *schema.ScrewDatasheet) bool {
	if !screw.CoreDiameterMm.Stated() {
		return true // the strength will name what is missing
	}
	d, core := screw.DiameterMm.Value, screw.CoreDiameterMm.Value/screw.DiameterMm.Value
	return d >= 6 && d <= 12 && core >= 0.6 && core <= 0.75
}

// strength is the withdrawal strength of the screws in the timber. The core does
// not come into it, but says whether the rule holds for the screw.
func (f *TimberFixing) strength(screw *schema.ScrewDatasheet, t timber) working.Number {
	if !byRule(screw) {
		return strengthBySheet.Of(working.Stated("f_sheet", "N/mm²", screw.WithdrawalNPerMm2), t.density,
			working.Stated("ρ_a", "kg/m³", screw.WithdrawalDensityKgPerM3))
	}
	strength := strengthByRule.Of(f.DiameterMm, f.DepthMm, t.density)
	if core := screw.CoreDiameterMm; !core.Stated() {
		return working.Unknown("f_ax", "N/mm²", append(strength.Missing(), working.Unstated(core.At()))...)
	}
	return strength.ChosenBy(screw.CoreDiameterMm.At())
}
