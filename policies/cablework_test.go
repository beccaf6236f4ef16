package policies_test

import (
	"encoding/json"
	"fmt"
	"maps"
	"math"
	"slices"
	"sync"
	"testing"

	"sunclause/facts"
	"sunclause/facts/book"
	"sunclause/facts/working"
	"sunclause/schema"
)

type object = map[string]any

type list = []any

// job is one run of cable with what decides its facts: enough of an
// installation to work out a printed example.
type job struct {
	service    string
	cable      object  // datasheet
	protective object  // datasheet of a separate protective conductor
	amps       float64 // of the inverter on AC, of the string at maximum power on DC
	isc        float64
	vmp        float64
	strings    int // in parallel on one input, each through a run of its own; 1 when left out
	phases     float64
	run        object
	segment    object
}

var (
	solar4 = object{"kind": "solar_single_core", "csa_mm2": 4, "conductor": "copper", "conductor_class": 5, "tinned": true, "insulation": "crosslinked_polyolefin", "conductor_max_c": 90}
	solar6 = with(solar4, object{"csa_mm2": 6})
	flat6  = object{"kind": "flat_twin_and_earth", "csa_mm2": 6, "cpc_csa_mm2": 2.5, "conductor": "copper", "conductor_class": 2, "tinned": false, "cores": 2, "insulation": "pvc", "conductor_max_c": 70}
	three4 = object{"kind": "multicore", "csa_mm2": 4, "conductor": "copper", "conductor_class": 2, "tinned": false, "cores": 4, "insulation": "xlpe", "conductor_max_c": 90}
	plain  = object{"length_m": 10, "place": "indoors_surface", "method": "C", "formation": "touching", "ambient_c": 30, "in_direct_sun": false, "thermal_insulation": "none", "grouped_circuits": 1, "group_arrangement": "bunched"}
)

func with(o, more object) object {
	m := maps.Clone(o)
	maps.Copy(m, more)
	return m
}

// document is the job as an installation. The run that it is about is R1.
func (j job) document() object {
	run := with(object{"id": "R1", "service": j.service, "cable": "c", "conductors_per_pole": 1, "protective_in_service": true, "segments": list{with(plain, j.segment)}}, j.run)
	cables := object{"c": j.cable}
	if j.protective != nil {
		cables["p"], run["protective_cable"] = j.protective, "p"
	}
	amps, phases := max(j.amps, 1), max(j.phases, 1)
	doc := object{
		"project": object{"reference": "test", "stage": "design", "country": "GB"},
		"site":    object{"temp_min_c": -10, "temp_max_c": 30},
		"datasheets": object{
			"cables":    cables,
			"modules":   object{"m": object{"technology": "mono_si", "pmax_w": 540, "voc_v": 50, "isc_a": max(j.isc, 1), "vmp_v": max(j.vmp, 1), "imp_a": amps, "bifacial": false}},
			"inverters": object{"i": object{"dc_voltage_max_v": 1000, "mppts": list{object{"voltage_min_v": 100}}, "ac_power_rated_w": 5000, "ac_current_max_a": amps, "phases": phases}},
		},
		"inverters": list{object{"id": "INV1", "datasheet": "i"}},
		"storage":   object{"batteries": list{}},
		"ac": object{"existing_generation": list{}, "boards": list{object{"id": "B1", "role": "main", "joined_in": "SUP", "ways": list{object{"id": "1"}}}},
			"supply": object{"id": "SUP", "form": map[bool]string{true: "three_phase", false: "single_phase"}[phases == 3], "phases": phases, "voltage_v": 230, "voltage_between_lines_v": 400}},
	}
	if j.service == "ac" {
		doc["cables"] = list{with(run, object{"from": "INV1.ac", "to": "B1.1"})}
		return doc
	}
	n := max(j.strings, 1)
	doc["arrays"] = list{object{"id": "A1", "ways": n}}
	var strings, runs list
	for i := range n {
		id := string(rune('1' + i))
		strings = append(strings, object{"id": "S" + id, "module": "m", "modules_in_series": 1, "overcurrent": object{"fitted": false}})
		runs = append(runs, with(run, object{"id": "R" + id, "from": "S" + id, "to": "A1." + id}))
	}
	doc["strings"] = strings
	doc["cables"] = append(runs, with(run, object{"id": "RA", "from": "A1.out", "to": "INV1.1", "service": "pv_array"}))
	return doc
}

// bookOf loads the figures of a set once.
func bookOf(t testing.TB, set string) book.Book {
	t.Helper()
	b, ok := books.Load(set)
	if !ok {
		b, _ = books.LoadOrStore(set, load(t, set).Book)
	}
	return b.(book.Book)
}

var books sync.Map // by set

// derive works the facts of a job out by the figures of a set.
func derive(t testing.TB, set string, doc object) *facts.Facts {
	t.Helper()
	text, err := json.Marshal(doc)
	if err != nil {
		t.Fatal(err)
	}
	d, err := schema.Decode("job", text)
	if err != nil {
		t.Fatal(err)
	}
	return facts.Derive(&d.Installation, bookOf(t, set))
}

// runOf finds a run, segmentOf the first stretch of one.
func runOf(t testing.TB, f *facts.Facts, id string) *facts.Run {
	t.Helper()
	i := slices.IndexFunc(f.Runs, func(r facts.Run) bool { return r.ID == id })
	if i < 0 {
		t.Fatalf("there is no run %s", id)
	}
	return &f.Runs[i]
}

const (
	resistances60228 = "IEC 60228:2004, table 3 with α = 0.00393/K"
	tables7671       = "BS 7671:2018+A2:2022, appendix 4"
	solar50618       = "EN 50618:2014, tables A.3 and A.4, with IEC 60364-5-52 table B.52.17"
	adiabatic43      = "IEC 60364-4-43, 434.5.2"
	own              = "worked out by hand from the tables named"
)

func TestWorkedCables(t *testing.T) {
	capacity := func(r *facts.Run) working.Number { return r.CapacityA }
	design := func(r *facts.Run) working.Number { return r.DesignCurrentA }
	drop := func(r *facts.Run) working.Number { return r.DropV }
	pct := func(r *facts.Run) working.Number { return r.DropPct }
	loop := func(r *facts.Run) working.Number { return r.LoopOhm }
	bears := func(r *facts.Run) working.Number { return r.WithstandA2s }
	protects := func(r *facts.Run) working.Number { return r.ProtectiveA2s }
	two10 := object{"kind": "multicore", "csa_mm2": 10, "conductor": "copper", "conductor_class": 2, "tinned": false, "cores": 2, "insulation": "pvc", "conductor_max_c": 70}
	single10 := with(two10, object{"kind": "single_core_sheathed", "cores": 1})
	armoured := with(three4, object{"kind": "armoured", "armour": "steel", "armour_csa_mm2": 23})
	big := with(armoured, object{"csa_mm2": 240, "ratings": list{object{"method": "E", "loaded_conductors": 3, "current_a": 441, "ambient_c": 30, "conductor_c": 70}, object{"method": "E", "loaded_conductors": 3, "current_a": 538, "ambient_c": 30, "conductor_c": 90}}})
	hot3 := object{"place": "roof_space", "ambient_c": 70, "grouped_circuits": 3}
	hot2 := object{"place": "roof_space", "ambient_c": 70, "grouped_circuits": 2}
	for _, c := range []struct {
		name, source string
		set          string
		job          job
		run          string
		fact         func(*facts.Run) working.Number
		want, within float64
	}{
		{"6 kW at 230 V", "textbook on electrical installation work, p. 302", "gb", job{service: "ac", cable: two10, amps: 6000 / 230., segment: object{"length_m": 18}}, "R1", design, 26.09, 0.01},
		{"6 kW over 18 m of 10 mm², 4.4 mV/A/m", "textbook on electrical installation work, p. 302", "gb", job{service: "ac", cable: two10, amps: 6000 / 230., segment: object{"length_m": 18}}, "R1", drop, 2.06, 0.021},
		{"three-phase 100 A, 150 m of 35 mm² armoured PVC", "UK distributor's page", "gb", job{service: "ac", phases: 3, amps: 100, cable: with(armoured, object{"csa_mm2": 35, "insulation": "pvc", "conductor_max_c": 70}), segment: object{"length_m": 150}}, "R1", drop, 16.5, 0.08},
		{"32 A over 25 m of 6 mm² twin and earth", "examination question", "gb", job{service: "ac", cable: flat6, amps: 32, segment: object{"length_m": 25}}, "R1", drop, 5.84, 0.012},
		{"the same of 230 V", "examination question", "gb", job{service: "ac", cable: flat6, amps: 32, segment: object{"length_m": 25}}, "R1", pct, 2.54, 0.005},
		{"32 A over 30 m of 6 mm² at 0.0225 Ω·mm²/m", "general UK page; that resistivity is 1.8 % above class 2 at 70 °C", "iec", job{service: "ac", cable: flat6, amps: 32, segment: object{"length_m": 30}}, "R1", drop, 7.2, 0.13},
		{"two 2.5 mm² twin and earth touching on a wall", "forum thread; " + tables7671, "gb", job{service: "ac", cable: with(flat6, object{"csa_mm2": 2.5}), segment: object{"grouped_circuits": 2, "group_arrangement": "single_layer_surface"}}, "R1", capacity, 23, 0.5},
		{"k²S² of 1 mm² PVC", "wiring regulations forum; " + adiabatic43, "iec", job{service: "ac", cable: with(flat6, object{"csa_mm2": 1})}, "R1", bears, 13225, 0},
		{"4 mm², 70 °C, three pairs bunched", solar50618 + "; " + own, "iec", job{service: "pv_string", cable: solar4, isc: 13.9, segment: hot3}, "R1", capacity, 28.34, 0.1},
		{"what it has to carry", own, "iec", job{service: "pv_string", cable: solar4, isc: 13.9, segment: hot3}, "R1", design, 17.375, 0},
		{"100 A over 20 m of single cores of 95 mm², 0.58 mV/A/m", tables7671 + "; " + own, "gb", job{service: "ac", amps: 100, cable: with(single10, object{"csa_mm2": 95, "insulation": "xlpe", "conductor_max_c": 90}), segment: object{"length_m": 20}}, "R1", drop, 1.16, 0},
		{"the same in one cable, 0.52 mV/A/m", tables7671 + "; " + own, "gb", job{service: "ac", amps: 100, cable: with(two10, object{"csa_mm2": 95, "insulation": "xlpe", "conductor_max_c": 90}), segment: object{"length_m": 20}}, "R1", drop, 1.04, 0},
		{"three-phase, single cores of 35 mm² at 70 °C, 1.10 mV/A/m", tables7671 + "; " + own, "gb", job{service: "ac", phases: 3, amps: 100, cable: with(single10, object{"csa_mm2": 35}), segment: object{"length_m": 20}}, "R1", drop, 2.20, 0},
		{"35 mm² at 90 °C, 1.35 mV/A/m", tables7671 + "; " + own, "gb", job{service: "ac", amps: 100, cable: with(two10, object{"csa_mm2": 35, "insulation": "xlpe", "conductor_max_c": 90}), segment: object{"length_m": 20}}, "R1", drop, 2.70, 0},
		{"single-phase with an insulated earth core: as with two cores", tables7671 + "; " + own, "gb", job{service: "ac", cable: with(flat6, object{"cores": 3}), amps: 32, segment: object{"length_m": 25}}, "R1", drop, 5.84, 0.012},
		{"and carries as much", tables7671 + "; " + own, "gb", job{service: "ac", cable: with(flat6, object{"cores": 3})}, "R1", capacity, 47, 0},
		{"25 m of 4 mm², 13 A, 400 V, at 70 °C", resistances60228 + "; " + own, "iec", job{service: "pv_string", cable: solar4, amps: 13, vmp: 400, segment: object{"length_m": 25}}, "R1", drop, 3.959, 0.001},
		{"the same of 400 V", resistances60228 + "; " + own, "iec", job{service: "pv_string", cable: solar4, amps: 13, vmp: 400, segment: object{"length_m": 25}}, "R1", pct, 0.990, 0.001},
		{"the same with 6 mm²", resistances60228 + "; " + own, "iec", job{service: "pv_string", cable: solar6, amps: 13, vmp: 400, segment: object{"length_m": 25}}, "R1", pct, 0.659, 0.001},
		{"three-phase 16 A, 30 m of 2.5 mm² at 90 °C", tables7671 + "; " + own, "gb", job{service: "ac", phases: 3, amps: 16, cable: with(three4, object{"csa_mm2": 2.5}), segment: object{"length_m": 30}}, "R1", drop, 7.68, 0},
		{"of 4 mm²", tables7671 + "; " + own, "gb", job{service: "ac", phases: 3, amps: 16, cable: three4, segment: object{"length_m": 30}}, "R1", drop, 4.80, 0},
		{"of 6 mm², in % of 400 V", tables7671 + "; " + own, "gb", job{service: "ac", phases: 3, amps: 16, cable: with(three4, object{"csa_mm2": 6}), segment: object{"length_m": 30}}, "R1", pct, 0.816, 0},
		{"loop of 20 m of 4/1.5 twin and earth, factor 1.20", own, "gb", job{service: "ac", cable: with(flat6, object{"csa_mm2": 4, "cpc_csa_mm2": 1.5}), segment: object{"length_m": 20}}, "R1", loop, 0.4010, 0.0001},
		{"the same in armour that serves beside it; its resistance is not known", own, "gb", job{service: "ac", cable: with(flat6, object{"csa_mm2": 4, "cpc_csa_mm2": 1.5, "armour": "steel", "armour_csa_mm2": 23}), run: object{"protective_by_armour": true}, segment: object{"length_m": 20}}, "R1", loop, 0.4010, 0.0001},
		// Printed as 0.0216 Ω, a slip of the decimal point: 50 · 3.66 mΩ · 1.2.
		{"loop of 50 m with 3.66 mΩ/m, factor 1.20", "wiring regulations forum, corrected", "gb", job{service: "ac", cable: two10, protective: with(two10, object{"kind": "single_core_unsheathed", "cores": 1}), segment: object{"length_m": 50}}, "R1", loop, 0.2196, 0.0001},
		{"6 mm² twin and earth, 200 mm in insulation", tables7671 + " and table 52.2; " + own, "gb", job{service: "ac", cable: flat6, segment: object{"thermal_insulation": "surrounded", "thermal_insulation_length_mm": 200}}, "R1", capacity, 29.6, 0.1},
		{"600 mm in insulation", tables7671 + " and table 52.2; " + own, "gb", job{service: "ac", cable: flat6, segment: object{"thermal_insulation": "surrounded", "thermal_insulation_length_mm": 600}}, "R1", capacity, 23.5, 0.1},
		{"350 mm goes by 400 mm", tables7671 + " and table 52.2", "gb", job{service: "ac", cable: flat6, segment: object{"thermal_insulation": "surrounded", "thermal_insulation_length_mm": 350}}, "R1", capacity, 23.97, 0.001},
		{"armour of 23 mm² steel, k 46", adiabatic43, "gb", job{service: "ac", phases: 3, cable: armoured, run: object{"protective_by_armour": true}}, "R1", protects, 46 * 46 * 23 * 23, 1},
		{"the same beside a copper conductor of 1 mm², the armour bears more", adiabatic43, "gb", job{service: "ac", phases: 3, cable: armoured, protective: with(two10, object{"csa_mm2": 1, "cores": 1}), run: object{"protective_by_armour": true}}, "R1", protects, 46 * 46 * 23 * 23, 1},
		{"and beside 16 mm², which bears more", adiabatic43, "gb", job{service: "ac", phases: 3, cable: armoured, protective: with(two10, object{"csa_mm2": 16, "cores": 1}), run: object{"protective_by_armour": true}}, "R1", protects, 143 * 143 * 16 * 16, 0},
		{"three unfused strings, a string's cable", "2006 guide to PV in buildings, 2.1.5; " + own, "gb", job{service: "pv_string", cable: solar4, isc: 13.9, strings: 3}, "R1", design, 34.75, 0},
		{"three unfused strings, the array's cable", "IEC 60364-7-712; " + own, "gb", job{service: "pv_string", cable: solar4, isc: 13.9, strings: 3}, "RA", design, 52.125, 0},
		{"4 mm² in a loft of 70 °C, two circuits bunched", solar50618 + "; " + own, "gb", job{service: "pv_string", cable: solar4, segment: hot2}, "R1", capacity, 32.4, 0.05},
		{"6 mm² there", solar50618 + "; " + own, "gb", job{service: "pv_string", cable: solar6, segment: hot2}, "R1", capacity, 41.95, 0.005},
		{"22 m of 4 mm², 13.1 A, at 70 °C", "2006 guide to PV in buildings, 2.1.4.1; " + own, "gb", job{service: "pv_string", cable: solar4, amps: 13.1, vmp: 412, segment: object{"length_m": 22}}, "R1", drop, 3.510, 0.001},
		{"the same of 412 V", "2006 guide to PV in buildings, 2.1.4.1; " + own, "gb", job{service: "pv_string", cable: solar4, amps: 13.1, vmp: 412, segment: object{"length_m": 22}}, "R1", pct, 0.852, 0.0005},
		// Solar cable in conduit goes by the tables for conduit: EN 50618 has none.
		{"4 mm² solar cable in conduit, 30 °C", "IEC 60364-5-52, table B.52.3 B1", "iec", job{service: "pv_string", cable: solar4, segment: object{"method": "B1"}}, "R1", capacity, 42, 0},
		{"behind modules, 28 °C outdoors and 40 K", "IEC 62548, highest outdoor temperature and 40 K; EN 50618 table A.4", "iec", job{service: "pv_string", cable: solar4, segment: object{"place": "behind_modules", "method": "free_air", "ambient_c": 28}}, "R1", capacity, 44 * 0.92, 0.001},
		{"behind modules, 33 °C outdoors", "the same: 73 °C goes by 80 °C", "iec", job{service: "pv_string", cable: solar4, segment: object{"place": "behind_modules", "method": "free_air", "ambient_c": 33}}, "R1", capacity, 44 * 0.84, 0.001},
		{"ten circuits go by twelve", "IEC 60364-5-52, table B.52.17", "iec", job{service: "pv_string", cable: solar4, segment: object{"grouped_circuits": 10}}, "R1", capacity, 44 * 0.45, 0.001},
		{"two of them lightly loaded do not count", "IEC 60364-5-52, table B.52.17, note", "iec", job{service: "pv_string", cable: solar4, segment: object{"grouped_circuits": 10, "grouped_lightly_loaded": 2}}, "R1", capacity, 44 * 0.52, 0.001},
		{"in the ground at 25 °C, soil of 1.5 K·m/W, duct", "IEC 60364-5-52, tables B.52.3, B.52.15 and B.52.16", "iec", job{service: "ac", cable: with(flat6, object{"kind": "multicore", "insulation": "xlpe", "conductor_max_c": 90}), segment: object{"method": "D1", "place": "underground", "ground_c": 25, "soil_resistivity_k_m_per_w": 1.5}}, "R1", capacity, 53 * 0.96 * 1.10, 0.001},
		{"direct in the ground, soil of 1.2 K·m/W goes by 1.5", "the same", "iec", job{service: "ac", cable: with(flat6, object{"kind": "multicore", "insulation": "xlpe", "conductor_max_c": 90}), segment: object{"method": "D2", "place": "underground", "ground_c": 20, "soil_resistivity_k_m_per_w": 1.2}}, "R1", capacity, 58 * 1.28, 0.001},
		{"single in free air; a maker prints 57 A", "EN 50618:2014, table A.3, before any maker's figure", "iec", job{service: "pv_string", cable: with(solar4, object{"ratings": list{object{"method": "free_air", "loaded_conductors": 2, "current_a": 57, "ambient_c": 60, "conductor_c": 120}}}), segment: object{"method": "free_air", "formation": "single"}}, "R1", capacity, 55, 0},
		{"240 mm² armoured, where table 4E4A as typed ends: the maker's figure", own, "gb", job{service: "ac", phases: 3, cable: big, segment: object{"method": "E"}}, "R1", capacity, 538, 0},
		{"two conductors for each pole", own, "iec", job{service: "pv_string", cable: solar4, run: object{"conductors_per_pole": 2}, segment: object{"grouped_circuits": 2}}, "R1", capacity, 2 * 44 * 0.8, 0.001},
	} {
		n := c.fact(runOf(t, derive(t, c.set, c.job.document()), c.run))
		if !n.Known() || math.Abs(n.Value()-c.want) > c.within+1e-9 {
			t.Errorf("%s (%s): %v (missing %v), want %v", c.name, c.source, n.Value(), n.Missing(), c.want)
		}
	}
}

// Between and beyond the rows of a table there is no answer, and what would
// have to be another is named.
func TestWorkedCablesUnknown(t *testing.T) {
	for _, c := range []struct {
		name, set string
		job       job
		want      string
	}{
		{"a size between two rows", "iec", job{service: "pv_string", cable: with(solar4, object{"csa_mm2": 5})}, "[/datasheets/cables/c/csa_mm2]"},
		{"air hotter than the table", "iec", job{service: "pv_string", cable: solar4, segment: object{"ambient_c": 91}}, "[/cables/0/segments/0/ambient_c /cables/0/segments/0/place]"},
		{"more circuits than the table", "iec", job{service: "pv_string", cable: solar4, segment: object{"grouped_circuits": 21}}, "[/cables/0/segments/0/group_arrangement /cables/0/segments/0/grouped_circuits /cables/0/segments/0/method]"},
		{"a method that the table has not", "gb", job{service: "ac", cable: flat6, segment: object{"method": "E"}}, "[/cables/0/segments/0/formation /cables/0/segments/0/method /datasheets/cables/c/kind]"},
		{"aluminium", "iec", job{service: "ac", cable: with(flat6, object{"conductor": "aluminium"})}, "[/cables/0 /cables/0/segments/0/method /datasheets/cables/c/conductor /datasheets/cables/c/insulation /datasheets/cables/c/kind]"},
		{"lagging in a set without a table of it", "iec", job{service: "ac", cable: flat6, segment: object{"thermal_insulation": "surrounded", "thermal_insulation_length_mm": 100}}, "[the rule set has no table thermal_insulation_factors]"},
		{"240 mm², and the maker prints no such figure", "gb", job{service: "ac", phases: 3, cable: with(three4, object{"kind": "armoured", "csa_mm2": 240}), segment: object{"method": "E"}}, "[/datasheets/cables/c/csa_mm2]"},
	} {
		n := runOf(t, derive(t, c.set, c.job.document()), "R1").CapacityA
		if n.Known() || fmt.Sprint(working.Pointers(n.Missing())) != c.want {
			t.Errorf("%s: %v, missing %v, want %s", c.name, n.Value(), n.Missing(), c.want)
		}
	}
}

// A published sheet of a national edition of IEC 60364-5-52 prints method G,
// spaced side by side, at 55 °C (factor 0.61). Below 25 mm² the table has no
// figure, though the sheet prints some.
func TestWorkedCablesSpacedAt55C(t *testing.T) {
	sizes := []float64{16, 25, 35, 50, 70, 95, 120, 150, 185, 240}
	for i, want := range []float64{0, 89, 110, 134, 171, 208, 242, 278, 318, 375} {
		j := job{service: "ac", phases: 3, cable: object{"kind": "single_core_sheathed", "csa_mm2": sizes[i], "conductor": "copper", "conductor_class": 2, "tinned": false, "cores": 1, "insulation": "pvc", "conductor_max_c": 70},
			segment: object{"method": "G", "formation": "flat_spaced_horizontal", "ambient_c": 55}}
		n := runOf(t, derive(t, "iec", j.document()), "R1").CapacityA
		if n.Known() != (want > 0) || n.Known() && math.Abs(n.Value()-want) > 0.5 {
			t.Errorf("%v mm²: %v A (missing %v), want %v A", sizes[i], n.Value(), n.Missing(), want)
		}
	}
}
