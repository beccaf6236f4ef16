package label_test

import (
	"fmt"
	"testing"

	"sunclause/facts/facttest"
	"sunclause/facts/label"
)

func one(t *testing.T, doc object, l object) label.Label {
	t.Helper()
	return derive(t, put(doc, l), figures()).Labels[0]
}

// The string of ten modules of 49.5 V and 13.9 A has 495 V and 13.9 A at
// standard test conditions; 569.25 V and 17.375 A by the factors 1.15 and 1.25
// (worked example of the trade guide of 2012).
func TestPrinted(t *testing.T) {
	two := func() object { // two strings on one way
		doc := site()
		doc["strings"] = append(doc["strings"].(list), object{"id": "S2", "module": "M", "modules_in_series": 8})
		doc["arrays"] = list{object{"id": "J1", "ways": 2, "joined_by": "junction_box", "place": "roof_surface"}}
		doc["cables"].(list)[0].(object)["from"] = "J1.out"
		doc["cables"] = append(doc["cables"].(list),
			object{"id": "C1", "from": "S1", "to": "J1.1", "service": "pv_string"}, object{"id": "C2", "from": "S2", "to": "J1.2", "service": "pv_string"})
		return doc
	}
	broken := func() object {
		doc := site()
		doc["cables"].(list)[1].(object)["from"] = "INV1.battery"
		return doc
	}
	for _, c := range []struct {
		name       string
		doc        object
		on, values string
		want       string // voltage and current derived, and what is printed over them
	}{
		{"isolator, maximum", site(), "ISO1", "maximum", "569.25 17.375 1 0.8"},
		{"isolator, test conditions", site(), "ISO1", "stc", "495 13.9 1.15 1"},
		{"inverter", site(), "INV1", "maximum", "569.25 17.375 1 0.8"},
		{"run", site(), "R1", "maximum", "569.25 17.375 1 0.8"},
		{"two strings, isolator", two(), "ISO1", "maximum", "569.25 34.75 1 0.4"},
		{"two strings, box", two(), "J1", "maximum", "569.25 34.75 1 0.4"},
		{"two strings, input", two(), "INV1", "stc", "495 27.8 1.15 0.5"},
		{"two strings, one's own run", two(), "C2", "maximum", "455.4 17.375 1.25 0.8"},
		{"conditions not stated", site(), "ISO1", "", unknown(4, "/labels/0/values_at")},
		{"string not traced", broken(), "ISO1", "stc", unknown(4, "/cables")},
		{"AC isolator", site(), "ISO2", "stc", "[] [] [] []"},
	} {
		t.Run(c.name, func(t *testing.T) {
			l := object{"legend": "dc_maximum_values", "on": c.on, "voltage_max_v": 569.25, "current_max_a": 13.9}
			if c.values != "" {
				l["values_at"] = c.values
			}
			f := one(t, c.doc, l)
			got := fmt.Sprint(facttest.Shown(f.VoltageDerivedV), " ", facttest.Shown(f.CurrentDerivedA), " ", facttest.Shown(f.VoltageRatio), " ", facttest.Shown(f.CurrentRatio))
			if got != c.want {
				t.Errorf("derived and ratios %s, want %s", got, c.want)
			}
		})
	}
}

func TestToPrint(t *testing.T) {
	b := figures([3]string{"dc_maximum_values", "dc_isolator", "always"})
	b.Tables["labels"].Rows[0]["prints"] = "voltage_max current_max"
	p := derive(t, site(), b).Places[0]
	if got := facttest.Shown(p.VoltageDueV) + " " + facttest.Shown(p.CurrentDueA); got != "569.25 17.375" {
		t.Errorf("to be printed: %s", got)
	}
}

func TestNamed(t *testing.T) {
	third := func() object { // a generation board between inverter and main board
		doc := site()
		ac := doc["ac"].(object)
		ac["boards"] = append(ac["boards"].(list), object{"id": "B2", "role": "generation", "joined_in": "B1.1", "ways": list{object{"id": "1"}}})
		doc["cables"].(list)[3].(object)["to"] = "B2.1"
		return doc
	}
	noRole := func() object {
		doc := site()
		delete(doc["ac"].(object)["boards"].(list)[0].(object), "role")
		return doc
	}
	for _, c := range []struct {
		name  string
		doc   object
		named list
		want  string // sources, isolators, DC isolators not named
	}{
		{"all", site(), list{"B1", "ISO1", "ISO2"}, "0 0 0"},
		{"main board and AC isolator", site(), list{"B1", "ISO2"}, "0 1 1"},
		{"main board only", site(), list{"B1"}, "1 2 1"},
		{"AC isolator only", site(), list{"ISO2"}, "1 1 1"},
		{"the DC isolator does not part it from the mains", site(), list{"B1", "ISO1"}, "1 1 0"},
		{"nothing", site(), list{}, "2 2 1"},
		{"not stated", site(), nil, unknown(3, "/labels/0/parts_named")},
		{"generation board", third(), list{"B1", "B2"}, "0 2 1"},
		{"role not stated", noRole(), list{"B1", "ISO1", "ISO2"}, "[/ac/boards/0/role] 0 0"},
		{"role not stated of the only board named", noRole(), list{"B1"}, "[/ac/boards/0/role] 2 1"},
		{"role not stated of a board not named", noRole(), list{"ISO2"}, "1 1 1"},
	} {
		t.Run(c.name, func(t *testing.T) {
			l := on("B1")
			if c.named != nil {
				l["parts_named"] = c.named
			}
			f := one(t, c.doc, l)
			if got := fmt.Sprint(facttest.Shown(f.SourcesNotNamed), " ", facttest.Shown(f.IsolatorsNotNamed), " ", facttest.Shown(f.DcIsolatorsNotNamed)); got != c.want {
				t.Errorf("not named: %s, want %s", got, c.want)
			}
		})
	}
}

func TestOutdoors(t *testing.T) {
	doc := func() object {
		doc := route(list{stretch(5, object{"place": "roof_surface"}), stretch(5)})
		doc["cables"].(list)[0].(object)["connectors"] = list{object{"id": "C1", "position_m": 1}}
		doc["ac"].(object)["supply"].(object)["place"] = "outdoor_wall"
		doc["isolators"].(list)[0].(object)["place"] = "plant_room"
		doc["earthing"] = object{"frames": list{object{"id": "F1"}}}
		return doc
	}
	along := func(x float64) object { return object{"legend": "dc_cable", "run": "R1", "position_m": x} }
	for _, c := range []struct {
		label object
		want  string
	}{
		{on("SUP"), "true"}, {location("origin"), "true"}, {on("ISO1"), "false"}, {on("ISO2"), "[/isolators/1/place]"},
		{location("meter"), "[/ac/meters/0/place]"}, {location("outside_wall"), "true"}, {location("fire_panel"), "false"},
		{location("main_board"), "[/ac/boards/0/place]"}, {along(4), "true"}, {along(6), "false"}, {along(11), "[/labels/0/position_m]"},
		{on("C1"), "true"}, {on("F1"), "true"}, {on("S1"), "true"},
	} {
		f := one(t, doc(), c.label)
		if got := facttest.Shown(f.Outdoors); got != c.want {
			t.Errorf("label %v: outdoors %s, want %s", c.label, got, c.want)
		}
	}
}

func TestBatteryLabel(t *testing.T) {
	l := object{"legend": "battery_data", "on": "BAT1", "energy_kwh": 10, "battery_voltage_v": 48}
	f := one(t, battery(), l)
	if got := fmt.Sprint(facttest.Shown(f.EnergyDerivedKwh), " ", facttest.Shown(f.BatteryNominalV), " ", facttest.Shown(f.Batteries)); got != "10 48 1" {
		t.Errorf("energy, voltage and number of batteries %s", got)
	}
	if f := one(t, site(), location("origin")); facttest.Shown(f.Batteries) != "[/storage/batteries]" {
		t.Errorf("batteries %s", facttest.Shown(f.Batteries))
	}
}

func TestDaysAfterService(t *testing.T) {
	doc := site()
	doc["commissioning"] = object{"date": "2026-02-27"}
	l := object{"legend": "next_inspection", "on": "B1", "date_printed": "2026-03-02"}
	if f := one(t, doc, l); facttest.Shown(f.DaysAfterService) != "3" {
		t.Errorf("days %s", facttest.Shown(f.DaysAfterService))
	}
	delete(l, "date_printed")
	if f := one(t, doc, l); facttest.Shown(f.DaysAfterService) != "[/labels/0/date_printed]" {
		t.Errorf("days %s", facttest.Shown(f.DaysAfterService))
	}
	if f := one(t, site(), object{"legend": "capacitor_discharge", "on": "INV1"}); facttest.Shown(f.DischargeMakerMin) != "5" {
		t.Errorf("maker's minutes %s", facttest.Shown(f.DischargeMakerMin))
	}
}
