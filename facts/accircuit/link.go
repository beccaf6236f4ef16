package accircuit

import (
	"slices"

	"sunclause/facts/circuit"
	"sunclause/facts/working"
	"sunclause/schema"
)

// link is one circuit as the ways of the generators lead through it. Where the
// way to the supply was not found, way and device are blank ones that stand at
// what is missing.
type link struct {
	id, at          string
	way             *schema.BoardWay
	device          *schema.ProtectiveDevice // overcurrent device of the way
	entry           *schema.ACCircuit        // its entry among the circuits; a blank one where it has none
	generators      []*generator
	endsAtGenerator bool               // it ends at a generator
	before          []circuit.Upstream // devices between its board and the supply
	runs            []int              // from the generators, or the board before, to the way
	isolators       [][]int            // by generator: isolators from the generator on
	toMain          [][]int            // by generator: runs from the far end to the main board
	toOrigin        [][]int            // by generator: runs from the generator to the supply
	missing         []working.Gap      // why the way to the supply was not found; nil where it was
}

// links follows every generator to the supply and gathers the circuits passed.
func (m *mains) links() []*link {
	var all []*link
	byWay := map[string]*link{}
	for i := range m.own {
		g := &m.own[i]
		if !g.traced() {
			all = append(all, m.linkOf(g))
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
			l.endsAtGenerator = l.endsAtGenerator || n == 0
			runs, isolators = runsEnd, isolatorsEnd
		}
	}
	return all
}

// linkAt is the circuit that leaves a way of a board.
func (m *mains) linkAt(terminal string) *link {
	way := m.outlets[terminal].way
	return &link{id: terminal, at: way.At(), way: way, device: way.Device.To(), entry: m.entryOf(terminal), before: m.circuit.Before(terminal)}
}

// entryOf finds the entry of a way among the circuits.
func (m *mains) entryOf(way string) *schema.ACCircuit {
	for i := len(m.in.AC.Circuits) - 1; i >= 0; i-- {
		if m.in.AC.Circuits[i].Way.Is(way) {
			return &m.in.AC.Circuits[i]
		}
	}
	return schema.Blank[schema.ACCircuit](m.in.AC.Member("circuits"))
}

// linkOf is the circuit of a generator whose way to the supply was not found.
func (m *mains) linkOf(g *generator) *link {
	missing := m.untraced()
	way := schema.Blank[schema.BoardWay](missing)
	return &link{
		id: g.terminal, at: g.at, way: way, device: way.Device.To(), entry: m.entryOf(""),
		generators: []*generator{g}, endsAtGenerator: true, missing: m.untracedOf(g),
	}
}

// traced reports whether the way to the supply was found.
func (l *link) traced() bool { return l.missing == nil }

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
