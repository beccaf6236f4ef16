package roof

import (
	"sunclause/facts/working"
	"sunclause/schema"
)

// Cover is the covering of a plane and its state after the work.
type Cover struct {
	Tiled          working.Flag   `json:"tiled" words:"whether the covering is of tiles or slates"`
	Condition      working.Text   `json:"covering_condition" words:"condition of the covering before the work"`
	LifeYr         working.Number `json:"covering_life_yr" words:"years the covering is expected to last"`
	MakerConsulted working.Flag   `json:"covering_maker_consulted" words:"whether the maker of the covering was asked"`
	BrokenLeft     working.Number `json:"tiles_broken_left" words:"broken or cracked tiles left in place"`
	Refixed        working.Flag   `json:"tiles_refixed" words:"whether tiles taken out were fixed back mechanically"`
	CutByDisc      working.Flag   `json:"tiles_cut_by_disc" words:"whether tiles were cut with a disc"`
	GapsSeen       working.Flag   `json:"tiles_gape" words:"whether tiles lift or gape anywhere"`
	UnderlayMended working.Flag   `json:"underlay_repaired" words:"whether damage to the underlay was made good"`
	Photographed   working.Flag   `json:"hooks_photographed" words:"whether hooks and tiles were photographed before the modules covered them"`
}

func (s *slope) cover() Cover {
	c, t := s.doc.Covering, s.doc.TileWork
	return Cover{
		Tiled:          s.tiled(),
		Condition:      working.StatedText(c.Condition),
		LifeYr:         working.Stated("t_life", "a", c.LifeExpectedYr),
		MakerConsulted: working.StatedFlag(c.MakerConsulted),
		BrokenLeft:     working.Stated("n_broken", "", t.BrokenLeft),
		Refixed:        working.StatedFlag(t.RemovedRefixed),
		CutByDisc:      working.StatedFlag(t.CutByDisc),
		GapsSeen:       working.StatedFlag(t.GapsSeen),
		UnderlayMended: working.StatedFlag(t.UnderlayRepaired),
		Photographed:   working.StatedFlag(t.Photographed),
	}
}

// Opening holds the facts of something that comes through a plane or stands on
// it.
type Opening struct {
	working.Subject

	Kind         working.Text   `json:"kind" words:"what it is"`
	ClearanceMm  working.Number `json:"clearance_mm" words:"distance to the nearest module; 0 where a module covers it"`
	Modules      working.Number `json:"modules" words:"modules on the plane"`
	ModulesOver  working.Number `json:"modules_over" words:"modules that lie over it"`
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
		s.around(&all[i], openingBox(o))
	}
	return all
}

// around measures what is free round an opening.
func (s *slope) around(f *Opening, o box) {
	at := s.doc.Member("modules")
	missing := o.missing()
	if s.doc.Modules == nil {
		missing = append(missing, at)
	}
	var nearest *laid
	over := 0
	for i := range s.layout {
		m := &s.layout[i]
		if !m.box.known() {
			missing = append(missing, m.box.missing()...)
			continue
		}
		if roughGap(m.box, o) < 0 {
			over++
		}
		if nearest == nil || apart(m.box, o) < apart(nearest.box, o) {
			nearest = m
		}
	}
	f.ModulesOver = working.Counted("n", over, at)
	f.SideAccessMm = s.beside(o)
	if len(missing) > 0 || nearest == nil {
		missing = append(missing, at)
		f.ClearanceMm = working.Unknown("d", "mm", missing...)
		if len(missing) > 1 {
			f.ModulesOver, f.SideAccessMm = working.Unknown("n", "", missing...), working.Unknown("d", "mm", missing...)
		}
		return
	}
	f.ClearanceMm = distanceOf("d", nearest.box, o)
}

// beside is the free width on the wider side of an opening: to the next module
// at its height, or to the side of the plane.
func (s *slope) beside(o box) working.Number {
	b := s.borders(o)
	f := working.Formula{Symbol: "d_side", Unit: "mm", Text: "greater of the free widths left and right", Source: working.ByDefinition, Lookup: true}
	return f.Of(func(x ...float64) float64 {
		left, right := x[0], x[1]
		for i := range s.layout {
			m := s.layout[i].box
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

// Penetration holds the facts of a place where something goes through the
// covering.
type Penetration struct {
	working.Subject

	Kind        working.Text `json:"kind" words:"what goes through"`
	Weathering  working.Text `json:"weathering" words:"what keeps water out"`
	Underlay    working.Text `json:"underlay" words:"what was done where it goes through the underlay"`
	DripLoop    working.Flag `json:"drip_loop" words:"whether the cable hangs in a drip loop before it goes in"`
	Pinched     working.Flag `json:"cable_pinched" words:"whether a tile pinches the cable"`
	FireStopped working.Flag `json:"fire_stopped" words:"whether the way through is sealed against fire"`
}

func (s *slope) penetrationFacts() []Penetration {
	all := make([]Penetration, len(s.doc.Penetrations))
	for i := range s.doc.Penetrations {
		p := &s.doc.Penetrations[i]
		all[i] = Penetration{
			Subject:     working.Subject{ID: p.ID.Value, At: p.At(), Name: "penetration " + p.ID.Value},
			Kind:        working.StatedText(p.Kind),
			Weathering:  working.StatedText(p.Weathering),
			Underlay:    working.StatedText(p.Underlay),
			DripLoop:    working.StatedFlag(p.DripLoop),
			Pinched:     working.StatedFlag(p.CablePinched),
			FireStopped: working.StatedFlag(p.FireStopped),
		}
	}
	return all
}
