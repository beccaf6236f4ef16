package roof

import (
	"slices"

	"sunclause/facts/working"
	"sunclause/schema"
)

// reason is something about a roof that the installer scheme leaves to a structural
// engineer, and whether it is so here.
type reason struct {
	word string
	so   working.Flag
}

// engineerFacts finds what about the roof the installer scheme leaves to a structural
// engineer, as far as the document shows it. One thing found is enough; that there is
// none is known only when nothing is left out.
func (s *slope) engineerFacts(f *Plane) {
	var found []string
	var flags []working.Flag
	for _, r := range s.engineerReasons() {
		flags = append(flags, r.so)
		if r.so.Known() && r.so.Value() {
			found = append(found, r.word)
		}
	}
	f.EngineerWant, f.EngineerFor = working.Any(flags...), working.List(found...)
	if !f.EngineerWant.Known() {
		f.EngineerFor = working.UnknownList(f.EngineerWant.Missing()...)
	}
}

func (s *slope) engineerReasons() []reason {
	p := s.doc
	drawn := func(kind string) working.Flag {
		return among(p.Edges, p.Member("edges"), func(e schema.RoofEdge) bool { return e.Kind.Is(kind) })
	}
	return []reason{
		{"hips", working.StatedText(s.in.Roof.Shape).OneOf("hipped")},
		{"low pitch", s.below(p.PitchDeg, "engineer_pitch_below_deg")},
		{"altered timber", working.StatedFlag(p.Rafters.Altered)},
		{"valley", working.StatedText(p.BottomEdge).OneOf("valley")},
		{"hips", drawn("hip")},
		{"valley", drawn("valley")},
		{"dormer", among(p.Openings, p.Member("openings"), func(o schema.RoofOpening) bool { return o.Kind.Is("dormer") })},
	}
}

// among reports whether a list of the document holds a part of some kind. A list left
// out could hold one.
func among[T any](list []T, at string, is func(T) bool) working.Flag {
	if list == nil {
		return working.UnknownFlag(at)
	}
	return working.KnownFlag(slices.ContainsFunc(list, is), at)
}
