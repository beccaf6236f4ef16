package accircuit_test

import (
	"testing"

	"sunclause/facts/accircuit"
	"sunclause/facts/facttest"
)

// way derives one of the two ways of the house's board.
func way(t *testing.T, doc object, i int) accircuit.Way {
	t.Helper()
	return derive(t, doc, laid{}).Ways[i]
}

func TestWayOfHouse(t *testing.T) {
	doc := house()
	of := facttest.At(doc, "ac", "boards", 0, "ways", 1)
	of["serves"] = "load"
	w := way(t, doc, 1)
	if w.ID != "B1.2" || w.ServesByCircuit.Value() != "pv_supply" || w.ServesByCircuit.At() != "/inverters/0" {
		t.Errorf("%s serves %q by %s", w.ID, w.ServesByCircuit.Value(), w.ServesByCircuit.At())
	}
	expect(t, "generator behind", w.Feeds, "yes")
	expect(t, "on the other", way(t, doc, 0).Feeds, "no")
	if c := one(t, doc, laid{}); c.Serves.Known() {
		t.Errorf("a circuit with an inverter serves a %s", c.Serves.Value())
	}
	doc["cables"].(list)[1].(object)["to"] = "B1.1"
	expect(t, "moved to the other", way(t, doc, 0).Feeds, "yes")
	doc["cables"].(list)[1].(object)["to"] = "SUP"
	expect(t, "past the board", way(t, doc, 0).Feeds, "open")
}

// A circuit that is the generator's own has no loads, whatever word speaks of them.
func TestDedicated(t *testing.T) {
	for _, c := range []struct {
		sockets, lighting any
		loads             any
		loaded, dedicated string
	}{
		{false, false, 0.0, "no", "yes"}, {false, false, 5.0, "yes", "open"}, {true, nil, nil, "yes", "open"}, {false, true, 0.0, "yes", "open"},
		{false, nil, 0.0, "open", "yes"}, {false, false, nil, "open", "yes"},
	} {
		doc := house()
		entry := facttest.At(doc, "ac", "circuits", 0)
		for name, v := range map[string]any{"sockets": c.sockets, "lighting": c.lighting, "other_loads_a": c.loads} {
			delete(entry, name)
			if v != nil {
				entry[name] = v
			}
		}
		expect(t, c, way(t, doc, 1).LoadsStated, c.loaded)
		expect(t, c, one(t, doc, laid{}).Dedicated, c.dedicated)
	}
}

// The line conductors of ways are those of the supply; the one of a single-phase supply
// has the name that most ways give it.
func TestPhaseOfSupply(t *testing.T) {
	for _, c := range []struct {
		phases       float64
		other, phase string
		want         string
	}{
		{1, "L1", "L1", "L1"}, {1, "L2", "L2", "L2"}, {1, "L1", "L1_L2_L3", "L1"}, {2, "L1", "L1_L2", "L1_L2"}, {2, "L1", "L1_L2_L3", "L1_L2"}, {3, "L1", "L2_L3", "L2_L3"},
	} {
		doc := house()
		facttest.At(doc, "ac", "supply")["phases"] = c.phases
		facttest.At(doc, "ac", "boards", 0, "ways", 0)["phase"] = c.other
		facttest.At(doc, "ac", "boards", 0, "ways", 1)["phase"] = c.phase
		if w := way(t, doc, 1); w.PhaseOfSupply.Value() != c.want {
			t.Errorf("%v: %q", c, w.PhaseOfSupply.Value())
		}
	}
}

func TestWords(t *testing.T) {
	doc := plant()
	boards := doc["ac"].(object)["boards"].(list)
	f := derive(t, doc, laid{})
	if r := f.Boards[0].RoleByCircuit; r.Value() != "main" {
		t.Error("main board:", r.Value())
	}
	if r := f.Boards[1].RoleByCircuit; r.Value() != "generation" || r.At() != "/ac/boards/0/ways/0" {
		t.Error("generation board:", r.Value(), r.At())
	}
	if k := f.Ways[0].KindByCircuit; k.Value() != "distribution" || k.At() != "/ac/boards/1" {
		t.Error("way to it:", k.Value(), k.At())
	}
	if p := f.Meters[0].PurposeByCircuit; p.Value() != "import_and_export" {
		t.Error("meter at the origin:", p.Value())
	}
	boards[1].(object)["ways"].(list)[0].(object)["serves"] = "heating"
	facttest.At(doc, "cables", 0)["to"] = "B1.9"
	f = derive(t, doc, laid{})
	if r := f.Boards[1].RoleByCircuit; r.Value() != "sub" {
		t.Error("with a load:", r.Value())
	}
	if l := f.Boards[1].LoadsByWays; l.Value() != "yes" || f.Boards[1].CarriesLoads.Known() {
		t.Error("its busbars carry loads:", l.Value())
	}
	facttest.At(doc, "ac", "supply")["form"] = "single_phase"
	if form := derive(t, doc, laid{}).Supply.FormByPhases; form.Value() != "three_phase" {
		t.Error("supply of three phases:", form.Value())
	}
}

// A pole without an overcurrent release is that of the neutral, and a single one that of
// the line (IEC 60898-1, from memory: protected and unprotected poles).
func TestNeutralByPoles(t *testing.T) {
	for _, c := range []struct {
		poles, protected, opens any
		want                    string
	}{
		{1, 1, true, "no"}, {2, 1, false, "yes"}, {2, 2, false, "no"}, {2, nil, true, ""}, {4, 3, false, "yes"}, {nil, 1, true, "yes"}, {nil, nil, nil, ""},
	} {
		doc := house()
		d := facttest.At(doc, "datasheets", "protective_devices", "D")
		for name, v := range map[string]any{"poles": c.poles, "protected_poles": c.protected, "opens_neutral": c.opens} {
			delete(d, name)
			if v != nil {
				d[name] = v
			}
		}
		if got := way(t, doc, 1).NeutralByPoles.Value(); got != c.want {
			t.Errorf("%v: %q", c, got)
		}
	}
}

func TestDevicesOfBoard(t *testing.T) {
	doc := house()
	board := facttest.At(doc, "ac", "boards", 0)
	sheets := facttest.At(doc, "datasheets", "switch_disconnectors")
	sheets["MAIN"] = object{"lockable_off": false, "ratings": list{object{"utilization_category": "DC-21A", "poles_in_series": 1, "ue_v": 400, "ie_a": 20}, object{"utilization_category": "AC-22A", "poles_in_series": 1, "ue_v": 400, "ie_a": 100}, object{"utilization_category": "AC-23A", "poles_in_series": 1, "ue_v": 400, "ie_a": 80}}}
	board["main_switch"], board["main_switch_lockable"] = "MAIN", true
	board["ways"].(list)[0].(object)["serves"] = "spare"
	f := derive(t, doc, laid{}).Boards[0]
	facttest.Near(t, "least rated current on AC", f.MainSwitchA, 80, 0)
	expect(t, "its sheet knows no lock", f.SwitchCanLock, "no")
	facttest.Near(t, "device of the one way in use", f.WaysGreatestA, 20, 0)
	sheets["MAIN"] = object{"ratings": list{object{"utilization_category": "DC-21A", "poles_in_series": 1, "ue_v": 400, "ie_a": 20}}}
	facttest.Wants(t, "a switch for DC", derive(t, doc, laid{}).Boards[0].MainSwitchA, "/datasheets/switch_disconnectors/MAIN/ratings")
	delete(board["ways"].(list)[0].(object), "serves")
	facttest.Wants(t, "a way without a device", derive(t, doc, laid{}).Boards[0].WaysGreatestA, "/ac/boards/0/ways/0/device")
}
