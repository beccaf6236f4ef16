package circuit

// Path is the way from a string to the tracking input that it feeds, with every
// isolator closed.
type Path struct {
	Input     string // terminal of the input; "" when none was reached
	Runs      []int  // indexes of the runs, from the string on
	Isolators []int  // indexes of the isolators, from the string on
	Ambiguous bool   // there is more than one way, or more than one input

	ways []*way
}

// part is all that hangs together on one side of a tracking input, with every
// isolator closed. What lies behind an input is the inverter, so that parts end
// there.
type part struct {
	input     string
	ambiguous bool // it has a loop or a second input
}

// From is the path from a string to the tracking input that it feeds.
func (c *Circuit) From(terminal string) Path {
	t, known := c.terminals[terminal]
	if !known || c.parts[t] == nil {
		return Path{}
	}
	p := Path{Input: c.parts[t].input, Ambiguous: c.parts[t].ambiguous}
	for c.inputs[t] == "" {
		e := c.edges[c.toward[t]]
		if e.run >= 0 {
			p.Runs = append(p.Runs, e.run)
		}
		if e.way != nil {
			p.Isolators = append(p.Isolators, e.way.isolator)
			p.ways = append(p.ways, e.way)
		}
		t = e.far(t)
	}
	return p
}

// trace walks from every tracking input back over all that hangs on it, and
// notes for each terminal which edge leads nearer to the input.
func (c *Circuit) trace() {
	c.toward = make([]int, len(c.meet))
	c.parts = make([]*part, len(c.meet))
	walked := make([]bool, len(c.edges))
	for t := range c.meet {
		if c.inputs[t] == "" {
			continue
		}
		for _, i := range c.meet[t] {
			if !walked[i] {
				c.spread(t, i, walked)
			}
		}
	}
}

// spread walks over one part, beginning with an edge at its input.
func (c *Circuit) spread(input, first int, walked []bool) {
	type step struct{ from, edge int }
	p := &part{input: c.inputs[input]}
	walked[first] = true
	for queue := []step{{input, first}}; len(queue) > 0; queue = queue[1:] {
		s := queue[0]
		t := c.edges[s.edge].far(s.from)
		if c.inputs[t] != "" || c.parts[t] != nil {
			p.ambiguous = true
			continue
		}
		c.parts[t], c.toward[t] = p, s.edge
		for _, i := range c.meet[t] {
			if !walked[i] {
				walked[i] = true
				queue = append(queue, step{t, i})
			}
		}
	}
}
