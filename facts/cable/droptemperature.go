package cable

import (
	"math"
	"strings"

	"sunclause/facts/working"
	"sunclause/schema"
)

// coolerConductor is where the factor comes from. The formula was read as others
// quote it, the bounds of its use are from memory.
var coolerConductor = working.Source{Document: "BS 7671", Edition: "2018+A2:2022", Clause: "Appendix 4, 6.1, as quoted", How: working.Read}

// resistiveMm2 is the cross-section up to which the drop is one of resistance
// alone, and goes with the temperature as a whole.
const resistiveMm2 = 16

// cooler is the factor on the voltage drop for conductors that do not reach the
// temperature of full load, where the rule set takes one; each stretch counts
// with its length.
func (f *Run) cooler(p *plan, many working.Number, segments []Segment) working.Number {
	const symbol = "C_t"
	switch word := p.book.Word("ac_drop_temperature"); {
	case word.Value() == "full_load":
		return working.Counted(symbol, 1, f.At)
	case !word.Known() || word.Value() != "design_current":
		return working.Unknown(symbol, "", append(word.Missing(), "the rule set's ac_drop_temperature can be full_load or design_current")...)
	case f.CsaMm2.Known() && f.CsaMm2.Value() > resistiveMm2, semiEnclosed(p.in):
		return working.Counted(symbol, 1, f.At)
	}
	var shares []working.Number
	share := working.Closure{Symbol: "C_t·l", Unit: "m", Text: "C_t,i · l_i", Source: working.ByDefinition}
	for i := range segments {
		shares = append(shares, share.Of(func(x ...float64) float64 { return x[0] * x[1] }, f.coolerStretch(&segments[i], many), segments[i].LengthM.As("l_i")))
	}
	mean := working.Closure{Symbol: symbol, Text: "Σ(C_t,i · l_i) / l", Source: working.ByDefinition}
	return mean.Of(func(x ...float64) float64 { return x[0] / x[1] }, working.Sum("Σ(C_t,i · l_i)", "m", shares...), f.LengthM.As("l"))
}

// coolerStretch is the factor of one stretch. In air below 30 °C it is taken as
// at 30 °C, which the formula is made for; in the ground, or rated for another
// temperature than that of the drop, as at full load.
func (f *Run) coolerStretch(s *Segment, many working.Number) working.Number {
	const symbol = "C_t,i"
	rated, tp := s.RatingConductorC, f.ConductorMaxC
	if strings.HasPrefix(s.Method.Value(), "D") || rated.Known() && tp.Known() && rated.Value() != tp.Value() {
		return working.Counted(symbol, 1, s.At)
	}
	all := working.Closure{Symbol: "C", Text: "min(C_a; 1) · C_g · C_i · C_s", Source: coolerConductor}
	c := all.Of(func(x ...float64) float64 { return math.Min(x[0], 1) * x[1] * x[2] * x[3] },
		s.AmbientFactor, s.GroupingFactor, s.InsulationFactor, s.SoilFactor)
	t := working.Closure{Symbol: symbol, Text: "(230 + t_p − (C² − (I_b / (n_par · I_t))²) · (t_p − 30)) / (230 + t_p)", Source: coolerConductor}
	return t.Of(func(x ...float64) float64 {
		load := x[2] / (x[3] * x[4])
		return (230 + x[0] - (x[1]*x[1]-load*load)*(x[0]-30)) / (230 + x[0])
	}, tp.As("t_p"), c, f.DesignCurrentA.As("I_b"), many, s.TabulatedA.As("I_t"))
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
