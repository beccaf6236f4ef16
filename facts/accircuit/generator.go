package accircuit

import (
	"strings"

	"sunclause/facts/circuit"
	"sunclause/facts/working"
	"sunclause/schema"
)

// generator is what feeds the AC side: an inverter, a battery with an inverter
// of its own, or a generator that was there before.
type generator struct {
	id, at, terminal string
	name             string
	current          working.Number // greatest continuous current in each phase that it feeds
	phases           working.Number
	phase            working.Text // of a generator of one phase
	deviceMax        working.Number
	leakage          working.Number
	rcdAsked         working.Text
	typeBNeeded      working.Flag
	flow             working.Text
	path             circuit.Path
}

// traced reports whether the way from the generator to the supply is known.
func (g *generator) traced() bool {
	return g.path.Untraced == nil && len(g.path.Ways) > 0
}

// untracedOf says why the way of a generator is not known.
func (m *mains) untracedOf(g *generator) []working.Gap {
	if g.path.Ambiguous {
		return g.path.Untraced
	}
	return []working.Gap{working.Unstated(m.untraced())}
}

func (m *mains) generators() {
	for i := range m.in.Inverters {
		m.own = append(m.own, m.inverter(&m.in.Inverters[i]))
	}
	for i := range m.in.Storage.Batteries {
		bat := &m.in.Storage.Batteries[i]
		if g := m.battery(bat); bat.Datasheet.To().Coupling.Is("ac") || g.path.Input != "" {
			m.own = append(m.own, g)
		}
	}
	for i := range m.in.AC.ExistingGeneration {
		m.existing = append(m.existing, m.existingOf(&m.in.AC.ExistingGeneration[i]))
	}
}

func (m *mains) inverter(inv *schema.Inverter) generator {
	sheet := inv.Datasheet.To()
	g := m.generator(inv.ID.Value, inv.At(), inv.ID.Value+".ac")
	g.name = "inverter " + g.id
	g.current = working.Stated("I_b", "A", sheet.ACCurrentMaxA)
	g.phases = working.Stated("n_ph", "", sheet.Phases)
	g.deviceMax = working.Stated("I_n,max", "A", sheet.ACOCPDMaxA)
	g.leakage = working.Stated("I_PE", "mA", sheet.LeakageCurrentMa)
	g.rcdAsked = working.StatedText(sheet.RCDTypeRequired)
	g.typeBNeeded = working.All(working.StatedText(sheet.Separation).OneOf("none"), typeBNotRuledOut(sheet.RCDTypeBNotRequired))
	g.flow = working.StatedText(sheet.Kind)
	if g.flow.Known() {
		g.flow = working.KnownText(flowOf(g.flow.Value()), sheet.Kind.At())
	}
	return g
}

// flowOf is the way that power passes: only out of an inverter that is fed by
// PV modules alone, both ways where a battery is charged too.
func flowOf(kind string) string {
	if kind == "pv" {
		return "out"
	}
	return "both_ways"
}

func (m *mains) battery(bat *schema.Battery) generator {
	sheet := bat.Datasheet.To()
	g := m.generator(bat.ID.Value, bat.At(), bat.ID.Value+".ac")
	g.name = "battery " + g.id
	g.current = working.Stated("I_b", "A", sheet.ACCurrentMaxA)
	g.phases = working.Stated("n_ph", "", sheet.Phases)
	g.flow = working.KnownText("both_ways", bat.At())
	g.deviceMax = working.Stated("I_n,max", "A", sheet.ACOCPDMaxA)
	g.leakage = working.Stated("I_PE", "mA", sheet.LeakageCurrentMa)
	g.rcdAsked = working.StatedText(sheet.RCDTypeRequired)
	g.typeBNeeded = typeBNotRuledOut(sheet.RCDTypeBNotRequired)
	return g
}

// generator finds the way from a terminal to the supply. A generator of one
// phase is on the phase of the first way.
func (m *mains) generator(id, at, terminal string) generator {
	g := generator{id: id, at: at, terminal: terminal, path: m.circuit.ToSupply(terminal)}
	g.phase = working.UnknownText(m.untracedOf(&g)...)
	if g.traced() {
		g.phase = working.StatedText(m.outlets[g.path.Ways[0]].way.Phase)
	}
	return g
}

func (m *mains) existingOf(e *schema.ExistingGenerator) generator {
	g := m.generator(e.ID.Value, e.At(), e.Way.Value)
	if !e.Way.Stated() {
		g.phase = working.UnknownText(e.Way.At())
	}
	if e.Phase.Stated() {
		g.phase = working.StatedText(e.Phase)
	}
	g.current = working.Stated("I_b", "A", e.ACCurrentMaxA)
	g.phases = working.Stated("n_ph", "", e.Phases)
	return g
}

// typeBNotRuledOut reports whether the maker does not rule out a DC fault current,
// for which a residual current device in the circuit must be of type B. With
// separation there is none whatever the maker says.
func typeBNotRuledOut(notRequired schema.Flag) working.Flag {
	return working.Not(working.StatedFlag(notRequired))
}

// linePhases are the line conductors of a supply.
var linePhases = [3]string{"L1", "L2", "L3"}

// currents adds up the currents of some generators in each line conductor.
func (m *mains) currents(all []*generator) [3]working.Number {
	var sums [3]working.Number
	for i, line := range linePhases {
		var on []working.Number
		for _, g := range all {
			if share, carries := m.share(g, line); carries {
				on = append(on, share)
			}
		}
		sums[i] = working.Sum("I_"+line, "A", on...)
	}
	return sums
}

// share is the current that a generator puts on one line conductor, if any. One
// that cannot be placed may be on each of them.
func (m *mains) share(g *generator, line string) (working.Number, bool) {
	one := m.in.AC.Supply.Phases
	switch {
	case one.Stated() && one.Value == 1:
		return g.current, line == "L1"
	case !g.phases.Known():
		return working.Unknown("I_b", "A", g.phases.Missing()...), true
	case g.phases.Value() == 3:
		return g.current, true
	case !g.phase.Known():
		return working.Unknown("I_b", "A", g.phase.Missing()...), true
	}
	return g.current, strings.Contains(g.phase.Value(), line)
}
