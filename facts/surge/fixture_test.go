package surge_test

import (
	"testing"

	"sunclause/facts/book"
	"sunclause/facts/facttest"
	"sunclause/facts/surge"
)

type object = map[string]any

type list = []any

// site is a dwelling with two strings of ten modules, each on an input of its
// own, S1 over an isolator. At the factor 1.15 a string has 569.25 V, and its
// design current is 17.375 A. The AC side goes over a board to the supply, with
// a device on a way of the board.
func site() object {
	return object{
		"project": object{"reference": "test", "stage": "design", "country": "GB", "premises": "dwelling", "design_date": "2026-02-10"},
		"site":    object{"temp_min_c": -15, "temp_max_c": 35, "lightning_ng_per_km2_yr": 0.7},
		"datasheets": object{
			"modules":   object{"M": facttest.Module()},
			"inverters": object{"I": object{"dc_voltage_max_v": 1000, "dc_impulse_withstand_kv": 4, "mppts": list{object{}, object{}}, "ac_power_rated_w": 5000, "phases": 1}},
			"spds": object{"DC": object{"type": "T2", "system": "pv_dc", "standard": "BS EN 61643-31:2019", "ucpv_v": 600, "iscpv_a": 1000},
				"AC": object{"type": "T2", "system": "ac", "standard": "BS EN 61643-11", "uc_v": 275, "backup_device_max_a": 125}},
			"protective_devices": object{"B32": object{"kind": "circuit_breaker", "rated_a": 32}},
		},
		"strings":   list{object{"id": "S1", "module": "M", "modules_in_series": 10}, object{"id": "S2", "module": "M", "modules_in_series": 10}},
		"inverters": list{object{"id": "INV1", "datasheet": "I"}},
		"isolators": list{object{"id": "Q1", "circuit": "pv_dc", "ways": list{object{"id": "1", "conductors_opened": "both"}}}},
		"cables": list{run("R1", "S1", "Q1.1.in", "pv_string", 6), run("R2", "Q1.1.out", "INV1.1", "pv_string", 22), run("R3", "S2", "INV1.2", "pv_string", 9),
			run("R4", "INV1.ac", "B1.2", "ac", 8), run("R5", "SUP", "B1.in", "ac", 3), run("R6", "MET", "EB", "earthing", 2)},
		"ac": object{"supply": object{"id": "SUP", "voltage_v": 230, "prospective_fault_ka": 6},
			"boards":           list{object{"id": "B1", "role": "main", "ways": list{object{"id": "1", "device": "B32"}, object{"id": "2", "device": "B32"}}}},
			"overvoltage_risk": object{"danger_to_life": false, "safety_service": false, "significant_loss": false, "declined_by_owner": false}},
		"earthing": object{"main_terminal": object{"id": "MET"}, "terminals": list{object{"id": "EB"}}, "lightning_protection": object{"fitted": false}},
		"spds": list{
			object{"id": "P1", "connected_at": "INV1.1", "circuit": "pv_dc", "datasheet": "DC", "live_leads_mm": 150, "earth_lead_mm": 200, "earthed_at": "EB"},
			object{"id": "P2", "connected_at": "Q1.1.in", "circuit": "pv_dc", "datasheet": "DC"},
			object{"id": "P3", "connected_at": "B1.1", "circuit": "ac", "datasheet": "AC"}},
	}
}

func run(id, from, to, service string, length float64) object {
	return object{"id": id, "from": from, "to": to, "service": service, "segments": list{object{"length_m": length}}}
}

func rules() book.Book {
	b := facttest.Book(map[string]any{
		"voltage_method": "factor", "voc_factor": 1.15, "isc_factor": 1.25, "surge_risk_level_until": "2022-09-27", "spd_reach_m": 10.0,
		"spd_uc_factor": 1.1, "ac_impulse_withstand_kv": 2.5, "spd_up_over_withstand_max": 0.8})
	facttest.Table(b, "surge_critical_length", "premises", "k_m_per_km2_yr", "dwelling", 115.0, "commercial", 450.0)
	facttest.Table(b, "surge_environment_factor", "surroundings", "factor", "suburban", 85.0, "urban", 850.0)
	return b
}

func derive(t testing.TB, doc object) surge.Facts {
	t.Helper()
	b := rules()
	r := facttest.Derive(t, doc, b)
	return surge.Derive(r.Installation, r.Circuit, r.Strings, r.Cables, b)
}
