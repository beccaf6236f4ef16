package accircuit

import (
	"math"

	"sunclause/facts/working"
	"sunclause/schema"
)

// Withstand holds what a fault lets through the conductors of a circuit, and
// what they bear: k²·S² of the adiabatic equation.
type Withstand struct {
	FaultEnergyA2s         working.Number `json:"fault_energy_a2s" words:"energy that the overcurrent device lets through in a fault, I²t"`
	LineWithstandA2s       working.Number `json:"line_withstand_a2s" words:"energy that its line conductors bear, k²S², least of its runs"`
	ProtectiveWithstandA2s working.Number `json:"protective_withstand_a2s" words:"energy that its protective conductors bear, k²S², least of its runs"`
	ProtectiveNeededMm2    working.Number `json:"protective_needed_mm2" words:"cross-section of a copper protective conductor in PVC cable that bears that energy"`
}

var adiabatic = working.Source{Document: "IEC 60364-5-54", Clause: "543.1.2", How: working.Memory}

func (m *mains) withstand(l *link, p Protection, f Loop) Withstand {
	w := Withstand{FaultEnergyA2s: m.energy(l, p, f)}
	w.LineWithstandA2s = m.bears(l, m.lineWithstand)
	w.ProtectiveWithstandA2s = m.bears(l, m.protectiveWithstand)
	need := working.Formula{Symbol: "S", Unit: "mm²", Text: "√(I²t) / k", Source: adiabatic}
	k := m.book.Keyed("short_circuit_k", "conductor", working.Word("copper pvc core", l.at), "k", "k")
	w.ProtectiveNeededMm2 = need.Of(func(x ...float64) float64 { return Section(x[0], x[1]) }, w.FaultEnergyA2s.As("I²t"), k)
	return w
}

// energy is what the device lets through. A circuit-breaker that trips at once
// opens in less than 0.1 s, and its sheet says how much; a fuse melts the later
// the less current flows, so that its most is at the current that just makes it
// operate in time.
func (m *mains) energy(l *link, p Protection, f Loop) working.Number {
	d, of := m.device(l)
	if !p.DeviceKind.Known() || p.DeviceKind.Value() != "fuse" {
		return of.number("I²t", "A²s", d.LetThroughA2s)
	}
	e := working.Formula{Symbol: "I²t", Unit: "A²s", Text: "I_a² · t_max", Source: adiabatic}
	return e.Of(func(x ...float64) float64 { return x[0] * x[0] * x[1] }, f.TripA, f.DisconnectionLimitS)
}

// bears takes the least of what the runs bear.
func (m *mains) bears(l *link, of func(*schema.Run) working.Number) working.Number {
	if len(l.runs) == 0 {
		return working.Unknown("k²S²", "A²s", l.missing...)
	}
	return working.Least("k²S²", "A²s", each(l.runs, func(r int) working.Number { return of(&m.in.Cables[r]) })...)
}

func (m *mains) lineWithstand(r *schema.Run) working.Number {
	d, of := m.in.Datasheets.Cables[r.Cable.Value], part{[]string{r.Cable.At()}}
	return m.squared(of.number("S", "mm²", d.CsaMm2), inParallel(r), m.k(d, of, "core"))
}

// protectiveWithstand takes the separate protective conductor where there is
// one, else that within the cable, else the armour. Each of them alone must do.
func (m *mains) protectiveWithstand(r *schema.Run) working.Number {
	d, of := m.in.Datasheets.Cables[r.Cable.Value], part{[]string{r.Cable.At()}}
	switch {
	case r.ProtectiveCable.Stated():
		separate := m.in.Datasheets.Cables[r.ProtectiveCable.Value]
		return m.squared(working.Stated("S", "mm²", separate.CsaMm2), inParallel(r), m.k(separate, part{}, "separate"))
	case d.CpcCsaMm2.Stated():
		return m.squared(working.Stated("S", "mm²", d.CpcCsaMm2), inParallel(r), m.k(d, of, "core"))
	case r.ProtectiveByArmour.Yes():
		return m.squared(of.number("S", "mm²", d.ArmourCsaMm2), working.Counted("n", 1, r.At()), m.kArmour(d, of))
	}
	return working.Unknown("k²S²", "A²s", r.ProtectiveCable.At())
}

// inParallel counts the conductors in parallel for each line.
func inParallel(r *schema.Run) working.Number { return working.Stated("n", "", r.ConductorsPerPole) }

// k looks up what metal, insulation and place of a conductor bear.
func (m *mains) k(d schema.CableDatasheet, of part, where string) working.Number {
	return m.kOf(of.text(d.Conductor), of.text(d.Insulation), where)
}

func (m *mains) kArmour(d schema.CableDatasheet, of part) working.Number {
	return m.kOf(of.text(d.Armour), of.text(d.Insulation), "armour")
}

func (m *mains) kOf(metal, insulation working.Text, where string) working.Number {
	if !metal.Known() || !insulation.Known() {
		return working.Unknown("k", "", append(metal.Missing(), insulation.Missing()...)...)
	}
	key := working.Word(metal.Value()+" "+insulation.Value()+" "+where, insulation.At())
	return m.book.Keyed("short_circuit_k", "conductor", key, "k", "k")
}

func (m *mains) squared(section, n, k working.Number) working.Number {
	f := working.Formula{Symbol: "k²S²", Unit: "A²s", Text: "(k · n · S)²", Source: adiabatic}
	return f.Of(func(x ...float64) float64 { return product(x...) * product(x...) }, k, n, section)
}

// Section is the cross-section in mm² that bears an energy in A²s by the
// adiabatic equation S = √(I²t)/k.
func Section(energy, k float64) float64 { return math.Sqrt(energy) / k }
