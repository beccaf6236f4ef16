package roof_test

import (
	"slices"
	"testing"
)

func clamp(id, kind, rail string, holds ...any) object {
	return object{"id": id, "datasheet": "E", "kind": kind, "rail": rail, "holds": holds}
}

func holds(module, side string, from float64) object {
	return object{"module": module, "side": side, "from_corner_mm": from}
}

// TestClampZone is common practice, no published source: a module whose clamps
// have to sit 225 to 400 mm from the corner of its long side.
func TestClampZone(t *testing.T) {
	for from, want := range map[float64]float64{225: 0, 312: 0, 400: 0, 224: 1, 401: 1, 0: 225, 881: 481} {
		h := standard(t)
		h.module["clamp_zones"] = list{object{"side": "long", "from_mm": 225, "to_mm": 400, "load_push_pa": 3600, "load_pull_pa": 1600}}
		h.clamps = list{clamp("C", "end", "RA", holds("MA", "left", from))}
		if c := h.derive(t).Clamps[0]; !c.OutsideMm.Known() || c.OutsideMm.Value() != want {
			t.Errorf("%v mm from the corner: %v mm outside, want %v", from, c.OutsideMm.Value(), want)
		}
	}
}

// TestClampSides: the sides of a portrait module at left and right are its long
// ones, of a landscape module its short ones.
func TestClampSides(t *testing.T) {
	for _, c := range []struct{ orientation, side, want string }{
		{"portrait", "left", "long"}, {"portrait", "top", "short"}, {"landscape", "right", "short"}, {"landscape", "bottom", "long"},
	} {
		h := standard(t)
		h.plane["modules"] = list{object{"id": "MA", "module": "M", "x_mm": 10000, "y_mm": 8000, "orientation": c.orientation}}
		h.clamps = list{clamp("C", "end", "RA", holds("MA", c.side, 300))}
		f := h.derive(t).Clamps[0]
		if !slices.Equal(f.Sides.Values(), []string{c.want}) || f.SideAllowed.Value() != (c.want == "long") {
			t.Errorf("%s of a %s module: %v, allowed %v", c.side, c.orientation, f.Sides.Values(), f.SideAllowed.Value())
		}
		if f.OutsideMm.Known() != (c.want == "long") {
			t.Errorf("%s: a side without zones has a distance to one", c.side)
		}
	}
}

// TestClampPlace measures a clamp from the corner that it states to its rail, which may
// run across the side gripped or along it.
func TestClampPlace(t *testing.T) {
	at := func(side, corner string, from float64) object {
		h := holds("MA", side, from)
		if corner != "" {
			h["corner"] = corner
		}
		return h
	}
	for _, c := range []struct { // module MA from 10000, 8000 to 11134, 9762; rail RA at 8440.5
		hold      object
		off, half float64
		corner    bool
	}{
		{at("left", "lower", 440.5), 0, 440.5 - 881, true}, {at("left", "", 440.5), 0, 440.5 - 881, true}, {at("left", "upper", 440.5), 881, 440.5 - 881, true},
		{at("left", "upper", 1321.5), 0, 440.5, true}, {at("left", "left", 450.5), 10, 450.5 - 881, false},
		{at("bottom", "left", 300), 440.5, 300 - 567, true}, {at("top", "lower", 300), 9762 - 8440.5, 300 - 567, false},
	} {
		h := standard(t)
		h.clamps = list{clamp("C", "end", "RA", c.hold)}
		f := h.derive(t).Clamps[0]
		near(t, "off its rail", f.OffRailMm, c.off, 0)
		near(t, "beyond the middle", f.BeyondHalfMm, c.half, 0)
		if f.CornerOnSide.Value() != c.corner {
			t.Errorf("%v: corner on side %v", c.hold, f.CornerOnSide.Value())
		}
	}
}

// TestClampBetween: a mid clamp grips two modules by sides that face each other, on a
// rail on which both lie.
func TestClampBetween(t *testing.T) {
	for _, c := range []struct {
		first, second object
		faces         bool
		gap           float64
		off           float64 // modules not on the rail
	}{
		{holds("MA", "right", 440.5), holds("MB", "left", 440.5), true, 20, 0}, {holds("MB", "left", 440.5), holds("MA", "right", 440.5), true, 20, 0},
		{holds("MA", "right", 440.5), holds("MC", "left", 440.5), true, 1174, 0}, {holds("MA", "left", 440.5), holds("MB", "left", 440.5), false, 0, 0},
		{holds("MA", "right", 440.5), holds("MA", "left", 440.5), false, 0, 0}, {holds("MA", "top", 440.5), holds("MB", "left", 440.5), false, 0, 0},
		{holds("MD", "right", 440.5), holds("ME", "left", 440.5), true, 20, 1},
	} {
		h := standard(t)
		h.railLength = 14600 - h.railFrom // to before the last module
		h.hooks = h.hooks[:4]
		h.clamps = list{clamp("C", "mid", "RA", c.first, c.second)}
		f := h.derive(t).Clamps[0]
		if f.SidesFace.Value() != c.faces || f.GripGapMm.Known() != c.faces || f.GripGapMm.Value() != c.gap || f.OffItsRail.Value() != c.off {
			t.Errorf("%v and %v: facing %v, %v mm apart, %v not on the rail", c.first, c.second, f.SidesFace.Value(), f.GripGapMm.Value(), f.OffItsRail.Value())
		}
	}
}

// TestClampsAtOnePlace: two clamps at one place of a side hold like one.
func TestClampsAtOnePlace(t *testing.T) {
	h := standard(t)
	for i, side := range []string{"left", "left", "right", "right"} {
		hold := holds("MA", side, 440.5)
		hold["corner"] = "lower"
		h.clamps = append(h.clamps, clamp(letter("C", i), "end", "RA", hold))
	}
	if n := h.derive(t).Modules[0].ClampsASide; n.Value() != 1 {
		t.Errorf("four clamps at two places are %v a side", n.Value())
	}
}

// TestClampLoad shares each module among its clamps: an end clamp carries a
// quarter, a mid clamp two.
func TestClampLoad(t *testing.T) {
	h := standard(t).withPeak(t, 0.90)
	for r, rail := range []string{"RA", "RB"} {
		from := 440.5
		h.clamps = append(h.clamps, clamp(letter("E", r), "end", rail, holds("MA", "left", from)),
			clamp(letter("F", r), "mid", rail, holds("MA", "right", from), holds("MB", "left", from)), clamp(letter("G", r), "end", rail, holds("MB", "right", from)))
	}
	f := h.derive(t)
	whole := 1.5 * 1.170 * 1.762 * 1.134
	near(t, "end clamp", f.Clamps[0].UpliftKn, whole/4, 0.1)
	near(t, "mid clamp", f.Clamps[1].UpliftKn, whole/2, 0.1)
	m := f.Modules[0]
	if m.Clamps.Value() != 4 || m.ClampsASide.Value() != 2 || f.Clamps[0].OffRailMm.Value() != 0 || f.Clamps[3].OffRailMm.Value() != 0 {
		t.Errorf("%v clamps, %v a side, %v mm off its rail", m.Clamps.Value(), m.ClampsASide.Value(), f.Clamps[0].OffRailMm.Value())
	}
	if f.Modules[4].Clamps.Value() != 0 || f.Modules[4].PullRatedPa.Known() {
		t.Errorf("a module that nothing holds is good for %v Pa", f.Modules[4].PullRatedPa.Value())
	}
}

// TestRatedAsClamped: a module is good for what its sheet and the zones of all its
// clamps allow.
func TestRatedAsClamped(t *testing.T) {
	h := standard(t)
	zone := func(from, to, push, pull float64) object {
		return object{"side": "long", "from_mm": from, "to_mm": to, "load_push_pa": push, "load_pull_pa": pull}
	}
	h.module["clamp_zones"] = list{zone(200, 500, 2400, 1200), zone(300, 400, 5000, 2000)}
	for _, c := range []struct{ lower, upper, push, pull float64 }{{350, 350, 3600, 1600}, {350, 450, 2400, 1200}, {350, 600, 0, 0}} {
		h.clamps = list{clamp("A", "end", "RA", holds("MA", "left", c.lower)), clamp("B", "end", "RB", holds("MA", "left", c.upper))}
		m := h.derive(t).Modules[0]
		if m.PushRatedPa.Known() != (c.push > 0) || c.push > 0 && (m.PushRatedPa.Value() != c.push || m.PullRatedPa.Value() != c.pull) {
			t.Errorf("clamps at %v and %v: %v and %v Pa, want %v and %v", c.lower, c.upper, m.PushRatedPa.Value(), m.PullRatedPa.Value(), c.push, c.pull)
		}
	}
}

// TestTorque takes the last torque read of a clamp.
func TestTorque(t *testing.T) {
	h := standard(t)
	h.clamps = list{clamp("C", "end", "RA", holds("MA", "left", 440))}
	if n := h.derive(t).Clamps[0].TorqueNM; n.Known() || len(n.Missing()) != 1 {
		t.Errorf("no reading gives %v", n.Value())
	}
}
