package accircuit_test

import (
	"testing"

	"sunclause/facts/accircuit"
	"sunclause/facts/facttest"
)

// wired gives the runs of a house one sheet of cable, and takes what the room of
// cables makes of them.
func wired(t *testing.T, sheet, more object) accircuit.Circuit {
	t.Helper()
	doc := house()
	facttest.At(doc, "datasheets")["cables"] = object{"W": sheet, "SEP": object{"kind": "single_core_unsheathed", "conductor": "copper", "insulation": "xlpe", "csa_mm2": 10}}
	for _, r := range doc["cables"].(list) {
		r.(object)["cable"], r.(object)["conductors_per_pole"] = "W", 1
		for k, v := range more {
			r.(object)[k] = v
		}
	}
	r := facttest.Derive(t, doc, rules())
	f := accircuit.Derive(r.Installation, r.Circuit, r.Strings, r.Cables, rules())
	if len(f.Circuits) != 1 {
		t.Fatal(len(f.Circuits), "circuits, want one")
	}
	return f.Circuits[0]
}

// A core of 1.0 mm² in a PVC cable bears 13 225 A²s (a question to the
// institution's forum); 4 mm² three-core armour of 23 mm² bears (46·23)².
func TestWithstand(t *testing.T) {
	twin := object{"kind": "flat_twin_and_earth", "conductor": "copper", "insulation": "pvc", "csa_mm2": 1.5, "cpc_csa_mm2": 1.0}
	f := wired(t, twin, object{"protective_in_service": true})
	facttest.Near(t, "line", f.LineWithstandA2s, 29756.25, 1e-6)
	facttest.Near(t, "protective core", f.ProtectiveWithstandA2s, 13225, 1e-6)
	facttest.Near(t, "let through", f.FaultEnergyA2s, 15000, 0)
	facttest.Near(t, "section needed", f.ProtectiveNeededMm2, 1.065, 0.001)

	f = wired(t, twin, object{"protective_cable": "SEP", "conductors_per_pole": 2})
	facttest.Near(t, "two separate", f.ProtectiveWithstandA2s, 4*1760*1760, 1e-3)
	facttest.Near(t, "two conductors for each line", f.LineWithstandA2s, 4*29756.25, 1e-6)

	f = wired(t, object{"kind": "armoured", "conductor": "copper", "insulation": "xlpe", "csa_mm2": 4, "armour": "steel", "armour_csa_mm2": 23}, object{"protective_by_armour": true})
	facttest.Near(t, "armour", f.ProtectiveWithstandA2s, 1058*1058, 1e-3)

	none := wired(t, object{"kind": "flat_twin_and_earth", "conductor": "copper", "insulation": "pvc", "csa_mm2": 4}, nil)
	facttest.Wants(t, "no protective conductor stated", none.ProtectiveWithstandA2s,
		"/cables/0/protective_cable", "/cables/1/protective_cable", "/datasheets/cables/W/cpc_csa_mm2")
	facttest.Wants(t, "core not said to be connected", wired(t, twin, nil).ProtectiveWithstandA2s, "/cables/0/protective_in_service", "/cables/1/protective_in_service")
}

// Solar cable bears less, on the AC side too: its capacity is tabulated for a
// conductor of 120 °C, from which a fault heats it on.
func TestWithstandOfSolarCable(t *testing.T) {
	solar := object{"kind": "solar_single_core", "conductor": "copper", "insulation": "crosslinked_polyolefin", "csa_mm2": 4}
	facttest.Near(t, "line", wired(t, solar, nil).LineWithstandA2s, 126.3*126.3*16, 1e-3)
}

// A fuse lets most through at the current that just makes it operate in time.
func TestEnergyOfFuse(t *testing.T) {
	doc := house()
	facttest.At(doc, "datasheets", "protective_devices")["D"] = object{"kind": "fuse", "characteristic": "gM", "rated_a": 20, "operates_0_4s_a": 100, "let_through_a2s": 1}
	facttest.Near(t, "fuse", one(t, doc, laid{}).FaultEnergyA2s, 4000, 1e-9)
	facttest.At(doc, "datasheets", "protective_devices")["D"] = object{"kind": "circuit_breaker", "characteristic": "B", "rated_a": 20}
	facttest.Wants(t, "breaker", one(t, doc, laid{}).FaultEnergyA2s, "/datasheets/protective_devices/D/let_through_a2s")
}
