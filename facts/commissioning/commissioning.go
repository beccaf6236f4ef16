// Package commissioning derives the facts of the inspection and the tests
// before an installation goes into service: what each string should have read
// in the light and warmth of the moment, how far the reading is off, which
// tests were done and in what order, and with which instruments.
package commissioning

import (
	"sunclause/facts/book"
	"sunclause/facts/cable"
	"sunclause/facts/circuit"
	"sunclause/facts/pvstring"
	"sunclause/facts/working"
	"sunclause/schema"
)

// Facts are the facts of commissioning. A list is nil when the document does
// not state the readings it is about. Where nothing is built yet there are no
// readings, and the list is empty.
type Facts struct {
	Strings     []StringTest
	Combiners   []CombinerTest
	Curves      []CurveTest
	Insulation  []InsulationTest
	Continuity  []ContinuityTest
	Circuits    []CircuitTest
	RCDs        []RCDTest
	Instruments []Instrument
	Proofs      []Proof // by inverter
	Record      Record
	Fits        []Fit
}

// Sources of the formulas of this room. None of these texts was at hand when
// the formulas were written down, so none is marked verified.
var (
	expectedVoltage = working.Source{Document: "IEC 60891", Edition: "2009", Clause: "procedure 2 at no current, the term of irradiance scaled by the absolute temperature", How: working.Memory}
	expectedCurrent = working.Source{Document: "IEC 60891", Edition: "2009", Clause: "procedure 2 at no voltage", How: working.Read}
	cellTemperature = working.Source{Document: "IEC 60904-5", Edition: "2011", Clause: "equivalent cell temperature", How: working.Memory}
	simpleRule      = working.Source{Document: "trade practice, expected voltage by temperature alone", How: working.CommonPractice}
	alikeStrings    = working.Source{Document: "IEC 62446-1", Edition: "2016+A1:2018", Clause: "6.4 and 6.5", How: working.Memory}
	insulationTest  = working.Source{Document: "IEC 62446-1", Edition: "2016+A1:2018", Clause: "6.7", How: working.Memory}
	wetModule       = working.Source{Document: "IEC 61215-2", Clause: "MQT 15, 40 MΩ·m²", How: working.Memory}
	conductorLaw    = working.Source{Document: "IEC 60228", Clause: "resistance at 20 °C", How: working.Memory}
)

// Derive derives the facts of commissioning.
func Derive(in *schema.Installation, c *circuit.Circuit, pv pvstring.Facts, cables cable.Facts, b book.Book) Facts {
	d := deriver{in: in, c: c, pv: pv, cables: cables, book: b, find: indexOf(in), spdsAC: spdsOn(in, c, circuit.AC), spdsDC: spdsOn(in, c, circuit.PV, circuit.Battery)}
	f := Facts{
		Strings:     d.strings(),
		Combiners:   d.combiners(),
		Curves:      d.curves(),
		Insulation:  d.insulation(),
		Continuity:  d.continuity(),
		Circuits:    d.circuits(),
		RCDs:        d.rcds(),
		Instruments: d.instrumentFacts(),
		Proofs:      d.proofs(),
		Record:      d.record(),
		Fits:        d.fits(),
	}
	d.countPoles(f.Strings, f.Insulation)
	return f
}

// deriver is what the derivations of this room share.
type deriver struct {
	in     *schema.Installation
	c      *circuit.Circuit
	pv     pvstring.Facts
	cables cable.Facts
	book   book.Book
	find   index
	spdsAC working.Number // surge protective devices on the AC side
	spdsDC working.Number // those on the DC side
}

// emptyBeforeBuild is the list of an installation of which the document states no
// such readings: empty while it is only designed, nil once it is built.
func emptyBeforeBuild[T any](in *schema.Installation) []T {
	if in.Project.Stage.Is("design") {
		return []T{}
	}
	return nil
}

func (d *deriver) at(member string) string { return d.in.Commissioning.Member(member) }

// How far a value is off what it should be, whichever way.
var (
	deviation = working.NewFormula("Δ", "%", "100 · |x / x_0 − 1|", working.ByDefinition)
	offAlike  = working.NewFormula("Δ", "%", "100 · |x / x_0 − 1|", alikeStrings) // off strings that should read the same
	shortfall = working.NewFormula("n", "", "N_s · (1 − U / U_0)", working.ByDefinition)
)

// modulesShort is how many modules' voltage a reading is short of what it should be.
func modulesShort(symbol string, series, read, due working.Number) working.Number {
	return shortfall.Of(series.As("N_s"), read.For("U"), due.For("U_0")).As(symbol)
}
