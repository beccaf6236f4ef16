package earthing_test

import (
	"sunclause/facts/book"
	"sunclause/facts/earthing"
	"sunclause/facts/facttest"
	"sunclause/facts/working"
)

type object = map[string]any

type list = []any

// house is a string on one frame, with an inverter without separation on a
// TN-C-S supply. A bonding conductor leads over a bar to the main terminal.
func house() object {
	return object{
		"project": object{"reference": "test", "stage": "design", "country": "GB"},
		"datasheets": object{
			"modules": object{"M": object{"technology": "mono_si", "pmax_w": 500, "voc_v": 49.5, "isc_a": 13.9, "vmp_v": 41.2, "imp_a": 13.1,
				"protection_class": "II"}},
			"inverters": object{"I": object{"dc_voltage_max_v": 600, "ac_power_rated_w": 5000, "phases": 1, "mppts": list{object{}},
				"separation": "none", "leakage_current_ma": 12, "insulation_min_kohm": 25}},
			"cables": object{"c4": copper(4), "c6": copper(6), "c10": copper(10), "c16": copper(16), "al16": object{"csa_mm2": 16, "conductor": "aluminium"},
				"unknown": object{"csa_mm2": 35}},
			"protective_devices": object{"fuse63": object{"kind": "fuse", "rated_a": 63, "operates_0_4s_a": 605, "operates_5s_a": 320}},
		},
		"strings":   list{object{"id": "S1", "module": "M", "modules_in_series": 10}},
		"inverters": list{object{"id": "INV1", "datasheet": "I"}},
		"ac": object{
			"supply": object{"id": "SUP", "voltage_v": 230, "ze_ohm": 0.21, "device": "fuse63", "neutral_mm2": 25, "line_mm2": 25},
			"boards": list{object{"id": "B1", "joined_in": "SUP", "ways": list{object{"id": "1", "serves": "pv_supply"}}}},
		},
		"cables": list{
			run("R1", "S1", "INV1.1", "pv_string", ""), run("R2", "MET", "EB1", "earthing", "c16"), run("R3", "EB1", "FR1", "bonding", "c10"),
			run("R4", "INV1.ac", "B1.1", "ac", ""),
		},
		"earthing": object{
			"arrangement": "TN-C-S", "main_terminal": object{"id": "MET"}, "terminals": list{object{"id": "EB1"}},
			"earthing_conductor": object{"csa_mm2": 16, "material": "copper", "insulated": true, "buried": false},
			"frames":             list{object{"id": "FR1", "strings": list{"S1"}, "conductive": true, "touches_building_metal": false, "resistance_to_main_terminal_kohm": 1800}},
			"electrodes":         list{}, "main_bonds": list{object{"id": "MB1", "bonds": "water", "conductor": object{"csa_mm2": 10, "material": "copper"}}},
		},
	}
}

func copper(size float64) object { return object{"csa_mm2": size, "conductor": "copper"} }

func run(id, from, to, service, sheet string) object {
	r := object{"id": id, "from": from, "to": to, "service": service}
	if sheet != "" {
		r["cable"] = sheet
	}
	return r
}

func frame(doc object) object { return facttest.At(doc, "earthing", "frames", 0) }

// rules are figures as the rule set for Great Britain gives them.
func rules() book.Book {
	from := working.Source{Document: "figures of the tests", How: working.CommonPractice}
	b := book.Book{Parameters: map[string]book.Parameter{}, Tables: map[string]*book.Table{}}
	for name, v := range map[string]float64{
		"body_current_max_ma": 10, "body_resistance_ohm": 1000, "main_bond_min_mm2": 6, "main_bond_max_mm2": 25,
		"buried_unguarded_min_mm2": 16, "buried_corroding_min_mm2": 25, "insulation_current_max_ma": 30,
		"leakage_earth_min_mm2": 10, "leakage_earth_enclosed_min_mm2": 4,
	} {
		b.Parameters[name] = book.Parameter{Name: name, Number: v, Source: from, Set: "test"}
	}
	for name, v := range map[string]string{"frame_regime": "iet_code_of_practice", "main_bonding_method": "half_or_pme"} {
		b.Parameters[name] = book.Parameter{Name: name, Text: v, IsText: true, Source: from, Set: "test"}
	}
	table(b, "conductor_sizes", "size_mm2", "size_mm2", 1, 1, 1.5, 1.5, 2.5, 2.5, 4, 4, 6, 6, 10, 10, 16, 16, 25, 25, 35, 35, 50, 50, 70, 70, 95, 95, 120, 120, 240, 240)
	table(b, "main_bonding_pme", "neutral_up_to_mm2", "bond_mm2", 35, 10, 50, 16, 95, 25, 150, 35, 10000, 50)
	table(b, "metal_conductance", "metal", "over_copper", "copper", 1, "tinned_copper", 1, "aluminium", 0.61)
	table(b, "lightning_class", "class", "k_i", "I", 0.08, "II", 0.06, "III", 0.04, "IV", 0.04)
	table(b, "lightning_down_conductors", "from", "k_c", 1, 1, 2, 0.66, 3, 0.44)
	table(b, "lightning_gap", "material", "k_m", "air", 1, "masonry", 0.5)
	table(b, "array_insulation", "up_to_w", "resistance_kohm", 20000, 30, 30000, 20, 50000, 15, 100000, 10, 200000, 7, 400000, 4)
	table(b, "earthing_conductor_k", "conductor", "k", "copper_insulated", 143, "copper_bare", 159, "steel_bare", 58)
	return b
}

// table adds a table of two columns to a book; cells come in pairs.
func table(b book.Book, name, key, want string, cells ...any) {
	t := &book.Table{Name: name, Title: name, Set: "test", Columns: []book.Column{{Name: key}, {Name: want}}}
	for i := 0; i < len(cells); i += 2 {
		t.Rows = append(t.Rows, map[string]any{key: cell(cells[i]), want: cell(cells[i+1])})
	}
	b.Tables[name] = t
}

func cell(v any) any {
	if n, ok := v.(int); ok {
		return float64(n)
	}
	return v
}

func derive(t facttest.T, doc object) earthing.Facts { return deriveBy(t, doc, rules()) }

func deriveBy(t facttest.T, doc object, b book.Book) earthing.Facts {
	t.Helper()
	r := facttest.Derive(t, doc, b)
	return earthing.Derive(r.Installation, r.Circuit, r.Strings, r.Cables, b)
}
