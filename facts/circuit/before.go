package circuit

import (
	"sunclause/facts/working"
	"sunclause/schema"
)

// Upstream is a protective device that the current of a way of a board passes between
// the way and the supply.
type Upstream struct {
	Device *schema.ProtectiveDevice
	Shared working.Flag // whether it stands before other ways that are in use too
}

// Before lists the devices between a way of a board and the supply, as far as that was
// traced: what stands before its board, and the devices of the ways that the boards
// before hang on. The device of the distributor is one of them where the document
// names it.
func (c *Circuit) Before(way string) []Upstream {
	ways := []string{way}
	if path := c.ToSupply(way); path.Input != "" && !path.Ambiguous && len(path.Ways) > 0 {
		ways = path.Ways
	}
	var all []Upstream
	shared := working.KnownFlag(false, c.supply.At())
	for i, terminal := range ways {
		o := c.outlets[terminal]
		if i > 0 {
			all = append(all, Upstream{o.way.Device.To(), shared})
			if o.way.RCD.Stated() {
				all = append(all, Upstream{o.way.RCD.To(), shared})
			}
		}
		shared = working.Any(shared, o.hasOthers())
		all = append(all, Upstream{o.board.IncomingDevice.To(), shared})
	}
	if c.supply.Device.Stated() {
		all = append(all, Upstream{c.supply.Device.To(), shared})
	}
	return all
}

// hasOthers reports whether the board of a way has other ways in use.
func (o *outlet) hasOthers() working.Flag {
	var used []working.Flag
	for i := range o.board.Ways {
		if w := &o.board.Ways[i]; w != o.way {
			used = append(used, working.Not(working.StatedText(w.Serves).OneOf("spare")))
		}
	}
	return working.Any(used...)
}
