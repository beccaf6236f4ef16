package working

import (
	"math"
	"regexp"
	"sort"
	"strconv"
	"strings"
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
	n := Number{symbol: f.Symbol, unit: f.Unit, formula: f.Text, source: f.Source, inputs: inputs, known: true}
	x := make([]float64, len(inputs))
	for i, in := range inputs {
		x[i] = in.value
		if !in.known {
			n.known = false
			n.missing = union(n.missing, in.missing)
		}
	}
	if !n.known {
		return n
	}
	if v := compute(x...); !math.IsNaN(v) && !math.IsInf(v, 0) {
		n.value = Round(v)
		return n
	}
	n.known, n.missing = false, n.Pointers()
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
	for i, in := range inputs {
		words[i] = in.symbol
	}
	return strings.Join(words, sep)
}

// Filled writes the formula with the numbers put in: "10 · 49.5". Where inputs
// share a symbol, each stands where the symbol comes up next. It is "" for a
// stated or an unknown number.
func (n Number) Filled() string {
	if n.formula == "" || !n.known {
		return ""
	}
	values := map[string][]float64{}
	var symbols []string
	for _, in := range n.inputs {
		if in.symbol == "" {
			continue
		}
		if len(values[in.symbol]) == 0 {
			symbols = append(symbols, regexp.QuoteMeta(in.symbol))
		}
		values[in.symbol] = append(values[in.symbol], in.value)
	}
	if len(symbols) == 0 {
		return n.formula
	}
	sort.Slice(symbols, func(i, j int) bool { return len(symbols[i]) > len(symbols[j]) })
	return regexp.MustCompile(strings.Join(symbols, "|")).ReplaceAllStringFunc(n.formula, func(s string) string {
		v := values[s][0]
		if len(values[s]) > 1 {
			values[s] = values[s][1:]
		}
		return Plain(v)
	})
}

// Plain writes a value as short as it can be without an exponent, with a true
// minus sign.
func Plain(v float64) string {
	s := strconv.FormatFloat(v, 'f', -1, 64)
	return strings.Replace(s, "-", "−", 1)
}
