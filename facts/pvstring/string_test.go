package pvstring_test

import (
	"fmt"
	"testing"

	"sunclause/facts/facttest"
	"sunclause/facts/pvstring"
	"sunclause/facts/working"
)

func firstString(t *testing.T, doc object, method string) *pvstring.String {
	t.Helper()
	return &derive(t, doc, rules(method)).Strings[0]
}

func TestVoltageMethod(t *testing.T) {
	for method, want := range map[string]float64{"coefficient": 544.5, "table": 574.2, "factor": 569.25} {
		facttest.Near(t, method, firstString(t, plant(m1(), 10, 1), method).VocMaxV, want, 1e-9)
	}
	facttest.Wants(t, "unheard-of method", firstString(t, plant(m1(), 10, 1), "guess").VocMaxV, `the rule set's voltage_method is "guess"; it can be coefficient, table, factor, greatest`)
	b := rules("coefficient")
	delete(b.Parameters, "voltage_method")
	facttest.Wants(t, "no method", derive(t, plant(m1(), 10, 1), b).Strings[0].VocMaxV, "the rule set has no parameter voltage_method")
}

// The greatest of the fixed factor and the coefficient: 10 modules of 49.5 V by
// 1.15 are 569.25 V, by -0.25 %/K at -15 °C 544.5 V; at -40 °C the coefficient
// gives 49.5 · 10 · (1 + 0.0025 · 65) = 575.4375 V and takes over.
func TestGreatestMethod(t *testing.T) {
	facttest.Near(t, "by the factor", firstString(t, plant(m1(), 10, 1), "greatest").VocMaxV, 569.25, 1e-9)
	doc := plant(m1(), 10, 1)
	facttest.At(doc, "site")["temp_min_c"] = -40
	facttest.Near(t, "by the coefficient", firstString(t, doc, "greatest").VocMaxV, 575.4375, 1e-9)
}

// The tables and factors are made for crystalline silicon.
func TestTechnology(t *testing.T) {
	const technology = "/datasheets/modules/M/technology"
	for word, crystalline := range map[string]bool{"mono_si": true, "multi_si": true, "heterojunction_si": true, "cdte": false, "cigs": false, "other_thin_film": false} {
		s := firstString(t, plant(with(m1(), object{"technology": word}), 10, 1), "table")
		if s.VocTableV.Known() != crystalline || s.VocFactorV.Known() != crystalline {
			t.Errorf("%s: known by table %t, by factor %t, want %t", word, s.VocTableV.Known(), s.VocFactorV.Known(), crystalline)
		}
		if !crystalline {
			facttest.Wants(t, word, s.VocTableV, technology)
			facttest.Near(t, word+" goes by its coefficient", s.VocMaxV, 544.5, 1e-9)
		}
		facttest.Near(t, word+" by coefficient", s.VocCoefficientV, 544.5, 1e-9)
	}
	s := firstString(t, plant(with(m1(), object{"technology": "other_thin_film"}), 10, 1), "coefficient")
	const own = "/datasheets/modules/M/vmp_coeff_pct_per_k"
	facttest.Wants(t, "hot voltage at maximum power of thin film", s.VmpHotV, own)
	facttest.Wants(t, "cold voltage at maximum power of thin film", s.VmpColdV, own)
	for word, by := range map[string]string{"mono_si": "power_coefficient", "cigs": "power_coefficient", "cdte": "worse_of_power_and_voc_coefficient"} {
		facttest.Is(t, word, firstString(t, plant(with(m1(), object{"technology": word}), 10, 1), "coefficient").VmpBy, by)
	}
}

func TestWhatIsMissingIsNamed(t *testing.T) {
	const module = "/datasheets/modules/M/"
	doc := plant(m1(), 10, 1)
	delete(facttest.At(doc, "site"), "temp_min_c")
	delete(facttest.At(doc, "site"), "temp_max_c")
	delete(facttest.At(doc, "datasheets", "modules", "M"), "voc_coeff_pct_per_k")
	delete(facttest.At(doc, "datasheets", "modules", "M"), "pmax_coeff_pct_per_k")
	delete(facttest.At(doc, "datasheets", "modules", "M"), "ocpr_max_a")
	delete(facttest.At(doc, "strings", 0), "mounting")
	s := firstString(t, doc, "coefficient")
	for _, c := range []struct {
		what    string
		fact    working.Number
		missing []string
	}{
		{"cold voltage", s.VocMaxV, []string{module + "voc_coeff_pct_per_k", "/site/temp_min_c"}},
		{"table voltage", s.VocTableV, []string{"/site/temp_min_c"}},
		{"cell temperature", s.CellTempMaxC, []string{"/site/temp_max_c", "/strings/0/mounting"}},
		{"hot voltage at maximum power", s.VmpHotV, []string{module + "pmax_coeff_pct_per_k", "/site/temp_max_c", "/strings/0/mounting"}},
		{"reverse withstand", s.ReverseWithstand, []string{module + "ocpr_max_a"}},
		{"fuse", s.FuseRatedA, []string{"/strings/0/overcurrent/device"}},
	} {
		facttest.Wants(t, c.what, c.fact, c.missing...)
	}
	if s.FuseFitted.Known() || s.ConnectorSame.Known() {
		t.Error("what was not stated of fuse and connector is known")
	}
}

// A table ends where it ends.
func TestColderThanTheTable(t *testing.T) {
	s := firstString(t, with(plant(m1(), 10, 1), object{"site": coldest(-40.5)}), "table")
	facttest.Wants(t, "table voltage", s.VocTableV, "/site/temp_min_c")
}

// What a number came from leads back to every member that had a say.
func TestPointers(t *testing.T) {
	s := firstString(t, plant(m1(), 10, 1), "coefficient")
	want := []string{
		"/datasheets/modules/M/pmax_coeff_pct_per_k", "/datasheets/modules/M/vmp_v",
		"/site/temp_max_c", "/strings/0/modules_in_series", "/strings/0/mounting",
	}
	got := s.VmpHotV.Pointers()
	if len(got) != len(want) {
		t.Fatalf("pointers %v, want %v", got, want)
	}
	for i := range want {
		if got[i] != want[i] {
			t.Errorf("pointer %s, want %s", got[i], want[i])
		}
	}
}

func TestFuse(t *testing.T) {
	s := firstString(t, fused(m1(), 3, 25), "coefficient")
	if !s.FuseFitted.Value() || s.FuseKind.Value() != "fuse" || s.FusePoles.Value() != "both" {
		t.Errorf("fuse fitted %v, kind %q, poles %q", s.FuseFitted.Value(), s.FuseKind.Value(), s.FusePoles.Value())
	}
	facttest.Near(t, "rated voltage", s.FuseRatedV, 1000, 0)
}

func TestConnector(t *testing.T) {
	module := with(m1(), object{"connector": "type A"})
	for mate, same := range map[string]bool{"type A": true, "type B": false} {
		doc := plant(module, 10, 1)
		facttest.At(doc, "strings", 0)["connector_mate"] = mate
		if s := firstString(t, doc, "coefficient"); !s.ConnectorSame.Known() || s.ConnectorSame.Value() != same {
			t.Errorf("%s mated with type A: same is %v", mate, s.ConnectorSame.Value())
		}
	}
}

// Modules drawn for a string are those in series, on the plane that it names.
func TestDrawn(t *testing.T) {
	n := 0
	module := func(of string) object {
		n++
		return object{"id": fmt.Sprintf("M%d", n), "x_mm": 0, "y_mm": 0, "orientation": "portrait", "string": of}
	}
	drawn := func(planes ...object) pvstring.String {
		doc := plant(m1(), 2, 1)
		all := list{}
		for _, p := range planes {
			all = append(all, p)
		}
		doc["roof"] = object{"planes": all}
		facttest.At(doc, "strings", 0)["plane"] = "P1"
		return *firstString(t, doc, "coefficient")
	}
	plane := func(id string, modules ...any) object { return object{"id": id, "modules": append(list{}, modules...)} }
	s := drawn(plane("P1", module("S1"), module("S1")), plane("P2"))
	facttest.Is(t, "both", s.ModulesDrawn, 2)
	facttest.Is(t, "on its plane", s.DrawnOn, "P1")
	facttest.Is(t, "roof drawn", s.RoofDrawn, true)
	s = drawn(plane("P1", module("S1")), plane("P2", module("S1"), module("S1")))
	facttest.Is(t, "one too many", s.ModulesDrawn, 3)
	facttest.Is(t, "on two planes", s.DrawnOn, "P1, P2")
	loose := module("S1")
	delete(loose, "string")
	s = drawn(plane("P1", module("S1"), loose))
	facttest.Wants(t, "one that says of no string", s.ModulesDrawn, "/roof/planes/0/modules/1/string")
	s = drawn(plane("P1", module("S1"), module("S1"), loose))
	facttest.Is(t, "one that cannot be of it", s.ModulesDrawn, 2)
	s = drawn(plane("P1"))
	facttest.Is(t, "roof not drawn", s.RoofDrawn, false)
	facttest.Wants(t, "nowhere", s.DrawnOn, "/roof/planes")
	s = drawn(object{"id": "P1"})
	facttest.Wants(t, "modules not stated", s.RoofDrawn, "/roof/planes/0/modules")
}

// How modules stand to the roof is held against the plane on which they are drawn;
// where it is stated otherwise, nobody knows how hot they get.
func TestMountingAsDrawn(t *testing.T) {
	for _, c := range []struct {
		plane object
		drawn string
		hot   bool // whether the temperature of the cells is known
	}{
		{object{"tilt_to_roof_deg": 0, "gap_under_modules_mm": 100}, "on_roof", true},
		{object{"tilt_to_roof_deg": 0, "gap_under_modules_mm": 0}, "in_roof", false},
		{object{"tilt_to_roof_deg": 15}, "tilted_rack", false},
		{object{"tilt_to_roof_deg": 0}, "", true},
		{object{"gap_under_modules_mm": 100}, "", true},
	} {
		for _, drawn := range []bool{true, false} {
			doc := plant(m1(), 10, 1)
			c.plane["id"], c.plane["modules"] = "P", list{}
			planes := list{c.plane}
			if drawn {
				c.plane["modules"] = list{object{"id": "A1", "string": "S1", "x_mm": 0, "y_mm": 0, "orientation": "portrait"}}
				planes = append(planes, object{"id": "Q", "tilt_to_roof_deg": 30})
				doc["strings"].(list)[0].(object)["plane"] = "Q"
			} else {
				doc["strings"].(list)[0].(object)["plane"] = "P"
			}
			doc["roof"] = object{"planes": planes}
			s := derive(t, doc, rules("coefficient")).Strings[0]
			if s.MountingDrawn.Value() != c.drawn || s.CellTempMaxC.Known() != c.hot {
				t.Errorf("%v, drawn %t: %q, temperature known %t", c.plane, drawn, s.MountingDrawn.Value(), s.CellTempMaxC.Known())
			}
		}
	}
}
