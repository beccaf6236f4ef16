package sheets

import "sunclause/engine/judge"

// stringSheet is the calculation of the strings.
func stringSheet(r *judge.Result) Sheet {
	s := Sheet{Name: "strings", Title: "Strings", Columns: []string{
		"string", "modules", "module", "input", "voltage at STC", "maximum voltage", "hottest cells", "voltage at maximum power, hot",
		"short-circuit current at STC", "design current", "current at maximum power", "power"}}
	stated := r.Document.Installation.Strings
	for i := range r.Facts.Strings {
		f := &r.Facts.Strings[i]
		s.Rows = append(s.Rows, []string{
			f.ID, number(f.ModulesInSeries), stated[i].Module.Value, text(f.Mppt), number(f.VocStcV), number(f.VocMaxV), number(f.CellTempMaxC),
			number(f.VmpHotV), number(f.IscStcA), number(f.IscMaxA), number(f.ImpA), number(f.PowerW)})
	}
	return s
}
