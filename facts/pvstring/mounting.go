package pvstring

import (
	"sunclause/facts/working"
	"sunclause/schema"
)

// planesDrawn are the planes on which the modules of strings are drawn, by the ids of
// the strings.
func planesDrawn(in *schema.Installation) map[string]*schema.Plane {
	planes := map[string]*schema.Plane{}
	for i := range in.Roof.Planes {
		for k := range in.Roof.Planes[i].Modules {
			planes[in.Roof.Planes[i].Modules[k].String.Value] = &in.Roof.Planes[i]
		}
	}
	return planes
}

// mountingDrawn is how the modules of a string stand to the roof by the drawing: apart
// from its pitch on a rack, clear of the covering on the roof, else in it. It is taken
// from the plane on which they are drawn; of a string without any, from the one that it
// names.
func mountingDrawn(drawn map[string]*schema.Plane, s *schema.String) working.Text {
	plane := drawn[s.ID.Value]
	if plane == nil {
		plane = s.Plane.To()
	}
	tilt, gap := plane.TiltToRoofDeg, plane.GapUnderModulesMm
	switch {
	case !tilt.Stated():
		return working.UnknownText(tilt.At())
	case tilt.Value > 0:
		return working.KnownText("tilted_rack", tilt.At())
	case !gap.Stated():
		return working.UnknownText(gap.At())
	case gap.Value > 0:
		return working.KnownText("on_roof", gap.At())
	}
	return working.KnownText("in_roof", gap.At())
}
