package roof

import (
	"slices"

	"sunclause/facts/working"
)

// RailPlace is how a rail stands to the plane and to what lies on it and below it.
type RailPlace struct {
	InsideMm  working.Number `json:"inside_plane_mm" words:"least distance of the rail, over its whole length, to the outline of the plane; below zero it reaches beyond"`
	Carries   working.Number `json:"carries" words:"modules, or rails across it, that lie on it"`
	OnRails   working.Number `json:"rails_below" words:"rails that it crosses"`
	SheetKind working.Text   `json:"sheet_kind" words:"what its datasheet is of"`
}

// railPlace measures where a rail lies, and counts what it crosses.
func (s *slope) railPlace(i int) RailPlace {
	r := &s.rails[i]
	line := r.box()
	p := RailPlace{InsideMm: s.inside(&line), SheetKind: working.StatedText(r.doc.Datasheet.To().Kind)}
	crossed, onIt := 0, 0
	missing := slices.Clone(r.to.Missing())
	for j := range s.rails {
		other := &s.rails[j]
		if other.across == r.across {
			continue
		}
		missing = append(missing, other.to.Missing()...)
		if r.crosses(other) {
			crossed++
			if other.doc.CarriedBy.Is("rails_below") {
				onIt++
			}
		}
	}
	if len(missing) > maxNamed {
		missing = missing[:maxNamed]
	}
	p.OnRails = working.Counted("n", crossed, s.doc.Member("rails"))
	p.Carries = working.Counted("n", len(r.modules)+onIt, s.doc.Member("modules"))
	if len(missing) > 0 {
		p.OnRails = working.Unknown("n", "", missing...)
	}
	if missing = slices.Concat(r.unplaced, missing); len(missing) > 0 && onIt+len(r.modules) == 0 {
		p.Carries = working.Unknown("n", "", missing...)
	}
	return p
}

// box is the middle line of a rail over its whole length, as a box without breadth.
func (r *rail) box() box {
	if r.across {
		return box{left: r.from, right: r.to, bottom: r.at, top: r.at.As("y_t")}
	}
	return box{left: r.at, right: r.at.As("x_r"), bottom: r.from, top: r.to}
}

// crosses reports whether a rail square to this one crosses it.
func (r *rail) crosses(other *rail) bool {
	within := func(at, from, to working.Number) bool { return from.Value() <= at.Value() && at.Value() <= to.Value() }
	return within(other.at, r.from, r.to) && within(r.at, other.from, other.to)
}
