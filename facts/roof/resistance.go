package roof

import (
	"sunclause/facts/working"
	"sunclause/schema"
)

var resistanceOf = working.NewFormula("F_Rd", "kN", "F_R / γ_M", working.Source{Document: "MCS 012", Edition: "3.0", How: working.Read})

// resistance is the design resistance of a part in one direction: as its maker
// declares it, or what was reached in the test divided by the factor for what gave
// way.
func (s *slope) resistance(load *schema.FixingLoad, of schema.Number) working.Number {
	switch {
	case !load.Basis.Stated():
		return working.Unknown("F_Rd", "kN", load.Basis.At())
	case load.Basis.Is("design"):
		return working.Stated("F_Rd", "kN", of)
	}
	factor := s.book.Keyed("fixing_material_factors", "failure", working.StatedText(load.Failure), "factor", "γ_M")
	return resistanceOf.Of(working.Stated("F_R", "kN", of), factor)
}
