package working

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"
	"sync/atomic"
)

// Formula is arithmetic with a name, a unit and a source. Its text is what is
// printed and what is worked out; nothing says the same a second time.
//
// A room declares its formulas as variables of the package and puts numbers in
// by their symbols:
//
//	var coldVoltage = working.NewFormula("U_oc,cold", "V", "N_s · U_oc · (1 + β/100 · (T_min − 25))", annexB)
//
//	cold := coldVoltage.Of(series, voc, beta, temperature)
//
// The order of the numbers does not matter: one with the symbol β stands for β.
// One with another symbol is put in with For, and the printed text shows its own
// symbol there. The result is given another symbol, where it needs one, by As:
//
//	var share = working.NewFormula("share", "%", "100 · a / b", working.ByDefinition)
//
//	share.Of(drop.For("a"), voltage.For("b")).As("Δu") // Δu = 100 · ΔU / U_mp
//
// Sum, Product, Ratio, Greatest, Least and Spread write their own text over the
// numbers that they are given. What is no arithmetic is a Lookup.
type Formula struct {
	symbol string
	unit   string
	text   string
	source Source
	*program
	used atomic.Bool
}

// formulas are those of the program, in the order in which they were made.
var formulas []*Formula

// NewFormula makes a formula of the right-hand side of an equation. It is called
// for variables of a package only, at the start of the program, and panics at a
// text that it cannot read.
//
// The text is made of numbers, symbols, + − · / ^ ² √, parentheses, |magnitudes|,
// ln, cos and sin (of degrees), min(a; b) and max(a; b). The whole may be the
// "greatest of a, b, c" or the "least of" them, and may end in bounds, as in
// "S_E / 2, at least S_min, at most S_max". A symbol begins with a letter; letters,
// digits, underscores and inner commas follow, as in U_oc,max.
func NewFormula(symbol, unit, text string, source Source) *Formula {
	p, err := parse(text)
	if err != nil {
		panic(fmt.Sprintf("working: the formula %s = %s cannot be read: %v", symbol, text, err))
	}
	f := &Formula{symbol: symbol, unit: unit, text: text, source: source, program: p}
	formulas = append(formulas, f)
	return f
}

// WorkOut works out a text of numbers only, as Filled prints it. It says what it
// cannot read.
func WorkOut(text string) (float64, error) {
	p, err := parse(text)
	if err == nil && len(p.symbols) > 0 {
		err = fmt.Errorf("%q has no value", p.symbols[0])
	}
	if err != nil {
		return 0, err
	}
	return p.evaluate(&[maxSymbols]float64{}), nil
}

// Formulas lists the formulas of the program. Tests hold that each is put to
// use.
func Formulas() []*Formula { return slices.Clone(formulas) }

// Used reports whether the formula has been worked out since the program began.
func (f *Formula) Used() bool { return f.used.Load() }

// String is the equation as it is written.
func (f *Formula) String() string { return f.symbol + " = " + f.text }

// Of puts a number in for each symbol. The result is unknown as soon as one of
// them is, and whenever the arithmetic has no finite answer. A number for which
// the text has no symbol, and a symbol without a number, is a mistake of the
// program: it panics.
func (f *Formula) Of(inputs ...Number) Number {
	n := Number{symbol: f.symbol, unit: f.unit, from: f, inputs: inputs}
	var places [maxSymbols]uint8
	f.bind(inputs, &places)
	if !n.complete() {
		return n
	}
	var values [maxSymbols]float64
	for s := range f.symbols {
		values[s] = inputs[places[s]].value
	}
	if !f.used.Load() {
		f.used.Store(true)
	}
	return n.settled(f.evaluate(&values))
}

// bind finds, for each symbol, the place of the number put in for it.
func (f *Formula) bind(inputs []Number, places *[maxSymbols]uint8) {
	bound := 0
	for i := range inputs {
		s := f.symbolOf(&inputs[i], i)
		if s < 0 || bound&(1<<s) != 0 {
			panic(fmt.Sprintf("working: %v: a number is put in for %q, which the formula does not have, or has one already", f, inputs[i].role()))
		}
		bound |= 1 << s
		places[s] = uint8(i)
	}
	for s, name := range f.symbols {
		if bound&(1<<s) == 0 {
			panic(fmt.Sprintf("working: %v: no number is put in for %q", f, name))
		}
	}
}

// symbolOf is the index of the symbol that a number stands for, -1 for none;
// mostly the numbers come in the order of the symbols.
func (f *Formula) symbolOf(n *Number, place int) int {
	role := n.role()
	if place < len(f.symbols) && f.symbols[place] == role {
		return place
	}
	return slices.Index(f.symbols, role)
}

// print writes the text with something for each symbol.
func (f *Formula) print(inputs []Number, put func(Number) string) string {
	var places [maxSymbols]uint8
	f.bind(inputs, &places)
	var out strings.Builder
	for _, p := range f.pieces {
		out.WriteString(p.text)
		if p.symbol >= 0 {
			out.WriteString(put(inputs[places[p.symbol]]))
		}
	}
	return out.String()
}

func (f *Formula) origin() Source { return f.source }

func (f *Formula) written(inputs []Number) string { return f.print(inputs, Number.Symbol) }

func (f *Formula) filled(inputs []Number) string {
	return f.print(inputs, func(n Number) string { return Plain(n.value) })
}

func (f *Formula) lookup() bool { return false }

// complete reports whether all numbers that went in are known; else it notes
// what is missing.
func (n *Number) complete() bool {
	known := true
	for i := range n.inputs {
		if !n.inputs[i].known {
			known = false
			n.missing = append(n.missing, n.inputs[i].missing...)
		}
	}
	if !known {
		n.missing = Gaps(n.missing)
	}
	return known
}

// settled gives the number its value. Where that is not finite, the number is
// unknown and names all members that it came from.
func (n Number) settled(v float64) Number {
	if math.IsNaN(v) || math.IsInf(v, 0) {
		n.missing = n.Doubted(NoAnswer, "", "")
		return n
	}
	n.value, n.known = Round(v), true
	return n
}

// Plain writes a value as short as it can be without an exponent, with a true
// minus sign.
func Plain(v float64) string {
	s := strconv.FormatFloat(v, 'f', -1, 64)
	return strings.Replace(s, "-", "−", 1)
}
