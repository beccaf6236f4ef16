package earthing

import (
	"slices"

	"sunclause/facts/book"
	"sunclause/facts/cable"
	"sunclause/facts/circuit"
	"sunclause/facts/pvstring"
	"sunclause/facts/working"
	"sunclause/schema"
)

// Watch holds what one inverter asks of earthing, and how it watches the array
// for earth faults.
type Watch struct {
	InsulationMinKohm   working.Number `json:"insulation_min_kohm" words:"insulation resistance of the array below which it does not start"`
	InsulationDueKohm   working.Number `json:"insulation_due_kohm" words:"insulation resistance at which the greatest voltage drives the greatest harmless current"`
	InsulationArrayKohm working.Number `json:"insulation_array_kohm" words:"least insulation resistance by the rated power of its array"`
	EarthFaultAlarms    working.Number `json:"earth_fault_alarms" words:"alarms that tell people of an earth fault of its array"`
	ResidualMonitored   working.Flag   `json:"residual_current_monitored" words:"whether the residual current of its array is watched"`
	InsulationMeasured  working.Flag   `json:"insulation_measured" words:"whether the insulation of its array is measured before each start"`
	LeakageMa           working.Number `json:"leakage_current_ma" words:"protective conductor current in normal operation"`
	EarthMm2            working.Number `json:"earth_mm2" words:"cross-section of the greatest protective conductor that leads to it, as copper"`
	EarthConductors     working.Number `json:"earth_conductors" words:"protective conductors that lead to it, each by a way of its own"`
}

func watches(in *schema.Installation, c *circuit.Circuit, pv pvstring.Facts, cables cable.Facts, n network, b book.Book) []Watch {
	all := make([]Watch, len(in.Inverters))
	for i, inv := range in.Inverters {
		all[i] = watchOf(in, inv, b)
		all[i].InsulationArrayKohm = covering(b, "array_insulation", "up_to_w", pv.Inverters[i].DcPowerW, "resistance_kohm", "R_array")
		all[i].alarms(in.Earthing.Alarms, inv)
		all[i].earths(inv, c, cables, n)
	}
	return all
}

// watchOf takes what the datasheet of an inverter states.
func watchOf(in *schema.Installation, inv schema.Inverter, b book.Book) Watch {
	sheet := in.Datasheets.Inverters[inv.Datasheet.Value]
	f := working.Formula{Symbol: "R_iso,min", Unit: "kΩ", Text: "U_max / I_iso", Source: insulationTest}
	w := Watch{
		InsulationMinKohm: working.Stated("R_iso", "kΩ", sheet.InsulationMinKohm),
		InsulationDueKohm: f.Of(func(x ...float64) float64 { return x[0] / x[1] },
			working.Stated("U_max", "V", sheet.DCVoltageMaxV), b.Number("insulation_current_max_ma", "I_iso")),
		LeakageMa: working.Stated("I_PE", "mA", sheet.LeakageCurrentMa),
	}
	if !inv.Datasheet.Stated() {
		for _, n := range []*working.Number{&w.InsulationMinKohm, &w.InsulationDueKohm, &w.LeakageMa} {
			*n = working.Unknown(n.Symbol(), n.Unit(), inv.Datasheet.At())
		}
	}
	return w
}

// alarms takes the alarms of the inverter: what one of them watches is watched.
func (w *Watch) alarms(all []schema.EarthFaultAlarm, inv schema.Inverter) {
	const at = "/earthing/alarms"
	if all == nil {
		w.EarthFaultAlarms = working.Unknown("n_alarm", "", at)
		w.ResidualMonitored, w.InsulationMeasured = working.UnknownFlag(at), working.UnknownFlag(at)
		return
	}
	own := slices.DeleteFunc(slices.Clone(all), func(a schema.EarthFaultAlarm) bool { return a.Inverter.Value != inv.ID.Value })
	w.EarthFaultAlarms = working.Counted("n_alarm", len(own), at)
	w.ResidualMonitored = anyOf(own, at, func(a schema.EarthFaultAlarm) schema.Flag { return a.ResidualCurrentMonitored })
	w.InsulationMeasured = anyOf(own, at, func(a schema.EarthFaultAlarm) schema.Flag { return a.InsulationMeasured })
}

func anyOf(all []schema.EarthFaultAlarm, at string, member func(schema.EarthFaultAlarm) schema.Flag) working.Flag {
	var missing []string
	for _, a := range all {
		switch f := member(a); {
		case !f.Stated():
			missing = append(missing, f.At())
		case f.Value:
			return working.StatedFlag(f)
		}
	}
	if missing != nil {
		return working.UnknownFlag(missing...)
	}
	return working.Is(false, at)
}

// earths takes the protective conductors that lead to the inverter: the one of
// its AC run, and one by the runs that only earth. Leaving one out never makes
// them more or thicker.
func (w *Watch) earths(inv schema.Inverter, c *circuit.Circuit, cables cable.Facts, n network) {
	found := []working.Number{n.size("S_PE", inv.ID.Value)}
	if runs := c.ToSupply(inv.ID.Value + ".ac").Runs; len(runs) > 0 && len(cables.Runs) > runs[0] {
		found = append(found, cables.Runs[runs[0]].ProtectiveMm2.As("S_PE"))
	}
	known := slices.DeleteFunc(slices.Clone(found), func(x working.Number) bool { return !x.Known() })
	if len(known) == 0 {
		w.EarthMm2, w.EarthConductors = working.Greatest("S_PE", "mm²", found...), working.Unknown("n_PE", "", found[0].Missing()...)
		return
	}
	w.EarthMm2 = working.Greatest("S_PE", "mm²", known...)
	w.EarthConductors = working.Counted("n_PE", len(known), inv.At())
}
