package roof

import "sunclause/facts/working"

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

var altitudeAnnex = working.Source{Document: "NA to BS EN 1991-1-4", Edition: "2005+A1:2010", Clause: "influence of altitude", How: working.Read}

// Formulas of the wind, in the order in which they follow from each other.
var (
	altitudeF     = working.NewFormula("c_alt", "", "1 + k_alt · A · (10 / z_alt)^0.2", altitudeAnnex)
	basicVelocity = working.NewFormula("v_b", "m/s", "c_dir · c_season · c_alt · v_b,map", en1991Wind("4.2", working.Read))
	terrainFactor = working.NewFormula("k_r", "", "0.19 · (z_0 / 0.05)^0.07", en1991Wind("4.3.2, (4.5)", working.Read))
	roughness     = working.NewFormula("c_r", "", "k_r · ln(z / z_0)", en1991Wind("4.3.2, (4.4)", working.Read))
	meanVelocity  = working.NewFormula("v_m", "m/s", "c_r · c_o · v_b", en1991Wind("4.3.1, (4.3)", working.Read))
	turbulence    = working.NewFormula("I_v", "", "1 / (c_o · ln(z / z_0))", en1991Wind("4.4, (4.7)", working.Read))
	basicPressure = working.NewFormula("q_b", "kN/m²", "ρ / 2 · v_b² / 1000", en1991Wind("4.5, (4.10)", working.Read))
	peakPressure  = working.NewFormula("q_p", "kN/m²", "(1 + 7 · I_v) · ρ / 2 · v_m² / 1000", en1991Wind("4.5, (4.8)", working.Read))
	exposure      = working.NewFormula("c_e", "", "q_p / q_b", en1991Wind("4.5, (4.9)", working.Read))
)

// windOn works out the wind on the plane at the height of its ridge.
func (s *slope) windOn() Pressure {
	p := Pressure{Terrain: s.terrain()}
	height := working.Stated("z_e", "m", s.doc.RidgeHeightM)
	z0 := s.book.Keyed("terrain_categories", "category", p.Terrain, "z0_m", "z_0")
	zMin := s.book.Keyed("terrain_categories", "category", p.Terrain, "zmin_m", "z_min")
	z := working.Greatest("z", "m", height, zMin)
	hills, rho := s.orography(), s.param("air_density_kg_per_m3", "ρ")
	p.AltitudeF = s.altitudeFactor(height)
	p.VbMPerS = basicVelocity.Of(s.param("wind_direction_factor", "c_dir"), s.param("wind_season_factor", "c_season"), p.AltitudeF, working.Stated("v_b,map", "m/s", s.in.Site.WindVbMapMPerS))
	p.Roughness = roughness.Of(terrainFactor.Of(z0), z, z0)
	p.VmMPerS = meanVelocity.Of(p.Roughness, hills, p.VbMPerS)
	p.Turbulence = turbulence.Of(hills, z, z0)
	p.BasicKnM2 = basicPressure.Of(rho, p.VbMPerS)
	p.PeakKnM2 = peakPressure.Of(p.Turbulence, rho, p.VmMPerS)
	p.Exposure = exposure.Of(p.PeakKnM2, p.BasicKnM2)
	return p
}

// altitudeFactor is the part of the basic velocity that a national annex gives
// to the altitude; its rate is 0 where the map holds it already. Land below the
// sea is taken at sea level.
func (s *slope) altitudeFactor(height working.Number) working.Number {
	above := working.Greatest("A", "m", working.Figure("A_0", "m", 0, "sea level", altitudeAnnex), working.Stated("A_site", "m", s.in.Site.AltitudeM))
	z := working.Greatest("z_alt", "m", working.Figure("z_10", "m", 10, "the height above which the factor falls", altitudeAnnex), height)
	return altitudeF.Of(s.param("wind_altitude_rate_per_m", "k_alt"), above, z)
}

// orography is 1 where no hill speeds the wind up. For a hill it is unknown: it
// needs the slopes of the ground, which the document does not have.
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
