package roof

import (
	"fmt"
	"slices"

	"sunclause/facts/working"
	"sunclause/schema"
)

var overhangRule = working.NewFormula("c_share", "mm", "c_sheet · s_min", working.Source{Document: "datasheet of the rail", How: working.Read})

// spans measures between the fixings and beyond the last of them.
func (s *slope) spans(f *Rail, r *rail) {
	at := s.doc.Member("fixings")
	f.Fixings = working.Counted("n", len(r.fixings), at)
	missing := s.fixingsWithoutRail()
	if missing != nil {
		f.Fixings = working.Unknown("n", "", missing...)
	}
	if missing != nil || len(r.fixings) == 0 {
		missing = append(missing, working.Unstated(at))
		f.SpanMm, f.OverhangMm = working.Unknown("s", "mm", missing...), working.Unknown("c", "mm", missing...)
		f.OnRailMm, f.OverhangShare = working.Unknown("c", "mm", missing...), working.Unknown("c_s", "", missing...)
		return
	}
	var spans []working.Number
	for i := 1; i < len(r.fixings); i++ {
		spans = append(spans, distanceAlong(s.fixingAt(r, r.fixings[i]), s.fixingAt(r, r.fixings[i-1])))
	}
	first, last := s.fixingAt(r, r.fixings[0]), s.fixingAt(r, r.fixings[len(r.fixings)-1])
	ends := []working.Number{distanceAlong(first, r.from), distanceAlong(r.to, last)}
	f.OverhangMm, f.OnRailMm = working.Greatest("c", "mm", ends...), working.Least("c", "mm", ends...)
	if len(spans) == 0 {
		f.SpanMm, f.OverhangShare = working.Unknown("s", "mm", at), working.Unknown("c_s", "", at)
		return
	}
	r.shortest = working.Least("s_min", "mm", spans...)
	f.SpanMm = working.Greatest("s", "mm", spans...)
	f.OverhangShare = working.Ratio("c_s", f.OverhangMm, r.shortest)
}

// distanceAlong is the distance along a rail from one point of it to a further one.
func distanceAlong(to, from working.Number) working.Number {
	return working.Difference("s", "mm", to.As("x_b"), from.As("x_a"))
}

// overhangAllowed is the longest free end that the maker allows, in mm; where the
// sheet prints a share of the span beside it too, the less of the two.
func (s *slope) overhangAllowed(r *rail, sheet *schema.RailDatasheet) working.Number {
	most := working.Stated("c_max", "mm", sheet.CantileverMaxMm)
	if !sheet.CantileverMaxFraction.Stated() {
		return most
	}
	shortest := r.shortest
	if shortest.Symbol() == "" {
		shortest = working.Unknown("s_min", "mm", s.doc.Member("fixings"))
	}
	share := overhangRule.Of(working.Stated("c_sheet", "", sheet.CantileverMaxFraction), shortest)
	return working.Least("c_max", "mm", most, share)
}

// fixingsWithoutRail names what keeps the fixings of a rail from being known: no
// list of them, or some that say neither rail nor module.
func (s *slope) fixingsWithoutRail() []working.Gap {
	if s.doc.Fixings == nil {
		return []working.Gap{working.Unstated(s.doc.Member("fixings"))}
	}
	var missing []working.Gap
	for i := range s.doc.Fixings {
		if f := &s.doc.Fixings[i]; !f.Rail.Stated() && !f.Module.Stated() && len(missing) < maxNamed {
			missing = append(missing, working.Unstated(f.Rail.At()))
		}
	}
	return missing
}

// spanAllowed takes from the maker's table the largest span of those rows that
// hold for the load on the rail. A table has no answer beyond its rows.
func spanAllowed(f *Rail, sheet *schema.RailDatasheet) working.Number {
	up, dn := f.UpliftKnM, f.DownKnM
	missing := slices.Concat(up.Missing(), dn.Missing())
	if sheet.Spans == nil {
		missing = append(missing, working.Unstated(sheet.Member("spans")))
	}
	if len(missing) > 0 {
		return working.Unknown("s_max", "mm", missing...)
	}
	var rows []working.Number
	for _, row := range sheet.Spans {
		covers := row.UpliftKnPerM.Stated() && row.DownKnPerM.Stated() && row.UpliftKnPerM.Value >= up.Value() && row.DownKnPerM.Value >= dn.Value()
		if covers {
			rows = append(rows, working.Stated("s_row", "mm", row.SpanMaxMm))
		}
	}
	if len(rows) == 0 {
		loads := fmt.Sprintf("row for %.2f kN/m away from the roof and %.2f kN/m towards it", up.Value(), dn.Value())
		return working.Unknown("s_max", "mm", working.OffList(sheet.Member("spans"), loads))
	}
	return working.Greatest("s_max", "mm", rows...)
}
