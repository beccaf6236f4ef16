package circuit

import "sunclause/schema"

// addMains puts the AC side into the graph: the supply, meters, boards and
// changeover switches. What lies behind the terminal of the supply is the
// network of the distributor, so that paths end there.
func (c *Circuit) addMains(ac *schema.AC) {
	if s := ac.Supply.ID; s.Stated() {
		c.goals[c.terminal(s.Value)] = goal{publicSupply, s.Value}
	}
	for _, m := range ac.Meters {
		c.join(m.ID.Value+".in", m.ID.Value+".out", edge{run: -1})
		c.joined(m.JoinedIn, m.ID.Value+".in")
		c.joined(m.JoinedOut, m.ID.Value+".out")
	}
	for _, b := range ac.Boards {
		c.joined(b.JoinedIn, b.ID.Value+".in")
		for _, w := range b.Ways {
			outlet := b.ID.Value + "." + w.ID.Value
			c.join(b.ID.Value+".in", outlet, edge{run: -1, outlet: outlet})
			c.joined(w.JoinedTo, outlet)
		}
	}
	for _, x := range ac.Changeovers {
		c.switches[x.ID.Value] = true
		c.join(x.ID.Value+".grid", x.ID.Value+".load", edge{run: -1, changes: true})
		c.join(x.ID.Value+".source", x.ID.Value+".load", edge{run: -1, changes: true})
	}
}

// joined puts an edge where a part is joined to a terminal without a run of
// cable.
func (c *Circuit) joined(to schema.Text, terminal string) {
	if to.Stated() {
		c.join(to.Value, terminal, edge{run: -1})
	}
}
