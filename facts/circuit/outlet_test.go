package circuit_test

import (
	"testing"

	"sunclause/facts/circuit"
	"sunclause/schema"
)

// TestServesMade goes by what hangs on the ways of a board: an inverter behind an
// isolator, a battery, a board with an inverter on it, a board without, a surge
// protective device, and nothing.
func TestServesMade(t *testing.T) {
	doc, err := schema.Decode("test", []byte(`{
		"project": {"reference": "test", "stage": "design", "country": "GB"},
		"datasheets": {"inverters": {"PV": {"kind": "pv", "dc_voltage_max_v": 600, "ac_power_rated_w": 5000, "phases": 1, "mppts": [{}]},
			"HYB": {"kind": "hybrid", "dc_voltage_max_v": 600, "ac_power_rated_w": 5000, "phases": 1, "mppts": [{}]}}, "batteries": {"B": {"energy_kwh": 10}}},
		"inverters": [{"id": "INV1", "datasheet": "PV"}, {"id": "INV2", "datasheet": "HYB"}],
		"isolators": [{"id": "ISO", "circuit": "ac", "ways": [{"id": "1", "joined_in": "INV1.ac"}]}],
		"storage": {"batteries": [{"id": "BAT", "datasheet": "B"}]},
		"spds": [{"id": "SPD1", "circuit": "ac", "connected_at": "MB.5"}],
		"ac": {"supply": {"id": "SUP"},
			"changeovers": [{"id": "XS", "kind": "manual"}],
			"boards": [{"id": "MB", "joined_in": "SUP", "ways": [{"id": "1", "serves": "load"}, {"id": "2", "serves": "battery_supply"}, {"id": "3", "serves": "pv_supply"},
				{"id": "4", "serves": "load"}, {"id": "5", "serves": "sockets"}, {"id": "6", "serves": "heating"}, {"id": "7", "serves": "lighting"}]},
				{"id": "G", "role": "generation", "ways": [{"id": "1"}]}, {"id": "S", "role": "sub", "ways": []}, {"id": "K", "role": "backup", "ways": []}]},
		"cables": [
			{"id": "R1", "from": "ISO.1.out", "to": "MB.1", "service": "ac"},
			{"id": "R2", "from": "BAT.ac", "to": "MB.2", "service": "ac"},
			{"id": "R3", "from": "G.in", "to": "MB.3", "service": "ac"},
			{"id": "R4", "from": "INV2.ac", "to": "G.1", "service": "ac"},
			{"id": "R5", "from": "S.in", "to": "MB.4", "service": "ac"},
			{"id": "R6", "from": "XS.grid", "to": "MB.7", "service": "ac"},
			{"id": "R7", "from": "INV2.backup", "to": "XS.source", "service": "ac"},
			{"id": "R8", "from": "XS.load", "to": "K.in", "service": "ac"}]}`))
	if err != nil {
		t.Fatal(err)
	}
	c := circuit.Of(&doc.Installation)
	for _, w := range []struct{ way, made, by string }{
		{"MB.1", "pv_supply", "/inverters/0"}, {"MB.2", "battery_supply", "/storage/batteries/0"}, {"MB.3", "pv_supply", "/inverters/1"},
		{"MB.4", "load", "/ac/boards/2"}, {"MB.5", "surge_protection", "/spds/0"}, {"MB.6", "heating", "/ac/boards/0/ways/5/serves"},
		{"MB.7", "backup", "/ac/changeovers/0"}, {"G.1", "hybrid_supply", "/inverters/1"},
	} {
		if got := c.ServesMade(w.way); got.Value() != w.made || got.At() != w.by {
			t.Errorf("%s serves %q by %s, want %q by %s", w.way, got.Value(), got.At(), w.made, w.by)
		}
	}
	if got := c.Serves("MB.1"); got.Known() {
		t.Errorf("a way with an inverter is taken for a %s", got.Value())
	}
	if c.LeadsOn("MB.3") != "/ac/boards/1" || c.LeadsOn("MB.1") != "" || c.Fed("MB.3") != "/inverters/1" || c.Fed("MB.4") != "" {
		t.Error("boards and generators behind a way")
	}
	if !c.Bare("MB.6").Value() || c.Bare("MB.1").Value() {
		t.Error("what is bare")
	}
	if !c.BehindSwitch("K.in") || c.BehindSwitch("S.in") {
		t.Error("which board is behind the switch")
	}
	if c.OnBackup("XS.source") != "/inverters/1" || c.OnBackup("XS.load") != "" || c.OnBackup("S.in") != "" {
		t.Error("what hangs on a backup output")
	}
	if b := c.Backup(&doc.Installation, "INV2", "/inverters/1"); b.By != "/ac/changeovers/0" || b.Switch != "/ac/changeovers/0" {
		t.Errorf("backup by way of the switch: %+v", b)
	}
	if b := c.Backup(&doc.Installation, "INV1", "/inverters/0"); b.By != "" || b.Switch != "" {
		t.Errorf("no backup: %+v", b)
	}
}
