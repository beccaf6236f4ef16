package roof_test

import "testing"

// TestDistances measures from a module to the sides of its plane.
func TestDistances(t *testing.T) {
	h := standard(t)
	m := h.derive(t).Modules[0]
	for what, x := range map[string][2]float64{
		"eaves": {m.EavesMm.Value(), 8000}, "ridge": {m.TopMm.Value(), 20000 - 9762}, "left": {m.LeftMm.Value(), 10000}, "right": {m.RightMm.Value(), 30000 - 11134},
		"inside": {m.InsideMm.Value(), 8000}, "edge": {m.EdgeMm.Value(), 8000}, "gap": {m.GapMm.Value(), 20},
	} {
		if x[0] != x[1] {
			t.Errorf("%s: %v, want %v", what, x[0], x[1])
		}
	}
}

// TestOverlap finds two modules in one place, and one that overhangs.
func TestOverlap(t *testing.T) {
	h := standard(t)
	h.xs[1] = 11100
	h.xs[4] = 29000
	f := h.derive(t)
	if g := f.Modules[0].GapMm.Value(); g != -34 {
		t.Errorf("the gap of two modules that overlap by 34 mm is %v", g)
	}
	if d := f.Modules[4].InsideMm.Value(); d != 30000-29000-1134 {
		t.Errorf("a module that overhangs is %v inside", d)
	}
	if g := f.Modules[3].GapMm.Value(); g != 20 {
		t.Errorf("the gap of a module beside another is %v", g)
	}
}

// TestLines measures to what is drawn on the plane: a hip, and a party wall that is
// no edge.
func TestLines(t *testing.T) {
	for _, c := range []struct {
		kind           string
		xa, ya, xb, yb float64
		edge, wall     float64 // 0 where there is none
	}{
		{"hip", 9000, 0, 9000, 20000, 1000, 0}, {"party_wall", 9500, 0, 9500, 20000, 8000, 500}, {"valley", 9700, 7600, 9700, 7600, 500, 0},
		{"compartment_wall", 0, 0, 30000, 20000, 8000, 0.001}, {"movement_joint", 9900, 0, 9900, 20000, 8000, 0},
	} {
		h := standard(t)
		h.xs = h.xs[:1]
		h.plane["edges"] = list{line(c.kind, c.xa, c.ya, c.xb, c.yb)}
		if c.kind == "compartment_wall" { // right through the module
			h.plane["edges"] = list{line(c.kind, 0, 8500, 30000, 8600)}
		}
		m := h.derive(t).Modules[0]
		near(t, c.kind+": edge", m.EdgeMm, c.edge, 0.001)
		if m.PartyWalls.Value() != (c.wall > 0) || c.wall > 1 && m.PartyWallMm.Value() != c.wall || c.wall > 0 && c.wall < 1 && m.PartyWallMm.Value() != 0 {
			t.Errorf("%s: party wall %v at %v mm", c.kind, m.PartyWalls.Value(), m.PartyWallMm.Value())
		}
	}
}

// TestSidesUnsaid: a side that is not said to be anything could be an edge.
func TestSidesUnsaid(t *testing.T) {
	for what, change := range map[string]func(*house){
		"left side":        func(h *house) { delete(h.plane, "left_edge") },
		"line of the hip":  func(h *house) { h.plane["left_edge"] = "sloping"; delete(h.plane, "edges") },
		"extent":           func(h *house) { delete(h.plane, "eaves_length_mm") },
		"size of a module": func(h *house) { delete(h.module, "length_mm") },
	} {
		h := standard(t)
		change(h)
		if m := h.derive(t).Modules[0]; m.EdgeMm.Known() || len(m.EdgeMm.Missing()) == 0 {
			t.Errorf("without the %s the edge is %v mm away", what, m.EdgeMm.Value())
		}
	}
}

// TestOpenings measures round a window beside, below and under modules.
func TestOpenings(t *testing.T) {
	for _, c := range []struct {
		what                         string
		x, y, clearance, over, aside float64
	}{
		{"left of the row", 9000, 8500, 400, 0, 9000}, {"above it", 12000, 10062, 300, 0, 17400}, {"beyond its corner", 9100, 6800, 500, 0, 20300}, {"under a module", 10200, 8500, 0, 1, 10200},
	} {
		h := standard(t)
		h.plane["openings"] = list{object{"id": "W", "kind": "roof_window", "x_mm": c.x, "y_mm": c.y, "width_mm": 600, "length_mm": 800}}
		f := h.derive(t)
		o := f.Openings[0]
		if o.ClearanceMm.Value() != c.clearance || o.ModulesOver.Value() != c.over || f.Modules[0].Openings.Value() != 1 {
			t.Errorf("%s: %v mm clear, %v modules over, want %v and %v", c.what, o.ClearanceMm.Value(), o.ModulesOver.Value(), c.clearance, c.over)
		}
		if c.over == 0 && o.SideAccessMm.Value() != c.aside {
			t.Errorf("%s: %v mm beside it, want %v", c.what, o.SideAccessMm.Value(), c.aside)
		}
	}
	h := standard(t)
	h.plane["openings"] = list{object{"id": "W", "kind": "roof_window", "x_mm": 1, "y_mm": 1, "width_mm": 600}}
	if o := h.derive(t).Openings[0]; o.ClearanceMm.Known() || o.ModulesOver.Known() {
		t.Error("a window without a length has a clearance")
	}
}

// TestNothingStated: what the document does not have is not known, and no panic.
func TestNothingStated(t *testing.T) {
	h := standard(t)
	h.site, h.hook, h.screw, h.railSheet, h.rafters = object{}, object{}, object{}, object{}, object{}
	h.plane = object{}
	f := h.derive(t)
	if f.Fixings[0].UpliftKn.Known() || f.Modules[0].PullPa.Known() || f.Planes[0].SnowKnM2.Known() || f.Rails[0].SpanAllowedMm.Known() {
		t.Error("loads are known of a site that is not")
	}
	if f.Openings != nil || f.Penetrations != nil {
		t.Error("openings that are not stated are known to be none")
	}
}

// TestEngineer finds what about the roof wants a structural engineer.
func TestEngineer(t *testing.T) {
	for _, c := range []struct {
		what        string
		change      func(*house)
		want, known bool
	}{
		{"nothing", func(*house) {}, false, true},
		{"below 30°", func(h *house) { h.plane["pitch_deg"] = 29 }, true, true},
		{"dormer", func(h *house) {
			h.plane["openings"] = list{object{"id": "D", "kind": "dormer", "x_mm": 1, "y_mm": 1}}
		}, true, true},
		{"valley", func(h *house) { h.plane["edges"] = list{line("valley", 0, 0, 1, 1)} }, true, true},
		{"hip drawn", func(h *house) { h.plane["edges"] = list{line("hip", 0, 0, 1, 1)} }, true, true},
		{"timber altered", func(h *house) { h.rafters["altered"] = true }, true, true},
		{"altered or not", func(h *house) { delete(h.rafters, "altered") }, false, false},
		{"edges not listed", func(h *house) { delete(h.plane, "edges") }, false, false},
	} {
		h := standard(t)
		c.change(h)
		if got := h.derive(t).Planes[0].EngineerWant; got.Known() != c.known || got.Value() != c.want {
			t.Errorf("%s: wanted %v, known %v", c.what, got.Value(), got.Known())
		}
	}
}
