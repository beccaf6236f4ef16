package commissioning_test

import (
	"testing"

	"sunclause/facts/commissioning"
	"sunclause/facts/facttest"
)

func insulated(t testing.TB, doc object, readings ...object) commissioning.Facts {
	t.Helper()
	var all list
	for _, r := range readings {
		all = append(all, r)
	}
	record(doc)["insulation"] = all
	return derive(t, doc, figures(0.04))
}

func insulationOf(id, part, between string, megohm float64, more ...any) object {
	return object{"id": id, "part": part, "together_with": append(list{}, more...), "side": "dc", "between": between, "test_voltage_v": 1000, "resistance_megohm": megohm}
}

// TestInsulationTable: strings of 1, 2, 8, 10, 16 and 17 modules of 49.5 V. The
// system voltage is 1.25 times that at STC; the bands are those of the table of
// IEC 62446-1 6.7. At the bounds themselves: 120 V is tested with 500 V, so is
// 500 V, and 1000 V with 1000 V.
func TestInsulationTable(t *testing.T) {
	for _, c := range []struct {
		voc                   float64
		series                int
		system, volts, megohm float64
	}{
		{49.5, 1, 61.875, 250, 0.5}, {49.5, 2, 123.75, 500, 1}, {49.5, 8, 495, 500, 1}, {49.5, 10, 618.75, 1000, 1},
		{49.5, 16, 990, 1000, 1}, {49.5, 17, 1051.875, 1500, 1},
		{95.9, 1, 119.875, 250, 0.5}, {96, 1, 120, 500, 1}, {40, 10, 500, 500, 1}, {40.1, 10, 501.25, 1000, 1},
		{40, 20, 1000, 1000, 1}, {40.1, 20, 1002.5, 1500, 1},
	} {
		f := insulated(t, site(with(object{"voc_v": c.voc}), c.series), insulationOf("IR1", "S1", "positive_to_earth", 50)).Insulation[0]
		facttest.Near(t, "system voltage", f.SystemVoltageV, c.system, 1e-9)
		facttest.Is(t, "test voltage", f.TestVoltageNeededV, c.volts)
		facttest.Is(t, "least resistance", f.ResistanceMinMegohm, c.megohm)
		facttest.Near(t, "over the least", f.OverMin, 50/c.megohm, 1e-9)
	}
}

// Modules of 2 m² may each show 20 MΩ wet by their type test, IEC 61215-2: 20 of
// them together 1 MΩ.
func TestInsulationTogether(t *testing.T) {
	doc := site(module(), 12, 8)
	f := insulated(t, doc, insulationOf("IR1", "S1", "joined_to_earth", 1.2, "S2")).Insulation[0]
	facttest.Is(t, "power of both strings", f.PowerW, 20*540)
	facttest.Is(t, "area of both", f.AreaM2, 40)
	facttest.Is(t, "what they may show wet", f.WetModulesMegohm, 1)
	facttest.Is(t, "voltage of the longer", f.SystemVoltageV, 1.25*12*49.5)
	facttest.Is(t, "rating of the modules", f.ModuleVoltageMaxV, 1500)

	alone := insulationOf("IR1", "S1", "joined_to_earth", 1.2)
	delete(alone, "together_with")
	f = insulated(t, doc, alone).Insulation[0]
	facttest.Wants(t, "power, not told what was joined", f.PowerW, "/commissioning/insulation/0/together_with")
	facttest.Wants(t, "test voltage then", f.TestVoltageNeededV, "/commissioning/insulation/0/together_with")
}

// The least rating among the cables that carry a string bounds its test voltage.
// A string that no run carries may be carried by any.
func TestCablesOfTheTest(t *testing.T) {
	doc := site(module(), 10)
	doc["datasheets"].(object)["cables"] = object{"a": cableOf(object{"voltage_dc_max_v": 1500}), "b": cableOf(object{"voltage_dc_max_v": 1000}), "c": cableOf(object{})}
	doc["datasheets"].(object)["inverters"] = object{"I": object{"dc_voltage_max_v": 600, "mppts": list{object{}}, "ac_power_rated_w": 5000, "phases": 1}}
	doc["inverters"] = list{object{"id": "INV1", "datasheet": "I"}}
	doc["arrays"] = list{object{"id": "A1", "ways": 1}}
	run := func(id, from, to, cable string) object {
		return object{"id": id, "from": from, "to": to, "service": "pv_string", "cable": cable}
	}
	doc["cables"] = list{run("R1", "S1", "A1.1", "a"), run("R2", "A1.out", "INV1.1", "b")}
	f := insulated(t, doc, insulationOf("IR1", "S1", "joined_to_earth", 50))
	facttest.Is(t, "least of both cables", f.Insulation[0].CableVoltageMaxV, 1000)
	doc["cables"].(list)[1].(object)["cable"] = "c"
	f = insulated(t, doc, insulationOf("IR1", "S1", "joined_to_earth", 50))
	facttest.Wants(t, "a cable without a rating", f.Insulation[0].CableVoltageMaxV, "/datasheets/cables/c/voltage_dc_max_v")
	doc["strings"] = append(doc["strings"].(list), object{"id": "S2", "module": "M", "modules_in_series": 10})
	f = insulated(t, doc, insulationOf("IR1", "S1", "joined_to_earth", 50))
	facttest.Wants(t, "beside a string that no run carries", f.Insulation[0].CableVoltageMaxV, "/cables")
}

func TestPolesRead(t *testing.T) {
	f := insulated(t, site(module(), 10, 10, 10), insulationOf("IR1", "S1", "positive_to_earth", 50), insulationOf("IR2", "S1", "negative_to_earth", 50),
		insulationOf("IR3", "S2", "positive_to_earth", 50))
	facttest.Is(t, "both poles", f.Strings[0].InsulationPoles, 2)
	facttest.Is(t, "one pole", f.Strings[1].InsulationPoles, 1)
	facttest.Is(t, "none", f.Strings[2].InsulationPoles, 0)
	f = insulated(t, site(module(), 10), insulationOf("IR1", "S1", "joined_to_earth", 50))
	facttest.Is(t, "poles joined", f.Strings[0].InsulationPoles, 2)
	facttest.Wants(t, "no readings stated", derive(t, site(module(), 10), figures(0.04)).Strings[0].InsulationPoles, "/commissioning/insulation")
}

func TestSurgeDevicesOfASide(t *testing.T) {
	doc := site(module(), 10)
	doc["datasheets"].(object)["spds"] = object{"pv_dc": object{"type": "T2"}, "ac": object{"type": "T2"}, "signal": object{"type": "T2", "system": "signal"}}
	doc["ac"], doc["earthing"] = object{"supply": object{"id": "SUP"}}, object{"main_terminal": object{"id": "MET"}}
	doc["spds"] = list{spd("SPD1", "pv_dc"), spd("SPD2", "pv_dc"), spd("SPD3", "ac"), spd("SPD4", "signal")}
	facttest.Is(t, "on the DC side", insulated(t, doc, insulationOf("IR1", "S1", "positive_to_earth", 50)).Insulation[0].SPDs, 2)
	ac := insulationOf("IR1", "S1", "live_to_earth", 50)
	ac["side"] = "ac"
	f := insulated(t, doc, ac).Insulation[0]
	facttest.Is(t, "on the AC side", f.SPDs, 1)
	facttest.Wants(t, "system voltage on the AC side", f.SystemVoltageV, "/commissioning/insulation/0/part")
	delete(doc, "spds")
	facttest.Wants(t, "none stated", insulated(t, doc, ac).Insulation[0].SPDs, "/spds")
}

func spd(id, circuit string) object {
	return object{"id": id, "connected_at": map[string]string{"pv_dc": "S1", "ac": "SUP", "signal": "MET"}[circuit], "circuit": circuit, "datasheet": circuit}
}

func cableOf(sheet object) object {
	sheet["csa_mm2"], sheet["kind"] = 6, "solar_single_core"
	return sheet
}
