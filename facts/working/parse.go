package working

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"
)

// program is the text of a formula made ready to be worked out and printed.
type program struct {
	symbols []string // each once, in the order in which they come up
	code    []instruction
	pieces  []piece
}

// piece is a length of the text as it stands, and the symbol that follows it;
// -1 for none.
type piece struct {
	text   string
	symbol int
}

// instruction is one step on a stack of values.
type instruction struct {
	op       op
	symbol   uint8
	constant float64
}

type op uint8

const (
	putConstant op = iota
	putSymbol
	add
	subtract
	multiply
	divide
	power
	greater
	lesser
	negate
	root
	square
	magnitude
	logarithm
	cosine // of degrees
	sine   // of degrees
)

const (
	maxSymbols = 16
	maxStack   = 16
)

// functions are those that a formula may call by name.
var functions = map[string]op{"ln": logarithm, "cos": cosine, "sin": sine}

// choices are those that a formula may call on a list in parentheses, parted by
// semicolons.
var choices = map[string]op{"min": lesser, "max": greater}

// parser reads a formula from left to right. It stops at the first thing that it
// cannot read.
type parser struct {
	text   string
	at     int
	copied int // how far the pieces reach
	depth  int // of the stack
	program
	err error
}

// parse reads a formula as NewFormula has it.
func parse(text string) (*program, error) {
	p := &parser{text: text}
	switch {
	case p.takes("greatest of "):
		p.list(greater, ",")
	case p.takes("least of "):
		p.list(lesser, ",")
	default:
		p.terms()
		p.bounds()
	}
	p.skip()
	if p.err == nil && p.at < len(text) {
		p.fail("%q is left over", text[p.at:])
	}
	p.pieces = append(p.pieces, piece{text[p.copied:], -1})
	return &p.program, p.err
}

func (p *parser) fail(format string, args ...any) {
	if p.err == nil {
		p.err = fmt.Errorf(format, args...)
	}
	p.at = len(p.text)
}

func (p *parser) skip() {
	for p.at < len(p.text) && p.text[p.at] == ' ' {
		p.at++
	}
}

// takes moves over a sign where it is the next.
func (p *parser) takes(sign string) bool {
	p.skip()
	if !strings.HasPrefix(p.text[p.at:], sign) {
		return false
	}
	p.at += len(sign)
	return true
}

// emit adds a step; change is by how many values it makes the stack longer.
func (p *parser) emit(i instruction, change int) {
	p.code = append(p.code, i)
	if p.depth += change; p.depth > maxStack {
		p.fail("it is nested too deep")
	}
}

func (p *parser) both(o op) { p.emit(instruction{op: o}, -1) }

func (p *parser) one(o op) { p.emit(instruction{op: o}, 0) }

func (p *parser) list(o op, separator string) {
	p.terms()
	for p.takes(separator) {
		p.terms()
		p.both(o)
	}
}

// bounds reads ", at least a" and ", at most b" after the whole.
func (p *parser) bounds() {
	for {
		switch {
		case p.takes(", at least "), p.takes("and at least "):
			p.terms()
			p.both(greater)
		case p.takes(", at most "), p.takes("and at most "):
			p.terms()
			p.both(lesser)
		default:
			return
		}
	}
}

func (p *parser) terms() {
	p.factors()
	for {
		switch {
		case p.takes("+"):
			p.factors()
			p.both(add)
		case p.takes("−"):
			p.factors()
			p.both(subtract)
		default:
			return
		}
	}
}

func (p *parser) factors() {
	p.signed()
	for {
		switch {
		case p.takes("·"):
			p.signed()
			p.both(multiply)
		case p.takes("/"):
			p.signed()
			p.both(divide)
		default:
			return
		}
	}
}

func (p *parser) signed() {
	switch {
	case p.takes("−"):
		p.signed()
		p.one(negate)
		return
	case p.takes("√"):
		p.signed()
		p.one(root)
		return
	}
	p.value()
	for p.takes("²") {
		p.one(square)
	}
	if p.takes("^") {
		p.signed()
		p.both(power)
	}
}

func (p *parser) value() {
	switch {
	case p.takes("|"):
		p.terms()
		p.close("|")
		p.one(magnitude)
		return
	case p.takes("("):
		p.terms()
		p.close(")")
		return
	}
	start := p.at
	first, _ := utf8.DecodeRuneInString(p.text[start:])
	switch {
	case first >= '0' && first <= '9':
		p.number()
	case unicode.IsLetter(first):
		word := p.word()
		if o, ok := functions[word]; ok {
			p.value()
			p.one(o)
		} else if o, ok := choices[word]; ok && p.takes("(") {
			p.list(o, ";")
			p.close(")")
		} else {
			p.symbol(word, start)
		}
	case start == len(p.text):
		p.fail("it ends where a value should stand")
	default:
		p.fail("%q stands where a value should", first)
	}
}

func (p *parser) close(sign string) {
	if !p.takes(sign) {
		p.fail("a %q is missing", sign)
	}
}

func (p *parser) number() {
	end := p.at
	for end < len(p.text) && (p.text[end] == '.' || p.text[end] >= '0' && p.text[end] <= '9') {
		end++
	}
	v, err := strconv.ParseFloat(p.text[p.at:end], 64)
	if err != nil {
		p.fail("%q is no number", p.text[p.at:end])
		return
	}
	p.at = end
	p.emit(instruction{op: putConstant, constant: v}, 1)
}

// word reads letters, digits and underscores; a comma belongs to it where more
// of it follows at once, as in U_oc,max.
func (p *parser) word() string {
	start := p.at
	for p.at < len(p.text) {
		r, size := utf8.DecodeRuneInString(p.text[p.at:])
		next, _ := utf8.DecodeRuneInString(p.text[p.at+size:])
		if !inWord(r) && !(r == ',' && inWord(next)) {
			break
		}
		p.at += size
	}
	return p.text[start:p.at]
}

func (p *parser) symbol(name string, start int) {
	i := slices.Index(p.symbols, name)
	if i < 0 {
		i = len(p.symbols)
		p.symbols = append(p.symbols, name)
	}
	if i >= maxSymbols {
		p.fail("it has more than %d symbols", maxSymbols)
		return
	}
	p.pieces = append(p.pieces, piece{p.text[p.copied:start], i})
	p.copied = start + len(name)
	p.emit(instruction{op: putSymbol, symbol: uint8(i)}, 1)
}

// evaluate works the program out with a value for each symbol.
func (p *program) evaluate(x *[maxSymbols]float64) float64 {
	var stack [maxStack + 1]float64
	top := 0 // stack[top] is the value last put; stack[0] is none
	for _, i := range p.code {
		switch i.op {
		case putConstant:
			top++
			stack[top] = i.constant
		case putSymbol:
			top++
			stack[top] = x[i.symbol]
		case negate, root, square, magnitude, logarithm, cosine, sine:
			stack[top] = i.op.ofOne(stack[top])
		default:
			top--
			stack[top] = i.op.ofTwo(stack[top], stack[top+1])
		}
	}
	return stack[top]
}

func (o op) ofTwo(a, b float64) float64 {
	switch o {
	case add:
		return a + b
	case subtract:
		return a - b
	case multiply:
		return a * b
	case divide:
		return a / b
	case power:
		return math.Pow(a, b)
	case greater:
		return math.Max(a, b)
	}
	return math.Min(a, b)
}

func (o op) ofOne(a float64) float64 {
	const degree = math.Pi / 180
	switch o {
	case negate:
		return -a
	case root:
		return math.Sqrt(a)
	case square:
		return a * a
	case magnitude:
		return math.Abs(a)
	case logarithm:
		return math.Log(a)
	case cosine:
		return math.Cos(a * degree)
	}
	return math.Sin(a * degree)
}
