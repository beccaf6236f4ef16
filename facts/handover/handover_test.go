package handover_test

import (
	"slices"
	"strings"
	"testing"

	"sunclause/facts/book"
	"sunclause/facts/facttest"
	"sunclause/facts/handover"
	"sunclause/facts/working"
)

type object = map[string]any

type list = []any

func figures() book.Book {
	b := facttest.Book(object{"voltage_method": "coefficient", "generation_nominal_voltage_v": 230.0, "other_premises_near_m": 500.0, "other_premises_within_days": 28.0})
	b.Tables["bank_holidays"] = &book.Table{Name: "bank_holidays", Rows: []map[string]any{{"date": "2026-04-03"}, {"date": "2026-04-06"}, {"date": "2026-05-04"}}}
	b.Tables["grid_settings"] = &book.Table{Name: "grid_settings", Rows: []map[string]any{
		{"setting": "over_voltage_1_v", "set": 262.2, "below": 3.45, "above": 3.45}, {"setting": "rocof_s", "set": 0.5, "below": 0.0, "above": 0.5},
		{"setting": "no_such_setting", "set": 1.0, "below": 0.0, "above": 0.0}}}
	return b
}

// premises are a finished installation without generators, on so many phases.
func premises(phases int) object {
	return object{
		"project":    object{"reference": "test", "stage": "as_built", "country": "GB"},
		"datasheets": object{"inverters": object{}, "batteries": object{}},
		"inverters":  list{},
		"ac":         object{"supply": object{"id": "SUP", "phases": phases}, "existing_generation": list{}},
		"storage":    object{"batteries": list{}},
		"handover":   object{"notifications": list{}},
	}
}

// inverter adds one of so many watts and phases.
func inverter(doc object, id string, watts, phases int) object {
	doc["datasheets"].(object)["inverters"].(object)[id] = object{"dc_voltage_max_v": 600, "mppts": list{object{}}, "ac_power_rated_w": watts, "phases": phases, "grid_type_test": "G98 issue 1"}
	inv := object{"id": id, "datasheet": id}
	doc["inverters"] = append(doc["inverters"].(list), inv)
	return inv
}

func battery(doc object, id string, watts int) {
	doc["datasheets"].(object)["batteries"].(object)[id] = object{"energy_kwh": 5, "coupling": "ac", "ac_power_rated_w": watts, "phases": 1, "grid_type_test": "G98"}
	store := doc["storage"].(object)
	store["batteries"] = append(store["batteries"].(list), object{"id": id, "datasheet": id, "units": 1})
}

func found(doc object, id string, watts int, phase string) object {
	g := object{"id": id, "ac_power_rated_w": watts, "phases": 1, "type_tested": true, "notified": true}
	if phase != "" {
		g["phase"] = phase
	}
	ac := doc["ac"].(object)
	ac["existing_generation"] = append(ac["existing_generation"].(list), g)
	return g
}

func derive(t testing.TB, doc object) handover.Facts {
	t.Helper()
	b := figures()
	r := facttest.Derive(t, doc, b)
	return handover.Derive(r.Installation, r.Circuit, r.Strings, b)
}

// is holds a number against a quotient, which is not rounded as facts are.
func is(t *testing.T, what string, got working.Number, want float64) {
	t.Helper()
	facttest.Near(t, what, got, want, 1e-9)
}

// The cases of a distributor's connection procedure for G98: rated outputs of
// all generators and storage together over 230 V, phase by phase, with no
// allowance for their not running together.
func TestGenerationOfAPhase(t *testing.T) {
	for _, c := range []struct {
		says   string
		phases int
		build  func(object)
		want   float64
	}{
		{"3.6 kW on one phase", 1, func(d object) { inverter(d, "A", 3600, 1) }, 3600 / 230.0},
		{"3.68 kW: 16 A exactly", 1, func(d object) { inverter(d, "A", 3680, 1) }, 16},
		{"3.68 kW and a battery of 3.6 kW", 1, func(d object) { inverter(d, "A", 3680, 1); battery(d, "B", 3600) }, 7280 / 230.0},
		{"10 kW on three phases", 3, func(d object) { inverter(d, "A", 10000, 3) }, 10000 / 690.0},
		{"11.04 kW: 16 A exactly", 3, func(d object) { inverter(d, "A", 11040, 3) }, 16},
		{"5 kW hybrid", 1, func(d object) { inverter(d, "A", 5000, 1) }, 5000 / 230.0},
		{"2 kW beside 2 kW found there", 1, func(d object) { inverter(d, "A", 2000, 1); found(d, "X", 2000, "") }, 4000 / 230.0},
		{"single phases of a three-phase supply by themselves", 3, func(d object) { inverter(d, "A", 6900, 3); found(d, "X", 2300, "L1"); found(d, "Y", 1150, "L2") }, 20},
		{"none", 1, func(object) {}, 0},
	} {
		doc := premises(c.phases)
		c.build(doc)
		f := derive(t, doc).Connection
		is(t, c.says, f.PhaseA, c.want)
		is(t, c.says+": without a type test", f.Untyped, 0)
	}
}

// Only what a phase has beyond another unbalances the network.
func TestUnbalance(t *testing.T) {
	for _, c := range []struct {
		says   string
		phases int
		build  func(object)
		want   float64
	}{
		{"three-phase", 3, func(d object) { inverter(d, "A", 10000, 3) }, 0},
		{"one generator of one phase: 16 A exactly", 3, func(d object) { found(d, "X", 3680, "L2") }, 16},
		{"a phase each", 3, func(d object) { found(d, "X", 4600, "L1"); found(d, "Y", 2300, "L2"); found(d, "Z", 2300, "L3") }, 10},
		{"beside a three-phase one", 3, func(d object) { inverter(d, "A", 6900, 3); found(d, "X", 2300, "L1") }, 10},
		{"a supply of one phase", 1, func(d object) { inverter(d, "A", 5000, 1) }, 0},
	} {
		doc := premises(c.phases)
		c.build(doc)
		is(t, c.says, derive(t, doc).Connection.Unbalance, c.want)
	}
	doc := premises(3)
	delete(facttest.At(doc, "ac", "supply"), "phases")
	facttest.Wants(t, "phases not stated", derive(t, doc).Connection.Unbalance, "/ac/supply/phases")
}

func TestGenerationNotTold(t *testing.T) {
	doc := premises(3)
	inverter(doc, "A", 2000, 1)
	facttest.Wants(t, "a single phase of three that is not stated", derive(t, doc).Connection.PhaseA, "/ac/supply/phases", "/inverters/0/id")
	doc = premises(1)
	delete(doc["ac"].(object), "existing_generation")
	facttest.Wants(t, "what is there already not stated", derive(t, doc).Connection.PhaseA, "/ac/existing_generation")
	delete(doc["storage"].(object), "batteries")
	facttest.Wants(t, "batteries not stated", derive(t, doc).Connection.GenerationW, "/ac/existing_generation", "/storage/batteries")
	doc = premises(1)
	found(doc, "X", 2000, "")["type_tested"] = false
	g := found(doc, "Y", 2000, "")
	g["notified"] = false
	f := derive(t, doc).Connection
	is(t, "not type tested", f.Untyped, 1)
	is(t, "not known to the network operator", f.ExistingUnnotified, 1)
	is(t, "power of all", f.GenerationW, 4000)
	is(t, "greatest of them", f.UnitPhaseA, 2000/230.0)
}

func notice(id, to, route string, dates object) object {
	n := object{"id": id, "to": to, "route": route}
	for k, v := range dates {
		n[k] = v
	}
	return n
}

// TestWaysToBuildingControl holds each way to building control against its own
// date: a building notice before the work, a scheme's notice after it.
func TestWaysToBuildingControl(t *testing.T) {
	doc := premises(1)
	h := doc["handover"].(object)
	h["start_of_work"], h["end_of_work"] = "2026-02-23", "2026-03-02"
	h["notifications"] = list{
		notice("N1", "building_control", "building_notice", object{"notified": "2026-02-20"}),
		notice("N2", "building_control", "competent_person_scheme", object{"notified": "2026-04-11"}),
	}
	f := derive(t, doc).Connection
	is(t, "building notice before the work", f.BuildingBefore, 3)
	is(t, "notice of the scheme after it", f.BuildingDays, 40)
	h["notifications"] = h["notifications"].(list)[:1]
	facttest.Wants(t, "no notice of a scheme", derive(t, doc).Connection.BuildingDays, "/handover/notifications")
}

// Commissioned on Monday 2 March 2026, 28 days end on 30 March and 30 on 1
// April; ten working days end on 16 March. From Wednesday 1 April, over Easter,
// they end on 17 April.
func TestDates(t *testing.T) {
	doc := premises(1)
	doc["commissioning"] = object{"date": "2026-03-02"}
	h := doc["handover"].(object)
	h["start_of_work"], h["end_of_work"] = "2026-02-23", "2026-03-02"
	h["notifications"] = list{
		notice("N1", "network_operator", "apply_before", object{"applied": "2026-01-05", "approved": "2026-02-20", "answer": "accepted", "approved_power_w": 5000, "approval_until": "2026-03-01"}),
		notice("N2", "network_operator", "information_only", object{"commissioned": "2026-03-02", "notified": "2026-03-30"}),
		notice("N3", "building_control", "competent_person_scheme", object{"commissioned": "2026-03-01", "notified": "2026-04-01"}),
		notice("N4", "certification_scheme", "register_entry", object{"notified": "2026-03-16"}),
	}
	facts := derive(t, doc)
	f := facts.Connection
	is(t, "notice to the network operator", f.NoticeDays, 28)
	is(t, "notice to building control", f.BuildingDays, 30)
	is(t, "register", f.RegisterDays, 10)
	is(t, "application before the work", f.ApplicationDays, 49)
	is(t, "approval before the work", f.ApprovalDays, 3)
	is(t, "approval left", f.ApprovalLeft, -1)
	is(t, "power approved", f.ApprovedW, 5000)
	is(t, "day of service as notified to building control", facts.Notices[2].ServiceOffDays, 1)
	if !slices.Equal(f.Routes.Values(), []string{"apply_before", "information_only"}) {
		t.Errorf("routes %v", f.Routes.Values())
	}
	if f.Route.Value() != "apply_before" {
		t.Errorf("main route %q", f.Route.Value())
	}
	doc["commissioning"] = object{"date": "2026-04-01"}
	h["notifications"].(list)[3].(object)["notified"] = "2026-04-17"
	is(t, "register over Easter", derive(t, doc).Connection.RegisterDays, 10)
	h["notifications"].(list)[3].(object)["notified"] = "2027-01-04"
	facttest.Wants(t, "a year without holidays in the table", derive(t, doc).Connection.RegisterDays, "/commissioning/date", "/handover/notifications/3/notified")
	h["notifications"].(list)[0].(object)["answer"] = "refused"
	facttest.Wants(t, "an approval refused", derive(t, doc).Connection.ApprovalDays, "/handover/notifications")
	delete(h["notifications"].(list)[1].(object), "route")
	facttest.Wants(t, "a route not stated", derive(t, doc).Connection.Routes, "/handover/notifications/1/route")
}

// An inverter that is called as the protection outside the inverters keeps settings of
// its own: each setting has an id of its own.
func TestSettingsOfInverterCalledInterface(t *testing.T) {
	for _, id := range []string{"interface", "ac", "interface_protection"} {
		doc := premises(1)
		inverter(doc, id, 3600, 1)["settings"] = object{"rocof_s": 0.2}
		doc["ac"].(object)["interface_protection"] = object{"fitted": true, "settings": object{"rocof_s": 0.5}}
		seen := map[string]float64{}
		for _, s := range derive(t, doc).Settings {
			if _, twice := seen[s.ID]; twice {
				t.Errorf("%s: two settings are called %s", id, s.ID)
			}
			seen[s.ID] = s.Value.Value()
		}
		if seen[id+".rocof_s"] != 0.2 || seen["ac.interface_protection.rocof_s"] != 0.5 {
			t.Errorf("%s: settings %v", id, seen)
		}
	}
}

func TestSettings(t *testing.T) {
	doc := premises(1)
	inverter(doc, "INV1", 3600, 1)["settings"] = object{"over_voltage_1_v": 265.7}
	doc["ac"].(object)["interface_protection"] = object{"fitted": true, "settings": object{"rocof_s": 0.5}}
	f := derive(t, doc)
	if len(f.Settings) != 4 {
		t.Fatalf("%d settings", len(f.Settings))
	}
	is(t, "set to", f.Settings[0].Value, 265.7)
	is(t, "at least", f.Settings[0].Least, 258.75)
	is(t, "at most", f.Settings[0].Most, 265.65)
	facttest.Wants(t, "a setting not stated", f.Settings[1].Value, "/inverters/0/settings/rocof_s")
	is(t, "outside the inverter", f.Settings[3].Value, 0.5)
	if f.Settings[3].ID != "ac.interface_protection.rocof_s" || f.Interfaces[0].TypeTestStandard.Value() != "G98" {
		t.Errorf("%s, type test %q", f.Settings[3].ID, f.Interfaces[0].TypeTestStandard.Value())
	}
}

// A late notice is late, whatever was sent before it; an application is no notice.
func TestNoticeThatWasDue(t *testing.T) {
	doc := premises(1)
	doc["commissioning"] = object{"date": "2026-03-02"}
	h := doc["handover"].(object)
	application := notice("N1", "network_operator", "apply_before", object{"applied": "2026-01-05", "commissioned": "2026-03-02", "notified": "2026-03-03"})
	late := notice("N2", "network_operator", "information_only", object{"commissioned": "2026-03-02", "notified": "2026-05-01"})
	h["notifications"] = list{application}
	is(t, "nothing but the application", derive(t, doc).Connection.NoticeDays, 1)
	h["notifications"] = list{application, late}
	is(t, "the notice", derive(t, doc).Connection.NoticeDays, 60)
	h["notifications"] = list{late, notice("N3", "network_operator", "connect_and_notify", object{"commissioned": "2026-03-02", "notified": "2026-03-03"})}
	is(t, "two notices", derive(t, doc).Connection.NoticeDays, 60)
	delete(late, "notified")
	facttest.Wants(t, "one without a date", derive(t, doc).Connection.NoticeDays, "/handover/notifications/0/notified")
}

// Further premises count within 500 m and 28 days of going into service, either way.
func TestOtherPremises(t *testing.T) {
	for _, c := range []struct {
		says, answer, date string
		distance           float64
		want, missing      string
	}{
		{"no, and nothing speaks against it", "no", "", -1, "no", ""},
		{"yes alone", "yes", "", -1, "", "/handover/connection/other_premises_date /handover/connection/other_premises_distance_m /handover/connection/other_premises_nearby"},
		{"yes at the limits", "yes", "2026-03-30", 500, "yes", ""},
		{"yes, before", "yes", "2026-02-02", 10, "yes", ""},
		{"yes, a day too late", "yes", "2026-03-31", 10, "", "/handover/connection/other_premises_nearby"},
		{"no, and they are", "no", "2026-03-30", 500, "", "/handover/connection/other_premises_nearby"},
		{"no, they are too far", "no", "", 501, "no", ""},
		{"no, they are near, and it is not stated when", "no", "", 400, "", "/handover/connection/other_premises_date /handover/connection/other_premises_nearby"},
	} {
		doc := premises(1)
		doc["commissioning"] = object{"date": "2026-03-02"}
		near := object{"other_premises_nearby": c.answer == "yes"}
		if c.date != "" {
			near["other_premises_date"] = c.date
		}
		if c.distance >= 0 {
			near["other_premises_distance_m"] = c.distance
		}
		doc["handover"].(object)["connection"] = near
		got := derive(t, doc).Connection.OtherAnswer
		if c.missing != "" {
			facttest.Wants(t, c.says, got, strings.Fields(c.missing)...)
		} else {
			facttest.Is(t, c.says, got, c.want)
		}
	}
}
