package roof_test

import (
	"encoding/json"
	"maps"
	"math"
	"reflect"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"sunclause/facts/roof"
	"sunclause/facts/working"
	"sunclause/schema"
)

// anyHouse is the standard house with its site, roof and row drawn at random.
func anyHouse(t *testing.T, r *rapid.T) *house {
	h := standard(t)
	whole := func(lo, hi int, what string) float64 { return float64(rapid.IntRange(lo, hi).Draw(r, what)) }
	h.site["wind_vb_map_m_per_s"] = whole(20, 35, "v_b")
	h.site["terrain"] = rapid.SampledFrom([]string{"0", "I", "II"}).Draw(r, "terrain")
	h.site["snow_sk_kn_per_m2"] = whole(0, 20, "s_k") / 10
	h.plane["pitch_deg"] = whole(5, 75, "pitch")
	h.plane["ridge_height_m"] = whole(3, 20, "height")
	h.plane["building_length_m"], h.plane["building_width_m"] = whole(5, 40, "length"), whole(5, 40, "width")
	h.xs, h.y = nil, whole(0, 12000, "y")
	x := whole(0, 9000, "x")
	for range rapid.IntRange(1, 5).Draw(r, "modules") {
		h.xs = append(h.xs, x)
		x += 1134 + whole(0, 60, "gap")
	}
	h.railFrom = h.xs[0] - 50
	h.railLength = x - h.railFrom
	h.hooks = nil
	for at := h.railFrom + whole(0, 300, "first"); at < h.railFrom+h.railLength; at += whole(300, 1500, "spacing") {
		h.hooks = append(h.hooks, at)
	}
	return h
}

// TestHigherWind: a higher wind lowers no load on anything.
func TestHigherWind(t *testing.T) {
	rapid.Check(t, func(r *rapid.T) {
		h := anyHouse(t, r)
		before := h.derive(t)
		h.site["wind_vb_map_m_per_s"] = h.site["wind_vb_map_m_per_s"].(float64) + float64(rapid.IntRange(1, 10).Draw(r, "more"))
		after := h.derive(t)
		for i := range before.Modules {
			notLess(r, "pull", before.Modules[i].PullPa, after.Modules[i].PullPa)
			notLess(r, "push", before.Modules[i].PushPa, after.Modules[i].PushPa)
		}
		for i := range before.Fixings {
			notLess(r, "uplift", before.Fixings[i].UpliftKn, after.Fixings[i].UpliftKn)
			notLess(r, "down", before.Fixings[i].DownKn, after.Fixings[i].DownKn)
			notLess(r, "screws", before.Fixings[i].PullKn, after.Fixings[i].PullKn)
		}
	})
}

// TestWiderSpacing: with hooks farther apart none between two others carries
// less, as long as the wind lifts at all.
func TestWiderSpacing(t *testing.T) {
	rapid.Check(t, func(r *rapid.T) {
		h := standard(t).withPeak(t, float64(rapid.IntRange(3, 20).Draw(r, "peak"))/10)
		narrow := float64(rapid.IntRange(300, 900).Draw(r, "spacing"))
		wide := narrow + float64(rapid.IntRange(0, 300).Draw(r, "wider"))
		h.hooks = []float64{12000 - narrow, 12000, 12000 + narrow}
		before := h.derive(t)
		h.hooks = []float64{12000 - wide, 12000, 12000 + wide}
		after := h.derive(t)
		notLess(r, "uplift", before.Fixings[1].UpliftKn, after.Fixings[1].UpliftKn)
		notLess(r, "down", before.Fixings[1].DownKn, after.Fixings[1].DownKn)
		notLess(r, "span", before.Rails[0].SpanMm, after.Rails[0].SpanMm)
	})
}

// TestLessPenetration: a shorter screw, thicker packing or lighter timber hold no
// better.
func TestLessPenetration(t *testing.T) {
	rapid.Check(t, func(r *rapid.T) {
		h := standard(t)
		length := rapid.IntRange(40, 120).Draw(r, "length")
		h.screw["length_mm"] = length
		h.screw["diameter_mm"] = 8
		before := h.derive(t).Fixings[0].WithdrawalKn
		h.screw["length_mm"] = length - rapid.IntRange(0, 30).Draw(r, "shorter")
		h.rafters["timber_class"] = rapid.SampledFrom([]string{"C14", "C16", "C18", "C22", "C24"}).Draw(r, "class")
		notLess(r, "withdrawal", h.derive(t).Fixings[0].WithdrawalKn, before)
	})
}

// TestMirrored: the roof seen in a mirror has the same facts, left for right.
func TestMirrored(t *testing.T) {
	rapid.Check(t, func(r *rapid.T) {
		h := anyHouse(t, r)
		h.plane["openings"] = list{object{"id": "W", "kind": "roof_window", "x_mm": 12000, "y_mm": 9000, "width_mm": 600, "length_mm": 900}}
		f := h.derive(t)
		m := mirrored(h)
		g := m.derive(t)
		for i := range f.Modules {
			a, b := f.Modules[i], g.Modules[i]
			same(r, "left", a.LeftMm, b.RightMm)
			same(r, "right", a.RightMm, b.LeftMm)
			for what, n := range map[string][2]working.Number{"edge": {a.EdgeMm, b.EdgeMm}, "gap": {a.GapMm, b.GapMm}, "net": {a.NetUplift, b.NetUplift}, "opening": {a.OpeningMm, b.OpeningMm}} {
				same(r, what, n[0], n[1])
			}
		}
		sameFixings(r, f, g)
		for i := range f.Rails {
			same(r, "span", f.Rails[i].SpanMm, g.Rails[i].SpanMm)
			same(r, "overhang", f.Rails[i].OverhangMm, g.Rails[i].OverhangMm)
			same(r, "beyond", f.Rails[i].BeyondMm, g.Rails[i].BeyondMm)
		}
		same(r, "window", f.Openings[0].ClearanceMm, g.Openings[0].ClearanceMm)
		same(r, "beside the window", f.Openings[0].SideAccessMm, g.Openings[0].SideAccessMm)
	})
}

// mirrored turns left and right of a house round.
func mirrored(h *house) *house {
	m := *h
	m.xs, m.hooks, m.plane = nil, nil, object{}
	for k, v := range h.plane {
		m.plane[k] = v
	}
	for _, x := range h.xs {
		m.xs = append(m.xs, 30000-x-1134)
	}
	for _, x := range h.hooks {
		m.hooks = append(m.hooks, 30000-x)
	}
	m.railFrom = 30000 - h.railFrom - h.railLength
	m.plane["openings"] = list{object{"id": "W", "kind": "roof_window", "x_mm": 30000 - 12600, "y_mm": 9000, "width_mm": 600, "length_mm": 900}}
	return &m
}

func sameFixings(r *rapid.T, f, g roof.Facts) {
	for i := range f.Fixings {
		for what, n := range map[string][2]working.Number{"uplift": {f.Fixings[i].UpliftKn, g.Fixings[i].UpliftKn}, "down": {f.Fixings[i].DownKn, g.Fixings[i].DownKn},
			"length": {f.Fixings[i].TributaryMm, g.Fixings[i].TributaryMm}} {
			same(r, what, n[0], n[1])
		}
	}
}

// TestMoved: moving the whole array moves each distance by as much, and changes no
// gap, span or share.
func TestMoved(t *testing.T) {
	rapid.Check(t, func(r *rapid.T) {
		h := anyHouse(t, r)
		before := h.derive(t)
		dx, dy := float64(rapid.IntRange(-3000, 9000).Draw(r, "dx")), float64(rapid.IntRange(-3000, 9000).Draw(r, "dy"))
		h.y += dy
		h.railFrom += dx
		h.xs, h.hooks = slices.Clone(h.xs), slices.Clone(h.hooks)
		for i := range h.xs {
			h.xs[i] += dx
		}
		for i := range h.hooks {
			h.hooks[i] += dx
		}
		after := h.derive(t)
		for i, a := range before.Modules {
			b := after.Modules[i]
			moved(r, "eaves", a.EavesMm, b.EavesMm, dy)
			moved(r, "ridge", a.TopMm, b.TopMm, -dy)
			moved(r, "left", a.LeftMm, b.LeftMm, dx)
			moved(r, "right", a.RightMm, b.RightMm, -dx)
			moved(r, "gap", a.GapMm, b.GapMm, 0)
		}
		for i, a := range before.Rails {
			moved(r, "span", a.SpanMm, after.Rails[i].SpanMm, 0)
			moved(r, "beyond", a.BeyondMm, after.Rails[i].BeyondMm, 0)
		}
	})
}

func notLess(r *rapid.T, what string, low, high working.Number) {
	r.Helper()
	if !low.Known() || !high.Known() {
		r.Fatalf("%s: not known, missing %v %v", what, low.Missing(), high.Missing())
	}
	if high.Value() < low.Value()-1e-9*math.Abs(low.Value()) {
		r.Fatalf("%s fell from %v to %v", what, low.Value(), high.Value())
	}
}

func same(r *rapid.T, what string, a, b working.Number) {
	r.Helper()
	moved(r, what, a, b, 0)
}

func moved(r *rapid.T, what string, a, b working.Number, by float64) {
	r.Helper()
	if a.Known() != b.Known() || a.Known() && math.Abs(a.Value()+by-b.Value()) > 1e-6 {
		r.Fatalf("%s: %v (%v) became %v (%v), want it moved by %v", what, a.Value(), a.Known(), b.Value(), b.Known(), by)
	}
}

// TestDamaged leaves members out and changes numbers: nothing panics, and what is
// known is finite, and what is not names what is missing.
func TestDamaged(t *testing.T) {
	rapid.Check(t, func(r *rapid.T) {
		h := anyHouse(t, r)
		for _, part := range []object{h.site, h.module, h.hook, h.screw, h.railSheet, h.rafters, h.plane} {
			for _, name := range slices.Sorted(maps.Keys(part)) {
				switch rapid.IntRange(0, 20).Draw(r, name) {
				case 0:
					delete(part, name)
				case 1:
					if _, isNumber := part[name].(float64); isNumber {
						part[name] = rapid.SampledFrom([]float64{1e-9, 1, 1e9}).Draw(r, "value")
					}
				}
			}
		}
		raw, _ := json.Marshal(h.document())
		d, err := schema.Decode("house", raw)
		if err != nil {
			return
		}
		finite(r, reflect.ValueOf(roof.Derive(&d.Installation, h.book)))
	})
}

// finite walks all numbers of the facts.
func finite(r *rapid.T, v reflect.Value) {
	if n, ok := v.Interface().(working.Number); ok {
		if n.Known() && (math.IsNaN(n.Value()) || math.IsInf(n.Value(), 0) || len(n.Missing()) > 0) {
			r.Fatalf("%s = %s is %v, missing %v", n.Symbol(), n.Formula(), n.Value(), n.Missing())
		}
		if !n.Known() && len(n.Missing()) == 0 {
			r.Fatalf("%s = %s is not known, and nothing is missing", n.Symbol(), n.Formula())
		}
		return
	}
	switch v.Kind() {
	case reflect.Slice:
		for i := range v.Len() {
			finite(r, v.Index(i))
		}
	case reflect.Struct:
		for i := range v.NumField() {
			if v.Type().Field(i).IsExported() {
				finite(r, v.Field(i))
			}
		}
	}
}
