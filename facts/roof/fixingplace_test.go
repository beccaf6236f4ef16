package roof_test

import "testing"

// TestFixingOnRail measures from a fixing to its rail, to the outline of the plane, and
// to the module that it holds without a rail.
func TestFixingOnRail(t *testing.T) {
	h := standard(t) // rail RA at y 8440.5, module MA from 10000 to 11134 and 8000 to 9762
	h.plane["fixings"] = list{hookAt("A", 10200, nil), hookAt("B", 10200, object{"y_mm": 8450.5}), hookAt("C", 10200, object{"y_mm": 24000}),
		hookAt("D", 10200, object{"module": "MA"}), hookAt("E", 9700, object{"module": "MA", "y_mm": 7600}), hookAt("F", 10200, nil)}
	for i := 3; i < 6; i++ {
		delete(h.plane["fixings"].(list)[i].(object), "rail")
	}
	f := h.derive(t).Fixings
	for i, c := range []struct{ rail, inside float64 }{{0, 8440.5}, {10, 8450.5}, {24000 - 8440.5, -4000}} {
		near(t, f[i].ID+" off its rail", f[i].OffRailMm, c.rail, 0)
		near(t, f[i].ID+" inside the plane", f[i].InsideMm, c.inside, 0)
		if !f[i].CarriesRail.Value() || f[i].OffModuleMm.Known() {
			t.Errorf("%s carries a rail: %v, and is %v mm off a module", f[i].ID, f[i].CarriesRail.Value(), f[i].OffModuleMm.Value())
		}
	}
	near(t, "below its module", f[3].OffModuleMm, 0, 0)
	near(t, "beside its module", f[4].OffModuleMm, 500, 0)
	if f[3].CarriesRail.Value() || !f[3].CarriesRail.Known() || f[5].CarriesRail.Known() {
		t.Error("what names a module carries a rail, or what names nothing is known to carry something")
	}
}

// TestRailPlace: a rail lies on the plane over its whole length, and carries modules or
// the rails above it.
func TestRailPlace(t *testing.T) {
	h := standard(t)
	h.railLength = 20100 // from 9950
	r := h.derive(t).Rails[0]
	near(t, "beyond the right side", r.InsideMm, -50, 0)
	near(t, "modules on it", r.Carries, 5, 0)
	near(t, "rails below it", r.OnRails, 0, 0)

	h = standard(t)
	rail := func(id, direction, by string, x, y, length float64) object {
		return object{"id": id, "direction": direction, "carried_by": by, "x_mm": x, "y_mm": y, "length_mm": length, "joints": list{}}
	}
	h.plane["fixings"] = list{}
	h.plane["rails"] = list{rail("L1", "up_slope", "fixings", 10200, 7900, 2000), rail("L2", "up_slope", "fixings", 15000, 7900, 2000),
		rail("L3", "up_slope", "fixings", 20000, 7900, 2000), rail("U", "across_slope", "rails_below", 9950, 8440, 5850)}
	f := h.derive(t).Rails
	for i, want := range []float64{1, 1, 0, 5} {
		near(t, f[i].ID+" carries", f[i].Carries, want, 0)
	}
	near(t, "rails below the upper one", f[3].OnRails, 2, 0)
}

// TestOutline: a plane between two hips is a trapezium. A hip that rises at 45° is 1000 mm
// from where a box 1414 mm beside it begins.
func TestOutline(t *testing.T) {
	h := standard(t)
	h.shape = "hipped"
	h.plane["left_edge"], h.plane["right_edge"] = "sloping", "sloping"
	if n := h.derive(t).Modules[0].InsideMm; n.Known() {
		t.Errorf("with no hip drawn a module is %v mm inside", n.Value())
	}
	h.plane["edges"] = list{line("hip", 0, 0, 12000, 12000), object{"id": "RH", "kind": "hip", "from_x_mm": 30000, "from_y_mm": 0, "to_x_mm": 18000, "to_y_mm": 12000}}
	h.plane["slope_length_mm"] = 12000
	for _, c := range []struct{ x, inside float64 }{
		{9762 + 1414.2136, 1000}, {9762, 0}, {9000, -762 / 1.4142136}, {30000 - 9762 - 1134, 0}, {30000 - 9762 - 1134 + 100, -100 / 1.4142136},
	} {
		h.xs = []float64{c.x}
		near(t, "inside the trapezium", h.derive(t).Modules[0].InsideMm, c.inside, 0.001)
	}
}
