package commissioning_test

import (
	"slices"
	"testing"

	"pgregory.net/rapid"

	"sunclause/facts/commissioning"
	"sunclause/facts/facttest"
	"sunclause/facts/working"
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

// Tests are in the order of their dates and times, in whatever order they are listed.
func TestStepsInTime(t *testing.T) {
	step := func(test, date, time string) object {
		s := object{"id": test, "test": test, "passed": true}
		for k, v := range map[string]string{"date": date, "time": time} {
			if v != "" {
				s[k] = v
			}
		}
		return s
	}
	for _, c := range []struct {
		says    string
		steps   list
		out     float64
		missing string
	}{
		{"listed in order, nothing timed", list{step("polarity", "", ""), step("current", "", "")}, 0, ""},
		{"listed otherwise", list{step("current", "", ""), step("polarity", "", "")}, 1, ""},
		{"on two days", list{step("current", "2026-05-05", ""), step("polarity", "2026-05-04", "")}, 0, ""},
		{"by the time", list{step("current", "2026-05-05", "14:10"), step("polarity", "2026-05-05", "09:10")}, 0, ""},
		{"listed in order, and timed otherwise", list{step("polarity", "2026-05-05", "14:10"), step("current", "2026-05-05", "12:10")}, 1, ""},
		{"one not timed", list{step("polarity", "2026-05-05", "14:10"), step("current", "2026-05-05", "")}, 0, "/commissioning/steps/1/time"},
		{"one without a date", list{step("polarity", "", ""), step("current", "2026-05-05", "")}, 0, "/commissioning/steps/0/date"},
		{"times without dates", list{step("polarity", "", "14:10")}, 0, "/commissioning/steps/0/date"},
	} {
		doc := site(module(), 10)
		record(doc)["steps"] = c.steps
		r := derive(t, doc, figures(0.04)).Record
		if c.missing != "" {
			facttest.Wants(t, c.says, r.OutOfOrder, c.missing)
			facttest.Wants(t, c.says, r.BeforePolarity, c.missing)
			continue
		}
		facttest.Is(t, c.says, r.OutOfOrder, c.out)
		facttest.Is(t, c.says, r.BeforePolarity, c.out)
	}
}

func TestCurrentsBeforePolarity(t *testing.T) {
	doc := site(module(), 10, 10)
	polarity := object{"id": "ST1", "test": "polarity", "date": "2026-05-05", "time": "12:10"}
	first, second := object{"id": "A", "string": "S1", "isc_a": 9, "date": "2026-05-05", "time": "12:20"}, object{"id": "B", "string": "S2", "voc_v": 400, "date": "2026-05-05", "time": "11:00"}
	record(doc)["steps"], record(doc)["strings"] = list{polarity}, list{first, second}
	early := func() working.Number { return derive(t, doc, figures(0.04)).Record.CurrentsEarly }
	facttest.Is(t, "a voltage may be read before", early(), 0)
	second["operating_current_a"] = 8
	facttest.Is(t, "a current may not", early(), 1)
	delete(second, "time")
	facttest.Wants(t, "when is not stated", early(), "/commissioning/strings/1/time")
	first["date"] = "2026-05-04"
	facttest.Is(t, "another was read the day before", early(), 1)
	delete(first, "date")
	facttest.Wants(t, "on which day is not stated", early(), "/commissioning/strings/0/date", "/commissioning/strings/1/time")
}

// An instrument is held to the days of the readings taken with it, which may be any of
// those that name none.
func TestInstrumentInUse(t *testing.T) {
	doc := site(module(), 10)
	inst := object{"id": "I1", "kind": "torque_wrench", "calibrated": "2026-05-02", "calibration_due": "2026-05-04"}
	record(doc)["instruments"], record(doc)["tests_complete"] = list{inst, object{"id": "I2", "kind": "other"}}, "2026-05-05"
	torque := func(id, by, date string) object {
		return object{"id": id, "part": "S1", "instrument": by, "date": date}
	}
	record(doc)["torques"] = list{torque("A", "I1", "2026-05-03"), torque("B", "I1", "2026-05-04"), torque("C", "I2", "2026-05-01")}
	used := func() commissioning.Instrument { return derive(t, doc, figures(0.04)).Instruments[0] }
	facttest.Is(t, "since", used().DaysSinceCalibrated, 1)
	facttest.Is(t, "left", used().DaysCalibrationLeft, 0)
	delete(record(doc)["torques"].(list)[2].(object), "instrument")
	facttest.Is(t, "with one that may have been it", used().DaysSinceCalibrated, -1)
	record(doc)["strings"] = list{object{"id": "R", "string": "S1", "instrument": "I2", "temperature_instrument": "I1", "date": "2026-05-07"}}
	facttest.Is(t, "its temperature was read with it", used().DaysCalibrationLeft, -3)
	delete(record(doc)["torques"].(list)[1].(object), "date")
	facttest.Wants(t, "a reading without a date", used().DaysCalibrationLeft, "/commissioning/torques/1/date")
}
