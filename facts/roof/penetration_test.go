package roof_test

import "testing"

// TestPenetrationFits: a tile keeps water out of a tiled roof only, and there is an
// underlay where the covering has one.
func TestPenetrationFits(t *testing.T) {
	for _, c := range []struct {
		covering, underlay, weathering, here string
		tile, same                           bool
	}{
		{"plain_tile", "membrane", "purpose_made_tile", "sealed_grommet", true, true}, {"plain_tile", "membrane", "flashing", "no_underlay", true, false},
		{"trapezoidal_sheet", "none", "purpose_made_tile", "no_underlay", false, true}, {"trapezoidal_sheet", "none", "sealed_boot", "taped", true, false},
	} {
		h := standard(t)
		h.plane["covering"] = object{"kind": c.covering, "underlay": c.underlay}
		h.plane["penetrations"] = list{object{"id": "P1", "kind": "cable", "x_mm": 9000, "y_mm": 20100, "weathering": c.weathering, "underlay": c.here}}
		p := h.derive(t).Penetrations[0]
		if p.TileFits.Value() != c.tile || p.UnderlayFits.Value() != c.same || !p.TileFits.Known() || !p.UnderlayFits.Known() || p.CarriesRun.Value() {
			t.Errorf("%+v: tile %v, underlay %v", c, p.TileFits.Value(), p.UnderlayFits.Value())
		}
		near(t, "above the ridge", p.InsideMm, -100, 0)
	}
}
