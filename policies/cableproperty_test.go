package policies_test

import (
	"maps"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"sunclause/facts"
	"sunclause/facts/working"
)

var (
	sizes      = []float64{1.5, 2.5, 4, 6, 10, 16, 25, 35, 50}
	kinds      = []string{"solar_single_core", "single_core_sheathed", "multicore", "flat_twin_and_earth", "armoured"}
	cableWays  = []string{"A1", "A2", "B1", "B2", "C", "D1", "D2", "E", "F", "free_air", "101", "103"}
	formations = []string{"single", "touching", "flat_touching", "trefoil", "flat_spaced_horizontal"}
	places     = []string{"behind_modules", "roof_surface", "roof_space", "indoors_surface", "underground", "outdoor_wall"}
	layings    = []string{"bunched", "single_layer_surface", "single_layer_under_ceiling", "single_layer_perforated_tray", "single_layer_ladder"}
)

// tenths draws a number with one decimal.
func tenths(t *rapid.T, from, to int, name string) float64 {
	return float64(rapid.IntRange(from, to).Draw(t, name)) / 10
}

// anyJob draws a run that the tables may or may not know.
func anyJob(t *rapid.T) job {
	kind := rapid.SampledFrom(kinds).Draw(t, "kind")
	service := rapid.SampledFrom([]string{"ac", "pv_string"}).Draw(t, "service")
	insulation := rapid.SampledFrom([]string{"pvc", "xlpe", "epr", "crosslinked_polyolefin"}).Draw(t, "insulation")
	cores := map[bool]float64{true: 2, false: 1}[kind == "multicore" || kind == "flat_twin_and_earth" || kind == "armoured"]
	return job{
		service: service, amps: tenths(t, 10, 600, "amps"), isc: 14, vmp: 400, strings: 1,
		cable: object{"kind": kind, "csa_mm2": rapid.SampledFrom(sizes).Draw(t, "size"), "conductor": "copper", "conductor_class": 2, "tinned": rapid.Bool().Draw(t, "tinned"),
			"cores": cores, "insulation": insulation, "conductor_max_c": map[bool]float64{true: 70, false: 90}[insulation == "pvc"], "cpc_csa_mm2": 1.5},
		segment: object{
			"length_m": tenths(t, 10, 1000, "length"), "place": rapid.SampledFrom(places).Draw(t, "place"), "method": rapid.SampledFrom(cableWays).Draw(t, "method"),
			"formation": rapid.SampledFrom(formations).Draw(t, "formation"), "ambient_c": tenths(t, -100, 600, "ambient"), "in_direct_sun": rapid.Bool().Draw(t, "sun"),
			"grouped_circuits": rapid.IntRange(1, 20).Draw(t, "grouped"), "grouped_lightly_loaded": rapid.IntRange(0, 2).Draw(t, "light"),
			"group_arrangement": rapid.SampledFrom(layings).Draw(t, "laying"), "group_spacing_diameters": tenths(t, 0, 40, "gap"),
			"thermal_insulation": rapid.SampledFrom([]string{"none", "surrounded"}).Draw(t, "lagging"), "thermal_insulation_length_mm": rapid.IntRange(1, 700).Draw(t, "lagged"),
			"ground_c": tenths(t, 50, 400, "ground"), "soil_resistivity_k_m_per_w": tenths(t, 5, 30, "soil"),
		},
	}
}

// next is the size above, or the same at the end of the list.
func next(size any) float64 {
	i := slices.Index(sizes, size.(float64))
	return sizes[min(i+1, len(sizes)-1)]
}

func less(o object, name string, by float64) object {
	switch v := o[name].(type) {
	case int:
		return with(o, object{name: max(1, v-int(by))})
	case float64:
		return with(o, object{name: v - by})
	}
	return o
}

// Thicker, shorter, cooler, less grouped, less lagged, in drier soil the worse:
// each change for the better never makes capacity, drop or loop worse.
func TestCablePropertyBetterIsNeverWorse(t *testing.T) {
	for _, set := range []string{"iec", "gb"} {
		for name, better := range map[string]func(job) job{
			"thicker":      func(j job) job { j.cable = with(j.cable, object{"csa_mm2": next(j.cable["csa_mm2"])}); return j },
			"shorter":      func(j job) job { j.segment = less(j.segment, "length_m", 0.5); return j },
			"cooler":       func(j job) job { j.segment = less(j.segment, "ambient_c", 7); return j },
			"cool ground":  func(j job) job { j.segment = less(j.segment, "ground_c", 7); return j },
			"less grouped": func(j job) job { j.segment = less(j.segment, "grouped_circuits", 1); return j },
			"less lagged":  func(j job) job { j.segment = less(j.segment, "thermal_insulation_length_mm", 60); return j },
			"wider apart":  func(j job) job { j.segment = less(j.segment, "group_spacing_diameters", -1); return j },
			"out of sun":   func(j job) job { j.segment = with(j.segment, object{"in_direct_sun": false}); return j },
			"less current": func(j job) job { j.amps--; return j },
		} {
			t.Run(set+" "+name, rapid.MakeCheck(func(rt *rapid.T) {
				j := anyJob(rt)
				before, after := runOf(t, derive(t, set, j.document()), "R1"), runOf(t, derive(t, set, better(j).document()), "R1")
				notWorse(rt, before, after, 1e-9)
			}))
		}
	}
}

func notWorse(t *rapid.T, before, after *facts.Run, slack float64) {
	for _, c := range []struct {
		name       string
		worse, now working.Number // the first must not be below the second
	}{
		{"capacity", after.CapacityA, before.CapacityA}, {"drop", before.DropV, after.DropV}, {"loop", before.LoopOhm, after.LoopOhm},
	} {
		if c.worse.Known() && c.now.Known() && c.worse.Value() < c.now.Value()*(1-slack) {
			t.Errorf("%s became worse: %v against %v", c.name, c.worse.Value(), c.now.Value())
		}
	}
}

// Leaving a member out never makes a cable look better: the facts become
// unknown, or worse, or stay.
func TestCablePropertySilence(t *testing.T) {
	for _, set := range []string{"iec", "gb"} {
		t.Run(set, rapid.MakeCheck(func(rt *rapid.T) {
			j := anyJob(rt)
			j.run = object{"conductors_per_pole": rapid.IntRange(1, 2).Draw(rt, "many")}
			doc := j.document()
			full := runOf(t, derive(t, set, doc), "R1")
			silent := runOf(t, derive(t, set, silenced(rt, doc)), "R1")
			for _, c := range []struct {
				name  string
				a, b  working.Number
				raise bool
			}{
				{"capacity", full.CapacityA, silent.CapacityA, false}, {"design current", full.DesignCurrentA, silent.DesignCurrentA, true},
				{"drop", full.DropV, silent.DropV, true}, {"loop", full.LoopOhm, silent.LoopOhm, true},
			} {
				if !c.b.Known() {
					continue
				}
				if !c.a.Known() || c.raise && c.b.Value() < c.a.Value() || !c.raise && c.b.Value() > c.a.Value() {
					rt.Errorf("%s: %v (known %t) became %v", c.name, c.a.Value(), c.a.Known(), c.b.Value())
				}
			}
		}))
	}
}

// silenced leaves one member of the run, its stretch or its cable out.
func silenced(t *rapid.T, doc object) object {
	run := with(doc["cables"].(list)[0].(object), nil)
	segment := with(run["segments"].(list)[0].(object), nil)
	cable := with(doc["datasheets"].(object)["cables"].(object)["c"].(object), nil)
	names := slices.Sorted(maps.Keys(segment))
	for _, m := range slices.Sorted(maps.Keys(cable)) {
		if m != "csa_mm2" {
			names = append(names, "c."+m)
		}
	}
	names = append(names, "r.conductors_per_pole", "r.cable", "r.segments")
	left := rapid.SampledFrom(names).Draw(t, "left out")
	run["segments"] = list{segment}
	switch {
	case left[:2] == "c.":
		delete(cable, left[2:])
	case left[:2] == "r.":
		delete(run, left[2:])
	default:
		delete(segment, left)
	}
	rest := slices.Clone(doc["cables"].(list))
	rest[0] = run
	sheets := with(doc["datasheets"].(object), object{"cables": object{"c": cable}})
	return with(doc, object{"cables": rest, "datasheets": sheets})
}
