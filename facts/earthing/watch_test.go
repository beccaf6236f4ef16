package earthing_test

import (
	"testing"

	"sunclause/facts/facttest"
)

// 600 V and 1000 V over 30 mA are 20 kΩ and 33.3 kΩ: IEC 62109-2 (from memory), worked.
func TestInsulationLimit(t *testing.T) {
	for volts, want := range map[float64]float64{600: 20, 1000: 33.333} {
		doc := house()
		facttest.At(doc, "datasheets", "inverters", "I")["dc_voltage_max_v"] = volts
		facttest.Near(t, "limit", derive(t, doc).Watches[0].InsulationDueKohm, want, 0.001)
	}
}

// Rows of the table of IEC 62548 (from memory): just 20 kW belongs to the first.
func TestInsulationByArraySize(t *testing.T) {
	for watts, want := range map[float64]float64{500: 30, 2000: 30, 2001: 20, 5000: 15, 10000: 10, 20000: 7, 20001: 4} {
		doc := house()
		facttest.At(doc, "datasheets", "modules", "M")["pmax_w"] = watts
		facttest.Near(t, "limit", derive(t, doc).Watches[0].InsulationArrayKohm, want, 0)
	}
	doc := house()
	facttest.At(doc, "datasheets", "modules", "M")["pmax_w"] = 40001
	if n := derive(t, doc).Watches[0].InsulationArrayKohm; n.Known() {
		t.Errorf("beyond the table: %v", n.Value())
	}
}

func TestAlarms(t *testing.T) {
	w := derive(t, house()).Watches[0]
	facttest.Wants(t, "alarms not stated", w.EarthFaultAlarms, "/earthing/alarms")
	doc := house()
	facttest.At(doc, "earthing")["alarms"] = list{object{"id": "A1", "inverter": "INV1", "insulation_measured": false}, object{"id": "A2", "inverter": "INV1", "insulation_measured": true}}
	w = derive(t, doc).Watches[0]
	facttest.Near(t, "alarms", w.EarthFaultAlarms, 2, 0)
	facttest.Is(t, "one of them measures", w.InsulationMeasured, true)
	facttest.Wants(t, "residual current", w.ResidualMonitored,
		"/earthing/alarms/0/residual_current_monitored", "/earthing/alarms/1/residual_current_monitored")
	facttest.At(doc, "earthing")["alarms"] = list{}
	w = derive(t, doc).Watches[0]
	facttest.Near(t, "alarms", w.EarthFaultAlarms, 0, 0)
	facttest.Is(t, "nothing watches", w.ResidualMonitored, false)
}

func TestInverterEarth(t *testing.T) {
	w := derive(t, add(house(), run("R5", "EB1", "INV1", "protective", "c10"))).Watches[0]
	facttest.Near(t, "size", w.EarthMm2, 10, 0)
	facttest.Near(t, "conductors", w.EarthConductors, 1, 0)
	if w := derive(t, house()).Watches[0]; w.EarthMm2.Known() || w.EarthConductors.Known() {
		t.Errorf("no conductor stated: %v mm², %v of them", w.EarthMm2.Value(), w.EarthConductors.Value())
	}
}

// 4 mm² does where it is enclosed all its way (BS 7671, 543.7.1.203, as quoted);
// 10 mm² does however it is laid.
func TestLeakageEarth(t *testing.T) {
	conduit := object{"length_m": 3, "enclosure": "flexible_conduit", "mechanically_protected": true}
	for _, c := range []struct {
		name, sheet string
		segments    list
		want        float64
	}{
		{"enclosed", "c4", list{conduit, object{"length_m": 1, "place": "switchgear"}}, 4},
		{"on a tray for a while", "c4", list{conduit, object{"length_m": 1, "enclosure": "ladder", "mechanically_protected": true}}, 10},
		{"in light trunking", "c4", list{object{"length_m": 3, "enclosure": "trunking", "mechanically_protected": false}}, 10},
		{"thick enough anyhow", "c10", list{object{"length_m": 3}}, 10},
	} {
		r := run("R5", "MET", "INV1", "protective", c.sheet)
		r["segments"] = c.segments
		facttest.Near(t, c.name, derive(t, add(house(), r)).Watches[0].EarthDueMm2, c.want, 0)
	}
	r := run("R5", "MET", "INV1", "protective", "c4")
	r["segments"] = list{object{"length_m": 3}, object{"length_m": 3, "enclosure": "conduit"}}
	facttest.Wants(t, "not said how it lies", derive(t, add(house(), r)).Watches[0].EarthDueMm2,
		"/cables/4/segments/0/enclosure", "/cables/4/segments/0/mechanically_protected", "/cables/4/segments/1/mechanically_protected")
}

// The protective conductor of an AC circuit is as thin as the thinnest of its
// runs as far as the board.
func TestEarthByAllRunsOfTheCircuit(t *testing.T) {
	doc := house()
	facttest.At(doc, "datasheets")["switch_disconnectors"] = object{}
	doc["isolators"] = list{object{"id": "ISO", "circuit": "ac", "ways": list{object{"id": "1"}}}}
	first, rest := run("R4", "INV1.ac", "ISO.1.in", "ac", "c10"), run("R5", "ISO.1.out", "B1.1", "ac", "c4")
	for _, r := range []object{first, rest} {
		r["conductors_per_pole"] = 1
	}
	first["protective_cable"], rest["protective_cable"] = "c10", "c4"
	doc["cables"] = append(doc["cables"].(list)[:3], first, rest)
	facttest.Near(t, "size", derive(t, doc).Watches[0].EarthMm2, 4, 0)
}

func TestUnfusedPoles(t *testing.T) {
	for _, c := range []struct {
		name, fused string
		poles       list
		earthed     string
		want        float64
	}{
		{"one fuse, nothing earthed", "positive", list{}, "none", 1},
		{"the other pole earthed", "positive", list{pole("negative", "fuse")}, "negative", 0},
		{"earthed solidly", "negative", list{pole("positive", "solid")}, "positive", 0},
		{"the fuse in the earthed pole", "negative", list{pole("negative", "fuse")}, "negative", 1},
		{"earthed through a resistor", "positive", list{pole("negative", "resistor")}, "none", 1},
		{"midpoint earthed", "positive", list{pole("midpoint", "fuse")}, "none", 1},
		{"both fused", "both", list{pole("negative", "fuse")}, "negative", 0},
	} {
		doc := house()
		facttest.At(doc, "strings", 0)["overcurrent"] = object{"fitted": true, "poles": c.fused}
		facttest.At(doc, "earthing")["poles"] = c.poles
		s := derive(t, doc).Strings[0]
		facttest.Is(t, c.name, s.EarthedPole, c.earthed)
		facttest.Near(t, c.name, s.UnfusedPoles, c.want, 0)
	}
	doc := house()
	facttest.At(doc, "strings", 0)["overcurrent"] = object{"fitted": true, "poles": "positive"}
	facttest.Wants(t, "not said whether a pole is earthed", derive(t, doc).Strings[0].UnfusedPoles, "/earthing/poles")
	facttest.At(doc, "earthing")["poles"] = list{object{"id": "P1", "inverter": "INV1", "pole": "negative"}}
	facttest.Wants(t, "not said through what", derive(t, doc).Strings[0].UnfusedPoles, "/earthing/poles/0/by")
	facttest.At(doc, "strings", 0)["overcurrent"] = object{"fitted": true, "poles": "both"}
	facttest.Near(t, "both fused, whatever is earthed", derive(t, doc).Strings[0].UnfusedPoles, 0, 0)
}

func pole(which, by string) object {
	return object{"id": "P1", "inverter": "INV1", "pole": which, "by": by}
}

func TestPartsAsStated(t *testing.T) {
	f := derive(t, house())
	if f.Poles != nil || f.Alarms != nil || f.Electrodes == nil {
		t.Errorf("lists not stated are nil, and one stated empty is not: %v %v %v", f.Poles, f.Alarms, f.Electrodes)
	}
	doc := house()
	facttest.At(doc, "earthing")["poles"] = list{object{"id": "P1", "inverter": "INV1", "pole": "negative", "by": "fuse"}}
	p := derive(t, doc).Poles[0]
	if p.Separation.Value() != "none" || p.By.Value() != "fuse" {
		t.Errorf("pole behind separation %q by %q", p.Separation.Value(), p.By.Value())
	}
}
