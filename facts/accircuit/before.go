package accircuit

import (
	"sunclause/facts/working"
	"sunclause/schema"
)

// upstream is a device that the current of a circuit passes between its way and
// the supply.
type upstream struct {
	device *schema.ProtectiveDevice
	shared working.Flag // whether it stands before other ways that are in use too
}

// before lists the devices between a circuit and the supply, from the first of
// some ways on: what stands before its board, and the devices of the ways that the
// boards before hang on. The device of the distributor is one of them where the
// document names it.
func (m *mains) before(ways []string) []upstream {
	var all []upstream
	shared := working.KnownFlag(false, m.in.AC.At())
	for i, terminal := range ways {
		o := m.outlets[terminal]
		if i > 0 {
			all = append(all, upstream{o.way.Device.To(), shared})
			if o.way.RCD.Stated() {
				all = append(all, upstream{o.way.RCD.To(), shared})
			}
		}
		shared = working.Any(shared, o.hasOthers())
		all = append(all, upstream{o.board.IncomingDevice.To(), shared})
	}
	if d := m.in.AC.Supply.Device; d.Stated() {
		all = append(all, upstream{d.To(), shared})
	}
	return all
}

// hasOthers reports whether the board of a way has other ways in use.
func (o outlet) hasOthers() working.Flag {
	var used []working.Flag
	for i := range o.board.Ways {
		if w := &o.board.Ways[i]; w != o.way {
			used = append(used, working.Not(working.StatedText(w.Serves).OneOf("spare")))
		}
	}
	return working.Any(used...)
}
