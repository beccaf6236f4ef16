package accircuit

import (
	"slices"

	"sunclause/facts/working"
	"sunclause/schema"
)

// loopRead is the loop impedance last read at the far end of a circuit. A
// reading names the circuit or its generator. What the schedule of the circuit
// states does not stand in for a reading.
func (m *mains) loopRead(l *link) working.Number {
	var parts []string
	if l.endsAtGenerator {
		parts = each(l.generators, func(g *generator) string { return g.id })
	}
	if l.entry.ID.Stated() {
		parts = append(parts, l.entry.ID.Value)
	}
	return m.lastLoop("Z_s", func(r *schema.LoopReading) bool {
		return mayBe(r.At, "circuit_end") && mayBe(r.Part, parts...)
	})
}

// mayBe reports whether a word is one of some, or is not stated.
func mayBe(t schema.Text, words ...string) bool {
	return !t.Stated() || slices.Contains(words, t.Value)
}

// lastLoop is the loop impedance of the latest of some readings. The greatest
// counts among those of one day; one without a date may be the latest.
func (m *mains) lastLoop(symbol string, of func(*schema.LoopReading) bool) working.Number {
	var all []*schema.LoopReading
	latest := ""
	for i := range m.in.Commissioning.Loops {
		if r := &m.in.Commissioning.Loops[i]; mayBe(r.Method, "measured") && of(r) {
			all = append(all, r)
			latest = max(latest, r.Date.Value)
		}
	}
	var counted []working.Number
	for _, r := range all {
		if mayBe(r.Date, latest) {
			counted = append(counted, working.Stated(symbol, "Ω", r.LoopImpedanceOhm))
		}
	}
	if len(counted) == 0 {
		return working.Unknown(symbol, "Ω", m.in.Commissioning.Member("loops"))
	}
	return working.Greatest(symbol, "Ω", counted...)
}
