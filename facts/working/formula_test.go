package working_test

import (
	"math"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"sunclause/facts/working"
	"sunclause/schema"
)

func stated(symbol, at string, v float64) working.Number {
	return working.Stated(symbol, "", schema.NewNumber(at, v))
}

func product(inputs ...working.Number) working.Number {
	return working.Product("p", "", working.ByDefinition, inputs...)
}

func TestRound(t *testing.T) {
	for _, c := range []struct{ v, want float64 }{
		{0, 0}, {0.1 + 0.2, 0.3}, {1.15 * 495, 569.25}, {-1.15 * 495, -569.25},
		{123456789012345, 123456789012000}, {1e-300, 1e-300}, {math.MaxFloat64, 1.79769313486e308},
		{math.Inf(1), math.Inf(1)},
	} {
		if got := working.Round(c.v); got != c.want {
			t.Errorf("Round(%v) = %v, want %v", c.v, got, c.want)
		}
	}
	if !math.IsNaN(working.Round(math.NaN())) {
		t.Error("not a number was rounded to one")
	}
}

// A limit that is met exactly must look met: 1.16 · 495 V is 574.2 V,
// though the binary fractions multiply to a little less.
func TestProductIsExact(t *testing.T) {
	noisy, voltage := 1.16, 495.0
	if noisy*voltage == 574.2 {
		t.Fatal("the example shows nothing: it is exact without rounding")
	}
	for factor, want := range map[float64]float64{1.16: 574.2, 1.15: 569.25} {
		if n := product(stated("K", "/k", factor), stated("U", "/u", voltage)); n.Value() != want {
			t.Errorf("%v · 495 = %v, want %v", factor, n.Value(), want)
		}
	}
}

func TestRoundKeepsTwelveDigits(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		v := rapid.Float64Range(-1e9, 1e9).Draw(t, "v")
		r := working.Round(v)
		if math.Abs(r-v) > 5.001e-12*math.Abs(v) {
			t.Errorf("Round(%v) = %v, further off than half of the twelfth digit", v, r)
		}
		if working.Round(r) != r {
			t.Errorf("Round(%v) = %v rounds again to %v", v, r, working.Round(r))
		}
		digits := strings.Trim(strings.NewReplacer(".", "", "−", "").Replace(working.Plain(r)), "0")
		if len(digits) > 12 {
			t.Errorf("Round(%v) = %s has more than twelve digits", v, working.Plain(r))
		}
	})
}

func TestUnknownFlows(t *testing.T) {
	a, b := working.Unknown("a", "", "/b", "/a", "/b"), working.Unknown("b", "", "/a", "/c")
	known := stated("k", "/k", 2)
	n := product(a, b, known, product(known, a))
	if n.Known() {
		t.Fatalf("a product of unknown numbers is %v", n.Value())
	}
	if want := []string{"/a", "/b", "/c"}; !slices.Equal(working.Pointers(n.Missing()), want) {
		t.Errorf("missing %v, want each once: %v", n.Missing(), want)
	}
	if n.Filled() != "" {
		t.Errorf("an unknown number has the working %q", n.Filled())
	}
	if n := working.Stated("x", "", schema.Number{}); n.Known() || len(n.Missing()) != 1 {
		t.Errorf("a number that was left out is known, or does not name itself: %v", n.Missing())
	}
}

// Whatever becomes of a number, it is known only if all it came from is, and an
// unknown one names just what its inputs lacked.
func TestUnknownFlowsThroughAnyFormula(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var inputs []working.Number
		lacks := map[string]bool{}
		for _, at := range rapid.SliceOfN(rapid.SampledFrom([]string{"/a", "/b", "/c", "/d"}), 1, 6).Draw(t, "members") {
			if rapid.Bool().Draw(t, "stated") {
				inputs = append(inputs, stated("x", at, 3))
			} else {
				inputs = append(inputs, working.Unknown("x", "", at))
				lacks[at] = true
			}
		}
		for name, n := range map[string]working.Number{
			"sum": working.Sum("s", "", inputs...), "greatest": working.Greatest("g", "", inputs...),
			"least": working.Least("l", "", inputs...), "spread": working.Spread("d", "", inputs...),
		} {
			if n.Known() != (len(lacks) == 0) {
				t.Errorf("%s of numbers of which %d are unknown: known is %t", name, len(lacks), n.Known())
			}
			if len(n.Missing()) != len(lacks) {
				t.Errorf("%s misses %v, want %v", name, n.Missing(), lacks)
			}
		}
	})
}

func TestNoFiniteAnswer(t *testing.T) {
	a, b := stated("a", "/a", 0), stated("b", "/b", 0)
	for name, n := range map[string]working.Number{
		"division by zero": working.Ratio("r", stated("a", "/a", 1), b),
		"zero by zero":     working.Ratio("r", a, b),
		"too great":        product(stated("a", "/a", 1e300), stated("b", "/b", 1e300)),
	} {
		if n.Known() {
			t.Errorf("%s: known as %v", name, n.Value())
		}
		if want := []string{"/a", "/b"}; !slices.Equal(working.Pointers(n.Missing()), want) {
			t.Errorf("%s: missing %v, want the members put in, %v", name, n.Missing(), want)
		}
	}
}

// The words of a look-up are printed with the numbers at the place of their symbols.
func TestFilled(t *testing.T) {
	for _, c := range []struct {
		name, text string
		inputs     []working.Number
		want       string
	}{
		{"each symbol", "N_s · U_oc", []working.Number{stated("N_s", "", 10), stated("U_oc", "", 49.5)}, "10 · 49.5"},
		{"true minus sign", "a − b", []working.Number{stated("a", "", -10), stated("b", "", 25)}, "−10 − 25"},
		{"one symbol of several inputs", "I + I + I", []working.Number{stated("I", "", 1), stated("I", "", 2), stated("I", "", 3)}, "1 + 2 + 3"},
		{"one input in several places", "100 · (a − b) / a", []working.Number{stated("a", "", 8), stated("b", "", 2)}, "100 · (8 − 2) / 8"},
		{"symbol within a symbol", "U_oc,max − U_oc − U", []working.Number{stated("U", "", 1), stated("U_oc", "", 2), stated("U_oc,max", "", 3)}, "3 − 2 − 1"},
		{"symbol within a word", "least of l, l", []working.Number{stated("l", "", 4), stated("l", "", 5)}, "least of 4, 5"},
		{"symbol within another input's", "n_n · n", []working.Number{stated("n", "", 2), stated("n_n", "", 3)}, "3 · 2"},
		{"symbol before a comma without a space", "U_oc,max · U_oc", []working.Number{stated("U_oc", "", 2)}, "U_oc,max · 2"},
		{"Greek", "ΔT · T", []working.Number{stated("T", "", 2), stated("ΔT", "", 35)}, "35 · 2"},
		{"value that looks like a symbol", "a · b", []working.Number{stated("a", "", 1), stated("b", "", 2)}, "1 · 2"},
		{"title of a table", "table “factors by T” at T", []working.Number{stated("T", "", 2)}, "table “factors by T” at 2"},
		{"title without an end", "table “factors by T", []working.Number{stated("T", "", 2)}, "table “factors by 2"},
		{"input without a symbol", "table", []working.Number{stated("", "", 2)}, "table"},
		{"small and great", "a · b", []working.Number{stated("a", "", 1e-9), stated("b", "", 1e21)}, "0.000000001 · 1000000000000000000000"},
	} {
		t.Run(c.name, func(t *testing.T) {
			words := working.Lookup{Text: c.text}
			if got := words.Of(func(...float64) float64 { return 0 }, c.inputs...).Filled(); got != c.want {
				t.Errorf("%q filled is %q, want %q", c.text, got, c.want)
			}
		})
	}
	if got := stated("a", "/a", 1).Filled(); got != "" {
		t.Errorf("a stated number has the working %q", got)
	}
}

func TestPointers(t *testing.T) {
	a, b := stated("a", "/a", 1), stated("b", "/b", 2)
	figure := working.Figure("K", "", 1.15, "parameter", working.ByDefinition)
	n := product(product(a, b), product(b, a), figure, working.Counted("n", 3, "/n"))
	if want := []string{"/a", "/b", "/n"}; !slices.Equal(n.Pointers(), want) {
		t.Errorf("pointers %v, want %v", n.Pointers(), want)
	}
	if got := figure.ChosenBy("/mounting").Pointers(); !slices.Equal(got, []string{"/mounting"}) {
		t.Errorf("pointers %v of a figure that a member chose", got)
	}
}

func TestSumGreatestLeastSpread(t *testing.T) {
	x := []working.Number{stated("x", "", 2), stated("x", "", 7), stated("x", "", -1)}
	for _, c := range []struct {
		n      working.Number
		want   float64
		filled string
		lookup bool
	}{
		{working.Sum("s", "A", x...), 8, "2 + 7 + −1", false},
		{working.Greatest("g", "A", x...), 7, "greatest of 2, 7, −1", false},
		{working.Least("l", "A", x...), -1, "least of 2, 7, −1", false},
		{working.Spread("d", "A", x...), 8, "7 − −1", false},
		{working.Difference("d", "A", x[0], x[1]), -5, "2 − 7", false},
		{working.Sum("s", "A"), 0, "0", false},
		{working.Product("p", "A", working.ByDefinition, x...), -14, "2 · 7 · −1", false},
	} {
		if c.n.Value() != c.want || c.n.Filled() != c.filled || c.n.Lookup() != c.lookup || c.n.Unit() != "A" {
			t.Errorf("%s = %s = %v %s (lookup %t), want %s = %v A (lookup %t)", c.n.Symbol(), c.n.Filled(), c.n.Value(), c.n.Unit(), c.n.Lookup(), c.filled, c.want, c.lookup)
		}
	}
	for name, n := range map[string]working.Number{"greatest": working.Greatest("g", ""), "least": working.Least("l", ""), "spread": working.Spread("d", "")} {
		if n.Known() {
			t.Errorf("%s of nothing is %v", name, n.Value())
		}
	}
}
