package pvstring

import (
	"sunclause/facts/book"
	"sunclause/facts/working"
	"sunclause/schema"
)

// Sources of the formulas of this room. None of these texts was at hand when
// the formulas were written down, so none is marked verified.
var (
	coldLaw     = working.Source{Document: "IEC 60364-7-712", Edition: "2017", Clause: "Annex B", How: working.Memory}
	coldTable   = working.Source{Document: "IEC 62548", Edition: "2016", Clause: "maximum PV array voltage, table for crystalline silicon", How: working.Memory}
	coldFactor  = working.Source{Document: "PV in Buildings, guide to the installation of PV systems", Edition: "2nd ed. 2006", Clause: "2.1.2", How: working.Memory}
	designLaw   = working.Source{Document: "IEC 60364-7-712", Edition: "2017", Clause: "Annex B", How: working.Memory}
	rearLight   = working.Source{Document: "IEC 62548-1", Edition: "2023", How: working.Memory}
	hotPractice = working.Source{Document: "design practice with the coefficient of maximum power", How: working.CommonPractice}
	hotMeasured = working.Source{Document: "coefficients of 521 modules measured outdoors, and two single-diode models", Clause: "on CdTe the coefficient of power reads 0 to 10 % high with hot cells, that of the open-circuit voltage mostly low", How: working.Read}
)

// Formulas of one string, of N_s modules in series.
var (
	vocCoefficient = working.NewFormula("β", "%/K", "100 · δ / U_oc", working.ByDefinition)
	vocStc         = working.NewFormula("U_oc,STC", "V", "N_s · U_oc", working.ByDefinition)
	vmpStc         = working.NewFormula("U_mp,STC", "V", "N_s · U_mp", working.ByDefinition)
	power          = working.NewFormula("P", "W", "N_s · P_max", working.ByDefinition)
	vocAt          = working.NewFormula("U_oc,T", "V", "N_s · U_oc · (1 + β/100 · (T − 25))", coldLaw)
	vmpAt          = working.NewFormula("U_mp,T", "V", "N_s · U_mp · (1 + κ/100 · (T − 25))", working.ByDefinition)
	vmpByPower     = working.NewFormula("U_mp,T", "V", "N_s · U_mp · (1 + γ/100 · (T − 25))", hotPractice)
	vmpByVoltage   = working.NewFormula("U_mp,T", "V", "N_s · (U_mp + U_oc · β/100 · (T − 25))", hotMeasured)
	vocByTable     = working.NewFormula("U_oc,table", "V", "K_T · U_oc,STC", coldTable)
	vocByFactor    = working.NewFormula("U_oc,factor", "V", "K_U · U_oc,STC", coldFactor)
	hottestCell    = working.NewFormula("T_hot", "°C", "T_max + ΔT", hotPractice)
	iscRaised      = working.NewFormula("I_sc,bi", "A", "I_sc · (1 + φ · G_rear / 1000)", rearLight)
	iscDesign      = working.NewFormula("I_sc,max", "A", "K_I · I", designLaw)
)

// module is one module of a string with its coefficients brought to one unit.
type module struct {
	sheet *schema.Module
	voc   working.Number
	vmp   working.Number
	isc   working.Number
	imp   working.Number
	beta  working.Number // of Voc, % per K
	gamma working.Number // of maximum power, % per K
	kappa working.Number // of Vmp, % per K
}

func moduleOf(m *schema.Module) module {
	return module{
		sheet: m,
		voc:   working.Stated("U_oc", "V", m.VocV),
		vmp:   working.Stated("U_mp", "V", m.VmpV),
		isc:   working.Stated("I_sc", "A", m.IscA),
		imp:   working.Stated("I_mp", "A", m.ImpA),
		beta:  vocPercentPerKelvin(m),
		gamma: working.Stated("γ", "%/K", m.PmaxCoeffPctPerK),
		kappa: working.Stated("κ", "%/K", m.VmpCoeffPctPerK),
	}
}

// vocPercentPerKelvin takes the coefficient as the sheet prints it, in % or in V
// per K, and gives it in % per K. The document states only one of the two.
func vocPercentPerKelvin(m *schema.Module) working.Number {
	if m.VocCoeffPctPerK.Stated() || !m.VocCoeffVPerK.Stated() {
		return working.Stated("β", "%/K", m.VocCoeffPctPerK)
	}
	return vocCoefficient.Of(working.Stated("δ", "V/K", m.VocCoeffVPerK), working.Stated("U_oc", "V", m.VocV))
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
	technology := m.sheet.Technology
	if !technology.Stated() {
		return working.Unknown(n.Symbol(), n.Unit(), technology.At())
	}
	return working.Unknown(n.Symbol(), n.Unit(), working.Gap{At: technology.At(), Why: working.OffTable, Stated: technology.Value, With: "Factors for crystalline silicon"})
}

// vocAt is the open-circuit voltage of the string at a cell temperature in °C, linear
// in the temperature.
func (m module) vocAt(symbol string, series, temperature working.Number) working.Number {
	return vocAt.Of(series, m.voc, m.beta, temperature.For("T")).As(symbol)
}

// Ways to the voltage at maximum power at other temperatures than 25 °C.
const (
	byOwnCoefficient = "vmp_coefficient"   // as the sheet prints it
	byPower          = "power_coefficient" // that of maximum power
	byWorseOfTwo     = "worse_of_power_and_voc_coefficient"
)

// vmpBy is which way to take. That of the power mostly reads slightly low with hot cells
// on crystalline silicon and CIGS, and so errs safely. On CdTe it reads up to 10 % high,
// and the one of the open-circuit voltage mostly low: there the worse of both is taken.
// On other thin film neither says much, and the sheet has to print one.
func (m module) vmpBy() working.Text {
	own, technology := m.sheet.VmpCoeffPctPerK, m.sheet.Technology
	switch {
	case own.Stated():
		return working.KnownText(byOwnCoefficient, own.At())
	case technology.Is("cdte"):
		return working.KnownText(byWorseOfTwo, technology.At())
	case technology.Is("other_thin_film"):
		return working.UnknownText(own.At())
	}
	return working.KnownText(byPower, technology.At())
}

// vmpAt is the voltage at maximum power of the string at a cell temperature in °C. Where
// two coefficients give two, worse takes one of them: the least of those with hot cells,
// the greatest with cold ones.
func (m module) vmpAt(symbol string, series, temperature working.Number, worse func(symbol, unit string, of ...working.Number) working.Number) working.Number {
	by := m.vmpBy()
	power := vmpByPower.Of(series, m.vmp, m.gamma, temperature.For("T"))
	switch by.Value() {
	case byOwnCoefficient:
		return vmpAt.Of(series, m.vmp, m.kappa, temperature.For("T")).As(symbol)
	case byPower:
		return power.As(symbol)
	case byWorseOfTwo:
		voltage := vmpByVoltage.Of(series, m.vmp, m.voc, m.beta, temperature.For("T"))
		return worse(symbol, "V", power.As("U_mp,γ"), voltage.As("U_mp,β"))
	}
	return working.Unknown(symbol, "V", by.Missing()...)
}

// designShortCircuit is the greatest short-circuit current of the module that
// circuits are designed for: K_I times the current at STC, which for a bifacial
// module is first raised by the light on its rear side.
func (m module) designShortCircuit(b book.Book) working.Number {
	factor := b.Number("isc_factor", "K_I")
	bifacial := m.bifacial()
	if !bifacial.Known() {
		return working.Unknown("I_sc,max", "A", bifacial.Missing()...)
	}
	if !bifacial.Value() {
		return iscDesign.Of(factor, m.isc.For("I"))
	}
	raised := iscRaised.Of(m.isc, working.Stated("φ", "", m.sheet.BifacialityFraction), b.Number("rear_irradiance_w_per_m2", "G_rear"))
	return iscDesign.Of(factor, raised.For("I"))
}

// bifacial reports whether the rear side generates: the word of the sheet, where the
// response of the rear side that it prints does not say otherwise.
func (m module) bifacial() working.Flag {
	stated, rear := working.StatedFlag(m.sheet.Bifacial), m.sheet.BifacialityFraction
	if !rear.Stated() {
		return stated
	}
	return working.AgreedFlag(stated, working.KnownFlag(rear.Value > 0, rear.At()))
}
