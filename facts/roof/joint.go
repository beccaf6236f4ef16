package roof

import (
	"cmp"
	"math"
	"slices"

	"sunclause/facts/working"
	"sunclause/schema"
)

// atBreaks looks at the breaks of a rail: their gap, the modules over them, and
// how far the fixings on either side are.
func (s *slope) atBreaks(f *Rail, r *rail, breaks []schema.RailJoint) {
	at := r.doc.Member("joints")
	if len(breaks) == 0 {
		f.JointGapMm, f.BreakFixingMm = working.Unknown("d_gap", "mm", at), working.Unknown("d_fix", "mm", at)
		f.AcrossBreaks = working.Counted("n", 0, at)
		return
	}
	var gaps, ends []working.Number
	across := 0
	for _, j := range breaks {
		gaps = append(gaps, working.Stated("d_gap", "mm", j.GapMm))
		x := working.Sum("x_j", "mm", r.from.As("x_0"), working.Stated("x_j", "mm", j.AtMm))
		ends = append(ends, s.besideBreak(r, x))
		for _, m := range r.modules {
			if from, to, _, _ := r.alongBounds(&s.bounds[m]); from < x.Value() && x.Value() < to {
				across++
			}
		}
	}
	f.JointGapMm, f.BreakFixingMm = working.Least("d_gap", "mm", gaps...), working.Greatest("d_fix", "mm", ends...)
	f.AcrossBreaks = working.Counted("n", across, at)
	if len(r.unplaced) > 0 {
		f.AcrossBreaks = working.Unknown("n", "", r.unplaced...)
	}
}

// besideBreak is the greater of the distances from a break to the next fixing on
// either side: each piece of rail ends there like a free end.
func (s *slope) besideBreak(r *rail, x working.Number) working.Number {
	inputs := []working.Number{x}
	for _, i := range r.fixings {
		inputs = append(inputs, s.fixingAt(r, i))
	}
	f := working.Lookup{Symbol: "d_fix", Unit: "mm", Text: "greater distance from the break to the fixing before and after it", Source: working.ByDefinition}
	return f.Of(func(v ...float64) float64 {
		before, after := math.Inf(1), math.Inf(1)
		for _, fixing := range v[1:] {
			if fixing <= v[0] {
				before = math.Min(before, v[0]-fixing)
			} else {
				after = math.Min(after, fixing-v[0])
			}
		}
		return math.Max(before, after)
	}, inputs...)
}

// countClamps counts the clamps on the rail, and those that its rows of modules
// need: an end clamp at either end of a row and a mid clamp in each gap.
func (s *slope) countClamps(f *Rail, r *rail) {
	at := s.doc.Member("clamps")
	ends, mids := 0, 0
	for i := range s.doc.Clamps {
		if c := &s.doc.Clamps[i]; c.Rail.Is(r.doc.ID.Value) && c.Kind.Is("end") {
			ends++
		} else if c.Rail.Is(r.doc.ID.Value) {
			mids++
		}
	}
	f.EndClamps, f.MidClamps = working.Counted("n_end", ends, at), working.Counted("n_mid", mids, at)
	if missing := s.clampsWithoutRail(); missing != nil {
		f.EndClamps, f.MidClamps = working.Unknown("n_end", "", missing...), working.Unknown("n_mid", "", missing...)
	}
	wide := s.param("row_gap_max_mm", "d_row")
	missing := slices.Concat(r.unplaced, wide.Missing())
	if len(missing) > 0 {
		f.EndClampsDue, f.MidClampsDue = working.Unknown("n_end", "", missing...), working.Unknown("n_mid", "", missing...)
		return
	}
	rows := s.rowsOn(r, wide.Value())
	f.EndClampsDue = working.Counted("n_end", 2*rows, s.doc.Member("modules"))
	f.MidClampsDue = working.Counted("n_mid", len(r.modules)-rows, s.doc.Member("modules"))
}

// clampsWithoutRail names what keeps the clamps from being counted: no list of them, or
// clamps that do not say on which rail they are.
func (s *slope) clampsWithoutRail() []working.Gap {
	if s.doc.Clamps == nil {
		return []working.Gap{working.Unstated(s.doc.Member("clamps"))}
	}
	var missing []working.Gap
	for i := range s.doc.Clamps {
		if c := &s.doc.Clamps[i]; !c.Rail.Stated() && len(missing) < maxNamed {
			missing = append(missing, working.Unstated(c.Rail.At()))
		}
	}
	return missing
}

// rowsOn counts the rows of modules on the rail: a wide gap begins another.
func (s *slope) rowsOn(r *rail, wide float64) int {
	type row struct{ from, to float64 }
	var all []row
	for _, i := range r.modules {
		from, to, _, _ := r.alongBounds(&s.bounds[i])
		all = append(all, row{from, to})
	}
	slices.SortFunc(all, func(a, b row) int { return cmp.Compare(a.from, b.from) })
	rows := 0
	for i := range all {
		if i == 0 || all[i].from-all[i-1].to > wide {
			rows++
		}
	}
	return rows
}
