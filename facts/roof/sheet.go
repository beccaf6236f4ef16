package roof

import (
	"sunclause/facts/working"
	"sunclause/schema"
)

// Sheet holds the facts of one datasheet of a hook, screw, rail or clamp: how the values
// printed on it go together. It is judged once, however many parts are made to it.
type Sheet struct {
	working.Subject

	Kind             working.Text   `json:"kind" words:"what it is of: hook, screw, rail, end_clamp, …"`
	CoreOverD        working.Number `json:"core_over_diameter" words:"inner over outer diameter of the thread of a screw"`
	HeadOverD        working.Number `json:"head_over_diameter" words:"diameter of the head over that of the thread"`
	ThreadOverLength working.Number `json:"thread_over_length" words:"length of the thread over that of the screw"`
	CoreStress       working.Number `json:"core_strength_n_per_mm2" words:"tensile capacity of a screw over the section of its core"`
	DepthInThread    working.Flag   `json:"depth_within_thread" words:"whether the thread is as long as the depth that the maker asks for, where one is printed"`
	DistancesRise    working.Flag   `json:"distances_in_order" words:"whether the least distances printed rise from edge to spacing to end"`
	SpansFall        working.Flag   `json:"spans_fall_with_load" words:"whether no row of the span table allows more for a greater load"`
	SpanLoadsRatio   working.Number `json:"span_loads_ratio" words:"greatest load over least load within one row of the span table"`
	LoadsRatio       working.Number `json:"loads_ratio" words:"greatest over least of the resistances declared"`
	FreeOverSpan     working.Number `json:"free_end_over_span" words:"longest free end of a rail over its greatest span"`
	TorquesRise      working.Flag   `json:"torques_in_order" words:"whether the lowest torque is not above the highest"`
	FramesRise       working.Flag   `json:"frames_in_order" words:"whether the lowest frame that a clamp fits is not above the highest"`
	OverlapMm        working.Number `json:"overlap_mm" words:"how far a clamp reaches over the frame"`
}

// Formulas of a sheet.
var (
	boltSteel  = working.Source{Document: "EN ISO 898-1, EN ISO 3506-1", How: working.Memory}
	coreStress = working.NewFormula("f_u", "N/mm²", "1000 · f_tens / (3.14159 / 4 · d_1²)", boltSteel)
)

func fixingSheet(id string, doc *schema.FixingDatasheet) Sheet {
	screw, rail, clamp := &doc.Screw, &doc.Rail, &doc.Clamp
	d, core := working.Stated("d", "mm", screw.DiameterMm), working.Stated("d_1", "mm", screw.CoreDiameterMm)
	thread := working.Stated("l_thread", "mm", screw.ThreadLengthMm)
	return Sheet{
		Subject:          working.Subject{ID: id, At: doc.At(), Name: "datasheet " + id},
		Kind:             working.StatedText(doc.Kind),
		CoreOverD:        working.Ratio("d_1/d", core, d),
		HeadOverD:        working.Ratio("d_h/d", working.Stated("d_h", "mm", screw.HeadDiameterMm), d),
		ThreadOverLength: working.Ratio("l_thread/l", thread, working.Stated("l", "mm", screw.LengthMm)),
		CoreStress:       coreStress.Of(working.Stated("f_tens", "kN", screw.TensionKn), core),
		DepthInThread:    inOrder(screw.At(), screw.DepthMinMm, screw.ThreadLengthMm),
		DistancesRise:    inOrder(screw.At(), screw.EdgeDistanceMinMm, screw.SpacingMinMm, screw.EndDistanceMinMm),
		SpansFall:        spansFall(rail),
		SpanLoadsRatio:   spanLoadsRatio(rail),
		LoadsRatio:       loadsRatio(&doc.Load),
		FreeOverSpan:     working.Ratio("c/s", working.Stated("c", "mm", rail.CantileverMaxMm), greatestSpan(rail)),
		TorquesRise:      inOrder(clamp.At(), clamp.TorqueMinNM, clamp.TorqueMaxNM),
		FramesRise:       inOrder(clamp.At(), clamp.FrameHeightMinMm, clamp.FrameHeightMaxMm),
		OverlapMm:        working.Stated("o", "mm", clamp.OverlapMm),
	}
}

// inOrder reports whether of some values of a sheet those that are printed rise. It
// stands at the place of the first that does not, else at that of the whole.
func inOrder(at string, values ...schema.Number) working.Flag {
	var last *schema.Number
	for i := range values {
		v := &values[i]
		if !v.Stated() {
			continue
		}
		if last != nil && v.Value < last.Value {
			return working.KnownFlag(false, v.At())
		}
		last = v
	}
	return working.KnownFlag(true, at)
}

// spansFall reports whether no row of the span table allows a longer span than another
// one whose loads are both no greater.
func spansFall(rail *schema.RailDatasheet) working.Flag {
	at := rail.Member("spans")
	if rail.Spans == nil {
		return working.UnknownFlag(at)
	}
	for i := range rail.Spans {
		for j := range rail.Spans {
			a, b := &rail.Spans[i], &rail.Spans[j]
			if a.UpliftKnPerM.Value >= b.UpliftKnPerM.Value && a.DownKnPerM.Value >= b.DownKnPerM.Value && a.SpanMaxMm.Value > b.SpanMaxMm.Value {
				return working.KnownFlag(false, a.SpanMaxMm.At())
			}
		}
	}
	return working.KnownFlag(true, at)
}

func greatestSpan(rail *schema.RailDatasheet) working.Number {
	var all []working.Number
	for i := range rail.Spans {
		all = append(all, working.Stated("s_row", "mm", rail.Spans[i].SpanMaxMm))
	}
	if all == nil {
		return working.Unknown("s_row", "mm", rail.Member("spans"))
	}
	return working.Greatest("s_row", "mm", all...)
}

// spanLoadsRatio is how far apart the two loads of a row of the span table are, at most.
// One that is zero or not printed does not count.
func spanLoadsRatio(rail *schema.RailDatasheet) working.Number {
	var all []working.Number
	for i := range rail.Spans {
		if row := &rail.Spans[i]; row.UpliftKnPerM.Value > 0 && row.DownKnPerM.Value > 0 {
			all = append(all, apartBy(working.Stated("q_up", "kN/m", row.UpliftKnPerM), working.Stated("q_down", "kN/m", row.DownKnPerM)))
		}
	}
	if all == nil {
		return working.Unknown("q", "", rail.Member("spans"))
	}
	return working.Greatest("q", "", all...)
}

// loadsRatio is how far apart the resistances declared are.
func loadsRatio(load *schema.FixingLoad) working.Number {
	var all []working.Number
	for _, n := range []schema.Number{load.UpliftKn, load.DownKn, load.AlongSlopeKn} {
		if n.Stated() {
			all = append(all, working.Stated("R", "kN", n))
		}
	}
	if all == nil {
		return working.Unknown("q", "", load.At())
	}
	return apartBy(all...)
}

// apartBy is the greatest of some numbers over the least.
func apartBy(all ...working.Number) working.Number {
	return working.Ratio("q", working.Greatest("max", "", all...), working.Least("min", "", all...))
}
