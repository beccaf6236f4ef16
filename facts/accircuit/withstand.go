package accircuit

import (
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

// Formulas of the adiabatic equation: a conductor of S mm² bears the energy k²S².
var (
	sectionNeeded     = working.NewFormula("S", "mm²", "√(E) / k", adiabatic)
	fuseEnergy        = working.NewFormula("I²t", "A²s", "I_a² · t_max", adiabatic)
	parallelWithstand = working.NewFormula("k²S²", "A²s", "n² · W", adiabatic)
)

func (m *mains) withstand(l *link, p Protection, f Loop) Withstand {
	w := Withstand{FaultEnergyA2s: energy(l, p, f)}
	w.LineWithstandA2s = leastWithstand(l, m.lineWithstand)
	w.ProtectiveWithstandA2s = leastWithstand(l, m.protectiveWithstand)
	k := m.book.Pick("protective_withstand", book.Is("by", working.KnownText("core", l.at)),
		book.Is("metal", working.KnownText("copper", l.at)), book.Is("insulation", working.KnownText("pvc", l.at))).Number("k", "k")
	w.ProtectiveNeededMm2 = sectionNeeded.Of(w.FaultEnergyA2s.For("E"), k)
	return w
}

// energy is what the device lets through. A circuit-breaker that trips at once
// opens in less than 0.1 s, and its sheet says how much; a fuse melts the later
// the less current flows, so that its most is at the current that just makes it
// operate in time.
func energy(l *link, p Protection, f Loop) working.Number {
	if !p.DeviceKind.Known() || p.DeviceKind.Value() != "fuse" {
		return working.Stated("I²t", "A²s", l.device.LetThroughA2s)
	}
	return fuseEnergy.Of(f.TripA, f.DisconnectionLimitS)
}

// leastWithstand takes the least of what the runs bear.
func leastWithstand(l *link, of func(run int) working.Number) working.Number {
	if len(l.runs) == 0 {
		return working.Unknown("k²S²", "A²s", l.missing...)
	}
	return working.Least("k²S²", "A²s", each(l.runs, of)...)
}

// lineWithstand is what the conductors in parallel of each line bear together.
func (m *mains) lineWithstand(run int) working.Number {
	return parallelWithstand.Of(working.Stated("n", "", m.in.Cables[run].ConductorsPerPole), m.cables.Runs[run].WithstandA2s.As("k²S²").For("W"))
}

func (m *mains) protectiveWithstand(run int) working.Number { return m.cables.Runs[run].ProtectiveA2s }
