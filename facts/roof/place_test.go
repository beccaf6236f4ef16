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

// TestRise is geometry: 10 m of slope at 30° rise 5 m. A tenth of that may be missing, or
// 0.3 m where that is more.
func TestRise(t *testing.T) {
	h := standard(t)
	h.plane["pitch_deg"], h.plane["slope_length_mm"], h.plane["ridge_height_m"], h.plane["eaves_height_m"] = 30, 10000, 8.5, 3
	p := h.derive(t).Planes[0]
	near(t, "ridge over eaves", p.RidgeOverEaves, 5.5, 0)
	near(t, "disagreement", p.RiseOffM, 0.5, 0.001)
	near(t, "tolerance", p.RiseMayOffM, 0.5, 0.001)
	h.plane["slope_length_mm"] = 5000
	near(t, "tolerance of a short slope", h.derive(t).Planes[0].RiseMayOffM, 0.3, 0.001)
	near(t, "half a building", p.PlanShare, 10*0.8660254/30, 0.001)
}

// TestTimbersAcross: rafters run across a plane of 30 m, purlins up one of 20 m.
func TestTimbersAcross(t *testing.T) {
	h := standard(t)
	h.rafters["count"], h.rafters["span_mm"] = 66, 3000 // to 300 + 65 · 450 = 29550
	p := h.derive(t).Planes[0]
	near(t, "beyond the last rafter", p.BeyondSpacings, 1, 0)
	near(t, "on edge", p.OnEdge, 2, 0)
	near(t, "span", p.SpanShare, 0.15, 0)
	h.rafters["direction"], h.rafters["count"] = "across_slope", 43 // to 19200
	near(t, "beyond the last purlin", h.derive(t).Planes[0].BeyondSpacings, 800.0/450, 0.001)
	h.rafters["lines"] = list{object{"id": "L1", "at_mm": 300}}
	if e := h.derive(t).Planes[0].EvenlySpaced; !e.Known() || e.Value() {
		t.Error("timbers stated one by one are evenly spaced")
	}
}

// TestOpeningPlace: openings lie on the plane, beside each other, and between rafters
// where they are narrow enough.
func TestOpeningPlace(t *testing.T) {
	h := standard(t) // rafters of 75 mm at 300 + 450 k, so one at 4800 and one at 5250
	window := func(id string, x, y, width float64) object {
		return object{"id": id, "kind": "roof_window", "x_mm": x, "y_mm": y, "width_mm": width, "length_mm": 1000}
	}
	h.plane["openings"] = list{window("A", 4838, 3000, 374), window("B", 5000, 3500, 300), window("C", 4838, 15000, 800), window("D", 5212, 19500, 10)}
	f := h.derive(t).Openings
	for i, want := range []struct{ rafters, over, inside float64 }{{0, 1, 3000}, {1, 1, 3500}, {0, 0, 4000}, {1, 0, -500}} {
		near(t, f[i].ID+" rafters", f[i].Rafters, want.rafters, 0)
		near(t, f[i].ID+" overlaps", f[i].Overlaps, want.over, 0)
		near(t, f[i].ID+" inside", f[i].InsideMm, want.inside, 0)
	}
	h.rafters["structure"] = "steel_frame"
	near(t, "rooflight between purlins", h.derive(t).Openings[1].Rafters, 0, 0)
}

// TestPathway: a module lies clear of the strips kept for access.
func TestPathway(t *testing.T) {
	h := standard(t)
	path := func(direction string, from float64) object {
		return object{"id": "P" + direction, "direction": direction, "from_mm": from, "width_mm": 1000}
	}
	h.plane["pathways"] = list{path("up_slope", 0), path("across_slope", 6500)}
	near(t, "the nearer strip", h.derive(t).Planes[0].PathClearMm, 500, 0)
	h.plane["pathways"] = list{path("up_slope", 9100)}
	near(t, "a module in the strip", h.derive(t).Planes[0].PathClearMm, -100, 0)
	h.plane["pathways"] = list{}
	if p := h.derive(t).Planes[0]; p.PathClearMm.Known() || p.Pathways.Value() != 0 {
		t.Error("a module is clear of strips that there are not")
	}
}

// TestProjection: a module stands as high as the gap below it and its frame.
func TestProjection(t *testing.T) {
	h := standard(t)
	h.plane["projection_mm"] = 145 // 100 and 30
	p := h.derive(t).Planes[0]
	near(t, "disagreement", p.ProjectionOff, 15, 0)
	near(t, "tolerance", p.ProjectionMay, 20, 0)
	h.plane["covering"].(object)["profile_height_mm"] = 60
	near(t, "tolerance on pantiles", h.derive(t).Planes[0].ProjectionMay, 80, 0)
	h.plane["covering"].(object)["mass_kg_per_m2"], h.plane["covering"].(object)["layers"] = 50, 1
	p = h.derive(t).Planes[0]
	near(t, "least load of the covering", p.CoveringLeast, 0.95*0.4905, 0.001)
	near(t, "beyond the covering", p.BeyondCovering, 0.606-0.4905, 0.001)
}
