package roof

import (
	"sunclause/facts/working"
	"sunclause/schema"
)

// Penetration holds the facts of a place where something goes through the
// covering.
type Penetration struct {
	working.Subject

	InsideMm     working.Number `json:"inside_plane_mm" words:"least distance to the outline of the plane; below zero it lies beyond"`
	Kind         working.Text   `json:"kind" words:"what goes through"`
	Weathering   working.Text   `json:"weathering" words:"what keeps water out"`
	CarriesRun   working.Flag   `json:"carries_run" words:"whether a run of cable is said to go through it"`
	UnderlayFits working.Flag   `json:"underlay_as_covering" words:"whether there is an underlay here as below the rest of the covering"`
	TileFits     working.Flag   `json:"weathering_as_covering" words:"whether what keeps water out goes with the covering: tiles and laps with tiles and slates only"`
	Underlay     working.Text   `json:"underlay" words:"what was done where it goes through the underlay"`
	DripLoop     working.Flag   `json:"drip_loop" words:"whether the cable hangs in a drip loop before it goes in"`
	Pinched      working.Flag   `json:"cable_pinched" words:"whether a tile pinches the cable"`
	FireStopped  working.Flag   `json:"fire_stopped" words:"whether the way through is sealed against fire"`
}

func (s *slope) penetrationFacts() []Penetration {
	all := make([]Penetration, len(s.doc.Penetrations))
	for i := range s.doc.Penetrations {
		p := &s.doc.Penetrations[i]
		here := point(p.XMm, p.YMm)
		all[i] = Penetration{
			InsideMm:     s.inside(&here),
			Subject:      working.Subject{ID: p.ID.Value, At: p.At(), Name: "penetration " + p.ID.Value},
			Kind:         working.StatedText(p.Kind),
			Weathering:   working.StatedText(p.Weathering),
			CarriesRun:   working.KnownFlag(p.Run.Stated(), p.Run.At()),
			UnderlayFits: s.underlayFits(p.Underlay),
			TileFits:     s.weatheringFits(p.Weathering),
			Underlay:     working.StatedText(p.Underlay),
			DripLoop:     working.StatedFlag(p.DripLoop),
			Pinched:      working.StatedFlag(p.CablePinched),
			FireStopped:  working.StatedFlag(p.FireStopped),
		}
	}
	return all
}

// underlayFits reports whether what is said of the underlay at a place agrees with what
// is said of it below the whole covering.
func (s *slope) underlayFits(here schema.Text) working.Flag {
	return same(working.StatedText(here).OneOf("no_underlay"), working.StatedText(s.doc.Covering.Underlay).OneOf("none"))
}

// weatheringFits reports whether what keeps water out goes with the covering.
func (s *slope) weatheringFits(by schema.Text) working.Flag {
	return working.Any(working.Not(working.StatedText(by).OneOf("purpose_made_tile", "under_lap")), s.tiled())
}
