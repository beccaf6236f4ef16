package roof

import (
	"math"

	"sunclause/facts/working"
	"sunclause/schema"
)

// Grasp is how a fixing holds in the timber below it.
type Grasp struct {
	Member         working.Text   `json:"member" words:"what it is fixed into"`
	InTimber       working.Flag   `json:"in_timber" words:"whether that is timber of the roof: rafter, noggin or purlin"`
	TestedInTimber working.Flag   `json:"kit_tested_in_timber" words:"whether it was tested with its screws in timber"`
	TestedInBatten working.Flag   `json:"kit_tested_in_batten" words:"whether it was tested on battens or boards alone"`
	OffTimberMm    working.Number `json:"off_timber_mm" words:"distance from the middle line of the nearest rafter, or from the noggin it names"`
	HalfWidthMm    working.Number `json:"timber_half_width_mm" words:"half the breadth of the timber"`
	WidthMm        working.Number `json:"timber_width_mm" words:"breadth of the timber"`
	WidthMinMm     working.Number `json:"timber_width_min_mm" words:"smallest breadth of timber that its maker allows"`
	TimberSound    working.Flag   `json:"timber_sound" words:"whether the timber was found sound and did not split"`
	NogginHeld     working.Flag   `json:"noggin_fixed_at_both_ends" words:"whether both ends of its noggin are fixed"`
	Screws         working.Number `json:"screws" words:"screws in it"`
	ScrewsMin      working.Number `json:"screws_min" words:"fewest screws that its maker allows"`
	Arrangement    working.Text   `json:"screw_arrangement" words:"how the screws stand to the grain: in_line, side_by_side or staggered"`
	DiameterMm     working.Number `json:"screw_diameter_mm" words:"diameter of its screws"`
	DepthMm        working.Number `json:"screw_depth_mm" words:"thread of a screw inside the timber"`
	DepthOverD     working.Number `json:"screw_depth_over_d" words:"thread inside the timber over the diameter"`
	EdgeOverD      working.Number `json:"edge_distance_over_d" words:"distance of the screws from the edge of the timber over the diameter"`
	EndOverD       working.Number `json:"end_distance_over_d" words:"distance of the nearest screw from the end of the timber over the diameter"`
	SpacingOverD   working.Number `json:"screw_spacing_over_d" words:"distance from screw to screw over the diameter"`
	ThicknessOverD working.Number `json:"timber_depth_over_d" words:"depth of the timber over the diameter"`
	WidthOverD     working.Number `json:"timber_width_over_d" words:"breadth of the timber over the diameter"`
	AngleDeg       working.Number `json:"screw_angle_deg" words:"angle between the screws and the grain"`
	PullKn         working.Number `json:"screw_pull_kn" words:"design pull on the screws, with the lever of the hook"`
	WithdrawalKn   working.Number `json:"withdrawal_kn" words:"design resistance of the screws against withdrawal"`
	TensionKn      working.Number `json:"screw_tension_kn" words:"design resistance of the screws themselves"`
	ShearKn        working.Number `json:"screw_shear_kn" words:"design resistance of the screws against the load down the slope"`
	Combined       working.Number `json:"screw_combined" words:"pull and load down the slope together over what the screws bear; no more than 1"`
	DepthDueD      working.Number `json:"screw_depth_due_d" words:"thread inside the timber that is due, over the diameter"`
	EdgeDueD       working.Number `json:"edge_distance_due_d" words:"distance from the edge of the timber that is due, over the diameter"`
	EndDueD        working.Number `json:"end_distance_due_d" words:"distance from the end of the timber that is due, over the diameter"`
	SpacingDueD    working.Number `json:"screw_spacing_due_d" words:"distance from screw to screw along the grain that is due, over the diameter"`
}

// timber is what screws hold in.
type timber struct {
	width, height, density, offMiddle working.Number
}

// pulls are the design loads that the screws of a fixing have to bear.
type pulls struct {
	up    working.Number // away from the roof
	along working.Number // down the slope with snow
	slide working.Number // down the slope while the wind lifts
}

func (s *slope) graspOf(doc *schema.Fixing, sheet *schema.FixingDatasheet, loads pulls) Grasp {
	noggin := s.nogginOf(doc)
	t := s.timberOf(doc, noggin)
	hook := func(symbol, unit string, of func(schema.HookDatasheet) schema.Number) working.Number {
		return sheetNumber(symbol, unit, sheet, doc.Datasheet.Text, func(f *schema.FixingDatasheet) schema.Number { return of(f.Hook) })
	}
	g := Grasp{
		Member:         working.StatedText(doc.Member),
		InTimber:       s.inTimber(doc.Member),
		TestedInTimber: sheetFlag(sheet, doc.Datasheet.Text, func(s *schema.FixingDatasheet) schema.Flag { return s.Load.TestedInTimber }),
		TestedInBatten: sheetFlag(sheet, doc.Datasheet.Text, func(s *schema.FixingDatasheet) schema.Flag { return s.Load.TestedInBatten }),
		OffTimberMm:    s.offTimber(doc, noggin),
		WidthMm:        t.width,
		WidthMinMm:     hook("b_min", "mm", func(h schema.HookDatasheet) schema.Number { return h.MemberWidthMinMm }),
		TimberSound:    working.StatedFlag(doc.TimberSound),
		NogginHeld:     working.UnknownFlag(doc.Noggin.At()),
		Screws:         working.Stated("n", "", doc.Screws),
		ScrewsMin:      hook("n_min", "", func(h schema.HookDatasheet) schema.Number { return h.ScrewsMin }),
		Arrangement:    working.StatedText(doc.ScrewArrangement),
		AngleDeg:       working.Stated("α_s", "°", doc.ScrewAngleDeg),
	}
	if noggin != nil {
		g.NogginHeld = working.StatedFlag(noggin.FixedAtBothEnds)
	}
	g.pulled(loads.up, t, hook("e", "mm", func(h schema.HookDatasheet) schema.Number { return h.LeverArmMm }),
		hook("c", "mm", func(h schema.HookDatasheet) schema.Number { return h.PivotDistanceMm }))
	if g.InTimber.Known() && !g.InTimber.Value() {
		g.notInTimber(doc.Member.At())
		return g
	}
	screw := s.fixingSheet(doc.Screw.Text)
	s.spaces(&g, doc, screw, t)
	s.withdraw(&g, doc, sheet, screw, t)
	s.due(&g, screw)
	s.shear(&g, doc, sheet, screw, t)
	g.together(loads)
	return g
}

// pulled works out the pull on the screws of a hook: the load acts at an arm from
// the middle of the screws, and the plate turns about its edge on the other side.
func (g *Grasp) pulled(load working.Number, t timber, arm, pivot working.Number) {
	g.HalfWidthMm = working.Closure{Symbol: "b_2", Unit: "mm", Text: "b / 2", Source: working.ByDefinition}.Of(
		func(x ...float64) float64 { return x[0] / 2 }, t.width)
	g.PullKn = working.Closure{Symbol: "T", Unit: "kN", Text: "F_d · (1 + e / c)", Source: statics}.Of(
		func(x ...float64) float64 { return x[0] * (1 + x[1]/x[2]) }, load.As("F_d"), arm, pivot)
}

// notInTimber leaves unknown what only screws in timber have.
func (g *Grasp) notInTimber(at string) {
	for _, n := range []*working.Number{&g.DiameterMm, &g.DepthMm, &g.DepthOverD, &g.EdgeOverD, &g.EndOverD, &g.SpacingOverD,
		&g.ThicknessOverD, &g.WidthOverD, &g.WithdrawalKn, &g.TensionKn, &g.ShearKn, &g.Combined,
		&g.DepthDueD, &g.EdgeDueD, &g.EndDueD, &g.SpacingDueD} {
		*n = working.Unknown("n", "", at)
	}
}

// spaces works out the distances of the screws in diameters.
func (s *slope) spaces(g *Grasp, doc *schema.Fixing, screw *schema.FixingDatasheet, t timber) {
	g.DiameterMm = sheetNumber("d", "mm", screw, doc.Screw.Text, func(s *schema.FixingDatasheet) schema.Number { return s.Screw.DiameterMm })
	over := func(symbol, of string, n working.Number) working.Number {
		f := working.Closure{Symbol: symbol, Text: of + " / d", Source: en1995("8.7.2, table 8.6", working.Read)}
		return f.Of(func(x ...float64) float64 { return x[0] / x[1] }, n.As(of), g.DiameterMm)
	}
	edge := working.Closure{Symbol: "a_edge", Unit: "mm", Text: "b / 2 − e_m", Source: working.ByDefinition}
	inputs := []working.Number{t.width, t.offMiddle}
	spacing := working.Stated("a_1", "mm", doc.ScrewSpacingMm)
	if !doc.ScrewArrangement.Is("in_line") { // the screws stand apart across the timber too
		edge.Text += " − a_1 / 2"
		inputs = append(inputs, spacing)
	}
	across := edge.Of(func(x ...float64) float64 {
		d := x[0]/2 - x[1]
		if len(x) > 2 {
			d -= x[2] / 2
		}
		return d
	}, inputs...)
	if !doc.ScrewArrangement.Stated() {
		across = working.Unknown("a_edge", "mm", doc.ScrewArrangement.At())
	}
	g.EdgeOverD = over("a_edge/d", "a_edge", across)
	g.EndOverD = over("a_end/d", "a_end", working.Stated("a_end", "mm", doc.EndDistanceMm))
	g.SpacingOverD = over("a_1/d", "a_1", spacing)
	g.ThicknessOverD = over("h/d", "h", t.height)
	g.WidthOverD = over("b/d", "b", t.width)
}

// withdraw works out what pull the screws bear in the timber.
func (s *slope) withdraw(g *Grasp, doc *schema.Fixing, sheet, screw *schema.FixingDatasheet, t timber) {
	n := working.Closure{Symbol: "n_ef", Text: "n^0.9", Source: en1995("8.7.2, (8.41)", working.Read)}.Of(
		func(x ...float64) float64 { return math.Pow(x[0], 0.9) }, g.Screws)
	g.DepthMm = s.depth(doc, sheet, screw, t)
	g.DepthOverD = working.Closure{Symbol: "l_ef/d", Text: "l_ef / d", Source: en1995("8.7.2", working.Read)}.Of(
		func(x ...float64) float64 { return x[0] / x[1] }, g.DepthMm, g.DiameterMm)
	strength := s.strength(g, doc, screw, t)
	small := working.Least("k_d", "", working.Closure{Symbol: "d/8", Text: "d / 8", Source: en1995("8.7.2, (8.40)", working.Read)}.Of(
		func(x ...float64) float64 { return x[0] / 8 }, g.DiameterMm), working.Figure("1", "", 1, "the rule", en1995("8.7.2, (8.40)", working.Read)))
	if !s.byFormula(screw) {
		small = working.Figure("k_d", "", 1, "a declared withdrawal parameter", en1995("8.7.2, (8.40a)", working.Read))
	}
	rk := working.Closure{Symbol: "F_ax,Rk", Unit: "N", Text: "n_ef · f_ax · d · l_ef · k_d / (1.2 · cos(α_s)² + sin(α_s)²)", Source: en1995("8.7.2, (8.38)", working.Read)}.Of(
		func(x ...float64) float64 {
			if x[5] < 30 { // outside what the clause covers
				return math.NaN()
			}
			return x[0] * x[1] * x[2] * x[3] * x[4] / (1.2*square(cos(x[5])) + square(sin(x[5])))
		}, n, strength, g.DiameterMm, g.DepthMm, small, g.AngleDeg)
	g.WithdrawalKn = working.Closure{Symbol: "F_ax,Rd", Unit: "kN", Text: "k_mod · F_ax,Rk / γ_M / 1000", Source: en1995("2.4.3", working.Memory)}.Of(
		func(x ...float64) float64 { return x[0] * x[1] / x[2] / 1000 }, s.duration("wind_load_duration"), rk, s.param("timber_connection_factor", "γ_M"))
	g.TensionKn = working.Closure{Symbol: "F_t,Rd", Unit: "kN", Text: "n_ef · f_tens / γ_M2", Source: en1995("8.7.2, (8.40c)", working.Read)}.Of(
		func(x ...float64) float64 { return x[0] * x[1] / x[2] }, n,
		sheetNumber("f_tens", "kN", screw, doc.Screw.Text, func(s *schema.FixingDatasheet) schema.Number { return s.Screw.TensionKn }), s.param("steel_tension_factor", "γ_M2"))
}

// byFormula reports whether the screw is one for which Eurocode 5 gives the
// withdrawal strength itself: 6 to 12 mm thick, with a core of 0.6 to 0.75 of
// that. For any other the maker has to declare it.
func (s *slope) byFormula(screw *schema.FixingDatasheet) bool {
	if screw == nil || !screw.Screw.CoreDiameterMm.Stated() {
		return true // the formula will name what is missing
	}
	d, core := screw.Screw.DiameterMm.Value, screw.Screw.CoreDiameterMm.Value/screw.Screw.DiameterMm.Value
	return d >= 6 && d <= 12 && core >= 0.6 && core <= 0.75
}

// strength is the withdrawal strength of the screws in the timber.
func (s *slope) strength(g *Grasp, doc *schema.Fixing, screw *schema.FixingDatasheet, t timber) working.Number {
	of := func(symbol, unit string, of func(schema.ScrewDatasheet) schema.Number) working.Number {
		return sheetNumber(symbol, unit, screw, doc.Screw.Text, func(f *schema.FixingDatasheet) schema.Number { return of(f.Screw) })
	}
	if s.byFormula(screw) {
		f := working.Closure{Symbol: "f_ax", Unit: "N/mm²", Text: "0.52 · d^−0.5 · l_ef^−0.1 · ρ_k^0.8", Source: en1995("8.7.2, (8.39)", working.Read)}
		core := of("d_1", "mm", func(s schema.ScrewDatasheet) schema.Number { return s.CoreDiameterMm })
		return f.Of(func(x ...float64) float64 {
			return 0.52 * math.Pow(x[0], -0.5) * math.Pow(x[1], -0.1) * math.Pow(x[2], 0.8)
		}, g.DiameterMm, g.DepthMm, t.density, core)
	}
	f := working.Closure{Symbol: "f_ax", Unit: "N/mm²", Text: "f_sheet · (ρ_k / ρ_a)^0.8", Source: en1995("8.7.2, (8.40a)", working.Read)}
	return f.Of(func(x ...float64) float64 { return x[0] * math.Pow(x[1]/x[2], 0.8) },
		of("f_sheet", "N/mm²", func(s schema.ScrewDatasheet) schema.Number { return s.WithdrawalNPerMm2 }), t.density,
		of("ρ_a", "kg/m³", func(s schema.ScrewDatasheet) schema.Number { return s.WithdrawalDensityKgPerM3 }))
}
