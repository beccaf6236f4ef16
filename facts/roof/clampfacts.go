package roof

import (
	"sunclause/facts/working"
	"sunclause/schema"
)

func (s *slope) clampFacts() []Clamp {
	all := make([]Clamp, len(s.doc.Clamps))
	torques := s.torques()
	byHold := map[*schema.ClampHold]grip{}
	for _, list := range s.clamps {
		for _, g := range list {
			byHold[g.hold] = g
		}
	}
	for i := range s.doc.Clamps {
		doc := &s.doc.Clamps[i]
		all[i] = s.clampOf(doc)
		var own []grip
		for j := range doc.Holds {
			if g, ok := byHold[&doc.Holds[j]]; ok {
				own = append(own, g)
			}
		}
		s.sit(&all[i], doc, own)
		s.pull(&all[i], own)
		all[i].TorqueNM = working.Unknown("M", "N·m", "/commissioning/torques")
		if t, ok := torques[doc.ID.Value]; ok {
			all[i].TorqueNM = working.Stated("M", "N·m", t)
		}
	}
	return all
}

// clampOf takes what the clamp and its datasheet state.
func (s *slope) clampOf(doc *schema.Clamp) Clamp {
	sheet := s.fixingSheet(doc.Datasheet.Text)
	f := Clamp{
		Subject:       working.Subject{ID: doc.ID.Value, At: doc.At(), Name: "clamp " + doc.ID.Value},
		Kind:          working.StatedText(doc.Kind),
		Rail:          working.StatedText(doc.Rail.Text),
		Holds:         working.Counted("n", len(doc.Holds), doc.Member("holds")),
		ResistanceKn:  s.resistance("F_Rd", sheet, doc.Datasheet.Text, uplift),
		FitsFromMm:    sheetNumber("h_min", "mm", sheet, doc.Datasheet.Text, func(s *schema.FixingDatasheet) schema.Number { return s.Clamp.FrameHeightMinMm }),
		FitsToMm:      sheetNumber("h_max", "mm", sheet, doc.Datasheet.Text, func(s *schema.FixingDatasheet) schema.Number { return s.Clamp.FrameHeightMaxMm }),
		TorqueMinNM:   sheetNumber("M_min", "N·m", sheet, doc.Datasheet.Text, func(s *schema.FixingDatasheet) schema.Number { return s.Clamp.TorqueMinNM }),
		TorqueMaxNM:   sheetNumber("M_max", "N·m", sheet, doc.Datasheet.Text, func(s *schema.FixingDatasheet) schema.Number { return s.Clamp.TorqueMaxNM }),
		OverlapMm:     working.Stated("o", "mm", doc.OverlapMm),
		FullyOnRail:   working.StatedFlag(doc.FullyOnRail),
		OnGlass:       working.StatedFlag(doc.OnGlass),
		FrameDeformed: working.StatedFlag(doc.FrameDeformed),
	}
	return f
}

// sit works out where the clamp grips its modules.
func (s *slope) sit(f *Clamp, doc *schema.Clamp, grips []grip) {
	var sides []string
	var outside, off, frames []working.Number
	f.SideAllowed = working.KnownFlag(true, doc.At())
	rail := s.barOf(doc.Rail.Text)
	for _, g := range grips {
		sides = append(sides, g.side())
		out, _, _, allowed, missing := g.place()
		if missing != nil {
			out = working.Unknown("d_out", "mm", missing...)
			f.SideAllowed = working.UnknownFlag(missing...)
		} else if !allowed {
			f.SideAllowed = working.KnownFlag(false, g.hold.Side.At())
		}
		outside = append(outside, out)
		frames = append(frames, working.Stated("h", "mm", g.module.sheet.ThicknessMm))
		if rail == nil {
			off = append(off, working.Unknown("d_rail", "mm", doc.Rail.At()))
		} else {
			off = append(off, s.offRail(g, rail))
		}
	}
	f.Sides = working.List(sides...)
	f.OutsideMm, f.OffRailMm = working.Greatest("d_out", "mm", outside...), working.Greatest("d_rail", "mm", off...)
	f.FrameMinMm, f.FrameMaxMm = working.Least("h_f", "mm", frames...), working.Greatest("h_f", "mm", frames...)
}

// pull is the load on the clamp: of each module it holds, the share of one clamp.
func (s *slope) pull(f *Clamp, grips []grip) {
	var shares []working.Number
	for _, g := range grips {
		n := working.Counted("n_c", len(s.clamps[g.module.doc.ID.Value]), s.doc.Member("clamps"))
		share := working.Closure{Symbol: "F_m", Unit: "kN", Text: "γ_Q · w_pull / 1000 · A / n_c", Source: combination}
		shares = append(shares, share.Of(func(x ...float64) float64 { return x[0] * x[1] / 1000 * x[2] / x[3] },
			s.param("load_factor_variable", "γ_Q"), g.module.pull, g.module.area, n))
	}
	f.UpliftKn = working.Sum("F_d", "kN", shares...)
	if len(shares) == 0 {
		f.UpliftKn = working.Unknown("F_d", "kN", f.At+"/holds")
	}
}

// torques are the last torques read, by the part that was tightened.
func (s *slope) torques() map[string]schema.Number {
	read := map[string]schema.Number{}
	for _, t := range s.in.Commissioning.Torques {
		read[t.Part.Value] = t.TorqueNM
	}
	return read
}

// sheetNumber takes a number of a datasheet, or names the reference to it as
// what is missing.
func sheetNumber(symbol, unit string, sheet *schema.FixingDatasheet, ref schema.Text, of func(*schema.FixingDatasheet) schema.Number) working.Number {
	if sheet == nil {
		return working.Unknown(symbol, unit, ref.At())
	}
	return working.Stated(symbol, unit, of(sheet))
}

// sheetFlag does for a flag what sheetNumber does for a number.
func sheetFlag(sheet *schema.FixingDatasheet, ref schema.Text, of func(*schema.FixingDatasheet) schema.Flag) working.Flag {
	if sheet == nil {
		return working.UnknownFlag(ref.At())
	}
	return working.StatedFlag(of(sheet))
}
