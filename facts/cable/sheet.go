package cable

import (
	"sunclause/facts/working"
	"sunclause/schema"
)

// Sheet holds the facts of one datasheet of a cable: how the values printed on it go
// together. It is judged once, however many runs are made of the cable.
type Sheet struct {
	working.Subject
	Wire

	Cores              working.Number `json:"cores" words:"cores, all counted"`
	Armour             working.Text   `json:"armour" words:"metal of the armour; none, where the cable is of no armoured kind and none is stated"`
	ResistanceArea     working.Number `json:"resistance_area" words:"resistance of a conductor at 20 °C times its cross-section, in Ω·mm²/km"`
	OverStandard       working.Number `json:"resistance_over_standard" words:"resistance of a conductor as printed over the highest that the standard allows"`
	DropOverResistance working.Number `json:"drop_over_resistance" words:"voltage drop as printed over the resistance of a conductor at 20 °C"`
	DiameterOverCopper working.Number `json:"diameter_over_root_area" words:"overall diameter over the root of the cross-section of all cores"`
	CpcOverLine        working.Number `json:"cpc_over_line" words:"cross-section of the protective conductor over that of a line conductor"`
	CpcResistanceArea  working.Number `json:"cpc_resistance_area" words:"resistance of the protective conductor at 20 °C times its cross-section, in Ω·mm²/km"`
	WidthOverHeight    working.Number `json:"width_over_height" words:"width of a flat cable over its height"`
}

var (
	resistanceArea = working.NewFormula("ρ", "", "R · S", working.ByDefinition)
	rootArea       = working.NewFormula("√S", "mm", "√(n · S)", working.ByDefinition)
)

func (p *plan) sheet(id string, s *schema.CableDatasheet) Sheet {
	f := Sheet{
		Subject: working.Subject{ID: id, At: s.At(), Name: "sheet of cable " + id},
		Wire:    p.wireFrom(s),
		Cores:   working.Stated("n_cores", "", s.Cores),
		Armour:  armourOf(s),
	}
	cpc := working.Stated("S", "mm²", s.CpcCsaMm2)
	f.ResistanceArea = resistanceArea.Of(f.ResistanceSheet.For("R"), f.CsaMm2)
	f.OverStandard = working.Ratio("R/R_max", f.ResistanceSheet, f.Resistance20C)
	f.DropOverResistance = working.Ratio("u/R", working.Stated("u", "mV/(A·m)", s.DropMvPerAM), f.ResistanceSheet)
	f.DiameterOverCopper = working.Ratio("D/√S", working.Stated("D", "mm", s.OutsideDiameterMm), rootArea.Of(f.Cores.For("n"), f.CsaMm2))
	f.CpcOverLine = working.Ratio("S_cpc/S", cpc.As("S_cpc"), f.CsaMm2)
	f.CpcResistanceArea = resistanceArea.Of(working.Stated("R", "Ω/km", s.CpcResistance20cOhmPerKm), cpc)
	f.WidthOverHeight = working.Ratio("w/h", working.Stated("w", "mm", s.OutsideWidthMm), working.Stated("h", "mm", s.OutsideHeightMm))
	return f
}

// armourOf is the metal of the armour. A sheet of a kind without one need not say so.
func armourOf(s *schema.CableDatasheet) working.Text {
	if !s.Armour.Stated() && s.Kind.Stated() && !s.Kind.Is("armoured") && !s.Kind.Is("metal_clad") {
		return working.KnownText("none", s.Kind.At())
	}
	return working.StatedText(s.Armour)
}
