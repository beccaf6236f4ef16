// Package storage derives the facts of batteries and of what is made ready for
// one: place, energy, protection and isolation.
package storage

import (
	"sunclause/facts/book"
	"sunclause/facts/cable"
	"sunclause/facts/circuit"
	"sunclause/facts/pvstring"
	"sunclause/facts/working"
	"sunclause/schema"
)

// Facts are the facts of storage of an installation.
type Facts struct {
	Batteries []Battery // nil when the document states none
	Provision Provision
}

// Battery holds the facts of one battery.
type Battery struct {
	working.Subject

	Place working.Text `json:"place" words:"where it stands"`
}

// Provision holds what is made ready for a battery to come, and what all
// batteries of the premises come to.
type Provision struct {
}

// Derive derives the facts of storage.
func Derive(in *schema.Installation, c *circuit.Circuit, pv pvstring.Facts, cables cable.Facts, b book.Book) Facts {
	return Facts{}
}
