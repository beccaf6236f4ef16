package cable

import (
	"sunclause/facts/circuit"
	"sunclause/facts/working"
	"sunclause/schema"
)

// Whereabouts holds where a run leads, against where the parts at its ends stand.
type Whereabouts struct {
	SidesAgree working.Flag `json:"sides_agree" words:"whether its route begins and ends on the side of roof and walls where the parts at its ends stand, and changes sides only at a passage"`
	RoomsAgree working.Flag `json:"rooms_agree" words:"whether the parts at its ends are in one room, unless its route passes a wall or a floor"`
}

// point is one place along a run, with the passage that leads on to the next.
type point struct {
	place   working.Text
	side    string
	passage working.Text
}

// whereabouts holds a run's stretches against each other and against the parts at its
// ends. What does not say where it is agrees with any.
func (p *plan) whereabouts(r *schema.Run, segments []Segment) Whereabouts {
	along := p.points(r, segments)
	var sides []working.Flag
	for i := 1; i < len(along); i++ {
		sides = append(sides, leadsOn(along[i-1], along[i], r.At()))
	}
	return Whereabouts{SidesAgree: working.All(append(sides, working.KnownFlag(true, r.At()))...), RoomsAgree: roomsAgree(along, r.At())}
}

// points lists the part at which a run begins, its stretches, and the part at its end.
func (p *plan) points(r *schema.Run, segments []Segment) []point {
	along := []point{p.partAt(r.From)}
	for i := range r.Segments {
		s := &r.Segments[i]
		along = append(along, point{working.StatedText(s.Place), circuit.Side(s.Place), segments[i].Passage})
	}
	return append(along, p.partAt(r.To))
}

// partAt is where the part stands at which a run ends. Strings and frames are on the
// roof.
func (p *plan) partAt(terminal schema.Text) point {
	id := circuit.Part(terminal.Value)
	none := working.KnownText("none", terminal.At())
	if p.onRoof[id] {
		return point{working.KnownText("the roof", terminal.At()), circuit.Outside, none}
	}
	place := p.circuit.Place(id)
	return point{working.StatedText(place), circuit.Side(place), none}
}

// passageSides says which sides a passage joins: through roof and outer wall one comes
// from outside, or gets there; inner walls, floors and fire compartments are within.
var passageSides = map[string]func(a, b string) bool{
	"none":             func(a, b string) bool { return a == b },
	"roof":             func(a, b string) bool { return (a == circuit.Outside) != (b == circuit.Outside) },
	"outer_wall":       func(a, b string) bool { return (a == circuit.Outside) != (b == circuit.Outside) },
	"inner_wall":       func(a, b string) bool { return a != circuit.Outside && b != circuit.Outside },
	"floor":            func(a, b string) bool { return a != circuit.Outside && b != circuit.Outside },
	"fire_compartment": func(a, b string) bool { return a != circuit.Outside && b != circuit.Outside },
}

// leadsOn reports whether a run can get from one place to the next by the passage that
// is stated. Where it cannot, it is unknown, with both places named.
func leadsOn(from, to point, at string) working.Flag {
	if from.side == "" || to.side == "" {
		return working.KnownFlag(true, at)
	}
	if !from.passage.Known() {
		if from.side == to.side {
			return working.KnownFlag(true, at)
		}
		return working.UnknownFlag(from.passage.Missing()...)
	}
	if passageSides[from.passage.Value()](from.side, to.side) {
		return working.KnownFlag(true, at)
	}
	return working.UnknownFlag(working.Disagreement(to.place, from.place))
}

// roomsAgree reports whether the parts at the ends of a run are in one room, where
// nothing of its route goes through anything.
func roomsAgree(along []point, at string) working.Flag {
	first, last := along[0], along[len(along)-1]
	if first.side != circuit.Inside || last.side != circuit.Inside || first.place.Value() == last.place.Value() {
		return working.KnownFlag(true, at)
	}
	for _, a := range along[1 : len(along)-1] {
		if a.side != circuit.Inside || !a.passage.Known() || a.passage.Value() != "none" {
			return working.KnownFlag(true, at)
		}
	}
	return working.UnknownFlag(working.Disagreement(last.place, first.place))
}

// onePlace reports whether the parts that are joined without a run of cable stand in
// one place, as they must. What does not say where it stands agrees with any.
func onePlace(in *schema.Installation, c *circuit.Circuit) working.Flag {
	j := joints{c: c}
	for i := range in.Isolators {
		iso := &in.Isolators[i]
		for _, w := range iso.Ways {
			j.joined(iso.Place, w.JoinedIn, w.JoinedOut)
		}
		j.joined(iso.Place, iso.BuiltInto.Text)
	}
	for i := range in.SPDs {
		j.joined(in.SPDs[i].Place, in.SPDs[i].ConnectedAt)
	}
	for i := range in.AC.Meters {
		m := &in.AC.Meters[i]
		j.joined(m.Place, m.JoinedIn, m.JoinedOut)
	}
	for i := range in.AC.Boards {
		b := &in.AC.Boards[i]
		j.joined(b.Place, b.JoinedIn)
		for _, w := range b.Ways {
			j.joined(b.Place, w.JoinedTo)
		}
	}
	for _, t := range append([]schema.EarthTerminal{in.Earthing.MainTerminal}, in.Earthing.Terminals...) {
		j.joined(t.Place, t.Board.Text)
	}
	return working.All(append(j.agree, working.KnownFlag(true, in.At()))...)
}

// joints collects whether joined parts agree.
type joints struct {
	c     *circuit.Circuit
	agree []working.Flag
}

func (j *joints) joined(place schema.Text, terminals ...schema.Text) {
	for _, t := range terminals {
		other := j.c.Place(circuit.Part(t.Value))
		if place.Stated() && other.Stated() && place.Value != other.Value {
			j.agree = append(j.agree, working.UnknownFlag(working.Disagreement(working.StatedText(place), working.StatedText(other))))
		}
	}
}

// onRoof names the strings and frames: they have no place of their own, and are on the
// roof.
func onRoof(in *schema.Installation) map[string]bool {
	ids := map[string]bool{}
	for i := range in.Strings {
		ids[in.Strings[i].ID.Value] = true
	}
	for i := range in.Earthing.Frames {
		ids[in.Earthing.Frames[i].ID.Value] = true
	}
	return ids
}
