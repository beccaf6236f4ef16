package commissioning

import (
	"math"
	"slices"

	"sunclause/facts/working"
	"sunclause/schema"
)

// Agreement holds how readings agree with each other and with the parts: of each kind
// of reading, how far off the one is that is furthest off.
type Agreement struct {
	OperatingPct    working.Number `json:"operating_over_short_circuit_pct" words:"current with the inverter running, over the short-circuit current read with it"`
	PolesPct        working.Number `json:"pole_voltages_over_voc_pct" words:"voltages of both poles to earth together, over the open-circuit voltage read with them"`
	PolesReversed   working.Number `json:"pole_voltages_of_wrong_sign" words:"readings in which positive is below earth or negative above it"`
	CellOverAirOffK working.Number `json:"cell_over_air_outside_k" words:"cell temperature over that of the air at 1000 W/m², outside what a module in the sun has"`
	CellOverBackK   working.Number `json:"cell_off_back_k" words:"cell temperature recorded off that of the back of the module, whichever way"`
	SupplyOffPct    working.Number `json:"supply_voltage_off_pct" words:"voltage of the supply off the nominal one between those conductors, whichever way"`
	NeutralEarthV   working.Number `json:"neutral_to_earth_v" words:"voltage between neutral and earth"`
	FaultOffPct     working.Number `json:"loop_fault_current_off_pct" words:"fault current recorded off the nominal voltage over the loop impedance recorded with it, whichever way"`
	ShortBelowPct   working.Number `json:"short_circuit_below_fault_pct" words:"short-circuit current recorded below the fault current recorded with it"`
	LoopOffOhm      working.Number `json:"loop_off_its_parts_ohm" words:"loop impedance of a circuit off that of the supply and of the conductors of the circuit, beyond what warmth and parallel paths explain"`
	MultipleOffPct  working.Number `json:"rcd_test_current_off_pct" words:"test current of a residual current device off the nearest of a half, once and five times its rated current"`
	StartOverPct    working.Number `json:"start_power_over_rated_pct" words:"power at which an inverter was seen to start, over its rated power"`
	TorqueOffPct    working.Number `json:"torque_off_specified_pct" words:"torque read off the one that the maker asks for, whichever way"`
	HotSpotK        working.Number `json:"hot_spot_k" words:"how much hotter a part was than its like, seen with a thermal camera"`
	CameraShort     working.Number `json:"thermography_irradiance_short_w_per_m2" words:"irradiance that was lacking for thermography"`
	PolesByMethod   working.Number `json:"insulation_methods_unlike" words:"readings of insulation to earth whose method is not that of the poles read, in turn or joined"`
	OverRange       working.Number `json:"insulation_over_range_unlike" words:"readings of insulation that are said to be over the range of the instrument and are not, or the other way about"`
	RepeatsUnlike   working.Number `json:"repeats_unlike" words:"tests said to be repeated before which there is none of the same kind, or the other way about"`
	Corrected       working.Number `json:"corrections_of_nothing" words:"tests said to have led to a correction of which none failed"`
	ContinuityShort working.Number `json:"continuity_below_conductor_ohm" words:"resistance that a reading of continuity lacks to the least share of that of its conductor"`
	RunsUnlike      working.Number `json:"continuity_runs_unlike" words:"readings of continuity whose run is not the part read, or has neither lead at an end of it"`
}

var (
	shareOfShort = working.NewFormula("I_op/I_sc", "%", "100 · I_op / I_sc", working.ByDefinition)
	poleSpan     = working.NewFormula("ΔU/U_oc", "%", "100 · (U_pos − U_neg) / U_oc", working.ByDefinition)
	cellOverAir  = working.NewFormula("ΔT_1000", "K", "1000 · (T_c − T_a) / G", working.Source{Document: "Ross, nominal operating cell temperature as the slope of module temperature over irradiance", How: working.Memory})
	faultOff     = working.NewFormula("Δ", "%", "100 · |1000 · I_f · Z / U_0 − 1|", working.Source{Document: "definition: fault current as voltage over loop impedance", How: working.Definition})
	startShare   = working.NewFormula("P/P_r", "%", "100 · P / P_r", working.ByDefinition)
	apart        = working.NewFormula("Δ", "K", "|a − b|", working.ByDefinition)
)

// agreement compares the readings. A figure that one reading states beside another is
// asked of every reading of its list; where none states it, there is nothing to compare.
func (d *deriver) agreement() Agreement {
	c := &d.in.Commissioning
	return Agreement{
		OperatingPct:    furthest("I_op/I_sc", "%", c.Strings, d.at("strings"), operatingShare),
		PolesPct:        furthest("ΔU/U_oc", "%", c.Strings, d.at("strings"), polesOverVoc),
		PolesReversed:   furthest("n", "", c.Strings, d.at("strings"), polesOfWrongSign),
		CellOverAirOffK: furthest("ΔT", "K", c.Strings, d.at("strings"), d.cellOverAir),
		CellOverBackK:   furthest("ΔT", "K", c.Strings, d.at("strings"), cellOffBack),
		SupplyOffPct:    furthest("ΔU", "%", c.Supply, d.at("supply"), d.supplyOff),
		NeutralEarthV:   furthest("U_NE", "V", c.Supply, d.at("supply"), neutralToEarth),
		FaultOffPct:     furthest("ΔI_f", "%", c.Loops, d.at("loops"), d.faultOff),
		ShortBelowPct:   furthest("ΔI_sc", "%", c.Loops, d.at("loops"), shortBelowFault),
		LoopOffOhm:      furthest("ΔZ", "Ω", c.Loops, d.at("loops"), d.loopOff),
		MultipleOffPct:  furthest("Δk", "%", c.Rcds, d.at("rcds"), d.multipleOff),
		StartOverPct:    furthest("P/P_r", "%", c.Functional, d.at("functional"), d.startShare),
		TorqueOffPct:    furthest("ΔM", "%", c.Torques, d.at("torques"), torqueOff),
		HotSpotK:        furthest("ΔT", "K", some(c.Thermography), d.at("thermography"), hotSpot),
		CameraShort:     furthest("ΔG", "W/m²", some(c.Thermography), d.at("thermography"), d.cameraShort),
		PolesByMethod:   furthest("n", "", c.Insulation, d.at("insulation"), methodUnlike),
		OverRange:       furthest("n", "", c.Insulation, d.at("insulation"), d.overRangeUnlike),
		RepeatsUnlike:   furthest("n", "", c.Steps, d.at("steps"), repeatUnlike(c.Steps)),
		Corrected:       furthest("n", "", c.Steps, d.at("steps"), correctedNothing(c.Steps)),
		ContinuityShort: furthest("ΔR", "Ω", c.Continuity, d.at("continuity"), d.continuityShort),
		RunsUnlike:      furthest("n", "", c.Continuity, d.at("continuity"), d.runUnlike),
	}
}

// some is a list that nobody has to state: nil is as good as empty.
func some[T any](list []T) []T {
	if list == nil {
		return []T{}
	}
	return list
}

// says is whether a reading states the figure in question.
type says int

const (
	aside  says = iota // it is not about it
	silent             // it could, and does not
	stated
)

// furthest is the greatest of what is derived of each reading that it is about; zero
// where no reading says anything about it.
func furthest[T any](symbol, unit string, list []T, at string, of func(*T) (working.Number, says)) working.Number {
	if list == nil {
		return working.Unknown(symbol, unit, at)
	}
	var all []working.Number
	said := false
	for i := range list {
		if n, s := of(&list[i]); s != aside {
			all = append(all, n)
			said = said || s == stated
		}
	}
	if !said {
		none := working.Lookup{Symbol: symbol, Unit: unit, Text: "nothing of the kind is stated", Source: working.ByDefinition}
		return none.Of(func(...float64) float64 { return 0 })
	}
	return working.Greatest(symbol, unit, all...)
}

// spoken is stated where a reading states the figure that it is compared by; it is not
// about that where it states the figure that would be compared neither.
func spoken(compared, by schema.Number) says {
	switch {
	case by.Stated():
		return stated
	case compared.Stated():
		return silent
	}
	return aside
}

// saysOf is stated where a reading states a figure that is compared with none of its own.
func saysOf(n schema.Number) says {
	if n.Stated() {
		return stated
	}
	return silent
}

func operatingShare(r *schema.StringReading) (working.Number, says) {
	return shareOfShort.Of(working.Stated("I_op", "A", r.OperatingCurrentA), working.Stated("I_sc", "A", r.IscA)), spoken(r.IscA, r.OperatingCurrentA)
}

func polesOverVoc(r *schema.StringReading) (working.Number, says) {
	plus, minus := working.Stated("U_pos", "V", r.PositiveToEarthV), working.Stated("U_neg", "V", r.NegativeToEarthV)
	return poleSpan.Of(plus, minus, working.Stated("U_oc", "V", r.VocV)), spoken(r.PositiveToEarthV, r.NegativeToEarthV)
}

// polesOfWrongSign is one where a pole is on the wrong side of earth. Earth lies between
// the poles of a string that stands by itself, whatever leaks where.
func polesOfWrongSign(r *schema.StringReading) (working.Number, says) {
	plus, minus := working.Stated("U_pos", "V", r.PositiveToEarthV), working.Stated("U_neg", "V", r.NegativeToEarthV)
	return oneIf("positive below earth, or negative above it", func(u ...float64) bool { return u[0] < 0 || u[1] > 0 }, plus, minus), spoken(r.PositiveToEarthV, r.NegativeToEarthV)
}

// oneIf is one where some numbers are as they should not be, else zero.
func oneIf(words string, wrong func(...float64) bool, of ...working.Number) working.Number {
	l := working.Lookup{Symbol: "n", Text: words, Source: working.ByDefinition}
	return l.Of(func(x ...float64) float64 {
		if wrong(x...) {
			return 1
		}
		return 0
	}, of...)
}

func (d *deriver) cellOverAir(r *schema.StringReading) (working.Number, says) {
	if r.IrradianceWPerM2.Stated() && r.IrradianceWPerM2.Value < 300 { // too little to tell the sun from the weather
		return working.Number{}, aside
	}
	over := cellOverAir.Of(working.Stated("T_c", "°C", r.CellTemperatureC), working.Stated("T_a", "°C", r.AirTemperatureC), working.Stated("G", "W/m²", r.IrradianceWPerM2))
	least, most := d.book.Number("cell_over_air_min_k", "ΔT_min"), d.book.Number("cell_over_air_max_k", "ΔT_max")
	return outside("ΔT", "K", over, least, most), spoken(r.CellTemperatureC, r.AirTemperatureC)
}

// outside is by how much a number is below one limit or above another.
func outside(symbol, unit string, n, least, most working.Number) working.Number {
	l := working.Lookup{Symbol: symbol, Unit: unit, Text: n.Symbol() + " outside " + least.Symbol() + " to " + most.Symbol(), Source: working.ByDefinition}
	return l.Of(func(x ...float64) float64 { return max(x[1]-x[0], x[0]-x[2], 0) }, n, least, most)
}

func cellOffBack(r *schema.StringReading) (working.Number, says) {
	return apart.Of(working.Stated("a", "°C", r.CellTemperatureC), working.Stated("b", "°C", r.ModuleBackTemperatureC)), spoken(r.CellTemperatureC, r.ModuleBackTemperatureC)
}

// supplyOff holds a voltage of the supply against the nominal one between the
// conductors that it was read between.
func (d *deriver) supplyOff(r *schema.SupplyReading) (working.Number, says) {
	nominal := working.Stated("x_0", "V", d.in.AC.Supply.VoltageV)
	switch {
	case r.Between.Is("neutral_to_earth"):
		return working.Number{}, aside
	case r.Between.Is("line_to_line"):
		nominal = working.Stated("x_0", "V", d.in.AC.Supply.VoltageBetweenLinesV)
	case !r.Between.Stated():
		return working.Unknown("ΔU", "%", r.Between.At()), saysOf(r.VoltageV)
	}
	return deviation.Of(working.Stated("x", "V", r.VoltageV), nominal), saysOf(r.VoltageV)
}

func neutralToEarth(r *schema.SupplyReading) (working.Number, says) {
	if !r.Between.Is("neutral_to_earth") {
		return working.Number{}, aside
	}
	return working.Stated("U_NE", "V", r.VoltageV), saysOf(r.VoltageV)
}

// faultOff is only for supplies of one phase: of three, the current may be that between
// the lines, which no loop impedance tells.
func (d *deriver) faultOff(r *schema.LoopReading) (working.Number, says) {
	if d.in.AC.Supply.Phases.Stated() && d.in.AC.Supply.Phases.Value != 1 {
		return working.Number{}, aside
	}
	return faultOff.Of(working.Stated("I_f", "kA", r.FaultCurrentKa), working.Stated("Z", "Ω", r.LoopImpedanceOhm), working.Stated("U_0", "V", d.in.AC.Supply.VoltageV)), spoken(r.LoopImpedanceOhm, r.FaultCurrentKa)
}

// shortBelowFault is how far a short-circuit current is below the fault current at the same
// point: the way back through the neutral is no worse than that through the earth.
func shortBelowFault(r *schema.LoopReading) (working.Number, says) {
	l := working.Lookup{Symbol: "ΔI_sc", Unit: "%", Text: "I_sc below I_f", Source: working.ByDefinition}
	below := l.Of(func(x ...float64) float64 { return max(100*(1-x[0]/x[1]), 0) },
		working.Stated("I_sc", "kA", r.ShortCircuitCurrentKa), working.Stated("I_f", "kA", r.FaultCurrentKa))
	return below, spoken(r.FaultCurrentKa, r.ShortCircuitCurrentKa)
}

// continuityShort is for conductors of which the resistance can be worked out. Parallel
// paths make a reading less, but not by an order.
func (d *deriver) continuityShort(r *schema.ContinuityReading) (working.Number, says) {
	expected := d.conductorOhm(r)
	if !expected.Known() {
		return working.Number{}, aside
	}
	l := working.Lookup{Symbol: "ΔR", Unit: "Ω", Text: "q_min · R_20 less R", Source: working.ByDefinition}
	short := l.Of(func(x ...float64) float64 { return max(x[0]*x[1]-x[2], 0) },
		d.book.Number("continuity_over_conductor_min", "q_min"), expected, working.Stated("R", "Ω", r.ResistanceOhm))
	return short, saysOf(r.ResistanceOhm)
}

// loopOff holds a loop read at the end of a circuit against its parts. Parallel paths
// make it less than their sum, warmth makes it more.
func (d *deriver) loopOff(r *schema.LoopReading) (working.Number, says) {
	if r.At.Is("origin") || r.At.Is("board") {
		return working.Number{}, aside
	}
	l := working.Lookup{Symbol: "ΔZ", Unit: "Ω", Text: "Z outside q_min · (Z_e + R_1+R_2) − R_0 to q_max · (Z_e + R_1+R_2) + R_0", Source: working.ByDefinition}
	off := l.Of(func(x ...float64) float64 {
		z, parts, least, most, plus := x[0], x[1]+x[2], x[3], x[4], x[5]
		return max(least*parts-plus-z, z-most*parts-plus, 0)
	}, working.Stated("Z", "Ω", r.LoopImpedanceOhm), working.Stated("Z_e", "Ω", d.in.AC.Supply.ZeOhm), working.Stated("R_1+R_2", "Ω", r.R1R2Ohm),
		d.book.Number("loop_over_parts_min", "q_min"), d.book.Number("loop_over_parts_max", "q_max"), d.book.Number("loop_off_parts_ohm", "R_0"))
	return off, spoken(r.LoopImpedanceOhm, r.R1R2Ohm)
}

// multipleOff holds the test current of a residual current device against the half, the
// whole and five times its rated current.
func (d *deriver) multipleOff(r *schema.RCDReading) (working.Number, says) {
	rated := d.residualDevice(r.Part).ResidualCurrentMa
	l := working.Lookup{Symbol: "Δk", Unit: "%", Text: "I_test off the nearest of 0.5, 1 and 5 times I_Δn", Source: working.Source{Document: "IEC 61557-6", How: working.Memory}}
	off := l.Of(func(x ...float64) float64 {
		nearest := math.Inf(1)
		for _, k := range []float64{0.5, 1, 5} {
			nearest = min(nearest, 100*math.Abs(x[0]/(k*x[1])-1))
		}
		return nearest
	}, working.Stated("I_test", "mA", r.TestCurrentMa), working.Stated("I_Δn", "mA", rated))
	return off, spoken(r.TripTimeMs, r.TestCurrentMa)
}

func (d *deriver) startShare(f *schema.FunctionalTest) (working.Number, says) {
	if !f.Test.Is("inverter_starts") {
		return working.Number{}, aside
	}
	rated := working.Unknown("P_r", "W", f.Part.At())
	for i := range d.in.Inverters {
		if inv := &d.in.Inverters[i]; f.Part.Stated() && inv.ID.Value == f.Part.Value {
			rated = working.Stated("P_r", "W", inv.Datasheet.To().ACPowerRatedW)
		}
	}
	return startShare.Of(working.Stated("P", "W", f.PowerW), rated), saysOf(f.PowerW)
}

func torqueOff(r *schema.TorqueReading) (working.Number, says) {
	if !r.SpecifiedNM.Stated() { // a datasheet prints it
		return working.Number{}, aside
	}
	return deviation.Of(working.Stated("x", "N·m", r.TorqueNM), working.Stated("x_0", "N·m", r.SpecifiedNM)), stated
}

func hotSpot(r *schema.ThermographyReading) (working.Number, says) {
	return working.Stated("ΔT", "K", r.DifferenceK), saysOf(r.DifferenceK)
}

func (d *deriver) cameraShort(r *schema.ThermographyReading) (working.Number, says) {
	l := working.Lookup{Symbol: "ΔG", Unit: "W/m²", Text: "G_min less G", Source: working.ByDefinition}
	return l.Of(func(x ...float64) float64 { return max(x[1]-x[0], 0) },
		working.Stated("G", "W/m²", r.IrradianceWPerM2), d.book.Number("thermography_irradiance_min_w_per_m2", "G_min")), spoken(r.DifferenceK, r.IrradianceWPerM2)
}

// methodUnlike is one where a reading of poles in turn is of both joined, or the other
// way about.
func methodUnlike(r *schema.InsulationReading) (working.Number, says) {
	if !r.Between.Stated() || !slices.Contains([]string{"positive_to_earth", "negative_to_earth", "joined_to_earth"}, r.Between.Value) {
		return working.Number{}, aside
	}
	joined := r.Between.Is("joined_to_earth")
	return oneIf(r.Between.Value+" by the other method", func(x ...float64) bool { return (x[0] == 2) != joined }, working.Stated("method", "", r.Method)), spoken(r.ResistanceMegohm, r.Method)
}

// runUnlike is one where a reading of continuity names two runs, or leads of which none
// was at an end of its run.
func (d *deriver) runUnlike(r *schema.ContinuityReading) (working.Number, says) {
	if !r.Run.Stated() {
		return working.Number{}, aside
	}
	run, unlike := r.Run.To(), 0
	if _, another := d.find.runs[r.Part.Value]; another && r.Part.Value != r.Run.Value {
		unlike = 1
	}
	ends := []string{run.From.Value, run.To.Value}
	if r.From.Stated() && r.To.Stated() && !slices.Contains(ends, r.From.Value) && !slices.Contains(ends, r.To.Value) {
		unlike = 1
	}
	return working.Counted("n", unlike, r.Run.At()), stated
}

// overRangeUnlike is one where a reading at the end of the instrument's range is not said
// to be over it, or one below is.
func (d *deriver) overRangeUnlike(r *schema.InsulationReading) (working.Number, says) {
	top, over := d.find.instrument(r.Instrument).InsulationMaxMegohm, r.OverRange.Yes()
	unlike := oneIf("R at the end of R_range, over it or not", func(x ...float64) bool { return (x[0] >= x[1]) != over },
		working.Stated("R", "MΩ", r.ResistanceMegohm), working.Stated("R_range", "MΩ", top))
	if !r.OverRange.Stated() {
		return working.Unknown("n", "", r.OverRange.At()), silent
	}
	return unlike, stated
}

// flagUnlike is one where an answer is not what it is derived to be.
func flagUnlike(is schema.Flag, derived bool) (working.Number, says) {
	if !is.Stated() {
		return working.Unknown("n", "", is.At()), silent
	}
	unlike := 0
	if is.Value != derived {
		unlike = 1
	}
	return working.Counted("n", unlike, is.At()), stated
}

// repeatUnlike holds what is said to be a repetition against the tests before it.
func repeatUnlike(steps []schema.TestStep) func(*schema.TestStep) (working.Number, says) {
	sorted, _ := inTime(steps)
	done, again := map[string]bool{}, map[string]bool{}
	for _, s := range sorted {
		again[s.At()] = done[s.Test.Value+" "+s.Part.Value]
		done[s.Test.Value+" "+s.Part.Value] = true
	}
	return func(s *schema.TestStep) (working.Number, says) { return flagUnlike(s.Repeat, again[s.At()]) }
}

// correctedNothing is one where a fault is said to have been corrected and no test of
// the kind failed.
func correctedNothing(steps []schema.TestStep) func(*schema.TestStep) (working.Number, says) {
	failed := map[string]bool{}
	for _, s := range steps {
		failed[s.Test.Value] = failed[s.Test.Value] || s.Passed.Stated() && !s.Passed.Value
	}
	return func(s *schema.TestStep) (working.Number, says) {
		return flagUnlike(s.FaultCorrected, s.FaultCorrected.Value && failed[s.Test.Value])
	}
}
