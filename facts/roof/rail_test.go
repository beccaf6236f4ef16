package roof_test

import (
	"fmt"
	"testing"
)

// TestRow holds a row of five against an example worked out by hand: rail 5.85 m,
// 50 mm at each end, two end and four mid clamps a rail.
func TestRow(t *testing.T) {
	r := standard(t).derive(t).Rails[0]
	for what, x := range map[string][2]float64{
		"beyond the modules": {r.BeyondMm.Value(), 50}, "modules": {r.Modules.Value(), 5}, "end clamps": {r.EndClampsDue.Value(), 2},
		"mid clamps": {r.MidClampsDue.Value(), 4}, "span": {r.SpanMm.Value(), 900}, "overhang": {r.OverhangMm.Value(), 250}, "fixings": {r.Fixings.Value(), 7},
	} {
		if x[0] != x[1] {
			t.Errorf("%s: %v, want %v", what, x[0], x[1])
		}
	}
	h := standard(t)
	h.xs[4] = 14800 // 204 mm from the fourth: a row of its own
	r = h.derive(t).Rails[0]
	if r.EndClampsDue.Value() != 4 || r.MidClampsDue.Value() != 3 {
		t.Errorf("two rows need %v end and %v mid clamps, want 4 and 3", r.EndClampsDue.Value(), r.MidClampsDue.Value())
	}
}

// TestExpansion: 10.8 m over 80 K grow by 19.9 mm, 5.85 m over 60 K by 8.1 mm at
// 23 µm/(m·K).
func TestExpansion(t *testing.T) {
	for _, c := range []struct{ length, kelvin, want float64 }{{10800, 80, 19.9}, {5850, 60, 8.1}} {
		h := standard(t)
		put(h.book, "rail_temperature_range_k", c.kelvin)
		h.railLength = c.length
		near(t, fmt.Sprintf("%v mm", c.length), h.derive(t).Rails[0].ExpansionMm, c.want, 0.5)
	}
}

// TestJoints looks at a break and at a rigid joint of a rail of 5.85 m.
func TestJoints(t *testing.T) {
	for _, c := range []struct {
		what, kind                  string
		at                          float64
		breaks, longest, over, held float64
	}{
		{"rigid", "rigid", 2328, 0, 5.85, 0, 0},
		{"between two modules", "open", 2348, 1, 3.502, 0, 602},     // at 12298
		{"below a module", "sliding", 2500, 1, 3.35, 1, 450},        // at 12450
		{"at the edge of a module", "open", 2358, 1, 3.492, 0, 592}, // at 12308
	} {
		h := standard(t)
		doc := h.document()
		plane := doc["roof"].(object)["planes"].(list)[0].(object)
		plane["rails"].(list)[0].(object)["joints"] = list{object{"id": "J", "at_mm": c.at, "kind": c.kind, "gap_mm": 20}}
		h.plane["rails"] = plane["rails"]
		r := h.derive(t).Rails[0]
		if r.Breaks.Value() != c.breaks || r.UnbrokenM.Value() != c.longest || r.AcrossBreaks.Value() != c.over {
			t.Errorf("%s: %v breaks, %v m, %v modules over, want %v, %v, %v", c.what, r.Breaks.Value(), r.UnbrokenM.Value(), r.AcrossBreaks.Value(), c.breaks, c.longest, c.over)
		}
		if c.breaks > 0 && (r.BreakFixingMm.Value() != c.held || r.JointGapMm.Value() != 20) {
			t.Errorf("%s: held within %v mm, gap %v", c.what, r.BreakFixingMm.Value(), r.JointGapMm.Value())
		}
	}
}

// TestSpanTable takes the largest span of the rows that cover the load.
func TestSpanTable(t *testing.T) {
	row := func(up, down, span float64) object {
		return object{"uplift_kn_per_m": up, "down_kn_per_m": down, "span_max_mm": span}
	}
	h := standard(t).withPeak(t, 0.90) // 1.460 kN/m up
	for _, c := range []struct {
		spans list
		want  float64
	}{
		{list{row(1, 9, 1400), row(1.5, 9, 1200), row(2.5, 9, 900)}, 1200}, {list{row(9, 1, 1400), row(9, 9, 900)}, 900},
		{list{row(1.4, 9, 1400)}, 0}, {list{object{"uplift_kn_per_m": 9, "span_max_mm": 900}}, 0}, {list{}, 0},
	} {
		h.railSheet["spans"] = c.spans
		if s := h.derive(t).Rails[0].SpanAllowedMm; s.Known() != (c.want > 0) || s.Known() && s.Value() != c.want {
			t.Errorf("%v: %v, want %v", c.spans, s.Value(), c.want)
		}
	}
}

// TestLever: a rail nearer the middle of a module carries more of it.
func TestLever(t *testing.T) {
	h := standard(t).withPeak(t, 0.90)
	even := h.derive(t).Rails[0].UpliftKnM.Value()
	doc := h.document()
	rails := doc["roof"].(object)["planes"].(list)[0].(object)["rails"].(list)
	rails[0].(object)["y_mm"] = h.y + 300
	h.plane["rails"] = rails
	f := h.derive(t)
	near(t, "farther out", f.Rails[0].UpliftKnM, even*2*440.5/1021.5, 0.01)
	near(t, "nearer the middle", f.Rails[1].UpliftKnM, even*2*581/1021.5, 0.01)
}

// TestLayers leaves the load on rails below other rails unknown.
func TestLayers(t *testing.T) {
	for _, by := range []any{"rails_below", nil} {
		h := standard(t)
		doc := h.document()
		rails := doc["roof"].(object)["planes"].(list)[0].(object)["rails"].(list)
		rails[0].(object)["carried_by"] = by
		if by == nil {
			delete(rails[0].(object), "carried_by")
		}
		h.plane["rails"] = rails
		if n := h.derive(t).Fixings[9].UpliftKn; n.Known() {
			t.Errorf("carried by %v: %v kN", by, n.Value())
		}
	}
}

// TestRailsEndToEnd: two rails in one line below a module carry what one would.
func TestRailsEndToEnd(t *testing.T) {
	h := standard(t).withPeak(t, 0.90)
	want := h.derive(t).Rails[1].UpliftKnM
	doc := h.document()
	rails := doc["roof"].(object)["planes"].(list)[0].(object)["rails"].(list)
	rails[0].(object)["length_mm"] = 3000
	h.plane["rails"] = append(rails, object{"id": "RC", "datasheet": "R", "x_mm": 12960, "y_mm": h.y + 440.5, "direction": "across_slope", "length_mm": 2840, "carried_by": "fixings", "joints": list{}})
	f := h.derive(t)
	if f.Modules[2].Rails.Value() != 2 || f.Rails[0].UpliftKnM.Value() != want.Value() || f.Rails[1].UpliftKnM.Value() != want.Value() {
		t.Errorf("%v rails, %v and %v kN/m, want %v", f.Modules[2].Rails.Value(), f.Rails[0].UpliftKnM.Value(), f.Rails[1].UpliftKnM.Value(), want.Value())
	}
	if f.Rails[0].BeyondMm.Value() >= 0 {
		t.Errorf("a rail that ends below a module reaches %v mm beyond it", f.Rails[0].BeyondMm.Value())
	}
}

// TestRailless shares a module among the fixings that hold it without a rail.
func TestRailless(t *testing.T) {
	h := standard(t).withPeak(t, 0.90)
	h.plane["rails"] = list{}
	fixings := list{}
	for i := range 4 {
		f := hookAt(letter("F", i), 10200, object{"module": "MA"})
		delete(f, "rail")
		fixings = append(fixings, f)
	}
	h.plane["fixings"] = fixings
	f := h.derive(t)
	near(t, "quarter of a module", f.Fixings[0].UpliftKn, f.Modules[0].UpliftKnM2.Value()*1.762*1.134/4, 0.01)
	h.plane["fixings"] = append(fixings, func() object { o := hookAt("G", 1, nil); delete(o, "rail"); return o }())
	if n := h.derive(t).Fixings[4].UpliftKn; n.Known() || len(n.Missing()) == 0 {
		t.Errorf("a fixing that holds nothing carries %v", n.Value())
	}
}

// TestFixingBeyondRail: a fixing 700 mm beyond the end of the rail holds nothing
// of it, whether it is said to hold the rail or not. The one before it carries
// (900 / 2 + 1100) mm.
func TestFixingBeyondRail(t *testing.T) {
	h := standard(t)
	h.hooks[6] = 16500
	fixings := h.document()["roof"].(object)["planes"].(list)[0].(object)["fixings"].(list)
	near(t, "beside it", h.derive(t).Fixings[5].TributaryMm, 1550, 0)
	delete(fixings[6].(object), "rail")
	h.plane["fixings"] = fixings
	near(t, "beside one that holds nothing", h.derive(t).Fixings[5].TributaryMm, 1550, 0)
}
