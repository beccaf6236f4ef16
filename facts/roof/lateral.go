package roof

import (
	"math"

	"sunclause/facts/working"
	"sunclause/schema"
)

// due works out the distances that the screws have to keep, in diameters: those of
// Eurocode 5, or those that the maker of the screw declares, which may be less. Of
// the depth in the timber the greater of the two is due.
func (s *slope) due(g *Grasp, screw *schema.FixingDatasheet) {
	var sheet schema.ScrewDatasheet
	if screw != nil {
		sheet = screw.Screw
	}
	over := func(symbol, parameter string, declared schema.Number) working.Number {
		if !declared.Stated() {
			return s.param(parameter, symbol)
		}
		f := working.Closure{Symbol: symbol, Text: "a_sheet / d", Source: working.Source{Document: "datasheet of the screw", How: working.Read}}
		return f.Of(func(x ...float64) float64 { return x[0] / x[1] }, working.Stated("a_sheet", "mm", declared), g.DiameterMm)
	}
	g.EdgeDueD = over("a_edge,min/d", "screw_edge_min_d", sheet.EdgeDistanceMinMm)
	g.EndDueD = over("a_end,min/d", "screw_end_min_d", sheet.EndDistanceMinMm)
	g.SpacingDueD = over("a_1,min/d", "screw_spacing_min_d", sheet.SpacingMinMm)
	g.DepthDueD = working.Greatest("l_ef,min/d", "", s.param("screw_depth_min_d", "l_rule/d"), over("l_sheet/d", "screw_depth_min_d", sheet.DepthMinMm))
}

// shear works out what load across them the screws bear: a steel plate on timber in
// single shear by Johansen, without what a screw adds by hanging on like a rope. The
// diameter that counts is 1.1 times the core. A plate that does not lie on the timber
// bends its screws, and is not covered.
func (s *slope) shear(g *Grasp, doc *schema.Fixing, sheet, screw *schema.FixingDatasheet, t timber) {
	of := func(symbol, unit string, of func(schema.ScrewDatasheet) schema.Number) working.Number {
		return sheetNumber(symbol, unit, screw, doc.Screw.Text, func(f *schema.FixingDatasheet) schema.Number { return of(f.Screw) })
	}
	d := working.Closure{Symbol: "d_ef", Unit: "mm", Text: "1.1 · d_1", Source: en1995("8.7.1(3)", working.Read)}.Of(
		func(x ...float64) float64 { return 1.1 * x[0] }, of("d_1", "mm", func(s schema.ScrewDatasheet) schema.Number { return s.CoreDiameterMm }))
	moment := of("M_y", "N·m", func(s schema.ScrewDatasheet) schema.Number { return s.YieldMomentNM })
	plate := sheetNumber("t_plate", "mm", sheet, doc.Datasheet.Text, func(s *schema.FixingDatasheet) schema.Number { return s.Hook.PlateThicknessMm })
	if !doc.PlateOn.Is("timber") || !doc.PackingMm.Stated() || doc.PackingMm.Value > 0 {
		plate = working.Unknown("t_plate", "mm", doc.PlateOn.At(), doc.PackingMm.At())
	}
	row := working.Closure{Symbol: "n_row", Text: "n^0.9 · (a_1 / (13 · d))^0.25", Source: en1995("8.5.1.1, (8.34)", working.Memory)}.Of(
		func(x ...float64) float64 { return math.Pow(x[0], 0.9) * math.Pow(x[1]/(13*x[2]), 0.25) },
		g.Screws, working.Stated("a_1", "mm", doc.ScrewSpacingMm), g.DiameterMm)
	n := working.Least("n_ef,v", "", g.Screws, row)
	one := johansen(s.embedment(doc, d, t), g.DepthMm, d, moment, plate, g.DiameterMm)
	g.ShearKn = working.Closure{Symbol: "F_v,Rd", Unit: "kN", Text: "k_mod · n_ef,v · F_v,Rk / γ_M / 1000", Source: en1995("2.4.3", working.Memory)}.Of(
		func(x ...float64) float64 { return x[0] * x[1] * x[2] / x[3] / 1000 }, s.duration("snow_load_duration"), n, one, s.param("timber_connection_factor", "γ_M"))
}

// embedment is the strength of the timber under the screw, along the grain.
func (s *slope) embedment(doc *schema.Fixing, d working.Number, t timber) working.Number {
	if doc.Predrilled.Yes() {
		f := working.Closure{Symbol: "f_h", Unit: "N/mm²", Text: "0.082 · (1 − 0.01 · d_ef) · ρ_k", Source: en1995("8.3.1.1, (8.16)", working.Memory)}
		return f.Of(func(x ...float64) float64 { return 0.082 * (1 - 0.01*x[0]) * x[1] }, d, t.density)
	}
	f := working.Closure{Symbol: "f_h", Unit: "N/mm²", Text: "0.082 · ρ_k · d_ef^−0.3", Source: en1995("8.3.1.1, (8.15)", working.Memory)}
	return f.Of(func(x ...float64) float64 { return 0.082 * x[1] * math.Pow(x[0], -0.3) }, d, t.density)
}

// johansen is the resistance of one screw below a steel plate, in N: by the strength
// of the timber under it, its depth, its effective diameter, its yield moment, the
// thickness of the plate and its outer diameter. Between half a diameter and a whole
// one the plate stands between a thin and a thick one.
func johansen(bearing, depth, d, moment, plate, outer working.Number) working.Number {
	of := func(symbol, text string, compute func(x ...float64) float64, inputs ...working.Number) working.Number {
		return working.Closure{Symbol: symbol, Unit: "N", Text: text, Source: en1995("8.2.3, (8.9) and (8.10)", working.Read)}.Of(compute, inputs...)
	}
	c := of("F_c", "f_h · l_ef · d_ef", func(x ...float64) float64 { return x[0] * x[1] * x[2] }, bearing, depth, d)
	thin := working.Least("F_thin", "N",
		of("F_a", "0.4 · F_c", func(x ...float64) float64 { return 0.4 * x[0] }, c),
		of("F_b", "1.15 · √(2 · 1000 · M_y · f_h · d_ef)", func(x ...float64) float64 { return 1.15 * math.Sqrt(2000*x[0]*x[1]*x[2]) }, moment, bearing, d))
	thick := working.Least("F_thick", "N", c,
		of("F_d", "F_c · (√(2 + 4 · 1000 · M_y / (F_c · l_ef)) − 1)", func(x ...float64) float64 { return x[0] * (math.Sqrt(2+4000*x[1]/(x[0]*x[2])) - 1) }, c, moment, depth),
		of("F_e", "2.3 · √(1000 · M_y · f_h · d_ef)", func(x ...float64) float64 { return 2.3 * math.Sqrt(1000*x[0]*x[1]*x[2]) }, moment, bearing, d))
	between := working.Lookup{Symbol: "k_t", Text: "2 · t_plate / d − 1, at least 0 and at most 1", Source: en1995("8.2.3(1)", working.Read)}.Of(
		func(x ...float64) float64 { return max(0, min(1, 2*x[0]/x[1]-1)) }, plate, outer)
	return of("F_v,Rk", "F_thin + k_t · (F_thick − F_thin)", func(x ...float64) float64 { return x[0] + x[1]*(x[2]-x[0]) }, thin, between, thick)
}

// together holds pull and load across the screws against what they bear of each: the
// wind that lifts with the array's own weight down the slope, and snow alone.
func (g *Grasp) together(loads pulls) {
	lifted := working.Closure{Symbol: "η_lift", Text: "(T / F_ax,Rd)² + (F_slide / F_v,Rd)²", Source: en1995("8.7.3, (8.28)", working.Read)}.Of(
		func(x ...float64) float64 { return square(x[0]/x[1]) + square(x[2]/x[3]) },
		g.PullKn, g.WithdrawalKn, loads.slide, g.ShearKn)
	snowed := working.Closure{Symbol: "η_snow", Text: "(F_along / F_v,Rd)²", Source: en1995("8.7.3, (8.28)", working.Read)}.Of(
		func(x ...float64) float64 { return square(x[0] / x[1]) }, loads.along, g.ShearKn)
	g.Combined = working.Greatest("η", "", lifted, snowed)
}
