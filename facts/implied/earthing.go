package implied

import (
	"slices"

	"sunclause/facts/working"
	"sunclause/schema"
)

// frames wants a frame for each string whose modules have one of metal, or may have
// one: what their sheet leaves out is open until a frame carries them.
func frames(in *schema.Installation) []want {
	var all []want
	for i := range in.Strings {
		s := &in.Strings[i]
		framed := s.Module.To().ConductiveFrame
		has := carried(in, s.ID.Value)
		switch {
		case framed.Stated() && !framed.Value:
			continue
		case !framed.Stated() && has.Known() && !has.Value():
			has = working.UnknownFlag(framed.At())
		}
		all = append(all, want{"frame that carries string " + s.ID.Value, framed.At(), has})
	}
	return all
}

// carried reports whether one of the frames carries a string. A frame that does not
// say which strings it carries could carry any.
func carried(in *schema.Installation, id string) working.Flag {
	e := in.Earthing
	if e.Frames == nil {
		return working.UnknownFlag(e.Member("frames"))
	}
	var some []working.Flag
	for i := range e.Frames {
		f := &e.Frames[i]
		some = append(some, working.Among(f.Strings, f.Member("strings"), func(s *schema.Ref[schema.String]) bool { return s.Value == id }))
	}
	return working.Any(some...)
}

// mainBonds wants a main bond where the supply earths through its neutral, since a
// broken neutral then brings its voltage to all that is earthed and not bonded; and
// where a frame touches metal of the building that leads to earth.
func mainBonds(in *schema.Installation) []want {
	e := in.Earthing
	bond := working.Among(e.MainBonds, e.Member("main_bonds"), func(*schema.MainBond) bool { return true })
	var all []want
	if slices.Contains([]string{"TN-C-S", "TN-C"}, e.Arrangement.Value) {
		all = append(all, want{"main bond, for which a supply asks that earths through its neutral", e.Arrangement.At(), bond})
	}
	for i := range e.Frames {
		if touches := e.Frames[i].TouchesBuildingMetal; touches.Value {
			all = append(all, want{"main bond of the metal that frame " + e.Frames[i].ID.Value + " touches", touches.At(), bond})
		}
	}
	return all
}
