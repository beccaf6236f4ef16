package earthing_test

import (
	"sunclause/facts/book"
	"sunclause/facts/earthing"
	"sunclause/facts/facttest"
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
	b := facttest.Book(map[string]any{
		"body_current_max_ma": 10.0, "body_resistance_ohm": 1000.0, "main_bond_min_mm2": 6.0, "main_bond_max_mm2": 25.0,
		"buried_unguarded_min_mm2": 16.0, "buried_corroding_min_mm2": 25.0, "insulation_current_max_ma": 30.0,
		"leakage_earth_min_mm2": 10.0, "leakage_earth_enclosed_min_mm2": 4.0,
		"frame_regime": "iet_code_of_practice", "main_bonding_method": "half_or_pme",
	})
	facttest.Table(b, "conductor_sizes", "size_mm2", "size_mm2", made(1, 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 70, 95, 120, 240)...)
	facttest.Table(b, "main_bonding_pme", "neutral_up_to_mm2", "bond_mm2", 35.0, 10.0, 50.0, 16.0, 95.0, 25.0, 150.0, 35.0, 10000.0, 50.0)
	facttest.Table(b, "metal_conductance", "metal", "over_copper", "copper", 1.0, "tinned_copper", 1.0, "aluminium", 0.61)
	facttest.Table(b, "lightning_class", "class", "k_i", "I", 0.08, "II", 0.06, "III", 0.04, "IV", 0.04)
	facttest.Table(b, "lightning_down_conductors", "from", "k_c", 1.0, 1.0, 2.0, 0.66, 3.0, 0.44)
	facttest.Table(b, "lightning_gap", "material", "k_m", "air", 1.0, "masonry", 0.5)
	facttest.Table(b, "array_insulation", "up_to_w", "resistance_kohm", 20000.0, 30.0, 30000.0, 20.0, 50000.0, 15.0, 100000.0, 10.0, 200000.0, 7.0, 400000.0, 4.0)
	facttest.Table(b, "earthing_conductor_k", "conductor", "k", "copper_insulated", 143.0, "copper_bare", 159.0, "steel_bare", 58.0)
	return b
}

// made are the pairs of cells of sizes that are found by themselves.
func made(sizes ...float64) []any {
	var cells []any
	for _, s := range sizes {
		cells = append(cells, s, s)
	}
	return cells
}

func derive(t facttest.T, doc object) earthing.Facts { return deriveBy(t, doc, rules()) }

func deriveBy(t facttest.T, doc object, b book.Book) earthing.Facts {
	t.Helper()
	r := facttest.Derive(t, doc, b)
	return earthing.Derive(r.Installation, r.Circuit, r.Strings, r.Cables, b)
}
