package pvstring

import (
	"sunclause/facts/working"
	"sunclause/schema"
)

// mountingDrawn is how the modules of a string stand to the roof by the drawing: apart
// from its pitch on a rack, clear of the covering on the roof, else in it. It is taken
// from the plane on which its modules are drawn; of a string without any, from the one
// that it names.
func mountingDrawn(in *schema.Installation, s *schema.String) working.Text {
	plane := s.Plane.To()
	for i := range in.Roof.Planes {
		for k := range in.Roof.Planes[i].Modules {
			if in.Roof.Planes[i].Modules[k].String.Is(s.ID.Value) {
				plane = &in.Roof.Planes[i]
			}
		}
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
