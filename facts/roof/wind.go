package roof

import (
	"math"

	"sunclause/facts/working"
)

// Pressure is the wind on one plane.
type Pressure struct {
	Terrain    working.Text   `json:"terrain" words:"terrain category that counts"`
	AltitudeF  working.Number `json:"wind_altitude_factor" words:"factor for the altitude of the site"`
	VbMPerS    working.Number `json:"wind_vb_m_per_s" words:"basic wind velocity"`
	Roughness  working.Number `json:"wind_roughness_factor" words:"roughness factor at the ridge"`
	VmMPerS    working.Number `json:"wind_vm_m_per_s" words:"mean wind velocity at the ridge"`
	Turbulence working.Number `json:"wind_turbulence" words:"turbulence intensity at the ridge"`
	BasicKnM2  working.Number `json:"wind_basic_kn_per_m2" words:"basic velocity pressure"`
	Exposure   working.Number `json:"wind_exposure_factor" words:"exposure factor: peak over basic velocity pressure"`
	PeakKnM2   working.Number `json:"wind_peak_kn_per_m2" words:"peak velocity pressure at the ridge"`
}

// windOn works out the wind on the plane at the height of its ridge.
func (s *slope) windOn() Pressure {
	p := Pressure{Terrain: s.terrain()}
	height := working.Stated("z_e", "m", s.doc.RidgeHeightM)
	z0 := s.book.Keyed("terrain_categories", "category", p.Terrain, "z0_m", "z_0")
	zMin := s.book.Keyed("terrain_categories", "category", p.Terrain, "zmin_m", "z_min")
	z := working.Greatest("z", "m", height, zMin)
	p.AltitudeF = s.altitudeFactor(height)
	p.VbMPerS = working.Closure{Symbol: "v_b", Unit: "m/s", Text: "c_dir · c_season · c_alt · v_b,map", Source: en1991Wind("4.2", working.Read)}.Of(
		func(x ...float64) float64 { return x[0] * x[1] * x[2] * x[3] },
		s.param("wind_direction_factor", "c_dir"), s.param("wind_season_factor", "c_season"), p.AltitudeF, working.Stated("v_b,map", "m/s", s.in.Site.WindVbMapMPerS))
	kr := working.Closure{Symbol: "k_r", Text: "0.19 · (z_0 / 0.05)^0.07", Source: en1991Wind("4.3.2, (4.5)", working.Read)}.Of(
		func(x ...float64) float64 { return 0.19 * math.Pow(x[0]/0.05, 0.07) }, z0)
	p.Roughness = working.Closure{Symbol: "c_r", Text: "k_r · ln(z / z_0)", Source: en1991Wind("4.3.2, (4.4)", working.Read)}.Of(
		func(x ...float64) float64 { return x[0] * math.Log(x[1]/x[2]) }, kr, z, z0)
	co := s.orography()
	p.VmMPerS = working.Closure{Symbol: "v_m", Unit: "m/s", Text: "c_r · c_o · v_b", Source: en1991Wind("4.3.1, (4.3)", working.Read)}.Of(
		func(x ...float64) float64 { return x[0] * x[1] * x[2] }, p.Roughness, co, p.VbMPerS)
	p.Turbulence = working.Closure{Symbol: "I_v", Text: "1 / (c_o · ln(z / z_0))", Source: en1991Wind("4.4, (4.7)", working.Read)}.Of(
		func(x ...float64) float64 { return 1 / (x[0] * math.Log(x[1]/x[2])) }, co, z, z0)
	s.peak(&p)
	return p
}

// peak works out the velocity pressures.
func (s *slope) peak(p *Pressure) {
	rho := s.param("air_density_kg_per_m3", "ρ")
	p.BasicKnM2 = working.Closure{Symbol: "q_b", Unit: "kN/m²", Text: "ρ / 2 · v_b² / 1000", Source: en1991Wind("4.5, (4.10)", working.Read)}.Of(
		func(x ...float64) float64 { return x[0] / 2 * square(x[1]) / 1000 }, rho, p.VbMPerS)
	p.PeakKnM2 = working.Closure{Symbol: "q_p", Unit: "kN/m²", Text: "(1 + 7 · I_v) · ρ / 2 · v_m² / 1000", Source: en1991Wind("4.5, (4.8)", working.Read)}.Of(
		func(x ...float64) float64 { return (1 + 7*x[0]) * x[1] / 2 * square(x[2]) / 1000 }, p.Turbulence, rho, p.VmMPerS)
	p.Exposure = working.Closure{Symbol: "c_e", Text: "q_p / q_b", Source: en1991Wind("4.5, (4.9)", working.Read)}.Of(
		func(x ...float64) float64 { return x[0] / x[1] }, p.PeakKnM2, p.BasicKnM2)
}

// altitudeFactor is the part of the basic velocity that a national annex gives
// to the altitude; its rate is 0 where the map holds it already. Land below the
// sea is taken at sea level.
func (s *slope) altitudeFactor(height working.Number) working.Number {
	annex := working.Source{Document: "NA to BS EN 1991-1-4", Edition: "2005+A1:2010", Clause: "influence of altitude", How: working.Read}
	above := working.Greatest("A", "m", working.Figure("A_0", "m", 0, "sea level", annex), working.Stated("A_site", "m", s.in.Site.AltitudeM))
	z := working.Greatest("z_alt", "m", working.Figure("z_10", "m", 10, "the height above which the factor falls", annex), height)
	f := working.Closure{Symbol: "c_alt", Text: "1 + k_alt · A · (10 / z_alt)^0.2", Source: annex}
	return f.Of(func(x ...float64) float64 { return 1 + x[0]*x[1]*math.Pow(10/x[2], 0.2) }, s.param("wind_altitude_rate_per_m", "k_alt"), above, z)
}

// orography is 1 where no hill speeds the wind up. For a hill it is unknown: it
// wants the slopes of the ground, which the document does not have.
func (s *slope) orography() working.Number {
	flag := s.in.Site.OrographySignificant
	switch {
	case !flag.Stated():
		return working.Unknown("c_o", "", flag.At())
	case flag.Value:
		return working.Unknown("c_o", "", "what the hill adds to the wind")
	}
	return working.Figure("c_o", "", 1, "no significant orography", en1991Wind("4.3.3", working.Memory)).ChosenBy(flag.At())
}
