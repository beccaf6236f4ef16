// Package storage derives the facts of batteries and of what is made ready for
// one: place, energy, protection and isolation.
package storage

import (
	"sunclause/facts/book"
	"sunclause/facts/cable"
	"sunclause/facts/circuit"
	"sunclause/facts/pvstring"
	"sunclause/schema"
)

// Facts are the facts of storage of an installation.
type Facts struct {
	Batteries []Battery // nil when the document states none
	Ports     []Port    // by inverter
	Provision Provision
}

// Derive derives the facts of storage.
func Derive(in *schema.Installation, c *circuit.Circuit, _ pvstring.Facts, cables cable.Facts, b book.Book) Facts {
	var f Facts
	if in.Storage.Batteries != nil {
		f.Batteries = make([]Battery, len(in.Storage.Batteries))
	}
	for i := range in.Storage.Batteries {
		stated := &in.Storage.Batteries[i]
		sheet := stated.Datasheet.To()
		f.Batteries[i] = batteryOf(stated, sheet)
		f.Batteries[i].Backup = backupOf(in, c, stated.ID.Value, stated.At(), sheet.BackupOutput, stated.BackupUsed)
		f.Batteries[i].rate(stated, sheet)
		f.Batteries[i].wire(in, c, cables, stated)
		f.Batteries[i].isolate(stated, sheet)
		f.Batteries[i].protect(stated, sheet)
	}
	for i := range in.Inverters {
		f.Ports = append(f.Ports, portOf(in, c, &in.Inverters[i], f.Batteries))
	}
	f.Provision = provisionOf(in, f.Batteries, b)
	return f
}
