package roof_test

import (
	"fmt"
	"slices"
	"testing"

	"sunclause/facts/working"
)

// TestPeakPressure holds the wind against published calculations.
func TestPeakPressure(t *testing.T) {
	for _, c := range []struct {
		source                          string
		vb                              float64
		terrain                         string
		z, cr, vm, iv, ce, qp, tolerant float64 // 0 where the print does not have it
	}{
		{"project print-out, category I", 27, "I", 3.5, 0, 0, 0, 0, 0.989, 0.5},
		{"wind load sheet, category III", 22, "III", 7.02, 0.6791, 14.939, 0.3172, 0, 0.449, 0.5},
		{"wind pressure sheet, category 0", 25, "0", 77.36, 1.585, 39.624, 0.098, 0, 1.658, 0.5},
		{"wind pressure sheet, category 0", 25, "0", 28, 1.426, 0, 0.109, 0, 1.403, 0.5},
		{"worksheet print of a hall, below the least height of category IV", 26, "IV", 9, 0.54, 0, 0.434, 1.18, 0.497, 0.5},
		{"calculation print, flat roof, category III", 22, "III", 13.48, 0.82, 18.0, 0.263, 0, 0.577, 1},
		{"duopitch calculation print, category II", 23, "II", 5.2, 0.88, 20.3, 0.215, 0, 0.65, 1},
		{"duopitch calculation print, category II", 23, "II", 6.813, 0.93, 21.5, 0.203, 0, 0.70, 1},
	} {
		t.Run(fmt.Sprintf("%s at %v m", c.terrain, c.z), func(t *testing.T) {
			h := standard(t)
			h.site["terrain"], h.site["distance_into_town_km"] = c.terrain, 5
			h.site["wind_vb_map_m_per_s"], h.plane["ridge_height_m"] = c.vb, c.z
			p := h.derive(t).Planes[0]
			near(t, "peak velocity pressure", p.PeakKnM2, c.qp, c.tolerant)
			for _, x := range []struct {
				what string
				want float64
			}{{"roughness", c.cr}, {"mean", c.vm}, {"turbulence", c.iv}, {"exposure", c.ce}} {
				got := map[string]working.Number{"roughness": p.Roughness, "mean": p.VmMPerS, "turbulence": p.Turbulence, "exposure": p.Exposure}[x.what]
				if x.want != 0 {
					near(t, x.what, got, x.want, 1)
				}
			}
		})
	}
}

// TestExposureFactor holds c_e against values worked out from the formulas of
// EN 1991-1-4 apart from this program.
func TestExposureFactor(t *testing.T) {
	categories := []string{"0", "I", "II", "III", "IV"}
	for z, row := range map[float64][]float64{
		4: {2.487, 2.243, 1.801, 1.281, 1.176}, 5: {2.604, 2.367, 1.929, 1.281, 1.176}, 6: {2.702, 2.470, 2.037, 1.389, 1.176},
		7: {2.786, 2.558, 2.130, 1.483, 1.176}, 9: {2.925, 2.706, 2.286, 1.641, 1.176}, 10: {2.985, 2.769, 2.352, 1.709, 1.176},
		12: {3.088, 2.879, 2.469, 1.829, 1.294}, 15: {3.218, 3.016, 2.616, 1.980, 1.444},
	} {
		for i, want := range row {
			h := standard(t)
			h.site["terrain"], h.site["distance_into_town_km"], h.plane["ridge_height_m"] = categories[i], 5, z
			near(t, fmt.Sprintf("c_e of %s at %v m", categories[i], z), h.derive(t).Planes[0].Exposure, want, 0.05)
		}
	}
}

// TestPeakTable holds q_p against a table worked out apart from this program.
func TestPeakTable(t *testing.T) {
	for vb, row := range map[float64][2]float64{21: {0.562, 0.648}, 22.5: {0.645, 0.744}, 24: {0.733, 0.847}, 25: {0.796, 0.919}, 27: {0.928, 1.072}, 30: {1.146, 1.323}} {
		for i, z := range []float64{6, 10} {
			h := standard(t)
			h.site["wind_vb_map_m_per_s"], h.plane["ridge_height_m"] = vb, z
			near(t, fmt.Sprintf("q_p for %v m/s at %v m", vb, z), h.derive(t).Planes[0].PeakKnM2, row[i], 0.1)
		}
	}
}

// TestAltitude holds the British altitude factor against its formula, and the
// basic pressure against the example of SCI P394, section 9.1, as quoted.
func TestAltitude(t *testing.T) {
	for _, c := range []struct{ altitude, z, want float64 }{{150, 8, 1.150}, {200, 12, 1.1928}, {300, 15, 1.2766}, {-3, 8, 1}} {
		h := standard(t)
		put(h.book, "wind_altitude_rate_per_m", 0.001)
		h.site["altitude_m"], h.plane["ridge_height_m"] = c.altitude, c.z
		near(t, fmt.Sprintf("c_alt at %v m", c.altitude), h.derive(t).Planes[0].AltitudeF, c.want, 0.1)
	}
	h := standard(t)
	put(h.book, "wind_altitude_rate_per_m", 0.001)
	put(h.book, "air_density_kg_per_m3", 1.226)
	h.site["altitude_m"], h.site["wind_vb_map_m_per_s"] = 100, 22.1
	p := h.derive(t).Planes[0]
	near(t, "v_b", p.VbMPerS, 24.31, 0.1)
	near(t, "q_b", p.BasicKnM2, 0.3623, 0.1)
}

// TestTerrain tells which category counts near the sea and near the edge of the
// town (EN 1991-1-4, A.2), and that nothing is assumed.
func TestTerrain(t *testing.T) {
	for _, c := range []struct {
		stated    string
		sea, town any
		want      string // "" for not known
	}{
		{"country", 2, nil, "II"}, {"country", 1.99, nil, "0"}, {"sea", nil, nil, "0"}, {"0", nil, nil, "0"}, {"I", 10, nil, "I"},
		{"town", 10, 1, "III"}, {"town", 10, 0.9, "II"}, {"IV", 10, 3, "IV"}, {"IV", 10, 0.5, "II"}, {"IV", 1, 3, "0"},
		{"country", nil, nil, ""}, {"town", 10, nil, ""},
	} {
		h := standard(t)
		delete(h.site, "distance_to_sea_km")
		delete(h.site, "distance_into_town_km")
		h.site["terrain"] = c.stated
		if c.sea != nil {
			h.site["distance_to_sea_km"] = c.sea
		}
		if c.town != nil {
			h.site["distance_into_town_km"] = c.town
		}
		if got := h.derive(t).Planes[0].Terrain; got.Known() != (c.want != "") || got.Value() != c.want {
			t.Errorf("%s, %v km from the sea, %v km into the town: %q, want %q", c.stated, c.sea, c.town, got.Value(), c.want)
		}
	}
}

// TestHill leaves the wind on a hill to an engineer.
func TestHill(t *testing.T) {
	for _, orography := range []any{true, nil} {
		h := standard(t)
		h.site["orography_significant"] = orography
		if orography == nil {
			delete(h.site, "orography_significant")
		}
		want := "what the hill adds to the wind"
		if orography == nil {
			want = "/site/orography_significant"
		}
		if q := h.derive(t).Planes[0].PeakKnM2; q.Known() || !slices.Contains(working.Pointers(q.Missing()), want) {
			t.Errorf("orography %v: the peak is %v, missing %v", orography, q.Value(), q.Missing())
		}
	}
}
