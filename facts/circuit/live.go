package circuit

import (
	"slices"

	"sunclause/facts/working"
	"sunclause/schema"
)

// State is what the strings feed in daylight while some isolators are open. A
// string cannot be switched off: its own terminals are live in every state.
type State struct {
	circuit *Circuit
	sure    []bool   // by terminal: live whatever the ways not described break
	perhaps []bool   // by terminal: live if those ways leave a conductor through
	doubts  []string // the members that would tell
}

// Daylight works out the state in which the isolators that isOpen names are
// open and all others closed.
func (c *Circuit) Daylight(isOpen func(isolator int) bool) State {
	s := c.state(c.suns, isOpen)
	for i := range c.ways {
		if isOpen(i) {
			s.doubts = append(s.doubts, c.undescribed(i)...)
		}
	}
	return s
}

func (c *Circuit) state(suns []int, isOpen func(isolator int) bool) State {
	return State{circuit: c, sure: c.reach(suns, isOpen, false), perhaps: c.reach(suns, isOpen, true)}
}

// undescribed names the members that would tell what an isolator breaks.
func (c *Circuit) undescribed(isolator int) []string {
	var members []string
	for _, i := range c.ways[isolator] {
		if w := c.edges[i].way; w.breaks == unknown {
			members = append(members, w.at)
		}
	}
	return members
}

// Terminal tells whether a terminal is live.
func (s State) Terminal(terminal, at string) working.Flag {
	if t, known := s.circuit.terminals[terminal]; known {
		return s.terminal(t, at)
	}
	return working.Is(false, at) // nothing ends there
}

func (s State) terminal(t int, at string) working.Flag {
	if s.sure[t] == s.perhaps[t] {
		return working.Is(s.sure[t], at)
	}
	return working.UnknownFlag(s.doubts...)
}

// Run tells whether a run is live: one of its ends is. A conductor that carries
// no power is not, though it may end at a part that is.
func (s State) Run(i int) working.Flag {
	at := s.circuit.runs[i].At()
	if s.circuit.feeds[i] < 0 {
		return working.Is(false, at)
	}
	return s.terminal(s.circuit.edges[s.circuit.feeds[i]].a, at) // the run joins its ends: both are live or none
}

// LiveRuns lists the runs of the PV side that are live.
func (s State) LiveRuns() working.Names {
	var ids []string
	for i := range s.circuit.runs {
		r := &s.circuit.runs[i]
		if !carriesDC(r) {
			continue
		}
		f := s.Run(i)
		if !f.Known() {
			return working.UnknownList(s.doubts...)
		}
		if f.Value() {
			ids = append(ids, r.ID.Value)
		}
	}
	return working.List(ids...)
}

// Alone works out what one isolator does when it alone is opened: the runs of
// the PV side that stay live in the circuits it opens, and those it makes dead.
func (c *Circuit) Alone(isolator int) (live, dead working.Names) {
	own := c.reach(c.endsOf(isolator), closed, false)
	suns := slices.DeleteFunc(slices.Clone(c.suns), func(t int) bool { return !own[t] })
	before := c.reach(suns, closed, false)
	after := c.state(suns, func(i int) bool { return i == isolator })
	after.doubts = c.undescribed(isolator)
	var liveIDs, deadIDs []string
	for i, feeds := range c.feeds {
		if feeds < 0 || !before[c.edges[feeds].a] || !carriesDC(&c.runs[i]) {
			continue
		}
		switch f := after.Run(i); {
		case !f.Known():
			return working.UnknownList(after.doubts...), working.UnknownList(after.doubts...)
		case f.Value():
			liveIDs = append(liveIDs, c.runs[i].ID.Value)
		default:
			deadIDs = append(deadIDs, c.runs[i].ID.Value)
		}
	}
	return working.List(liveIDs...), working.List(deadIDs...)
}

func closed(int) bool { return false }

// endsOf lists the terminals of an isolator.
func (c *Circuit) endsOf(isolator int) []int {
	var ends []int
	for _, i := range c.ways[isolator] {
		ends = append(ends, c.edges[i].a, c.edges[i].b)
	}
	return ends
}

// carriesDC keeps to the runs of the PV side: the others are no business of
// daylight.
func carriesDC(r *schema.Run) bool {
	return slices.Contains([]string{"pv_string", "pv_array"}, r.Service.Value)
}

// reach finds every terminal that can be reached from some terminals while some
// isolators are open. Doubt says whether a way that may or may not break all
// conductors is taken to leave what lies behind it live.
func (c *Circuit) reach(from []int, isOpen func(int) bool, doubt bool) []bool {
	reached := make([]bool, len(c.meet))
	todo := slices.Clone(from)
	for len(todo) > 0 {
		t := todo[len(todo)-1]
		todo = todo[:len(todo)-1]
		if reached[t] {
			continue
		}
		reached[t] = true
		for _, i := range c.meet[t] {
			if e := c.edges[i]; e.conducts(isOpen, doubt) {
				todo = append(todo, e.far(t))
			}
		}
	}
	return reached
}

func (e edge) conducts(isOpen func(int) bool, doubt bool) bool {
	if e.way == nil || !isOpen(e.way.isolator) {
		return true
	}
	return e.way.breaks == some || e.way.breaks == unknown && doubt
}
