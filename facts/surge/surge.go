// Package surge derives the facts of surge protection: whether it is due, where
// it stands, and whether it suits the circuit it protects.
package surge

import (
	"sunclause/facts/book"
	"sunclause/facts/cable"
	"sunclause/facts/circuit"
	"sunclause/facts/pvstring"
	"sunclause/facts/working"
	"sunclause/schema"
)

// Facts are the facts of surge protection of an installation.
type Facts struct {
	SPDs   []SPD   // nil when the document states none
	Routes []Route // by inverter
	Site   Site
}

// SPD holds the facts of one surge protective device.
type SPD struct {
	working.Subject

	Circuit working.Text `json:"circuit" words:"circuit it protects: pv_dc, battery_dc, ac or signal"`
}

// Route holds what surge protection asks of the DC side of one inverter.
type Route struct {
}

// Site holds what decides for the whole premises whether surge protection is due.
type Site struct {
}

// Derive derives the facts of surge protection.
func Derive(in *schema.Installation, c *circuit.Circuit, pv pvstring.Facts, cables cable.Facts, b book.Book) Facts {
	return Facts{Routes: make([]Route, len(in.Inverters))}
}
