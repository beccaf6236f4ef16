package roof

import (
	"sunclause/facts/working"
	"sunclause/schema"
)

func (s *slope) clampFacts() []Clamp {
	all := make([]Clamp, len(s.doc.Clamps))
	torques := s.torques()
	for i := range s.doc.Clamps {
		doc := &s.doc.Clamps[i]
		holds := s.holdsOf(doc)
		all[i] = s.clampOf(doc)
		s.gripFacts(&all[i], holds)
		all[i].ClampPlace = s.clampPlace(doc, holds)
		all[i].UpliftKn = s.upliftOnClamp(doc, holds)
		all[i].TorqueNM = working.Unknown("M", "N·m", "/commissioning/torques")
		if t, ok := torques[doc.ID.Value]; ok {
			all[i].TorqueNM = working.Stated("M", "N·m", t)
		}
	}
	return all
}

// clampOf takes what the clamp and its datasheet state.
func (s *slope) clampOf(doc *schema.Clamp) Clamp {
	sheet := doc.Datasheet.To()
	return Clamp{
		Subject:       working.Subject{ID: doc.ID.Value, At: doc.At(), Name: "clamp " + doc.ID.Value},
		Kind:          working.StatedText(doc.Kind),
		Rail:          working.StatedText(doc.Rail.Text),
		Holds:         working.Counted("n", len(doc.Holds), doc.Member("holds")),
		ResistanceKn:  s.resistance(&sheet.Load, sheet.Load.UpliftKn),
		FitsFromMm:    working.Stated("h_min", "mm", sheet.Clamp.FrameHeightMinMm),
		FitsToMm:      working.Stated("h_max", "mm", sheet.Clamp.FrameHeightMaxMm),
		TorqueMinNM:   working.Stated("M_min", "N·m", sheet.Clamp.TorqueMinNM),
		TorqueMaxNM:   working.Stated("M_max", "N·m", sheet.Clamp.TorqueMaxNM),
		OverlapMm:     working.Stated("o", "mm", doc.OverlapMm),
		FullyOnRail:   working.StatedFlag(doc.FullyOnRail),
		OnGlass:       working.StatedFlag(doc.OnGlass),
		FrameDeformed: working.StatedFlag(doc.FrameDeformed),
	}
}

// gripFacts works out where the clamp grips its modules.
func (s *slope) gripFacts(f *Clamp, holds []clampHold) {
	var sides []string
	var outside, frames []working.Number
	var allowed []working.Flag
	for _, h := range holds {
		fit := h.zoneFit()
		sides, allowed, outside = append(sides, h.side), append(allowed, fit.allowed), append(outside, fit.outside)
		frames = append(frames, working.Stated("h", "mm", h.module.sheet.ThicknessMm))
	}
	f.Sides, f.SideAllowed = working.List(sides...), working.All(allowed...)
	f.OutsideMm = working.Greatest("d_out", "mm", outside...)
	f.FrameMinMm, f.FrameMaxMm = working.Least("h_f", "mm", frames...), working.Greatest("h_f", "mm", frames...)
}

// upliftOnClamp is the load on the clamp: of each module it holds, the share of one
// clamp.
func (s *slope) upliftOnClamp(doc *schema.Clamp, holds []clampHold) working.Number {
	var shares []working.Number
	for _, h := range holds {
		n := working.Counted("n_c", len(s.clamps[h.module.doc.ID.Value]), s.doc.Member("clamps"))
		shares = append(shares, clampUplift.Of(s.param("load_factor_variable", "γ_Q"), h.module.pull, h.module.area, n))
	}
	if len(shares) == 0 {
		return working.Unknown("F_d", "kN", doc.Member("holds"))
	}
	return working.Sum("F_d", "kN", shares...)
}

// torques are the last torques read, by the part that was tightened.
func (s *slope) torques() map[string]schema.Number {
	read := map[string]schema.Number{}
	for _, t := range s.in.Commissioning.Torques {
		read[t.Part.Value] = t.TorqueNM
	}
	return read
}
