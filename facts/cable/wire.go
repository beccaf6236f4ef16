package cable

import (
	"slices"
	"strings"

	"sunclause/facts/book"
	"sunclause/facts/working"
	"sunclause/schema"
)

// Wire holds what the maker's sheet of a run's cable says.
type Wire struct {
	Kind             working.Text   `json:"cable_kind" words:"how its cable is built"`
	Standard         working.Text   `json:"cable_standard" words:"product standard of its cable, without edition and national prefix"`
	SingleCores      working.Flag   `json:"single_cores" words:"whether its conductors are cables of one core each"`
	CsaMm2           working.Number `json:"csa_mm2" words:"cross-section of each line or pole conductor"`
	ConductorClass   working.Number `json:"conductor_class" words:"class of its conductors in IEC 60228"`
	Tinned           working.Flag   `json:"tinned" words:"whether its conductors are tinned"`
	UVResistant      working.Flag   `json:"cable_uv_resistant" words:"whether its cable resists sunlight"`
	AmbientMinC      working.Number `json:"cable_ambient_min_c" words:"lowest ambient temperature of its cable"`
	AmbientMaxC      working.Number `json:"cable_ambient_max_c" words:"highest ambient temperature of its cable"`
	ConductorMaxC    working.Number `json:"conductor_max_c" words:"highest temperature of its conductors in continuous duty"`
	VoltageDcMaxV    working.Number `json:"voltage_dc_max_v" words:"rated DC voltage of its cable between conductors"`
	VoltageAcV       working.Number `json:"voltage_ac_v" words:"rated AC voltage of its cable between conductors, U"`
	VoltageAcEarthV  working.Number `json:"voltage_ac_to_earth_v" words:"rated AC voltage of its cable to earth, U0"`
	Resistance20C    working.Number `json:"resistance_20c_ohm_per_km" words:"resistance of a conductor at 20 °C, the highest that the standard allows"`
	ResistanceSheet  working.Number `json:"resistance_sheet_ohm_per_km" words:"resistance of a conductor at 20 °C as its sheet prints it"`
	K                working.Number `json:"conductor_k" words:"adiabatic factor k of its live conductors"`
	WithstandA2s     working.Number `json:"withstand_a2s" words:"energy that its live conductors bear, k²S²"`
	BendLeastMm      working.Number `json:"bend_least_mm" words:"smallest bend that its maker allows"`
	OutsideDiameter  working.Number `json:"cable_diameter_mm" words:"overall diameter of its cable, across the flat where it is flat"`
	ReactionToFire   working.Text   `json:"reaction_to_fire" words:"class of reaction to fire of its cable"`
	CableDouble      working.Flag   `json:"cable_double_insulated" words:"whether its cable gives double or reinforced insulation by itself"`
	CableInsulation  working.Text   `json:"cable_insulation" words:"insulation of its conductors"`
	ConductorMetal   working.Text   `json:"conductor" words:"metal of its conductors"`
	ReactanceOhmPerK working.Number `json:"reactance_ohm_per_km" words:"reactance of a conductor"`
}

// wireOf takes what the sheet of a cable states, of each sheet once. Without a
// sheet everything is unknown, and names the reference.
func (p *plan) wireOf(cable schema.Ref[schema.CableDatasheet]) Wire {
	if !cable.Found() {
		return p.wireFrom(cable.To())
	}
	sheet := cable.To()
	w, known := p.wires[sheet]
	if !known {
		w = p.wireFrom(sheet)
		p.wires[sheet] = w
	}
	return w
}

func (p *plan) wireFrom(s *schema.CableDatasheet) Wire {
	w := Wire{
		Kind:             working.StatedText(s.Kind),
		Standard:         standardOf(s.Standard),
		CsaMm2:           working.Stated("S", "mm²", s.CsaMm2),
		ConductorClass:   working.Stated("class", "", s.ConductorClass),
		Tinned:           working.StatedFlag(s.Tinned),
		UVResistant:      working.StatedFlag(s.UVResistant),
		AmbientMinC:      working.Stated("T_cable,min", "°C", s.AmbientMinC),
		AmbientMaxC:      working.Stated("T_cable,max", "°C", s.AmbientMaxC),
		ConductorMaxC:    working.Stated("T_con,max", "°C", s.ConductorMaxC),
		VoltageDcMaxV:    working.Stated("U_dc,cable", "V", s.VoltageDCMaxV),
		VoltageAcV:       working.Stated("U_cable", "V", s.VoltageACV),
		VoltageAcEarthV:  working.Stated("U_0,cable", "V", s.VoltageACToEarthV),
		ResistanceSheet:  working.Stated("R_sheet", "Ω/km", s.Resistance20cOhmPerKm),
		OutsideDiameter:  diameterOf(s),
		ReactionToFire:   working.StatedText(s.ReactionToFire),
		CableDouble:      working.StatedFlag(s.DoubleInsulated),
		CableInsulation:  working.StatedText(s.Insulation),
		ConductorMetal:   working.StatedText(s.Conductor),
		ReactanceOhmPerK: working.Stated("X", "Ω/km", s.ReactanceOhmPerKm),
	}
	w.SingleCores = singleCores(s)
	w.BendLeastMm = bendOf(s)
	w.Resistance20C = p.resistance(s.Conductor, s.ConductorClass, s.Tinned, w.CsaMm2, w.ResistanceSheet)
	w.K = p.book.Pick("conductor_withstand", book.Is("conductor", w.ConductorMetal), book.Is("kind", w.Kind), book.Is("insulation", w.CableInsulation)).Number("k", "k")
	w.WithstandA2s = withstand(w.K, w.CsaMm2)
	return w
}

// standardOf leaves national prefix and edition away: BS EN 50618:2014 is EN 50618.
func standardOf(t schema.Text) working.Text {
	if !t.Stated() {
		return working.StatedText(t)
	}
	name, _, _ := strings.Cut(t.Value, ":")
	for _, prefix := range []string{"BS ", "DIN ", "NF ", "I.S. "} {
		if rest, ok := strings.CutPrefix(name, prefix); ok && (strings.HasPrefix(rest, "EN ") || strings.HasPrefix(rest, "IEC ")) {
			name = rest
		}
	}
	return working.KnownText(strings.TrimSpace(name), t.At())
}

// diameterOf is the overall diameter; of a flat cable its height, across which
// it is bent.
func diameterOf(s *schema.CableDatasheet) working.Number {
	if !s.OutsideDiameterMm.Stated() && s.OutsideHeightMm.Stated() {
		return working.Stated("D", "mm", s.OutsideHeightMm)
	}
	return working.Stated("D", "mm", s.OutsideDiameterMm)
}

// bendOf is the smallest bend that the sheet allows, by either way of printing
// it.
func bendOf(s *schema.CableDatasheet) working.Number {
	if !s.BendRadiusMinDiameters.Stated() {
		return working.Stated("r_min", "mm", s.BendRadiusMinMm)
	}
	return bendByDiameters.Of(working.Stated("n_D", "", s.BendRadiusMinDiameters), diameterOf(s))
}

// resistance is the highest resistance that the standard allows for the
// conductor; the sheet's own where the standard has no such size.
func (p *plan) resistance(metal schema.Text, class schema.Number, tinned schema.Flag, csa, sheet working.Number) working.Number {
	const symbol = "R_20"
	row := p.book.Pick("conductor_resistances", book.Is("conductor", working.StatedText(metal)),
		book.Equals("class", working.Stated("class", "", class)), book.Equals("csa_mm2", csa))
	if row.Lacked() && sheet.Known() {
		return working.Greatest(symbol, "Ω/km", sheet)
	}
	if metal.Is("copper") && !tinned.Stated() {
		return working.Unknown(symbol, "Ω/km", slices.Concat(row.Number("plain", symbol).Missing(), []working.Gap{working.Unstated(tinned.At())})...)
	}
	if tinned.Yes() {
		return row.Number("tinned", symbol)
	}
	return row.Number("plain", symbol)
}

var adiabatic = working.Source{Document: "IEC 60364-4-43", Clause: "434.5.2", How: working.Memory}

var (
	bendByDiameters = working.NewFormula("r_min", "mm", "n_D · D", working.ByDefinition)
	withstood       = working.NewFormula("k²S²", "A²s", "k² · S²", adiabatic)
)

// withstand is the energy that a conductor bears until its insulation is harmed.
func withstand(k, csa working.Number) working.Number { return withstood.Of(k.For("k"), csa.For("S")) }
