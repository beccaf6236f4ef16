package circuit

import (
	"slices"

	"sunclause/facts/working"
	"sunclause/schema"
)

// outlet is one way of a board: what the document calls it, and what hangs on it.
type outlet struct {
	board      *schema.Board
	way        *schema.BoardWay
	branch     *branch // what hangs on it
	generators []fed   // generators whose way to the supply leads through it
}

// fed is a generator on the AC side: the words for a way that it feeds.
type fed struct {
	terminal, at string
	words        []string
}

// sources are the words for ways that generators feed.
var sources = []string{"pv_supply", "battery_supply", "hybrid_supply"}

// wayWords are the words for a way by the kind of inverter, or of generator that was
// there before. One that charges a battery too may be called by its modules.
var wayWords = map[string][]string{
	"pv": {"pv_supply"}, "hybrid": {"hybrid_supply", "pv_supply"}, "battery": {"battery_supply"}, "vehicle": {"ev_charger", "battery_supply"},
}

// generatorsOf lists what feeds the AC side.
func generatorsOf(in *schema.Installation) []fed {
	var all []fed
	add := func(terminal, at string, kind schema.Text) {
		g := fed{terminal, at, wayWords[kind.Value]}
		if g.words == nil { // of another kind, or of none that is stated
			g.words = sources
		}
		all = append(all, g)
	}
	for _, inv := range in.Inverters {
		add(inv.ID.Value+".ac", inv.At(), inv.Datasheet.To().Kind)
	}
	for _, b := range in.Storage.Batteries {
		all = append(all, fed{b.ID.Value + ".ac", b.At(), wayWords["battery"]})
	}
	for _, e := range in.AC.ExistingGeneration {
		if e.Way.Stated() {
			add(e.Way.Value, e.At(), e.Kind)
		}
	}
	return all
}

// findOutlets notes for every way of a board what hangs on it and which generators feed
// through it.
func (c *Circuit) findOutlets(in *schema.Installation) {
	c.outlets = map[string]*outlet{}
	c.branchOf = c.branches(in)
	for i := range in.AC.Boards {
		b := &in.AC.Boards[i]
		for k := range b.Ways {
			name := b.ID.Value + "." + b.Ways[k].ID.Value
			c.outlets[name] = &outlet{board: b, way: &b.Ways[k], branch: c.branchOf(name)}
		}
	}
	for _, g := range generatorsOf(in) {
		p := c.ToSupply(g.terminal)
		if p.Ambiguous {
			continue
		}
		for _, way := range p.Ways {
			o := c.outlets[way]
			o.generators = append(o.generators, g)
		}
	}
}

// branch is what hangs together without passing through the busbars of a board or a
// switch between sources.
type branch struct {
	terminals int
	words     []string // for a way on which the boards and switches between sources of it hang
	by        string   // JSON pointer of the first of them
	spd       string   // JSON pointer of a surge protective device on it
	backup    string   // JSON pointer of an inverter whose backup output is on it
	source    string   // JSON pointer of a switch between sources to which it is the other source
}

// branches joins what the edges join but for the ways of boards and switches, and gives the branch
// of a terminal.
func (c *Circuit) branches(in *schema.Installation) func(terminal string) *branch {
	n := nets{of: make([]int, len(c.meet))}
	for t := range n.of {
		n.of[t] = t
	}
	for _, e := range c.edges {
		if e.outlet == "" && !e.changes {
			n.join(e.a, e.b)
		}
	}
	all := map[int]*branch{}
	at := func(terminal string) *branch {
		t, known := c.terminals[terminal]
		if !known {
			return &branch{}
		}
		whole := n.whole(t)
		if all[whole] == nil {
			all[whole] = &branch{}
		}
		return all[whole]
	}
	for name := range c.terminals {
		at(name).terminals++
	}
	for _, inv := range in.Inverters {
		at(inv.ID.Value + ".backup").backup = inv.At()
	}
	for _, b := range in.AC.Boards {
		words := []string{"sub_board"}
		if b.Role.Is("backup") {
			words = append(words, "backup")
		}
		at(b.ID.Value+".in").leadTo(b.At(), words)
	}
	for _, x := range in.AC.Changeovers {
		at(x.ID.Value+".grid").leadTo(x.At(), []string{"backup", "sub_board"})
		at(x.ID.Value + ".source").source = x.At()
	}
	for _, s := range in.SPDs {
		at(s.ConnectedAt.Value).spd = s.At()
	}
	return at
}

// leadTo notes a part behind which there are other circuits.
func (b *branch) leadTo(at string, words []string) {
	b.words = append(b.words, words...)
	if b.by == "" {
		b.by = at
	}
}

// decided lists the words that would do for a way, and where the part stands that makes
// it so: generators, then boards and switches between sources, or else a surge
// protective device. There are none where nothing decides.
func (o *outlet) decided() (words []string, by string) {
	for _, g := range o.generators {
		words = append(words, g.words...)
	}
	words = append(words, o.branch.words...)
	switch {
	case o.generators != nil:
		return words, o.generators[0].at
	case words != nil:
		return append(words, "load"), o.branch.by
	case o.branch.spd != "":
		return []string{"surge_protection"}, o.branch.spd
	}
	return nil, ""
}

// Serves is what a way of a board, by its terminal, serves: the word of the document
// where the circuit bears it out.
func (c *Circuit) Serves(way string) working.Text {
	o := c.outlets[way]
	if o == nil {
		return working.UnknownText("/ac/boards")
	}
	return working.Confirmed(working.StatedText(o.way.Serves), c.ServesMade(way))
}

// ServesMade is what the circuit makes of a way, by what hangs on it. Where several
// words would do, or nothing hangs on it, the one that the document has is taken.
func (c *Circuit) ServesMade(way string) working.Text {
	o := c.outlets[way]
	stated := working.StatedText(o.way.Serves)
	switch words, by := o.decided(); {
	case words == nil && c.runs == nil:
		return working.UnknownText("/cables")
	case words == nil:
		return stated
	case slices.Contains(words, stated.Value()):
		return working.KnownText(stated.Value(), by)
	default:
		return working.KnownText(words[0], by)
	}
}

// Bare reports whether nothing is joined to a way of a board.
func (c *Circuit) Bare(way string) working.Flag {
	o := c.outlets[way]
	return working.KnownFlag(o.branch.terminals <= 1, o.way.At())
}

// LeadsOn is the place of a board, or of a switch between sources, that hangs on a way of
// a board; "" where none does.
func (c *Circuit) LeadsOn(way string) string { return c.outlets[way].branch.by }

// Fed is the place of the first generator that feeds through a way of a board; "" where
// none does.
func (c *Circuit) Fed(way string) string {
	if o := c.outlets[way]; o.generators != nil {
		return o.generators[0].at
	}
	return ""
}
