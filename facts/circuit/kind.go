package circuit

import (
	"slices"
	"strconv"
	"strings"

	"sunclause/facts/working"
	"sunclause/schema"
)

// Kinds of circuit, as isolators and surge protective devices name them.
const (
	PV      = "pv_dc"
	Battery = "battery_dc"
	AC      = "ac"
)

// mark is what a part makes of a live terminal of its own: one of a circuit of the
// kind. The ways of an isolator are of any kind.
type mark struct{ terminal, kind, at string }

// marks lists the live terminals that parts have. What is not among them is an
// earthing bar, a frame or the body of a part. A bare id is a terminal of a string,
// a battery and the supply, and their body as well.
func marks(in *schema.Installation) []mark {
	var all []mark
	add := func(kind, at string, terminals ...string) {
		for _, t := range terminals {
			all = append(all, mark{t, kind, at})
		}
	}
	for _, s := range in.Strings {
		add(PV, s.At(), s.ID.Value)
	}
	for _, a := range in.Arrays {
		for w := range int(a.Ways.Value) {
			add(PV, a.At(), a.ID.Value+"."+strconv.Itoa(w+1))
		}
		add(PV, a.At(), a.ID.Value+".out")
	}
	for _, inv := range in.Inverters {
		for i := range inv.Datasheet.To().MPPTs {
			add(PV, inv.At(), Input(inv.ID.Value, i))
		}
		add(Battery, inv.At(), inv.ID.Value+".battery")
		add(AC, inv.At(), inv.ID.Value+".ac", inv.ID.Value+".backup")
	}
	for _, b := range in.Storage.Batteries {
		add(Battery, b.At(), b.ID.Value)
		add(AC, b.At(), b.ID.Value+".ac")
	}
	for _, iso := range in.Isolators {
		for _, w := range iso.Ways {
			add("", iso.At(), iso.ID.Value+"."+w.ID.Value+".in", iso.ID.Value+"."+w.ID.Value+".out")
		}
	}
	return append(all, mainsMarks(&in.AC)...)
}

func mainsMarks(ac *schema.AC) []mark {
	var all []mark
	if s := ac.Supply; s.ID.Stated() {
		all = append(all, mark{s.ID.Value, AC, s.At()})
	}
	for _, m := range ac.Meters {
		all = append(all, mark{m.ID.Value + ".in", AC, m.At()}, mark{m.ID.Value + ".out", AC, m.At()})
	}
	for _, b := range ac.Boards {
		all = append(all, mark{b.ID.Value + ".in", AC, b.At()})
		for _, w := range b.Ways {
			all = append(all, mark{b.ID.Value + "." + w.ID.Value, AC, b.At()})
		}
	}
	for _, x := range ac.Changeovers {
		for _, t := range []string{".grid", ".source", ".load"} {
			all = append(all, mark{x.ID.Value + t, AC, x.At()})
		}
	}
	return all
}

// nets are the parts of the graph that hang together with every isolator closed,
// and what the parts in each of them make of it.
type nets struct {
	of   []int           // by terminal: another one of the same net, or itself
	live map[string]bool // the live terminals
	made map[int][]mark  // by the terminal that stands for the net: the first mark of each kind
}

// findNets joins what the edges join, and marks what comes of it.
func (c *Circuit) findNets(in *schema.Installation) {
	all := marks(in)
	for _, m := range all {
		c.terminal(m.terminal)
	}
	c.nets = nets{of: make([]int, len(c.meet)), live: map[string]bool{}, made: map[int][]mark{}}
	for t := range c.nets.of {
		c.nets.of[t] = t
	}
	for _, m := range all {
		t := c.terminals[m.terminal]
		c.nets.live[m.terminal] = true
		if m.kind != "" {
			c.nets.made[t] = append(c.nets.made[t], m)
		}
	}
	for _, e := range c.edges {
		c.nets.join(e.a, e.b)
	}
}

// whole is the terminal that stands for the net of a terminal.
func (n *nets) whole(t int) int {
	for n.of[t] != t {
		n.of[t] = n.of[n.of[t]]
		t = n.of[t]
	}
	return t
}

func (n *nets) join(a, b int) {
	a, b = n.whole(a), n.whole(b)
	if a == b {
		return
	}
	a, b = min(a, b), max(a, b)
	n.of[b] = a
	for _, m := range n.made[b] {
		if !slices.ContainsFunc(n.made[a], func(o mark) bool { return o.kind == m.kind }) {
			n.made[a] = append(n.made[a], m)
		}
	}
}

// admit takes runs into the graph that the document calls protective, bonding,
// earthing or control conductors, and that lead from one live terminal to another
// of the same kind of circuit, which nothing else joins: they carry current,
// whatever they are called. Protective conductors go to the bare id of a part.
func (c *Circuit) admit() {
	for i, r := range c.runs {
		if c.feeds[i] >= 0 || !c.betweenLive(&r) {
			continue
		}
		a, b := c.nets.whole(c.terminals[r.From.Value]), c.nets.whole(c.terminals[r.To.Value])
		if a == b {
			continue
		}
		kinds := map[string]bool{}
		for _, m := range slices.Concat(c.nets.made[a], c.nets.made[b]) {
			kinds[m.kind] = true
		}
		if len(kinds) == 1 {
			c.feeds[i] = c.join(r.From.Value, r.To.Value, edge{run: i})
			c.nets.join(a, b)
		}
	}
}

// betweenLive reports whether a run leads from one live terminal to another. One of the
// two has to have a name of its own: a bare id may be the body of a part.
func (c *Circuit) betweenLive(r *schema.Run) bool {
	named := strings.Contains(r.From.Value, ".") || strings.Contains(r.To.Value, ".")
	return named && c.nets.live[r.From.Value] && c.nets.live[r.To.Value]
}

// Kind is the kind of circuit that meets at some terminals, as the parts of that
// circuit make it: PV, Battery or AC. It stands at the part that makes it so. It is
// unknown for terminals that hang on nothing, and where parts of several kinds hang
// on one circuit; at is the place of what asks.
func (c *Circuit) Kind(at string, terminals ...string) working.Text {
	var made []mark
	for _, name := range terminals {
		t, known := c.terminals[name]
		if !known {
			continue
		}
		for _, m := range c.nets.made[c.nets.whole(t)] {
			if !slices.ContainsFunc(made, func(o mark) bool { return o.kind == m.kind }) {
				made = append(made, m)
			}
		}
	}
	switch len(made) {
	case 0:
		return working.UnknownText("/cables")
	case 1:
		return working.KnownText(made[0].kind, made[0].at)
	}
	ids := make([]string, len(made))
	for i, m := range made {
		ids[i] = m.kind + " at " + m.terminal
	}
	return working.UnknownText(working.SeveralAnswers(at, ids...))
}

// Opens is the kind of circuit that an isolator opens: the word of the document where
// the circuit bears it out.
func (c *Circuit) Opens(iso *schema.Isolator) working.Text {
	return c.opens[iso.ID.Value]
}

// OpensMade is the kind of circuit that an isolator opens by what its ways lead to.
func (c *Circuit) OpensMade(iso *schema.Isolator) working.Text {
	var ends []string
	for _, w := range iso.Ways {
		ends = append(ends, iso.ID.Value+"."+w.ID.Value+".in", iso.ID.Value+"."+w.ID.Value+".out")
	}
	return c.Kind(iso.At(), ends...)
}

// Protects is the kind of circuit that a surge protective device protects: the word of
// the document where the circuit bears it out, or the maker's sheet.
func (c *Circuit) Protects(s *schema.SPD) working.Text {
	return working.Confirmed(working.StatedText(s.Circuit), c.ProtectsMade(s))
}

// ProtectsMade is the kind of circuit at the terminal of a surge protective device. One
// that hangs on no circuit of power protects what it is made for, by its sheet.
func (c *Circuit) ProtectsMade(s *schema.SPD) working.Text {
	made, system := c.Kind(s.At(), s.ConnectedAt.Value), s.Datasheet.To().System
	if made.Known() || c.nets.live[s.ConnectedAt.Value] || !system.Stated() || system.Is("dc") {
		return made
	}
	return working.StatedText(system)
}

// CarriesPV reports whether daylight feeds a run: parts of the PV side hang on it, or
// nothing does and the document says so.
func (c *Circuit) CarriesPV(run int) bool {
	feeds, service := c.feeds[run], c.runs[run].Service
	if feeds < 0 {
		return false
	}
	made := c.nets.made[c.nets.whole(c.edges[feeds].a)]
	if len(made) == 0 {
		return service.Is("pv_string") || service.Is("pv_array")
	}
	return slices.ContainsFunc(made, func(m mark) bool { return m.kind == PV })
}
