package surge

import (
	"sunclause/facts/book"
	"sunclause/facts/circuit"
	"sunclause/facts/working"
	"sunclause/schema"
)

// Site holds what decides for the whole premises whether surge protection is
// due, and what there is of it.
type Site struct {
	LightningNg          working.Number `json:"lightning_ng_per_km2_yr" words:"lightning ground flash density"`
	SurgeCriticalLengthM working.Number `json:"surge_critical_length_m" words:"critical length of a DC route for such premises and lightning density"`
	SurgeConsequence     working.Flag   `json:"overvoltage_consequence" words:"whether overvoltage could harm life, a safety service, or money or data of weight"`
	SurgeDeclined        working.Flag   `json:"surge_protection_declined" words:"whether the owner declines surge protection"`
	SurgeRefusalRecorded working.Flag   `json:"surge_refusal_recorded" words:"whether a paper records that refusal"`
	SurgeByRiskLevel     working.Flag   `json:"surge_by_risk_level" words:"whether the design is so old that the calculated risk level decides"`
	SurgeLineKm          working.Number `json:"surge_line_length_km" words:"weighted length of the lines that feed the premises"`
	SurgeRiskLevel       working.Number `json:"surge_risk_level" words:"calculated risk level, CRL"`
	SPDsAC               working.Number `json:"spds_ac" words:"surge protective devices on AC circuits"`
	SPDsACAtOrigin       working.Number `json:"spds_ac_at_origin" words:"surge protective devices at the origin: at the supply, a meter or a main board"`
	SPDsType1AtOrigin    working.Number `json:"spds_type_1_at_origin" words:"surge protective devices of Type 1 at the origin, alone or with Type 2"`
	SPDsDC               working.Number `json:"spds_dc" words:"surge protective devices on PV circuits"`
}

// Formulas of the premises. Editions before 2022 went by the calculated risk
// level, whose line length counts low voltage in full and what is buried or
// screened less.
var (
	thunderstorms     = working.Source{Document: "UTE C 15-712-1, in a French trade course", Clause: "flash density", How: working.Read}
	criticalLength    = working.NewFormula("L_crit", "m", "k / N_g", pvSection)
	fromThunderstorms = working.NewFormula("N_g", "1/(km²·yr)", "N_k / 10", thunderstorms)
	weightedLength    = working.NewFormula("L_p", "km", "2 · L_pal + L_pcl + 0.4 · L_pah + 0.2 · L_pch", overvoltage)
	riskLevel         = working.NewFormula("CRL", "", "f_env / (L_p · N_g)", overvoltage)
)

func siteOf(in *schema.Installation, b book.Book) Site {
	risk := in.AC.OvervoltageRisk
	f := Site{
		LightningNg:      flashDensity(in),
		SurgeConsequence: working.Any(working.StatedFlag(risk.DangerToLife), working.StatedFlag(risk.SafetyService), working.StatedFlag(risk.SignificantLoss)),
		SurgeDeclined:    declined(in),
	}
	f.SurgeRefusalRecorded = refusalRecorded(in)
	f.SurgeByRiskLevel = notAfter(in.Project.DesignDate, b.Word("surge_risk_level_until"))
	k := b.Keyed("surge_critical_length", "premises", working.StatedText(in.Project.Premises), "k_m_per_km2_yr", "k")
	f.SurgeCriticalLengthM = criticalLength.Of(k, f.LightningNg)
	f.riskLevel(risk, b)
	return f
}

// flashDensity is the flash density stated, or a tenth of the days of
// thunderstorm. Of both the greater is taken, so that nothing is won by leaving
// out one of them.
func flashDensity(in *schema.Installation) working.Number {
	stated := working.Stated("N_g", "1/(km²·yr)", in.Site.LightningNgPerKm2Yr)
	days := working.Stated("N_k", "d/yr", in.AC.OvervoltageRisk.ThunderstormDaysPerYr)
	if !days.Known() {
		return stated
	}
	derived := fromThunderstorms.Of(days)
	if !stated.Known() {
		return derived
	}
	return working.Greatest("N_g", "1/(km²·yr)", stated, derived)
}

// riskLevel works out the calculated risk level and the line length in it.
func (f *Site) riskLevel(risk schema.OvervoltageRisk, b book.Book) {
	f.SurgeLineKm = weightedLength.Of(
		working.Stated("L_pal", "km", risk.LowVoltageOverheadKm), working.Stated("L_pcl", "km", risk.LowVoltageBuriedKm),
		working.Stated("L_pah", "km", risk.HighVoltageOverheadKm), working.Stated("L_pch", "km", risk.HighVoltageBuriedKm))
	env := b.Keyed("surge_environment_factor", "surroundings", working.StatedText(risk.Surroundings), "factor", "f_env")
	f.SurgeRiskLevel = riskLevel.Of(env, f.SurgeLineKm, f.LightningNg)
}

const refusal = "surge_protection_declined"

// declined reports whether the owner declines, there or among the decisions of
// the customer.
func declined(in *schema.Installation) working.Flag {
	for _, d := range in.Handover.Decisions {
		if d.Decision.Is(refusal) {
			return working.KnownFlag(true, d.At())
		}
	}
	return working.StatedFlag(in.AC.OvervoltageRisk.DeclinedByOwner)
}

// refusalRecorded reports whether the refusal is in writing: by the reference of a
// paper, a document handed over, or a decision that is.
func refusalRecorded(in *schema.Installation) working.Flag {
	record := in.AC.OvervoltageRisk.DeclinedRecord
	flag := working.UnknownFlag(record.At())
	if record.Stated() {
		flag = working.KnownFlag(true, record.At())
	}
	for _, d := range in.Handover.Documents {
		if d.Kind.Is("surge_protection_refusal") {
			flag = working.KnownFlag(true, d.At())
		}
	}
	for _, d := range in.Handover.Decisions {
		if d.Decision.Is(refusal) {
			return working.StatedFlag(d.InWriting)
		}
	}
	return flag
}

// notAfter reports whether a date is not after another. Dates in the form
// year-month-day stand in the order of their letters.
func notAfter(date schema.Text, last working.Text) working.Flag {
	switch {
	case !last.Known():
		return working.UnknownFlag(last.Missing()...)
	case !date.Stated():
		return working.UnknownFlag(date.At())
	}
	return working.KnownFlag(date.Value <= last.Value(), date.At())
}

// count counts the devices. One whose circuit is not stated may be on any.
func (f *Site) count(in *schema.Installation, all []SPD) {
	onAC := func(s *SPD) working.Flag { return s.Circuit.OneOf(circuit.AC) }
	onDC := func(s *SPD) working.Flag { return s.Circuit.OneOf(circuit.PV) }
	atOrigin := func(s *SPD) working.Flag { return working.All(onAC(s), s.AtOrigin) }
	type1 := func(s *SPD) working.Flag { return working.All(atOrigin(s), s.Type.OneOf("T1", "T1+T2")) }
	f.SPDsAC = number("n_AC", in, all, onAC)
	f.SPDsDC = number("n_DC", in, all, onDC)
	f.SPDsACAtOrigin = number("n_origin", in, all, atOrigin)
	f.SPDsType1AtOrigin = number("n_T1", in, all, type1)
}

// number counts the devices of which something holds.
func number(symbol string, in *schema.Installation, all []SPD, holds func(*SPD) working.Flag) working.Number {
	if in.SPDs == nil {
		return working.Unknown(symbol, "", "/spds")
	}
	flags := make([]working.Flag, len(all))
	for i := range all {
		flags[i] = holds(&all[i])
	}
	return working.Count(symbol, "/spds", flags...)
}
