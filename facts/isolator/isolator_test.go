package isolator_test

import (
	"fmt"
	"testing"

	"sunclause/facts/book"
	"sunclause/facts/facttest"
	"sunclause/facts/isolator"
	"sunclause/facts/working"
)

type object = map[string]any

type list = []any

func row(category string, poles int, ue, ie float64) object {
	return object{"utilization_category": category, "poles_in_series": poles, "ue_v": ue, "ie_a": ie}
}

// site is two strings of ten modules on one isolator of two ways, each way to a
// tracking input of its own. At −15 °C a string has 544.5 V by its coefficient
// and 569.25 V by the factor 1.15, and its design current is 17.375 A.
func site() object {
	return object{
		"project": object{"reference": "test", "stage": "design", "country": "GB"},
		"site":    object{"temp_min_c": -15, "temp_max_c": 35},
		"datasheets": object{
			"modules":   object{"M": facttest.Module()},
			"inverters": object{"I": object{"dc_voltage_max_v": 1000, "mppts": list{object{}, object{}}, "ac_power_rated_w": 5000, "phases": 1}},
			"switch_disconnectors": object{"D": object{"poles": 4, "ratings": list{
				row("DC-PV1", 1, 600, 32), row("DC-PV2", 1, 400, 30), row("DC-PV2", 1, 600, 25),
				row("DC-PV2", 1, 800, 12), row("DC-PV2", 2, 1000, 40), row("DC-21B", 2, 500, 9)}}},
		},
		"strings": list{
			object{"id": "S1", "module": "M", "modules_in_series": 10},
			object{"id": "S2", "module": "M", "modules_in_series": 10},
		},
		"inverters": list{object{"id": "INV1", "datasheet": "I"}},
		"isolators": list{object{"id": "ISO1", "circuit": "pv_dc", "datasheet": "D", "utilization_category": "DC-PV2", "poles_in_series": 1,
			"ways": list{object{"id": "1", "conductors_opened": "both"}, object{"id": "2", "conductors_opened": "both"}}}},
		"cables": list{
			run("R1", "S1", "ISO1.1.in"), run("R2", "ISO1.1.out", "INV1.1"),
			run("R3", "S2", "ISO1.2.in"), run("R4", "ISO1.2.out", "INV1.2"),
		},
	}
}

func run(id, from, to string) object {
	return object{"id": id, "from": from, "to": to, "service": "pv_string"}
}

// inParallel is the same with both strings put in parallel before way 1.
func inParallel() object {
	doc := site()
	doc["arrays"] = list{object{"id": "A1", "ways": 2}}
	doc["cables"] = list{run("R1", "S1", "A1.1"), run("R2", "S2", "A1.2"), run("R3", "A1.out", "ISO1.1.in"), run("R4", "ISO1.1.out", "INV1.1")}
	first(doc)["ways"] = list{object{"id": "1", "conductors_opened": "both"}}
	return doc
}

func first(doc object) object { return doc["isolators"].(list)[0].(object) }

func rules(method string) book.Book {
	return facttest.Book(map[string]any{"voltage_method": method, "voc_factor": 1.15, "built_in_reach_m": 1.0, "isc_factor": 1.25})
}

func derive(t *testing.T, doc object, method string) isolator.Isolator {
	t.Helper()
	r := facttest.Derive(t, doc, rules(method))
	all := isolator.Derive(r.Installation, r.Circuit, r.Strings, rules(method))
	if len(all) == 0 {
		t.Fatal("no isolators")
	}
	return all[0]
}

func TestDuty(t *testing.T) {
	f := derive(t, site(), "coefficient")
	facttest.Lists(t, "strings", f.Strings, "S1", "S2")
	facttest.Is(t, "strings in parallel on one way", f.StringsParallel, 1)
	facttest.Is(t, "voltage", f.VocMaxV, 544.5)
	facttest.Is(t, "current of the greater way", f.IscMaxA, 17.375)

	doc := site()
	doc["cables"] = append(doc["cables"].(list), run("R5", "S3", "ISO1.2.in"))
	doc["strings"] = append(doc["strings"].(list), object{"id": "S3", "module": "M", "modules_in_series": 9})
	f = derive(t, doc, "coefficient")
	facttest.Is(t, "strings in parallel on the greater way", f.StringsParallel, 2)
	facttest.Is(t, "current of the greater way", f.IscMaxA, 34.75)
	facttest.Is(t, "voltage of the longest string", f.VocMaxV, 544.5)
}

// The isolator of a worked example: two strings in parallel of 569.25 V by the
// 1.15 of the guide Photovoltaics in Buildings, 2nd ed. 2006, 2.1.2 (from
// memory). Offered are 600 V and 32 A in DC-PV1: the voltage does, the current
// and the category do not.
func TestWorkedIsolator(t *testing.T) {
	doc := inParallel()
	first(doc)["utilization_category"] = "DC-PV1"
	f := derive(t, doc, "factor")
	facttest.Is(t, "duty voltage", f.VocMaxV, 569.25)
	facttest.Is(t, "duty current", f.IscMaxA, 34.75)
	facttest.Is(t, "strings in parallel", f.StringsParallel, 2)
	facttest.Is(t, "rated voltage, enough", f.UeV, 600)
	facttest.Is(t, "rated current, too little", f.IeA, 32)
	facttest.Is(t, "category, not made for strings in parallel", f.Category, "DC-PV1")
}

func TestRatingRow(t *testing.T) {
	for _, c := range []struct {
		name     string
		category string
		poles    int
		series   int
		ue, ie   float64
	}{
		{"lowest voltage that covers 544.5 V", "DC-PV2", 1, 10, 600, 25},
		{"lowest row for a shorter string", "DC-PV2", 1, 7, 400, 30},
		{"next higher for a longer string", "DC-PV2", 1, 12, 800, 12},
		{"none covers 816.75 V: the highest", "DC-PV2", 1, 15, 800, 12},
		{"other category", "DC-PV1", 1, 10, 600, 32},
		{"two poles in series", "DC-PV2", 2, 10, 1000, 40},
		{"two poles in series, older category, none covers", "DC-21B", 2, 10, 500, 9},
	} {
		t.Run(c.name, func(t *testing.T) {
			doc := site()
			first(doc)["utilization_category"], first(doc)["poles_in_series"] = c.category, c.poles
			for _, s := range doc["strings"].(list) {
				s.(object)["modules_in_series"] = c.series
			}
			f := derive(t, doc, "coefficient")
			facttest.Is(t, "Ue", f.UeV, c.ue)
			facttest.Is(t, "Ie", f.IeA, c.ie)
		})
	}
}

// Ten modules whose voltage by the factor 1.15 is just the 600 V of the row.
func TestRatingMetExactly(t *testing.T) {
	doc := site()
	doc["datasheets"].(object)["modules"].(object)["M"].(object)["voc_v"] = 600 / 1.15 / 10
	f := derive(t, doc, "factor")
	facttest.Is(t, "duty voltage", f.VocMaxV, 600)
	facttest.Is(t, "Ue", f.UeV, 600)
}

func TestRatingUnknown(t *testing.T) {
	for _, c := range []struct {
		name    string
		change  func(iso object)
		missing []string
	}{
		{"no row in the category", func(iso object) { iso["utilization_category"] = "DC-23A" }, []string{"/datasheets/switch_disconnectors/D/ratings"}},
		{"no row for the wiring", func(iso object) { iso["poles_in_series"] = 4 }, []string{"/datasheets/switch_disconnectors/D/ratings"}},
		{"category not stated", func(iso object) { delete(iso, "utilization_category") }, []string{"/isolators/0/utilization_category"}},
		{"wiring not stated", func(iso object) { delete(iso, "poles_in_series") }, []string{"/isolators/0/poles_in_series"}},
		{"datasheet not stated", func(iso object) { delete(iso, "datasheet") }, []string{"/isolators/0/datasheet"}},
		{"none of them stated", func(iso object) {
			delete(iso, "datasheet")
			delete(iso, "utilization_category")
			delete(iso, "poles_in_series")
		}, []string{"/isolators/0/datasheet", "/isolators/0/poles_in_series", "/isolators/0/utilization_category"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			doc := site()
			c.change(first(doc))
			f := derive(t, doc, "coefficient")
			facttest.Wants(t, "Ue", f.UeV, c.missing...)
			facttest.Wants(t, "Ie", f.IeA, c.missing...)
		})
	}
	doc := site()
	delete(doc["site"].(object), "temp_min_c")
	f := derive(t, doc, "coefficient")
	facttest.Wants(t, "duty voltage", f.VocMaxV, "/site/temp_min_c")
	facttest.Wants(t, "Ue of an unknown duty", f.UeV, "/site/temp_min_c")
}

// As long as one string is not traced it may pass through any isolator. Nor is
// there a duty of none where no string passes: its runs are missing.
func TestDutyUnknown(t *testing.T) {
	doc := site()
	doc["cables"] = doc["cables"].(list)[:3]
	f := derive(t, doc, "coefficient")
	facttest.Wants(t, "current with a string untraced", f.IscMaxA, "/cables")
	facttest.Wants(t, "voltage with a string untraced", f.VocMaxV, "/cables")
	facttest.Wants(t, "Ue with a string untraced", f.UeV, "/cables")
	facttest.Wants(t, "strings with one untraced", f.Strings, "/cables")

	doc = site()
	delete(doc, "inverters")
	doc["cables"] = list{run("R1", "S1", "ISO1.1.in"), run("R3", "S2", "ISO1.2.in")}
	f = derive(t, doc, "coefficient")
	facttest.Wants(t, "current without an inverter", f.IscMaxA, "/inverters")

	doc = site()
	doc["cables"] = list{run("R1", "S1", "INV1.1"), run("R2", "S2", "INV1.2")}
	f = derive(t, doc, "coefficient")
	facttest.Wants(t, "circuit of an idle isolator", f.Circuit, "/cables", "/isolators/0/circuit")
	facttest.Wants(t, "strings of an idle isolator", f.StringsParallel, "/cables", "/isolators/0/circuit")
	facttest.Wants(t, "current of an idle isolator", f.IscMaxA, "/cables", "/isolators/0/circuit")
	facttest.Wants(t, "Ue of an idle isolator", f.UeV, "/cables", "/isolators/0/circuit")
}

// An isolator of the AC side has no duty from strings; its rating is that of
// its category.
func TestACIsolator(t *testing.T) {
	doc := site()
	doc["datasheets"].(object)["switch_disconnectors"].(object)["AC"] = object{"ratings": list{row("AC-22A", 1, 230, 40)}}
	doc["isolators"] = append(list{object{"id": "ISO2", "circuit": "ac", "datasheet": "AC", "utilization_category": "AC-22A", "poles_in_series": 1,
		"ways": list{object{"id": "1", "conductors_opened": "line_and_neutral"}}}}, doc["isolators"].(list)...)
	doc["cables"] = append(doc["cables"].(list), object{"id": "R5", "from": "INV1.ac", "to": "ISO2.1.in", "service": "ac"})
	f := derive(t, doc, "coefficient")
	facttest.Is(t, "circuit", f.Circuit, "ac")
	facttest.Wants(t, "current from strings", f.IscMaxA)
	facttest.Wants(t, "voltage from strings", f.VocMaxV)
	facttest.Is(t, "Ue", f.UeV, 230)
	facttest.Is(t, "Ie", f.IeA, 40)
	facttest.Is(t, "poles used", f.PolesUsed, 2)
}

// The circuit that an isolator opens follows from what its ways lead to; a word that
// says otherwise switches nothing off.
func TestCircuitByWiring(t *testing.T) {
	doc := site()
	first(doc)["circuit"] = "ac"
	f := derive(t, doc, "coefficient")
	facttest.Is(t, "as stated", f.CircuitStated, "ac")
	facttest.Is(t, "by its wiring", f.CircuitMade, "pv_dc")
	facttest.Wants(t, "circuit", f.Circuit, "/isolators/0/circuit")
	if at := f.CircuitMade.At(); at != "/strings/0" {
		t.Errorf("the circuit comes from %s, want /strings/0", at)
	}
	doc = site()
	doc["cables"].(list)[3].(object)["to"] = "INV1.ac"
	f = derive(t, doc, "coefficient")
	facttest.Wants(t, "circuit of an isolator between string and AC", f.CircuitMade, "/isolators/0")
}

// Strings with a way each that meet behind the isolator are in parallel all the same:
// each way bears what the others drive back through it.
func TestStringsJoinedBehind(t *testing.T) {
	doc := site()
	for i := 3; i <= 4; i++ {
		id, way := fmt.Sprintf("S%d", i), fmt.Sprint(i)
		doc["strings"] = append(doc["strings"].(list), object{"id": id, "module": "M", "modules_in_series": 10})
		first(doc)["ways"] = append(first(doc)["ways"].(list), object{"id": way, "conductors_opened": "both"})
		doc["cables"] = append(doc["cables"].(list), run("A"+way, id, "ISO1."+way+".in"), run("B"+way, "ISO1."+way+".out", "INV1.1"))
	}
	f := derive(t, doc, "coefficient")
	facttest.Is(t, "three of four on one input", f.StringsParallel, 3)
	facttest.Near(t, "two others drive back", f.IscMaxA, 2*17.375, 1e-9)
	doc["cables"].(list)[7] = run("B4", "ISO1.4.out", "INV1.2")
	f = derive(t, doc, "coefficient")
	facttest.Is(t, "two on each", f.StringsParallel, 2)
	facttest.Near(t, "one other drives back what one drives forward", f.IscMaxA, 17.375, 1e-9)
}

// An isolator is part of an inverter where its place, its distance and the circuit
// bear that out; a word alone switches nothing off.
func TestBuiltIn(t *testing.T) {
	for _, c := range []struct {
		name   string
		change func(doc, iso object)
		want   string
	}{
		{"borne out", func(object, object) {}, "true"},
		{"place and distance left out", func(_, iso object) { delete(iso, "place"); delete(iso, "distance_to_inverter_m") }, "true"},
		{"not stated", func(_, iso object) { delete(iso, "built_into") }, "false"},
		{"outdoors, the inverter in the garage", func(_, iso object) { iso["place"] = "outdoor_wall" }, "[/isolators/0/place disagrees outdoor_wall /inverters/0/place garage]"},
		{"twelve metres away", func(_, iso object) { iso["distance_to_inverter_m"] = 12 }, "[/isolators/0/distance_to_inverter_m disagrees 12 m /isolators/0/built_into part of it]"},
		{"another one between", func(doc, _ object) {
			doc["isolators"] = append(doc["isolators"].(list), object{"id": "Q", "circuit": "pv_dc", "ways": list{object{"id": "1"}, object{"id": "2"}}})
			doc["cables"] = append(doc["cables"].(list)[:0:0], run("R1", "S1", "ISO1.1.in"), run("R2", "ISO1.1.out", "Q.1.in"), run("R3", "Q.1.out", "INV1.1"),
				run("R4", "S2", "ISO1.2.in"), run("R5", "ISO1.2.out", "Q.2.in"), run("R6", "Q.2.out", "INV1.2"))
		}, "[/isolators/0/built_into unconfirmed INV1]"},
	} {
		doc := site()
		doc["inverters"].(list)[0].(object)["place"] = "garage"
		iso := first(doc)
		iso["built_into"], iso["place"], iso["distance_to_inverter_m"] = "INV1", "garage", 0
		c.change(doc, iso)
		f := derive(t, doc, "coefficient")
		got := fmt.Sprint(f.BuiltIn.Value())
		if !f.BuiltIn.Known() {
			got = fmt.Sprint(f.BuiltIn.Missing())
		}
		if got != c.want {
			t.Errorf("%s: built in is %s, want %s", c.name, got, c.want)
		}
	}
}

func TestPolesUsed(t *testing.T) {
	doc := site()
	facttest.Is(t, "two ways of two conductors", derive(t, doc, "coefficient").PolesUsed, 4)
	first(doc)["poles_in_series"] = 2
	facttest.Is(t, "two ways of two conductors of two poles", derive(t, doc, "coefficient").PolesUsed, 8)
	ways := first(doc)["ways"].(list)
	ways[1] = object{"id": "2", "conductors_opened": "positive"}
	f := derive(t, doc, "coefficient")
	facttest.Is(t, "one way of one conductor", f.PolesUsed, 6)
	facttest.Is(t, "breaks all conductors", f.BreaksAll, false)
	ways[1] = object{"id": "2"}
	f = derive(t, doc, "coefficient")
	facttest.Wants(t, "poles of a way that is not described", f.PolesUsed, "/isolators/0/ways/1/conductors_opened")
	if f.BreaksAll.Known() {
		t.Error("whether it breaks all conductors is known, though one way is not described")
	}
	ways[0] = object{"id": "1", "conductors_opened": "negative"}
	facttest.Is(t, "one way is enough not to break all conductors", derive(t, doc, "coefficient").BreaksAll, false)
}

func TestIPFigures(t *testing.T) {
	const member = "/isolators/0/enclosure/ip"
	for _, c := range []struct {
		code          string
		solids, water float64 // −1 for not stated
	}{{"IP65", 6, 5}, {"IPX4", -1, 4}, {"IP4X", 4, -1}, {"IP56NW", 5, 6}, {"IP69K", 6, 9}, {"IP20", 2, 0}, {"IPXXB", -1, -1}} {
		doc := site()
		first(doc)["enclosure"] = object{"ip": c.code}
		f := derive(t, doc, "coefficient")
		for what, figure := range map[string]struct {
			got  working.Number
			want float64
		}{"solids": {f.IPSolids, c.solids}, "water": {f.IPWater, c.water}} {
			if figure.want < 0 {
				facttest.Wants(t, c.code+" "+what, figure.got, member)
			} else {
				facttest.Is(t, c.code+" "+what, figure.got, figure.want)
			}
		}
	}
	facttest.Wants(t, "no code", derive(t, site(), "coefficient").IPSolids, member)
}

func TestOutdoors(t *testing.T) {
	for place, outdoors := range map[string]bool{"roof_surface": true, "outdoor_wall": true, "outdoor_ground": true, "roof_space": false, "plant_room": false} {
		doc := site()
		first(doc)["place"] = place
		facttest.Is(t, place+" is outdoors", derive(t, doc, "coefficient").Outdoors, outdoors)
	}
	if f := derive(t, site(), "coefficient"); f.Outdoors.Known() {
		t.Error("outdoors is known without a place")
	}
}

func TestRunsLiveAndDead(t *testing.T) {
	f := derive(t, site(), "coefficient")
	facttest.Lists(t, "live", f.RunsLive, "R1", "R3")
	facttest.Lists(t, "dead", f.RunsDead, "R2", "R4")
}

func TestWithoutDatasheet(t *testing.T) {
	doc := site()
	delete(first(doc), "datasheet")
	f := derive(t, doc, "coefficient")
	facttest.Wants(t, "poles", f.Poles, "/isolators/0/datasheet")
	facttest.Wants(t, "thermal current", f.IthA, "/isolators/0/datasheet")
	facttest.Wants(t, "whether all poles open together", f.BreaksTogether, "/isolators/0/datasheet")
}
