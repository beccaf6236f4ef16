package working

import (
	"maps"
	"math"
	"slices"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"
)

// Formula is one step of arithmetic: the quantity it gives and how it is
// written in symbols.
type Formula struct {
	Symbol string
	Unit   string
	Text   string // right-hand side in symbols, as in "N_s · U_oc"
	Source Source
	Lookup bool // the text names a table or a choice and is not arithmetic
}

// Of puts numbers into the formula. The result is unknown as soon as one of
// them is, and whenever the arithmetic has no finite answer.
func (f Formula) Of(compute func(x ...float64) float64, inputs ...Number) Number {
	n := Number{symbol: f.Symbol, unit: f.Unit, formula: f.Text, lookup: f.Lookup, source: f.Source, inputs: inputs}
	x := make([]float64, len(inputs))
	known := true
	for i := range inputs {
		x[i] = inputs[i].value
		if !inputs[i].known {
			known = false
			n.missing = append(n.missing, inputs[i].missing...)
		}
	}
	if !known {
		n.missing = once(n.missing)
		return n
	}
	v := compute(x...)
	if math.IsNaN(v) || math.IsInf(v, 0) {
		n.missing = n.Pointers()
		return n
	}
	n.value, n.known = Round(v), true
	return n
}

// Sum adds numbers of one kind; none at all give zero.
func Sum(symbol, unit string, inputs ...Number) Number {
	f := Formula{Symbol: symbol, Unit: unit, Text: joined(inputs, " + "), Source: ByDefinition}
	return f.Of(func(x ...float64) float64 {
		total := 0.0
		for _, v := range x {
			total += v
		}
		return total
	}, inputs...)
}

// Greatest picks the greatest of some numbers; of none it is unknown.
func Greatest(symbol, unit string, inputs ...Number) Number {
	return pick(symbol, unit, "greatest of ", math.Max, inputs)
}

// Least picks the least of some numbers; of none it is unknown.
func Least(symbol, unit string, inputs ...Number) Number {
	return pick(symbol, unit, "least of ", math.Min, inputs)
}

// Spread is the greatest less the least of some numbers; of none it is unknown.
func Spread(symbol, unit string, inputs ...Number) Number {
	hi, lo := Greatest("max", unit, inputs...), Least("min", unit, inputs...)
	f := Formula{Symbol: symbol, Unit: unit, Text: "max − min", Source: ByDefinition}
	return f.Of(func(x ...float64) float64 { return x[0] - x[1] }, hi, lo)
}

func pick(symbol, unit, words string, choose func(a, b float64) float64, inputs []Number) Number {
	f := Formula{Symbol: symbol, Unit: unit, Text: words + joined(inputs, ", "), Source: ByDefinition, Lookup: true}
	if len(inputs) == 0 {
		return Unknown(symbol, unit)
	}
	return f.Of(func(x ...float64) float64 {
		best := x[0]
		for _, v := range x[1:] {
			best = choose(best, v)
		}
		return best
	}, inputs...)
}

func joined(inputs []Number, sep string) string {
	if len(inputs) == 0 {
		return "0"
	}
	words := make([]string, len(inputs))
	for i := range inputs {
		words[i] = inputs[i].symbol
	}
	return strings.Join(words, sep)
}

// Filled writes the formula with the numbers put in: "10 · 49.5". Where inputs
// share a symbol, each stands where the symbol comes up next. The “titles” of
// tables stay as they are. It is "" for a stated or an unknown number.
func (n Number) Filled() string {
	if n.formula == "" || !n.known {
		return ""
	}
	values := map[string][]float64{}
	for _, in := range n.inputs {
		values[in.symbol] = append(values[in.symbol], in.value)
	}
	symbols := slices.Collect(maps.Keys(values))
	slices.SortFunc(symbols, func(a, b string) int { return len(b) - len(a) }) // U_oc,max before U_oc
	var filled strings.Builder
	for at := 0; at < len(n.formula); {
		symbol := symbolAt(n.formula, at, symbols)
		if symbol == "" {
			size := plainAt(n.formula[at:])
			filled.WriteString(n.formula[at : at+size])
			at += size
			continue
		}
		v := values[symbol]
		filled.WriteString(Plain(v[0]))
		if len(v) > 1 {
			values[symbol] = v[1:]
		}
		at += len(symbol)
	}
	return filled.String()
}

// plainAt is the length of what is to be copied: a title to its end, or one rune.
func plainAt(text string) int {
	if strings.HasPrefix(text, "“") {
		if end := strings.Index(text, "”"); end > 0 {
			return end
		}
	}
	_, size := utf8.DecodeRuneInString(text)
	return size
}

// symbolAt finds the symbol that stands at a place of a formula as a word of
// its own, the longest first; "" when there is none.
func symbolAt(formula string, at int, symbols []string) string {
	before, _ := utf8.DecodeLastRuneInString(formula[:at])
	if inWord(before) {
		return ""
	}
	for _, s := range symbols {
		if s == "" || !strings.HasPrefix(formula[at:], s) {
			continue
		}
		rest := strings.TrimPrefix(formula[at+len(s):], ",") // the comma of U_oc,max belongs to the word
		if after, _ := utf8.DecodeRuneInString(rest); !inWord(after) {
			return s
		}
	}
	return ""
}

func inWord(r rune) bool { return r == '_' || unicode.IsLetter(r) || unicode.IsDigit(r) }

// Plain writes a value as short as it can be without an exponent, with a true
// minus sign.
func Plain(v float64) string {
	s := strconv.FormatFloat(v, 'f', -1, 64)
	return strings.Replace(s, "-", "−", 1)
}
