package roof

import (
	"sunclause/facts/working"
	"sunclause/schema"
)

// Formulas of the load across the screws. Johansen's hold for one screw below a
// steel plate, by the strength of the timber under it, f_h, its depth, its effective
// diameter, its yield moment and the thickness of the plate.
var (
	johansenLaw = en1995("8.2.3, (8.9) and (8.10)", working.Read)
	interaction = en1995("8.7.3, (8.28)", working.Read)

	effectiveD       = working.NewFormula("d_ef", "mm", "1.1 · d_1", en1995("8.7.1(3)", working.Read))
	screwsInRow      = working.NewFormula("n_row", "", "n^0.9 · (a_1 / (13 · d))^0.25", en1995("8.5.1.1, (8.34)", working.Memory))
	shearDesign      = working.NewFormula("F_v,Rd", "kN", "k_mod · n_ef,v · F_v,Rk / γ_M / 1000", en1995("2.4.3", working.Memory))
	bearingDrilled   = working.NewFormula("f_h", "N/mm²", "0.082 · (1 − 0.01 · d_ef) · ρ_k", en1995("8.3.1.1, (8.16)", working.Memory))
	bearingUndrilled = working.NewFormula("f_h", "N/mm²", "0.082 · ρ_k · d_ef^−0.3", en1995("8.3.1.1, (8.15)", working.Memory))

	timberCrushed  = working.NewFormula("F_c", "N", "f_h · l_ef · d_ef", johansenLaw)
	screwTurns     = working.NewFormula("F_a", "N", "0.4 · F_c", johansenLaw)
	thinPlateBends = working.NewFormula("F_b", "N", "1.15 · √(2 · 1000 · M_y · f_h · d_ef)", johansenLaw)
	oneHinge       = working.NewFormula("F_d", "N", "F_c · (√(2 + 4 · 1000 · M_y / (F_c · l_ef)) − 1)", johansenLaw)
	twoHinges      = working.NewFormula("F_e", "N", "2.3 · √(1000 · M_y · f_h · d_ef)", johansenLaw)
	plateThickness = working.NewFormula("k_t", "", "2 · t_plate / d − 1, at least 0 and at most 1", en1995("8.2.3(1)", working.Read))
	oneScrew       = working.NewFormula("F_v,Rk", "N", "F_thin + k_t · (F_thick − F_thin)", johansenLaw)

	liftedUtilization = working.NewFormula("η_lift", "", "(T / F_ax,Rd)² + (F_slide / F_v,Rd)²", interaction)
	snowUtilization   = working.NewFormula("η_snow", "", "(F_along / F_v,Rd)²", interaction)
)

// distancesDue works out the distances that the screws have to keep: those of
// Eurocode 5, in diameters, or those that the maker of the screw declares, which may
// be less. Of the depth in the timber the greater of the two is due.
func (s *slope) distancesDue(f *TimberFixing, screw *schema.ScrewDatasheet) {
	byRule := func(symbol, parameter string) working.Number {
		return diameters.Of(s.param(parameter, "n_d"), f.DiameterMm).As(symbol)
	}
	due := func(symbol, parameter string, declared schema.Number) working.Number {
		if !declared.Stated() {
			return byRule(symbol, parameter)
		}
		return working.Stated(symbol, "mm", declared)
	}
	f.EdgeDueMm = due("a_edge,min", "screw_edge_min_d", screw.EdgeDistanceMinMm)
	f.EndDueMm = due("a_end,min", "screw_end_min_d", screw.EndDistanceMinMm)
	f.SpacingDueMm = due("a_1,min", "screw_spacing_min_d", screw.SpacingMinMm)
	f.DepthDueMm = working.Greatest("l_ef,min", "mm", byRule("l_rule", "screw_depth_min_d"), due("l_sheet", "screw_depth_min_d", screw.DepthMinMm))
}

// shear works out what load across them the screws bear: a steel plate on timber in
// single shear by Johansen, without what a screw adds by hanging on like a rope. The
// diameter that counts is 1.1 times the core. A plate that does not lie on the timber
// bends its screws, and is not covered.
func (s *slope) shear(f *TimberFixing, doc *schema.Fixing, hook *schema.HookDatasheet, screw *schema.ScrewDatasheet, t timber) {
	d := effectiveD.Of(working.Stated("d_1", "mm", screw.CoreDiameterMm))
	plate := working.Stated("t_plate", "mm", hook.PlateThicknessMm)
	if !doc.PlateOn.Is("timber") || !doc.PackingMm.Stated() || doc.PackingMm.Value > 0 {
		plate = working.Unknown("t_plate", "mm", doc.PlateOn.At(), doc.PackingMm.At())
	}
	row := screwsInRow.Of(f.Screws, working.Stated("a_1", "mm", doc.ScrewSpacingMm), f.DiameterMm)
	n := working.Least("n_ef,v", "", f.Screws, row)
	one := johansen(bearing(doc, d, t), f.DepthMm, d, working.Stated("M_y", "N·m", screw.YieldMomentNM), plate, f.DiameterMm)
	f.ShearKn = shearDesign.Of(s.duration("snow_load_duration"), n, one, s.param("timber_connection_factor", "γ_M"))
}

// bearing is the strength of the timber under the screw, along the grain.
func bearing(doc *schema.Fixing, d working.Number, t timber) working.Number {
	if doc.Predrilled.Yes() {
		return bearingDrilled.Of(d, t.density)
	}
	return bearingUndrilled.Of(d, t.density)
}

// johansen is the resistance of one screw below a steel plate, in N. Between half a
// diameter and a whole one the plate stands between a thin and a thick one.
func johansen(bearing, depth, d, moment, plate, outer working.Number) working.Number {
	crushed := timberCrushed.Of(bearing, depth, d)
	thin := working.Least("F_thin", "N", screwTurns.Of(crushed), thinPlateBends.Of(moment, bearing, d))
	thick := working.Least("F_thick", "N", crushed, oneHinge.Of(crushed, moment, depth), twoHinges.Of(moment, bearing, d))
	return oneScrew.Of(thin, plateThickness.Of(plate, outer), thick)
}

// combinedUtilization holds pull and load across the screws against what they bear of
// each: the wind that lifts with the array's own weight down the slope, and snow alone.
func (f *TimberFixing) combinedUtilization(loads screwLoads) {
	lifted := liftedUtilization.Of(f.PullKn, f.WithdrawalKn, loads.slide.As("F_slide"), f.ShearKn)
	snowed := snowUtilization.Of(loads.along.As("F_along"), f.ShearKn)
	f.Combined = working.Greatest("η", "", lifted, snowed)
}
