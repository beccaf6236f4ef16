package label

import (
	"sunclause/facts/working"
	"sunclause/schema"
)

// openLocations are the locations in the open; the sun may reach a sign at an
// entrance.
var openLocations = []string{"outside_wall", "building_entrance"}

// outdoors reports whether a label hangs in the open: where its part stands, or
// where the cable lies at its position.
func (j *job) outdoors(l *schema.Label) working.Flag {
	switch {
	case l.Run.Stated():
		return openAt(l.Run.To(), l.PositionM)
	case l.Location.Stated():
		return j.locationOutdoors(l)
	}
	if place, known := j.places[l.On.Value]; known {
		return working.Outdoors(place)
	}
	if f, known := j.implied(l.On.Value); known {
		return f
	}
	return working.UnknownFlag(l.On.At())
}

func (j *job) locationOutdoors(l *schema.Label) working.Flag {
	switch l.Location.Value {
	case "origin", "service_equipment":
		return working.Outdoors(j.in.AC.Supply.Place)
	case "meter":
		for i := range j.in.AC.Meters {
			return working.Outdoors(j.in.AC.Meters[i].Place)
		}
	case "main_board":
		for i := range j.in.AC.Boards {
			if b := &j.in.AC.Boards[i]; b.Role.Is("main") {
				return working.Outdoors(b.Place)
			}
		}
	}
	return working.StatedText(l.Location).OneOf(openLocations...)
}

// openAt reports whether a run lies in the open at a position.
func openAt(r *schema.Run, position schema.Number) working.Flag {
	along := route{at: r.At()}
	along.follow(r)
	if along.unplaced != nil || !position.Stated() {
		return working.UnknownFlag(append(along.unplaced, working.Unstated(position.At()))...)
	}
	for i, s := range along.stretches {
		if position.Value <= s.to.Value() {
			return working.Outdoors(r.Segments[i].Place)
		}
	}
	return working.UnknownFlag(position.At())
}

// implied reports it for parts that have no place of their own: plug connectors
// lie where their run does, frames and strings on the roof.
func (j *job) implied(id string) (working.Flag, bool) {
	for i := range j.in.Cables {
		r := &j.in.Cables[i]
		for k := range r.Connectors {
			if r.Connectors[k].ID.Value == id {
				return openAt(r, r.Connectors[k].PositionM), true
			}
		}
	}
	for _, f := range j.in.Earthing.Frames {
		if f.ID.Value == id {
			return working.KnownFlag(true, f.At()), true
		}
	}
	for _, s := range j.in.Strings {
		if s.ID.Value == id {
			return working.KnownFlag(true, s.At()), true
		}
	}
	return working.Flag{}, false
}
