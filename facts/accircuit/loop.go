package accircuit

import (
	"strings"

	"sunclause/facts/working"
	"sunclause/schema"
)

// Loop holds the earth fault loop of a circuit and what it may be for the
// supply to be disconnected in time.
type Loop struct {
	DisconnectionS      working.Number `json:"disconnection_s" words:"disconnection time for which it is designed"`
	DisconnectionLimitS working.Number `json:"disconnection_limit_s" words:"longest disconnection time for its kind, rating and system earthing"`
	TripA               working.Number `json:"trip_a" words:"current at which the overcurrent device operates within that time, Ia"`
	ZsLimitOhm          working.Number `json:"zs_limit_ohm" words:"greatest loop impedance at which the overcurrent device disconnects in time"`
	ZsTableOhm          working.Number `json:"zs_table_ohm" words:"greatest loop impedance as the table of the rule set prints it"`
	ZsComputedOhm       working.Number `json:"zs_computed_ohm" words:"loop impedance at its far end with warm conductors, Ze and the loop of its runs"`
	ZsMeasuredOhm       working.Number `json:"zs_measured_ohm" words:"loop impedance at its far end as last read"`
	ZsStatedOhm         working.Number `json:"zs_stated_ohm" words:"loop impedance at its far end as its schedule states it"`
	ZsMeasuredShare     working.Number `json:"zs_measured_over_limit" words:"loop impedance read over the greatest allowed"`
	FaultMinA           working.Number `json:"fault_current_min_a" words:"least earth fault current at its far end, warm conductors and low voltage"`
	ElectrodeOhm        working.Number `json:"electrode_ohm" words:"greatest resistance of an earth electrode of the installation, RA"`
	TouchVoltageV       working.Number `json:"touch_voltage_v" words:"voltage that the rated residual current raises across the electrode, RA·IΔn"`
	LoopVoltageV        working.Number `json:"loop_voltage_v" words:"voltage that the rated residual current raises across the computed loop, Zs·IΔn"`
}

// The clauses that the formulas of this file come from.
var (
	loopLimit  = working.Source{Document: "IEC 60364-4-41", Clause: "411.4.4", How: working.Memory}
	touchLimit = working.Source{Document: "IEC 60364-4-41", Clause: "411.5.3", How: working.Memory}
)

var (
	greatestLoop  = working.NewFormula("Z_s,max", "Ω", "U_0 · C_min / I_a", loopLimit)
	wholeLoop     = working.NewFormula("Z_s", "Ω", "Z_e + R_loop", loopLimit)
	leastFault    = working.NewFormula("I_f,min", "A", "U_0 · C_min / Z_s", loopLimit)
	raisedVoltage = working.NewFormula("U", "V", "Z · I_Δn / 1000", touchLimit)
)

func (m *mains) loop(l *link, u Use, p Protection) Loop {
	f := Loop{
		DisconnectionS: working.Stated("t", "s", l.entry.DisconnectionTimeS),
		ZsStatedOhm:    working.Stated("Z_s", "Ω", l.entry.ZsOhm),
		ZsMeasuredOhm:  m.loopRead(l),
		ElectrodeOhm:   m.electrode(),
	}
	f.DisconnectionLimitS = m.disconnectionLimit(u, p)
	f.TripA = m.trip(l, p, f.DisconnectionLimitS)
	cMin := m.book.Number("voltage_factor_min", "C_min")
	f.ZsLimitOhm = greatestLoop.Of(u.VoltageToNeutralV, cMin, f.TripA)
	f.ZsTableOhm = m.tabulatedLimit(l, u, p, f.DisconnectionLimitS)
	if p.Characteristic.Known() && p.Characteristic.Value() == "gG" && f.ZsTableOhm.Known() {
		f.ZsLimitOhm = f.ZsTableOhm
	}
	f.ZsComputedOhm = wholeLoop.Of(working.Stated("Z_e", "Ω", m.in.AC.Supply.ZeOhm), m.runsLoop(l))
	f.ZsMeasuredShare = working.Ratio("Z_s/Z_s,max", f.ZsMeasuredOhm.As("Z_s"), f.ZsLimitOhm.As("Z_s,max"))
	f.FaultMinA = leastFault.Of(u.VoltageToNeutralV, cMin, f.ZsComputedOhm)
	return f
}

// runsLoop adds the warm loop of the runs between the far end and the main
// board. Of several generators the farthest counts.
func (m *mains) runsLoop(l *link) working.Number {
	if !l.traced() {
		return working.Unknown("R_loop", "Ω", l.missing...)
	}
	return working.Greatest("R_loop", "Ω", each(l.toMain, func(runs []int) working.Number {
		return working.Sum("R_loop", "Ω", each(runs, func(r int) working.Number { return m.cables.Runs[r].LoopOhm.As("R_" + m.cables.Runs[r].ID) })...)
	})...)
}

// disconnectionLimit looks the time up by system earthing, kind and rating: the
// short times are those of final circuits that people hold things in.
func (m *mains) disconnectionLimit(u Use, p Protection) working.Number {
	for _, t := range []working.Text{u.SystemEarthing, u.Kind} {
		if !t.Known() {
			return working.Unknown("t_max", "s", t.Missing()...)
		}
	}
	final := u.Kind.Value() == "final"
	if final && (!p.RatedA.Known() || !u.Sockets.Known()) {
		return working.Unknown("t_max", "s", append(p.RatedA.Missing(), u.Sockets.Missing()...)...)
	}
	short := final && (p.RatedA.Value() <= 32 || p.RatedA.Value() <= 63 && u.Sockets.Value())
	system, _, _ := strings.Cut(u.SystemEarthing.Value(), "-")
	word := system + " other"
	if short {
		word = system + " final"
	}
	if !u.VoltageToNeutralV.Known() {
		return working.Unknown("t_max", "s", u.VoltageToNeutralV.Missing()...)
	}
	key := working.KnownText(word, u.SystemEarthing.At())
	return m.book.Keyed("disconnection_times", "circuit", key, voltageBand(u.VoltageToNeutralV.Value()), "t_max")
}

// voltageBand is the column of the table of disconnection times.
func voltageBand(u0 float64) string {
	switch {
	case u0 <= 120:
		return "to_120_v"
	case u0 <= 230:
		return "to_230_v"
	case u0 <= 400:
		return "to_400_v"
	}
	return "above_400_v"
}

// trip is the current at which the device operates in time: by the product
// standard where it fixes it, or as the sheet prints it for that time. Where both say
// one, the greater counts.
func (m *mains) trip(l *link, p Protection, t working.Number) working.Number {
	d := l.device
	if !t.Known() || !p.Characteristic.Known() {
		return working.Unknown("I_a", "A", append(t.Missing(), p.Characteristic.Missing()...)...)
	}
	column := "within_5_s"
	if t.Value() <= 0.4 {
		column = "within_0_4_s"
	}
	atTime := map[float64]schema.Number{0.2: d.Operates02sA, 0.4: d.Operates04sA, 1: d.Operates1sA, 5: d.Operates5sA}
	printed := working.Unknown("I_a", "A", d.At())
	if n, ok := atTime[t.Value()]; ok {
		printed = working.Stated("I_a", "A", n)
	}
	if k := m.book.Keyed("breaker_operation", "characteristic", p.Characteristic, column, "k_a"); k.Known() {
		return worse(working.Product("I_a", "A", k.Source(), k, p.RatedA), printed)
	}
	return printed
}

// tabulatedLimit looks the greatest loop impedance up under the device's name in the
// book, as in B32, gG32 and BS 88-3 32. The tables are made for 230 V.
func (m *mains) tabulatedLimit(l *link, u Use, p Protection, t working.Number) working.Number {
	inputs := append(append(p.Characteristic.Missing(), p.RatedA.Missing()...), append(u.VoltageToNeutralV.Missing(), t.Missing()...)...)
	if len(inputs) > 0 || u.VoltageToNeutralV.Value() != 230 {
		return working.Unknown("Z_s,max", "Ω", inputs...)
	}
	name := p.Characteristic.Value()
	if strings.Contains(l.device.Standard.Value, "88-3") {
		name = "BS 88-3 "
	}
	columns := map[float64]string{0.4: "within_0_4_s", 5: "within_5_s"}
	key := working.KnownText(name+working.Plain(p.RatedA.Value()), l.device.RatedA.At())
	return m.book.Keyed("zs_limits", "device", key, columns[t.Value()], "Z_s,max")
}

// electrode is the greatest resistance of an electrode that earths the
// installation. Several in parallel are taken at their worst one.
func (m *mains) electrode() working.Number {
	var all []working.Number
	for _, e := range m.in.Earthing.Electrodes {
		if e.Serves.Is("installation") {
			all = append(all, working.Stated("R_A", "Ω", e.ResistanceOhm))
		}
	}
	if len(all) == 0 {
		return working.Unknown("R_A", "Ω", m.in.Earthing.Member("electrodes"))
	}
	return working.Greatest("R_A", "Ω", all...)
}

// residualVoltages works out what the rated residual current does to the electrode and to
// the loop.
func (f *Loop) residualVoltages(r Residual) {
	f.TouchVoltageV = raisedVoltage.Of(f.ElectrodeOhm.For("Z"), r.ResidualMa).As("U_RA")
	f.LoopVoltageV = raisedVoltage.Of(f.ZsComputedOhm.For("Z"), r.ResidualMa).As("U_loop")
}
