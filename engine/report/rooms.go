package report

import (
	"cmp"

	"sunclause/engine/ruleset"
)

// rooms are the trade subjects in the order in which what is wrong in them does
// harm: what burns, shocks or falls before what is only not written down.
var rooms = []struct{ name, words string }{
	{"pvstring", "Strings and arrays"},
	{"isolator", "Isolators"},
	{"roof", "Roof"},
	{"cable", "Cables"},
	{"accircuit", "AC circuits"},
	{"earthing", "Earthing and bonding"},
	{"storage", "Storage"},
	{"surge", "Surge protection"},
	{"commissioning", "Tests and readings"},
	{"label", "Labels"},
	{"handover", "Papers and notifications"},
}

// harm is the place of a room in that order; a firm's own room comes last.
func harm(room string) int {
	for i, r := range rooms {
		if r.name == room {
			return i
		}
	}
	return len(rooms)
}

// roomWords names a room for people.
func roomWords(room string) string {
	if i := harm(room); i < len(rooms) {
		return rooms[i].words
	}
	return room
}

// byHarm compares two requirements by their rooms, and within a room by where
// their sets have them.
func byHarm(a, b *ruleset.Requirement) int {
	return cmp.Or(cmp.Compare(harm(a.Room), harm(b.Room)), cmp.Compare(a.Place, b.Place))
}
