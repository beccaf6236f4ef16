package roof_test

import (
	"math"
	"slices"
	"testing"

	"sunclause/facts/working"
)

// TestShear holds the lateral resistance of two screws against values worked out by
// hand from EN 1995-1-1, (8.9), (8.10), (8.15) and (8.34): Ø8 with a core of 5.5 mm,
// 60 mm deep in C24, yield moment 20 N·m; d_ef 6.05 mm, f_h 16.72 N/mm², 60 mm apart.
func TestShear(t *testing.T) {
	fh, d := 28.7*math.Pow(6.05, -0.3), 6.05
	thin := 1.15 * math.Sqrt(2*20000*fh*d)                        // 2313 N, less than 0.4 · f_h · 60 · d
	thick := fh * 60 * d * (math.Sqrt(2+4*20000/(fh*d*3600)) - 1) // 2973 N
	row := math.Pow(2, 0.9) * math.Pow(60/(13*8.0), 0.25)         // 1.626
	for plate, one := range map[float64]float64{4: thin, 6: (thin + thick) / 2, 8: thick} {
		h := standard(t)
		h.hook["plate_thickness_mm"], h.screw["yield_moment_n_m"] = plate, 20
		near(t, "two screws", h.derive(t).Fixings[0].ShearKn, 0.9*row*one/1.3/1000, 0.01)
	}
	h := standard(t)
	h.screw["yield_moment_n_m"] = 20
	near(t, "plate of 6 mm", h.derive(t).Fixings[0].ShearKn, 2.976, 0.2)
	h.screw["yield_moment_n_m"], h.screw["length_mm"], h.screw["thread_length_mm"] = 200, 26, 20 // too short and stiff to bend
	near(t, "the timber alone gives way", h.derive(t).Fixings[0].ShearKn, 0.9*row*(0.4+0.5*(math.Min(1, math.Sqrt(2+4*200000/(fh*d*400))-1)-0.4))*fh*20*d/1.3/1000, 0.01)
	h.plane["fixings"] = list{hookAt("F", 10200, object{"plate_on": "batten"}), hookAt("G", 10200, object{"packing_mm": 5}), hookAt("H", 10200, object{"predrilled": true})}
	f := h.derive(t).Fixings
	if f[0].ShearKn.Known() || f[1].ShearKn.Known() || f[0].Combined.Known() {
		t.Error("a plate that does not lie on the timber bends its screws")
	}
	if f[2].ShearKn.Value() <= 0 {
		t.Error("predrilled")
	}
	delete(h.screw, "yield_moment_n_m")
	if n := h.derive(t).Fixings[2].Combined; n.Known() || !slices.Contains(working.Pointers(n.Missing()), "/datasheets/fixings/S/screw/yield_moment_n_m") {
		t.Errorf("without a yield moment: %v, missing %v", n.Value(), n.Missing())
	}
}

// TestCombined holds (8.28) of EN 1995-1-1 against the parts: while the wind lifts
// the array's own weight slides; with snow the whole load down the slope counts.
func TestCombined(t *testing.T) {
	h := standard(t).withPeak(t, 0.90)
	h.screw["yield_moment_n_m"] = 20
	f := middle(h.derive(t))
	slide := 1.25 * 0.9 * 0.881 * 1.35 * 13.5 * 9.81e-3 * math.Sin(35*math.Pi/180) // 0.1016 kN
	near(t, "wind", f.Combined, math.Pow(f.PullKn.Value()/f.WithdrawalKn.Value(), 2)+math.Pow(slide/f.ShearKn.Value(), 2), 0.01)
	near(t, "wind, in numbers", f.Combined, math.Pow(4.1075/8.210, 2)+math.Pow(0.1016/2.976, 2), 1)
	h.site["snow_sk_kn_per_m2"], h.site["wind_vb_map_m_per_s"] = 9, 1
	f = middle(h.derive(t))
	near(t, "snow", f.Combined, math.Pow(f.AlongKn.Value()/f.ShearKn.Value(), 2), 0.01)
}

// TestDistancesDue takes the distances of EN 1995-1-1, table 8.6, or those that the
// maker of the screw declares; of the depth the greater.
func TestDistancesDue(t *testing.T) {
	h := standard(t)
	f := h.derive(t).Fixings[0]
	for what, n := range map[string][2]float64{"edge": {f.EdgeDueMm.Value(), 4}, "end": {f.EndDueMm.Value(), 10}, "spacing": {f.SpacingDueMm.Value(), 7}, "depth": {f.DepthDueMm.Value(), 6}} {
		if n[0] != 8*n[1] {
			t.Errorf("%s: %v mm, want %v diameters of 8 mm", what, n[0], n[1])
		}
	}
	h.screw["edge_distance_min_mm"], h.screw["end_distance_min_mm"], h.screw["spacing_min_mm"], h.screw["depth_min_mm"] = 24, 40, 40, 64
	f = h.derive(t).Fixings[0]
	for what, n := range map[string][2]float64{"edge": {f.EdgeDueMm.Value(), 3}, "end": {f.EndDueMm.Value(), 5}, "spacing": {f.SpacingDueMm.Value(), 5}, "depth": {f.DepthDueMm.Value(), 8}} {
		if n[0] != 8*n[1] {
			t.Errorf("declared %s: %v mm, want %v diameters of 8 mm", what, n[0], n[1])
		}
	}
	h.screw["depth_min_mm"] = 40
	near(t, "a declared depth below the rule", h.derive(t).Fixings[0].DepthDueMm, 48, 0)
}

// TestOverhangAllowed takes the less of what the sheet of the rail prints in mm and
// as a share of the span, 900 mm here.
func TestOverhangAllowed(t *testing.T) {
	for _, c := range []struct {
		mm, share any
		want      float64
	}{{400, nil, 400}, {400, 0.33, 297}, {200, 0.33, 200}, {nil, 0.5, 0}, {nil, nil, 0}} {
		h := standard(t)
		delete(h.railSheet, "cantilever_max_mm")
		for member, v := range map[string]any{"cantilever_max_mm": c.mm, "cantilever_max_fraction": c.share} {
			if v != nil {
				h.railSheet[member] = v
			}
		}
		if n := h.derive(t).Rails[0].OverhangMaxMm; n.Known() != (c.want > 0) || n.Known() && n.Value() != c.want {
			t.Errorf("%v mm, share %v: %v, want %v", c.mm, c.share, n.Value(), c.want)
		}
	}
	h := standard(t)
	h.railSheet["cantilever_max_fraction"], h.hooks = 0.33, []float64{12000}
	if n := h.derive(t).Rails[0].OverhangMaxMm; n.Known() {
		t.Errorf("a share of no span is %v", n.Value())
	}
}

// TestGapDue: 5.85 m grow by 10.8 mm over 80 K; the maker may ask for more.
func TestGapDue(t *testing.T) {
	h := standard(t)
	near(t, "what it grows by", h.derive(t).Rails[0].GapDueMm, 10.764, 0.01)
	h.railSheet["expansion_gap_min_mm"] = 20
	near(t, "what the maker asks", h.derive(t).Rails[0].GapDueMm, 20, 0)
	h.railSheet["expansion_gap_min_mm"] = 5
	near(t, "less than it grows by", h.derive(t).Rails[0].GapDueMm, 10.764, 0.01)
}

// TestByEngineer: whoever is not shown to be one does not count as an engineer.
func TestByEngineer(t *testing.T) {
	for _, c := range []struct {
		survey      object
		want, known bool
	}{
		{object{"role": "structural_engineer"}, true, true}, {object{"role": "installer", "engineer_report": "R"}, true, true}, {object{"engineer_report": "R"}, true, true},
		{object{"role": "installer"}, false, true}, {object{}, false, false},
	} {
		h := standard(t)
		h.survey = c.survey
		if f := h.derive(t).Survey.ByEngineer; f.Value() != c.want || f.Known() != c.known {
			t.Errorf("%v: %v, known %v", c.survey, f.Value(), f.Known())
		}
	}
}
