package accircuit

import (
	"slices"

	"sunclause/schema"
)

// link is one circuit as the ways of the generators lead through it.
type link struct {
	id, at     string
	outlet     outlet // zero where the way was not found
	entry      *schema.ACCircuit
	generators []*generator
	meets      bool
	runs       []int   // from the generators, or the board before, to the way
	isolators  [][]int // by generator: isolators from the generator on
	toMain     [][]int // by generator: runs from the far end to the main board
	toOrigin   [][]int // by generator: runs from the generator to the supply
	missing    []string
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
	l.isolators = append(l.isolators, isolators)
	for _, r := range runs {
		if !slices.Contains(l.runs, r) {
			l.runs = append(l.runs, r)
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
