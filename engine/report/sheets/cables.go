package sheets

import (
	"slices"

	"sunclause/engine/judge"
	"sunclause/facts/working"
)

// cableSheet is the calculation of the runs of cable.
func cableSheet(r *judge.Result) Sheet {
	s := Sheet{Name: "cables", Title: "Runs of cable", Columns: []string{
		"run", "from", "to", "cable", "cross-section", "length", "design current", "capacity, worst stretch", "voltage drop", "live with all isolators open"}}
	in := &r.Document.Installation
	for i := range r.Facts.Runs {
		f, run := &r.Facts.Runs[i], &in.Cables[i]
		sheet := run.Cable.To()
		load := []string{number(f.DesignCurrentA), number(f.CapacityA), number(f.DropV)}
		if slices.Contains([]string{"protective", "bonding", "earthing", "control"}, run.Service.Value) {
			load = []string{"", "", ""} // it carries no current in service
		}
		s.Rows = append(s.Rows, append([]string{
			f.ID, run.From.Value, run.To.Value, sheet.Marking.Value, number(working.Stated("S", "mm²", sheet.CsaMm2)), number(f.LengthM)},
			append(load, flag(f.LiveWithAllOpen))...))
	}
	return s
}

func flag(f working.Flag) string {
	switch {
	case !f.Known():
		return "not known"
	case f.Value():
		return "yes"
	}
	return "no"
}
