package cable

import (
	"strings"

	"sunclause/facts/working"
	"sunclause/schema"
)

// coolerConductor is where the factor comes from. The formula was read as others
// quote it, the bounds of its use are from memory.
var coolerConductor = working.Source{Document: "BS 7671", Edition: "2018+A2:2022", Clause: "Appendix 4, 6.1, as quoted", How: working.Read}

var (
	stretchShare  = working.NewFormula("C_t·l", "m", "C_t,i · l_i", working.ByDefinition)
	factorsAt30   = working.NewFormula("C", "", "min(C_a; 1) · C_g · C_i · C_s", coolerConductor)
	stretchFactor = working.NewFormula("C_t,i", "", "(230 + t_p − (C² − (I_b / (n_par · I_t))²) · (t_p − 30)) / (230 + t_p)", coolerConductor)
)

// resistiveMm2 is the cross-section up to which the drop is one of resistance
// alone, and goes with the temperature as a whole.
const resistiveMm2 = 16

// dropFactor is the factor on the voltage drop for conductors that do not reach the
// temperature of full load, where the rule set takes one; each stretch counts
// with its length.
func (f *Run) dropFactor(p *plan, many working.Number, segments []Segment) working.Number {
	const symbol = "C_t"
	switch word := p.book.Word("ac_drop_temperature"); {
	case word.Value() == "full_load":
		return working.Counted(symbol, 1, f.At)
	case !word.Known() || word.Value() != "design_current":
		return working.Unknown(symbol, "", append(word.Missing(), working.Unstated("the rule set's ac_drop_temperature can be full_load or design_current"))...)
	case f.CsaMm2.Known() && f.CsaMm2.Value() > resistiveMm2, semiEnclosed(p.in):
		return working.Counted(symbol, 1, f.At)
	}
	var shares []working.Number
	for i := range segments {
		shares = append(shares, stretchShare.Of(f.stretchFactor(&segments[i], many), segments[i].LengthM.As("l_i")))
	}
	return working.Ratio(symbol, working.Sum("Σ(C_t,i · l_i)", "m", shares...), f.LengthM.As("l"))
}

// stretchFactor is the factor of one stretch. In air below 30 °C it is taken as
// at 30 °C, which the formula is made for; in the ground, or rated for another
// temperature than that of the drop, as at full load.
func (f *Run) stretchFactor(s *Segment, many working.Number) working.Number {
	rated, tp := s.RatingConductorC, f.ConductorMaxC
	if strings.HasPrefix(s.Method.Value(), "D") || rated.Known() && tp.Known() && rated.Value() != tp.Value() {
		return working.Counted("C_t,i", 1, s.At)
	}
	c := factorsAt30.Of(s.AmbientFactor.For("C_a"), s.GroupingFactor.For("C_g"), s.InsulationFactor.For("C_i"), s.SoilFactor.For("C_s"))
	return stretchFactor.Of(tp.As("t_p"), c, f.DesignCurrentA.As("I_b"), many, s.TabulatedA.As("I_t"))
}

// semiEnclosed reports whether the installation has a semi-enclosed fuse. Behind
// one a conductor can carry more, and be hotter, than its design current says.
func semiEnclosed(in *schema.Installation) bool {
	for _, d := range in.Datasheets.ProtectiveDevices {
		if d.Characteristic.Is("semi_enclosed") {
			return true
		}
	}
	return false
}
