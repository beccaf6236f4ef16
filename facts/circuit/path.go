package circuit

import (
	"slices"
)

// Path is the way from a string to the tracking input that it feeds.
type Path struct {
	Input     string // terminal of the input; "" when none was reached
	Runs      []int  // indexes of the runs, from the string on
	Isolators []int  // indexes of the isolators, from the string on
	Ambiguous bool   // there is more than one way, or more than one input

	ways []*way
}

// From walks from a string to the tracking input that it feeds, with every
// isolator closed.
func (c *Circuit) From(terminal string) Path { return *c.path(terminal) }

func (c *Circuit) path(terminal string) *Path {
	if p, done := c.paths[terminal]; done {
		return p
	}
	p := c.walk(terminal)
	c.paths[terminal] = p
	return p
}

func (c *Circuit) walk(terminal string) *Path {
	came := map[string]int{terminal: -1} // the edge by which a terminal was first reached
	queue := []string{terminal}
	found := &Path{}
	for len(queue) > 0 {
		t := queue[0]
		queue = queue[1:]
		if c.inputs[t] {
			found.Ambiguous = found.Ambiguous || found.Input != ""
			if found.Input == "" {
				c.trace(found, t, came)
			}
			continue // what lies behind an input is the inverter
		}
		for _, i := range c.meet[t] {
			if i == came[t] {
				continue
			}
			far := c.edges[i].far(t)
			if _, seen := came[far]; seen {
				found.Ambiguous = true
				continue
			}
			came[far] = i
			queue = append(queue, far)
		}
	}
	return found
}

// trace follows the edges back from an input to where the walk began.
func (c *Circuit) trace(p *Path, input string, came map[string]int) {
	p.Input = input
	for t := input; came[t] >= 0; {
		e := c.edges[came[t]]
		if e.run >= 0 {
			p.Runs = append(p.Runs, e.run)
		}
		if e.way != nil {
			p.Isolators = append(p.Isolators, e.way.isolator)
			p.ways = append(p.ways, e.way)
		}
		t = e.far(t)
	}
	slices.Reverse(p.Runs)
	slices.Reverse(p.Isolators)
}
