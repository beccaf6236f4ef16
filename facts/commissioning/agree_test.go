package commissioning_test

import (
	"testing"

	"sunclause/facts/book"
	"sunclause/facts/commissioning"
	"sunclause/facts/facttest"
	"sunclause/facts/working"
)

// agreeing are the figures by which readings are compared.
func agreeing() book.Book {
	b := figures(0.04)
	for name, v := range map[string]float64{"cell_over_air_min_k": 8, "cell_over_air_max_k": 65, "loop_over_parts_min": 0.7, "loop_over_parts_max": 1.25,
		"loop_off_parts_ohm": 0.05, "thermography_irradiance_min_w_per_m2": 600, "continuity_over_conductor_min": 0.3} {
		b.Parameters[name] = book.Parameter{Name: name, Number: v, Set: "test"}
	}
	return b
}

// TestAgreement works the figures out by hand from the readings.
func TestAgreement(t *testing.T) {
	tested := func(lists object) commissioning.Agreement {
		doc := site(module(), 10)
		doc["ac"] = object{"supply": object{"id": "SUP", "phases": 1, "voltage_v": 230, "voltage_between_lines_v": 400, "ze_ohm": 0.2}}
		doc["datasheets"].(object)["inverters"] = object{"inv": object{"dc_voltage_max_v": 600, "ac_power_rated_w": 4000, "phases": 1, "mppts": list{object{}}}}
		doc["inverters"] = list{object{"id": "INV1", "datasheet": "inv"}}
		doc["cables"] = list{object{"id": "R1", "from": "S1", "to": "INV1.1", "service": "pv_string"}, object{"id": "R2", "from": "S1", "to": "INV1.1", "service": "pv_string"}}
		doc["earthing"] = object{"main_bonds": list{object{"id": "MB1", "bonds": "water", "conductor": object{"csa_mm2": 10, "length_m": 20}}}} // 1.83 Ω/km
		for name, l := range lists {
			record(doc)[name] = l
		}
		return derive(t, doc, agreeing()).Record.Agreement
	}
	string1 := func(m object) object {
		r := object{"id": "A", "string": "S1"}
		for k, v := range m {
			r[k] = v
		}
		return object{"strings": list{r}}
	}
	supply := func(between string, v float64) object {
		return object{"supply": list{object{"id": "A", "between": between, "voltage_v": v}}}
	}
	for _, c := range []struct {
		says  string
		lists object
		of    func(commissioning.Agreement) working.Number
		want  float64
	}{
		{"current in operation", string1(object{"isc_a": 10, "operating_current_a": 10.4}), func(a commissioning.Agreement) working.Number { return a.OperatingPct }, 104},
		{"nothing of it", string1(object{"isc_a": 10}), func(a commissioning.Agreement) working.Number { return a.OperatingPct }, 0},
		{"poles", string1(object{"voc_v": 400, "positive_to_earth_v": 210, "negative_to_earth_v": -205}), func(a commissioning.Agreement) working.Number { return a.PolesPct }, 103.75},
		{"poles as they should be", string1(object{"positive_to_earth_v": 210, "negative_to_earth_v": -205}), func(a commissioning.Agreement) working.Number { return a.PolesReversed }, 0},
		{"negative pole above earth", string1(object{"positive_to_earth_v": 210, "negative_to_earth_v": 205}), func(a commissioning.Agreement) working.Number { return a.PolesReversed }, 1},
		{"positive pole below", string1(object{"positive_to_earth_v": -1, "negative_to_earth_v": 0}), func(a commissioning.Agreement) working.Number { return a.PolesReversed }, 1},
		{"27 K at 742 W/m²", string1(object{"cell_temperature_c": 43, "air_temperature_c": 16, "irradiance_w_per_m2": 742}), func(a commissioning.Agreement) working.Number { return a.CellOverAirOffK }, 0},
		{"1 K at 500 W/m² is 2 K", string1(object{"cell_temperature_c": 17, "air_temperature_c": 16, "irradiance_w_per_m2": 500}), func(a commissioning.Agreement) working.Number { return a.CellOverAirOffK }, 6},
		{"40 K at 500 W/m² is 80 K", string1(object{"cell_temperature_c": 56, "air_temperature_c": 16, "irradiance_w_per_m2": 500}), func(a commissioning.Agreement) working.Number { return a.CellOverAirOffK }, 15},
		{"in dim light", string1(object{"cell_temperature_c": 17, "air_temperature_c": 16, "irradiance_w_per_m2": 299}), func(a commissioning.Agreement) working.Number { return a.CellOverAirOffK }, 0},
		{"back of the module", string1(object{"cell_temperature_c": 43, "module_back_temperature_c": 36}), func(a commissioning.Agreement) working.Number { return a.CellOverBackK }, 7},
		{"line to neutral", supply("line_to_neutral", 253), func(a commissioning.Agreement) working.Number { return a.SupplyOffPct }, 10},
		{"line to line read as line to neutral", supply("line_to_line", 240), func(a commissioning.Agreement) working.Number { return a.SupplyOffPct }, 40},
		{"neutral to earth is off nothing", supply("neutral_to_earth", 4), func(a commissioning.Agreement) working.Number { return a.SupplyOffPct }, 0},
		{"neutral to earth", supply("neutral_to_earth", 4), func(a commissioning.Agreement) working.Number { return a.NeutralEarthV }, 4},
		{"1.15 kA through 0.25 Ω at 230 V", object{"loops": list{object{"id": "A", "loop_impedance_ohm": 0.25, "fault_current_ka": 1.15}}}, func(a commissioning.Agreement) working.Number { return a.FaultOffPct }, 25},
		{"0.6 kA beside 0.8", object{"loops": list{object{"id": "A", "short_circuit_current_ka": 0.6, "fault_current_ka": 0.8}}}, func(a commissioning.Agreement) working.Number { return a.ShortBelowPct }, 25},
		{"0.9 kA beside 0.8", object{"loops": list{object{"id": "A", "short_circuit_current_ka": 0.9, "fault_current_ka": 0.8}}}, func(a commissioning.Agreement) working.Number { return a.ShortBelowPct }, 0},
		{"0.004 Ω of a bond of 0.0366 Ω", object{"continuity": list{object{"id": "A", "part": "MB1", "resistance_ohm": 0.004}}}, func(a commissioning.Agreement) working.Number { return a.ContinuityShort }, 0.00698},
		{"0.02 Ω of it", object{"continuity": list{object{"id": "A", "part": "MB1", "resistance_ohm": 0.02}}}, func(a commissioning.Agreement) working.Number { return a.ContinuityShort }, 0},
		{"loop of 0.2 and 0.2 Ω", object{"loops": list{object{"id": "A", "at": "circuit_end", "loop_impedance_ohm": 0.65, "r1_r2_ohm": 0.2}}}, func(a commissioning.Agreement) working.Number { return a.LoopOffOhm }, 0.1},
		{"loop too small", object{"loops": list{object{"id": "A", "at": "circuit_end", "loop_impedance_ohm": 0.13, "r1_r2_ohm": 0.2}}}, func(a commissioning.Agreement) working.Number { return a.LoopOffOhm }, 0.1},
		{"loop at the board", object{"loops": list{object{"id": "A", "at": "board", "loop_impedance_ohm": 9, "r1_r2_ohm": 0.2}}}, func(a commissioning.Agreement) working.Number { return a.LoopOffOhm }, 0},
		{"start at 4.4 of 4 kW", object{"functional": list{object{"id": "A", "test": "inverter_starts", "part": "INV1", "power_w": 4400}}}, func(a commissioning.Agreement) working.Number { return a.StartOverPct }, 110},
		{"torques, one as printed elsewhere", object{"torques": list{object{"id": "A", "part": "INV1", "torque_n_m": 12, "specified_n_m": 10}, object{"id": "B", "part": "INV1", "torque_n_m": 3}}}, func(a commissioning.Agreement) working.Number { return a.TorqueOffPct }, 20},
		{"hot spot", object{"thermography": list{object{"id": "A", "part": "INV1", "difference_k": 12}, object{"id": "B", "part": "INV1", "difference_k": 2}}}, func(a commissioning.Agreement) working.Number { return a.HotSpotK }, 12},
		{"light for the camera", object{"thermography": list{object{"id": "A", "part": "INV1", "irradiance_w_per_m2": 450}}}, func(a commissioning.Agreement) working.Number { return a.CameraShort }, 150},
		{"no thermography", object{}, func(a commissioning.Agreement) working.Number { return a.HotSpotK }, 0},
		{"poles in turn", object{"insulation": list{object{"id": "A", "part": "S1", "between": "positive_to_earth", "method": 1}, object{"id": "B", "part": "S1", "between": "live_to_earth", "method": 2}}}, func(a commissioning.Agreement) working.Number { return a.PolesByMethod }, 0},
		{"poles joined", object{"insulation": list{object{"id": "A", "part": "S1", "between": "joined_to_earth", "method": 1}}}, func(a commissioning.Agreement) working.Number { return a.PolesByMethod }, 1},
		{"one run, from one of its ends", object{"continuity": list{object{"id": "A", "part": "R1", "run": "R1", "from": "INV1", "to": "S1"}}}, func(a commissioning.Agreement) working.Number { return a.RunsUnlike }, 0},
		{"two runs", object{"continuity": list{object{"id": "A", "part": "R2", "run": "R1"}}}, func(a commissioning.Agreement) working.Number { return a.RunsUnlike }, 1},
		{"neither end", object{"continuity": list{object{"id": "A", "run": "R1", "from": "SUP", "to": "INV1.ac"}}}, func(a commissioning.Agreement) working.Number { return a.RunsUnlike }, 1},
	} {
		facttest.Near(t, c.says, c.of(tested(c.lists)), c.want, 1e-9)
	}
	a := tested(object{"strings": list{object{"id": "A", "string": "S1", "isc_a": 9, "operating_current_a": 8}, object{"id": "B", "string": "S1", "isc_a": 9}}})
	facttest.Wants(t, "stated of one, not of the other", a.OperatingPct, "/commissioning/strings/1/operating_current_a")
	facttest.Wants(t, "no readings", a.SupplyOffPct, "/commissioning/supply")
}

// A device of 30 mA is tested at 15, 30 and 150 mA.
func TestTestCurrentOfDevices(t *testing.T) {
	for current, want := range map[float64]float64{15: 0, 30: 0, 150: 0, 300: 100, 24: 20, 0.03: 99.8} {
		doc := site(module(), 10)
		doc["datasheets"].(object)["protective_devices"] = object{"rcbo": object{"kind": "rcbo", "rated_a": 16, "residual_current_ma": 30}}
		doc["ac"] = object{"boards": list{object{"id": "B1", "ways": list{object{"id": "1", "device": "rcbo"}}}}, "circuits": list{object{"id": "C1", "kind": "final", "way": "B1.1"}}}
		record(doc)["rcds"] = list{object{"id": "A", "part": "C1", "test_current_ma": current}}
		facttest.Near(t, "test current", derive(t, doc, agreeing()).Record.MultipleOffPct, want, 1e-9)
	}
}

func TestRecordOfSteps(t *testing.T) {
	step := func(id, test string, passed, repeat, corrected bool) object {
		return object{"id": id, "test": test, "passed": passed, "repeat": repeat, "fault_corrected": corrected}
	}
	doc := site(module(), 10)
	steps := list{step("A", "insulation", false, false, true), step("B", "insulation", true, true, false), step("C", "polarity", true, false, false)}
	record(doc)["steps"] = steps
	facttest.Is(t, "a repetition", derive(t, doc, agreeing()).Record.RepeatsUnlike, 0)
	facttest.Is(t, "a correction", derive(t, doc, agreeing()).Record.Corrected, 0)
	steps[1].(object)["repeat"], steps[2].(object)["fault_corrected"] = false, true
	facttest.Is(t, "a repetition not called so", derive(t, doc, agreeing()).Record.RepeatsUnlike, 1)
	facttest.Is(t, "a correction of nothing", derive(t, doc, agreeing()).Record.Corrected, 1)
	delete(steps[1].(object), "repeat")
	facttest.Wants(t, "not told", derive(t, doc, agreeing()).Record.RepeatsUnlike, "/commissioning/steps/1/repeat")
}

func TestOverRange(t *testing.T) {
	doc := site(module(), 10)
	record(doc)["instruments"] = list{object{"id": "I", "kind": "pv_tester", "insulation_max_megohm": 200}}
	r := object{"id": "A", "part": "S1", "resistance_megohm": 200, "over_range": true, "instrument": "I"}
	record(doc)["insulation"] = list{r}
	unlike := func() working.Number { return derive(t, doc, agreeing()).Record.OverRange }
	facttest.Is(t, "at the end", unlike(), 0)
	r["resistance_megohm"] = 199
	facttest.Is(t, "below it", unlike(), 1)
	r["over_range"] = false
	facttest.Is(t, "below it and said so", unlike(), 0)
	facttest.Is(t, "on the supply", derive(t, doc, agreeing()).Instruments[0].OnMains, false)
	record(doc)["loops"] = list{object{"id": "L", "instrument": "I"}}
	facttest.Is(t, "a loop was read with it", derive(t, doc, agreeing()).Instruments[0].OnMains, true)
}
