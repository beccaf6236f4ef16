package roof

import (
	"sunclause/facts/working"
	"sunclause/schema"
)

// DeadLoad is the weight of the modules and of what carries them.
type DeadLoad struct {
	Modules    working.Number `json:"modules" words:"modules on the plane"`
	AreaM2     working.Number `json:"modules_area_m2" words:"area of the modules"`
	ArrayKgM2  working.Number `json:"array_kg_per_m2" words:"mass of modules, rails and fixings on a square metre of modules"`
	ArrayKnM2  working.Number `json:"array_dead_kn_per_m2" words:"weight of modules, rails and fixings on a square metre of modules"`
	RoofDead   working.Number `json:"roof_dead_kn_per_m2" words:"existing dead load on a square metre of slope"`
	AddedPct   working.Number `json:"added_dead_pct" words:"weight of the array over the existing dead load"`
	AddedTotal working.Number `json:"added_total_pct" words:"weight of the array over the existing dead load with snow or access"`
}

var approvedDocument = working.Source{Document: "LABC best practice note on retrofitting solar panels (Approved Document A)", How: working.Read}

// Formulas of the dead load.
var (
	arrayMass   = working.NewFormula("m_pv", "kg/m²", "(m_modules + m_rails + m_ballast) / A_modules", working.ByDefinition)
	arrayWeight = working.NewFormula("g_pv", "kN/m²", "9.81 · m_pv / 1000", working.ByDefinition)
	addedDead   = working.NewFormula("Δ_g", "%", "100 · g_pv / g_roof", approvedDocument)
	addedTotal  = working.NewFormula("Δ_t", "%", "100 · g_pv / (g_roof + q)", approvedDocument)
)

// deadLoads works out the weight of the array and what it adds to the roof.
func (s *slope) deadLoads() {
	d := DeadLoad{RoofDead: working.Stated("g_roof", "kN/m²", s.doc.DeadLoadKnPerM2)}
	mass, area := s.massAndArea(&d)
	d.AreaM2 = area
	mounting := working.Stated("m_rails", "kg", s.doc.MountingMassKg)
	ballast := working.Stated("m_ballast", "kg", s.doc.BallastMassKg)
	d.ArrayKgM2 = arrayMass.Of(mass, mounting, ballast, area)
	d.ArrayKnM2 = arrayWeight.Of(d.ArrayKgM2)
	d.AddedPct = addedDead.Of(d.ArrayKnM2, d.RoofDead)
	variable := working.Greatest("q", "kN/m²", s.snow.SnowKnM2, working.Stated("q_access", "kN/m²", s.doc.ImposedLoadKnPerM2))
	d.AddedTotal = addedTotal.Of(d.ArrayKnM2, d.RoofDead, variable)
	s.dead = d
}

// massAndArea adds the modules up, datasheet by datasheet.
func (s *slope) massAndArea(d *DeadLoad) (mass, area working.Number) {
	at := s.doc.Member("modules")
	if s.doc.Modules == nil {
		d.Modules = working.Unknown("n", "", at)
		return working.Unknown("m_modules", "kg", at), working.Unknown("A_modules", "m²", at)
	}
	d.Modules = working.Counted("n", len(s.doc.Modules), at)
	counts := map[*schema.Module]int{}
	var order []*placedModule
	for i := range s.layout {
		m := &s.layout[i]
		if counts[kindOf(m)]++; counts[kindOf(m)] == 1 {
			order = append(order, m)
		}
	}
	var masses, areas []working.Number
	for _, m := range order {
		n := working.Counted("n", counts[kindOf(m)], at)
		masses = append(masses, working.Product("m_n", "kg", working.ByDefinition, n, m.mass))
		areas = append(areas, working.Product("A_n", "m²", working.ByDefinition, n, m.area))
	}
	return working.Sum("m_modules", "kg", masses...), working.Sum("A_modules", "m²", areas...)
}

// kindOf is the datasheet of a module. Those without one are of one kind: the first
// of them names what is missing.
func kindOf(m *placedModule) *schema.Module {
	if !m.sheet.Stated() {
		return nil
	}
	return m.sheet
}

// ArealLoads are the loads towards the roof and down it on a square metre of
// slope under the modules.
type ArealLoads struct {
	Down    working.Number `json:"down_kn_per_m2" words:"design load towards the roof on a square metre of modules"`
	Along   working.Number `json:"along_kn_per_m2" words:"design load down the slope on a square metre of modules"`
	Service working.Number `json:"push_kn_per_m2" words:"characteristic load towards the roof on a square metre of modules"`
}

// Formulas of the loads on the array. Snow or wind leads, and the other goes with it
// by its factor.
var (
	netPressure   = working.NewFormula("w", "kN/m²", "c_push · q_p", netSource)
	deadAcross    = working.NewFormula("g_n", "kN/m²", "g_pv · cos(α)", statics)
	snowAcross    = working.NewFormula("s_n", "kN/m²", "s · cos(α)²", statics)
	downBySnow    = working.NewFormula("p_snow", "kN/m²", "γ_G · g_n + γ_Q · (s_n + ψ_w · w)", combination)
	downByWind    = working.NewFormula("p_wind", "kN/m²", "γ_G · g_n + γ_Q · (w + ψ_s · s_n)", combination)
	serviceBySnow = working.NewFormula("p_snow", "kN/m²", "g_n + s_n + ψ_w · w", combination)
	serviceByWind = working.NewFormula("p_wind", "kN/m²", "g_n + w + ψ_s · s_n", combination)
	downSlope     = working.NewFormula("p_along", "kN/m²", "γ_G · g_pv · sin(α) + γ_Q · s · cos(α) · sin(α)", combination)
	deadDownSlope = working.NewFormula("p_slide", "kN/m²", "γ_G · g_pv · sin(α)", combination)
	pullOnRear    = working.NewFormula("w_pull", "Pa", "1000 · c_net · q_p", en1991Wind("5.2", working.Memory))
	netUplift     = working.NewFormula("u", "kN/m²", "γ_Q · w_pull / 1000 − γ_G,inf · g · cos(α)", combination)
)

// downwardLoads combines dead load, snow and wind pressure, each of the two in turn
// leading.
func (s *slope) downwardLoads() {
	push := s.param("roof_net_pressure", "c_push")
	if off := s.noNetCoefficient(); off != nil {
		push = working.Unknown("c_push", "", off...)
	}
	wind, dead, snow := netPressure.Of(push, s.wind.PeakKnM2), deadAcross.Of(s.dead.ArrayKnM2, s.pitch), snowAcross.Of(s.snow.SnowKnM2, s.pitch)
	g, q := s.param("load_factor_dead", "γ_G"), s.param("load_factor_variable", "γ_Q")
	psiW, psiS := s.param("wind_combination_factor", "ψ_w"), s.param("snow_combination_factor", "ψ_s")
	s.areal.Down = working.Greatest("p_d", "kN/m²", downBySnow.Of(g, dead, q, snow, psiW, wind), downByWind.Of(g, dead, q, wind, psiS, snow))
	s.areal.Service = working.Greatest("p_k", "kN/m²", serviceBySnow.Of(dead, snow, psiW, wind), serviceByWind.Of(dead, wind, psiS, snow))
	s.areal.Along = downSlope.Of(g, s.dead.ArrayKnM2, s.pitch, q, s.snow.SnowKnM2)
	s.slide = deadDownSlope.Of(g, s.dead.ArrayKnM2, s.pitch)
}

// noNetCoefficient names what keeps the net coefficients from holding on the plane. They
// are for modules close and parallel to the roof; of modules that stand up from it
// the wind is for an engineer, as on a hill.
func (s *slope) noNetCoefficient() []working.Gap {
	var at []working.Gap
	for _, l := range []struct {
		is   schema.Number
		most string
	}{{s.doc.GapUnderModulesMm, "gap_under_modules_max_mm"}, {s.doc.TiltToRoofDeg, "tilt_to_roof_max_deg"}} {
		switch most := s.param(l.most, "x"); {
		case !most.Known() || !l.is.Stated():
			at = append(at, append(most.Missing(), working.Unstated(l.is.At()))...)
		case l.is.Value > most.Value():
			at = append(at, working.Unstated("the wind on modules that stand up from the roof"))
		}
	}
	return at
}

// loads works out what rests on the plane, before what carries it is looked at.
func (s *slope) loads() {
	s.deadLoads()
	s.downwardLoads()
	for i := range s.layout {
		s.windUplift(&s.layout[i])
	}
	s.assignLoads()
}

// windUplift works out the pull of the wind on a module: the net coefficient of a module
// close to the roof, or the suction of the zone where it is greater. Modules that
// are the covering themselves have other coefficients.
func (s *slope) windUplift(m *placedModule) {
	columns, missing := s.zones(m)
	missing = append(missing, s.noNetCoefficient()...)
	switch kind := s.doc.Covering.Kind; {
	case !kind.Stated():
		missing = append(missing, working.Unstated(kind.At()))
	case kind.Is("modules_as_covering"):
		missing = append(missing, working.Unstated("the wind on modules that are the covering"))
	}
	suction := working.Unknown("c_pe", "", missing...)
	m.zones = working.UnknownList(missing...)
	if missing == nil {
		suction, m.zones = s.suction(columns), working.List(columns...)
	}
	m.net = working.Greatest("c_net", "", s.param("roof_net_uplift_min", "c_min"), suction)
	m.pull = pullOnRear.Of(m.net, s.wind.PeakKnM2)
	m.uplift = netUplift.Of(s.param("load_factor_variable", "γ_Q"), m.pull, s.param("load_factor_dead_favourable", "γ_G,inf"), m.dead, s.pitch)
}
