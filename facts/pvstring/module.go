package pvstring

import (
	"sunclause/facts/book"
	"sunclause/facts/working"
	"sunclause/schema"
)

// Sources of the formulas of this room. None of these texts was at hand when
// the formulas were written down, so none is marked verified.
var (
	coldVoltage = working.Source{Document: "IEC 60364-7-712", Edition: "2017", Clause: "Annex B", How: working.Memory}
	voltageStep = working.Source{Document: "IEC 62548", Edition: "2016", Clause: "maximum PV array voltage, table for crystalline silicon", How: working.Memory}
	fixedFactor = working.Source{Document: "PV in Buildings, guide to the installation of PV systems", Edition: "2nd ed. 2006", Clause: "2.1.2", How: working.Memory}
	designAmps  = working.Source{Document: "IEC 60364-7-712", Edition: "2017", Clause: "Annex B", How: working.Memory}
	bifacialIsc = working.Source{Document: "IEC 62548-1", Edition: "2023", How: working.Memory}
	hotVoltage  = working.Source{Document: "design practice with the coefficient of maximum power", How: working.CommonPractice}
	seriesLaw   = working.ByDefinition
)

// module is one module of a string with its coefficients brought to one unit.
type module struct {
	sheet schema.Module
	voc   working.Number
	vmp   working.Number
	isc   working.Number
	imp   working.Number
	beta  working.Number // of Voc, % per K
	gamma working.Number // of maximum power, % per K
}

func moduleOf(m schema.Module) module {
	return module{
		sheet: m,
		voc:   working.Stated("U_oc", "V", m.VocV),
		vmp:   working.Stated("U_mp", "V", m.VmpV),
		isc:   working.Stated("I_sc", "A", m.IscA),
		imp:   working.Stated("I_mp", "A", m.ImpA),
		beta:  percentPerKelvin("β", m.VocCoeffPctPerK, m.VocCoeffVPerK, "U_oc", "V", m.VocV),
		gamma: working.Stated("γ", "%/K", m.PmaxCoeffPctPerK),
	}
}

// percentPerKelvin takes a coefficient as the sheet prints it, in % per K or in
// the quantity's own unit per K, and gives it in % per K. The document states
// only one of the two.
func percentPerKelvin(symbol string, pct, perK schema.Number, of, unit string, base schema.Number) working.Number {
	if pct.Stated() || !perK.Stated() {
		return working.Stated(symbol, "%/K", pct)
	}
	f := working.Formula{Symbol: symbol, Unit: "%/K", Text: "100 · δ / " + of, Source: working.ByDefinition}
	return f.Of(func(x ...float64) float64 { return 100 * x[0] / x[1] },
		working.Stated("δ", unit+"/K", perK), working.Stated(of, unit, base))
}

// crystalline reports whether the tables and factors made for crystalline
// silicon hold for the module.
func (m module) crystalline() bool {
	t := m.sheet.Technology
	return t.Is("mono_si") || t.Is("multi_si") || t.Is("heterojunction_si")
}

// onlyCrystalline leaves a quantity unknown where it was worked out with a
// figure made for crystalline silicon and the module is of something else.
func (m module) onlyCrystalline(n working.Number) working.Number {
	if m.crystalline() {
		return n
	}
	return working.Unknown(n.Symbol(), n.Unit(), m.sheet.Technology.At())
}

// scaled is a voltage of Ns modules at another cell temperature, linear in the
// temperature: Ns · U · (1 + c/100 · (T − 25)), c in % per K, T in °C.
func scaled(symbol string, series, u, coefficient, temperature working.Number, src working.Source) working.Number {
	f := working.Formula{
		Symbol: symbol, Unit: "V", Source: src,
		Text: series.Symbol() + " · " + u.Symbol() + " · (1 + " + coefficient.Symbol() + "/100 · (" + temperature.Symbol() + " − 25))",
	}
	return f.Of(func(x ...float64) float64 { return x[0] * x[1] * (1 + x[2]/100*(x[3]-25)) }, series, u, coefficient, temperature)
}

// times is a product of two quantities.
func times(symbol, unit string, a, b working.Number, src working.Source) working.Number {
	f := working.Formula{Symbol: symbol, Unit: unit, Text: a.Symbol() + " · " + b.Symbol(), Source: src}
	return f.Of(func(x ...float64) float64 { return x[0] * x[1] }, a, b)
}

// designShortCircuit is the greatest short-circuit current of the module that
// circuits are designed for: K_I times the current at STC, which for a bifacial
// module is first raised by the light on its rear side.
func (m module) designShortCircuit(b book.Book) working.Number {
	factor := b.Number("isc_factor", "K_I")
	if !m.sheet.Bifacial.Stated() {
		return working.Unknown("I_sc,max", "A", m.sheet.Bifacial.At())
	}
	if !m.sheet.Bifacial.Value {
		return times("I_sc,max", "A", factor, m.isc, designAmps)
	}
	f := working.Formula{Symbol: "I_sc,bi", Unit: "A", Text: "I_sc · (1 + φ · G_rear / 1000)", Source: bifacialIsc}
	raised := f.Of(func(x ...float64) float64 { return x[0] * (1 + x[1]*x[2]/1000) },
		m.isc, working.Stated("φ", "", m.sheet.BifacialityFraction), b.Number("rear_irradiance_w_per_m2", "G_rear"))
	return times("I_sc,max", "A", factor, raised, designAmps)
}
