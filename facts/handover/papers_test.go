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

func TestPapersTwice(t *testing.T) {
	doc := premises(1)
	h := doc["handover"].(object)
	paper := func(id, kind, part, revision string) object {
		d := object{"id": id, "kind": kind, "revision": revision, "given": "2026-03-02"}
		if part != "" {
			d["part"] = part
		}
		return d
	}
	h["documents"] = list{paper("D1", "user_manual", "", "A"), paper("D2", "user_manual", "SUP", "A"), paper("D3", "user_manual", "", "B"), paper("D4", "other", "", "A"), paper("D5", "other", "", "A")}
	h["warranties"] = list{object{"id": "W1", "kind": "inverter"}, object{"id": "W2", "kind": "mounting"}}
	is(t, "for another part, or another revision", derive(t, doc).Papers.PapersTwice, 0)
	is(t, "warranties", derive(t, doc).Papers.WarrantyTwice, 0)
	h["documents"] = append(h["documents"].(list), paper("D6", "user_manual", "", "A"))
	h["warranties"] = append(h["warranties"].(list), object{"id": "W3", "kind": "inverter"})
	is(t, "the same", derive(t, doc).Papers.PapersTwice, 1)
	is(t, "two warranties", derive(t, doc).Papers.WarrantyTwice, 1)
	h["documents"].(list)[0].(object)["given_to"] = "authority"
	h["documents"] = h["documents"].(list)[:1]
	facttest.Lists(t, "what only an authority has", derive(t, doc).Papers.PapersGiven)
	delete(h, "documents")
	delete(h, "warranties")
	facttest.Wants(t, "no papers", derive(t, doc).Papers.PapersTwice, "/handover/documents")
	facttest.Wants(t, "no warranties", derive(t, doc).Papers.WarrantyTwice, "/handover/warranties")
}

func TestEstimateBeforeContract(t *testing.T) {
	for _, c := range []struct {
		says, date, want, missing string
		answer                    any
	}{
		{"yes, and so by the dates", "2026-02-12", "yes", "", true},
		{"on the day", "2026-02-14", "yes", "", true},
		{"no, but by the dates", "2026-02-12", "", "/handover/performance_estimate/given_before_contract", false},
		{"by the dates alone", "2026-02-15", "no", "", nil},
		{"by the answer alone", "", "no", "", false},
	} {
		doc := premises(1)
		h, estimate := doc["handover"].(object), object{}
		h["contract_date"], h["performance_estimate"] = "2026-02-14", estimate
		if c.date != "" {
			estimate["date"] = c.date
		}
		if c.answer != nil {
			estimate["given_before_contract"] = c.answer
		}
		got := derive(t, doc).Papers.EstimateAnswer
		if c.missing != "" {
			facttest.Wants(t, c.says, got, c.missing)
		} else {
			facttest.Is(t, c.says, got, c.want)
		}
	}
}

func TestApprovedExport(t *testing.T) {
	doc := premises(1)
	doc["handover"].(object)["notifications"] = list{
		notice("N1", "network_operator", "apply_before", object{"answer": "accepted", "approved_export_w": 3680}),
		notice("N2", "network_operator", "apply_before", object{"answer": "refused", "approved_export_w": 9000}),
	}
	is(t, "export approved", derive(t, doc).Connection.ApprovedExportW, 3680)
	facttest.Wants(t, "power approved", derive(t, doc).Connection.ApprovedW, "/handover/notifications")
}
