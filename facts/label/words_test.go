package label_test

import (
	"slices"
	"testing"

	"sunclause/facts/working"
)

// The string of the site has 569.25 V and 17.375 A at most, by the worked example
// of TestPrinted; the words are invented.
func TestWords(t *testing.T) {
	values := func(words string) object {
		return object{"legend": "dc_maximum_values", "on": "ISO1", "values_at": "maximum", "voltage_max_v": 570, "current_max_a": 17.4, "text": words}
	}
	says := func(l object, words string) object {
		l["text"] = words
		return l
	}
	settings := func(members object) object {
		doc := site()
		doc["inverters"].(list)[0].(object)["settings"] = members
		return doc
	}
	set := func() object { return object{"under_voltage_1_v": 184, "under_voltage_1_s": 2.5} }
	planned := func(doc object) object {
		doc["project"].(object)["stage"] = "design"
		return doc
	}
	supplied := func() object {
		doc := site()
		doc["ac"].(object)["supply"] = object{"id": "SUP", "voltage_v": 230}
		return doc
	}
	protection := func(words string) object {
		return object{"legend": "protection_settings", "location": "main_board", "text": words}
	}
	steps := func(words string) object {
		return object{"legend": "shutdown_procedure", "location": "main_board", "steps": 3, "parts_named": list{"ISO1", "ISO2"}, "text": words}
	}
	for _, c := range []struct {
		name    string
		doc     object
		label   object
		want    string
		missing string // where it cannot be told
	}{
		{"as stated", site(), values("Maximum 570 V d.c., 17.4 A d.c."), "none", ""},
		{"without blanks, other units", site(), values("Max 0.57kV DC, 17400mA"), "none", ""},
		{"decimal comma, thousands", site(), says(values(""), "Maximum 570,0 V, 17,4 A"), "none", ""},
		{"a digit lost", site(), values("Maximum 57 V d.c., 17.4 A d.c."), "57 V, not 570 V", ""},
		{"a digit too many", site(), values("Maximum 5,700 V d.c., 17.4 A d.c."), "5,700 V, not 570 V", ""},
		{"two wrong", site(), values("Maximum 57 V d.c., 174 A d.c."), "57 V, not 570 V, 174 A, not 17.4 A", ""},
		{"no figures", site(), values("See the schedule"), "none", ""},
		{"a.c. is another thing", supplied(), values("Maximum 570 V d.c., 17.4 A d.c., 230 V a.c."), "none", ""},
		{"nothing stated as printed", site(), object{"legend": "dc_maximum_values", "on": "ISO1", "values_at": "maximum", "text": "Maximum 570 V"}, "", "/labels/0/voltage_max_v"},
		{"another legend, as worked out", site(), object{"legend": "dc_isolator", "on": "ISO1", "text": "Isolator, up to 1000 V d.c."}, "none", ""},
		{"another legend, too low", site(), object{"legend": "dc_isolator", "on": "ISO1", "text": "Isolator, up to 350 V d.c."}, "350 V, not 569.25 V", ""},
		{"another legend, on the AC side", site(), object{"legend": "main_ac_isolator", "on": "ISO2", "text": "230 V, 32 A"}, "none", ""},
		{"not written yet", planned(site()), object{"legend": "dc_isolator", "on": "ISO1"}, "none", ""},
		{"up, and not written down", site(), object{"legend": "dc_isolator", "on": "ISO1"}, "", "/labels/0/text"},
		{"minutes", site(), object{"legend": "capacitor_discharge", "on": "INV1", "discharge_wait_min": 5, "text": "Wait 5 minutes"}, "none", ""},
		{"minutes in seconds", site(), object{"legend": "capacitor_discharge", "on": "INV1", "discharge_wait_min": 5, "text": "Wait 300 s"}, "none", ""},
		{"minutes too few", site(), object{"legend": "capacitor_discharge", "on": "INV1", "discharge_wait_min": 5, "text": "Wait 0.5 minutes"}, "0.5 minutes, not 5 min", ""},
		{"settings", settings(set()), protection("U< 184 V 2.5 s"), "none", ""},
		{"settings of another country", settings(set()), protection("U< 195.5 V 2.5 s"), "195.5 V, not 184 V", ""},
		{"a setting that is still to be chosen", planned(settings(set())), protection("U< 184 V 2.5 s; f< 47.5 Hz"), "none", ""},
		{"a setting that nobody states", settings(set()), protection("U< 184 V 2.5 s; f< 47.5 Hz"), "", "/inverters/0/settings"},
		{"the date", site(), object{"legend": "next_inspection", "on": "B1", "date_printed": "2036-05-05", "text": "Last 2026-05-05. Next 2036-05"}, "none", ""},
		{"another date", site(), object{"legend": "next_inspection", "on": "B1", "date_printed": "2037-05-05", "text": "Last 2026-05-05. Next 2036-05"}, "2026-05-05 and 2036-05, not 2037-05-05", ""},
		{"steps", site(), steps("1 ISO2 to OFF. 2 ISO1 to OFF. 3 Lock both."), "none", ""},
		{"a step left out", site(), steps("1 ISO2 to OFF. 3 Lock both."), "2 numbered steps, not 1 to 3", ""},
		{"a part there is not", site(), steps("1 ISO2 to OFF. 2 ISO7 to OFF. 3 Lock both."), "ISO7, which is no part", ""},
		{"parts that are not named", site(), object{"legend": "dual_supply", "on": "B1", "parts_named": list{}, "text": "Isolate at ISO2 and B1"}, "ISO2 and B1, not among the parts named", ""},
		{"parts of which nobody says that they are named", site(), object{"legend": "dual_supply", "on": "B1", "text": "Isolate at ISO2 and B1"}, "", "/labels/0/parts_named"},
		{"the number of the cells", site(), object{"legend": "battery_data", "on": "B1", "un_number": "UN3480", "energy_kwh": 10, "battery_voltage_v": 48, "text": "48 V, 10 kWh, UN3480"}, "none", ""},
		{"of other cells", site(), object{"legend": "battery_data", "on": "B1", "un_number": "UN3480", "energy_kwh": 10, "battery_voltage_v": 48, "text": "48 V, 10 kWh, UN3840"}, "UN3840, not UN3480", ""},
	} {
		t.Run(c.name, func(t *testing.T) {
			f := one(t, c.doc, c.label).WordsUnlike
			if f.Value() != c.want || f.Known() != (c.missing == "") {
				t.Errorf("unlike is %q, missing %v; want %q", f.Value(), f.Missing(), c.want)
			}
			if c.missing != "" && !slices.Contains(working.Pointers(f.Missing()), c.missing) {
				t.Errorf("missing is %v, want %s", f.Missing(), c.missing)
			}
		})
	}
}
