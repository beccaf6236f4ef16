package circuit

import (
	"slices"

	"sunclause/facts/working"
)

// Loop is a stretch of the graph by which more than one way leads on: runs that meet
// again, or that lead to a second end. Nobody can say then which of them carries the
// current of what hangs on it.
type Loop struct {
	At    string   // JSON pointer of its first run, or of the list of runs where it has none
	Names []string // ids of the runs in it, then of the parts through which it leads
	Ends  []string // terminals where current ends that it joins; one is no loop by itself
	Kind  working.Text
}

// Loops lists the loops of the graph with every isolator closed, in the order in which
// they were found: at most one between the ends that hang together.
func (c *Circuit) Loops() []Loop {
	var all []Loop
	for _, s := range c.walked {
		if s.ambiguous {
			all = append(all, c.loop(s))
		}
	}
	return all
}

// loop names what is left of a section when all that leads to one end only is taken
// away.
func (c *Circuit) loop(s *section) Loop {
	l := Loop{At: "/cables", Ends: s.ends}
	names := c.names()
	var runs []int
	var parts []string
	for _, i := range c.core(s) {
		if e := c.edges[i]; e.run >= 0 {
			runs = append(runs, e.run)
		} else {
			parts = append(parts, Part(names[e.b]))
		}
	}
	slices.Sort(runs)
	slices.Sort(parts)
	for _, r := range runs {
		l.Names = append(l.Names, c.runs[r].ID.Value)
	}
	l.Names = append(l.Names, slices.Compact(parts)...)
	if len(runs) > 0 {
		l.At = c.runs[runs[0]].At()
	}
	l.Kind = c.Kind(l.At, s.ends...)
	return l
}

// core lists the edges of a section that lie on a loop, or between two of them. The
// ends of the section count as one terminal, so that a fork to two of them is a loop.
func (c *Circuit) core(s *section) []int {
	meet := map[int][]int{}
	end := func(t int) int {
		if c.goals[t].kind != 0 {
			return -1
		}
		return t
	}
	for _, i := range s.edges {
		for _, t := range []int{end(c.edges[i].a), end(c.edges[i].b)} {
			meet[t] = append(meet[t], i)
		}
	}
	gone, degree := map[int]bool{}, map[int]int{}
	var bare []int // terminals at which one edge is left
	for t, edges := range meet {
		if degree[t] = len(edges); degree[t] == 1 {
			bare = append(bare, t)
		}
	}
	for len(bare) > 0 {
		t := bare[len(bare)-1]
		bare = bare[:len(bare)-1]
		for _, i := range meet[t] {
			if gone[i] {
				continue
			}
			gone[i] = true
			for _, far := range []int{end(c.edges[i].a), end(c.edges[i].b)} {
				if degree[far]--; degree[far] == 1 {
					bare = append(bare, far)
				}
			}
		}
	}
	return slices.DeleteFunc(slices.Clone(s.edges), func(i int) bool { return gone[i] })
}

// Round lists the runs by which current passes round an isolator: from one side of a
// way to the other and through none of its own ways. There are none where a way is the
// only one.
func (c *Circuit) Round(isolator int) []string {
	for _, i := range c.ways[isolator] {
		if runs := c.round(c.edges[i], isolator); runs != nil {
			return runs
		}
	}
	return nil
}

func (c *Circuit) round(way edge, isolator int) []string {
	s := c.sections[way.a]
	if s == nil || !s.ambiguous {
		return nil // nothing leads round, or to no end
	}
	by := map[int]int{way.a: -1} // edge by which a terminal was reached
	for queue := []int{way.a}; len(queue) > 0; queue = queue[1:] {
		t := queue[0]
		if t == way.b {
			break
		}
		for _, i := range c.meet[t] {
			e := c.edges[i]
			next := e.far(t)
			if _, seen := by[next]; seen || e.way != nil && e.way.isolator == isolator {
				continue
			}
			by[next] = i
			queue = append(queue, next)
		}
	}
	var runs []string
	for t := way.b; t != way.a; {
		i, reached := by[t]
		if !reached {
			return nil
		}
		if e := c.edges[i]; e.run >= 0 {
			runs = append(runs, c.runs[e.run].ID.Value)
		}
		t = c.edges[i].far(t)
	}
	return append(runs, "a joint without a cable")[:max(1, len(runs))]
}

// several is the gap of whatever hangs on a section with a loop.
func (c *Circuit) several(s *section) []working.Gap {
	if s.gap == nil {
		l := c.loop(s)
		s.gap = []working.Gap{working.SeveralAnswers(l.At, Several(l.Names)...)}
	}
	return s.gap
}

// mostNamed is how many parts of a loop a gap names.
const mostNamed = 8

// Several are the first of some names, and a word for the others.
func Several(names []string) []string {
	if len(names) <= mostNamed {
		return names
	}
	return append(slices.Clone(names[:mostNamed]), "and others")
}
