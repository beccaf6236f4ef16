package pvstring_test

import (
	"fmt"
	"testing"

	"sunclause/facts/book"
	"sunclause/facts/circuit"
	"sunclause/facts/facttest"
	"sunclause/facts/pvstring"
	"sunclause/facts/working"
)

// object is a JSON object of an installation.
type object = map[string]any

// list is a JSON list of an installation.
type list = []any

// m1 is the invented module of most tests.
func m1() object {
	return object{
		"technology": "mono_si", "pmax_w": 540, "voc_v": 49.5, "isc_a": 13.9, "vmp_v": 41.2, "imp_a": 13.1,
		"voc_coeff_pct_per_k": -0.25, "pmax_coeff_pct_per_k": -0.29, "ocpr_max_a": 25, "system_voltage_max_v": 1500,
		"bifacial": false,
	}
}

// plant is an installation of alike strings, each with a run of its own to the
// same tracking input. Tests change what they are about.
func plant(module object, series, parallel int) object {
	strings, runs := list{}, list{}
	for i := 1; i <= parallel; i++ {
		id := fmt.Sprintf("S%d", i)
		strings = append(strings, object{"id": id, "module": "M", "modules_in_series": series, "mounting": "on_roof"})
		runs = append(runs, object{"id": fmt.Sprintf("R%d", i), "from": id, "to": "INV1.1", "service": "pv_string"})
	}
	inverter := object{
		"dc_voltage_max_v": 1000, "dc_start_voltage_v": 180, "ac_power_rated_w": 5000, "phases": 1,
		"mppts": list{object{"voltage_min_v": 200, "voltage_max_v": 850, "isc_max_a": 40, "current_max_a": 30, "string_inputs": 3}, object{}},
	}
	return object{
		"project":    object{"reference": "test", "stage": "design", "country": "GB"},
		"site":       object{"temp_min_c": -15, "temp_max_c": 35},
		"datasheets": object{"modules": object{"M": module}, "inverters": object{"I": inverter}},
		"strings":    strings, "cables": runs, "inverters": list{object{"id": "INV1", "datasheet": "I"}},
	}
}

// rules are figures as a rule set gives them.
func rules(method string) book.Book {
	from := working.Source{Document: "figures of the tests", How: working.CommonPractice}
	number := func(name, unit string, v float64) book.Parameter {
		return book.Parameter{Name: name, Unit: unit, Number: v, Source: from, Set: "test"}
	}
	b := book.Book{Parameters: map[string]book.Parameter{
		"voltage_method":           {Name: "voltage_method", Text: method, IsText: true, Source: from, Set: "test"},
		"voc_factor":               number("voc_factor", "", 1.15),
		"isc_factor":               number("isc_factor", "", 1.25),
		"rear_irradiance_w_per_m2": number("rear_irradiance_w_per_m2", "W/m²", 135),
		"ocpr_test_factor":         number("ocpr_test_factor", "", 1.35),
	}}
	factors := &book.Table{Name: "voc_temperature_factors", Title: "voltage factors for crystalline silicon", Source: from, Set: "test",
		Columns: []book.Column{{Name: "at_least_c", Unit: "°C"}, {Name: "factor"}}}
	for _, r := range [][2]float64{{20, 1.02}, {15, 1.04}, {10, 1.06}, {5, 1.08}, {0, 1.10}, {-5, 1.12}, {-10, 1.14},
		{-15, 1.16}, {-20, 1.18}, {-25, 1.20}, {-30, 1.21}, {-35, 1.23}, {-40, 1.25}} {
		factors.Rows = append(factors.Rows, map[string]any{"at_least_c": r[0], "factor": r[1]})
	}
	rise := &book.Table{Name: "cell_temperature_rise", Title: "rise of the cells over the air", Source: from, Set: "test",
		Columns: []book.Column{{Name: "mounting"}, {Name: "rise_k", Unit: "K"}}}
	for mounting, k := range map[string]float64{"in_roof": 40, "on_roof": onRoofRise, "tilted_rack": 30, "free_standing": 25} {
		rise.Rows = append(rise.Rows, map[string]any{"mounting": mounting, "rise_k": k})
	}
	b.Tables = map[string]*book.Table{factors.Name: factors, rise.Name: rise}
	return b
}

// onRoofRise is how much hotter than the air the cells on a roof get, in K.
const onRoofRise = 35

func derive(t testing.TB, doc object, b book.Book) pvstring.Facts {
	t.Helper()
	in := facttest.Installation(t, doc)
	return pvstring.Derive(in, circuit.Of(in), b)
}
