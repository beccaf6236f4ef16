package commissioning_test

import (
	"strings"
	"testing"

	"sunclause/facts/book"
	"sunclause/facts/facttest"
)

func TestFits(t *testing.T) {
	doc := site(module(), 10)
	doc["datasheets"].(object)["inverters"] = object{"inv": object{"dc_voltage_max_v": 600, "ac_power_rated_w": 3600, "phases": 1, "mppts": list{object{}}}}
	doc["inverters"] = list{object{"id": "INV1", "datasheet": "inv"}}
	record(doc)["instruments"] = list{object{"id": "I1", "kind": "pv_tester"}, object{"id": "I2", "kind": "torque_wrench"}}
	first, second := object{"id": "F1", "test": "loss_of_mains", "part": "INV1", "instrument": "I1"}, object{"id": "F2", "test": "spd_indicator", "part": "INV1"}
	record(doc)["functional"] = list{first, second}
	b := figures(0.04)
	b.Tables["fits"] = &book.Table{Rows: []map[string]any{
		{"fit": "tests", "title": "each test", "path": "/commissioning/functional/test=loss_of_mains/part", "kinds": "inverter battery"},
		{"fit": "instruments", "title": "each instrument", "path": "/commissioning/functional/*/instrument", "kinds": "instrument.pv_tester"},
		{"fit": "tests", "path": "/commissioning/functional/test=spd_indicator/part", "kinds": "spd"},
		{"fit": "words", "title": "each word", "path": "/commissioning/functional/*/test", "words": "loss_of_mains spd_indicator"},
		{"fit": "any", "title": "any kind", "path": "/commissioning/functional/*/instrument", "kinds": "instrument"},
	}}
	holds := func(says string, want ...float64) string {
		var names []string
		for i, f := range derive(t, doc, b).Fits {
			facttest.Is(t, says+": "+f.ID, f.Misfits, want[i])
			names = append(names, f.Name)
		}
		return strings.Join(names, "\n")
	}
	names := holds("a test of another part", 1, 0, 0, 0)
	if want := "each test: commissioning.functional[1].part is INV1, inverter\neach instrument\neach word\nany kind"; names != want {
		t.Errorf("they are called\n%s, want\n%s", names, want)
	}
	second["test"] = "storage_shutdown"
	first["instrument"] = "I2"
	holds("another instrument, and another word", 0, 1, 1, 0)
	first["test"], second["instrument"] = "spd_indicator", "I2"
	holds("two instruments", 1, 2, 1, 0)
	b.Tables["fits"].Rows = []map[string]any{
		{"fit": "never", "title": "never", "path": "/commissioning/functional/test=spd_indicator/id"},
		{"fit": "where", "title": "where", "path": "/commissioning/functional/test=spd_indicator/id", "where": "/spds/*/id"},
		{"fit": "unless", "title": "unless", "path": "/commissioning/functional/test=spd_indicator/id", "unless": "/inverters/*/id"},
	}
	facttest.Wants(t, "where nobody knows", derive(t, doc, b).Fits[1].Misfits, "/spds")
	doc["spds"] = list{}
	holds("what may not be", 1, 0, 0)
	doc["datasheets"].(object)["spds"] = object{"spd": object{"type": "T2"}}
	doc["spds"], doc["inverters"] = list{object{"id": "SPD1", "datasheet": "spd", "connected_at": "S1"}}, list{}
	delete(first, "part")
	delete(second, "part")
	holds("what may not be beside another", 1, 1, 1)
	delete(b.Tables, "fits")
	holds("without the table")
}
