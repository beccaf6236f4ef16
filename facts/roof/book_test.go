package roof_test

import (
	"maps"
	"math"
	"os"
	"path/filepath"
	"strings"
	"sync"
	"testing"

	"go.yaml.in/yaml/v3"

	"sunclause/facts/book"
	"sunclause/facts/facttest"
	"sunclause/facts/roof"
	"sunclause/facts/working"
)

// figures are the parameters and tables that the set iec ships for this room, so
// that the tests try what users get. Each test may change its own.
func figures(t testing.TB) book.Book {
	t.Helper()
	b, err := shipped()
	if err != nil {
		t.Fatal(err)
	}
	b.Parameters, b.Tables = maps.Clone(b.Parameters), maps.Clone(b.Tables)
	return b
}

// shipped reads them once.
var shipped = sync.OnceValues(func() (book.Book, error) {
	var file struct {
		Parameters map[string]struct{ Value any }
	}
	b := book.Book{Parameters: map[string]book.Parameter{}, Tables: map[string]*book.Table{}}
	if err := read("../../policies/iec/roof.yaml", &file); err != nil {
		return b, err
	}
	for name, p := range file.Parameters {
		put(b, name, p.Value)
	}
	put(b, "engineer_pitch_below_deg", 30)
	put(b, "mounting_kit_standard", "MCS 012")
	for _, pattern := range []string{"../../policies/iec/tables/*.yaml", "../../policies/gb/tables/fixing_*.yaml"} {
		files, _ := filepath.Glob(pattern)
		for _, name := range files {
			tab, err := table(name)
			if err != nil {
				return b, err
			}
			b.Tables[strings.TrimSuffix(filepath.Base(name), ".yaml")] = tab
		}
	}
	return b, nil
})

// put sets a parameter of a book.
func put(b book.Book, name string, value any) {
	p := book.Parameter{Name: name, Set: "test", Source: working.ByDefinition}
	switch v := value.(type) {
	case string:
		p.Text, p.IsText = v, true
	case int:
		p.Number = float64(v)
	case float64:
		p.Number = v
	}
	b.Parameters[name] = p
}

func table(name string) (*book.Table, error) {
	var file struct {
		Title   string
		Columns []struct{ Name, Unit string }
		Rows    []map[string]any
	}
	if err := read(name, &file); err != nil {
		return nil, err
	}
	tab := &book.Table{Name: name, Title: file.Title, Set: "test", Source: working.ByDefinition, Rows: file.Rows}
	for _, c := range file.Columns {
		tab.Columns = append(tab.Columns, book.Column{Name: c.Name, Unit: c.Unit})
	}
	for _, row := range file.Rows {
		for k, v := range row {
			if n, ok := v.(int); ok {
				row[k] = float64(n)
			}
		}
	}
	return tab, nil
}

func read(name string, into any) error {
	raw, err := os.ReadFile(name)
	if err != nil {
		return err
	}
	return yaml.Unmarshal(raw, into)
}

type object = map[string]any

type list = []any

// house is a roof of 35° with one row of five portrait modules on two rails at
// their quarter points, hooks every 900 mm, all in the middle of a large plane.
type house struct {
	site, module, hook, screw, railSheet, rafters, plane object
	xs                                                   []float64 // of the modules
	y                                                    float64
	hooks                                                []float64 // along each rail
	railFrom, railLength                                 float64
	clamps                                               list
	shape                                                string
	survey                                               object
	masses                                               map[string]float64 // of fixings, rails, screws and clamps, by their sheets
	planArea                                             float64            // of the whole roof; 0 where it is not stated
	book                                                 book.Book
}

func standard(t testing.TB) *house {
	h := &house{
		site: object{"altitude_m": 0, "terrain": "II", "distance_to_sea_km": 50, "distance_into_town_km": 0, "wind_vb_map_m_per_s": 24,
			"orography_significant": false, "snow_sk_kn_per_m2": 0.8},
		module: object{"technology": "mono_si", "pmax_w": 440, "voc_v": 39, "isc_a": 14, "vmp_v": 33, "imp_a": 13.4,
			"length_mm": 1762, "width_mm": 1134, "thickness_mm": 30, "mass_kg": 13.5 * 1.762 * 1.134, "design_load_push_pa": 3600, "design_load_pull_pa": 1600,
			"clamp_zones": list{object{"side": "long", "from_mm": 225, "to_mm": 500, "load_push_pa": 3600, "load_pull_pa": 1600}}},
		hook:      object{"plate_thickness_mm": 6, "lever_arm_mm": 60, "pivot_distance_mm": 40, "screws_min": 2, "deflection_mm_per_kn": 3, "member_width_min_mm": 47},
		screw:     object{"diameter_mm": 8, "core_diameter_mm": 5.5, "length_mm": 100, "thread_length_mm": 60, "tension_kn": 10},
		railSheet: object{"expansion_um_per_m_per_k": 23, "cantilever_max_mm": 400, "continuous_max_m": 11, "end_beyond_clamp_min_mm": 20},
		rafters: object{"structure": "cut_roof", "direction": "up_slope", "first_mm": 300, "spacing_mm": 450, "count": 100, "width_mm": 75, "height_mm": 150,
			"timber_class": "C24", "service_class": 2, "span_mm": 2500, "battens_share_load": true, "altered": false},
		plane: object{"pitch_deg": 35, "eaves_length_mm": 30000, "slope_length_mm": 20000, "left_edge": "verge", "right_edge": "verge", "top_edge": "ridge",
			"bottom_edge": "eaves", "edges": list{}, "gap_under_modules_mm": 100, "tilt_to_roof_deg": 0, "ridge_height_m": 8, "building_length_m": 30, "building_width_m": 30, "dead_load_kn_per_m2": 0.606,
			"imposed_load_kn_per_m2": 0.6, "mounting_mass_kg": 0, "ballast_mass_kg": 0, "snow_obstruction": "none", "openings": list{},
			"covering": object{"kind": "plain_tile", "batten_thickness_mm": 25, "counter_batten_thickness_mm": 20, "sarking_thickness_mm": 18}},
		xs: []float64{10000, 11154, 12308, 13462, 14616}, y: 8000,
		hooks: []float64{10200, 11100, 12000, 12900, 13800, 14700, 15600}, railFrom: 9950, railLength: 5850, clamps: list{}, shape: "duopitch", survey: object{},
		book: figures(t),
	}
	return h
}

// derive decodes the house and derives its facts.
func (h *house) derive(t testing.TB) roof.Facts {
	t.Helper()
	return roof.Derive(facttest.Installation(t, h.document()), h.book)
}

func (h *house) document() object {
	plane := object{"id": "P", "rafters": h.rafters}
	for k, v := range h.plane {
		plane[k] = v
	}
	modules, fixings, rails := list{}, list{}, list{}
	for i, x := range h.xs {
		modules = append(modules, object{"id": letter("M", i), "module": "M", "x_mm": x, "y_mm": h.y, "orientation": "portrait"})
	}
	for r, y := range []float64{h.y + 440.5, h.y + 1762 - 440.5} {
		id := letter("R", r)
		rails = append(rails, object{"id": id, "datasheet": "R", "x_mm": h.railFrom, "y_mm": y, "direction": "across_slope", "length_mm": h.railLength, "carried_by": "fixings", "joints": list{}})
		for i, x := range h.hooks {
			fixings = append(fixings, object{"id": letter(id+"H", i), "datasheet": "H", "rail": id, "x_mm": x, "y_mm": y, "member": "rafter", "off_middle_mm": 0,
				"screw": "S", "screws": 2, "screw_arrangement": "in_line", "screw_spacing_mm": 60, "end_distance_mm": 500, "screw_angle_deg": 90, "plate_on": "timber", "packing_mm": 0})
		}
	}
	own := object{"modules": modules, "rails": rails, "fixings": fixings, "clamps": h.clamps}
	for k, v := range own {
		if _, given := plane[k]; !given {
			plane[k] = v
		}
	}
	document := object{
		"project": object{"reference": "test", "stage": "design", "country": "GB"}, "site": h.site,
		"datasheets": object{"modules": object{"M": h.module}, "fixings": object{
			"H": object{"kind": "hook", "hook": h.hook, "load": object{"basis": "design", "uplift_kn": 1.25, "down_kn": 2, "along_slope_kn": 1, "tested_in_timber": false}},
			"S": object{"kind": "screw", "screw": h.screw}, "R": object{"kind": "rail", "rail": h.railSheet},
			"E": object{"kind": "end_clamp", "clamp": object{"frame_height_min_mm": 30, "frame_height_max_mm": 35}, "load": object{"basis": "test", "failure": "metal", "uplift_kn": 2.2}},
		}},
		"roof": object{"shape": h.shape, "survey": h.survey, "planes": list{plane}},
	}
	for id, mass := range h.masses {
		document["datasheets"].(object)["fixings"].(object)[id].(object)["mass_kg"] = mass
	}
	if h.planArea > 0 {
		document["roof"].(object)["plan_area_m2"] = h.planArea
	}
	return document
}

func letter(prefix string, i int) string { return prefix + string(rune('A'+i)) }

// withPeak sets the wind so that the peak velocity pressure is as wanted.
func (h *house) withPeak(t testing.TB, peak float64) *house {
	t.Helper()
	h.site["wind_vb_map_m_per_s"] = 24.0
	h.site["wind_vb_map_m_per_s"] = 24 * math.Sqrt(peak/h.derive(t).Planes[0].PeakKnM2.Value())
	return h
}

// near holds a fact against the value of a source, within some percent of it.
func near(t testing.TB, what string, n working.Number, want, pct float64) {
	t.Helper()
	facttest.Near(t, what, n, want, pct/100*math.Abs(want)+1e-12)
}
