package surge_test

import (
	"fmt"
	"math"
	"testing"

	"sunclause/facts/facttest"
	"sunclause/facts/working"
)

// The critical length of IEC 60364-7-712, clause 712.443.101 (115/Ng for a
// residence, 450/Ng for buildings of service, industry and farming), worked out
// in full metres for flash densities as they occur.
func TestCriticalLength(t *testing.T) {
	for _, c := range []struct {
		premises string
		ng, want float64
	}{
		{"dwelling", 0.1, 1150}, {"dwelling", 0.2, 575}, {"dwelling", 0.3, 383}, {"dwelling", 0.5, 230}, {"dwelling", 0.7, 164},
		{"dwelling", 1.0, 115}, {"dwelling", 1.5, 76.7}, {"dwelling", 2.5, 46},
		{"commercial", 0.1, 4500}, {"commercial", 0.3, 1500}, {"commercial", 0.7, 643}, {"commercial", 1.5, 300}, {"commercial", 2.5, 180},
	} {
		doc := site()
		facttest.At(doc, "project")["premises"] = c.premises
		facttest.At(doc, "site")["lightning_ng_per_km2_yr"] = c.ng
		got := derive(t, doc).Routes[0].DcLcritM
		if !got.Known() || math.Abs(got.Value()-c.want) > 0.5 {
			t.Errorf("%s, %v: %v m, want about %v m", c.premises, c.ng, got.Value(), c.want)
		}
	}
}

// A worked example: a residence, 0.7 flashes, 28 m of route. The critical length
// is 164.3 m, so none is due; at more than 10 m, one that is fitted goes at both ends.
func TestWorkedRoute(t *testing.T) {
	f := derive(t, site())
	r := f.Routes[0]
	facttest.Is(t, "route", r.DcRouteM, 28)
	if got := working.Round(r.DcLcritM.Value()); math.Abs(got-164.3) > 0.05 {
		t.Errorf("critical length %v m, want 164.3 m", got)
	}
	facttest.Is(t, "DC devices", r.DcSPDs, 2)
	facttest.Is(t, "inputs without", r.DcInputsBare, 1) // S2's
	facttest.Is(t, "array ends without", r.DcArrayEndsBare, 0)
	facttest.Is(t, "AC devices", r.AcSPDs, 1)
	facttest.Is(t, "to the AC device", r.AcSPDDistanceM, 8)
	facttest.Is(t, "P1 to the inverter", f.SPDs[0].DistanceM, 0)
	facttest.Is(t, "P2 to the inverter", f.SPDs[1].DistanceM, 22)

	doc := site()
	doc["spds"] = doc["spds"].(list)[:1]
	r = derive(t, doc).Routes[0]
	facttest.Is(t, "array ends without, one at the inverter", r.DcArrayEndsBare, 1)
	facttest.At(doc, "spds", 0)["connected_at"] = "S1"
	facttest.Is(t, "inputs without, one at the array", derive(t, doc).Routes[0].DcInputsBare, 2)
}

// A worked example: 600 V offered for ten modules of 49.5 V. It covers 569.25 V
// by the factor 1.15 and 594 V by the older rule of 1.2; eleven modules make 626.2 V.
func TestWorkedVoltage(t *testing.T) {
	f := derive(t, site()).SPDs[0]
	facttest.Is(t, "maximum voltage", f.VocMaxV, 569.25)
	facttest.Is(t, "U_cpv", f.UcpvV, 600)
	if got := f.UcpvOverVocStc.Value(); math.Abs(got-600/495.0) > 1e-9 || got < 1.2 {
		t.Errorf("600 V is %v of 495 V", got)
	}
	facttest.Is(t, "design current", f.IscMaxA, 17.375)
	if fmt.Sprint(f.Strings.Values()) != "[S1]" {
		t.Errorf("strings %v, want S1", f.Strings.Values())
	}
	doc := site()
	facttest.At(doc, "strings", 0)["modules_in_series"] = 11
	if got := derive(t, doc).SPDs[0].VocMaxV.Value(); math.Abs(got-626.2) > 0.05 {
		t.Errorf("eleven modules: %v V, want 626.2 V", got)
	}
}

// A worked example with the form of a trade association for BS 7671:2018:
// suburban, 0.2 km overhead and 0.5 km buried at low voltage, 0.3 km buried at
// high voltage, 0.5 flashes: L_p 0.96 km, CRL 177.
func TestWorkedRiskLevel(t *testing.T) {
	doc := site()
	facttest.At(doc, "site")["lightning_ng_per_km2_yr"] = 0.5
	risk := facttest.At(doc, "ac", "overvoltage_risk")
	for k, v := range (object{"surroundings": "suburban", "low_voltage_overhead_km": 0.2, "low_voltage_buried_km": 0.5, "high_voltage_overhead_km": 0, "high_voltage_buried_km": 0.3}) {
		risk[k] = v
	}
	f := derive(t, doc).Site
	facttest.Is(t, "line", f.SurgeLineKm, 0.96)
	if got := f.SurgeRiskLevel.Value(); math.Round(got) != 177 {
		t.Errorf("risk level %v, want 177", got)
	}
	delete(risk, "surroundings")
	facttest.Wants(t, "risk level", derive(t, doc).Site.SurgeRiskLevel, "/ac/overvoltage_risk/surroundings")
}

// A tenth of the thunderstorm days stands for the flash density (UTE C 15-712-1);
// of both the greater is taken.
func TestFlashDensity(t *testing.T) {
	for _, c := range []struct{ ng, days, want any }{
		{0.7, nil, 0.7}, {nil, 15, 1.5}, {0.7, 15, 1.5}, {0.7, 2, 0.7}, {nil, nil, nil},
	} {
		doc := site()
		delete(facttest.At(doc, "site"), "lightning_ng_per_km2_yr")
		if c.ng != nil {
			facttest.At(doc, "site")["lightning_ng_per_km2_yr"] = c.ng
		}
		if c.days != nil {
			facttest.At(doc, "ac", "overvoltage_risk")["thunderstorm_days_per_yr"] = c.days
		}
		got := derive(t, doc).Site.LightningNg
		if c.want == nil {
			facttest.Wants(t, "neither", got, "/site/lightning_ng_per_km2_yr")
		} else {
			facttest.Is(t, fmt.Sprint(c), got, c.want.(float64))
		}
	}
}

func TestDevice(t *testing.T) {
	doc := site()
	f := derive(t, doc)
	facttest.Is(t, "leads", f.SPDs[0].LeadsMm, 350)
	facttest.Is(t, "withstand of the inverter", f.SPDs[0].UwKv, 4)
	facttest.Is(t, "level it allows", f.SPDs[0].UpMostKv, 3.2)
	facttest.Is(t, "level for AC equipment", f.SPDs[2].UpMostKv, 2)
	facttest.Is(t, "voltage for the supply", f.SPDs[2].UcNeededV, 253)
	facttest.Is(t, "device in front", f.SPDs[2].BackupA, 32)
	facttest.Is(t, "fault current", f.SPDs[2].FaultKa, 6)
	facttest.Wants(t, "level of AC", f.SPDs[2].UpKv, "/datasheets/spds/AC/up_kv")
	for i, want := range []string{"61643-31", "61643-31", "61643-11"} {
		if got := f.SPDs[i].StandardNumber.Value(); got != want {
			t.Errorf("standard %q, want %q", got, want)
		}
	}
	if !f.SPDs[0].Earthed.Value() || f.SPDs[0].AtOrigin.Value() || !f.SPDs[2].AtOrigin.Value() {
		t.Error("P1 is earthed and not at the origin, P3 is at the origin")
	}
	facttest.Wants(t, "P2 earthed", f.SPDs[1].Earthed, "/spds/1/earthed_at")
	delete(facttest.At(doc, "spds", 0), "datasheet")
	facttest.At(doc, "spds", 0)["earthed_at"] = "INV1"
	f = derive(t, doc)
	facttest.Wants(t, "without a sheet", f.SPDs[0].UcpvV, "/spds/0/datasheet")
	facttest.Wants(t, "without a sheet", f.SPDs[0].StandardNumber, "/spds/0/datasheet")
	facttest.Wants(t, "no conductor to the main terminal", f.SPDs[0].Earthed, "/cables")
	doc["cables"] = doc["cables"].(list)[:5]
	delete(facttest.At(doc, "earthing"), "main_terminal")
	facttest.Wants(t, "no main terminal", derive(t, doc).SPDs[0].Earthed, "/earthing/main_terminal/id")
}

// A device on no way of a board hangs behind the fuse of the distributor.
func TestBehindDistributor(t *testing.T) {
	doc := site()
	doc["datasheets"].(object)["protective_devices"].(object)["CUT"] = object{"kind": "fuse", "rated_a": 80}
	facttest.At(doc, "spds", 2)["connected_at"] = "B1.in"
	facttest.Wants(t, "fuse not stated", derive(t, doc).SPDs[2].BackupA, "/ac/supply/device")
	facttest.At(doc, "ac", "supply")["device"] = "CUT"
	facttest.Is(t, "behind the fuse", derive(t, doc).SPDs[2].BackupA, 80)
	facttest.At(doc, "spds", 2)["backup_device"] = "B32"
	facttest.Is(t, "behind one of its own", derive(t, doc).SPDs[2].BackupA, 32)
}

// One out of sight whose remote contact is connected is looked after all the same.
func TestStateSeen(t *testing.T) {
	doc := site()
	facttest.Wants(t, "not stated", derive(t, doc).SPDs[0].IndicatorVisible, "/spds/0/indicator_visible")
	facttest.At(doc, "spds", 0)["indicator_visible"] = false
	facttest.Is(t, "out of sight", derive(t, doc).SPDs[0].IndicatorVisible, false)
	facttest.At(doc, "spds", 0)["remote_contact_used"] = true
	facttest.Is(t, "told elsewhere", derive(t, doc).SPDs[0].IndicatorVisible, true)
}

func TestTypesAtOrigin(t *testing.T) {
	doc := site()
	facttest.Is(t, "Type 2", derive(t, doc).Site.SPDsType1AtOrigin, 0)
	doc["datasheets"].(object)["spds"].(object)["AC1"] = object{"type": "T1+T2", "system": "ac"}
	doc["spds"] = append(doc["spds"].(list), object{"id": "P4", "connected_at": "SUP", "circuit": "ac", "datasheet": "AC1"})
	f := derive(t, doc).Site
	facttest.Is(t, "Types 1 and 2 before it", f.SPDsType1AtOrigin, 1)
	facttest.Is(t, "both at the origin", f.SPDsACAtOrigin, 2)
	delete(facttest.At(doc, "spds", 2), "datasheet")
	facttest.Wants(t, "a device without a sheet", derive(t, doc).Site.SPDsType1AtOrigin, "/spds/2/datasheet")
	facttest.Is(t, "counted all the same", derive(t, doc).Site.SPDsACAtOrigin, 2)
}

func TestLightningProtection(t *testing.T) {
	for _, c := range []struct {
		fitted, kept any
		want         string
	}{
		{false, nil, "no"}, {true, true, "no"}, {true, false, "yes"}, {true, nil, "/earthing/lightning_protection/separation_kept"},
	} {
		doc := site()
		l := object{"fitted": c.fitted}
		if c.kept != nil {
			l["separation_kept"] = c.kept
		}
		facttest.At(doc, "earthing")["lightning_protection"] = l
		got := derive(t, doc).SPDs[0].LightningTooClose
		if !got.Known() {
			facttest.Wants(t, "too close", got, c.want)
		} else if got.Value() != (c.want == "yes") {
			t.Errorf("fitted %v, separation kept %v: too close is %t", c.fitted, c.kept, got.Value())
		}
	}
}

func TestRefusal(t *testing.T) {
	doc := site()
	f := derive(t, doc).Site
	if !f.SurgeDeclined.Known() || f.SurgeDeclined.Value() || !f.SurgeConsequence.Known() || f.SurgeConsequence.Value() {
		t.Error("nothing of consequence, and not declined")
	}
	facttest.Wants(t, "record", f.SurgeRefusalRecorded, "/ac/overvoltage_risk/declined_record")
	doc["handover"] = object{"decisions": list{object{"id": "D1", "decision": "surge_protection_declined", "in_writing": false}}}
	delete(facttest.At(doc, "ac", "overvoltage_risk"), "declined_by_owner")
	f = derive(t, doc).Site
	if !f.SurgeDeclined.Value() || !f.SurgeRefusalRecorded.Known() || f.SurgeRefusalRecorded.Value() {
		t.Error("it is declined among the decisions, not in writing")
	}
	risk := facttest.At(doc, "ac", "overvoltage_risk")
	risk["declined_record"] = "letter"
	facttest.Is(t, "recorded, but the decision is not in writing", derive(t, doc).Site.SurgeRefusalRecorded, false)
	delete(facttest.At(doc, "handover", "decisions", 0), "in_writing")
	facttest.Wants(t, "recorded", derive(t, doc).Site.SurgeRefusalRecorded, "/handover/decisions/0/in_writing")
	doc["handover"] = object{"documents": list{object{"id": "D1", "kind": "surge_protection_refusal"}}}
	delete(risk, "declined_record")
	facttest.Is(t, "recorded by a document", derive(t, doc).Site.SurgeRefusalRecorded, true)
	delete(risk, "danger_to_life")
	facttest.Wants(t, "consequence", derive(t, doc).Site.SurgeConsequence, "/ac/overvoltage_risk/danger_to_life")
	risk["safety_service"] = true
	if f := derive(t, doc).Site.SurgeConsequence; !f.Value() {
		t.Error("a safety service is enough")
	}
}

// A device at an input that no string feeds has nothing to be good for.
func TestNoStrings(t *testing.T) {
	doc := site()
	facttest.At(doc, "cables", 2)["to"] = "Q1.1.in"
	facttest.At(doc, "spds", 0)["connected_at"] = "INV1.2"
	f := derive(t, doc)
	facttest.Is(t, "strings met", f.SPDs[0].StringsMet, 0)
	facttest.Wants(t, "voltage", f.SPDs[0].VocMaxV)
	facttest.Is(t, "strings met", f.SPDs[1].StringsMet, 2)
	facttest.Is(t, "current", f.SPDs[1].IscMaxA, 34.75)
}

func TestNotStated(t *testing.T) {
	doc := site()
	delete(doc, "spds")
	f := derive(t, doc)
	if f.SPDs != nil {
		t.Error("devices of a list not stated")
	}
	r := f.Routes[0]
	for what, n := range map[string]working.Number{"DC": r.DcSPDs, "inputs": r.DcInputsBare, "ends": r.DcArrayEndsBare, "AC": r.AcSPDs,
		"distance": r.AcSPDDistanceM, "all AC": f.Site.SPDsAC, "all DC": f.Site.SPDsDC, "at the origin": f.Site.SPDsACAtOrigin} {
		facttest.Wants(t, what, n, "/spds")
	}
	doc = site()
	delete(facttest.At(doc, "spds", 2), "circuit")
	f = derive(t, doc)
	facttest.Is(t, "a device without a circuit is on that of its terminal", f.SPDs[2].Circuit, "ac")
	facttest.Is(t, "a device without a circuit", f.Site.SPDsACAtOrigin, 1)
	facttest.At(doc, "spds", 2)["connected_at"] = "EB"
	delete(facttest.At(doc, "spds", 2), "datasheet")
	f = derive(t, doc)
	facttest.Wants(t, "a device on nothing", f.Routes[0].DcSPDs, "/spds/2/circuit")
	doc = site()
	delete(facttest.At(doc, "ac", "boards", 0), "role")
	facttest.Wants(t, "a board without a role", derive(t, doc).Site.SPDsACAtOrigin, "/ac/boards/0/role")
	facttest.Is(t, "a device of Type 2 is none of Type 1, wherever it hangs", derive(t, doc).Site.SPDsType1AtOrigin, 0)
	doc = site()
	doc["cables"] = append(doc["cables"].(list)[:1:1], doc["cables"].(list)[2:]...)
	f = derive(t, doc)
	facttest.Wants(t, "without R2", f.Routes[0].DcRouteM, "/cables")
	facttest.Wants(t, "without R2", f.SPDs[1].VocMaxV, "/cables")
	doc = site()
	delete(facttest.At(doc, "cables", 1, "segments", 0), "length_m")
	f = derive(t, doc)
	for what, n := range map[string]working.Number{"route": f.Routes[0].DcRouteM, "to the inverter": f.SPDs[1].DistanceM} {
		facttest.Wants(t, what, n, "/cables/1/segments/0/length_m")
	}
}

// A device inside an inverter hangs on a terminal of it, and stands where it does.
func TestBuiltIntoInverter(t *testing.T) {
	doc := site()
	facttest.At(doc, "inverters", 0)["place"] = "garage"
	facttest.At(doc, "spds", 0)["built_into"] = "INV1"
	s := derive(t, doc).SPDs[0]
	facttest.Is(t, "hangs on", s.ConnectedTo, "INV1")
	facttest.Is(t, "stands where the inverter does", s.Place, "garage")
	facttest.At(doc, "spds", 0)["place"] = "roof_space"
	facttest.At(doc, "spds", 0)["connected_at"] = "Q1.1.in"
	s = derive(t, doc).SPDs[0]
	facttest.Is(t, "hangs elsewhere", s.ConnectedTo, "Q1")
	facttest.Is(t, "stands elsewhere", s.Place, "roof_space")
	facttest.Is(t, "the inverter", s.InverterPlace, "garage")
	if derive(t, doc).SPDs[1].BuiltInStated.Value() {
		t.Error("a device that says nothing of an inverter is said to be inside one")
	}
}
