package roof

import (
	"sunclause/facts/working"
	"sunclause/schema"
)

// span measures between the fixings and beyond the last of them.
func (s *slope) span(f *Rail, r *bar) {
	at := s.doc.Member("fixings")
	f.Fixings = working.Counted("n", len(r.fixings), at)
	missing := s.unrailedFixings()
	if missing != nil {
		f.Fixings = working.Unknown("n", "", missing...)
	}
	if missing != nil || len(r.fixings) == 0 {
		missing = append(missing, at)
		f.SpanMm, f.OverhangMm = working.Unknown("s", "mm", missing...), working.Unknown("c", "mm", missing...)
		f.OnRailMm, f.OverhangShare = working.Unknown("c", "mm", missing...), working.Unknown("c_s", "", missing...)
		return
	}
	var spans []working.Number
	less := working.Closure{Symbol: "s", Unit: "mm", Text: "x_b − x_a", Source: working.ByDefinition}
	minus := func(x ...float64) float64 { return x[0] - x[1] }
	for i := 1; i < len(r.fixings); i++ {
		spans = append(spans, less.Of(minus, s.fixingAt(r, r.fixings[i]).As("x_b"), s.fixingAt(r, r.fixings[i-1]).As("x_a")))
	}
	first, last := s.fixingAt(r, r.fixings[0]), s.fixingAt(r, r.fixings[len(r.fixings)-1])
	ends := []working.Number{less.Of(minus, first.As("x_b"), r.from.As("x_a")), less.Of(minus, r.to.As("x_b"), last.As("x_a"))}
	f.OverhangMm, f.OnRailMm = working.Greatest("c", "mm", ends...), working.Least("c", "mm", ends...)
	if len(spans) == 0 {
		f.SpanMm, f.OverhangShare = working.Unknown("s", "mm", at), working.Unknown("c_s", "", at)
		return
	}
	r.shortest = working.Least("s_min", "mm", spans...)
	f.SpanMm = working.Greatest("s", "mm", spans...)
	f.OverhangShare = working.Closure{Symbol: "c_s", Text: "c / s_min", Source: working.ByDefinition}.Of(
		func(x ...float64) float64 { return x[0] / x[1] }, f.OverhangMm, r.shortest)
}

// overhangAllowed is the longest free end that the maker allows, in mm; where the
// sheet prints a share of the span beside it too, the less of the two.
func (s *slope) overhangAllowed(r *bar, sheet *schema.FixingDatasheet) working.Number {
	most := sheetNumber("c_max", "mm", sheet, r.doc.Datasheet.Text, func(s *schema.FixingDatasheet) schema.Number { return s.Rail.CantileverMaxMm })
	if sheet == nil || !sheet.Rail.CantileverMaxFraction.Stated() {
		return most
	}
	shortest := r.shortest
	if shortest.Symbol() == "" {
		shortest = working.Unknown("s_min", "mm", s.doc.Member("fixings"))
	}
	share := working.Closure{Symbol: "c_share", Unit: "mm", Text: "c_sheet · s_min", Source: working.Source{Document: "datasheet of the rail", How: working.Read}}.Of(
		func(x ...float64) float64 { return x[0] * x[1] }, working.Stated("c_sheet", "", sheet.Rail.CantileverMaxFraction), shortest)
	return working.Least("c_max", "mm", most, share)
}

// unrailedFixings names what keeps the fixings of a rail from being known: no
// list of them, or some that say neither rail nor module.
func (s *slope) unrailedFixings() []string {
	if s.doc.Fixings == nil {
		return []string{s.doc.Member("fixings")}
	}
	var missing []string
	for i := range s.doc.Fixings {
		if f := &s.doc.Fixings[i]; !f.Rail.Stated() && !f.Module.Stated() && len(missing) < enough {
			missing = append(missing, f.Rail.At())
		}
	}
	return missing
}

// spanAllowed takes from the maker's table the largest span of those rows that
// hold for the load on the rail. A table has no answer beyond its rows.
func (s *slope) spanAllowed(f *Rail, r *bar, sheet *schema.FixingDatasheet) working.Number {
	if sheet == nil {
		return working.Unknown("s_max", "mm", r.doc.Datasheet.At())
	}
	up, dn := f.UpliftKnM, f.DownKnM
	if missing := append(up.Missing(), dn.Missing()...); len(missing) > 0 {
		return working.Unknown("s_max", "mm", missing...)
	}
	var rows []working.Number
	for _, row := range sheet.Rail.Spans {
		covers := row.UpliftKnPerM.Stated() && row.DownKnPerM.Stated() && row.UpliftKnPerM.Value >= up.Value() && row.DownKnPerM.Value >= dn.Value()
		if covers {
			rows = append(rows, working.Stated("s_row", "mm", row.SpanMaxMm))
		}
	}
	if len(rows) == 0 {
		return working.Unknown("s_max", "mm", sheet.Rail.Member("spans"))
	}
	return working.Greatest("s_max", "mm", rows...)
}
