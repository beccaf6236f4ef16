package roof_test

import (
	"slices"
	"testing"

	"sunclause/facts/working"
)

// TestMonopitch holds the net coefficient on a monopitch roof against tables 7.3a
// and 7.3b of EN 1991-1-4, remembered: c_pe,1 of the zone where it is more than 1.3.
func TestMonopitch(t *testing.T) {
	for _, c := range []struct {
		where       string
		pitch, x, y float64
		want        float64
		zone        string
	}{
		{"field, 15°", 15, 20000, 8000, 1.3, "from_high"},
		{"low eaves, 15°", 15, 20000, 300, 1.5, "eaves"},
		{"low corner, 15°", 15, 3000, 300, 2.0, "eaves_corner"}, // 3.0 m from the gable, 1.6 m wide strips
		{"high eaves, 15°", 15, 20000, 17800, 2.0, "high"},
		{"high corner, 15°", 15, 2500, 17800, 2.8, "high_corner"},
		{"gable, 15°", 15, 700, 8000, 2.5, "gable"},
		{"high corner at the gable, 15°", 15, 700, 17800, 2.9, "gable_corner_high"},
		{"gable, 30°", 30, 700, 8000, 2.0, "gable"},
		{"high eaves, 37.5°: between 1.5 and 0.5", 37.5, 20000, 17800, 1.3, "high"},
		{"high corner, 37.5°: between 2.3 and 1.3", 37.5, 2500, 17800, 1.8, "high_corner"},
		{"high corner at the gable, 60°", 60, 700, 17800, 2.0, "gable_corner_high"},
	} {
		h := standard(t)
		h.shape = "monopitch"
		h.plane["top_edge"], h.plane["pitch_deg"] = "mono_ridge", c.pitch
		h.xs, h.y = []float64{c.x}, c.y
		m := h.derive(t).Modules[0]
		near(t, c.where, m.NetUplift, c.want, 0.01)
		if !slices.Contains(m.WindZones.Values(), c.zone) {
			t.Errorf("%s: zones %v, want %s among them", c.where, m.WindZones.Values(), c.zone)
		}
	}
}

// TestHipped holds the net coefficient on the long slope of a hipped roof against
// table 7.5 of EN 1991-1-4, remembered. The hip runs up from the left corner.
func TestHipped(t *testing.T) {
	for _, c := range []struct {
		where       string
		pitch, x, y float64
		want        float64
		zone        string
	}{
		{"field", 30, 15000, 8000, 1.3, "beside"},
		{"eaves", 30, 15000, 300, 1.5, "eaves"},
		{"eaves corner, where the hip begins", 30, 3500, 300, 2.0, "eaves_corner"},
		{"along the hip", 30, 11000, 8000, 2.0, "hip_beside"}, // 0.76 m from it in plan
		{"1.98 m in plan from the hip, the strip is 1.6 m wide", 30, 13000, 8000, 1.3, "beside"},
		{"ridge, 15°", 15, 25000, 17800, 1.5, "ridge"},
		{"eaves corner, 5°", 5, 3500, 300, 2.5, "eaves_corner"},
	} {
		h := standard(t)
		h.shape = "hipped"
		h.plane["pitch_deg"], h.plane["left_edge"] = c.pitch, "sloping"
		h.plane["edges"] = list{line("hip", 0, 0, 20000, 20000)}
		h.xs, h.y = []float64{c.x}, c.y
		m := h.derive(t).Modules[0]
		near(t, c.where, m.NetUplift, c.want, 0.01)
		if !slices.Contains(m.WindZones.Values(), c.zone) {
			t.Errorf("%s: zones %v, want %s among them", c.where, m.WindZones.Values(), c.zone)
		}
	}
}

// TestOtherShapes leaves the wind unknown where no table holds: on other roofs, on
// a hipped roof without a hip drawn, and of modules that stand up from the roof,
// whose coefficients are others (common practice, no published source).
func TestOtherShapes(t *testing.T) {
	const shape, up = "the wind on a roof of this shape", "the wind on modules that stand up from the roof"
	for _, c := range []struct {
		shape, top, missing string
		gap, tilt           any
	}{
		{"mansard", "ridge", shape, 100, 0}, {"flat", "ridge", shape, 100, 0}, {"monopitch", "ridge", shape, 100, 0},
		{"duopitch", "mono_ridge", shape, 100, 0}, {"hipped", "ridge", "/roof/planes/0/edges", 100, 0},
		{"duopitch", "ridge", up, 100, 5.5}, {"duopitch", "ridge", "/roof/planes/0/tilt_to_roof_deg", 100, nil},
		{"duopitch", "ridge", up, 301, 5}, {"duopitch", "ridge", "/roof/planes/0/gap_under_modules_mm", nil, 5},
		{"duopitch", "ridge", "", 300, 5},
	} {
		h := standard(t)
		h.shape, h.plane["top_edge"] = c.shape, c.top
		for member, v := range map[string]any{"gap_under_modules_mm": c.gap, "tilt_to_roof_deg": c.tilt} {
			if h.plane[member] = v; v == nil {
				delete(h.plane, member)
			}
		}
		f := h.derive(t)
		n := f.Modules[0].PullPa
		if n.Known() != (c.missing == "") || c.missing != "" && !slices.Contains(working.Pointers(n.Missing()), c.missing) {
			t.Errorf("%+v: %v Pa, missing %v", c, n.Value(), n.Missing())
		}
		near := c.gap == 100 && c.tilt == 0 || c.missing == ""
		if f.Planes[0].Down.Known() != near {
			t.Errorf("%+v: load towards the roof known %v", c, f.Planes[0].Down.Known())
		}
	}
}
