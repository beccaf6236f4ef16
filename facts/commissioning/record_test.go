package commissioning_test

import (
	"slices"
	"testing"

	"pgregory.net/rapid"

	"sunclause/facts/commissioning"
	"sunclause/facts/facttest"
)

var inOrder = []string{"inspection", "ac_tests", "continuity", "polarity", "combiner", "open_circuit_voltage", "current", "functional"}

func steps(t testing.TB, tests ...string) commissioning.Record {
	t.Helper()
	doc := site(module(), 10)
	all := list{}
	for _, test := range tests {
		all = append(all, object{"id": "ST" + string(rune('A'+len(all))), "test": test, "passed": true})
	}
	record(doc)["steps"] = all
	return derive(t, doc, figures(0.04)).Record
}

// The order of the tests: IEC 62446-1 5.3.3 (from memory). Insulation is free.
func TestOrder(t *testing.T) {
	for _, c := range []struct {
		tests               []string
		late, before        float64
		polarityNeverTested bool
	}{
		{tests: inOrder},
		{tests: []string{"insulation", "inspection", "polarity", "current"}},
		{tests: []string{"polarity", "insulation", "continuity", "current"}, late: 1},
		{tests: []string{"current", "polarity", "functional", "current"}, late: 1, before: 1},
		{tests: []string{"functional", "combiner", "polarity"}, late: 2, before: 2},
		{tests: []string{"inspection", "current"}, polarityNeverTested: true},
	} {
		r := steps(t, c.tests...)
		facttest.Is(t, "out of order", r.OutOfOrder, c.late)
		if c.polarityNeverTested {
			facttest.Wants(t, "before polarity", r.BeforePolarity, "/commissioning/steps")
		} else {
			facttest.Is(t, "before polarity", r.BeforePolarity, c.before)
		}
	}
}

// The tests are in order just when each stands where the standard has it.
func TestOrderHolds(t *testing.T) {
	rapid.Check(t, func(r *rapid.T) {
		tests := rapid.Permutation(inOrder).Draw(r, "tests")
		late := steps(t, tests...).OutOfOrder.Value()
		if slices.Equal(tests, inOrder) != (late == 0) {
			r.Fatalf("%v: %v out of order", tests, late)
		}
	})
}

func TestFailedTests(t *testing.T) {
	doc := site(module(), 10)
	step := func(id, test, part string, passed bool) object {
		s := object{"id": id, "test": test, "passed": passed}
		if part != "" {
			s["part"] = part
		}
		return s
	}
	failed := step("A", "insulation", "S1", false)
	for _, c := range []struct {
		says string
		next object
		want float64
	}{
		{"nothing done again", step("B", "polarity", "", true), 1},
		{"the same part passed", step("B", "insulation", "S1", true), 0},
		{"the whole passed", step("B", "insulation", "", true), 0},
		{"it failed again", step("B", "insulation", "S1", false), 2},
	} {
		record(doc)["steps"] = list{failed, c.next}
		facttest.Is(t, c.says, derive(t, doc, figures(0.04)).Record.FailedOpen, c.want)
	}
	delete(failed, "passed")
	facttest.Wants(t, "not told whether it passed", derive(t, doc, figures(0.04)).Record.FailedOpen, "/commissioning/steps/0/passed")
	facttest.Wants(t, "no steps", derive(t, site(module(), 10), figures(0.04)).Record.OutOfOrder, "/commissioning/steps")
}

func TestInspection(t *testing.T) {
	doc := site(module(), 10)
	record(doc)["inspections"] = list{object{"id": "IN1", "point": "labels", "result": "unsatisfactory"}, object{"id": "IN2", "point": "rcd_type", "result": "not_inspected"}}
	r := derive(t, doc, figures(0.04)).Record
	facttest.Is(t, "points lacking", r.PointsLacking, 1)
	facttest.Is(t, "points failed", r.PointsFailed, 1)
	if !slices.Equal(r.PointsLackingNames.Values(), []string{"rcd_type"}) {
		t.Errorf("lacking %v", r.PointsLackingNames.Values())
	}
	facttest.Wants(t, "no inspection", derive(t, site(module(), 10), figures(0.04)).Record.PointsLacking, "/commissioning/inspections")
}

func TestInstrumentDates(t *testing.T) {
	doc := site(module(), 10)
	inst := object{"id": "I1", "kind": "pv_tester", "calibrated": "2025-09-15", "calibration_due": "2026-05-04", "serial": "X"}
	record(doc)["instruments"], record(doc)["tests_complete"], record(doc)["date"] = list{inst}, "2026-05-05", "2026-05-06"
	f := derive(t, doc, figures(0.04))
	facttest.Is(t, "days left", f.Instruments[0].DaysCalibrationLeft, -1)
	facttest.Is(t, "days since", f.Instruments[0].DaysSinceCalibrated, 232)
	facttest.Is(t, "days to service", f.Record.DaysToService, 1)
	inst["calibration_due"] = "2026-02-30"
	facttest.Wants(t, "a day that the calendar lacks", derive(t, doc, figures(0.04)).Instruments[0].DaysCalibrationLeft, "/commissioning/instruments/0/calibration_due")
}

// 12 m of 10 mm² at 1.83 Ω/km, IEC 60228 class 2: 0.02196 Ω; 25 m of a run with
// a protective conductor of 7.41 Ω/km within its cable: 0.18525 Ω.
func TestContinuity(t *testing.T) {
	doc := site(module(), 10)
	doc["earthing"] = object{"main_bonds": list{object{"id": "MB1", "bonds": "water", "conductor": object{"csa_mm2": 10, "length_m": 12}}},
		"frames": list{object{"id": "FR1", "connection": "functional_earth"}, object{"id": "FR2", "connection": "none"}}}
	doc["datasheets"].(object)["cables"] = object{"te": object{"csa_mm2": 6, "kind": "flat_twin_and_earth", "cpc_csa_mm2": 2.5, "resistance_20c_ohm_per_km": 3.08, "cpc_resistance_20c_ohm_per_km": 7.41}}
	doc["cables"] = list{object{"id": "R1", "from": "S1", "to": "FR1", "service": "pv_string", "cable": "te", "segments": list{object{"length_m": 25}}}}
	record(doc)["continuity"] = list{object{"id": "CO1", "part": "MB1", "resistance_ohm": 0.03}, object{"id": "CO2", "run": "R1", "resistance_ohm": 0.2}, object{"id": "CO3", "part": "FR2", "resistance_ohm": 0.2}}
	f := derive(t, doc, figures(0.04))
	facttest.Near(t, "bond", f.Continuity[0].ExpectedOhm, 0.02196, 1e-9)
	facttest.Near(t, "bond over it", f.Continuity[0].ExcessOhm, 0.00804, 1e-9)
	facttest.Near(t, "protective conductor in the cable", f.Continuity[1].ExpectedOhm, 0.18525, 1e-9)
	facttest.Wants(t, "neither run nor bond", f.Continuity[2].ExcessOhm, "/commissioning/continuity/2/run")
	facttest.Is(t, "frames unread", f.Record.FramesUnread, 1)
	facttest.Is(t, "bonds unread", f.Record.BondsUnread, 0)
	doc["earthing"].(object)["main_bonds"].(list)[0].(object)["conductor"].(object)["csa_mm2"] = 8
	facttest.Wants(t, "a size that the table lacks", derive(t, doc, figures(0.04)).Continuity[0].ExpectedOhm, "/earthing/main_bonds/0/conductor/csa_mm2")
}
