package circuit

import (
	"slices"

	"sunclause/facts/working"
	"sunclause/schema"
)

// goal is a terminal where paths end: what lies behind it is another circuit.
type goal struct {
	kind goalKind
	name string
}

type goalKind int

const (
	trackingInput goalKind = iota + 1
	batteryTerminal
	publicSupply
)

// Path is the way from a part to where its power goes, with every isolator
// closed.
type Path struct {
	Input     string   // terminal of the tracking input, inverter or supply; "" when none was reached
	Runs      []int    // indexes of the runs, from the part on
	Isolators []int    // indexes of the isolators, from the part on
	Ways      []string // ways of boards, by their terminals, from the part on
	Ambiguous bool     // there is more than one way, or more than one end

	// Untraced says why the way is not known: nothing leads on from the part, or more
	// than one way does. It is nil where it is known.
	Untraced []working.Gap

	ways []*way
}

// section is all that hangs together on one side of a goal, with every isolator
// closed. Sections end at goals.
type section struct {
	goal      goal
	ambiguous bool // it has a loop or a second goal

	edges []int         // all that were walked
	ends  []string      // its goals, by their terminals
	gap   []working.Gap // of an ambiguous one, once it is asked for
}

// From is the path from a string to the tracking input that it feeds.
func (c *Circuit) From(terminal string) Path { return c.path(terminal, trackingInput) }

// ToSupply is the path from the AC terminal of an inverter or battery, or from
// a way of a board, to the public supply. Input is the id of the supply.
func (c *Circuit) ToSupply(terminal string) Path { return c.path(terminal, publicSupply) }

// ToInverter is the path from a battery to the inverter that charges it. Input
// is the id of the inverter.
func (c *Circuit) ToInverter(battery string) Path { return c.path(battery, batteryTerminal) }

func (c *Circuit) path(terminal string, kind goalKind) Path {
	t, known := c.terminals[terminal]
	if !known || c.sections[t] == nil || c.sections[t].goal.kind != kind {
		return Path{Untraced: []working.Gap{working.Unstated("/cables")}}
	}
	p := Path{Input: c.sections[t].goal.name, Ambiguous: c.sections[t].ambiguous}
	if p.Ambiguous {
		p.Untraced = c.several(c.sections[t])
	}
	for c.goals[t].kind == 0 {
		e := c.edges[c.toward[t]]
		if e.outlet != "" {
			p.Ways = append(p.Ways, e.outlet)
		}
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

// BehindSwitch reports whether the way from a terminal to the supply leads through a
// switch between sources.
func (c *Circuit) BehindSwitch(terminal string) bool {
	return slices.ContainsFunc(c.Steps(terminal), func(s Step) bool { return c.switches[Part(s.From)] })
}

// Step is one stretch of a way: from a terminal to the next, by a run of cable,
// through a part, or joined without a run.
type Step struct {
	From, To string // terminals
	Run      int    // index of the run; -1 within a part or where parts are joined
}

// Steps is the way from a terminal to the goal it leads to, terminal by
// terminal, with every isolator closed; nil when it leads to none.
func (c *Circuit) Steps(terminal string) []Step {
	t, known := c.terminals[terminal]
	if !known || c.sections[t] == nil {
		return nil
	}
	names := c.names()
	var steps []Step
	for c.goals[t].kind == 0 {
		e := c.edges[c.toward[t]]
		next := e.far(t)
		steps = append(steps, Step{names[t], names[next], e.run})
		t = next
	}
	return steps
}

// Touches reports whether a way of an isolator is joined to a part, or leads to it by
// one run.
func (c *Circuit) Touches(iso *schema.Isolator, part string) bool {
	names := c.names()
	for _, w := range iso.Ways {
		for _, side := range []string{".in", ".out"} {
			t := c.terminals[iso.ID.Value+"."+w.ID.Value+side]
			for _, i := range c.meet[t] {
				if Part(names[c.edges[i].far(t)]) == part {
					return true
				}
			}
		}
	}
	return false
}

// names lists the terminals by number.
func (c *Circuit) names() []string {
	names := make([]string, len(c.meet))
	for name, t := range c.terminals {
		names[t] = name
	}
	return names
}

// trace walks from every goal back over all that hangs on it, and notes for
// each terminal which edge leads nearer to the goal.
func (c *Circuit) trace() {
	c.toward = make([]int, len(c.meet))
	c.sections = make([]*section, len(c.meet))
	walked := make([]bool, len(c.edges))
	for t := range c.meet {
		if c.goals[t].kind == 0 {
			continue
		}
		for _, i := range c.meet[t] {
			if !walked[i] {
				c.spread(t, i, walked)
			}
		}
	}
}

// spread walks over one section, beginning with an edge at its goal.
func (c *Circuit) spread(end, first int, walked []bool) {
	type step struct{ from, edge int }
	whole := &section{goal: c.goals[end], ends: []string{c.goals[end].name}}
	c.walked = append(c.walked, whole)
	walked[first] = true
	for queue := []step{{end, first}}; len(queue) > 0; queue = queue[1:] {
		s := queue[0]
		t := c.edges[s.edge].far(s.from)
		whole.edges = append(whole.edges, s.edge)
		if c.goals[t].kind != 0 || c.sections[t] != nil {
			whole.ambiguous = true
			if c.goals[t].kind != 0 && !slices.Contains(whole.ends, c.goals[t].name) {
				whole.ends = append(whole.ends, c.goals[t].name)
			}
			continue
		}
		c.sections[t], c.toward[t] = whole, s.edge
		for _, i := range c.meet[t] {
			if !walked[i] {
				walked[i] = true
				queue = append(queue, step{t, i})
			}
		}
	}
}
