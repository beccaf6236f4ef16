package implied

import (
	"sunclause/facts/working"
	"sunclause/schema"
)

// edges wants a line for each side of a plane that slopes, for a point in which its
// upper side ends, and for the hips of a hipped roof.
func edges(in *schema.Installation, p *schema.Plane) []want {
	drawn := func(is func(*schema.RoofEdge) bool) working.Flag {
		return working.Among(p.Edges, p.Member("edges"), is)
	}
	anyLine := drawn(func(*schema.RoofEdge) bool { return true })
	var all []want
	for _, side := range []schema.Text{p.LeftEdge, p.RightEdge} {
		if side.Is("sloping") {
			all = append(all, want{"line for the side that slopes", side.At(), anyLine})
		}
	}
	if p.TopEdge.Is("point") {
		all = append(all, want{"line that leads up to the point", p.TopEdge.At(), anyLine})
	}
	if in.Roof.Shape.Is("hipped") {
		all = append(all, want{"hip", in.Roof.Shape.At(), drawn(func(e *schema.RoofEdge) bool { return e.Kind.Is("hip") })})
	}
	return all
}

// penetrations wants one for each run that passes through the roof. One that does not
// say which run goes through could be of any.
func penetrations(in *schema.Installation) []want {
	var all []want
	for i := range in.Cables {
		r := &in.Cables[i]
		for j := range r.Segments {
			if through := r.Segments[j].Passage.Through; through.Is("roof") {
				all = append(all, want{"penetration for run " + r.ID.Value, through.At(), penetrated(in, r.ID.Value)})
			}
		}
	}
	return all
}

func penetrated(in *schema.Installation, run string) working.Flag {
	var some []working.Flag
	for i := range in.Roof.Planes {
		p := &in.Roof.Planes[i]
		some = append(some, working.Among(p.Penetrations, p.Member("penetrations"), func(q *schema.RoofPenetration) bool {
			return q.Run.Value == run || !q.Run.Stated() && (!q.Kind.Stated() || q.Kind.Is("cable") || q.Kind.Is("conduit"))
		}))
	}
	if in.Roof.Planes == nil {
		return working.UnknownFlag(in.Roof.Member("planes"))
	}
	return working.Any(some...)
}
