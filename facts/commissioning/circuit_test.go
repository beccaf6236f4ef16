package commissioning_test

import (
	"testing"

	"sunclause/facts/facttest"
)

// premises have a circuit C1 for the inverter on a way with a 30 mA device.
func premises() object {
	doc := site(module(), 10)
	doc["datasheets"].(object)["protective_devices"] = object{
		"rcbo": object{"kind": "rcbo", "residual_current_ma": 30, "time_delayed": false}, "mcb": object{"kind": "circuit_breaker"}, "fuse": object{"kind": "fuse"}}
	doc["cables"] = list{}
	doc["datasheets"].(object)["inverters"] = object{"I": object{"dc_voltage_max_v": 600, "mppts": list{object{}}, "ac_power_rated_w": 5000, "phases": 1, "backup_output": false}}
	doc["inverters"] = list{object{"id": "INV1", "datasheet": "I", "battery_fitted": false}}
	doc["isolators"] = list{object{"id": "ISO1", "circuit": "ac", "ways": list{object{"id": "1"}}}}
	doc["ac"] = object{
		"boards":   list{object{"id": "B1", "incoming_device": "fuse", "ways": list{object{"id": "1", "serves": "pv_supply", "device": "rcbo"}, object{"id": "2", "serves": "lighting", "device": "mcb"}}}},
		"circuits": list{object{"id": "C1", "way": "B1.1", "zs_ohm": 0.4}, object{"id": "C2", "way": "B1.2"}},
	}
	return doc
}

func TestCircuits(t *testing.T) {
	doc := premises()
	record(doc)["loops"] = list{object{"id": "LP1", "part": "C1", "loop_impedance_ohm": 0.31, "r1_r2_ohm": 0.1}, object{"id": "LP2", "part": "C1", "loop_impedance_ohm": 0.33, "r1_r2_ohm": 0.09}}
	record(doc)["insulation"] = list{
		object{"id": "IR1", "part": "C1", "side": "ac", "resistance_megohm": 200, "test_voltage_v": 500, "spds_connected": false},
		object{"id": "IR2", "part": "C1", "side": "ac", "resistance_megohm": 150, "test_voltage_v": 250, "spds_connected": true}}
	record(doc)["rcds"] = list{object{"id": "RC1", "part": "C1", "test_current_ma": 150, "trip_time_ms": 24}}
	f := derive(t, doc, figures(0.04))
	c := f.Circuits[0]
	facttest.Is(t, "greatest loop", c.LoopOhm, 0.33)
	facttest.Is(t, "loop stated", c.LoopStatedOhm, 0.4)
	facttest.Is(t, "greatest R1 + R2", c.R1R2Ohm, 0.1)
	facttest.Is(t, "least insulation", c.InsulationMegohm, 150)
	facttest.Is(t, "least test voltage", c.InsulationTestV, 250)
	if !c.SPDsConnected.Value() || c.Serves.Value() != "pv_supply" || !c.RCDFitted.Value() || f.Circuits[1].RCDFitted.Value() {
		t.Errorf("surge devices in circuit %v, serves %v, RCD %v and %v", c.SPDsConnected.Value(), c.Serves.Value(), c.RCDFitted.Value(), f.Circuits[1].RCDFitted.Value())
	}
	facttest.Is(t, "tests of its RCD", c.RCDReadings, 1)
	facttest.Is(t, "five times the rated current", f.RCDs[0].CurrentMultiple, 5)
	facttest.Wants(t, "a circuit not read", f.Circuits[1].LoopOhm, "/commissioning/loops")
	delete(record(doc)["loops"].(list)[1].(object), "part")
	facttest.Wants(t, "a reading of no stated part may be of any", derive(t, doc, figures(0.04)).Circuits[0].LoopOhm, "/commissioning/loops/1/part")
}

// Whatever opens on residual current is a residual current device, by the kinds
// of device that the document knows.
func TestWithRCD(t *testing.T) {
	for kind, want := range map[string]bool{"rccb": true, "rcbo": true, "afdd_with_rcbo": true, "afdd": false, "circuit_breaker": false, "fuse": false} {
		doc := premises()
		facttest.At(doc, "datasheets", "protective_devices", "rcbo")["kind"] = kind
		facttest.Is(t, kind, derive(t, doc, figures(0.04)).Circuits[0].RCDFitted, want)
	}
	doc := premises()
	board := facttest.At(doc, "ac", "boards", 0)
	board["incoming_device"] = "rcbo"
	record(doc)["rcds"] = list{object{"id": "RC1", "part": "C2", "test_current_ma": 30}}
	f := derive(t, doc, figures(0.04))
	facttest.Is(t, "before the board", f.Circuits[1].RCDFitted, true)
	facttest.Is(t, "tested by its rated current", f.RCDs[0].CurrentMultiple, 1)
	delete(board, "incoming_device")
	if f := derive(t, doc, figures(0.04)).Circuits[1].RCDFitted; f.Known() {
		t.Errorf("what stands before the board is not stated: %t", f.Value())
	}
}

// The test button of a device is pressed once, however many readings there are.
func TestButton(t *testing.T) {
	doc := premises()
	record(doc)["rcds"] = list{object{"id": "RC1", "part": "C1", "test_current_ma": 15}, object{"id": "RC2", "part": "C1", "test_current_ma": 30, "test_button_works": true},
		object{"id": "RC3", "part": "C2", "test_current_ma": 30}}
	f := derive(t, doc, figures(0.04)).RCDs
	facttest.Is(t, "said of another reading", f[0].ButtonWorks, true)
	facttest.Is(t, "said of this one", f[1].ButtonWorks, true)
	facttest.Wants(t, "said of another device", f[2].ButtonWorks, "/commissioning/rcds/2/test_button_works")
	record(doc)["rcds"] = append(record(doc)["rcds"].(list), object{"id": "RC4", "part": "C1", "test_current_ma": 150, "test_button_works": false})
	f = derive(t, doc, figures(0.04)).RCDs
	facttest.Is(t, "once it did not", f[0].ButtonWorks, false)
	facttest.Is(t, "what is said of a reading stands", f[1].ButtonWorks, true)
}

// Without surge protective devices nobody has to say that none was connected.
func TestNoSurgeDevices(t *testing.T) {
	doc := premises()
	record(doc)["insulation"] = list{object{"id": "IR1", "part": "C1", "side": "ac", "resistance_megohm": 200, "test_voltage_v": 500},
		object{"id": "IR2", "part": "S1", "side": "dc", "together_with": list{}, "resistance_megohm": 200, "test_voltage_v": 1000}}
	f := derive(t, doc, figures(0.04))
	facttest.Wants(t, "devices not stated", f.Circuits[0].SPDsConnected, "/commissioning/insulation/0/spds_connected")
	facttest.Wants(t, "devices not stated", f.Insulation[1].SPDsConnected, "/commissioning/insulation/1/spds_connected")
	doc["spds"] = list{object{"id": "P1", "connected_at": "INV1.1", "circuit": "pv_dc"}}
	f = derive(t, doc, figures(0.04))
	facttest.Is(t, "none on AC", f.Circuits[0].SPDsConnected, false)
	facttest.Is(t, "none on AC", f.Insulation[0].SPDsConnected, false)
	facttest.Wants(t, "one on DC", f.Insulation[1].SPDsConnected, "/commissioning/insulation/1/spds_connected")
}

func TestProofs(t *testing.T) {
	doc := premises()
	test := func(id, kind string, passed bool, s float64) object {
		return object{"id": id, "test": kind, "part": "INV1", "passed": passed, "time_s": s}
	}
	record(doc)["functional"] = list{test("F1", "inverter_starts", true, 1), test("F2", "loss_of_mains", true, 0.3), test("F3", "loss_of_mains", false, 0.7),
		test("F4", "reconnection", true, 72), test("F5", "reconnection", true, 65)}
	f := derive(t, doc, figures(0.04))
	p := f.Proofs[0]
	if !p.Starts.Value() || p.LossOfMains.Value() || !p.LossOfMains.Known() || !p.Reconnects.Value() {
		t.Errorf("starts %v, stops %v (known %v), comes back %v", p.Starts.Value(), p.LossOfMains.Value(), p.LossOfMains.Known(), p.Reconnects.Value())
	}
	facttest.Is(t, "longest until it stopped", p.LossOfMainsS, 0.7)
	facttest.Is(t, "shortest until it came back", p.ReconnectionS, 65)
	facttest.Wants(t, "settings not read back", p.SettingsRead, "/commissioning/functional")
	facttest.Is(t, "isolators not operated", f.Record.SwitchesUntried, 1)
	delete(record(doc)["functional"].(list)[2].(object), "part")
	facttest.Wants(t, "a test of no stated part may be of any", derive(t, doc, figures(0.04)).Proofs[0].LossOfMains, "/commissioning/functional/2/part")
}

// Two strings of 495 V: joined the right way round they differ by little, with
// one reversed by the sum of both. And the fill factor of a curve: 412 V and
// 13.1 A of 495 V and 13.9 A give 0.7844.
func TestCombinersAndCurves(t *testing.T) {
	doc := site(module(), 10, 10)
	combiner := func(id string, u float64) object {
		return object{"id": id, "string": "S1", "against": "S2", "voltage_v": u}
	}
	record(doc)["combiners"] = list{combiner("CB1", -4.95), combiner("CB2", 990)}
	record(doc)["curves"] = list{object{"id": "CU1", "string": "S1", "voc_v": 495, "isc_a": 13.9, "vmp_v": 412, "imp_a": 13.1}}
	f := derive(t, doc, figures(0.04))
	facttest.Is(t, "the right way round", f.Combiners[0].OverVocPct, 1)
	facttest.Is(t, "one reversed", f.Combiners[1].OverVocPct, 200)
	facttest.Near(t, "fill factor", f.Curves[0].FillFactor, 0.7844, 0.0001)
	facttest.Near(t, "fill factor of the sheet", f.Curves[0].FillFactorStc, 0.7844, 0.0001)
	facttest.Is(t, "curves of the string", f.Strings[0].Curves, 1)
	facttest.Is(t, "curves of the other", f.Strings[1].Curves, 0)
}

// While an installation is only designed there is nothing to read; once it is
// built, readings not stated are missing.
func TestDesigned(t *testing.T) {
	doc := site(module(), 10)
	if f := derive(t, doc, figures(0.04)); f.Insulation != nil || f.Continuity != nil || f.Instruments != nil || len(f.Strings) != 1 {
		t.Error("a built installation without readings has them, or its string has none")
	}
	doc["project"].(object)["stage"] = "design"
	if f := derive(t, doc, figures(0.04)); f.Insulation == nil || f.Curves == nil || f.Strings == nil || len(f.Strings) != 0 {
		t.Error("a designed installation lacks readings")
	}
}
