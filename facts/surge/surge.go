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

// Derive derives the facts of surge protection.
func Derive(in *schema.Installation, c *circuit.Circuit, pv pvstring.Facts, cables cable.Facts, b book.Book) Facts {
	w := wiringOf(in, c, pv, cables)
	f := Facts{Site: siteOf(in, b), Routes: make([]Route, len(in.Inverters))}
	if in.SPDs != nil {
		f.SPDs = make([]SPD, len(in.SPDs))
	}
	earthed := earthedParts(in, c)
	for i := range in.SPDs {
		s := &in.SPDs[i]
		f.SPDs[i] = spdOf(in, s)
		f.SPDs[i].Circuit, f.SPDs[i].CircuitMade = w.connections[i].circuit, c.ProtectsMade(s)
		if !s.Circuit.Stated() { // then nothing is said that could be wrong
			f.SPDs[i].CircuitStated = f.SPDs[i].CircuitMade
		}
		f.SPDs[i].duty(in, w.connections[i], w)
		f.SPDs[i].limits(in, s, w.connections[i], b)
		f.SPDs[i].Earthed = earthed.have(s.EarthedAt)
	}
	for i, inv := range in.Inverters {
		w.dcSide(&f.Routes[i], in, inv, b)
		w.acSide(&f.Routes[i], in, inv)
		f.Routes[i].DcLcritM = f.Site.SurgeCriticalLengthM
	}
	f.Site.count(in, f.SPDs)
	return f
}

// Sources of the formulas.
var (
	pvSection   = working.Source{Document: "IEC 60364-7-712", Edition: "2017", Clause: "712.443", How: working.Memory}
	devices     = working.Source{Document: "IEC 60364-5-53", Edition: "2019", Clause: "534.4", How: working.Memory}
	overvoltage = working.Source{Document: "BS 7671", Edition: "2018", Clause: "443.5, in a trade association's page that quotes it", How: working.Read}
)
