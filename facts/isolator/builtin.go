package isolator

import (
	"sunclause/facts/book"
	"sunclause/facts/circuit"
	"sunclause/facts/working"
	"sunclause/schema"
)

// Inside holds what bears out, or speaks against, that an isolator is part of an
// inverter.
type Inside struct {
	BuiltIn         working.Flag `json:"built_in" words:"whether it is part of an inverter, where its place, its distance and the circuit bear that out"`
	BuiltInStated   working.Flag `json:"built_in_stated" words:"whether it is stated to be part of an inverter"`
	InverterPlace   working.Text `json:"inverter_place" words:"where the inverter stands that it is stated to be part of"`
	JoinedToIt      working.Flag `json:"joined_to_inverter" words:"whether one of its ways is joined, or leads by one cable, to that inverter"`
	DistanceLeftOut working.Flag `json:"distance_left_out" words:"whether no distance from the inverter is stated"`
}

// inside works out whether an isolator is part of an inverter. A word alone lets no
// requirement about its enclosure fall away: it stands where the inverter does, at no
// distance worth the name, and next to it in the circuit.
func (f *Isolator) inside(iso *schema.Isolator, c *circuit.Circuit, b book.Book) {
	into, inverter := iso.BuiltInto, iso.BuiltInto.To()
	f.BuiltInStated = working.KnownFlag(into.Stated(), iso.At())
	f.DistanceLeftOut = working.KnownFlag(!iso.DistanceToInverterM.Stated(), iso.At())
	f.InverterPlace = working.StatedText(inverter.Place)
	f.JoinedToIt = working.KnownFlag(into.Stated() && c.Touches(iso, into.Value), iso.At())
	f.BuiltIn = f.BuiltInStated
	if !into.Stated() {
		return
	}
	if !iso.Place.Stated() { // it stands where the inverter does
		f.Place, f.Outdoors = f.InverterPlace, working.Outdoors(inverter.Place)
	}
	if against := f.againstInside(iso, b); against != nil {
		f.BuiltIn = working.UnknownFlag(against...)
	}
}

// againstInside lists what speaks against an isolator being part of its inverter.
func (f *Isolator) againstInside(iso *schema.Isolator, b book.Book) []working.Gap {
	var against []working.Gap
	if same := working.Same(f.Place, f.InverterPlace); same.Known() && !same.Value() {
		against = append(against, working.Disagreement(f.Place, f.InverterPlace))
	}
	near := working.AtMost(f.DistanceM, b.Number("built_in_reach_m", "d_max"))
	if near.Known() && !near.Value() {
		against = append(against, working.Gap{At: iso.DistanceToInverterM.At(), Why: working.Disagrees, Stated: f.DistanceM.Written(), With: iso.BuiltInto.At(), Says: "part of it"})
	}
	if !f.JoinedToIt.Value() {
		against = append(against, working.Gap{At: iso.BuiltInto.At(), Why: working.Unconfirmed, Stated: iso.BuiltInto.Value})
	}
	return against
}
