package earthing_test

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"sunclause/facts/earthing"
	"sunclause/facts/working"
	"sunclause/schema"
)

func given(symbol string, v float64) working.Number {
	return working.Stated(symbol, "", schema.NewNumber("/"+symbol, v))
}

// TestAdiabatic holds the formula against published worked examples.
func TestAdiabatic(t *testing.T) {
	for _, c := range []struct {
		source               string
		current, time, k     float64
		want, tolerance, fit float64 // mm², fraction, and a size that does
	}{
		{"a text book of wiring to BS 7671, ring of 1.5 mm² with 230 V and 1.15 Ω", 230 / 1.15, 0.4, 115, 1.10, 0.01, 1.5},
		{"a trade forum, 247 V and 0.38 Ω", 247 / 0.38, 0.1, 115, 1.78, 0.01, 2.5},
		{"the same at 0.01 s", 247 / 0.38, 0.01, 115, 0.565, 0.01, 1},
		{"a trade forum, 250 A", 250, 0.1, 115, 0.68, 0.02, 1},
		{"a forum of engineers, 13 225 A²s let through", 115, 1, 115, 1, 1e-9, 1},
		{"worked here: steel armour of 4 mm² three-core, 23 mm²", 1000, 0.4, 46, 13.75, 0.001, 23},
	} {
		n := earthing.Adiabatic("S", given("I", c.current), given("t", c.time), given("k", c.k))
		if math.Abs(n.Value()-c.want) > c.tolerance*c.want || n.Value() > c.fit {
			t.Errorf("%s: %v mm², want %v", c.source, n.Value(), c.want)
		}
	}
}

// Table 54.7 of BS 7671, which is Table 54.2 of IEC 60364-5-54.
func TestProtectiveSize(t *testing.T) {
	for line, want := range map[float64]float64{1.5: 1.5, 10: 10, 16: 16, 25: 16, 35: 16, 50: 25, 70: 35, 120: 70, 240: 120} {
		if n := earthing.ProtectiveSize("S", given("S_L", line), rules()); n.Value() != want {
			t.Errorf("line of %v mm²: %v mm², want %v", line, n.Value(), want)
		}
	}
	if n := earthing.ProtectiveSize("S", working.Unknown("S_L", "mm²", "/line"), rules()); n.Known() || n.Missing()[0].At != "/line" {
		t.Errorf("line unknown: %v, missing %v", n.Value(), n.Missing())
	}
}

// The factors k of the table for conductors that stand apart follow from the
// constants of their metals, to half of a unit.
func TestFactorK(t *testing.T) {
	for _, c := range []struct {
		name           string
		metal, beta    float64
		initial, final float64
		want           float64
	}{
		{"copper, thermoplastic", 226, 234.5, 30, 160, 143}, {"aluminium, thermoplastic", 148, 228, 30, 160, 95}, {"steel, thermoplastic", 78, 202, 30, 160, 52},
		{"bare copper", 226, 234.5, 30, 200, 159}, {"bare aluminium", 148, 228, 30, 200, 105}, {"bare steel", 78, 202, 30, 200, 58},
	} {
		if k := c.metal * math.Sqrt(math.Log((c.beta+c.final)/(c.beta+c.initial))); math.Abs(k-c.want) > 0.5 {
			t.Errorf("%s: %v, the table has %v", c.name, k, c.want)
		}
	}
}

// More current, more time or a smaller k never ask for less copper, and a
// thicker line never for a thinner protective conductor.
func TestProtectiveNeverShrinks(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		i, s, k := rapid.Float64Range(1, 5e4).Draw(t, "I"), rapid.Float64Range(0.1, 5).Draw(t, "t"), rapid.Float64Range(40, 230).Draw(t, "k")
		more := rapid.Float64Range(1, 3).Draw(t, "more")
		least := earthing.Adiabatic("S", given("I", i), given("t", s), given("k", k)).Value()
		for name, n := range map[string]working.Number{
			"current": earthing.Adiabatic("S", given("I", i*more), given("t", s), given("k", k)),
			"time":    earthing.Adiabatic("S", given("I", i), given("t", s*more), given("k", k)),
			"k":       earthing.Adiabatic("S", given("I", i), given("t", s), given("k", k/more)),
		} {
			if n.Value() < least*(1-1e-9) {
				t.Errorf("%s: %v is less than %v", name, n.Value(), least)
			}
		}
		line := rapid.Float64Range(0.5, 150).Draw(t, "line")
		if thin, thick := earthing.ProtectiveSize("S", given("S_L", line), rules()), earthing.ProtectiveSize("S", given("S_L", line*more), rules()); thick.Value() < thin.Value() {
			t.Errorf("line of %v mm²: %v, of %v: %v", line, thin.Value(), line*more, thick.Value())
		}
	})
}
