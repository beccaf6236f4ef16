// Package cable derives the facts of runs of cable and of each stretch of
// them: the current they are to carry, their capacity by the tables of the
// rule set with every factor, the voltage they lose, how they are protected,
// and whether they stay live in daylight with every isolator open.
package cable

import (
	"sunclause/facts/book"
	"sunclause/facts/circuit"
	"sunclause/facts/pvstring"
	"sunclause/facts/working"
	"sunclause/schema"
)

// Facts are the facts of the cables of an installation.
type Facts struct {
	Sheets     []Sheet      // nil when the document states none
	Runs       []Run        // nil when the document states none
	Segments   []Segment    // nil when the document states no runs
	Connectors []Connector  // nil when the document states no runs
	Loops      []Loop       // nil likewise
	Drops      []Drop       // by string
	OnePlace   working.Flag // whether parts joined without a run stand in one place
}

// plan is what the facts of cables are worked out from.
type plan struct {
	in      *schema.Installation
	circuit *circuit.Circuit
	pv      pvstring.Facts
	book    book.Book
	strings map[int][]*pvstring.String // strings whose path lies on each run
	inputs  map[string]*pvstring.Mppt  // by id
	wires   map[*schema.CableDatasheet]Wire
	mains   mains
	duties  batteries
	onRoof  map[string]bool // strings and frames
}

// Derive derives the facts of the cables.
func Derive(in *schema.Installation, c *circuit.Circuit, pv pvstring.Facts, b book.Book) Facts {
	p := &plan{in: in, circuit: c, pv: pv, book: b, strings: carriedBy(c, pv), inputs: map[string]*pvstring.Mppt{}, wires: map[*schema.CableDatasheet]Wire{}, mains: mainsOf(in, c), duties: batteriesOf(in, c), onRoof: onRoof(in)}
	for i := range pv.Mppts {
		p.inputs[pv.Mppts[i].ID] = &pv.Mppts[i]
	}
	f := Facts{Sheets: working.OfSheets(in.Datasheets.Cables, p.sheet), Drops: make([]Drop, len(in.Strings)), OnePlace: onePlace(in, c)}
	if in.Cables != nil {
		f.Runs, f.Segments, f.Connectors = make([]Run, 0, len(in.Cables)), make([]Segment, 0, len(in.Cables)), []Connector{}
		f.Loops = loopsOf(c)
	}
	everyOpen := func(int) bool { return true }
	dark, fed := c.Daylight(everyOpen), c.Feeding(in, everyOpen)
	for i := range in.Cables {
		r, segments := p.run(i)
		r.LiveWithAllOpen, r.FedWithAllOpen = dark.Run(i), fed.Run(i)
		f.Segments = append(f.Segments, segments...)
		f.Connectors = append(f.Connectors, p.connectors(&r, i)...)
		f.Runs = append(f.Runs, r)
	}
	for i := range pv.Strings {
		f.Drops[i] = p.drop(&pv.Strings[i], f.Runs)
	}
	return f
}
