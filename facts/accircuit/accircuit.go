// Package accircuit derives the facts of the AC side: the circuits of the
// generators, their protection, loop impedance and voltage rise, the boards
// they end at and the supply.
package accircuit

import (
	"sunclause/facts/book"
	"sunclause/facts/cable"
	"sunclause/facts/circuit"
	"sunclause/facts/pvstring"
	"sunclause/schema"
)

// Facts are the facts of the AC side of an installation.
type Facts struct {
	Supply   Supply
	Circuits []Circuit // nil when the document states no generators
	Boards   []Board   // nil when the document states none
	Ways     []Way     // of the boards
	Meters   []Meter   // nil when the document states none

	Changeovers []Changeover // nil when the document states none
	Outputs     []Output     // by inverter
}

// Derive derives the facts of the AC side.
func Derive(in *schema.Installation, c *circuit.Circuit, _ pvstring.Facts, cables cable.Facts, b book.Book) Facts {
	m := mainsOf(in, c, cables, b)
	return Facts{Supply: m.supply(), Circuits: m.circuits(), Boards: m.boardFacts(), Ways: m.ways(), Meters: m.meters(), Changeovers: m.changeovers(), Outputs: m.outputs()}
}

// mains is the AC side as it hangs together: the generators with their way to
// the supply, and the ways of boards by their terminals.
type mains struct {
	in       *schema.Installation
	circuit  *circuit.Circuit
	cables   cable.Facts
	book     book.Book
	outlets  map[string]outlet
	own      []generator // inverters, then batteries with an inverter of their own
	existing []generator // generators that were there before
}

// outlet is one way of one board.
type outlet struct {
	board *schema.Board
	way   *schema.BoardWay
}

func mainsOf(in *schema.Installation, c *circuit.Circuit, cables cable.Facts, b book.Book) *mains {
	m := &mains{in: in, circuit: c, cables: cables, book: b, outlets: map[string]outlet{}}
	for i := range in.AC.Boards {
		board := &in.AC.Boards[i]
		for j := range board.Ways {
			way := &board.Ways[j]
			m.outlets[board.ID.Value+"."+way.ID.Value] = outlet{board, way}
		}
	}
	m.generators()
	return m
}

// untraced names what is missing where the way from a generator to the supply
// was not found.
func (m *mains) untraced() string {
	if m.in.AC.Boards == nil {
		return m.in.AC.Member("boards")
	}
	return "/cables"
}
