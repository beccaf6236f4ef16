package relation_test

import (
	"encoding/json"
	"math"
	"strings"
	"testing"

	"sunclause/facts/relation"
	"sunclause/schema"
	"sunclause/schema/examples"
)

// relations derives them of an example in which some values are others, by the
// pointer of what holds the value.
func relations(t *testing.T, change map[string]any) map[string]relation.Relation {
	t.Helper()
	doc := map[string]any{}
	if err := json.Unmarshal(examples.Text(t, examples.Battery), &doc); err != nil {
		t.Fatal(err)
	}
	for pointer, v := range change {
		set(doc, strings.Split(pointer, "/")[1:], v)
	}
	raw, err := json.Marshal(doc)
	if err != nil {
		t.Fatal(err)
	}
	d, err := schema.Decode("installation.json", raw)
	if err != nil {
		t.Fatal(err)
	}
	all := map[string]relation.Relation{}
	for _, r := range relation.Derive(&d.Installation) {
		if _, twice := all[r.ID]; twice {
			t.Errorf("two relations have the id %s", r.ID)
		}
		all[r.ID] = r
	}
	return all
}

// set puts a value in, or takes it out where it is nil. Of lists it knows the first item.
func set(in map[string]any, path []string, v any) {
	for ; len(path) > 1; path = path[1:] {
		next := in[path[0]]
		if list, ok := next.([]any); ok {
			next, path = list[0], path[1:]
		}
		in = next.(map[string]any)
	}
	if v == nil {
		delete(in, path[0])
		return
	}
	in[path[0]] = v
}

// TestRelations holds relations to values worked out by hand from the sheets of the
// house with a battery, and to what becomes of them.
func TestRelations(t *testing.T) {
	for name, c := range map[string]struct {
		change map[string]any
		id     string
		key    string
		want   float64
	}{
		"230 V times 21.8 A over 5000 W":      {nil, "hyb5.ac_current", "ac_current", 1.0028},
		"three phases, voltage between lines": {map[string]any{"/datasheets/inverters/hyb5/phases": 3, "/datasheets/inverters/hyb5/ac_voltage_v": 400}, "hyb5.ac_current", "ac_current", 400 * math.Sqrt(3) * 21.8 / 5000},
		"three phases, voltage to neutral":    {map[string]any{"/datasheets/inverters/hyb5/phases": 3}, "hyb5.ac_current", "ac_current", 3 * 230 * 21.8 / 5000},
		"520 V over 90 V":                     {nil, "hyb5.1.tracking_range", "tracking_range", 520.0 / 90},
		"520 V over 600 V":                    {nil, "hyb5.2.tracking_top", "tracking_top", 520.0 / 600},
		"two inputs of 16 A at 520 V":         {nil, "hyb5.power_of_inputs", "power_of_inputs", 2 * 16 * 520.0 / 5000},
		"4 kV on 600 V":                       {nil, "hyb5.impulse_to_600_v", "impulse_to_600_v", 4},
		"4 kV on 1000 V":                      {map[string]any{"/datasheets/inverters/hyb5/dc_voltage_max_v": 1000}, "hyb5.impulse_above_600_v", "impulse_above_600_v", 4},
		"4 kV on 300 V":                       {map[string]any{"/datasheets/inverters/hyb5/dc_voltage_max_v": 300}, "hyb5.impulse_to_300_v", "impulse_to_300_v", 4},
		"46.4 A over 32 A":                    {nil, "mcb32.conventional_current", "conventional_current", 1.45},
		"160 A over 32 A, B":                  {nil, "mcb32.trip_0_4s", "trip_B", 5},
		"605 A over 63 A, gG":                 {nil, "cutout63.trip_0_4s", "trip", 605.0 / 63},
		"605 A before 320 A":                  {nil, "cutout63.trips_in_order", "trips_in_order", 605.0 / 320},
		"the slower needs more":               {map[string]any{"/datasheets/protective_devices/cutout63/operates_5s_a": 1210}, "cutout63.trips_in_order", "trips_in_order", 0.5},
		"45000 over 6 kA squared for 20 ms":   {nil, "mcb32.let_through", "let_through", 45000 / (6000 * 6000 * 0.02)},
		"32 A at 400 V, 20 A at 600 V":        {nil, "dcsw4.ratings_fall", "ratings_fall", 1.6},
		"two of four poles in series":         {nil, "dcsw4.poles_in_series", "poles_in_series", 0.5},
		"2.2 kV on 600 V":                     {nil, "spd-dc.protection_level_dc", "protection_level_dc", 2200.0 / 600},
		"1.4 kV on 275 V":                     {nil, "spd-ac.protection_level_ac", "protection_level_ac", 1400.0 / 275},
		"Ucpv where there is no Uc":           {map[string]any{"/datasheets/spds/spd-dc/uc_v": nil, "/datasheets/spds/spd-dc/ucpv_v": 1000}, "spd-dc.protection_level_dc", "protection_level_dc", 2.2},
		"400 V, 30 A, 10.2 kWh":               {nil, "bat10.discharge_rate", "discharge_rate", 12 / 10.2},
		"110 kg in 180 l":                     {nil, "bat10.cabinet_density", "cabinet_density", 110 / 0.18},
		"110 kg for 10.2 kWh":                 {nil, "bat10.mass_lithium", "mass_lithium", 110 / 10.2},
		"57 A of 6 mm²":                       {nil, "pv6.capacity_3", "capacity_copper", 57 / math.Pow(6, 0.625)},
		"120 °C over 90 °C":                   {nil, "pv6.conductor_temperatures", "conductor_temperatures", 120.0 / 90},
		"60 °C above −20 °C":                  {nil, "hyb5.ambient", "ambient", 80},
		"49 Hz is 1 Hz off":                   {map[string]any{"/ac/supply/frequency_hz": 49}, "supply.frequency", "frequency", 1},
		"1.1 kA through 0.21 Ω":               {map[string]any{"/ac/supply/prospective_fault_ka": 1.1, "/ac/supply/ze_ohm": 0.21, "/ac/supply/ze_known_by": "measured"}, "supply.fault_of_loop", "fault_of_loop_one", 1100 * 0.21 / 230},
		"230 V on 230 V":                      {nil, "INV1.inverter_voltage", "inverter_voltage", 1},
	} {
		t.Run(name, func(t *testing.T) {
			r, ok := relations(t, c.change)[c.id]
			switch {
			case !ok:
				t.Fatalf("there is no relation %s", c.id)
			case r.Relation.Value() != c.key:
				t.Errorf("it is %s, want %s", r.Relation.Value(), c.key)
			case math.Abs(r.Value.Value()-c.want) > 1e-9*math.Abs(c.want):
				t.Errorf("%v, want %v", r.Value.Value(), c.want)
			}
		})
	}
}

// TestNotStatedIsNotJudged makes sure that a relation goes with any of its values.
func TestNotStatedIsNotJudged(t *testing.T) {
	for pointer, id := range map[string]string{
		"/datasheets/inverters/hyb5/ac_voltage_v":                     "hyb5.ac_current",
		"/datasheets/inverters/hyb5/ambient_min_c":                    "hyb5.ambient",
		"/datasheets/protective_devices/mcb32/breaking_capacity_ka":   "mcb32.let_through",
		"/datasheets/switch_disconnectors/dcsw4/poles":                "dcsw4.poles_in_series",
		"/datasheets/batteries/bat10/chemistry":                       "bat10.mass_lithium",
		"/datasheets/spds/spd-ac/system":                              "spd-ac.protection_level_ac",
		"/ac/supply/form":                                             "supply.between_lines_three",
		"/datasheets/protective_devices/cutout63/operates_5s_a":       "cutout63.trips_in_order",
		"/datasheets/protective_devices/mcb32/conventional_current_a": "mcb32.conventional_current",
	} {
		if _, there := relations(t, map[string]any{pointer: nil})[id]; there {
			t.Errorf("without %s there is still a relation %s", pointer, id)
		}
	}
}

// TestLargerCable holds two cables of one kind against each other.
func TestLargerCable(t *testing.T) {
	larger := func(resistance, capacity float64) map[string]any {
		return map[string]any{
			"kind": "solar_single_core", "csa_mm2": 10, "conductor": "copper", "conductor_class": 5, "cores": 1, "insulation": "crosslinked_polyolefin",
			"resistance_20c_ohm_per_km": resistance, "outside_diameter_mm": 7.2,
			"ratings": []any{map[string]any{"method": "single cable in free air", "loaded_conductors": 1, "current_a": capacity, "ambient_c": 60, "conductor_c": 120}},
		}
	}
	r := relations(t, map[string]any{"/datasheets/cables/pv10": larger(1.95, 98)})
	for id, want := range map[string]float64{"larger_resistance": 3.39 / 1.95, "larger_diameter": 1.2, "larger_capacity": 1.4} {
		if got := r["pv6.pv10."+id].Value; !got.Known() || math.Abs(got.Value()-want) > 1e-9 {
			t.Errorf("%s is %v, want %v", id, got.Value(), want)
		}
	}
	r = relations(t, map[string]any{"/datasheets/cables/pv10": larger(3.9, 49)})
	for _, id := range []string{"larger_resistance", "larger_capacity"} {
		if got := r["pv6.pv10."+id].Value; !got.Known() || got.Value() >= 1 {
			t.Errorf("%s is %v, want below 1", id, got.Value())
		}
	}
}
