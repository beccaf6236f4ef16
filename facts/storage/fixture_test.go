package storage_test

import (
	"testing"

	"sunclause/facts/facttest"
	"sunclause/facts/storage"
)

type object = map[string]any

type list = []any

// site is a battery of two units in parallel, over an isolator on the battery
// terminals of a hybrid inverter, in a detached building.
func site() object {
	return object{
		"project": object{"reference": "test", "stage": "design", "country": "GB", "premises": "dwelling"},
		"datasheets": object{
			"inverters": object{"H": object{"kind": "hybrid", "dc_voltage_max_v": 600, "mppts": list{object{}}, "ac_power_rated_w": 5000, "phases": 1,
				"battery_voltage_max_v": 480, "battery_current_max_a": 30, "backup_output": false}},
			"batteries": object{"B": object{"energy_kwh": 5.1, "voltage_max_v": 230, "charge_current_max_a": 25, "discharge_current_max_a": 20, "short_circuit_ka": 2.5,
				"coupling": "dc", "standard": "BS EN IEC 62619:2022, BS EN 62477-1:2012", "isolator_built_in": false, "overcurrent_built_in": false, "backup_output": false,
				"ambient_min_c": 0, "ambient_max_c": 45, "indoor_use": true, "outdoor_use": false, "clearance_top_mm": 200}},
			"switch_disconnectors": object{"D": object{"poles": 2, "ratings": list{
				object{"utilization_category": "DC-22A", "poles_in_series": 1, "ue_v": 220, "ie_a": 80},
				object{"utilization_category": "DC-22A", "poles_in_series": 1, "ue_v": 440, "ie_a": 60},
				object{"utilization_category": "DC-22A", "poles_in_series": 1, "ue_v": 600, "ie_a": 40},
				object{"utilization_category": "DC-20A", "poles_in_series": 1, "ue_v": 240, "ie_a": 99}}}},
			"protective_devices": object{"F": object{"kind": "fuse", "rated_a": 63, "voltage_dc_v": 250, "breaking_capacity_dc_ka": 10}},
		},
		"inverters": list{object{"id": "INV1", "datasheet": "H", "battery_fitted": true}},
		"isolators": list{object{"id": "Q1", "circuit": "battery_dc", "datasheet": "D", "utilization_category": "DC-22A", "poles_in_series": 1,
			"ways": list{object{"id": "1", "conductors_opened": "both"}}}},
		"cables": list{object{"id": "R1", "from": "BAT", "to": "Q1.1.in", "service": "battery"}, object{"id": "R2", "from": "Q1.1.out", "to": "INV1.battery", "service": "battery"}},
		"storage": object{"batteries": list{object{"id": "BAT", "datasheet": "B", "units": 2, "units_joined": "parallel", "place": "outbuilding",
			"detached_building": true, "fire_separation_min": 60, "isolator": "Q1", "overcurrent_device": "F", "clearances_kept": true, "clear_above_mm": 200}},
			"provision": object{"planned": false}},
		"ac":            object{"boards": list{object{"id": "B1", "ways": list{object{"id": "1", "serves": "spare"}, object{"id": "2", "serves": "lighting"}}}}},
		"commissioning": object{"functional": list{}},
		"handover":      object{"documents": list{}},
	}
}

func bat(doc object) object { return facttest.At(doc, "storage", "batteries", 0) }

func derive(t testing.TB, doc object) storage.Facts {
	t.Helper()
	b := facttest.Book(object{"battery_fire_separation_min": 60.0})
	r := facttest.Derive(t, doc, b)
	return storage.Derive(r.Installation, r.Circuit, r.Strings, r.Cables, b)
}
