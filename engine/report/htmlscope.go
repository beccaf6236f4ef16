package report

import (
	"strings"

	"sunclause/engine/judge"
)

// scopeOf says in one line what was looked at, as far as it is stated.
func scopeOf(r *judge.Result) string {
	in, whole := &r.Document.Installation, &r.Facts.Installation
	var says []string
	if modules := whole.ModulesStated; modules.Known() && modules.Value() > 0 {
		says = append(says, judge.Many(int(modules.Value()), "module"))
	}
	if power := whole.DcPowerW; power.Known() && power.Value() > 0 {
		says = append(says, judge.WriteValue(power.Value()/1000, "kW")+" at STC")
	}
	for _, part := range []struct {
		n    int
		word string
	}{{len(in.Strings), "string"}, {len(in.Roof.Planes), "roof plane"}, {len(in.Inverters), "inverter"}, {len(in.Storage.Batteries), "battery"}} {
		if part.n > 0 {
			says = append(says, judge.Many(part.n, part.word))
		}
	}
	if date := whole.DesignDate; date.Known() {
		says = append(says, "designed "+date.Value())
	}
	return strings.Join(says, ", ")
}
