package roof

import (
	"math"
	"slices"

	"sunclause/facts/working"
	"sunclause/schema"
)

// Opening holds the facts of something that comes through a plane or stands on
// it.
type Opening struct {
	working.Subject

	Kind         working.Text   `json:"kind" words:"what it is"`
	ClearanceMm  working.Number `json:"clearance_mm" words:"distance to the nearest module; 0 where a module covers it"`
	Modules      working.Number `json:"modules" words:"modules on the plane"`
	ModulesOver  working.Number `json:"modules_over" words:"modules that lie over it"`
	LeastMm      working.Number `json:"shorter_side_mm" words:"shorter of its width and length"`
	GreatestMm   working.Number `json:"longer_side_mm" words:"longer of its width and length"`
	InsideMm     working.Number `json:"inside_plane_mm" words:"least distance to the outline of the plane; below zero it reaches beyond"`
	Overlaps     working.Number `json:"openings_in_its_place" words:"other openings that lie where it does"`
	Rafters      working.Number `json:"rafters_through_it" words:"rafters that run through it though it fits between two of them"`
	SideAccessMm working.Number `json:"side_access_mm" words:"free width beside it, on the wider of left and right"`
	Opens        working.Flag   `json:"opens" words:"whether it opens"`
	InUse        working.Flag   `json:"in_use" words:"whether a chimney, flue or vent is in use"`
}

// openingBox is the place of an opening. A size that is not stated is missing.
func openingBox(o *schema.RoofOpening) box {
	return rectangle(o.XMm, o.YMm, working.Stated("w", "mm", o.WidthMm), working.Stated("l", "mm", o.LengthMm))
}

func (s *slope) openingFacts() []Opening {
	all := make([]Opening, len(s.doc.Openings))
	for i := range s.doc.Openings {
		o := &s.doc.Openings[i]
		all[i] = Opening{
			Subject: working.Subject{ID: o.ID.Value, At: o.At(), Name: "opening " + o.ID.Value},
			Kind:    working.StatedText(o.Kind), Opens: working.StatedFlag(o.Opens), InUse: working.StatedFlag(o.InUse),
			Modules: s.dead.Modules,
		}
		b := openingBox(o)
		s.around(&all[i], &b)
		s.openingPlace(&all[i], i, &b)
	}
	return all
}

// openingPlace measures an opening against the plane, the other openings and the
// rafters.
func (s *slope) openingPlace(f *Opening, i int, b *box) {
	f.InsideMm = s.inside(b)
	width, length := working.Stated("w", "mm", s.doc.Openings[i].WidthMm), working.Stated("l", "mm", s.doc.Openings[i].LengthMm)
	f.LeastMm, f.GreatestMm = working.Least("a_min", "mm", width, length), working.Greatest("a_max", "mm", width, length)
	flat := b.bounds()
	var overlaps []working.Flag
	for j := range s.doc.Openings {
		if other := openingBox(&s.doc.Openings[j]); i == j {
			continue
		} else if missing := slices.Concat(b.missing(), other.missing()); len(missing) > 0 {
			overlaps = append(overlaps, working.UnknownFlag(missing...))
		} else {
			there := other.bounds()
			overlaps = append(overlaps, working.KnownFlag(flat.gap(&there) < 0, s.doc.Openings[j].At()))
		}
	}
	f.Overlaps = working.Count("n", s.doc.Member("openings"), overlaps...)
	f.Rafters = s.raftersThrough(b)
}

// raftersThrough counts the rafters that run through an opening narrow enough to lie
// between two of them. A wider one cuts rafters in any case. What lies on a frame of
// steel, or beside timbers that are stated one by one, is not looked at.
func (s *slope) raftersThrough(b *box) working.Number {
	r := s.doc.Rafters
	if len(r.Lines) > 0 || s.timbersRun().Value() != "up_slope" || r.Structure.Is("steel_frame") || r.Structure.Is("concrete_deck") {
		return working.Counted("n_r", 0, r.At())
	}
	f := working.Lookup{Symbol: "n_r", Text: "rafters through an opening that fits between two", Source: working.ByDefinition}
	return f.Of(func(x ...float64) float64 {
		left, right, first, spacing, width, count := x[0], x[1], x[2], x[3], x[4], x[5]
		if right-left > spacing-width {
			return 0
		}
		through := 0.0
		for k := math.Ceil((left - width/2 - first) / spacing); k < count && first+k*spacing < right+width/2; k++ {
			if k >= 0 && first+k*spacing > left-width/2 {
				through++
			}
		}
		return through
	}, b.left, b.right, working.Stated("x_0", "mm", r.FirstMm), working.Stated("s_r", "mm", r.SpacingMm), working.Stated("b", "mm", r.WidthMm), working.Stated("n", "", r.Count))
}

// around measures what is free round an opening.
func (s *slope) around(f *Opening, o *box) {
	at := s.doc.Member("modules")
	missing := o.missing()
	if s.doc.Modules == nil {
		missing = append(missing, working.Unstated(at))
	}
	var nearest *placedModule
	over := 0
	for i := range s.layout {
		m := &s.layout[i]
		if !m.box.known() {
			missing = append(missing, m.box.missing()...)
			continue
		}
		if flat := o.bounds(); s.bounds[i].gap(&flat) < 0 {
			over++
		}
		if nearest == nil || apart(&m.box, o) < apart(&nearest.box, o) {
			nearest = m
		}
	}
	f.ModulesOver = working.Counted("n", over, at)
	f.SideAccessMm = s.beside(o)
	if len(missing) > 0 || nearest == nil {
		missing = append(missing, working.Unstated(at))
		f.ClearanceMm = working.Unknown("d", "mm", missing...)
		if len(missing) > 1 {
			f.ModulesOver, f.SideAccessMm = working.Unknown("n", "", missing...), working.Unknown("d", "mm", missing...)
		}
		return
	}
	f.ClearanceMm = distanceOf("d", &nearest.box, o)
}

// beside is the free width on the wider side of an opening: to the next module
// at its height, or to the side of the plane.
func (s *slope) beside(o *box) working.Number {
	b := s.borders(o)
	f := working.Lookup{Symbol: "d_side", Unit: "mm", Text: "greater of the free widths left and right", Source: working.ByDefinition}
	return f.Of(func(x ...float64) float64 {
		left, right := x[0], x[1]
		for i := range s.layout {
			m := &s.layout[i].box
			if m.bottom.Value() >= o.top.Value() || m.top.Value() <= o.bottom.Value() {
				continue
			}
			if m.right.Value() <= o.left.Value() {
				left = min(left, o.left.Value()-m.right.Value())
			} else if m.left.Value() >= o.right.Value() {
				right = min(right, m.left.Value()-o.right.Value())
			}
		}
		return max(left, right)
	}, b.left, b.right)
}
