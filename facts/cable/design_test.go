package cable_test

import (
	"fmt"
	"strings"
	"testing"

	"sunclause/facts/cable"
	"sunclause/facts/working"
)

func find(t *testing.T, runs []cable.Run, id string) *cable.Run {
	t.Helper()
	for i := range runs {
		if runs[i].ID == id {
			return &runs[i]
		}
	}
	t.Fatalf("there is no run %s", id)
	return nil
}

// said tells a number, or what was missing.
func said(n working.Number) string {
	if n.Known() {
		return fmt.Sprint(n.Value())
	}
	return "missing " + strings.Join(working.Pointers(n.Missing()), " ")
}

func fused(doc object, values ...any) object {
	for i, v := range values {
		s := doc["strings"].(list)[i].(object)
		delete(s, "overcurrent")
		if v != nil {
			s["overcurrent"] = object{"fitted": v}
		}
	}
	return doc
}

// Strings drive current back into a faulted one, unless it has a fuse: IEC
// 62548:2016, table of minimum current ratings of circuits. Isc 13.9 A, K_I 1.25.
func TestDesignCurrentOfStrings(t *testing.T) {
	for _, c := range []struct {
		name           string
		doc            object
		first, of, all string // design current of the first string's cable, its reverse current, and of the array's cable
	}{
		{"two unfused", fused(roof(), false, false), "17.375", "17.375", "34.75"},
		{"two fused", fused(roof(), true, true), "17.375", "17.375", "34.75"},
		{"not said", fused(roof(), nil, true), "missing /strings/0/overcurrent/fitted", "17.375", "34.75"},
	} {
		runs := derive(t, c.doc)
		if got := said(runs[0].DesignCurrentA); got != c.first {
			t.Errorf("%s: cable of the first string %s, want %s", c.name, got, c.first)
		}
		if got := said(runs[0].ReverseMaxA); got != c.of {
			t.Errorf("%s: reverse %s, want %s", c.name, got, c.of)
		}
		if got := said(runs[2].DesignCurrentA); got != c.all {
			t.Errorf("%s: cable of the array %s, want %s", c.name, got, c.all)
		}
	}
}

// Three strings on one input: the cable of one has to carry the other two.
func TestDesignCurrentOfThree(t *testing.T) {
	three := func(fitted bool) object {
		doc := roof()
		doc["strings"] = append(doc["strings"].(list), object{"id": "S3", "module": "M", "modules_in_series": 9})
		doc["arrays"] = list{object{"id": "A1", "ways": 3}}
		doc["cables"] = append(doc["cables"].(list), object{"id": "R5", "from": "S3", "to": "A1.3", "service": "pv_string"})
		return fused(doc, fitted, fitted, fitted)
	}
	for fitted, want := range map[bool]string{false: "34.75", true: "17.375"} {
		if got := said(derive(t, three(fitted))[0].DesignCurrentA); got != want {
			t.Errorf("fuses fitted %t: %s A, want %s A", fitted, got, want)
		}
	}
}

// A string alone on its input needs no word on fuses.
func TestDesignCurrentAlone(t *testing.T) {
	doc := fused(roof(), nil)
	doc["strings"] = doc["strings"].(list)[:1]
	doc["cables"] = list{object{"id": "R1", "from": "S1", "to": "INV1.1", "service": "pv_string"}}
	if got := said(derive(t, doc)[0].DesignCurrentA); got != "17.375" {
		t.Errorf("%s A, want 17.375 A", got)
	}
}

// mains is two inverters on a generation board that feeds the main board.
func mains() object {
	doc := roof()
	sheet := doc["datasheets"].(object)["inverters"].(object)["I"].(object)
	sheet["ac_current_max_a"] = 21.8
	doc["inverters"] = list{object{"id": "INV1", "datasheet": "I"}, object{"id": "INV2", "datasheet": "I"}}
	doc["cables"] = append(doc["cables"].(list),
		object{"id": "A1C", "from": "INV1.ac", "to": "GB.1", "service": "ac"},
		object{"id": "A2C", "from": "INV2.ac", "to": "GB.2", "service": "ac"},
		object{"id": "SUB", "from": "GB.in", "to": "MB.1", "service": "ac"},
		object{"id": "LOAD", "from": "MB.2", "to": "INV9", "service": "ac"})
	doc["cables"] = doc["cables"].(list)[:7]
	doc["ac"] = object{
		"supply": object{"id": "SUP", "form": "single_phase", "phases": 1, "voltage_v": 230},
		"boards": list{object{"id": "MB", "role": "main", "joined_in": "SUP", "ways": list{object{"id": "1"}, object{"id": "2"}}},
			object{"id": "GB", "role": "generation", "ways": list{object{"id": "1"}, object{"id": "2"}, object{"id": "3"}}}},
		"existing_generation": list{},
	}
	doc["storage"] = object{"batteries": list{}}
	return doc
}

func TestDesignCurrentOfMains(t *testing.T) {
	coupled := func(doc object) object {
		doc["datasheets"].(object)["batteries"] = object{"B": object{"energy_kwh": 10, "coupling": "ac", "ac_current_max_a": 16, "phases": 1}}
		doc["storage"] = object{"batteries": list{object{"id": "BAT", "datasheet": "B"}}}
		doc["cables"] = append(doc["cables"].(list), object{"id": "A3C", "from": "BAT.ac", "to": "GB.3", "service": "ac"})
		return doc
	}
	older := func(doc object) object {
		doc["ac"].(object)["existing_generation"] = list{object{"id": "OLD", "way": "GB.3", "ac_current_max_a": 10, "phases": 1}}
		return doc
	}
	unplugged := func(doc object) object {
		doc["cables"] = append(doc["cables"].(list)[:5:5], doc["cables"].(list)[6])
		return doc
	}
	silent := func(list string) func(object) object {
		return func(doc object) object {
			if list == "batteries" {
				delete(doc, "storage")
			} else {
				delete(doc["ac"].(object), list)
			}
			return doc
		}
	}
	same := func(doc object) object { return doc }
	for _, c := range []struct {
		name, run string
		of        func(object) object
		want      string
	}{
		{"one inverter", "A1C", same, "21.8"}, {"both", "SUB", same, "43.6"},
		{"a battery with an inverter of its own", "SUB", coupled, "59.6"}, {"its own cable", "A3C", coupled, "16"},
		{"generation that was there before", "SUB", older, "53.6"},
		{"an inverter whose cable is not described", "SUB", unplugged, "missing /cables"},
		{"batteries not stated", "SUB", silent("batteries"), "missing /storage/batteries"},
		{"existing generation not stated", "SUB", silent("existing_generation"), "missing /ac/existing_generation"},
	} {
		if got := said(find(t, derive(t, c.of(mains())), c.run).DesignCurrentA); got != c.want {
			t.Errorf("%s: %s carries %s, want %s", c.name, c.run, got, c.want)
		}
	}
}

func TestDesignCurrentOfBattery(t *testing.T) {
	doc := mains()
	doc["datasheets"].(object)["batteries"] = object{"B": object{"energy_kwh": 10, "coupling": "dc"}}
	doc["datasheets"].(object)["inverters"].(object)["I"].(object)["battery_current_max_a"] = 30
	doc["storage"] = object{"batteries": list{object{"id": "BAT", "datasheet": "B"}}}
	doc["cables"] = append(doc["cables"].(list), object{"id": "RB", "from": "BAT", "to": "INV1.battery", "service": "battery"})
	if got := said(find(t, derive(t, doc), "RB").DesignCurrentA); got != "30" {
		t.Errorf("battery cable carries %s, want 30", got)
	}
	doc["cables"].(list)[7] = object{"id": "RB", "from": "BAT", "to": "MB.2", "service": "battery"}
	if got := said(find(t, derive(t, doc), "RB").DesignCurrentA); got != "missing /cables/7 /cables/7/service" {
		t.Errorf("battery cable that reaches no inverter carries %s", got)
	}
}

// Loaded conductors follow from the circuit: two single-phase, three with three-phase
// sources, however many cores the cable has or states.
func TestLoadedConductors(t *testing.T) {
	for _, c := range []struct {
		name   string
		sheet  object
		phases int
		want   string
	}{
		{"twin", object{"csa_mm2": 6, "cores": 2}, 1, "2"}, {"line, neutral and earth", object{"csa_mm2": 6, "cores": 3}, 1, "2"},
		{"five cores, single-phase", object{"csa_mm2": 6, "cores": 5}, 1, "2"}, {"five cores, three-phase", object{"csa_mm2": 6, "cores": 5}, 3, "3"},
		{"three-phase with two cores, which is judged by itself", object{"csa_mm2": 6, "cores": 2}, 3, "3"},
		{"single cores, three-phase", object{"csa_mm2": 6, "cores": 1}, 3, "3"}, {"single cores, single-phase", object{"csa_mm2": 6, "cores": 1}, 1, "2"},
		{"cores not stated", object{"csa_mm2": 6}, 1, "2"},
	} {
		doc := mains()
		doc["datasheets"].(object)["cables"] = object{"c": c.sheet}
		doc["datasheets"].(object)["inverters"].(object)["I"].(object)["phases"] = c.phases
		doc["cables"].(list)[4].(object)["cable"] = "c"
		if got := said(find(t, derive(t, doc), "A1C").Loaded); got != c.want {
			t.Errorf("%s: %s, want %s", c.name, got, c.want)
		}
	}
}

// What a run does not state of its stretches and connectors is not known, which
// is not the same as having none.
func TestNothingSaidOfTheRoute(t *testing.T) {
	doc := roof()
	run := doc["cables"].(list)[2].(object) // states no segments
	f := deriveAll(t, doc)
	var of []string
	for _, s := range f.Segments {
		if s.At == "/cables/2" {
			of = append(of, s.ID, said(s.LengthM), said(s.CapacityA), strings.Join(working.Pointers(s.EdgesProtected.Missing()), " "))
		}
	}
	if got, want := fmt.Sprint(of), "[R3.1 missing /cables/2/segments missing /cables/2/segments /cables/2/segments]"; got != want {
		t.Errorf("segments of R3: %s, want %s", got, want)
	}
	if r := find(t, f.Runs, "R3"); r.CapacityA.Known() || r.Outdoors.Known() {
		t.Error("capacity and place of R3 are known")
	}
	var ids []string
	for _, c := range f.Connectors {
		ids = append(ids, c.ID)
		if c.SameType.Known() || c.VoltageMaxV.Known() {
			t.Errorf("%s: something is known of it", c.ID)
		}
	}
	if got := fmt.Sprint(ids); got != "[R1.connectors R2.connectors R3.connectors]" {
		t.Errorf("connectors %s", got)
	}
	run["connectors"], run["segments"] = list{}, list{}
	f = deriveAll(t, doc)
	if len(f.Connectors) != 2 {
		t.Errorf("%d connectors, and R3 states that it has none", len(f.Connectors))
	}
}

func TestPassages(t *testing.T) {
	for _, c := range []struct {
		segment object
		want    string
	}{
		{object{"ends_at": "enclosure"}, "none"}, {object{"ends_at": "roof"}, "missing /cables/0/segments/0/passage"},
		{object{}, "missing /cables/0/segments/0/passage /cables/0/segments/0/ends_at"},
		{object{"ends_at": "bend", "passage": object{"through": "floor"}}, "floor"}, {object{"ends_at": "wall", "passage": object{}}, "missing /cables/0/segments/0/passage/through"},
	} {
		doc := roof()
		doc["cables"].(list)[0].(object)["segments"] = list{c.segment}
		p := deriveAll(t, doc).Segments[0].Passage
		got := p.Value()
		if !p.Known() {
			got = "missing " + strings.Join(working.Pointers(p.Missing()), " ")
		}
		if got != c.want {
			t.Errorf("%v: passage %s, want %s", c.segment, got, c.want)
		}
	}
}

func TestStandards(t *testing.T) {
	for stated, want := range map[string]string{"EN 50618": "EN 50618", "BS EN 50618:2014": "EN 50618", "DIN EN 50618": "EN 50618", "IEC 62930:2017": "IEC 62930", "BS 6004:2012": "BS 6004"} {
		doc := roof()
		doc["datasheets"].(object)["cables"] = object{"c": object{"csa_mm2": 4, "standard": stated}}
		doc["cables"].(list)[0].(object)["cable"] = "c"
		if got := derive(t, doc)[0].Standard.Value(); got != want {
			t.Errorf("%s is taken as %s, want %s", stated, got, want)
		}
	}
}

// A cable of more than one core needs as many as its circuit has conductors.
func TestCoresNeeded(t *testing.T) {
	for _, c := range []struct {
		name    string
		phases  int
		neutral any
		want    string
	}{
		{"single-phase", 1, nil, "2"}, {"three lines", 3, false, "3"}, {"three lines and neutral", 3, true, "4"},
		{"neutral not stated", 3, nil, "missing /cables/4/neutral_conductor"},
	} {
		doc := mains()
		doc["datasheets"].(object)["inverters"].(object)["I"].(object)["phases"] = c.phases
		if c.neutral != nil {
			doc["cables"].(list)[4].(object)["neutral_conductor"] = c.neutral
		}
		if got := said(find(t, derive(t, doc), "A1C").CoresNeeded); got != c.want {
			t.Errorf("%s: %s, want %s", c.name, got, c.want)
		}
	}
}
