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
