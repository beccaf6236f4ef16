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

func (m *mains) loop(l *link, u Use, p Protection) Loop {
	entry, of := m.stated(l)
	supply := m.in.AC.Supply
	f := Loop{
		DisconnectionS: of.number("t", "s", entry.DisconnectionTimeS),
		ZsStatedOhm:    of.number("Z_s", "Ω", entry.ZsOhm),
		ZsMeasuredOhm:  m.loopRead(l),
		ElectrodeOhm:   m.electrode(),
	}
	f.DisconnectionLimitS = m.disconnectionLimit(u, p)
	f.TripA = m.trip(l, p, f.DisconnectionLimitS)
	limit := working.Closure{Symbol: "Z_s,max", Unit: "Ω", Text: "U_0 · C_min / I_a", Source: loopLimit}
	cMin := m.book.Number("voltage_factor_min", "C_min")
	f.ZsLimitOhm = limit.Of(func(x ...float64) float64 { return x[0] * x[1] / x[2] }, u.VoltageToNeutralV, cMin, f.TripA)
	f.ZsTableOhm = m.tabled(l, u, p, f.DisconnectionLimitS)
	if p.Characteristic.Known() && p.Characteristic.Value() == "gG" && f.ZsTableOhm.Known() {
		f.ZsLimitOhm = f.ZsTableOhm
	}
	sum := working.Closure{Symbol: "Z_s", Unit: "Ω", Text: "Z_e + R_loop", Source: loopLimit}
	f.ZsComputedOhm = sum.Of(func(x ...float64) float64 { return x[0] + x[1] }, working.Stated("Z_e", "Ω", supply.ZeOhm), m.runsLoop(l))
	f.ZsMeasuredShare = ratio("Z_s/Z_s,max", f.ZsMeasuredOhm.As("Z_s"), f.ZsLimitOhm.As("Z_s,max"))
	least := working.Closure{Symbol: "I_f,min", Unit: "A", Text: "U_0 · C_min / Z_s", Source: loopLimit}
	f.FaultMinA = least.Of(func(x ...float64) float64 { return x[0] * x[1] / x[2] }, u.VoltageToNeutralV, cMin, f.ZsComputedOhm)
	return f
}

// runsLoop adds the warm loop of the runs between the far end and the main
// board. Of several generators the farthest counts.
func (m *mains) runsLoop(l *link) working.Number {
	if l.outlet.way == nil {
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
// standard where it fixes it, else as the sheet prints it for that time.
func (m *mains) trip(l *link, p Protection, t working.Number) working.Number {
	d, of := m.device(l)
	if !t.Known() || !p.Characteristic.Known() {
		return working.Unknown("I_a", "A", append(t.Missing(), p.Characteristic.Missing()...)...)
	}
	column := "within_5_s"
	if t.Value() <= 0.4 {
		column = "within_0_4_s"
	}
	if k := m.book.Keyed("breaker_operation", "characteristic", p.Characteristic, column, "k_a"); k.Known() {
		f := working.Closure{Symbol: "I_a", Unit: "A", Text: "k_a · I_n", Source: k.Source()}
		return f.Of(product, k, p.RatedA)
	}
	printed := map[float64]schema.Number{0.2: d.Operates02sA, 0.4: d.Operates04sA, 1: d.Operates1sA, 5: d.Operates5sA}
	if n, ok := printed[t.Value()]; ok {
		return of.number("I_a", "A", n)
	}
	return working.Unknown("I_a", "A", d.At())
}

// tabled looks the greatest loop impedance up under the device's name in the
// book, as in B32, gG32 and BS 88-3 32. The tables are made for 230 V.
func (m *mains) tabled(l *link, u Use, p Protection, t working.Number) working.Number {
	d, _ := m.device(l)
	inputs := append(append(p.Characteristic.Missing(), p.RatedA.Missing()...), append(u.VoltageToNeutralV.Missing(), t.Missing()...)...)
	if len(inputs) > 0 || u.VoltageToNeutralV.Value() != 230 {
		return working.Unknown("Z_s,max", "Ω", inputs...)
	}
	name := p.Characteristic.Value()
	if strings.Contains(d.Standard.Value, "88-3") {
		name = "BS 88-3 "
	}
	columns := map[float64]string{0.4: "within_0_4_s", 5: "within_5_s"}
	key := working.KnownText(name+working.Plain(p.RatedA.Value()), d.RatedA.At())
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

// touch works out what the rated residual current does to the electrode and to
// the loop.
func (f *Loop) touch(r Residual) {
	volts := func(symbol, text string, z working.Number) working.Number {
		v := working.Closure{Symbol: symbol, Unit: "V", Text: text, Source: touchLimit}
		return v.Of(func(x ...float64) float64 { return x[0] * x[1] / 1000 }, z, r.ResidualMa)
	}
	f.TouchVoltageV = volts("U_RA", "R_A · I_Δn / 1000", f.ElectrodeOhm)
	f.LoopVoltageV = volts("U_loop", "Z_s · I_Δn / 1000", f.ZsComputedOhm)
}
