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
	sure    map[string]bool // live whatever the ways not described break
	perhaps map[string]bool // live if those ways leave a conductor through
	doubts  []string        // the members that would tell
}

// Daylight works out the state in which the isolators that isOpen names are
// open and all others closed.
func (c *Circuit) Daylight(isOpen func(isolator int) bool) State {
	s := State{circuit: c, sure: c.reach(isOpen, false), perhaps: c.reach(isOpen, true)}
	for _, e := range c.edges {
		if e.way != nil && e.way.breaks == unknown && isOpen(e.way.isolator) {
			s.doubts = append(s.doubts, e.way.at)
		}
	}
	return s
}

// Terminal tells whether a terminal is live.
func (s State) Terminal(terminal, at string) working.Flag {
	if s.sure[terminal] == s.perhaps[terminal] {
		return working.Is(s.sure[terminal], at)
	}
	return working.UnknownFlag(s.doubts...)
}

// Run tells whether a run is live: one of its ends is.
func (s State) Run(i int) working.Flag {
	r := s.circuit.runs[i]
	from, to := s.Terminal(r.From.Value, r.At()), s.Terminal(r.To.Value, r.At())
	if from.Known() && from.Value() {
		return from
	}
	if to.Known() && (to.Value() || from.Known()) {
		return to
	}
	return working.UnknownFlag(s.doubts...)
}

// LiveRuns lists the runs that are live.
func (s State) LiveRuns() working.Names {
	return s.pick(func(live bool) bool { return live })
}

// DeadRuns lists the power runs that are dead.
func (s State) DeadRuns() working.Names {
	return s.pick(func(live bool) bool { return !live })
}

func (s State) pick(want func(live bool) bool) working.Names {
	var ids []string
	for i, r := range s.circuit.runs {
		if !carriesDC(r) {
			continue
		}
		f := s.Run(i)
		if !f.Known() {
			return working.UnknownList(s.doubts...)
		}
		if want(f.Value()) {
			ids = append(ids, r.ID.Value)
		}
	}
	return working.List(ids...)
}

// carriesDC keeps to the runs of the PV side: the others are no business of
// daylight.
func carriesDC(r schema.Run) bool {
	return slices.Contains([]string{"pv_string", "pv_array"}, r.Service.Value)
}

// reach finds every terminal that the strings feed while some isolators are
// open. Doubt says whether a way that may or may not break all conductors is
// taken to leave what lies behind it live.
func (c *Circuit) reach(isOpen func(int) bool, doubt bool) map[string]bool {
	live := map[string]bool{}
	todo := slices.Clone(c.suns)
	for len(todo) > 0 {
		t := todo[len(todo)-1]
		todo = todo[:len(todo)-1]
		if live[t] {
			continue
		}
		live[t] = true
		for _, i := range c.meet[t] {
			if e := c.edges[i]; e.conducts(isOpen, doubt) {
				todo = append(todo, e.far(t))
			}
		}
	}
	return live
}

func (e edge) conducts(isOpen func(int) bool, doubt bool) bool {
	if e.way == nil || !isOpen(e.way.isolator) {
		return true
	}
	return e.way.breaks == some || e.way.breaks == unknown && doubt
}
