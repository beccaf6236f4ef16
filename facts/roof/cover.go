package roof

import (
	"slices"
	"strings"

	"sunclause/facts/book"
	"sunclause/facts/working"
)

// Cover is the covering of a plane and its state after the work.
type Cover struct {
	FireClass      working.Text   `json:"fire_class" words:"fire class of the modules with their mounting on this covering"`
	FireClassDue   working.Text   `json:"fire_class_required" words:"fire class that the roof needs"`
	Kind           working.Text   `json:"covering" words:"kind of covering"`
	Material       working.Text   `json:"covering_material" words:"what the covering is made of"`
	MaterialFits   working.Flag   `json:"covering_material_fits" words:"whether such a covering is made of that"`
	MassKgM2       working.Number `json:"covering_kg_per_m2" words:"mass of the covering on a square metre of slope"`
	ProfileMm      working.Number `json:"covering_profile_mm" words:"height of the profile of the covering"`
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
		FireClass:      working.StatedText(s.doc.FireClass),
		FireClassDue:   working.StatedText(s.doc.FireClassRequired),
		Kind:           working.StatedText(c.Kind),
		Material:       working.StatedText(c.Material),
		MaterialFits:   s.materialFits(),
		MassKgM2:       working.Stated("m_c", "kg/m²", c.MassKgPerM2),
		ProfileMm:      working.Stated("h_profile", "mm", c.ProfileHeightMm),
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

// materialFits reports whether a covering of the kind may be made of the material.
func (s *slope) materialFits() working.Flag {
	c := s.doc.Covering
	words := s.book.Pick("coverings", book.Is("kind", working.StatedText(c.Kind))).Word("materials")
	switch {
	case !c.Material.Stated():
		return working.UnknownFlag(c.Material.At())
	case !words.Known():
		return working.UnknownFlag(words.Missing()...)
	}
	return working.KnownFlag(slices.Contains(strings.Fields(words.Value()), c.Material.Value), c.Material.At())
}
