package roof

import (
	"slices"

	"sunclause/facts/working"
	"sunclause/schema"
)

// wantsEngineer finds what about the roof the installer scheme leaves to a
// structural engineer, as far as the document shows it. One thing found is enough;
// that there is none is known only when nothing is left out.
func (s *slope) wantsEngineer(f *Plane) {
	found, missing := s.engineerFor()
	switch {
	case found != nil:
		f.EngineerWant, f.EngineerFor = working.KnownFlag(true, f.At), working.List(found...)
	case missing != nil:
		f.EngineerWant, f.EngineerFor = working.UnknownFlag(missing...), working.UnknownList(missing...)
	default:
		f.EngineerWant, f.EngineerFor = working.KnownFlag(false, f.At), working.List()
	}
}

func (s *slope) engineerFor() (found, missing []string) {
	p, limit := s.doc, s.param("engineer_pitch_below_deg", "α")
	missing = limit.Missing()
	look := func(word, at string, stated, is bool) {
		if is {
			found = append(found, word)
		} else if !stated {
			missing = append(missing, at)
		}
	}
	member := func(word string, m schema.Pointer, is bool) { look(word, m.At(), m.Stated(), is) }
	member("hips", s.in.Roof.Shape.Pointer, s.in.Roof.Shape.Is("hipped"))
	member("low pitch", p.PitchDeg.Pointer, p.PitchDeg.Stated() && p.PitchDeg.Value < limit.Value())
	member("altered timber", p.Rafters.Altered.Pointer, p.Rafters.Altered.Yes())
	member("valley", p.BottomEdge.Pointer, p.BottomEdge.Is("valley"))
	for word, kind := range map[string]string{"hips": "hip", "valley": "valley"} {
		look(word, p.Member("edges"), p.Edges != nil, slices.ContainsFunc(p.Edges, func(e schema.RoofEdge) bool { return e.Kind.Is(kind) }))
	}
	look("dormer", p.Member("openings"), p.Openings != nil, slices.ContainsFunc(p.Openings, func(o schema.RoofOpening) bool { return o.Kind.Is("dormer") }))
	return found, missing
}
