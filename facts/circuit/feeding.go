package circuit

import (
	"sunclause/facts/working"
	"sunclause/schema"
)

// The words for what keeps a run live while isolators are open.
const (
	ByDaylight = "daylight" // strings
	ByBattery  = "battery"
	ByInverter = "inverter" // a battery terminal or a backup output, from what else the inverter has
	BySupply   = "supply"   // the network of the distributor
)

// Feeding is what feeds each run while some isolators are open. Daylight is one
// source of several: a battery, the supply and an inverter that draws on either
// keep cables live too.
type Feeding struct {
	circuit *Circuit
	states  map[string]State
}

// feedingWords are the sources in the order in which they are told.
var feedingWords = []string{ByDaylight, ByBattery, ByInverter, BySupply}

// Feeding works out what feeds the runs while the isolators that isOpen names are
// open and all others closed.
func (c *Circuit) Feeding(in *schema.Installation, isOpen func(isolator int) bool) Feeding {
	daylight := c.Daylight(isOpen)
	f := Feeding{c, map[string]State{ByDaylight: daylight}}
	for word, sources := range map[string][]int{ByBattery: c.batteries(in), BySupply: c.supplies()} {
		f.states[word] = c.state(sources, isOpen)
	}
	f.states[ByInverter] = c.state(c.throughInverters(in, f.states), isOpen)
	for word, s := range f.states {
		s.undetermined = daylight.undetermined
		f.states[word] = s
	}
	return f
}

// Run lists what feeds a run: ByDaylight, ByBattery, ByInverter, BySupply. It is
// unknown where it is not known what an isolator breaks.
func (f Feeding) Run(i int) working.Names {
	var words []string
	for _, word := range feedingWords {
		switch fed := f.states[word].Run(i); {
		case !fed.Known():
			return working.UnknownList(fed.Missing()...)
		case fed.Value():
			words = append(words, word)
		}
	}
	return working.List(words...)
}

// batteries are the terminals at which batteries feed in.
func (c *Circuit) batteries(in *schema.Installation) []int {
	var ends []int
	for _, b := range in.Storage.Batteries {
		ends = c.known(ends, b.ID.Value, b.ID.Value+".ac")
	}
	return ends
}

func (c *Circuit) supplies() []int {
	var ends []int
	for t, g := range c.goals {
		if g.kind == publicSupply {
			ends = append(ends, t)
		}
	}
	return ends
}

// throughInverters are the battery terminals and backup outputs of inverters that
// have anything live at another terminal.
func (c *Circuit) throughInverters(in *schema.Installation, states map[string]State) []int {
	var ends []int
	for _, inv := range in.Inverters {
		terminals := c.known(nil, inv.ID.Value+".ac", inv.ID.Value+".battery")
		for i := range inv.Datasheet.To().MPPTs {
			terminals = c.known(terminals, Input(inv.ID.Value, i))
		}
		if anyLive(terminals, states) {
			ends = c.known(ends, inv.ID.Value+".battery", inv.ID.Value+".backup")
		}
	}
	return ends
}

// anyLive reports whether one of some terminals is live, or may be.
func anyLive(terminals []int, states map[string]State) bool {
	for _, t := range terminals {
		for _, s := range states {
			if s.maybeLive[t] {
				return true
			}
		}
	}
	return false
}

// known adds those of some terminals that anything ends at.
func (c *Circuit) known(to []int, names ...string) []int {
	for _, name := range names {
		if t, ends := c.terminals[name]; ends {
			to = append(to, t)
		}
	}
	return to
}
