package commissioning

import (
	"sunclause/facts/book"
	"sunclause/facts/pvstring"
	"sunclause/facts/working"
	"sunclause/schema"
)

// Formulas of what a string should read. The temperature of STC, 25 °C, is 298.15 on
// the absolute scale.
var (
	voltageByTemperature = working.NewFormula("U_exp,T", "V", "U_oc,STC · (1 + β/100 · (T − 25))", simpleRule)
	voltageExpected      = working.NewFormula("U_exp", "V", "U_oc,STC · (1 + β/100 · (T − 25) + a · ln(G / 1000) · (T + 273.15) / 298.15)", expectedVoltage)
	currentExpected      = working.NewFormula("I_exp", "A", "I_sc · G / 1000 · (1 + α/100 · (T − 25))", expectedCurrent)
	currentCoefficient   = working.NewFormula("α", "%/K", "100 · δ / I_sc", working.ByDefinition)
	inFullSun            = working.NewFormula("I_1000", "A", "I · 1000 / G", working.ByDefinition)
	temperatureByVoltage = working.NewFormula("T_U", "°C", "(U / U_oc,STC − 1 + 25 · β/100 − a · ln(G / 1000) · 273.15 / 298.15) / (β/100 + a · ln(G / 1000) / 298.15)", cellTemperature)
	temperatureOff       = working.NewFormula("ΔT", "K", "|T_U − T|", working.ByDefinition)
)

// expect works out what the string should have read at the irradiance and cell
// temperature recorded, and how far off the reading is. The voltage that was read
// says in turn how warm the cells were.
//
// The voltage falls with the logarithm of the irradiance. Leaving that out, as
// the simple rule does, expects some 2 % too much at 600 W/m²: a good part of a
// band of 5 %.
func (f *StringTest) expect(s *pvstring.String, m *schema.Module, d *deriver) {
	stc, beta := s.VocStcV, s.VocCoeffPctPerK
	f.VocSimpleV = voltageByTemperature.Of(stc, beta, f.CellTemperatureC)
	f.VocExpectedV = ExpectedVoltage(s, f.CellTemperatureC, f.IrradianceWPerM2, d.book)
	f.VocDeviationPct = deviation.Of(f.VocV.For("x"), f.VocExpectedV.For("x_0")).As("ΔU")
	f.VocStcDeviationPct = deviation.Of(f.VocV.For("x"), stc.For("x_0")).As("ΔU_STC")
	f.VocDeficitModules = modulesShort("n_short", s.ModulesInSeries, f.VocV, f.VocExpectedV)
	f.IscExpectedA = ExpectedCurrent(m, f.CellTemperatureC, f.IrradianceWPerM2)
	f.IscDeviationPct = deviation.Of(f.IscA.For("x"), f.IscExpectedA.For("x_0")).As("ΔI")
	f.IscFullSunA = inFullSun.Of(f.IscA, f.IrradianceWPerM2)
	f.CellByVoltageC = temperatureByVoltage.Of(f.VocV, stc, beta, d.book.Number("voltage_irradiance_factor", "a"), f.IrradianceWPerM2)
	f.CellOffK = temperatureOff.Of(f.CellByVoltageC, f.CellTemperatureC)
}

// ExpectedVoltage is the open-circuit voltage that a sound string has at a cell
// temperature in °C and an irradiance in W/m².
func ExpectedVoltage(s *pvstring.String, temperature, irradiance working.Number, b book.Book) working.Number {
	return voltageExpected.Of(s.VocStcV, s.VocCoeffPctPerK, b.Number("voltage_irradiance_factor", "a"), temperature.For("T"), irradiance.For("G"))
}

// ExpectedCurrent is the short-circuit current that a sound string of a module
// has at a cell temperature in °C and an irradiance in W/m².
func ExpectedCurrent(m *schema.Module, temperature, irradiance working.Number) working.Number {
	isc := working.Stated("I_sc", "A", m.IscA)
	alpha := working.Stated("α", "%/K", m.IscCoeffPctPerK)
	if m.IscCoeffAPerK.Stated() {
		alpha = currentCoefficient.Of(working.Stated("δ", "A/K", m.IscCoeffAPerK), isc)
	}
	return currentExpected.Of(isc, irradiance.For("G"), alpha, temperature.For("T"))
}
