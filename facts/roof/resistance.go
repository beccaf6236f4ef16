package roof

import (
	"sunclause/facts/working"
	"sunclause/schema"
)

// The directions in which a part resists.
func uplift(l schema.FixingLoad) schema.Number     { return l.UpliftKn }
func down(l schema.FixingLoad) schema.Number       { return l.DownKn }
func alongSlope(l schema.FixingLoad) schema.Number { return l.AlongSlopeKn }

// resistance is the design resistance of a part: as its maker declares it, or
// what was reached in the test divided by the factor for what gave way.
func (s *slope) resistance(symbol string, sheet *schema.FixingDatasheet, ref schema.Text, of func(schema.FixingLoad) schema.Number) working.Number {
	if sheet == nil {
		return working.Unknown(symbol, "kN", ref.At())
	}
	l := sheet.Load
	declared := working.Stated("F_R", "kN", of(l))
	switch {
	case !l.Basis.Stated():
		return working.Unknown(symbol, "kN", l.Basis.At())
	case l.Basis.Is("design"):
		return declared.As(symbol)
	}
	factor := s.book.Keyed("fixing_material_factors", "failure", working.StatedText(l.Failure), "factor", "γ_M")
	f := working.Closure{Symbol: symbol, Unit: "kN", Text: "F_R / γ_M", Source: working.Source{Document: "MCS 012", Edition: "3.0", How: working.Read}}
	return f.Of(func(x ...float64) float64 { return x[0] / x[1] }, declared, factor)
}
