package label_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"sunclause/facts/facttest"
)

// at writes the places of a legend: part, whether the label is there, and by
// which labels.
func at(t *testing.T, doc object, rows ...[3]string) string {
	t.Helper()
	var all []string
	for _, p := range derive(t, doc, figures(rows...)).Places {
		if p.Kind.Value() != "pv_cable" || len(rows) == 0 {
			all = append(all, strings.TrimSpace(fmt.Sprintf("%s %s %s", p.ID, facttest.Shown(p.Present), strings.Join(p.ServedBy.Values(), ","))))
		}
	}
	return strings.Join(all, "; ")
}

func put(doc object, labels ...object) object {
	all := list{}
	for i, l := range labels {
		l["id"] = fmt.Sprintf("L%d", i)
		all = append(all, l)
	}
	doc["labels"] = all
	return doc
}

func on(part string) object { return object{"legend": "dual_supply", "on": part} }

func location(word string) object { return object{"legend": "dual_supply", "location": word} }

// change lets a test alter the site in one place.
func change(alter func(doc object)) object {
	doc := site()
	alter(doc)
	return doc
}

func TestPlaces(t *testing.T) {
	ac := func(d object) object { return d["ac"].(object) }
	first := func(d object, name string) object { return d[name].(list)[0].(object) }
	board := func(d object) object { return ac(d)["boards"].(list)[0].(object) }
	for _, c := range []struct {
		name, place, due string
		doc              object
		want             string
	}{
		{"on the supply", "origin", "always", put(site(), on("SUP")), "x@SUP true L0"},
		{"at the origin", "origin", "always", put(site(), location("origin")), "x@SUP true L0"},
		{"elsewhere", "origin", "always", put(site(), location("meter")), "x@SUP false"},
		{"supply not described", "origin", "always", change(func(d object) {
			delete(d, "ac")
			d["cables"] = list{}
		}), "x@origin false"},
		{"at the meter", "meter", "always", put(site(), location("meter"), on("M1")), "x@M1 true L0,L1"},
		{"meter of generation", "meter", "always", change(func(d object) { ac(d)["meters"].(list)[0].(object)["purpose"] = "generation" }), ""},
		{"meters not stated", "meter", "always", change(func(d object) { d["ac"] = object{"supply": object{"id": "SUP"}, "boards": ac(d)["boards"]} }), "x@meter [/ac/meters]"},
		{"main board as a location", "main_board", "always", put(site(), location("main_board")), "x@B1 true L0"},
		{"role of the board not stated", "main_board", "always", change(func(d object) { delete(board(d), "role") }), "x@B1 [/ac/boards/0/role]"},
		{"role not stated, label on it", "main_board", "always", put(change(func(d object) { delete(board(d), "role") }), on("B1")), "x@B1 true L0"},
		{"role not stated, label at the location", "pv_board", "always", put(change(func(d object) { delete(board(d), "role") }), location("main_board")), "x@B1 [/ac/boards/0/role]"},
		{"board that PV feeds", "pv_board", "always", site(), "x@B1 false"},
		{"way to the supply broken", "pv_board", "always", change(func(d object) { delete(ac(d)["meters"].(list)[0].(object), "joined_out") }), "x@B1 [/cables]"},
		{"sub-board that PV does not feed", "pv_board", "always", change(func(d object) {
			ac(d)["boards"] = append(ac(d)["boards"].(list), object{"id": "B2"})
		}), "x@B1 false"},
		{"isolators", "dc_isolator", "always", put(site(), on("ISO1")), "x@ISO1 true L0"},
		{"isolator within the inverter", "dc_isolator", "always", put(change(func(d object) { first(d, "isolators")["built_into"] = "INV1" }), on("INV1")), "x@ISO1 true L0"},
		{"AC isolators", "ac_isolator", "always", site(), "x@ISO2 false"},
		{"no battery isolator", "battery_isolator", "always", site(), ""},
		{"isolators not stated", "dc_isolator", "always", change(func(d object) {
			delete(d, "isolators")
			d["cables"] = list{}
		}), "x@dc_isolator [/isolators]"},
		{"inverter", "inverter", "always", site(), "x@INV1 false"},
		{"boxes not stated", "junction_box", "always", site(), "x@junction_box [/arrays]"},
		{"box", "junction_box", "always", change(func(d object) { d["arrays"] = list{object{"id": "J1", "ways": 1, "joined_by": "junction_box"}} }), "x@J1 false"},
		{"branch connectors", "junction_box", "always", change(func(d object) { d["arrays"] = list{object{"id": "J1", "ways": 1, "joined_by": "branch_connectors"}} }), ""},
		{"fuse not stated", "string_fuse", "always", site(), "x@S1 [/strings/0/overcurrent/fitted]"},
		{"no fuse", "string_fuse", "always", change(func(d object) { first(d, "strings")["overcurrent"] = object{"fitted": false} }), ""},
		{"fuse in the isolator's box", "string_fuse", "always", put(change(func(d object) { first(d, "strings")["overcurrent"] = object{"fitted": true} }), on("ISO1")), "x@S1 true L0"},
		{"connector within reach", "connector", "always", change(func(d object) {
			first(d, "cables")["connectors"] = list{object{"id": "C1", "readily_accessible": true}, object{"id": "C2", "readily_accessible": false}, object{"id": "C3"}}
			d["cables"].(list)[1].(object)["connectors"] = list{}
		}), "x@C1 false; x@C3 [/cables/0/connectors/2/readily_accessible]"},
		{"connectors not stated", "connector", "always", site(), "x@connector [/cables/0/connectors /cables/1/connectors]"},
		{"roof space", "roof_access", "always", put(route(list{stretch(3)}), location("roof_space_access")), "x@roof_space_access true L0"},
		{"no roof space", "roof_access", "always", change(func(d object) {
			for _, r := range d["cables"].(list) {
				r.(object)["segments"] = list{stretch(1, object{"place": "outdoor_wall"})}
			}
		}), ""},
		{"route not stated", "roof_access", "always", site(), "x@roof_space_access [/cables/0/segments /cables/1/segments]"},
		{"way of the board", "pv_way", "always", put(site(), on("B1")), "x@B1.1 true L0"},
		{"two ways and one label", "pv_way", "always", put(change(func(d object) {
			board(d)["ways"] = append(board(d)["ways"].(list), object{"id": "2", "serves": "pv_supply"})
		}), on("B1")), "x@B1.1 false L0; x@B1.2 false L0"},
		{"way that is marked", "pv_way", "always", change(func(d object) { board(d)["ways"].(list)[0].(object)["identified"] = true }), "x@B1.1 true"},
		{"near the board", "interconnection", "always", put(site(), location("main_board")), "x@interconnection true L0"},
		{"at the inverter only", "interconnection", "always", put(site(), on("INV1")), "x@interconnection false"},
		{"at the inverter too", "interconnection_or_inverter", "always", put(site(), on("INV1")), "x@interconnection true L0"},
		{"entrance", "entrance", "not_dwelling", site(), ""},
		{"entrance of a shop", "entrance", "not_dwelling", put(change(func(d object) { d["project"].(object)["premises"] = "commercial" }), location("fire_panel")), "x@entrance true L0"},
		{"premises not stated", "entrance", "not_dwelling", change(func(d object) { delete(d["project"].(object), "premises") }), "x@entrance [/project/premises]"},
		{"one isolator", "dc_isolator", "several_dc_isolators", site(), ""},
		{"two isolators", "dc_isolator", "several_dc_isolators", change(func(d object) {
			d["isolators"] = append(d["isolators"].(list), object{"id": "ISO3", "circuit": "pv_dc", "ways": list{object{"id": "1"}}})
			d["cables"] = append(d["cables"].(list), object{"id": "R9", "from": "S1", "to": "ISO3.1.in", "service": "pv_string"})
		}), "x@ISO1 false; x@ISO3 false"},
		{"two isolators for two strings", "dc_isolator", "several_dc_isolators", change(func(d object) { another(d, "S2", "INV1.2") }), "x@ISO1 false; x@ISO3 false"},
		{"two isolators one behind the other", "dc_isolator", "several_dc_isolators", change(func(d object) {
			another(d, "ISO1.1.out", "INV1.1")
			d["strings"] = d["strings"].(list)[:1]
			d["cables"] = append(d["cables"].(list)[:1:1], d["cables"].(list)[2:]...)
		}), ""},
		{"earth terminals not stated", "earth_terminal", "always", site(), "x@earth_terminal [/earthing/main_terminal /earthing/terminals]"},
		{"terminal in a board", "earth_terminal", "always", change(func(d object) {
			d["earthing"] = object{"main_terminal": object{"id": "MET", "board": "B1"}, "terminals": list{object{"id": "EB1"}}}
		}), "x@EB1 false"},
		{"frames", "frame", "always", change(func(d object) {
			d["earthing"] = object{"frames": list{object{"id": "F1", "connection": "none"}, object{"id": "F2", "connection": "main_bonding"},
				object{"id": "F3", "connection": "main_bonding", "joints_labelled": true}, object{"id": "F4"}}}
		}), "x@F2 false; x@F3 true; x@F4 [/earthing/frames/3/connection]"},
		{"electrode", "earth_electrode", "always", change(func(d object) { d["earthing"] = object{"electrodes": list{object{"id": "E1"}}} }), "x@E1 false"},
		{"surge protection", "spd", "always", change(func(d object) {
			d["spds"] = list{object{"id": "P1", "connected_at": "INV1.1"}, object{"id": "P2", "connected_at": "INV1.1", "built_into": "INV1"}}
		}), "x@P1 false"},
		{"surge protection said to be inside, on another part", "spd", "always", change(func(d object) {
			d["spds"] = list{object{"id": "P1", "connected_at": "ISO1.1.in", "built_into": "INV1"}}
		}), "x@P1 false"},
		{"residual current device", "rcd_board", "always", change(func(d object) {
			d["datasheets"].(object)["protective_devices"] = object{"D": object{"kind": "rcbo"}}
			board(d)["ways"].(list)[0].(object)["device"] = "D"
		}), "x@B1 false"},
		{"no residual current device", "rcd_board", "always", change(func(d object) {
			d["datasheets"].(object)["protective_devices"] = object{"D": object{"kind": "circuit_breaker"}}
			board(d)["ways"].(list)[0].(object)["device"] = "D"
		}), ""},
		{"device not stated", "rcd_board", "always", site(), "x@B1 [/ac/boards/0/ways/0/device]"},
		{"battery not stated", "outside", "battery_fitted", site(), "x@outside [/storage/batteries]"},
		{"no battery", "outside", "battery_fitted", change(func(d object) { d["storage"] = object{"batteries": list{}} }), ""},
		{"ready for a battery", "outside", "battery_fitted", change(func(d object) {
			d["storage"] = object{"batteries": list{}, "provision": object{"planned": true}}
		}), ""},
		{"battery", "outside", "battery_fitted", put(battery(), location("outside_wall")), "x@outside true L0"},
		{"battery of its own", "battery", "battery_fitted", battery(), "x@BAT1 false"},
		{"battery at the inverter", "outside", "battery_fitted", change(func(d object) { first(d, "inverters")["battery_fitted"] = true }), "x@outside false"},
		{"no backup", "backup", "backup_output", site(), ""},
		{"backup by the inverter", "backup", "backup_output", put(backup(), on("B1")), "x@backup true L0"},
		{"backup board", "backup", "backup_output", change(func(d object) {
			ac(d)["boards"] = append(ac(d)["boards"].(list), object{"id": "B2", "role": "backup"})
		}), "x@B2 false"},
		{"changeover", "backup", "backup_output", change(func(d object) { ac(d)["changeovers"] = list{object{"id": "X1"}} }), "x@X1 false"},
		{"changeovers not stated", "backup", "backup_output", change(func(d object) { delete(ac(d), "changeovers") }), "x@backup [/ac/changeovers]"},
		{"never", "inverter", "never", site(), ""},
		{"word for the place not known", "chimney", "always", site(), "x@chimney [a label table of the rule set has the place…"},
		{"word for when not known", "inverter", "sometimes", site(), "x@INV1 [a label table of the rule set has the due…"},
	} {
		t.Run(c.name, func(t *testing.T) {
			got := strings.ReplaceAll(at(t, c.doc, [3]string{"dual_supply", c.place, c.due}), "dual_supply@", "x@")
			if begin, of := strings.CutSuffix(c.want, "…"); got != c.want && !(of && strings.HasPrefix(got, begin)) {
				t.Errorf("places %q, want %q", got, c.want)
			}
		})
	}
}

// another adds a string S2 and an isolator ISO3 between two terminals.
func another(d object, from, to string) {
	d["datasheets"].(object)["inverters"].(object)["I"].(object)["mppts"] = list{object{}, object{}}
	d["strings"] = append(d["strings"].(list), object{"id": "S2", "module": "M", "modules_in_series": 10})
	d["isolators"] = append(d["isolators"].(list), object{"id": "ISO3", "circuit": "pv_dc", "ways": list{object{"id": "1", "conductors_opened": "both"}}})
	d["cables"] = append(d["cables"].(list), object{"id": "R5", "from": from, "to": "ISO3.1.in", "service": "pv_string"},
		object{"id": "R6", "from": "ISO3.1.out", "to": to, "service": "pv_string"})
}

func battery() object {
	return change(func(d object) {
		d["datasheets"].(object)["batteries"] = object{"D": object{"energy_kwh": 5, "voltage_nominal_v": 48}}
		d["storage"] = object{"batteries": list{object{"id": "BAT1", "datasheet": "D", "units": 2}}}
	})
}

func backup() object {
	return change(func(d object) {
		d["datasheets"].(object)["inverters"].(object)["I"].(object)["backup_output"] = true
	})
}

func TestLabelsNotStated(t *testing.T) {
	doc := site()
	delete(doc, "labels")
	if got := at(t, doc, [3]string{"dual_supply", "inverter", "always"}); got != "dual_supply@INV1 [/labels]" {
		t.Errorf("places %q", got)
	}
}

func TestPlacesAlongCables(t *testing.T) {
	if got := at(t, route(list{stretch(5)}, 2)); got != "dc_cable@R1 true L0" {
		t.Errorf("places %q", got)
	}
}

// TestPlacesOnce makes sure that no place has the id of another, whatever the
// table repeats.
func TestPlacesOnce(t *testing.T) {
	row := [3]string{"dual_supply", "main_board", "always"}
	var ids []string
	for _, p := range derive(t, site(), figures(row, row, [3]string{"dual_supply", "pv_board", "always"})).Places {
		ids = append(ids, p.ID)
	}
	slices.Sort(ids)
	if len(slices.Compact(ids)) != len(ids) {
		t.Errorf("ids %v", ids)
	}
}

// A second table adds to the first.
func TestTablesAdd(t *testing.T) {
	b := figures([3]string{"dual_supply", "inverter", "always"})
	more := *b.Tables["labels"]
	more.Name, more.Rows = "labels_house", []map[string]any{{"legend": "fire_sign_pv", "place": "inverter", "due": "always"}}
	b.Tables["labels_house"] = &more
	other := more
	b.Tables["labelsother"] = &other
	var ids []string
	for _, p := range derive(t, site(), b).Places {
		if strings.HasSuffix(p.ID, "@INV1") {
			ids = append(ids, p.ID)
		}
	}
	if !slices.Equal(ids, []string{"dual_supply@INV1", "fire_sign_pv@INV1"}) {
		t.Errorf("places %v", ids)
	}
}

func TestOnFixedPart(t *testing.T) {
	for _, c := range []struct {
		carriers []string
		want     string
	}{
		{[]string{"fixed_part"}, "true"}, {[]string{"removable_cover"}, "false"}, {[]string{"removable_cover", "wall_beside"}, "true"},
		{[]string{"door_inside"}, "false"}, {[]string{""}, "[/labels/0/fixed_to]"}, {[]string{"", "fixed_part"}, "true"}, {nil, "false"},
	} {
		var labels []object
		for _, w := range c.carriers {
			l := on("INV1")
			if w != "" {
				l["fixed_to"] = w
			}
			labels = append(labels, l)
		}
		p := derive(t, put(site(), labels...), figures([3]string{"dual_supply", "inverter", "always"})).Places[0]
		if got := facttest.Shown(p.OnFixed); got != c.want {
			t.Errorf("carriers %v: on a fixed part %s, want %s", c.carriers, got, c.want)
		}
	}
}
