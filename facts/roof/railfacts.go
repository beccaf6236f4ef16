package roof

import (
	"math"
	"slices"

	"sunclause/facts/working"
	"sunclause/schema"
)

// Rail holds the facts of one rail.
type Rail struct {
	working.Subject
	RailPlace

	CarriedBy     working.Text   `json:"carried_by" words:"what carries it: fixings or rails_below"`
	Modules       working.Number `json:"modules" words:"modules on it"`
	Fixings       working.Number `json:"fixings" words:"fixings that hold it"`
	SpanMm        working.Number `json:"span_mm" words:"greatest distance between two fixings"`
	SpanAllowedMm working.Number `json:"span_allowed_mm" words:"largest span of the maker's table for the load on it"`
	OverhangMm    working.Number `json:"overhang_mm" words:"longest free end beyond the last fixing"`
	OnRailMm      working.Number `json:"fixings_inside_mm" words:"least distance of a fixing from the ends of the rail; below zero it stands beyond"`
	OverhangShare working.Number `json:"overhang_over_span" words:"longest free end over the least span"`
	OverhangMaxMm working.Number `json:"overhang_allowed_mm" words:"longest free end that the maker allows"`
	UpliftKnM     working.Number `json:"uplift_kn_per_m" words:"design line load away from the roof"`
	DownKnM       working.Number `json:"down_kn_per_m" words:"design line load towards the roof"`
	BeyondMm      working.Number `json:"end_beyond_modules_mm" words:"least length of rail beyond the outermost module"`
	EndMinMm      working.Number `json:"end_beyond_clamp_min_mm" words:"length beyond the end clamp that the maker asks for"`
	Breaks        working.Number `json:"breaks" words:"joints that let it move: sliding or open"`
	UnbrokenM     working.Number `json:"unbroken_m" words:"longest piece without a break"`
	UnbrokenMaxM  working.Number `json:"unbroken_max_m" words:"longest piece without a break that the maker allows"`
	ExpansionMm   working.Number `json:"expansion_mm" words:"change of the longest piece over the range of temperature"`
	JointGapMm    working.Number `json:"joint_gap_mm" words:"least gap at a break"`
	GapDueMm      working.Number `json:"joint_gap_due_mm" words:"gap that a break has to have: what the rail grows by, or what its maker asks for if that is more"`
	AcrossBreaks  working.Number `json:"modules_across_breaks" words:"modules that lie over a break"`
	BreakFixingMm working.Number `json:"break_to_fixing_mm" words:"greatest distance from a break to the fixing on either side"`
	EndClamps     working.Number `json:"end_clamps" words:"end clamps on it"`
	EndClampsDue  working.Number `json:"end_clamps_due" words:"end clamps that its rows of modules need: two a row"`
	MidClamps     working.Number `json:"mid_clamps" words:"mid clamps on it"`
	MidClampsDue  working.Number `json:"mid_clamps_due" words:"mid clamps that its rows of modules need: one a gap"`
}

// Formulas of a rail: what it carries on a metre, and what it grows by in the warmth.
var (
	lineOfArea    = working.NewFormula("p_line", "kN/m", "p · t / 1000", statics)
	thermalGrowth = working.NewFormula("ΔL", "mm", "α_T · L · ΔT / 1000", working.Source{Document: "thermal expansion", How: working.Definition})
)

func (s *slope) railFacts() []Rail {
	all := make([]Rail, len(s.rails))
	for i := range s.rails {
		r := &s.rails[i]
		sheet := &r.doc.Datasheet.To().Rail
		f := Rail{
			Subject:      working.Subject{ID: r.doc.ID.Value, At: r.doc.At(), Name: "rail " + r.doc.ID.Value},
			CarriedBy:    working.StatedText(r.doc.CarriedBy),
			EndMinMm:     working.Stated("c_end", "mm", sheet.EndBeyondClampMinMm),
			UnbrokenMaxM: working.Stated("L_max", "m", sheet.ContinuousMaxM),
		}
		f.RailPlace = s.railPlace(i)
		s.railLoads(&f, r)
		s.spans(&f, r)
		f.OverhangMaxMm = s.overhangAllowed(r, sheet)
		s.expansion(&f, r, sheet)
		s.countClamps(&f, r)
		f.SpanAllowedMm = spanAllowed(&f, sheet)
		all[i] = f
	}
	return all
}

// railLoads works out what lies on the rail.
func (s *slope) railLoads(f *Rail, r *rail) {
	at := s.doc.Member("modules")
	f.Modules = working.Counted("n", len(r.modules), at)
	if len(r.unplaced) > 0 {
		f.Modules = working.Unknown("n", "", r.unplaced...)
	}
	missing := slices.Concat(r.unplaced, r.layers)
	if len(missing) > 0 || len(r.modules) == 0 {
		missing = append(missing, working.Unstated(at))
		f.UpliftKnM, f.DownKnM = working.Unknown("w_d", "kN/m", missing...), working.Unknown("p_d", "kN/m", missing...)
	} else {
		f.UpliftKnM = working.Greatest("w_d", "kN/m", r.line...)
		f.DownKnM = lineLoad(s.areal.Down, r)
	}
	var beyond []working.Number
	for _, j := range r.modules {
		from, to, _, _ := r.along(&s.layout[j].box)
		beyond = append(beyond, working.Difference("c_end", "mm", from.As("x_a"), r.from.As("x_b")), working.Difference("c_end", "mm", r.to.As("x_a"), to.As("x_b")))
	}
	f.BeyondMm = working.Least("c_end", "mm", beyond...)
	if len(beyond) == 0 {
		f.BeyondMm = working.Unknown("c_end", "mm", append(missing, working.Unstated(at))...)
	}
}

// unplaced names what keeps it from being known where the modules lie.
func (s *slope) unplaced() []working.Gap {
	var missing []working.Gap
	if s.doc.Modules == nil {
		missing = append(missing, working.Unstated(s.doc.Member("modules")))
	}
	for i := range s.layout {
		if b := &s.layout[i].box; !b.known() && len(missing) < maxNamed {
			missing = append(missing, b.missing()...)
		}
	}
	return missing
}

// lineLoad is a load on a square metre of modules as a load on a metre of rail.
func lineLoad(areal working.Number, r *rail) working.Number {
	return lineOfArea.Of(areal.For("p"), working.Greatest("t", "mm", r.width...))
}

// expansion works out the joints: what the rail grows by, and whether they let it.
func (s *slope) expansion(f *Rail, r *rail, sheet *schema.RailDatasheet) {
	if at := r.doc.Member("joints"); r.doc.Joints == nil {
		f.jointsUnknown(at)
		return
	}
	var breaks []schema.RailJoint
	for _, j := range r.doc.Joints {
		if !j.Kind.Stated() {
			f.jointsUnknown(j.Kind.At())
			return
		}
		if !j.Kind.Is("rigid") {
			breaks = append(breaks, j)
		}
	}
	f.Breaks = working.Counted("n", len(breaks), r.doc.Member("joints"))
	f.UnbrokenM = unbroken(r, breaks)
	rate := working.Stated("α_T", "µm/(m·K)", sheet.ExpansionUmPerMPerK)
	f.ExpansionMm = thermalGrowth.Of(rate, f.UnbrokenM, s.param("rail_temperature_range_k", "ΔT"))
	f.GapDueMm = f.ExpansionMm
	if sheet.ExpansionGapMinMm.Stated() {
		f.GapDueMm = working.Greatest("d_due", "mm", f.ExpansionMm, working.Stated("d_sheet", "mm", sheet.ExpansionGapMinMm))
	}
	s.atBreaks(f, r, breaks)
}

// jointsUnknown leaves what hangs on the joints unknown.
func (f *Rail) jointsUnknown(at string) {
	for _, n := range []*working.Number{&f.Breaks, &f.UnbrokenM, &f.ExpansionMm, &f.JointGapMm, &f.GapDueMm, &f.AcrossBreaks, &f.BreakFixingMm} {
		*n = working.Unknown("n", "", at)
	}
}

// unbroken is the longest piece of rail between two breaks or ends.
func unbroken(r *rail, breaks []schema.RailJoint) working.Number {
	f := working.Lookup{Symbol: "L", Unit: "m", Text: "longest of the pieces between the breaks / 1000", Source: working.ByDefinition}
	inputs := []working.Number{working.Stated("l_rail", "mm", r.doc.LengthMm)}
	for _, j := range breaks {
		inputs = append(inputs, working.Stated("x_j", "mm", j.AtMm))
	}
	return f.Of(func(x ...float64) float64 {
		longest := 0.0
		for i := range x { // from each break, or the start, to the next, or the end
			from := 0.0
			if i > 0 {
				from = x[i]
			}
			next := x[0]
			for _, to := range x[1:] {
				if to > from {
					next = math.Min(next, to)
				}
			}
			longest = math.Max(longest, next-from)
		}
		return longest / 1000
	}, inputs...)
}
