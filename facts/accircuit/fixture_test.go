package accircuit_test

import (
	"testing"

	"sunclause/facts/accircuit"
	"sunclause/facts/book"
	"sunclause/facts/cable"
	"sunclause/facts/circuit"
	"sunclause/facts/facttest"
	"sunclause/facts/pvstring"
	"sunclause/facts/working"
	"sunclause/schema"
)

type object = map[string]any

type list = []any

// house is one single-phase inverter of 16 A behind an isolator, on the second
// way of the main board. Tests change what they are about.
func house() object {
	return object{
		"project": object{"reference": "test", "stage": "as_built", "country": "GB"},
		"datasheets": object{
			"inverters": object{"I": inverter(1, 16)},
			"protective_devices": object{
				"D":    breaker("B", 20),
				"FUSE": object{"kind": "fuse", "standard": "BS 88-3", "characteristic": "gG", "rated_a": 80},
			},
			"switch_disconnectors": object{"S": object{"poles": 2, "breaks_all_poles_together": true,
				"ratings": list{object{"utilization_category": "AC-22A", "poles_in_series": 1, "ue_v": 230, "ie_a": 40}}}},
		},
		"inverters": list{object{"id": "INV1", "datasheet": "I"}},
		"isolators": list{object{"id": "ISO", "circuit": "ac", "datasheet": "S", "utilization_category": "AC-22A", "distance_to_inverter_m": 0.5,
			"ways": list{object{"id": "1", "conductors_opened": "line_and_neutral"}}}},
		"cables":   list{run("R1", "INV1.ac", "ISO.1.in"), run("R2", "ISO.1.out", "B1.2"), run("R3", "M.out", "B1.in")},
		"earthing": object{"arrangement": "TN-C-S"},
		"ac": object{
			"supply": object{"id": "SUP", "phases": 1, "voltage_v": 230, "voltage_between_lines_v": 400, "ze_ohm": 0.35},
			"meters": list{object{"id": "M", "joined_in": "SUP"}},
			"boards": list{object{"id": "B1", "role": "main", "rated_a": 100, "incoming_device": "FUSE", "busbar_carries_loads": true,
				"ways": list{object{"id": "1"}, object{"id": "2", "device": "D", "phase": "L1", "rcd_fitted": false}}}},
			"circuits":            list{object{"id": "C", "way": "B1.2", "kind": "final", "sockets": false, "dedicated": true, "additional_protection_needed": false}},
			"existing_generation": list{},
		},
	}
}

func inverter(phases int, current float64) object {
	return object{"kind": "pv", "dc_voltage_max_v": 1000, "mppts": list{object{}}, "ac_power_rated_w": 3680, "ac_current_max_a": current,
		"phases": phases, "separation": "none", "rcd_type_b_not_required": true, "rcd_type_required": "none", "leakage_current_ma": 4, "ac_ocpd_max_a": 32}
}

func breaker(characteristic string, rated float64) object {
	return object{"kind": "circuit_breaker", "characteristic": characteristic, "rated_a": rated, "flow": "bidirectional",
		"flow_declared_by_maker": true, "line_load_marked": false, "let_through_a2s": 15000}
}

func run(id, from, to string) object {
	return object{"id": id, "from": from, "to": to, "service": "ac", "segments": list{object{"length_m": 5, "place": "indoors_surface", "mechanically_protected": false}}}
}

// laid gives every run the same drop, loop and capacity.
type laid struct{ drop, loop, capacity float64 }

func (l laid) facts(in *schema.Installation) cable.Facts {
	test := working.Source{Document: "figures of the tests", How: working.CommonPractice}
	var f cable.Facts
	for _, r := range in.Cables {
		f.Runs = append(f.Runs, cable.Run{
			Subject:   working.Subject{ID: r.ID.Value},
			LengthM:   working.Figure("l", "m", 5, "", test),
			DropV:     working.Figure("ΔU", "V", l.drop, "", test),
			LoopOhm:   working.Figure("R", "Ω", l.loop, "", test),
			CapacityA: working.Figure("I_z", "A", l.capacity, "", test),
		})
	}
	return f
}

func derive(t facttest.T, doc object, l laid) accircuit.Facts {
	t.Helper()
	in := facttest.Installation(t, doc)
	return accircuit.Derive(in, circuit.Of(in), pvstring.Facts{}, l.facts(in), rules())
}

// one derives the circuit of a house.
func one(t facttest.T, doc object, l laid) accircuit.Circuit {
	t.Helper()
	f := derive(t, doc, l)
	if len(f.Circuits) != 1 {
		t.Fatal(len(f.Circuits), "circuits, want one")
	}
	return f.Circuits[0]
}

// rules are figures as a rule set gives them.
func rules() book.Book {
	b := facttest.Book(map[string]any{"voltage_factor_min": 0.95, "overload_factor": 1.45, "concealed_depth_min_mm": 50.0})
	table := func(name string, rows ...map[string]any) {
		b.Tables[name] = &book.Table{Name: name, Title: name, Rows: rows}
	}
	table("overload_operation", object{"characteristic": "B", "factor": 1.45}, object{"characteristic": "semi_enclosed", "factor": 2.0})
	table("overload_operation_gg", object{"at_least_a": 0.0, "factor": 2.1}, object{"at_least_a": 5.0, "factor": 1.9}, object{"at_least_a": 16.0, "factor": 1.6})
	table("breaker_operation", object{"characteristic": "B", "within_0_4_s": 5.0, "within_5_s": 5.0},
		object{"characteristic": "C", "within_0_4_s": 10.0, "within_5_s": 10.0}, object{"characteristic": "D", "within_0_4_s": 20.0, "within_5_s": 10.0})
	table("disconnection_times", object{"circuit": "TN final", "to_120_v": 0.8, "to_230_v": 0.4, "to_400_v": 0.2, "above_400_v": 0.1},
		object{"circuit": "TT final", "to_230_v": 0.2, "to_400_v": 0.07}, object{"circuit": "TN other", "to_230_v": 5.0}, object{"circuit": "TT other", "to_230_v": 1.0})
	table("zs_limits", object{"device": "gG20", "within_0_4_s": 1.68, "within_5_s": 2.8}, object{"device": "BS 88-3 80", "within_5_s": 0.51})
	table("conductor_withstand", object{"conductor": "copper", "kind": "solar_single_core", "insulation": "crosslinked_polyolefin", "k": 126.3},
		object{"conductor": "copper", "kind": "any", "insulation": "pvc", "k": 115.0}, object{"conductor": "copper", "kind": "any", "insulation": "xlpe", "k": 143.0})
	table("protective_withstand", object{"by": "core", "metal": "copper", "insulation": "pvc", "k": 115.0}, object{"by": "core", "metal": "copper", "insulation": "xlpe", "k": 143.0},
		object{"by": "separate", "metal": "copper", "insulation": "xlpe", "k": 176.0}, object{"by": "armour", "metal": "steel", "insulation": "xlpe", "k": 46.0})
	return b
}

func open(t *testing.T, what string, got working.Flag) {
	t.Helper()
	if got.Known() {
		t.Errorf("%s = %t, want it unknown", what, got.Value())
	}
}

// expect compares a flag with yes, no or open.
func expect(t *testing.T, what any, got working.Flag, want string) {
	t.Helper()
	is := "open"
	if got.Known() {
		is = map[bool]string{true: "yes", false: "no"}[got.Value()]
	}
	if is != want {
		t.Errorf("%v: %s, want %s", what, is, want)
	}
}
