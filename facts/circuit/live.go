package circuit

import (
	"slices"

	"sunclause/facts/working"
)

// State is what the strings feed in daylight while some isolators are open. A
// string cannot be switched off: its own terminals are live in every state.
type State struct {
	circuit      *Circuit
	live         []bool        // by terminal: live whatever the ways not described break
	maybeLive    []bool        // by terminal: live if those ways leave a conductor through
	undetermined []working.Gap // the members that would settle it
}

// Daylight works out the state in which the isolators that isOpen names are
// open and all others closed.
func (c *Circuit) Daylight(isOpen func(isolator int) bool) State {
	s := c.state(c.sources, isOpen)
	for i := range c.ways {
		if isOpen(i) {
			s.undetermined = append(s.undetermined, c.undescribed(i)...)
		}
	}
	return s
}

func (c *Circuit) state(sources []int, isOpen func(isolator int) bool) State {
	return State{circuit: c, live: c.reach(sources, isOpen, false), maybeLive: c.reach(sources, isOpen, true)}
}

// undescribed names the members that would say what an isolator breaks.
func (c *Circuit) undescribed(isolator int) []working.Gap {
	var members []working.Gap
	for _, i := range c.ways[isolator] {
		if w := c.edges[i].way; w.breaks == unknown {
			members = append(members, working.Unstated(w.at))
		}
	}
	return members
}

// Terminal reports whether a terminal is live.
func (s State) Terminal(terminal, at string) working.Flag {
	if t, known := s.circuit.terminals[terminal]; known {
		return s.terminal(t, at)
	}
	return working.KnownFlag(false, at) // nothing ends there
}

func (s State) terminal(t int, at string) working.Flag {
	if s.live[t] == s.maybeLive[t] {
		return working.KnownFlag(s.live[t], at)
	}
	return working.UnknownFlag(s.undetermined...)
}

// Run reports whether a run is live: one of its ends is. A conductor that carries
// no power is not, though it may end at a part that is.
func (s State) Run(i int) working.Flag {
	at := s.circuit.runs[i].At()
	if s.circuit.feeds[i] < 0 {
		return working.KnownFlag(false, at)
	}
	return s.terminal(s.circuit.edges[s.circuit.feeds[i]].a, at) // the run joins its ends: both are live or none
}

// LiveRuns lists the runs of the PV side that are live.
func (s State) LiveRuns() working.Names {
	var ids []string
	for i := range s.circuit.runs {
		r := &s.circuit.runs[i]
		if !s.circuit.CarriesPV(i) {
			continue
		}
		f := s.Run(i)
		if !f.Known() {
			return working.UnknownList(s.undetermined...)
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
	sources := slices.DeleteFunc(slices.Clone(c.sources), func(t int) bool { return !own[t] })
	before := c.reach(sources, closed, false)
	after := c.state(sources, func(i int) bool { return i == isolator })
	after.undetermined = c.undescribed(isolator)
	var liveIDs, deadIDs []string
	for i, feeds := range c.feeds {
		if feeds < 0 || !before[c.edges[feeds].a] || !c.CarriesPV(i) {
			continue
		}
		switch f := after.Run(i); {
		case !f.Known():
			return working.UnknownList(after.undetermined...), working.UnknownList(after.undetermined...)
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

// reach finds every terminal that can be reached from some terminals while some
// isolators are open. With maybe, a way of which it is not known whether it breaks all
// conductors is taken to leave what lies behind it live.
func (c *Circuit) reach(from []int, isOpen func(int) bool, maybe bool) []bool {
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
			if e := c.edges[i]; e.conducts(isOpen, maybe) {
				todo = append(todo, e.far(t))
			}
		}
	}
	return reached
}

func (e edge) conducts(isOpen func(int) bool, maybe bool) bool {
	if e.way == nil || !isOpen(e.way.isolator) {
		return true
	}
	return e.way.breaks == some || e.way.breaks == unknown && maybe
}
