package accircuit

import (
	"sunclause/facts/cable"
	"sunclause/facts/working"
	"sunclause/schema"
)

// Use holds what a circuit is for.
type Use struct {
	Generators        working.Names  `json:"generators" words:"generators whose current it carries"`
	MeetsGenerator    working.Flag   `json:"meets_generator" words:"whether it ends at a generator, and not at another board"`
	Serves            working.Text   `json:"serves" words:"what its way serves"`
	Kind              working.Text   `json:"kind" words:"final or distribution"`
	Dedicated         working.Flag   `json:"dedicated" words:"whether nothing but the generator is connected to it"`
	ConnectedBy       working.Text   `json:"connected_by" words:"how the generator is connected: fixed or plug_and_socket"`
	Sockets           working.Flag   `json:"sockets" words:"whether socket-outlets are on it"`
	PowerFlow         working.Text   `json:"power_flow" words:"out where PV alone feeds it, both_ways where a battery is charged too"`
	DesignCurrentA    working.Number `json:"design_current_a" words:"greatest continuous current of its generators in one line conductor"`
	GeneratorPhases   working.Number `json:"generator_phases" words:"most phases of one of its generators"`
	WayPhases         working.Number `json:"way_phases" words:"line conductors of its way"`
	WayIdentified     working.Flag   `json:"way_identified" words:"whether its way is marked with what it serves"`
	CapacityA         working.Number `json:"capacity_a" words:"least current-carrying capacity of its runs, Iz"`
	AdditionalStated  working.Flag   `json:"additional_protection_stated" words:"whether the designer finds that it needs additional protection"`
	SystemEarthing    working.Text   `json:"system_earthing" words:"system earthing that it is part of: TN-S, TN-C-S, TT, …"`
	VoltageToNeutralV working.Number `json:"u0_v" words:"nominal voltage between line and neutral"`
}

func (m *mains) use(l *link) Use {
	return Use{
		Generators:        working.List(each(l.generators, func(g *generator) string { return g.id })...),
		MeetsGenerator:    working.KnownFlag(l.endsAtGenerator, l.at),
		Serves:            m.servesOf(l),
		Kind:              m.kindOn(l),
		Dedicated:         dedicatedOn(l.entry),
		ConnectedBy:       working.StatedText(l.entry.ConnectedBy),
		Sockets:           working.StatedFlag(l.entry.Sockets),
		AdditionalStated:  working.StatedFlag(l.entry.AdditionalProtectionNeeded),
		PowerFlow:         l.powerFlow(),
		DesignCurrentA:    m.designCurrent(l.generators),
		GeneratorPhases:   working.Greatest("n_ph", "", each(l.generators, func(g *generator) working.Number { return g.phases })...),
		WayPhases:         wayPhases(working.StatedText(l.way.Phase)),
		WayIdentified:     working.StatedFlag(l.way.Identified),
		CapacityA:         m.least(l, "I_z", "A", func(r *cable.Run) working.Number { return r.CapacityA }),
		SystemEarthing:    working.StatedText(m.in.Earthing.Arrangement),
		VoltageToNeutralV: working.Stated("U_0", "V", m.in.AC.Supply.VoltageV),
	}
}

// servesOf is what the way of a circuit serves, where the circuit bears the word out.
func (m *mains) servesOf(l *link) working.Text {
	if !l.traced() {
		return working.StatedText(l.way.Serves)
	}
	return m.circuit.Serves(l.id)
}

// kindOn is the kind of a circuit where what it leads to agrees with what is stated.
func (m *mains) kindOn(l *link) working.Text {
	stated := working.StatedText(l.entry.Kind)
	if !l.traced() {
		return stated
	}
	return working.Agreed(stated, m.kindOf(l.id, stated))
}

// dedicatedOn reports whether nothing but the generator is on a circuit, where no load is
// said to be on it.
func dedicatedOn(entry *schema.ACCircuit) working.Flag {
	stated, loads := working.StatedFlag(entry.Dedicated), loadsOn(entry)
	if loads.Known() && loads.Value() {
		return working.AgreedFlag(stated, working.Not(loads))
	}
	return stated
}

// designCurrent is the greatest current of some generators in one line.
func (m *mains) designCurrent(all []*generator) working.Number {
	if len(all) == 1 {
		return all[0].current
	}
	lines := m.currents(all)
	return working.Greatest("I_b", "A", lines[:]...)
}

// powerFlow is both ways as soon as one generator takes power in.
func (l *link) powerFlow() working.Text {
	flow := working.KnownText("out", l.at)
	for _, g := range l.generators {
		switch {
		case g.flow.Known() && g.flow.Value() == "both_ways":
			return g.flow
		case !g.flow.Known():
			flow = g.flow
		}
	}
	return flow
}

// wayPhases counts the line conductors that a way's phase names.
func wayPhases(phase working.Text) working.Number {
	if !phase.Known() {
		return working.Unknown("n_way", "", phase.Missing()...)
	}
	return working.Counted("n_way", (len(phase.Value())+1)/len("L1_"), phase.At())
}

// least takes the least of a fact of the circuit's runs.
func (m *mains) least(l *link, symbol, unit string, fact func(*cable.Run) working.Number) working.Number {
	if len(l.runs) == 0 {
		return working.Unknown(symbol, unit, l.missing...)
	}
	return working.Least(symbol, unit, each(l.runs, func(r int) working.Number { return fact(&m.cables.Runs[r]) })...)
}

func each[T, U any](all []T, of func(T) U) []U {
	out := make([]U, len(all))
	for i, v := range all {
		out[i] = of(v)
	}
	return out
}
