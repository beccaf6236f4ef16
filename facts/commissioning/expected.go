package commissioning

import (
	"math"

	"sunclause/facts/book"
	"sunclause/facts/pvstring"
	"sunclause/facts/working"
	"sunclause/schema"
)

// kelvin is 25 °C, the temperature of STC, on the absolute scale.
const kelvin = 298.15

// expect works out what the string should have read at the irradiance and cell
// temperature recorded, and how far off the reading is.
//
// The voltage falls with the logarithm of the irradiance. Leaving that out, as
// the simple rule does, expects some 2 % too much at 600 W/m²: a good part of a
// band of 5 %.
func (f *StringTest) expect(s *pvstring.String, m schema.Module, d *deriver) {
	series, stc, beta := s.ModulesInSeries, s.VocStcV, s.VocCoeffPctPerK
	a := d.book.Number("voltage_irradiance_factor", "a")
	temperature := working.Closure{Symbol: "U_exp,T", Unit: "V", Text: "U_oc,STC · (1 + β/100 · (T − 25))", Source: simpleRule}
	f.VocSimpleV = temperature.Of(func(x ...float64) float64 { return x[0] * (1 + x[1]/100*(x[2]-25)) }, stc, beta, f.CellTemperatureC)
	f.VocExpectedV = ExpectedVoltage(s, f.CellTemperatureC, f.IrradianceWPerM2, d.book)
	f.VocDeviationPct = magnitude("ΔU", "%", f.VocV, f.VocExpectedV, working.ByDefinition)
	f.VocStcDeviationPct = magnitude("ΔU_STC", "%", f.VocV, stc, working.ByDefinition)
	f.VocDeficitModules = lacking("n_short", series, f.VocV, f.VocExpectedV)
	f.expectCurrent(m)
	f.warmth(stc, beta, a)
}

// ExpectedVoltage is the open-circuit voltage that a sound string has at a cell
// temperature in °C and an irradiance in W/m².
func ExpectedVoltage(s *pvstring.String, temperature, irradiance working.Number, b book.Book) working.Number {
	voltage := working.Closure{Symbol: "U_exp", Unit: "V", Source: expectedVoltage,
		Text: "U_oc,STC · (1 + β/100 · (T − 25) + a · ln(G / 1000) · (T + 273.15) / 298.15)"}
	return voltage.Of(func(x ...float64) float64 {
		return x[0] * (1 + x[1]/100*(x[3]-25) + x[2]*math.Log(x[4]/1000)*(x[3]+273.15)/kelvin)
	}, s.VocStcV, s.VocCoeffPctPerK, b.Number("voltage_irradiance_factor", "a"), temperature, irradiance)
}

// ExpectedCurrent is the short-circuit current that a sound string of a module
// has at a cell temperature in °C and an irradiance in W/m².
func ExpectedCurrent(m schema.Module, temperature, irradiance working.Number) working.Number {
	isc := working.Stated("I_sc", "A", m.IscA)
	alpha := working.Stated("α", "%/K", m.IscCoeffPctPerK)
	if m.IscCoeffAPerK.Stated() {
		perK := working.Closure{Symbol: "α", Unit: "%/K", Text: "100 · δ / I_sc", Source: working.ByDefinition}
		alpha = perK.Of(func(x ...float64) float64 { return 100 * x[0] / x[1] }, working.Stated("δ", "A/K", m.IscCoeffAPerK), isc)
	}
	current := working.Closure{Symbol: "I_exp", Unit: "A", Text: "I_sc · G / 1000 · (1 + α/100 · (T − 25))", Source: expectedCurrent}
	return current.Of(func(x ...float64) float64 { return x[0] * x[1] / 1000 * (1 + x[2]/100*(x[3]-25)) }, isc, irradiance, alpha, temperature)
}

// lacking is how many modules' voltage a reading is short of what it should be.
func lacking(symbol string, series, u, of working.Number) working.Number {
	f := working.Closure{Symbol: symbol, Text: "N_s · (1 − U / " + of.Symbol() + ")", Source: working.ByDefinition}
	return f.Of(func(x ...float64) float64 { return x[0] * (1 - x[1]/x[2]) }, series.As("N_s"), u, of)
}

func (f *StringTest) expectCurrent(m schema.Module) {
	f.IscExpectedA = ExpectedCurrent(m, f.CellTemperatureC, f.IrradianceWPerM2)
	f.IscDeviationPct = magnitude("ΔI", "%", f.IscA, f.IscExpectedA, working.ByDefinition)
	sun := working.Closure{Symbol: "I_1000", Unit: "A", Text: "I · 1000 / G", Source: working.ByDefinition}
	f.IscFullSunA = sun.Of(func(x ...float64) float64 { return x[0] * 1000 / x[1] }, f.IscA, f.IrradianceWPerM2)
}

// warmth turns the expected voltage round: the cell temperature at which a
// sound string reads the voltage that was read.
func (f *StringTest) warmth(stc, beta, a working.Number) {
	t := working.Closure{Symbol: "T_U", Unit: "°C", Source: cellTemperature,
		Text: "(U / U_oc,STC − 1 + 25 · β/100 − a · ln(G / 1000) · 273.15 / 298.15) / (β/100 + a · ln(G / 1000) / 298.15)"}
	f.CellByVoltageC = t.Of(func(x ...float64) float64 {
		l, b := x[3]*math.Log(x[4]/1000), x[2]/100
		return (x[0]/x[1] - 1 + 25*b - l*273.15/kelvin) / (b + l/kelvin)
	}, f.VocV, stc, beta, a, f.IrradianceWPerM2)
	off := working.Closure{Symbol: "ΔT", Unit: "K", Text: "|T_U − T|", Source: working.ByDefinition}
	f.CellOffK = off.Of(func(x ...float64) float64 { return math.Abs(x[0] - x[1]) }, f.CellByVoltageC, f.CellTemperatureC)
}
