// Package accircuit derives the facts of the AC side: the circuits of the
// inverters, their protection, loop impedance and voltage rise, the boards they
// end at and the supply.
package accircuit

import (
	"sunclause/facts/book"
	"sunclause/facts/cable"
	"sunclause/facts/circuit"
	"sunclause/facts/pvstring"
	"sunclause/facts/working"
	"sunclause/schema"
)

// Facts are the facts of the AC side of an installation.
type Facts struct {
	Supply   Supply
	Circuits []Circuit // nil when the document states none
	Boards   []Board   // nil when the document states none
	Outputs  []Output  // by inverter
}

// Supply holds the facts of the public supply.
type Supply struct {
}

// Circuit holds the facts of one circuit that leaves a way of a board toward a
// generator.
type Circuit struct {
	working.Subject

	Serves working.Text `json:"serves" words:"what it serves"`
}

// Board holds the facts of one distribution board.
type Board struct {
	working.Subject

	Role working.Text `json:"role" words:"which board it is"`
}

// Output holds the facts of the AC side of one inverter.
type Output struct {
}

// Derive derives the facts of the AC side.
func Derive(in *schema.Installation, c *circuit.Circuit, pv pvstring.Facts, cables cable.Facts, b book.Book) Facts {
	return Facts{Outputs: make([]Output, len(in.Inverters))}
}
