// Package earthing derives the facts of earthing and bonding: the system
// earthing, the array frames, the conductors and their sizes, and lightning
// protection.
package earthing

import (
	"sunclause/facts/book"
	"sunclause/facts/cable"
	"sunclause/facts/circuit"
	"sunclause/facts/pvstring"
	"sunclause/facts/working"
	"sunclause/schema"
)

// Facts are the facts of the earthing of an installation.
type Facts struct {
	System  System
	Frames  []Frame // nil when the document states none
	Watches []Watch // by inverter
}

// System holds the facts of the earthing of the premises.
type System struct {
	Arrangement working.Text `json:"arrangement" words:"system earthing at the origin: TN-S, TN-C-S, TT, …"`
}

// Frame holds the facts of one array frame.
type Frame struct {
	working.Subject

	Connection working.Text `json:"connection" words:"how it is connected to earth"`
}

// Watch holds what one inverter asks of earthing: its separation, its leakage,
// and how it watches the array for earth faults.
type Watch struct {
}

// Derive derives the facts of earthing.
func Derive(in *schema.Installation, c *circuit.Circuit, pv pvstring.Facts, cables cable.Facts, b book.Book) Facts {
	return Facts{Watches: make([]Watch, len(in.Inverters))}
}
