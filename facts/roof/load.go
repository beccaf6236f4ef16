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

// weigh works out the weight of the array and what it adds to the roof.
func (s *slope) weigh() {
	d := DeadLoad{RoofDead: working.Stated("g_roof", "kN/m²", s.doc.DeadLoadKnPerM2)}
	mass, area := s.massAndArea(&d)
	d.AreaM2 = area
	mounting := working.Stated("m_rails", "kg", s.doc.MountingMassKg)
	ballast := working.Stated("m_ballast", "kg", s.doc.BallastMassKg)
	d.ArrayKgM2 = working.Closure{Symbol: "m_pv", Unit: "kg/m²", Text: "(m_modules + m_rails + m_ballast) / A_modules", Source: working.ByDefinition}.Of(
		func(x ...float64) float64 { return (x[0] + x[1] + x[2]) / x[3] }, mass, mounting, ballast, area)
	d.ArrayKnM2 = working.Closure{Symbol: "g_pv", Unit: "kN/m²", Text: "9.81 · m_pv / 1000", Source: working.ByDefinition}.Of(
		func(x ...float64) float64 { return gravity * x[0] }, d.ArrayKgM2)
	approved := working.Source{Document: "LABC best practice note on retrofitting solar panels (Approved Document A)", How: working.Read}
	d.AddedPct = working.Closure{Symbol: "Δ_g", Unit: "%", Text: "100 · g_pv / g_roof", Source: approved}.Of(
		func(x ...float64) float64 { return 100 * x[0] / x[1] }, d.ArrayKnM2, d.RoofDead)
	variable := working.Greatest("q", "kN/m²", s.snow.SnowKnM2, working.Stated("q_access", "kN/m²", s.doc.ImposedLoadKnPerM2))
	d.AddedTotal = working.Closure{Symbol: "Δ_t", Unit: "%", Text: "100 · g_pv / (g_roof + q)", Source: approved}.Of(
		func(x ...float64) float64 { return 100 * x[0] / (x[1] + x[2]) }, d.ArrayKnM2, d.RoofDead, variable)
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
	counts := map[string]int{}
	var order []*laid
	for i := range s.layout {
		m := &s.layout[i]
		if counts[m.key]++; counts[m.key] == 1 {
			order = append(order, m)
		}
	}
	var masses, areas []working.Number
	for _, m := range order {
		n := working.Counted("n", counts[m.key], at)
		masses = append(masses, working.Closure{Symbol: "m_n", Unit: "kg", Text: "n · m", Source: working.ByDefinition}.Of(
			func(x ...float64) float64 { return x[0] * x[1] }, n, m.mass))
		areas = append(areas, working.Closure{Symbol: "A_n", Unit: "m²", Text: "n · A", Source: working.ByDefinition}.Of(
			func(x ...float64) float64 { return x[0] * x[1] }, n, m.area))
	}
	return working.Sum("m_modules", "kg", masses...), working.Sum("A_modules", "m²", areas...)
}

// ArealLoads are the loads towards the roof and down it on a square metre of
// slope under the modules.
type ArealLoads struct {
	Down    working.Number `json:"down_kn_per_m2" words:"design load towards the roof on a square metre of modules"`
	Along   working.Number `json:"along_kn_per_m2" words:"design load down the slope on a square metre of modules"`
	Service working.Number `json:"push_kn_per_m2" words:"characteristic load towards the roof on a square metre of modules"`
}

// bearDown combines dead load, snow and wind pressure, each of the two in turn
// leading.
func (s *slope) bearDown() {
	push := s.param("roof_net_pressure", "c_push")
	if off := s.offRoof(); off != nil {
		push = working.Unknown("c_push", "", off...)
	}
	wind := working.Closure{Symbol: "w", Unit: "kN/m²", Text: "c_push · q_p", Source: netSource}.Of(
		func(x ...float64) float64 { return x[0] * x[1] }, push, s.wind.PeakKnM2)
	dead := working.Closure{Symbol: "g_n", Unit: "kN/m²", Text: "g_pv · cos(α)", Source: statics}.Of(
		func(x ...float64) float64 { return x[0] * cos(x[1]) }, s.dead.ArrayKnM2, s.pitch)
	snow := working.Closure{Symbol: "s_n", Unit: "kN/m²", Text: "s · cos(α)²", Source: statics}.Of(
		func(x ...float64) float64 { return x[0] * square(cos(x[1])) }, s.snow.SnowKnM2, s.pitch)
	g, q := s.param("load_factor_dead", "γ_G"), s.param("load_factor_variable", "γ_Q")
	psiW, psiS := s.param("wind_combination_factor", "ψ_w"), s.param("snow_combination_factor", "ψ_s")
	design := func(symbol, text string, inputs ...working.Number) working.Number {
		return working.Closure{Symbol: symbol, Unit: "kN/m²", Text: text, Source: combination}.Of(
			func(x ...float64) float64 { return x[0]*x[1] + x[2]*(x[3]+x[4]*x[5]) }, append([]working.Number{g, dead, q}, inputs...)...)
	}
	service := func(symbol, text string, inputs ...working.Number) working.Number {
		return working.Closure{Symbol: symbol, Unit: "kN/m²", Text: text, Source: combination}.Of(
			func(x ...float64) float64 { return x[0] + x[1] + x[2]*x[3] }, append([]working.Number{dead}, inputs...)...)
	}
	s.areal.Down = working.Greatest("p_d", "kN/m²",
		design("p_snow", "γ_G · g_n + γ_Q · (s_n + ψ_w · w)", snow, psiW, wind),
		design("p_wind", "γ_G · g_n + γ_Q · (w + ψ_s · s_n)", wind, psiS, snow))
	s.areal.Service = working.Greatest("p_k", "kN/m²",
		service("p_snow", "g_n + s_n + ψ_w · w", snow, psiW, wind),
		service("p_wind", "g_n + w + ψ_s · s_n", wind, psiS, snow))
	s.areal.Along = working.Closure{Symbol: "p_along", Unit: "kN/m²", Text: "γ_G · g_pv · sin(α) + γ_Q · s · cos(α) · sin(α)", Source: combination}.Of(
		func(x ...float64) float64 { return x[0]*x[1]*sin(x[2]) + x[3]*x[4]*cos(x[2])*sin(x[2]) },
		g, s.dead.ArrayKnM2, s.pitch, q, s.snow.SnowKnM2)
	s.slide = working.Closure{Symbol: "p_slide", Unit: "kN/m²", Text: "γ_G · g_pv · sin(α)", Source: combination}.Of(
		func(x ...float64) float64 { return x[0] * x[1] * sin(x[2]) }, g, s.dead.ArrayKnM2, s.pitch)
}

// offRoof names what keeps the net coefficients from holding on the plane. They
// are for modules close and parallel to the roof; of modules that stand up from it
// the wind is for an engineer, as on a hill.
func (s *slope) offRoof() []string {
	var at []string
	for _, l := range []struct {
		is   schema.Number
		most string
	}{{s.doc.GapUnderModulesMm, "gap_under_modules_max_mm"}, {s.doc.TiltToRoofDeg, "tilt_to_roof_max_deg"}} {
		switch most := s.param(l.most, "x"); {
		case !most.Known() || !l.is.Stated():
			at = append(at, append(most.Missing(), l.is.At())...)
		case l.is.Value > most.Value():
			at = append(at, "the wind on modules that stand up from the roof")
		}
	}
	return at
}

// load works out what rests on the plane, before what carries it is looked at.
func (s *slope) load() {
	s.weigh()
	s.bearDown()
	for i := range s.layout {
		s.blow(&s.layout[i])
	}
	s.carry()
}

// sheetOf finds the datasheet of a placed module: its own, or that of its string.
func (s *slope) sheetOf(m *schema.PlacedModule) (key string, missing string) {
	if m.Module.Stated() {
		return m.Module.Value, ""
	}
	if !m.String.Stated() {
		return "", m.Module.At()
	}
	for i := range s.in.Strings {
		if str := &s.in.Strings[i]; str.ID.Value == m.String.Value {
			if str.Module.Stated() {
				return str.Module.Value, ""
			}
			return "", str.Module.At()
		}
	}
	return "", m.String.At()
}

// blow works out what the wind asks of a module: the net coefficient of a module
// close to the roof, or the suction of the zone where it is greater. Modules that
// are the covering themselves have other coefficients.
func (s *slope) blow(m *laid) {
	columns, missing := s.zones(m)
	missing = append(missing, s.offRoof()...)
	switch kind := s.doc.Covering.Kind; {
	case !kind.Stated():
		missing = append(missing, kind.At())
	case kind.Is("modules_as_covering"):
		missing = append(missing, "the wind on modules that are the covering")
	}
	suction := working.Unknown("c_pe", "", missing...)
	m.zones = working.UnknownList(missing...)
	if missing == nil {
		suction, m.zones = s.suction(columns), working.List(columns...)
	}
	m.net = working.Greatest("c_net", "", s.param("roof_net_uplift_min", "c_min"), suction)
	m.pull = working.Closure{Symbol: "w_pull", Unit: "Pa", Text: "1000 · c_net · q_p", Source: en1991Wind("5.2", working.Memory)}.Of(
		func(x ...float64) float64 { return 1000 * x[0] * x[1] }, m.net, s.wind.PeakKnM2)
	m.uplift = working.Closure{Symbol: "u", Unit: "kN/m²", Text: "γ_Q · w_pull / 1000 − γ_G,inf · g · cos(α)", Source: combination}.Of(
		func(x ...float64) float64 { return x[0]*x[1]/1000 - x[2]*x[3]*cos(x[4]) },
		s.param("load_factor_variable", "γ_Q"), m.pull, s.param("load_factor_dead_favourable", "γ_G,inf"), m.dead, s.pitch)
}
