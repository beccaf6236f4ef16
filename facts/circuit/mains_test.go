package circuit_test

import (
	"slices"
	"testing"

	"sunclause/facts/circuit"
	"sunclause/schema"
)

// TestToSupply walks from an inverter over an isolator, a way of a generation
// board, the board's incomer, a way of the main board and the meter.
func TestToSupply(t *testing.T) {
	doc, err := schema.Decode("test", []byte(`{
		"project": {"reference": "test", "stage": "design", "country": "GB"},
		"datasheets": {"inverters": {"I": {"dc_voltage_max_v": 600, "ac_power_rated_w": 5000, "phases": 1, "mppts": [{}]}},
			"batteries": {"B": {"energy_kwh": 10}}},
		"inverters": [{"id": "INV1", "datasheet": "I"}],
		"isolators": [{"id": "ISO", "circuit": "ac", "ways": [{"id": "1", "joined_in": "INV1.ac"}]}],
		"storage": {"batteries": [{"id": "BAT", "datasheet": "B"}]},
		"ac": {"supply": {"id": "SUP"}, "meters": [{"id": "M", "joined_in": "SUP"}],
			"boards": [{"id": "MB", "ways": [{"id": "1"}, {"id": "2"}]}, {"id": "GB", "joined_in": "MB.2", "ways": [{"id": "7"}]}]},
		"cables": [
			{"id": "R1", "from": "ISO.1.out", "to": "GB.7", "service": "ac"},
			{"id": "R2", "from": "M.out", "to": "MB.in", "service": "ac"},
			{"id": "R3", "from": "BAT", "to": "INV1.battery", "service": "battery"}]}`))
	if err != nil {
		t.Fatal(err)
	}
	c := circuit.Of(&doc.Installation)
	p := c.ToSupply("INV1.ac")
	if p.Input != "SUP" || p.Ambiguous || !slices.Equal(p.Runs, []int{0, 1}) || !slices.Equal(p.Isolators, []int{0}) || !slices.Equal(p.Ways, []string{"GB.7", "MB.2"}) {
		t.Errorf("from the inverter: %+v", p)
	}
	if p := c.ToSupply("MB.1"); p.Input != "SUP" || !slices.Equal(p.Runs, []int{1}) || !slices.Equal(p.Ways, []string{"MB.1"}) {
		t.Errorf("from a way without a circuit: %+v", p)
	}
	if p := c.ToSupply("INV1.1"); p.Input != "" {
		t.Errorf("from a tracking input: %+v", p)
	}
	if p := c.From("INV1.ac"); p.Input != "" {
		t.Errorf("the AC side leads to the tracking input %s", p.Input)
	}
	if p := c.ToInverter("BAT"); p.Input != "INV1" || !slices.Equal(p.Runs, []int{2}) {
		t.Errorf("from the battery: %+v", p)
	}
}
