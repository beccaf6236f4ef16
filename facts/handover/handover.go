// Package handover derives the facts of what is given to the customer and told
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
}

// Derive derives the facts of the handover.
func Derive(in *schema.Installation, c *circuit.Circuit, pv pvstring.Facts, b book.Book) Facts {
	return Facts{
		Papers:     papers(in, pv),
		Connection: connection(in, c, b),
		Interfaces: interfaces(in),
		Notices:    notices(in),
		Settings:   settings(in, b),
	}
}

// counted counts the parts of a list; one not stated is not one of none.
func counted[T any](list []T, at string) working.Number {
	if list == nil {
		return working.Unknown("n", "", at)
	}
	return working.Counted("n", len(list), at)
}

// first is the earliest of some dates, those not stated left aside.
func first(dates []schema.Text) (earliest schema.Text) {
	for _, d := range dates {
		if d.Stated() && (!earliest.Stated() || d.Value < earliest.Value) {
			earliest = d
		}
	}
	return earliest
}

// last is the latest of some dates, those not stated left aside.
func last(dates []schema.Text) (latest schema.Text) {
	for _, d := range dates {
		if d.Stated() && d.Value > latest.Value {
			latest = d
		}
	}
	return latest
}

// days counts the days between two dates. Where one was looked for in a list
// and is not there, the list is what is missing.
func days(symbol string, from, to schema.Text, list string) working.Number {
	var missing []string
	for _, d := range []schema.Text{from, to} {
		switch {
		case d.Stated():
		case d.At() == "":
			missing = append(missing, list)
		default:
			missing = append(missing, d.At())
		}
	}
	if missing != nil {
		return working.Unknown(symbol, "d", missing...)
	}
	return working.Days(symbol, from, to)
}
