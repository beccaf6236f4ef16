package sheets

import (
	"strings"

	"sunclause/engine/judge"
	"sunclause/facts/circuit"
	"sunclause/facts/working"
)

// openNote says what the last column means, and what it must not be taken for.
const openNote = "\"Live with all isolators open\" is by the description alone: strings in daylight, batteries, the supply and what an inverter passes on. " +
	"Main switches and circuit-breakers of boards count as closed. It is no proof: prove each conductor dead before work, and expect charge that is left in inverters."

// cableSheet is the calculation of the runs of cable.
func cableSheet(r *judge.Result) Sheet {
	s := Sheet{Name: "cables", Title: "Runs of cable", Notes: []string{openNote}, Columns: []string{
		"run", "from", "to", "cable", "cross-section", "length", "design current", "capacity, worst stretch", "voltage drop", "live with all isolators open"}}
	in := &r.Document.Installation
	for i := range r.Facts.Runs {
		f, run := &r.Facts.Runs[i], &in.Cables[i]
		sheet := run.Cable.To()
		figures := []string{number(f.DesignCurrentA), number(f.CapacityA), number(f.DropV), fed(f.FedWithAllOpen)}
		if power := f.Service.OneOf(circuit.PowerServices...); power.Known() && !power.Value() {
			figures = []string{"", "", "", ""} // it carries no current in service
		}
		s.Rows = append(s.Rows, append([]string{
			f.ID, run.From.Value, run.To.Value, sheet.Marking.Value, number(working.Stated("S", "mm²", sheet.CsaMm2)), number(f.LengthM)},
			figures...))
	}
	return s
}

// fed says what keeps a run live once every isolator is open.
func fed(f working.Names) string {
	switch {
	case !f.Known():
		return "not known: take it as live"
	case len(f.Values()) == 0:
		return "no"
	}
	var by []string
	for _, source := range f.Values() {
		by = append(by, fedWords[source])
	}
	return "yes: " + strings.Join(by, ", ")
}

// fedWords say of each source how it keeps a run live.
var fedWords = map[string]string{
	circuit.ByDaylight: "in daylight",
	circuit.ByBattery:  "from the battery",
	circuit.ByInverter: "through the inverter",
	circuit.BySupply:   "from the supply",
}
