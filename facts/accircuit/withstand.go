package accircuit

import (
	"math"

	"sunclause/facts/book"
	"sunclause/facts/working"
)

// Withstand holds what a fault lets through the conductors of a circuit, and
// what they bear: k²·S² of the adiabatic equation.
type Withstand struct {
	FaultEnergyA2s         working.Number `json:"fault_energy_a2s" words:"energy that the overcurrent device lets through in a fault, I²t"`
	LineWithstandA2s       working.Number `json:"line_withstand_a2s" words:"energy that its line conductors bear, k²S², least of its runs"`
	ProtectiveWithstandA2s working.Number `json:"protective_withstand_a2s" words:"energy that its protective conductors bear, k²S², least of its runs"`
	ProtectiveNeededMm2    working.Number `json:"protective_needed_mm2" words:"cross-section of a copper protective conductor in PVC cable that bears that energy"`
}

var adiabatic = working.Source{Document: "IEC 60364-5-54", Edition: "2011", Clause: "543.1.2", How: working.Memory}

func (m *mains) withstand(l *link, p Protection, f Loop) Withstand {
	w := Withstand{FaultEnergyA2s: m.energy(l, p, f)}
	w.LineWithstandA2s = m.bears(l, m.lineWithstand)
	w.ProtectiveWithstandA2s = m.bears(l, m.protectiveWithstand)
	need := working.Closure{Symbol: "S", Unit: "mm²", Text: "√(I²t) / k", Source: adiabatic}
	k := m.book.Pick("protective_withstand", book.Is("by", working.KnownText("core", l.at)),
		book.Is("metal", working.KnownText("copper", l.at)), book.Is("insulation", working.KnownText("pvc", l.at))).Number("k", "k")
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
	e := working.Closure{Symbol: "I²t", Unit: "A²s", Text: "I_a² · t_max", Source: adiabatic}
	return e.Of(func(x ...float64) float64 { return x[0] * x[0] * x[1] }, f.TripA, f.DisconnectionLimitS)
}

// bears takes the least of what the runs bear.
func (m *mains) bears(l *link, of func(run int) working.Number) working.Number {
	if len(l.runs) == 0 {
		return working.Unknown("k²S²", "A²s", l.missing...)
	}
	return working.Least("k²S²", "A²s", each(l.runs, of)...)
}

// lineWithstand is what the conductors in parallel of each line bear together.
func (m *mains) lineWithstand(run int) working.Number {
	f := working.Closure{Symbol: "k²S²", Unit: "A²s", Text: "n² · k²S²", Source: adiabatic}
	return f.Of(func(x ...float64) float64 { return x[0] * x[0] * x[1] },
		working.Stated("n", "", m.in.Cables[run].ConductorsPerPole), m.cables.Runs[run].WithstandA2s.As("k²S²"))
}

func (m *mains) protectiveWithstand(run int) working.Number { return m.cables.Runs[run].ProtectiveA2s }

// Section is the cross-section in mm² that bears an energy in A²s by the
// adiabatic equation S = √(I²t)/k.
func Section(energy, k float64) float64 { return math.Sqrt(energy) / k }
