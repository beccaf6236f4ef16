package label_test

import (
	"fmt"

	"sunclause/facts/book"
	"sunclause/facts/facttest"
	"sunclause/facts/label"
)

type object = map[string]any

type list = []any

// figures are those that the tests need, with one row of the label table for
// each line given as legend, place and due.
func figures(rows ...[3]string) book.Book {
	b := facttest.Book(map[string]any{
		"voltage_method": "factor", "voc_factor": 1.15, "isc_factor": 1.25,
		"label_spacing_straight_max_m": 10.0, "label_spacing_other_max_m": 5.0, "label_beside_turn_max_m": 1.0})
	t := &book.Table{Name: "labels", Set: "test"}
	for _, r := range append(rows, [3]string{"dc_cable", "pv_cable", "always"}) {
		t.Rows = append(t.Rows, map[string]any{"legend": r[0], "place": r[1], "due": r[2]})
	}
	b.Tables[t.Name] = t
	return b
}

// site is one string of ten modules on an inverter, with one DC isolator that
// opens both conductors between them and one on the AC side, a meter and a main
// board. By the factor 1.15 the string has 569.25 V; its design current is
// 17.375 A (worked example: 10 modules of 49.5 V and 13.9 A).
func site() object {
	return object{
		"project": object{"reference": "test", "stage": "as_built", "country": "GB", "premises": "dwelling"},
		"datasheets": object{
			"modules":   object{"M": facttest.Module()},
			"inverters": object{"I": object{"dc_voltage_max_v": 1000, "mppts": list{object{}}, "ac_power_rated_w": 5000, "phases": 1, "backup_output": false, "discharge_wait_min": 5}},
		},
		"strings":   list{object{"id": "S1", "module": "M", "modules_in_series": 10}},
		"inverters": list{object{"id": "INV1", "datasheet": "I"}},
		"isolators": list{
			object{"id": "ISO1", "circuit": "pv_dc", "ways": list{object{"id": "1", "conductors_opened": "both"}}},
			object{"id": "ISO2", "circuit": "ac", "ways": list{object{"id": "1", "conductors_opened": "line_and_neutral"}}},
		},
		"cables": list{
			object{"id": "R1", "from": "S1", "to": "ISO1.1.in", "service": "pv_string"},
			object{"id": "R2", "from": "ISO1.1.out", "to": "INV1.1", "service": "pv_string"},
			object{"id": "R3", "from": "INV1.ac", "to": "ISO2.1.in", "service": "ac"},
			object{"id": "R4", "from": "ISO2.1.out", "to": "B1.1", "service": "ac"},
		},
		"ac": object{
			"supply":      object{"id": "SUP"},
			"meters":      list{object{"id": "M1", "joined_in": "SUP", "joined_out": "B1.in"}},
			"boards":      list{object{"id": "B1", "role": "main", "ways": list{object{"id": "1", "serves": "pv_supply"}}}},
			"changeovers": list{},
		},
		"labels": list{},
	}
}

func derive(t facttest.T, doc object, b book.Book) label.Facts {
	t.Helper()
	r := facttest.Derive(t, doc, b)
	return label.Derive(r.Installation, r.Circuit, r.Strings, r.Cables, b)
}

// stretch is a segment of a run in which people see the cable and wonder.
func stretch(length float64, more ...object) object {
	s := object{"length_m": length, "place": "roof_space", "straight": true, "visible": true, "function_evident": false, "ends_at": "enclosure"}
	for _, m := range more {
		for k, v := range m {
			if s[k] = v; v == nil {
				delete(s, k)
			}
		}
	}
	return s
}

// route is the site with segments on the run from the string, and warnings
// along it.
func route(segments list, at ...float64) object {
	doc := site()
	doc["cables"].(list)[0].(object)["segments"] = segments
	labels := list{}
	for i, x := range at {
		labels = append(labels, object{"id": fmt.Sprintf("L%d", i), "legend": "dc_cable", "run": "R1", "position_m": x})
	}
	doc["labels"] = labels
	return doc
}
