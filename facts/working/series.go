package working

import "strings"

// series is arithmetic over any number of numbers. It writes its text over the
// symbols of those that it is given.
type series struct {
	words     string // before the first
	separator string
	source    Source
	combine   op
}

var (
	sum      = &series{separator: " + ", source: ByDefinition, combine: add}
	greatest = &series{words: "greatest of ", separator: ", ", source: ByDefinition, combine: greater}
	least    = &series{words: "least of ", separator: ", ", source: ByDefinition, combine: lesser}
)

// Sum adds numbers of one kind; none at all give zero.
func Sum(symbol, unit string, inputs ...Number) Number { return sum.of(symbol, unit, inputs) }

// Product multiplies numbers; none at all give zero.
func Product(symbol, unit string, source Source, inputs ...Number) Number {
	s := &series{separator: " · ", source: source, combine: multiply}
	return s.of(symbol, unit, inputs)
}

// Greatest picks the greatest of some numbers; of none it is unknown.
func Greatest(symbol, unit string, inputs ...Number) Number {
	if len(inputs) == 0 {
		return NoNumber(symbol, unit)
	}
	return greatest.of(symbol, unit, inputs)
}

// Least picks the least of some numbers; of none it is unknown.
func Least(symbol, unit string, inputs ...Number) Number {
	if len(inputs) == 0 {
		return NoNumber(symbol, unit)
	}
	return least.of(symbol, unit, inputs)
}

// spread, difference and ratio stand for themselves: there is no other way to write
// them.
var (
	spread     = NewFormula("s", "", "max − min", ByDefinition)
	difference = NewFormula("d", "", "a − b", ByDefinition)
	ratio      = NewFormula("q", "", "a / b", ByDefinition)
)

// Spread is the greatest less the least of some numbers; of none it is unknown.
func Spread(symbol, unit string, inputs ...Number) Number {
	n := spread.Of(Greatest("max", unit, inputs...), Least("min", unit, inputs...))
	n.symbol, n.unit = symbol, unit
	return n
}

// Difference is one number less another of the same unit.
func Difference(symbol, unit string, a, b Number) Number {
	n := difference.Of(a.For("a"), b.For("b"))
	n.symbol, n.unit = symbol, unit
	return n
}

// Ratio is one number over another of the same unit.
func Ratio(symbol string, a, b Number) Number { return ratio.Of(a.For("a"), b.For("b")).As(symbol) }

func (s *series) of(symbol, unit string, inputs []Number) Number {
	n := Number{symbol: symbol, unit: unit, from: s, inputs: inputs}
	if !n.complete() {
		return n
	}
	v := 0.0
	for i := range inputs {
		if i == 0 {
			v = inputs[i].value
		} else {
			v = s.combine.ofTwo(v, inputs[i].value)
		}
	}
	return n.settled(v)
}

func (s *series) print(inputs []Number, put func(Number) string) string {
	if len(inputs) == 0 {
		return "0"
	}
	parts := make([]string, len(inputs))
	for i := range inputs {
		parts[i] = put(inputs[i])
	}
	return s.words + strings.Join(parts, s.separator)
}

func (s *series) origin() Source { return s.source }

func (s *series) written(inputs []Number) string { return s.print(inputs, Number.Symbol) }

func (s *series) filled(inputs []Number) string {
	return s.print(inputs, func(n Number) string { return Plain(n.value) })
}

func (s *series) lookup() bool { return false }
