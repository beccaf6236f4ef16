package pvstring_test

import (
	"fmt"
	"testing"

	"sunclause/facts/book"
	"sunclause/facts/facttest"
	"sunclause/facts/pvstring"
	"sunclause/facts/working"
)

// onPlanes puts the strings of a plant on roof planes that face the azimuths.
func onPlanes(doc object, azimuths ...float64) object {
	planes := list{}
	for i, a := range azimuths {
		id := string(rune('A' + i))
		planes = append(planes, object{"id": id, "azimuth_deg": a, "pitch_deg": 30 + float64(i)})
		facttest.At(doc, "strings", i)["plane"] = id
	}
	doc["roof"] = object{"planes": planes}
	return doc
}

func TestWidestAngle(t *testing.T) {
	for _, c := range []struct {
		name     string
		azimuths []float64
		want     float64
	}{
		{"across north", []float64{350, 10}, 20},
		{"the same written twice", []float64{0, 360}, 0},
		{"east and west", []float64{90, 270}, 180},
		{"widest of three", []float64{350, 10, 100}, 110},
		{"one string", []float64{135}, 0},
	} {
		t.Run(c.name, func(t *testing.T) {
			f := derive(t, onPlanes(plant(m1(), 10, len(c.azimuths)), c.azimuths...), rules("coefficient"))
			facttest.Near(t, "azimuth spread", f.Mppts[0].AzimuthSpreadDeg, c.want, 1e-9)
			facttest.Near(t, "pitch spread", f.Mppts[0].PitchSpreadDeg, float64(len(c.azimuths)-1), 1e-9)
			facttest.Near(t, "planes", f.Mppts[0].Planes, float64(len(c.azimuths)), 0)
		})
	}
}

func TestPlaneNotStated(t *testing.T) {
	doc := onPlanes(plant(m1(), 10, 2), 180, 180)
	delete(facttest.At(doc, "strings", 1), "plane")
	m := derive(t, doc, rules("coefficient")).Mppts[0]
	for what, n := range map[string]working.Number{"planes": m.Planes, "azimuths": m.AzimuthSpreadDeg, "pitches": m.PitchSpreadDeg} {
		facttest.Wants(t, what, n, "/strings/1/plane")
	}
	facttest.Near(t, "module types", m.ModuleTypes, 1, 0)
}

func TestStringsThatDoNotMatch(t *testing.T) {
	doc := plant(m1(), 10, 3)
	facttest.At(doc, "strings", 1)["modules_in_series"] = 9
	facttest.At(doc, "datasheets", "modules")["N"] = with(m1(), object{"isc_a": 10.5, "imp_a": 9.9})
	facttest.At(doc, "strings", 2)["module"] = "N"
	f := derive(t, doc, rules("coefficient"))
	m := f.Mppts[0]
	facttest.Near(t, "series spread", m.SeriesSpread, 1, 0)
	facttest.Near(t, "voltage mismatch: 9 modules against 10", m.VocMismatchPct, 10, 1e-9)
	facttest.Near(t, "module types", m.ModuleTypes, 2, 0)
	facttest.Near(t, "strings in parallel", m.StringsParallel, 3, 0)
	facttest.Near(t, "greatest voltage", m.VocMaxV, 544.5, 1e-9)
	facttest.Near(t, "short-circuit current", m.IscStcA, 13.9+13.9+10.5, 1e-9)
	facttest.Near(t, "reverse current into the first", f.Strings[0].ReverseA, 13.9+10.5, 1e-9)
	facttest.Near(t, "reverse current into the unlike one", f.Strings[2].ReverseA, 2*13.9, 1e-9)
	facttest.Near(t, "reverse design current into the unlike one", f.Strings[2].ReverseMaxA, 2*1.25*13.9, 1e-9)
	facttest.Near(t, "power of the array", f.Inverters[0].DcPowerW, 29*540, 1e-9)
	facttest.Near(t, "DC over AC", f.Inverters[0].DcAcRatio, 29*540/5000.0, 1e-9)
}

func TestInputWithoutStrings(t *testing.T) {
	m := derive(t, plant(m1(), 10, 1), rules("coefficient")).Mppts[1]
	facttest.Near(t, "strings in parallel", m.StringsParallel, 0, 0)
	facttest.Near(t, "design current", m.IscMaxA, 0, 0)
	facttest.Wants(t, "greatest voltage", m.VocMaxV)
	facttest.Wants(t, "series spread", m.SeriesSpread)
	facttest.Wants(t, "rated current", m.IscRatedA, "/datasheets/inverters/I/mppts/1/isc_max_a")
}

// One string that was not traced may feed any input, so that nothing can be
// said of what any of them carries.
func TestUntracedString(t *testing.T) {
	doc := plant(m1(), 10, 2)
	doc["cables"] = list{doc["cables"].(list)[0]}
	f := derive(t, doc, rules("coefficient"))
	for _, m := range f.Mppts {
		facttest.Wants(t, m.ID+" strings in parallel", m.StringsParallel, "/cables")
		facttest.Wants(t, m.ID+" design current", m.IscMaxA, "/cables")
		facttest.Wants(t, m.ID+" voltage", m.VocMaxV, "/cables")
		if m.Strings.Known() {
			t.Errorf("%s: strings %v are known", m.ID, m.Strings.Values())
		}
	}
	for i := range f.Strings {
		facttest.Wants(t, f.Strings[i].ID+" strings in parallel", f.Strings[i].StringsParallel, "/cables")
		facttest.Wants(t, f.Strings[i].ID+" reverse current", f.Strings[i].ReverseA, "/cables")
	}
	facttest.Is(t, "the input of the traced string live with all open", f.Mppts[0].LiveWithAllOpen, true)
	facttest.Wants(t, "the other live with all open", f.Mppts[1].LiveWithAllOpen, "/cables")
	facttest.Wants(t, "strings of the inverter", f.Inverters[0].Strings, "/cables")
	facttest.Wants(t, "power of the inverter", f.Inverters[0].DcPowerW, "/cables")
	facttest.Wants(t, "DC over AC", f.Inverters[0].DcAcRatio, "/cables")
	facttest.Near(t, "the traced string keeps its input's limit", f.Strings[0].MpptMaxV, 850, 0)
	facttest.Wants(t, "the other has none", f.Strings[1].MpptMaxV, "/cables")
}

func TestPartsNotStated(t *testing.T) {
	without := func(member string) pvstring.Facts {
		doc := plant(m1(), 10, 2)
		delete(doc, member)
		if member == "inverters" || member == "strings" {
			doc["cables"] = list{}
		}
		return derive(t, doc, rules("coefficient"))
	}
	if f := without("strings"); f.Strings != nil {
		t.Error("strings were not stated, and yet there are facts of them")
	} else {
		facttest.Wants(t, "strings in parallel", f.Mppts[0].StringsParallel, "/strings")
	}
	f := without("inverters")
	if f.Mppts != nil || f.Inverters != nil {
		t.Error("inverters were not stated, and yet there are facts of them")
	}
	facttest.Wants(t, "tracking range", f.Strings[0].MpptMinV, "/inverters")
	facttest.Wants(t, "reverse current", f.Strings[0].ReverseA, "/inverters")
	if len(f.Untraced) != 1 || f.Untraced[0].At != "/inverters" {
		t.Errorf("untraced, missing %v, want /inverters once", f.Untraced)
	}
	facttest.Wants(t, "strings in parallel", without("cables").Mppts[0].StringsParallel, "/cables")
}

func TestBifacialModules(t *testing.T) {
	current := func(members object, b book.Book) working.Number {
		module := with(m1(), members)
		if members["bifacial"] == nil {
			delete(module, "bifacial")
		}
		return derive(t, plant(module, 10, 1), b).Strings[0].IscMaxA
	}
	b := rules("coefficient")
	facttest.Near(t, "not bifacial", current(object{"bifacial": false}, b), 17.375, 0)
	facttest.Near(t, "bifacial: 1.25 · 13.9 · (1 + 0.7 · 135 / 1000)", current(object{"bifacial": true, "bifaciality_fraction": 0.7}, b), 17.375*1.0945, 1e-9)
	facttest.Wants(t, "bifacial or not", current(object{}, b), "/datasheets/modules/M/bifacial")
	facttest.Wants(t, "bifaciality", current(object{"bifacial": true}, b), "/datasheets/modules/M/bifaciality_fraction")
	delete(b.Parameters, "rear_irradiance_w_per_m2")
	facttest.Wants(t, "rear irradiance", current(object{"bifacial": true, "bifaciality_fraction": 0.7}, b), "the rule set has no parameter rear_irradiance_w_per_m2")
}

// Nobody can say which of two inputs a string feeds, or by which of two runs.
func TestAmbiguousString(t *testing.T) {
	for _, to := range []string{"INV1.1", "INV1.2"} {
		doc := plant(m1(), 10, 1)
		doc["cables"] = append(doc["cables"].(list), object{"id": "R9", "from": "S1", "to": to, "service": "pv_string"})
		f := derive(t, doc, rules("coefficient"))
		s := &f.Strings[0]
		if s.Mppt.Known() {
			t.Errorf("a second run to %s: the string is said to feed %s", to, s.Mppt.Value())
		}
		for what, n := range map[string]working.Number{"isolators in the path": s.IsolatorsInPath, "tracking range": s.MpptMinV, "strings of the input": f.Mppts[0].StringsParallel} {
			if got := fmt.Sprint(n.Missing()); got != "[/cables/0 several_answers R1, R9]" {
				t.Errorf("a second run to %s: %s wants %s", to, what, got)
			}
		}
	}
}
