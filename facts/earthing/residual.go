package earthing

import (
	"slices"

	"sunclause/facts/working"
	"sunclause/schema"
)

// residualKinds are the devices that trip on residual current.
var residualKinds = []string{"rccb", "rcbo", "afdd_with_rcbo"}

// residualOf is the rated residual current of the device that protects a way:
// a device of its own, or the way's breaker where that is one too.
func residualOf(in *schema.Installation, w schema.BoardWay) working.Number {
	if w.RCD.Stated() {
		return working.Stated("I_Δn", "mA", in.Datasheets.ProtectiveDevices[w.RCD.Value].ResidualCurrentMa)
	}
	if d := in.Datasheets.ProtectiveDevices[w.Device.Value]; w.Device.Stated() && slices.Contains(residualKinds, d.Kind.Value) {
		return working.Stated("I_Δn", "mA", d.ResidualCurrentMa)
	}
	return working.Unknown("I_Δn", "mA", w.RCD.At())
}

// residualOfGenerators is the greatest rated residual current on the ways that
// serve inverters: the one that leaves the electrode at the highest voltage.
func residualOfGenerators(in *schema.Installation) working.Number {
	var all []working.Number
	for _, board := range in.AC.Boards {
		for _, w := range board.Ways {
			if slices.Contains([]string{"pv_supply", "hybrid_supply"}, w.Serves.Value) {
				all = append(all, residualOf(in, w))
			}
		}
	}
	if len(all) == 0 {
		return working.Unknown("I_Δn", "mA", "/ac/boards")
	}
	return working.Greatest("I_Δn", "mA", all...)
}
