package accircuit_test

import (
	"testing"

	"sunclause/facts/facttest"
)

// cables adds sheets of cables and gives the runs of the house one.
func withCable(doc object, sheet, more object) {
	facttest.At(doc, "datasheets")["cables"] = object{"W": sheet, "SEP": object{"conductor": "copper", "insulation": "xlpe", "csa_mm2": 10}}
	for _, r := range doc["cables"].(list) {
		r.(object)["cable"], r.(object)["conductors_per_pole"] = "W", 1
		for k, v := range more {
			r.(object)[k] = v
		}
	}
}

// A core of 1.0 mm² in a PVC cable bears 13 225 A²s (a question to the
// institution's forum); 4 mm² three-core armour of 23 mm² bears (46·23)².
func TestWithstand(t *testing.T) {
	doc := house()
	twin := object{"conductor": "copper", "insulation": "pvc", "csa_mm2": 1.5, "cpc_csa_mm2": 1.0}
	withCable(doc, twin, nil)
	f := one(t, doc, laid{})
	facttest.Near(t, "line", f.LineWithstandA2s, 29756.25, 1e-6)
	facttest.Near(t, "protective core", f.ProtectiveWithstandA2s, 13225, 1e-6)
	facttest.Near(t, "let through", f.FaultEnergyA2s, 15000, 0)
	facttest.Near(t, "section needed", f.ProtectiveNeededMm2, 1.065, 0.001)

	withCable(doc, twin, object{"protective_cable": "SEP"})
	facttest.Near(t, "separate", one(t, doc, laid{}).ProtectiveWithstandA2s, 1760*1760, 1e-3)

	doc = house()
	withCable(doc, object{"conductor": "copper", "insulation": "xlpe", "csa_mm2": 4, "armour": "steel", "armour_csa_mm2": 23}, object{"protective_by_armour": true})
	facttest.Near(t, "armour", one(t, doc, laid{}).ProtectiveWithstandA2s, 1058*1058, 1e-3)

	doc = house()
	withCable(doc, object{"conductor": "copper", "insulation": "pvc", "csa_mm2": 4}, nil)
	facttest.Wants(t, "no protective conductor stated", one(t, doc, laid{}).ProtectiveWithstandA2s, "/cables/0/protective_cable", "/cables/1/protective_cable")
}

// A fuse lets most through at the current that just makes it operate in time.
func TestEnergyOfFuse(t *testing.T) {
	doc := house()
	facttest.At(doc, "datasheets", "protective_devices")["D"] = object{"kind": "fuse", "characteristic": "gM", "rated_a": 20, "operates_0_4s_a": 100, "let_through_a2s": 1}
	facttest.Near(t, "fuse", one(t, doc, laid{}).FaultEnergyA2s, 4000, 1e-9)
	facttest.At(doc, "datasheets", "protective_devices")["D"] = object{"kind": "circuit_breaker", "characteristic": "B", "rated_a": 20}
	facttest.Wants(t, "breaker", one(t, doc, laid{}).FaultEnergyA2s, "/datasheets/protective_devices/D/let_through_a2s")
}
