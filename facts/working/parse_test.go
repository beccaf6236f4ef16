package working_test

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"sunclause/facts/working"
)

// formula makes a formula of the tests, or says why its text cannot be read.
func formula(text string) (f *working.Formula, err error) {
	defer func() {
		if r := recover(); r != nil {
			err = fmt.Errorf("%v", r)
		}
	}()
	return working.NewFormula("v", "", text, working.ByDefinition), nil
}

func TestFormulaIsItsText(t *testing.T) {
	x := []working.Number{stated("x", "/x", 3), stated("y_2,max", "/y", 8), stated("Δφ", "/z", 0.5)}
	for text, want := range map[string]float64{
		"1 + 2 · 3": 7, "10 · 49.5 · (1 + −0.25/100 · (−10 − 25))": 538.3125, "8 − 3 − 2": 3, "8 / 4 / 2": 1,
		"−(2 + 1)": -3, "7 − −1": 8, "100 · (8 − 2) / 8": 75, "greatest of 2, −1, 1 + 2": 3, "least of 2, −1": -1,
		"√(3² + 4²)": 5, "2 · |3 − 8|": 10, "2^−1 + ln(1) + cos(60)": 1, "4 · sin(30)²": 1, "0": 0, "0.000000001 · 2": 2e-9,
		"√3 · 2": 2 * math.Sqrt(3), "−3²": -9, "2 · min(7; 3; 5)": 6, "max(1; 2) − min(1; 2)": 1,
		"7 / 2, at least 1, at most 3": 3, "2 · 1 − 5, at least 0 and at most 1": 0,
		"x + y_2,max·Δφ": 7, "(y_2,max − x) / Δφ": 10, "x² · x^2 · x": 243, "greatest of x, y_2,max, Δφ": 8, "Δφ, at least x, at most y_2,max": 3,
	} {
		f, err := formula(text)
		if err != nil {
			t.Error(err)
			continue
		}
		var inputs []working.Number
		for _, in := range x {
			if strings.Contains(text, in.Symbol()) && (in.Symbol() != "x" || strings.Contains(strings.ReplaceAll(text, "max", ""), "x")) {
				inputs = append(inputs, in)
			}
		}
		n := f.Of(inputs...)
		if !n.Known() || math.Abs(n.Value()-want) > 1e-11*math.Abs(want) {
			t.Errorf("%s = %v, want %v", text, n.Value(), want)
		}
		if n.Formula() != text {
			t.Errorf("%q is printed as %q", text, n.Formula())
		}
	}
	for _, text := range []string{"", "1 +", "(1", "1)", "1 2", "greatest of ", "2 - 1", "2 * x", "1.2.3", "|x", "min(1; 2", "min(1, 2)", "x y", "√", "$", "“title”",
		strings.Repeat("(1 + ", 17) + "1" + strings.Repeat(")", 17), "a + b + c + d + e + f + g + h + i + j + k + l + m + n + o + p + q"} {
		if f, err := formula(text); err == nil {
			t.Errorf("%q was read as %v", text, f)
		}
	}
}

// expression draws arithmetic as text, with what it comes to by Go's own
// operators, and a number for each of its symbols.
func expression(t *rapid.T, depth int, inputs map[string]working.Number) (text string, v float64) {
	kind := rapid.IntRange(0, 9).Draw(t, "kind")
	if depth == 0 {
		kind = min(kind, 1)
	}
	inner := func() (string, float64) { return expression(t, depth-1, inputs) }
	switch kind {
	case 0:
		v = float64(rapid.IntRange(0, 400).Draw(t, "number")) / 8
		return working.Plain(v), v
	case 1:
		name := rapid.SampledFrom([]string{"a", "b_1", "U_oc,max", "U_oc", "Δφ", "ln_x"}).Draw(t, "symbol")
		if _, ok := inputs[name]; !ok {
			inputs[name] = stated(name, "/"+name, float64(rapid.IntRange(-80, 80).Draw(t, name))/4)
		}
		return name, inputs[name].Value()
	case 2:
		a, x := inner()
		return "(" + a + ")²", x * x
	case 3: // one within another cannot be written
		a, x := expression(t, 0, inputs)
		return "|" + a + " − 3|", math.Abs(x - 3)
	case 4:
		a, x := inner()
		return "−(" + a + ")", -x
	case 5:
		a, x := inner()
		b, y := inner()
		return "min(" + a + "; " + b + ")", math.Min(x, y)
	}
	a, x := inner()
	b, y := inner()
	switch kind {
	case 6:
		return "(" + a + ") + (" + b + ")", x + y
	case 7:
		return "(" + a + ") − (" + b + ")", x - y
	case 8:
		return "(" + a + ") · (" + b + ")", x * y
	}
	return "(" + a + ") / (" + b + ")", x / y
}

// Any arithmetic comes to what Go makes of it, and so does what is printed with
// the numbers put in.
func TestFormulaComesToWhatItSays(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		inputs := map[string]working.Number{}
		text, want := expression(t, 4, inputs)
		f, err := formula(text)
		if err != nil {
			t.Fatal(err)
		}
		var put []working.Number
		for _, n := range inputs { // in any order
			put = append(put, n)
		}
		n := f.Of(put...)
		if math.IsNaN(want) || math.IsInf(want, 0) {
			if n.Known() {
				t.Fatalf("%s = %v, want no answer", text, n.Value())
			}
			return
		}
		if !n.Known() || n.Value() != working.Round(want) {
			t.Fatalf("%s = %v, want %v", text, n.Value(), want)
		}
		again, err := formula(n.Filled())
		if err != nil {
			t.Fatal(err)
		}
		if got := again.Of(); got.Value() != n.Value() {
			t.Fatalf("%s = %s comes to %v, and %v is printed", text, n.Filled(), got.Value(), n.Value())
		}
	})
}

// A number and a symbol that do not find each other are a mistake of the program.
func TestFormulaNeedsANumberForEachSymbol(t *testing.T) {
	f, err := formula("100 · a / b")
	if err != nil {
		t.Fatal(err)
	}
	a, b, open := stated("a", "/a", 1), stated("b", "/b", 4), working.Unknown("b", "", "/b")
	for name, inputs := range map[string][]working.Number{
		"one too few": {a}, "none": nil, "another symbol": {a, b.As("c")}, "one too many": {a, b, stated("c", "", 1)},
		"one twice": {a, b, b}, "for one that is not there": {a, b.For("c")}, "an unknown one too few": {open},
	} {
		func() {
			defer func() {
				if r := recover(); r == nil || !strings.Contains(fmt.Sprint(r), "v = 100 · a / b") {
					t.Errorf("%s: %v, want a panic that names the formula", name, r)
				}
			}()
			f.Of(inputs...)
		}()
	}
	n := f.Of(b.As("ΔU").For("a"), a.As("ΔU").For("b"))
	if n.Value() != 400 || n.Formula() != "100 · ΔU / ΔU" || n.Filled() != "100 · 4 / 1" {
		t.Errorf("%s = %s = %v", n.Formula(), n.Filled(), n.Value())
	}
	if n := f.Of(open, a); n.Known() || fmt.Sprint(n.Missing()) != "[/b]" || n.Formula() != "100 · a / b" {
		t.Errorf("of an unknown number: %v", n)
	}
}

// A text of any signs is read, or refused with a word about it.
func TestAnyTextIsReadOrRefused(t *testing.T) {
	signs := []string{"a", "U_oc,max", "1.5", "0", " ", "+", "−", "·", "/", "^", "²", "√", "(", ")", "|", "ln", "cos", "min(", "max(", ";", ",", ", at least ", " and at most ", "greatest of ", "“", "\xff"}
	rapid.Check(t, func(t *rapid.T) {
		text := strings.Join(rapid.SliceOfN(rapid.SampledFrom(signs), 0, 12).Draw(t, "text"), "")
		if _, err := formula(text); err != nil && !strings.Contains(err.Error(), "cannot be read") {
			t.Fatalf("%q: %v", text, err)
		}
	})
}

func TestWorkOut(t *testing.T) {
	if v, err := working.WorkOut("greatest of 10 · 49.5 · (1 + −0.25/100 · (−10 − 25)), 8"); err != nil || v != 538.3125 {
		t.Errorf("%v, %v", v, err)
	}
	for _, text := range []string{"U · 2", "1 +", "table “factors” at 2", "2 - 1"} {
		if v, err := working.WorkOut(text); err == nil {
			t.Errorf("%q was worked out to %v", text, v)
		}
	}
}
