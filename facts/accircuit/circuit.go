package accircuit

import (
	"slices"

	"sunclause/facts/cable"
	"sunclause/facts/working"
	"sunclause/schema"
)

// Circuit holds the facts of one circuit that leaves a way of a board toward a
// generator. The one that ends at the generator bears the id of its way, as do
// the distribution circuits between it and the supply; a generator whose way to
// the supply is not known has one under the name of its own terminal.
type Circuit struct {
	working.Subject
	Use
	Protection
	Loop
	Withstand
	Residual
	Isolation
	Rise
}

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

// link is one circuit as the ways of the generators lead through it.
type link struct {
	id, at     string
	outlet     outlet // zero where the way was not found
	entry      *schema.ACCircuit
	generators []*generator
	meets      bool
	runs       []int   // from the generators, or the board before, to the way
	isolators  []int   // likewise, from the generators on
	toMain     [][]int // by generator: runs from the far end to the main board
	toOrigin   [][]int // by generator: runs from the generator to the supply
	missing    []string
}

func (m *mains) circuits() []Circuit {
	if m.in.Inverters == nil && m.in.Storage.Batteries == nil {
		return nil
	}
	all := []Circuit{}
	for _, l := range m.links() {
		all = append(all, m.circuitOf(l))
	}
	return all
}

// links follows every generator to the supply and gathers the circuits passed.
func (m *mains) links() []*link {
	var all []*link
	byWay := map[string]*link{}
	for i := range m.own {
		g := &m.own[i]
		if !g.traced() {
			all = append(all, &link{id: g.terminal, at: g.at, generators: []*generator{g}, meets: true, missing: m.untraced()})
			continue
		}
		runs, isolators := 0, 0
		for n, way := range g.path.Ways {
			l := byWay[way]
			if l == nil {
				l = m.linkAt(way)
				byWay[way], all = l, append(all, l)
			}
			rest := m.circuit.ToSupply(way)
			runsEnd, isolatorsEnd := len(g.path.Runs)-len(rest.Runs), len(g.path.Isolators)-len(rest.Isolators)
			l.add(g, g.path.Runs[runs:runsEnd], g.path.Isolators[isolators:isolatorsEnd])
			l.toMain = append(l.toMain, g.path.Runs[runs:max(runs, m.atMain(g))])
			l.toOrigin = append(l.toOrigin, g.path.Runs)
			l.meets = l.meets || n == 0
			runs, isolators = runsEnd, isolatorsEnd
		}
	}
	return all
}

func (m *mains) linkAt(way string) *link {
	o := m.outlets[way]
	l := &link{id: way, at: o.way.At(), outlet: o}
	for i := range m.in.AC.Circuits {
		if m.in.AC.Circuits[i].Way.Is(way) {
			l.entry = &m.in.AC.Circuits[i]
		}
	}
	return l
}

func (l *link) add(g *generator, runs, isolators []int) {
	l.generators = append(l.generators, g)
	for _, r := range runs {
		if !slices.Contains(l.runs, r) {
			l.runs = append(l.runs, r)
		}
	}
	for _, i := range isolators {
		if !slices.Contains(l.isolators, i) {
			l.isolators = append(l.isolators, i)
		}
	}
}

// atMain counts the runs from a generator to the main board, where the external
// loop impedance is measured; all of them where no board is the main one.
func (m *mains) atMain(g *generator) int {
	for _, way := range g.path.Ways {
		if m.outlets[way].board.Role.Is("main") {
			return len(g.path.Runs) - len(m.circuit.ToSupply(way).Runs)
		}
	}
	return len(g.path.Runs)
}

func (m *mains) circuitOf(l *link) Circuit {
	f := Circuit{Subject: working.Subject{ID: l.id, At: l.at, Name: "AC circuit " + l.id}}
	f.Use = m.use(l)
	f.Protection = m.protection(l, f.Use)
	f.Loop = m.loop(l, f.Use, f.Protection)
	f.Residual = m.residual(l, f.Use)
	f.Loop.touch(f.Residual)
	f.Withstand = m.withstand(l, f.Protection, f.Loop)
	f.Isolation = m.isolation(l)
	f.Rise = m.rise(l)
	return f
}

// way takes members of the way.
func (l *link) way() (schema.BoardWay, part) {
	if l.outlet.way == nil {
		return schema.BoardWay{}, part{l.missing}
	}
	return *l.outlet.way, part{l.missing}
}

// stated takes members of the circuit's entry among the circuits.
func (m *mains) stated(l *link) (schema.ACCircuit, part) {
	if l.entry == nil {
		return schema.ACCircuit{}, part{[]string{m.in.AC.Member("circuits")}}
	}
	return *l.entry, part{}
}

func (m *mains) use(l *link) Use {
	way, ofWay := l.way()
	entry, ofEntry := m.stated(l)
	u := Use{
		Generators:        working.List(each(l.generators, func(g *generator) string { return g.id })...),
		MeetsGenerator:    working.Is(l.meets, l.at),
		Serves:            ofWay.text(way.Serves),
		Kind:              ofEntry.text(entry.Kind),
		Dedicated:         ofEntry.flag(entry.Dedicated),
		ConnectedBy:       ofEntry.text(entry.ConnectedBy),
		Sockets:           ofEntry.flag(entry.Sockets),
		AdditionalStated:  ofEntry.flag(entry.AdditionalProtectionNeeded),
		PowerFlow:         l.powerFlow(),
		DesignCurrentA:    m.designCurrent(l.generators),
		GeneratorPhases:   working.Greatest("n_ph", "", each(l.generators, func(g *generator) working.Number { return g.phases })...),
		WayPhases:         wayPhases(ofWay.text(way.Phase)),
		WayIdentified:     ofWay.flag(way.Identified),
		CapacityA:         m.least(l, "I_z", "A", func(r *cable.Run) working.Number { return r.CapacityA }),
		SystemEarthing:    working.StatedText(m.in.Earthing.Arrangement),
		VoltageToNeutralV: working.Stated("U_0", "V", m.in.AC.Supply.VoltageV),
	}
	return u
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
	flow := working.Word("out", l.at)
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
