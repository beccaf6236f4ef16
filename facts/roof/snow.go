package roof

import (
	"math"

	"sunclause/facts/working"
)

// Snow is the snow on one plane.
type Snow struct {
	SnowShape working.Number `json:"snow_shape" words:"snow load shape coefficient"`
	SnowKnM2  working.Number `json:"snow_kn_per_m2" words:"snow on a square metre of roof in plan"`
	Obstacles working.Text   `json:"snow_obstruction" words:"what keeps snow from sliding off"`
}

// Formulas of snow. Those of a drift against a wall stand in annex B.
var (
	driftLaw = en1991Snow("B.4", working.Read)

	snowOnRoof    = working.NewFormula("s", "kN/m²", "μ · C_e · C_t · s_k", en1991Snow("5.2", working.Read))
	driftByWall   = working.NewFormula("h_5", "m", "5 · h", driftLaw)
	driftByHeight = working.NewFormula("μ_h", "", "2 · h / s_k", driftLaw)
	driftByLength = working.NewFormula("μ_l", "", "2 · b_2 / l_s", driftLaw)
)

func (s *slope) snowOn() Snow {
	w := Snow{Obstacles: working.StatedText(s.doc.SnowObstruction), SnowShape: s.snowShape()}
	w.SnowKnM2 = snowOnRoof.Of(w.SnowShape, s.param("snow_exposure_factor", "C_e"), s.param("snow_thermal_factor", "C_t"), working.Stated("s_k", "kN/m²", s.in.Site.SnowSkKnPerM2))
	return w
}

// snowShape is the greatest shape coefficient: of snow as it falls, as it drifts
// over the ridge, held back by an obstruction, or drifted against a wall.
func (s *slope) snowShape() working.Number {
	fallen := working.Lookup{Symbol: "μ_1", Text: "μ_1 by the pitch α", Source: en1991Snow("5.3.2, table 5.2", working.Read)}.Of(
		func(x ...float64) float64 { return byPitch(0.8, x[0]) }, s.pitch)
	drifted := working.Lookup{Symbol: "μ_d", Text: "μ by the pitch α with its peak μ_p", Source: en1991Snow("5.3.3 and national annexes", working.Memory)}.Of(
		func(x ...float64) float64 { return byPitch(x[1], x[0]) }, s.pitch, s.param("snow_drifted_peak", "μ_p"))
	cases := []working.Number{fallen, drifted}
	switch held := s.doc.SnowObstruction; {
	case !held.Stated():
		return working.Unknown("μ", "", held.At())
	case !held.Is("none"):
		cases = append(cases, working.Figure("μ_held", "", 0.8, "snow that cannot slide off", en1991Snow("5.3.2(2)", working.Memory)).ChosenBy(held.At()))
	}
	if s.doc.SnowDrift.Stated() {
		cases = append(cases, s.againstWall())
	} else if at := s.wallAt(); at != nil {
		return working.Unknown("μ", "", append(at, s.doc.SnowDrift.At())...)
	}
	return working.Greatest("μ", "", cases...)
}

// byPitch is the shape coefficient of a plane: 0.8 on gentle slopes, rising to a
// peak at 30° where snow drifts over the ridge, and falling to nothing at 60°.
func byPitch(peak, pitch float64) float64 {
	switch {
	case pitch <= 15:
		return 0.8
	case pitch <= 30:
		return 0.8 + (peak-0.8)*(pitch-15)/15
	}
	return math.Max(0, peak*(60-pitch)/30)
}

// againstWall is the shape coefficient of a drift against a step or parapet.
func (s *slope) againstWall() working.Number {
	d := s.doc.SnowDrift
	h, b1, b2 := working.Stated("h", "m", d.HeightM), working.Stated("b_1", "m", d.LengthB1M), working.Stated("b_2", "m", d.LengthB2M)
	length := working.Least("l_s", "m", driftByWall.Of(h), b1, working.Figure("15", "m", 15, "longest drift", driftLaw))
	sk := working.Stated("s_k", "kN/m²", s.in.Site.SnowSkKnPerM2)
	return working.Least("μ_w", "", driftByHeight.Of(h, sk), driftByLength.Of(b2, length), working.Figure("8", "", 8, "greatest coefficient", driftLaw))
}

// wallAt names the sides and lines of the plane against which snow may drift.
func (s *slope) wallAt() []string {
	var at []string
	p := s.doc
	if p.TopEdge.Is("abutment") {
		at = append(at, p.TopEdge.At())
	}
	if p.BottomEdge.Is("abutment") || p.BottomEdge.Is("parapet") {
		at = append(at, p.BottomEdge.At())
	}
	for _, e := range p.Edges {
		if e.Kind.Is("abutment") || e.Kind.Is("parapet") {
			at = append(at, e.Kind.At())
		}
	}
	for _, side := range []string{p.LeftEdge.Value, p.RightEdge.Value} {
		if side == "abutment" {
			at = append(at, p.LeftEdge.At(), p.RightEdge.At())
		}
	}
	return at
}
