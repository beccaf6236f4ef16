package commissioning_test

import (
	"fmt"
	"maps"
	"testing"

	"sunclause/facts/book"
	"sunclause/facts/commissioning"
	"sunclause/facts/facttest"
)

type object = map[string]any

type list = []any

// module is an invented one; a test that needs another changes it.
func module() object {
	m := facttest.Module()
	maps.Copy(m, object{"isc_coeff_pct_per_k": 0.045, "system_voltage_max_v": 1500, "length_mm": 2000, "width_mm": 1000})
	return m
}

// site is a finished installation of strings of so many modules each.
func site(m object, series ...int) object {
	strings := list{}
	for i, n := range series {
		strings = append(strings, object{"id": fmt.Sprintf("S%d", i+1), "module": "M", "modules_in_series": n})
	}
	return object{
		"project":       object{"reference": "test", "stage": "as_built", "country": "GB"},
		"site":          object{"temp_min_c": -15, "temp_max_c": 35},
		"datasheets":    object{"modules": object{"M": m}},
		"strings":       strings,
		"commissioning": object{},
	}
}

// reading is one of a string in a light and warmth.
func reading(id, of string, u, i, g, t float64) object {
	return object{"id": id, "string": of, "voc_v": u, "isc_a": i, "irradiance_w_per_m2": g, "cell_temperature_c": t}
}

func record(doc object) object { return doc["commissioning"].(object) }

// figures are those of a rule set, with the irradiance factor a.
func figures(a float64) book.Book {
	b := facttest.Book(object{"voltage_method": "coefficient", "isc_factor": 1.25, "voltage_irradiance_factor": a, "insulation_voltage_factor": 1.25})
	facttest.Table(b, "conductor_resistance", "csa_mm2", "resistance_20c_ohm_per_km", 4.0, 4.61, 10.0, 1.83)
	b.Tables["insulation_test"] = &book.Table{Name: "insulation_test", Rows: []map[string]any{
		{"below_v": 120.0, "test_voltage_v": 250.0, "resistance_min_megohm": 0.5},
		{"up_to_v": 500.0, "test_voltage_v": 500.0, "resistance_min_megohm": 1.0},
		{"up_to_v": 1000.0, "test_voltage_v": 1000.0, "resistance_min_megohm": 1.0},
		{"test_voltage_v": 1500.0, "resistance_min_megohm": 1.0}}}
	b.Tables["inspection_points"] = &book.Table{Name: "inspection_points", Rows: []map[string]any{{"point": "labels"}, {"point": "rcd_type"}}}
	return b
}

func derive(t testing.TB, doc object, b book.Book) commissioning.Facts {
	t.Helper()
	r := facttest.Derive(t, doc, b)
	return commissioning.Derive(r.Installation, r.Circuit, r.Strings, r.Cables, b)
}
