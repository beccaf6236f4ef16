package pvstring

import (
	"sunclause/facts/working"
	"sunclause/schema"
)

// Sheet holds the facts of one datasheet of a module: how the values printed on it
// go together. It is judged once, however many strings are made of the module.
type Sheet struct {
	working.Subject

	Technology          working.Text   `json:"technology" words:"cell technology"`
	VocV                working.Number `json:"voc_v" words:"open-circuit voltage"`
	VmpV                working.Number `json:"vmp_v" words:"voltage at maximum power"`
	IscA                working.Number `json:"isc_a" words:"short-circuit current"`
	ImpA                working.Number `json:"imp_a" words:"current at maximum power"`
	VmpOverVoc          working.Number `json:"vmp_over_voc" words:"voltage at maximum power over open-circuit voltage"`
	ImpOverIsc          working.Number `json:"imp_over_isc" words:"current at maximum power over short-circuit current"`
	FillFactor          working.Number `json:"fill_factor" words:"fill factor: voltage and current at maximum power over those at the ends of the curve"`
	PowerDeviationPct   working.Number `json:"power_deviation_pct" words:"how far maximum power is from its voltage times its current"`
	VocCoeffPctPerK     working.Number `json:"voc_coeff_pct_per_k" words:"temperature coefficient of the open-circuit voltage, whatever unit the sheet prints"`
	IscCoeffPctPerK     working.Number `json:"isc_coeff_pct_per_k" words:"temperature coefficient of the short-circuit current, whatever unit the sheet prints"`
	PmaxOverVocCoeff    working.Number `json:"pmax_over_voc_coeff" words:"temperature coefficient of the power over that of the open-circuit voltage"`
	CellVoltageV        working.Number `json:"cell_voltage_v" words:"open-circuit voltage of one cell"`
	PowerWPerM2         working.Number `json:"power_w_per_m2" words:"maximum power for each square metre"`
	MassKgPerM2         working.Number `json:"mass_kg_per_m2" words:"mass of a square metre"`
	OcprOverIsc         working.Number `json:"ocpr_over_isc" words:"maximum overcurrent protection rating over short-circuit current"`
	LengthOverWidth     working.Number `json:"length_over_width" words:"longer side over shorter side"`
	Bifacial            working.Flag   `json:"bifacial" words:"whether the rear side generates"`
	BifacialityFraction working.Number `json:"bifaciality_fraction" words:"rear-side response over front-side response"`
	DesignPushPa        working.Number `json:"design_load_push_pa" words:"design load on the front"`
	ClampZonesOrdered   working.Flag   `json:"clamp_zones_ordered" words:"whether each clamp zone ends farther from the corner than it begins"`
	ClampZonesOnSide    working.Flag   `json:"clamp_zones_on_side" words:"whether each clamp zone lies within half of its side, counted from the corner"`
}

// Formulas of a sheet.
var (
	powerDeviation = working.NewFormula("ΔP", "%", "100 · |P_max / (U_mp · I_mp) − 1|", working.ByDefinition)
	fillFactor     = working.NewFormula("FF", "", "U_mp · I_mp / (U_oc · I_sc)", working.ByDefinition)
	iscCoefficient = working.NewFormula("α", "%/K", "100 · α_I / I_sc", working.ByDefinition)
	powerOfArea    = working.NewFormula("P_A", "W/m²", "P_max / (l · w / 1000000)", working.ByDefinition)
	massOfArea     = working.NewFormula("m_A", "kg/m²", "m / (l · w / 1000000)", working.ByDefinition)
	cellVoltage    = working.Lookup{
		Symbol: "U_cell", Unit: "V",
		Text:   "U_oc over the cells in series: all n, or half or a third of n where cells are cut and these strings of cells are in parallel",
		Source: working.Source{Document: "published datasheets, whole cells between 0.55 and 0.9 V", How: working.CommonPractice},
	}
)

func sheetOf(id string, m *schema.Module) Sheet {
	part := moduleOf(m)
	p := working.Stated("P_max", "W", m.PmaxW)
	length, width := working.Stated("l", "mm", m.LengthMm), working.Stated("w", "mm", m.WidthMm)
	return Sheet{
		Subject:    working.Subject{ID: id, At: m.At(), Name: "sheet of module " + id},
		Technology: working.StatedText(m.Technology),
		VocV:       part.voc, VmpV: part.vmp, IscA: part.isc, ImpA: part.imp,
		VmpOverVoc:          working.Ratio("U_mp/U_oc", part.vmp, part.voc),
		ImpOverIsc:          working.Ratio("I_mp/I_sc", part.imp, part.isc),
		FillFactor:          fillFactor.Of(part.vmp, part.imp, part.voc, part.isc),
		PowerDeviationPct:   powerDeviation.Of(p, part.vmp, part.imp),
		VocCoeffPctPerK:     part.beta,
		IscCoeffPctPerK:     iscPercentPerKelvin(m),
		PmaxOverVocCoeff:    working.Ratio("γ/β", part.gamma, part.beta),
		CellVoltageV:        cellVoltage.Of(voltageOfCell, part.voc, working.Stated("n", "", m.Cells)),
		PowerWPerM2:         powerOfArea.Of(p, length, width),
		MassKgPerM2:         massOfArea.Of(working.Stated("m", "kg", m.MassKg), length, width),
		OcprOverIsc:         working.Ratio("I_ocpr/I_sc", working.Stated("I_ocpr", "A", m.OCPRMaxA), part.isc),
		LengthOverWidth:     working.Ratio("l/w", length, width),
		Bifacial:            working.StatedFlag(m.Bifacial),
		BifacialityFraction: working.Stated("φ", "", m.BifacialityFraction),
		DesignPushPa:        working.Stated("p_sheet", "Pa", m.DesignLoadPushPa),
		ClampZonesOrdered:   eachZone(m, zoneOrdered),
		ClampZonesOnSide:    eachZone(m, zoneOnSide),
	}
}

// iscPercentPerKelvin takes the coefficient as the sheet prints it, in % or in A
// per K, and gives it in % per K.
func iscPercentPerKelvin(m *schema.Module) working.Number {
	if m.IscCoeffPctPerK.Stated() || !m.IscCoeffAPerK.Stated() {
		return working.Stated("α", "%/K", m.IscCoeffPctPerK)
	}
	return iscCoefficient.Of(working.Stated("α_I", "A/K", m.IscCoeffAPerK), working.Stated("I_sc", "A", m.IscA))
}

// leastOfWholeCells is the voltage below which cells must have been counted that are
// not all in series, in V: no cell of any of the technologies has as little.
const leastOfWholeCells = 0.5

// voltageOfCell is the open-circuit voltage of one of some cells, in V, of which all
// are in series, or else two or three strings of cut cells in parallel.
func voltageOfCell(x ...float64) float64 {
	for k := 1.0; k < 3; k++ {
		if v := k * x[0] / x[1]; v >= leastOfWholeCells {
			return v
		}
	}
	return 3 * x[0] / x[1]
}

// eachZone reports whether something holds of every clamp zone of a sheet.
func eachZone(m *schema.Module, holds func(*schema.Module, *schema.ClampZone) working.Flag) working.Flag {
	if m.ClampZones == nil {
		return working.UnknownFlag(m.At() + "/clamp_zones")
	}
	each := make([]working.Flag, len(m.ClampZones))
	for i := range m.ClampZones {
		each[i] = holds(m, &m.ClampZones[i])
	}
	return working.All(each...)
}

func zoneOrdered(_ *schema.Module, z *schema.ClampZone) working.Flag {
	return working.Not(working.AtLeast(working.Stated("from", "mm", z.FromMm), working.Stated("to", "mm", z.ToMm)))
}

var halfSide = working.NewFormula("s", "mm", "l / 2", working.ByDefinition)

func zoneOnSide(m *schema.Module, z *schema.ClampZone) working.Flag {
	side := m.LengthMm
	if z.Side.Is("short") {
		side = m.WidthMm
	}
	return working.AtMost(working.Stated("to", "mm", z.ToMm), halfSide.Of(working.Stated("l", "mm", side)))
}
