package facts_test

import (
	"fmt"
	"math"
	"strconv"
	"strings"
	"testing"
	"unicode/utf8"

	"sunclause/facts"
	"sunclause/facts/working"
	"sunclause/schema"
)

// The working that is printed has to be true: whoever works out the formula
// with the numbers put in comes to the number beside it.
func TestPrintedWorkingIsTrue(t *testing.T) {
	for file, text := range samples(t) {
		d, err := schema.Decode(file, text)
		if err != nil {
			t.Errorf("%s: %v", file, err)
			continue
		}
		for _, method := range methods {
			f := facts.Derive(&d.Installation, withRoof(t, rules(method)))
			checkNumbers(t, f)
			everyNumber(f, func(path string, n working.Number) { checkWorking(t, file+": "+path, n) })
		}
	}
}

func checkWorking(t *testing.T, path string, n working.Number) {
	t.Helper()
	if !n.Known() || n.Formula() == "" || n.Lookup() && !isChoice(n.Formula()) {
		return
	}
	got, err := workOut(n.Filled())
	switch {
	case err != nil:
		t.Errorf("%s = %s = %s cannot be worked out: %v", path, n.Formula(), n.Filled(), err)
	case math.Abs(got-n.Value()) > 1e-9*math.Abs(n.Value()):
		t.Errorf("%s = %s = %s comes to %v, and %v is printed", path, n.Formula(), n.Filled(), got, n.Value())
	}
}

func isChoice(formula string) bool {
	return strings.HasPrefix(formula, "greatest of ") || strings.HasPrefix(formula, "least of ")
}

func TestWorkOut(t *testing.T) {
	for text, want := range map[string]float64{
		"1 + 2 · 3": 7, "10 · 49.5 · (1 + −0.25/100 · (−10 − 25))": 538.3125, "8 − 3 − 2": 3, "8 / 4 / 2": 1,
		"−(2 + 1)": -3, "7 − −1": 8, "100 · (8 − 2) / 8": 75, "greatest of 2, −1, 1 + 2": 3, "least of 2, −1": -1,
		"√(3² + 4²)": 5, "2 · |3 − 8|": 10, "2^−1 + ln(1) + cos(60)": 1, "4 · sin(30)²": 1, "0": 0, "0.000000001 · 2": 2e-9,
		"3 / 2, at least 2": 2, "8 − 3, at most 4": 4, "2 · 6 / 6 − 1, at least 0 and at most 0.5": 0.5, "4, at least 2 and at most 6": 4,
	} {
		if got, err := workOut(text); err != nil || math.Abs(got-want) > 1e-12 {
			t.Errorf("%s = %v (%v), want %v", text, got, err, want)
		}
	}
	for _, text := range []string{"", "1 +", "U · 2", "(1", "1)", "1 2", "greatest of ", "2 - 1"} {
		if got, err := workOut(text); err == nil {
			t.Errorf("%q was worked out to %v", text, got)
		}
	}
}

// workOut works out a formula with numbers put in: + − · / √ ² ^, parentheses,
// magnitudes, ln, cos and sin of degrees, bounds, and the greatest or the least of a
// list.
func workOut(text string) (v float64, err error) {
	s := &sum{text}
	defer func() {
		if r := recover(); r != nil {
			err = fmt.Errorf("%v", r)
		}
	}()
	switch {
	case s.takes("greatest of"):
		v = s.best(math.Max)
	case s.takes("least of"):
		v = s.best(math.Min)
	default:
		v = s.bounded()
	}
	if strings.TrimSpace(s.text) != "" {
		return 0, fmt.Errorf("%q is left over", s.text)
	}
	return v, nil
}

// sum is what is still to be worked out. It panics at what it cannot read.
type sum struct{ text string }

func (s *sum) takes(sign string) bool {
	rest, ok := strings.CutPrefix(strings.TrimLeft(s.text, " "), sign)
	if ok {
		s.text = rest
	}
	return ok
}

func (s *sum) best(choose func(a, b float64) float64) float64 {
	v := s.terms()
	for s.takes(",") {
		v = choose(v, s.terms())
	}
	return v
}

// bounded works out terms that may end in bounds, as "a / 2, at least b and at most c".
func (s *sum) bounded() float64 {
	v := s.terms()
	for {
		switch {
		case s.takes(", at least"), s.takes("and at least"):
			v = math.Max(v, s.terms())
		case s.takes(", at most"), s.takes("and at most"):
			v = math.Min(v, s.terms())
		default:
			return v
		}
	}
}

func (s *sum) terms() float64 {
	v := s.factors()
	for {
		switch {
		case s.takes("+"):
			v += s.factors()
		case s.takes("−"):
			v -= s.factors()
		default:
			return v
		}
	}
}

func (s *sum) factors() float64 {
	v := s.signed()
	for {
		switch {
		case s.takes("·"):
			v *= s.signed()
		case s.takes("/"):
			v /= s.signed()
		default:
			return v
		}
	}
}

func (s *sum) signed() float64 {
	switch {
	case s.takes("−"):
		return -s.signed()
	case s.takes("√"):
		return math.Sqrt(s.signed())
	case s.takes("ln"):
		return math.Log(s.signed())
	}
	v := s.value()
	for s.takes("²") {
		v *= v
	}
	if s.takes("^") {
		return math.Pow(v, s.signed())
	}
	return v
}

// functions are those that formulas call; angles are in degrees.
var functions = map[string]func(float64) float64{
	"ln":  math.Log,
	"cos": func(x float64) float64 { return math.Cos(x * math.Pi / 180) },
	"sin": func(x float64) float64 { return math.Sin(x * math.Pi / 180) },
}

func (s *sum) value() float64 {
	if s.takes("|") {
		v := s.terms()
		if !s.takes("|") {
			panic("a magnitude is not closed")
		}
		return math.Abs(v)
	}
	for name, of := range functions {
		if s.takes(name) {
			return of(s.value())
		}
	}
	if s.takes("(") {
		v := s.terms()
		if !s.takes(")") {
			panic("a parenthesis is not closed")
		}
		return v
	}
	s.text = strings.TrimLeft(s.text, " ")
	end := 0
	for end < len(s.text) && (s.text[end] == '.' || s.text[end] >= '0' && s.text[end] <= '9') {
		end++
	}
	v, err := strconv.ParseFloat(s.text[:end], 64)
	if err != nil {
		r, _ := utf8.DecodeRuneInString(s.text)
		panic(fmt.Sprintf("%q stands where a number should", r))
	}
	s.text = s.text[end:]
	return v
}
