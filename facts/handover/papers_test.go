package handover_test

import (
	"slices"
	"testing"

	"sunclause/facts/facttest"
)

// house is a finished installation of two strings and fourteen modules, and the
// record of what was counted.
func house() object {
	doc := premises(1)
	inverter(doc, "INV1", 5000, 1)["serial"] = "X-1"
	doc["datasheets"].(object)["modules"] = object{"M": object{"technology": "mono_si", "pmax_w": 440, "voc_v": 38.8, "isc_a": 14.2, "vmp_v": 32.6, "imp_a": 13.5}}
	doc["strings"] = list{object{"id": "S1", "module": "M", "modules_in_series": 8}, object{"id": "S2", "module": "M", "modules_in_series": 6}}
	h := doc["handover"].(object)
	h["as_built"] = object{"modules": 14, "serials": list{object{"part": "INV1", "serial": "X-1"}, object{"part": "S1", "serial": "X-2"}}}
	h["documents"] = list{object{"id": "D1", "kind": "wiring_diagram", "given": "2026-05-07"}, object{"id": "D2", "kind": "structural_assessment", "date": "2026-04-20"}}
	h["start_of_work"] = "2026-04-27"
	h["decisions"] = list{object{"id": "DE1", "decision": "surge_protection_declined", "in_writing": false}}
	return doc
}

func TestPapers(t *testing.T) {
	doc := house()
	h := doc["handover"].(object)
	h["performance_estimate"] = object{"energy_per_year_kwh": 5421, "yield_kwh_per_kw": 880}
	h["warranties"] = list{object{"id": "W1", "kind": "inverter", "start": "2026-05-06", "period_yr": 10},
		object{"id": "W2", "kind": "workmanship", "start": "2026-05-06", "insurance_backed": true}}
	p := derive(t, doc).Papers
	if !slices.Equal(p.PaperKinds.Values(), []string{"structural_assessment", "wiring_diagram"}) || !slices.Equal(p.PapersGiven.Values(), []string{"wiring_diagram"}) {
		t.Errorf("papers %v, given %v", p.PaperKinds.Values(), p.PapersGiven.Values())
	}
	if !slices.Equal(p.Warranties.Values(), []string{"inverter"}) || !p.Insured.Value() {
		t.Errorf("warranties %v, insured %v: one without a period promises nothing", p.Warranties.Values(), p.Insured.Value())
	}
	is(t, "days from the structure's check to the work", p.StructureDays, 7)
	is(t, "modules in strings", p.ModulesStated, 14)
	is(t, "decisions not in writing", p.Unwritten, 1)
	// 880 kWh/kW times 6.16 kW is 5420.8 kWh.
	if off := p.EstimateOffPct.Value(); off < 0.0036 || off > 0.0037 {
		t.Errorf("estimate off by %v %%", off)
	}
	delete(h, "documents")
	facttest.Wants(t, "papers not stated", derive(t, doc).Papers.PapersGiven, "/handover/documents")
	facttest.Wants(t, "date of the structure's check", derive(t, doc).Papers.StructureDays, "/handover/documents")
}

func TestSerials(t *testing.T) {
	doc := house()
	record := doc["handover"].(object)["as_built"].(object)
	is(t, "as in the document", derive(t, doc).Papers.SerialsUnlike, 0)
	record["serials"] = list{object{"part": "INV1", "serial": "X-3"}, object{"part": "S1", "serial": "X-3"}}
	p := derive(t, doc).Papers
	is(t, "another", p.SerialsUnlike, 1)
	is(t, "at two parts", p.SerialsTwice, 1)
	facttest.Wants(t, "modules of a roof not stated", p.ModuleSerials, "/roof/planes")
	record["serials"] = list{}
	is(t, "not recorded", derive(t, doc).Papers.SerialsUnlike, 1)
	delete(record, "serials")
	facttest.Wants(t, "no record", derive(t, doc).Papers.SerialsUnlike, "/handover/as_built/serials")
	record["serials"] = list{}
	delete(doc["inverters"].(list)[0].(object), "serial")
	facttest.Wants(t, "none in the document", derive(t, doc).Papers.SerialsUnlike, "/inverters/0/serial")
}
