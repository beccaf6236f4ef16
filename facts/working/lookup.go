package working

import (
	"maps"
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"
)

// Lookup is how a quantity is found that no arithmetic gives: in a table, by a
// choice, by geometry. Its text says so in words and is not worked out; the code
// beside it is.
type Lookup struct {
	Symbol string
	Unit   string
	Text   string // in words; symbols of the numbers put in, and “titles” of tables
	Source Source
}

// Of finds the quantity from some numbers, which find takes in the same order. The
// result is unknown as soon as one of them is, and whenever there is no finite
// answer.
func (l Lookup) Of(find func(x ...float64) float64, inputs ...Number) Number {
	n := Number{symbol: l.Symbol, unit: l.Unit, from: &description{l.Text, l.Source}, inputs: inputs}
	if !n.complete() {
		return n
	}
	values := make([]float64, len(inputs))
	for i := range inputs {
		values[i] = inputs[i].value
	}
	return n.settled(find(values...))
}

// description is a text about some numbers, by their symbols.
type description struct {
	text   string
	source Source
}

func (d *description) origin() Source { return d.source }

func (d *description) written([]Number) string { return d.text }

func (d *description) lookup() bool { return true }

// filled writes the text with the numbers put in. Where inputs share a symbol,
// each stands where the symbol comes up next. The “titles” of tables stay as
// they are.
func (d *description) filled(inputs []Number) string {
	values := map[string][]float64{}
	for _, in := range inputs {
		values[in.symbol] = append(values[in.symbol], in.value)
	}
	symbols := slices.Collect(maps.Keys(values))
	slices.SortFunc(symbols, func(a, b string) int { return len(b) - len(a) }) // U_oc,max before U_oc
	var filled strings.Builder
	for at := 0; at < len(d.text); {
		symbol := symbolAt(d.text, at, symbols)
		if symbol == "" {
			size := plainAt(d.text[at:])
			filled.WriteString(d.text[at : at+size])
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

// symbolAt finds the symbol that stands at a place of a text as a word of its
// own, the longest first; "" when there is none.
func symbolAt(text string, at int, symbols []string) string {
	before, _ := utf8.DecodeLastRuneInString(text[:at])
	if inWord(before) {
		return ""
	}
	for _, s := range symbols {
		if s == "" || !strings.HasPrefix(text[at:], s) {
			continue
		}
		rest := strings.TrimPrefix(text[at+len(s):], ",") // the comma of U_oc,max belongs to the word
		if after, _ := utf8.DecodeRuneInString(rest); !inWord(after) {
			return s
		}
	}
	return ""
}

func inWord(r rune) bool { return r == '_' || unicode.IsLetter(r) || unicode.IsDigit(r) }
