package roof

import (
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
		return working.Among(p.Edges, p.Member("edges"), func(e *schema.RoofEdge) bool { return e.Kind.Is(kind) })
	}
	return []reason{
		{"hips", working.StatedText(s.in.Roof.Shape).OneOf("hipped")},
		{"low pitch", working.Not(working.AtLeast(s.pitch, s.param("engineer_pitch_below_deg", "α")))},
		{"altered timber", working.StatedFlag(p.Rafters.Altered)},
		{"valley", working.StatedText(p.BottomEdge).OneOf("valley")},
		{"hips", drawn("hip")},
		{"valley", drawn("valley")},
		{"dormer", working.Among(p.Openings, p.Member("openings"), func(o *schema.RoofOpening) bool { return o.Kind.Is("dormer") })},
	}
}
