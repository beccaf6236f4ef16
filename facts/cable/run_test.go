package cable_test

import (
	"slices"
	"testing"

	"sunclause/facts/cable"
	"sunclause/facts/facttest"
)

type object = map[string]any

type list = []any

// roof is two strings put in parallel, with a bonding conductor from the first.
func roof() object {
	return object{
		"project": object{"reference": "test", "stage": "design", "country": "GB"},
		"datasheets": object{
			"modules":   object{"M": facttest.Module()},
			"inverters": object{"I": object{"dc_voltage_max_v": 1000, "mppts": list{object{}}, "ac_power_rated_w": 5000, "phases": 1}},
		},
		"strings":   list{object{"id": "S1", "module": "M", "modules_in_series": 10}, object{"id": "S2", "module": "M", "modules_in_series": 9}},
		"arrays":    list{object{"id": "A1", "ways": 2}},
		"inverters": list{object{"id": "INV1", "datasheet": "I"}},
		"cables": list{
			object{"id": "R1", "from": "S1", "to": "A1.1", "service": "pv_string", "segments": list{object{"length_m": 12.5}, object{"length_m": 0.1}, object{"length_m": 0.2}}},
			object{"id": "R2", "from": "S2", "to": "A1.2", "service": "pv_string", "segments": list{object{"length_m": 4}, object{}}},
			object{"id": "R3", "from": "A1.out", "to": "INV1.1", "service": "pv_array"},
			object{"id": "R4", "from": "S1", "to": "INV1", "service": "bonding"},
		},
	}
}

func derive(t *testing.T, doc object) []cable.Run {
	t.Helper()
	return deriveAll(t, doc).Runs
}

func deriveAll(t *testing.T, doc object) cable.Facts {
	t.Helper()
	b := facttest.Book(map[string]any{"voltage_method": "factor", "voc_factor": 1.15, "isc_factor": 1.25})
	return facttest.Derive(t, doc, b).Cables
}

func TestWhatRunsCarry(t *testing.T) {
	runs := derive(t, roof())
	for i, want := range []struct {
		strings       []string
		voc, isc, imp float64
	}{{[]string{"S1"}, 569.25, 17.375, 13.1}, {[]string{"S2"}, 512.325, 17.375, 13.1}, {[]string{"S1", "S2"}, 569.25, 34.75, 26.2}} {
		r := runs[i]
		if !slices.Equal(r.Strings.Values(), want.strings) || r.StringsParallel.Value() != float64(len(want.strings)) {
			t.Errorf("%s carries %v, %v in parallel, want %v", r.ID, r.Strings.Values(), r.StringsParallel.Value(), want.strings)
		}
		if r.VocMaxV.Value() != want.voc || r.IscMaxA.Value() != want.isc || r.ImpA.Value() != want.imp {
			t.Errorf("%s: %v V, %v A, %v A, want %v V, %v A, %v A", r.ID, r.VocMaxV.Value(), r.IscMaxA.Value(), r.ImpA.Value(), want.voc, want.isc, want.imp)
		}
		if !r.LiveWithAllOpen.Value() {
			t.Errorf("%s is not live, and nothing opens it", r.ID)
		}
	}
	if r := runs[3]; len(r.Strings.Values()) != 0 || !r.LiveWithAllOpen.Known() || r.LiveWithAllOpen.Value() {
		t.Errorf("the bonding conductor carries %v, live %t", r.Strings.Values(), r.LiveWithAllOpen.Value())
	}
}

func TestLength(t *testing.T) {
	runs := derive(t, roof())
	if l := runs[0].LengthM; l.Value() != 12.8 {
		t.Errorf("12.5 + 0.1 + 0.2 m = %v m", l.Value())
	}
	for i, want := range map[int]string{1: "/cables/1/segments/1/length_m", 2: "/cables/2/segments"} {
		facttest.Wants(t, "length of "+runs[i].ID, runs[i].LengthM, want)
	}
}

// A string that was not traced may lie on any run of the PV side.
func TestUntraced(t *testing.T) {
	doc := roof()
	doc["strings"] = append(doc["strings"].(list), object{"id": "S3", "module": "M", "modules_in_series": 9})
	runs := derive(t, doc)
	for _, r := range runs[:3] {
		if r.Strings.Known() || r.StringsParallel.Known() || r.VocMaxV.Known() || r.IscMaxA.Known() || r.IscStcA.Known() || r.ImpA.Known() {
			t.Errorf("%s: what it carries is known, though S3 was not traced", r.ID)
		}
	}
	delete(doc, "inverters")
	doc["cables"] = doc["cables"].(list)[:2]
	for _, r := range derive(t, doc) {
		facttest.Wants(t, "without an inverter, current of "+r.ID, r.IscMaxA, "/inverters")
	}
}
