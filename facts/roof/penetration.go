package roof

import "sunclause/facts/working"

// Penetration holds the facts of a place where something goes through the
// covering.
type Penetration struct {
	working.Subject

	InsideMm    working.Number `json:"inside_plane_mm" words:"least distance to the outline of the plane; below zero it lies beyond"`
	Kind        working.Text   `json:"kind" words:"what goes through"`
	Weathering  working.Text   `json:"weathering" words:"what keeps water out"`
	Underlay    working.Text   `json:"underlay" words:"what was done where it goes through the underlay"`
	DripLoop    working.Flag   `json:"drip_loop" words:"whether the cable hangs in a drip loop before it goes in"`
	Pinched     working.Flag   `json:"cable_pinched" words:"whether a tile pinches the cable"`
	FireStopped working.Flag   `json:"fire_stopped" words:"whether the way through is sealed against fire"`
}

func (s *slope) penetrationFacts() []Penetration {
	all := make([]Penetration, len(s.doc.Penetrations))
	for i := range s.doc.Penetrations {
		p := &s.doc.Penetrations[i]
		here := point(p.XMm, p.YMm)
		all[i] = Penetration{
			InsideMm:    s.inside(&here),
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
