package earthing

import (
	"cmp"
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
	EarthEnclosed       working.Flag   `json:"earth_enclosed" words:"whether the greatest of them is enclosed and guarded against damage all its way"`
	EarthDueMm2         working.Number `json:"leakage_earth_due_mm2" words:"least cross-section of a single protective conductor that carries much leakage, the smaller one where it is enclosed"`
}

func watches(in *schema.Installation, c *circuit.Circuit, pv pvstring.Facts, cables cable.Facts, n network, b book.Book) []Watch {
	all := make([]Watch, len(in.Inverters))
	for i, inv := range in.Inverters {
		all[i] = watchOf(&inv, b)
		all[i].InsulationArrayKohm = covering(b, "array_insulation", "up_to_w", pv.Inverters[i].DcPowerW, "resistance_kohm", "R_array")
		all[i].alarms(in.Earthing.Alarms, inv)
		all[i].protectiveConductors(inv, c, cables, n, b)
	}
	return all
}

var insulationDue = working.NewFormula("R_iso,min", "kΩ", "U_max / I_iso", insulationTest)

// watchOf takes what the datasheet of an inverter states.
func watchOf(inv *schema.Inverter, b book.Book) Watch {
	sheet := inv.Datasheet.To()
	return Watch{
		InsulationMinKohm: working.Stated("R_iso", "kΩ", sheet.InsulationMinKohm),
		InsulationDueKohm: insulationDue.Of(working.Stated("U_max", "V", sheet.DCVoltageMaxV), b.Number("insulation_current_max_ma", "I_iso")),
		LeakageMa:         working.Stated("I_PE", "mA", sheet.LeakageCurrentMa),
	}
}

// alarms takes the alarms of the inverter: what one of them watches is watched.
func (w *Watch) alarms(all []schema.EarthFaultAlarm, inv schema.Inverter) {
	const at = "/earthing/alarms"
	if all == nil {
		w.EarthFaultAlarms = working.Unknown("n_alarm", "", at)
		w.ResidualMonitored, w.InsulationMeasured = working.UnknownFlag(at), working.UnknownFlag(at)
		return
	}
	var residual, insulation []working.Flag
	for i := range all {
		if a := &all[i]; a.Inverter.Value == inv.ID.Value {
			residual = append(residual, working.StatedFlag(a.ResidualCurrentMonitored))
			insulation = append(insulation, working.StatedFlag(a.InsulationMeasured))
		}
	}
	w.EarthFaultAlarms = working.Counted("n_alarm", len(residual), at)
	w.ResidualMonitored, w.InsulationMeasured = working.Any(residual...), working.Any(insulation...)
}

// protectiveConductors takes the protective conductors that lead to the inverter: the one of
// its AC runs, and one by the runs that only earth. Leaving one out never makes
// them more or thicker.
func (w *Watch) protectiveConductors(inv schema.Inverter, c *circuit.Circuit, cables cable.Facts, n network, b book.Book) {
	found := []earthWay{{n.size("S_PE", inv.ID.Value), n.path(inv.ID.Value)}}
	if runs := toBoard(c, inv.ID.Value+".ac"); len(runs) > 0 && len(cables.Runs) > 0 {
		var sizes []working.Number
		for _, r := range runs {
			sizes = append(sizes, cables.Runs[r].ProtectiveMm2)
		}
		found = append(found, earthWay{working.Least("S_PE", "mm²", sizes...), runs})
	}
	known := slices.DeleteFunc(slices.Clone(found), func(x earthWay) bool { return !x.size.Known() })
	if len(known) == 0 {
		var sizes []working.Number
		for _, x := range found {
			sizes = append(sizes, x.size)
		}
		w.EarthMm2, w.EarthConductors = working.Greatest("S_PE", "mm²", sizes...), working.Unknown("n_PE", "", found[0].size.Missing()...)
		w.EarthEnclosed = working.UnknownFlag(w.EarthConductors.Missing()...)
	} else {
		greatest := slices.MaxFunc(known, func(x, y earthWay) int { return cmp.Compare(x.size.Value(), y.size.Value()) })
		w.EarthMm2, w.EarthConductors = greatest.size, working.Counted("n_PE", len(known), inv.At())
		w.EarthEnclosed = n.enclosed(greatest.runs)
	}
	w.EarthDueMm2 = leakageEarthDue(w.EarthMm2, w.EarthEnclosed, b)
}

// earthWay is one way by which an inverter is earthed.
type earthWay struct {
	size working.Number
	runs []int
}

// toBoard lists the runs from an AC terminal to the board at which its circuit
// ends; the first alone where no board is on the way.
func toBoard(c *circuit.Circuit, terminal string) []int {
	p := c.ToSupply(terminal)
	if len(p.Ways) == 0 || p.Untraced != nil {
		return p.Runs[:min(1, len(p.Runs))]
	}
	return p.Runs[:len(p.Runs)-len(c.ToSupply(p.Ways[0]).Runs)]
}

// leakageEarthDue is the smaller figure for an enclosed conductor, else the
// greater one, which a thick conductor keeps whether it is enclosed or not.
func leakageEarthDue(size working.Number, enclosed working.Flag, b book.Book) working.Number {
	open, closed := b.Number("leakage_earth_min_mm2", "S_leak"), b.Number("leakage_earth_enclosed_min_mm2", "S_leak")
	switch {
	case !enclosed.Known() && size.Known() && size.Value() < open.Value() && size.Value() >= closed.Value():
		return working.Unknown("S_leak", "mm²", enclosed.Missing()...)
	case enclosed.Known() && enclosed.Value():
		return closed
	}
	return open
}
