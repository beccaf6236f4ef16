package accircuit

import (
	"sunclause/facts/working"
	"sunclause/schema"
)

// Output holds the facts of the AC side of one inverter.
type Output struct {
	ACCurrentMaxA   working.Number `json:"ac_current_max_a" words:"maximum continuous AC current, in each phase"`
	ACCurrentRatedA working.Number `json:"ac_current_rated_a" words:"rated AC power over the nominal voltage and its phases"`
	ACPhases        working.Number `json:"ac_phases" words:"phases that it feeds"`
	ACLengthM       working.Number `json:"ac_length_m" words:"length of the runs from it to the supply"`
	GridTypeTest    working.Text   `json:"grid_type_test" words:"standard to which it is type tested for connection"`
	InverterPlace   working.Text   `json:"place" words:"where it stands"`
	InverterOutside working.Flag   `json:"outdoors" words:"whether it stands in the open"`
	InverterSolids  working.Number `json:"ip_solids" words:"first figure of its IP code"`
	InverterWater   working.Number `json:"ip_water" words:"second figure of its IP code"`
	OnCombustible   working.Flag   `json:"on_combustible_surface" words:"whether it is fixed to a surface that burns"`
	ClearancesKept  working.Flag   `json:"clearances_kept" words:"whether the maker's clearances for ventilation are kept"`
	AmbientSiteC    working.Number `json:"ambient_site_c" words:"highest ambient temperature where it stands"`
	AmbientAllowedC working.Number `json:"ambient_allowed_c" words:"highest ambient temperature that its maker allows"`
}

var ratedCurrent = working.NewFormula("I_r", "A", "P_ac / (n_ph · U_0)", working.ByDefinition)

func (m *mains) outputs() []Output {
	all := make([]Output, len(m.in.Inverters))
	for i := range m.in.Inverters {
		all[i] = m.outputOf(&m.in.Inverters[i], &m.own[i])
	}
	return all
}

func (m *mains) outputOf(inv *schema.Inverter, g *generator) Output {
	sheet := inv.Datasheet.To()
	f := Output{
		ACCurrentMaxA:   g.current,
		ACPhases:        g.phases,
		ACLengthM:       working.Unknown("l", "m", m.untracedOf(g)...),
		GridTypeTest:    working.StatedText(sheet.GridTypeTest),
		InverterPlace:   working.StatedText(inv.Place),
		InverterOutside: working.Outdoors(inv.Place),
		InverterSolids:  working.IPFigure("IP_1", sheet.IP, working.IPSolids),
		InverterWater:   working.IPFigure("IP_2", sheet.IP, working.IPWater),
		OnCombustible:   working.StatedFlag(inv.OnCombustibleSurface),
		ClearancesKept:  working.StatedFlag(inv.ClearancesKept),
		AmbientSiteC:    working.Stated("T", "°C", inv.AmbientMaxC),
		AmbientAllowedC: working.Stated("T_max", "°C", sheet.AmbientMaxC),
	}
	f.ACCurrentRatedA = ratedCurrent.Of(working.Stated("P_ac", "W", sheet.ACPowerRatedW), g.phases, working.Stated("U_0", "V", m.in.AC.Supply.VoltageV))
	if g.traced() {
		f.ACLengthM = working.Sum("l", "m", each(g.path.Runs, func(r int) working.Number { return m.cables.Runs[r].LengthM })...)
	}
	return f
}
