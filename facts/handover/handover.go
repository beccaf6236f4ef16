// Package handover derives the facts of what is given to the customer and notified
// to the authorities: the papers, what was counted on site against the
// document, what generates on each phase, the dates of notices, and the settings
// of the protection of the interface with the supply.
package handover

import (
	"sunclause/facts/book"
	"sunclause/facts/circuit"
	"sunclause/facts/pvstring"
	"sunclause/facts/working"
	"sunclause/schema"
)

// Facts are the facts of the handover.
type Facts struct {
	Papers     Papers
	Connection Connection
	Interfaces []Interface // by inverter
	Notices    []Notice    // nil when the document states no notifications
	Settings   []Setting   // nil when the document states no inverters
	Orders     []Order
}

// Derive derives the facts of the handover.
func Derive(in *schema.Installation, c *circuit.Circuit, pv pvstring.Facts, b book.Book) Facts {
	return Facts{
		Papers:     papers(in, pv),
		Connection: connection(in, c, b),
		Interfaces: interfaces(in),
		Notices:    notices(in),
		Settings:   settings(in, b),
		Orders:     orders(in, b),
	}
}

// earliest is the first of some dates, those not stated left aside.
func earliest(dates []schema.Text) (first schema.Text) {
	for _, d := range dates {
		if d.Stated() && (!first.Stated() || d.Value < first.Value) {
			first = d
		}
	}
	return first
}

// latest is the last of some dates, those not stated left aside.
func latest(dates []schema.Text) (last schema.Text) {
	for _, d := range dates {
		if d.Stated() && d.Value > last.Value {
			last = d
		}
	}
	return last
}

// lastOf is the last of some dates that are all due; the one that is not stated where
// there is such a one.
func lastOf(dates []schema.Text) (last schema.Text) {
	for _, d := range dates {
		if !d.Stated() {
			return d
		}
	}
	return latest(dates)
}

// days counts the days between two dates. Where one was looked for in a list
// and is not there, the list is what is missing.
func days(symbol string, from, to schema.Text, list string) working.Number {
	var missing []working.Gap
	for _, d := range []schema.Text{from, to} {
		switch {
		case d.Stated():
		case d.At() == "":
			missing = append(missing, working.Unstated(list))
		default:
			missing = append(missing, working.Unstated(d.At()))
		}
	}
	if missing != nil {
		return working.Unknown(symbol, "d", missing...)
	}
	return working.Days(symbol, from, to)
}
