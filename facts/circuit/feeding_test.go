package circuit_test

import (
	"testing"

	"sunclause/facts/circuit"
	"sunclause/facts/facttest"
	"sunclause/schema"
)

// storing is a string, a battery on its inverter and the supply, each with an
// isolator of its own; what an isolator opens is stated in each test.
func storing(t *testing.T, dc, battery, ac string) (*circuit.Circuit, *schema.Installation) {
	t.Helper()
	isolator := func(id, opened string) map[string]any {
		way := map[string]any{"id": "1"}
		if opened != "" {
			way["conductors_opened"] = opened
		}
		return map[string]any{"id": id, "circuit": "pv_dc", "ways": []any{way}}
	}
	run := func(id, from, to, service string) map[string]any {
		return map[string]any{"id": id, "from": from, "to": to, "service": service}
	}
	in := facttest.Installation(t, map[string]any{
		"project": map[string]any{"reference": "test", "stage": "design", "country": "GB"},
		"datasheets": map[string]any{
			"modules":   map[string]any{"M": map[string]any{"technology": "mono_si", "pmax_w": 1, "voc_v": 1, "isc_a": 1, "vmp_v": 1, "imp_a": 1}},
			"inverters": map[string]any{"I": map[string]any{"dc_voltage_max_v": 1, "ac_power_rated_w": 1, "phases": 1, "mppts": make([]struct{}, 1)}},
			"batteries": map[string]any{"B": map[string]any{"energy_kwh": 10}},
		},
		"strings":   []any{map[string]any{"id": "S1", "module": "M", "modules_in_series": 10}},
		"inverters": []any{map[string]any{"id": "INV1", "datasheet": "I"}},
		"isolators": []any{isolator("DC", dc), isolator("BI", battery), isolator("AC", ac)},
		"storage":   map[string]any{"batteries": []any{map[string]any{"id": "BAT", "datasheet": "B"}}},
		"ac": map[string]any{"supply": map[string]any{"id": "SUP"}, "meters": []any{map[string]any{"id": "M1", "joined_in": "SUP"}},
			"boards": []any{map[string]any{"id": "MB", "ways": []any{map[string]any{"id": "1"}}}, map[string]any{"id": "LB", "ways": []any{map[string]any{"id": "1"}}}, map[string]any{"id": "BB", "joined_in": "INV1.backup", "ways": []any{map[string]any{"id": "1"}}}}},
		"cables": []any{
			run("R1", "S1", "DC.1.in", "pv_string"), run("R2", "DC.1.out", "INV1.1", "pv_string"),
			run("R3", "BAT", "BI.1.in", "battery"), run("R4", "BI.1.out", "INV1.battery", "battery"),
			run("R5", "INV1.ac", "AC.1.in", "ac"), run("R6", "AC.1.out", "MB.1", "ac"), run("R7", "M1.out", "MB.in", "ac"),
			run("R8", "BB.1", "LB.in", "ac"), run("R9", "BAT", "MB", "bonding"),
		},
	})
	return circuit.Of(in), in
}

// TestFeeding holds what stays live against the circuit as drawn: with every
// isolator open only what lies before them does; what one pole or a missing isolator
// lets through goes on through the inverter to its backup output.
func TestFeeding(t *testing.T) {
	for _, c := range []struct {
		name, dc, battery, ac string
		live                  map[int][]string
	}{
		{"all poles opened", "both", "both", "line_and_neutral", map[int][]string{
			0: {"daylight"}, 2: {"battery"}, 5: {"supply"}, 6: {"supply"}}},
		{"one pole of the battery", "both", "positive", "line_and_neutral", map[int][]string{
			0: {"daylight"}, 2: {"battery", "inverter"}, 3: {"battery", "inverter"}, 5: {"supply"}, 6: {"supply"}, 7: {"inverter"}}},
		{"one pole of the strings", "negative", "both", "line_and_neutral", map[int][]string{
			0: {"daylight"}, 1: {"daylight"}, 2: {"battery"}, 3: {"inverter"}, 5: {"supply"}, 6: {"supply"}, 7: {"inverter"}}},
		{"one line of the supply", "both", "both", "line", map[int][]string{
			0: {"daylight"}, 2: {"battery"}, 3: {"inverter"}, 4: {"supply"}, 5: {"supply"}, 6: {"supply"}, 7: {"inverter"}}},
	} {
		circ, in := storing(t, c.dc, c.battery, c.ac)
		fed := circ.Feeding(in, everyOpen)
		for i := range in.Cables {
			facttest.Lists(t, c.name+": "+in.Cables[i].ID.Value, fed.Run(i), c.live[i]...)
		}
	}
}

func TestFeedingNotStated(t *testing.T) {
	circ, in := storing(t, "both", "", "line_and_neutral")
	fed := circ.Feeding(in, everyOpen)
	facttest.Wants(t, "behind the battery's isolator", fed.Run(3), "/isolators/1/ways/0/conductors_opened")
	facttest.Lists(t, "before the string's", fed.Run(0), "daylight")
}
