// Package working derives quantities and keeps their working: the formula in
// symbols, the numbers put in, the source of the formula, and the members of
// the document that everything came from.
//
// A quantity is known or unknown. Whatever is derived from an unknown one is
// unknown too, and names what was missing. Nothing is ever guessed.
package working

import (
	"math"
	"slices"
	"strconv"

	"sunclause/schema"
)

// Source says where a formula, figure or rule comes from.
type Source struct {
	Document string `json:"document"`
	Edition  string `json:"edition,omitempty"`
	Clause   string `json:"clause,omitempty"`
	How      How    `json:"how"`
	Verified bool   `json:"verified"` // someone read that clause in that document
}

// How says in what way a source is known.
type How string

// The ways in which a source can be known.
const (
	Read           How = "read"            // in the document named, or in one that quotes it
	Memory         How = "memory"          // remembered; check your copy
	CommonPractice How = "common practice" // a rule of thumb with no published source
	Definition     How = "definition"      // true by physics, geometry or the meaning of the words
)

// ByDefinition is the source of sums, counts and ratios.
var ByDefinition = Source{Document: "definition", How: Definition}

// Number is a quantity with its working. The zero Number is unknown and does
// not say why; make one with Stated, Figure, Formula.Of or Unknown.
type Number struct {
	value     float64
	known     bool
	symbol    string
	standsFor string // symbol of the formula for which it is put in; "" for its own
	unit      string
	from      derivation // nil of a number that the document states
	inputs    []Number
	at        string // JSON pointer, of a number the document states
	missing   []Gap
}

// derivation is where a number comes from that the document does not state. Many
// numbers share one.
type derivation interface {
	origin() Source
	written(inputs []Number) string // in symbols; "" when it is no formula
	filled(inputs []Number) string  // with the numbers put in
	lookup() bool                   // what is written is not arithmetic
}

// figure is a number of the rule set, or one that was counted.
type figure struct {
	place  string // in the rule set
	source Source
}

func (f *figure) origin() Source { return f.source }

func (f *figure) written([]Number) string { return "" }

func (f *figure) filled([]Number) string { return "" }

func (f *figure) lookup() bool { return false }

// digits is to how many significant digits a quantity is kept. Beyond them a
// binary fraction shows its noise, and a limit met exactly would look exceeded.
const digits = 12

// Round keeps as many significant digits as every quantity has.
func Round(v float64) float64 {
	if v == 0 || math.IsInf(v, 0) || math.IsNaN(v) {
		return v
	}
	r, _ := strconv.ParseFloat(strconv.FormatFloat(v, 'e', digits-1, 64), 64)
	return r
}

// Stated takes a number of the document. Unit is for reading; the number is
// used as it stands.
func Stated(symbol, unit string, n schema.Number) Number {
	w := Number{value: n.Value, known: n.Stated(), symbol: symbol, unit: unit, at: n.At()}
	if !w.known {
		w.missing = []Gap{Unstated(n.At())}
	}
	return w
}

// Figure takes a number of the rule set: a parameter or the cell of a table.
func Figure(symbol, unit string, v float64, origin string, src Source) Number {
	return Number{value: v, known: true, symbol: symbol, unit: unit, from: &figure{origin, src}}
}

// ChosenBy notes the member of the document that chose a figure, as the kind of
// mounting chooses a row of a table.
func (n Number) ChosenBy(at string) Number {
	n.at = at
	return n
}

var counted = &figure{source: ByDefinition}

// Counted takes a number that was counted over parts of the document, such as
// the strings that meet at an input.
func Counted(symbol string, n int, at string) Number {
	return Number{value: float64(n), known: true, symbol: symbol, at: at, from: counted}
}

// Length counts the parts of a list of the document. One that is not stated, and
// so nil, is not one of none: its length is unknown.
func Length[T any](symbol string, list []T, at string) Number {
	if list == nil {
		return Unknown(symbol, "", at)
	}
	return Counted(symbol, len(list), at)
}

// Unknown makes a number that cannot be derived for some reasons: members that are
// not stated, or gaps.
func Unknown[R Reason](symbol, unit string, why ...R) Number {
	return Number{symbol: symbol, unit: unit, missing: Gaps(gapsOf(why))}
}

// NoNumber makes a number that there is not, such as the current of a run that
// carries none: it is unknown, and nothing is missing.
func NoNumber(symbol, unit string) Number { return Number{symbol: symbol, unit: unit} }

// Known reports whether the number has a value.
func (n Number) Known() bool { return n.known }

// Value is the number itself; it means nothing unless the number is known.
func (n Number) Value() float64 { return n.value }

// Symbol is the letter the formula knows it by.
func (n Number) Symbol() string { return n.symbol }

// Unit is the unit of the value; "" for counts and ratios.
func (n Number) Unit() string { return n.unit }

// Formula is how it was derived, in symbols; "" when it was stated.
func (n Number) Formula() string {
	if n.from == nil {
		return ""
	}
	return n.from.written(n.inputs)
}

// Filled writes the formula with the numbers put in: "10 · 49.5". It is "" for a
// stated or an unknown number.
func (n Number) Filled() string {
	if n.from == nil || !n.known {
		return ""
	}
	return n.from.filled(n.inputs)
}

// Lookup reports whether the formula is words about a table, a choice or the like,
// and is not arithmetic.
func (n Number) Lookup() bool { return n.from != nil && n.from.lookup() }

// Source is where the formula, or the figure, comes from.
func (n Number) Source() Source {
	if n.from == nil {
		return Source{}
	}
	return n.from.origin()
}

// Inputs are the numbers put into the formula.
func (n Number) Inputs() []Number { return n.inputs }

// At is the JSON pointer of a number that the document states.
func (n Number) At() string { return n.at }

// Origin names the parameter or table a figure of the rule set comes from.
func (n Number) Origin() string {
	if f, ok := n.from.(*figure); ok {
		return f.place
	}
	return ""
}

// Missing says why the number is not known.
func (n Number) Missing() []Gap { return n.missing }

// As gives the number another symbol, under which it is printed and put into the
// next formula.
func (n Number) As(symbol string) Number {
	n.symbol = symbol
	return n
}

// For puts the number in for a symbol of the next formula, and keeps its own
// symbol for print.
func (n Number) For(symbol string) Number {
	n.standsFor = symbol
	return n
}

// role is the symbol for which the number is put into a formula.
func (n *Number) role() string {
	if n.standsFor != "" {
		return n.standsFor
	}
	return n.symbol
}

// Pointers are the members of the document that the number was derived from.
func (n Number) Pointers() []string {
	var all []string
	n.collect(&all)
	return sortedUnique(all)
}

func (n *Number) collect(all *[]string) {
	if n.at != "" {
		*all = append(*all, n.at)
	}
	for i := range n.inputs {
		n.inputs[i].collect(all)
	}
}

// sortedUnique sorts names and leaves each standing once.
func sortedUnique(names []string) []string {
	slices.Sort(names)
	return slices.Compact(names)
}
