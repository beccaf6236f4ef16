package storage_test

import (
	"fmt"
	"testing"

	"pgregory.net/rapid"

	"sunclause/facts/facttest"
)

// Energies add up over units; voltages add up in series and currents in parallel
// (Kirchhoff's laws).
func TestUnits(t *testing.T) {
	for _, c := range []struct {
		units                                         int
		joined                                        string
		energy, voltage, current, discharge, shortage float64
	}{
		{2, "parallel", 10.2, 230, 50, 40, 5}, {2, "series", 10.2, 460, 25, 20, 2.5}, {1, "", 5.1, 230, 25, 20, 2.5},
	} {
		doc := site()
		bat(doc)["units"] = c.units
		delete(bat(doc), "units_joined")
		if c.joined != "" {
			bat(doc)["units_joined"] = c.joined
		}
		f := derive(t, doc).Batteries[0]
		facttest.Is(t, "energy", f.EnergyKwh, c.energy)
		facttest.Is(t, "voltage", f.VoltageMaxV, c.voltage)
		facttest.Is(t, "current", f.CurrentMaxA, c.current)
		facttest.Is(t, "discharge", f.DischargeMaxA, c.discharge)
		facttest.Is(t, "short circuit", f.ShortCircuitKa, c.shortage)
	}
	doc := site()
	delete(bat(doc), "units_joined")
	f := derive(t, doc).Batteries[0]
	facttest.Is(t, "energy", f.EnergyKwh, 10.2)
	facttest.Wants(t, "voltage", f.VoltageMaxV, "/storage/batteries/0/units_joined")
	delete(bat(doc), "units")
	facttest.Wants(t, "energy", derive(t, doc).Batteries[0].EnergyKwh, "/storage/batteries/0/units")
}

// The rated current of a switch-disconnector belongs to a rated voltage
// (IEC 60947-3): the row with the lowest voltage that covers the battery's.
func TestIsolatorAndProtection(t *testing.T) {
	doc := site()
	f := derive(t, doc).Batteries[0]
	facttest.Is(t, "U_e", f.IsolatorUeV, 440)
	facttest.Is(t, "I_e", f.IsolatorIeA, 60)
	facttest.Is(t, "I_n", f.OvercurrentA, 63)
	facttest.Is(t, "U_n", f.OvercurrentV, 250)
	facttest.Is(t, "I_cn", f.OvercurrentKa, 10)
	facttest.Is(t, "can be isolated", f.CanBeIsolated, true)
	facttest.Is(t, "protected", f.Protected, true)
	bat(doc)["units_joined"], bat(doc)["units"] = "series", 3
	f = derive(t, doc).Batteries[0]
	facttest.Is(t, "none covers it", f.IsolatorUeV, 600)
	delete(facttest.At(doc, "isolators", 0), "poles_in_series")
	facttest.Wants(t, "poles in series", derive(t, doc).Batteries[0].IsolatorIeA, "/isolators/0/poles_in_series")
	delete(bat(doc), "isolator")
	delete(bat(doc), "overcurrent_device")
	f = derive(t, doc).Batteries[0]
	facttest.Wants(t, "no isolator named", f.CanBeIsolated, "/storage/batteries/0/isolator")
	facttest.Wants(t, "no device named", f.OvercurrentKa, "/storage/batteries/0/overcurrent_device")
	facttest.At(doc, "datasheets", "batteries", "B")["isolator_built_in"] = true
	facttest.Is(t, "built in", derive(t, doc).Batteries[0].CanBeIsolated, true)
	delete(facttest.At(doc, "datasheets", "batteries", "B"), "overcurrent_built_in")
	facttest.Wants(t, "device", derive(t, doc).Batteries[0].Protected, "/datasheets/batteries/B/overcurrent_built_in", "/storage/batteries/0/overcurrent_device")
}

func TestWiring(t *testing.T) {
	doc := site()
	all := derive(t, doc)
	f, p := all.Batteries[0], all.Ports[0]
	if f.Inverter.Value() != "INV1" || f.WiredSide.Value() != "dc" {
		t.Errorf("wired to %q on the %s side", f.Inverter.Value(), f.WiredSide.Value())
	}
	facttest.Is(t, "voltage of the port", f.InverterVoltageMaxV, 480)
	facttest.Is(t, "current of the port", f.InverterCurrentMaxA, 30)
	facttest.Is(t, "port", p.BatteryPort, true)
	facttest.Is(t, "cabled", p.BatteryPortCabled, true)
	facttest.Is(t, "wired", p.BatteriesWired, 1)

	doc["cables"] = doc["cables"].(list)[:1]
	all = derive(t, doc)
	facttest.Wants(t, "side", all.Batteries[0].WiredSide, "/cables")
	facttest.Wants(t, "wired", all.Ports[0].BatteriesWired, "/cables")
	facttest.Wants(t, "the isolator may be joined to the port", all.Ports[0].BatteryPortCabled, "/isolators/0")
	facttest.At(doc, "isolators", 0, "ways", 0)["joined_out"] = "INV1.battery"
	facttest.Is(t, "joined without a run", derive(t, doc).Ports[0].BatteriesWired, 1)

	doc = site()
	delete(bat(doc), "isolator")
	doc["isolators"], doc["cables"] = list{}, list{object{"id": "R1", "from": "BAT.ac", "to": "SUP", "service": "ac"}}
	facttest.At(doc, "ac")["supply"] = object{"id": "SUP"}
	all = derive(t, doc)
	if all.Batteries[0].WiredSide.Value() != "ac" {
		t.Error("it is wired on the AC side")
	}
	facttest.Is(t, "wired to the port", all.Ports[0].BatteriesWired, 0)
	facttest.Is(t, "cabled", all.Ports[0].BatteryPortCabled, false)
	facttest.At(doc, "datasheets", "inverters", "H")["kind"] = "pv"
	facttest.Is(t, "port of a PV inverter", derive(t, doc).Ports[0].BatteryPort, false)
	delete(facttest.At(doc, "datasheets", "inverters", "H"), "kind")
	facttest.Wants(t, "port", derive(t, doc).Ports[0].BatteryPort, "/datasheets/inverters/H/kind")
}

func TestPlace(t *testing.T) {
	doc := site()
	f := derive(t, doc).Batteries[0]
	facttest.Is(t, "outdoors", f.Outdoors, false)
	facttest.Is(t, "allowed indoors", f.AllowedThere, true)
	facttest.Is(t, "clearances", f.ClearancesKept, true)
	if got := fmt.Sprint(f.Standards.Values()); got != "[62477-1 62619]" {
		t.Errorf("standards %s", got)
	}
	bat(doc)["place"], bat(doc)["clear_above_mm"] = "outdoor_wall", 199
	f = derive(t, doc).Batteries[0]
	facttest.Is(t, "outdoors", f.Outdoors, true)
	facttest.Is(t, "allowed outdoors", f.AllowedThere, false)
	facttest.Is(t, "clearances", f.ClearancesKept, false)
	delete(bat(doc), "clear_above_mm")
	facttest.Wants(t, "clearances", derive(t, doc).Batteries[0].ClearancesKept, "/storage/batteries/0/clear_above_mm")
	bat(doc)["clear_above_mm"] = 199
	sheet := facttest.At(doc, "datasheets", "batteries", "B")
	delete(sheet, "clearance_top_mm")
	facttest.Wants(t, "clearances", derive(t, doc).Batteries[0].ClearancesKept, "/datasheets/batteries/B/clearance_top_mm")
	delete(bat(doc), "clear_above_mm")
	facttest.Is(t, "clearances as stated", derive(t, doc).Batteries[0].ClearancesKept, true)
	delete(bat(doc), "place")
	f = derive(t, doc).Batteries[0]
	facttest.Wants(t, "outdoors", f.Outdoors, "/storage/batteries/0/place")
	facttest.Wants(t, "allowed", f.AllowedThere, "/storage/batteries/0/place")
}

func TestProvision(t *testing.T) {
	doc := site()
	p := facttest.At(doc, "storage", "provision")
	p["planned"], p["inverter"], p["way"] = true, "INV1", "B1.1"
	f := derive(t, doc).Provision
	facttest.Is(t, "batteries", f.Batteries, 1)
	facttest.Is(t, "port", f.PlannedPort, true)
	facttest.Is(t, "spare way", f.PlannedWayKept, true)
	facttest.Is(t, "backup", f.BackupOutput, false)
	facttest.Wants(t, "conformity", f.BatteryConformity, "/storage/conformity_statement")
	facttest.Wants(t, "tested", f.SourcesIsolable, "/commissioning/functional")
	p["way"] = "B1.2"
	facttest.At(doc, "handover")["documents"] = list{object{"id": "D1", "kind": "battery_conformity_statement"}}
	facttest.At(doc, "commissioning")["functional"] = list{object{"id": "T1", "test": "source_isolation", "passed": true}, object{"id": "T2", "test": "source_isolation"}}
	facttest.At(doc, "datasheets", "batteries", "B")["backup_output"] = true
	f = derive(t, doc).Provision
	facttest.Is(t, "a way in use", f.PlannedWayKept, false)
	facttest.Is(t, "conformity", f.BatteryConformity, true)
	facttest.Is(t, "backup", f.BackupOutput, true)
	facttest.Wants(t, "one test without a result", f.SourcesIsolable, "/commissioning/functional/1/passed")
	facttest.At(doc, "commissioning", "functional", 1)["passed"] = false
	facttest.Is(t, "one test failed", derive(t, doc).Provision.SourcesIsolable, false)
	delete(facttest.At(doc, "storage"), "batteries")
	doc["cables"] = list{}
	f = derive(t, doc).Provision
	facttest.Wants(t, "batteries", f.Batteries, "/storage/batteries")
	facttest.Wants(t, "energy", f.BatteryEnergyNearKwh, "/storage/batteries")
	delete(p, "way")
	delete(p, "inverter")
	f = derive(t, doc).Provision
	facttest.Wants(t, "way", f.PlannedWayKept, "/storage/provision/way")
	facttest.Wants(t, "port", f.PlannedPort, "/storage/provision/inverter")
}

// What does not count as near is only what is shown to stand far off: any
// member left out, or any weaker answer, never lowers the energy that counts.
func TestEnergyNear(t *testing.T) {
	doc := site()
	facttest.Is(t, "detached, 60 min", derive(t, doc).Provision.BatteryEnergyNearKwh, 0)
	rapid.Check(t, func(rt *rapid.T) {
		doc := site()
		bat(doc)["fire_separation_min"] = rapid.IntRange(0, 120).Draw(rt, "minutes")
		bat(doc)["detached_building"] = rapid.Bool().Draw(rt, "detached")
		bat(doc)["place"] = rapid.SampledFrom([]string{"outdoor_wall", "outbuilding", "garage"}).Draw(rt, "place")
		before := derive(t, doc).Provision.BatteryEnergyNearKwh
		delete(bat(doc), rapid.SampledFrom([]string{"fire_separation_min", "detached_building", "place", "units"}).Draw(rt, "left out"))
		after := derive(t, doc).Provision.BatteryEnergyNearKwh
		if after.Known() && after.Value() < before.Value() {
			rt.Errorf("%v kWh became %v kWh", before.Value(), after.Value())
		}
	})
}
