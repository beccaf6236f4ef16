package roof_test

import "testing"

// TestFixingSheets: the values of a sheet go together; a screw of 8 mm with a core of
// 5.5 mm that bears 10 kN has steel of 421 N/mm².
func TestFixingSheets(t *testing.T) {
	h := standard(t)
	h.screw["head_diameter_mm"], h.screw["edge_distance_min_mm"], h.screw["end_distance_min_mm"] = 16, 32, 80
	h.railSheet["spans"] = list{object{"uplift_kn_per_m": 1, "down_kn_per_m": 1, "span_max_mm": 1400}, object{"uplift_kn_per_m": 2, "down_kn_per_m": 2, "span_max_mm": 900}}
	f := h.derive(t).Sheets // E, H, R, S
	s := f[3]
	near(t, "core over diameter", s.CoreOverD, 0.6875, 0)
	near(t, "head over diameter", s.HeadOverD, 2, 0)
	near(t, "thread over length", s.ThreadOverLength, 0.6, 0)
	near(t, "steel of the core", s.CoreStress, 420.9, 0.1)
	near(t, "free end over span", f[2].FreeOverSpan, 400.0/1400, 0.001)
	if !s.DepthInThread.Value() || !s.DistancesRise.Value() || !f[2].SpansFall.Value() || !f[0].FramesRise.Value() || !f[0].TorquesRise.Value() {
		t.Error("values in order are not")
	}
	near(t, "loads of a row", f[2].SpanLoadsRatio, 1, 0)
	near(t, "loads of a hook", f[1].LoadsRatio, 2, 0)
	h.screw["depth_min_mm"], h.screw["spacing_min_mm"] = 61, 90
	h.railSheet["spans"].(list)[1].(object)["span_max_mm"] = 1500
	f = h.derive(t).Sheets
	if f[3].DepthInThread.Value() || f[3].DistancesRise.Value() || f[2].SpansFall.Value() {
		t.Error("values out of order are in order")
	}
}

// TestPartsMass adds up two rails of 5.85 m, fourteen hooks with two screws each and one
// clamp by their sheets.
func TestPartsMass(t *testing.T) {
	h := standard(t)
	h.clamps = list{clamp("C", "end", "RA", holds("MA", "left", 440.5))}
	h.plane["mounting_mass_kg"] = 30
	if p := h.derive(t).Planes[0].PartsKg; p.Known() || len(p.Missing()) == 0 {
		t.Errorf("without masses of the parts they come to %v kg", p.Value())
	}
	h.masses = map[string]float64{"R": 1, "H": 0.6, "S": 0.02, "E": 0.1}
	p := h.derive(t).Planes[0]
	near(t, "parts", p.PartsKg, 2*5.85+14*0.6+28*0.02+0.1, 0.001)
	near(t, "mounting over parts", p.MountingShare, 30/20.76, 0.01)
}

// TestPlanInRoof: a plane with hips is taken for half of the rectangle around it.
func TestPlanInRoof(t *testing.T) {
	h := standard(t)
	h.planArea = 700
	near(t, "one plane", h.derive(t).Parts.PlanesOverPlan, 30*20*0.8191520/700, 0.001)
	h.plane["left_edge"] = "sloping"
	near(t, "one plane with a hip", h.derive(t).Parts.PlanesOverPlan, 15*20*0.8191520/700, 0.001)
}

// TestCoveringMaterial: tiles are made of clay or concrete, sheets of metal.
func TestCoveringMaterial(t *testing.T) {
	for _, c := range []struct {
		kind, material string
		want           bool
	}{{"plain_tile", "clay", true}, {"plain_tile", "steel", false}, {"trapezoidal_sheet", "steel", true}, {"natural_slate", "clay", false}} {
		h := standard(t)
		cover := h.plane["covering"].(object)
		cover["kind"], cover["material"] = c.kind, c.material
		if fits := h.derive(t).Planes[0].MaterialFits; !fits.Known() || fits.Value() != c.want {
			t.Errorf("%s of %s: %v", c.kind, c.material, fits.Value())
		}
	}
}

// TestTimberClasses: a class has its figures, and one stated beside it has to agree.
func TestTimberClasses(t *testing.T) {
	h := standard(t)
	h.rafters["timber_class"] = "C30"
	near(t, "C30", h.derive(t).Planes[0].TimberDensity, 380, 0)
	h.rafters["timber_density_kg_per_m3"] = 350
	n := h.derive(t).Planes[0].TimberDensity
	if n.Known() || len(n.Missing()) != 1 || n.Missing()[0].Why != "disagrees" {
		t.Errorf("C30 of 350 kg/m³ is %v, missing %v", n.Value(), n.Missing())
	}
	delete(h.rafters, "timber_class")
	near(t, "stated alone", h.derive(t).Planes[0].TimberDensity, 350, 0)
}
