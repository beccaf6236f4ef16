package commissioning

import (
	"sunclause/facts/working"
	"sunclause/schema"
)

// ContinuityTest holds the facts of one reading of the continuity of a
// protective or bonding conductor.
type ContinuityTest struct {
	working.Subject

	Conductor     working.Text   `json:"conductor" words:"which duty the conductor has"`
	ResistanceOhm working.Number `json:"resistance_ohm" words:"resistance read"`
	ExpectedOhm   working.Number `json:"resistance_expected_ohm" words:"resistance of the conductor by its length and cross-section, at 20 °C"`
	ExcessOhm     working.Number `json:"resistance_excess_ohm" words:"resistance read over that"`
	TestCurrentMa working.Number `json:"test_current_ma" words:"test current"`
	LeadsNulled   working.Flag   `json:"leads_nulled" words:"whether the resistance of the leads was taken off"`
}

// continuity derives the facts of every reading; nil when the document states
// none.
func (d *deriver) continuity() []ContinuityTest {
	if d.in.Commissioning.Continuity == nil {
		return none[ContinuityTest](d.in)
	}
	all := make([]ContinuityTest, len(d.in.Commissioning.Continuity))
	for i := range all {
		r := &d.in.Commissioning.Continuity[i]
		all[i] = ContinuityTest{
			Subject:       working.Subject{ID: r.ID.Value, At: r.At(), Name: "continuity reading " + r.ID.Value},
			Conductor:     working.StatedText(r.Conductor),
			ResistanceOhm: working.Stated("R", "Ω", r.ResistanceOhm),
			ExpectedOhm:   d.conductorOhm(r),
			TestCurrentMa: working.Stated("I_test", "mA", r.TestCurrentMa),
			LeadsNulled:   working.StatedFlag(r.LeadsNulled),
		}
		over := working.Closure{Symbol: "ΔR", Unit: "Ω", Text: "R − R_20", Source: working.ByDefinition}
		all[i].ExcessOhm = over.Of(func(x ...float64) float64 { return x[0] - x[1] }, all[i].ResistanceOhm, all[i].ExpectedOhm)
	}
	return all
}

// conductorOhm is the resistance that a sound conductor has: that of the run
// read, or of the bonding conductor that is the part read.
func (d *deriver) conductorOhm(r *schema.ContinuityReading) working.Number {
	if i, ok := d.find.runs[r.Run.Value]; ok && r.Run.Stated() {
		return d.runOhm(&d.in.Cables[i], d.cables.Runs[i].LengthM)
	}
	for _, b := range d.in.Earthing.MainBonds {
		if r.Part.Stated() && b.ID.Value == r.Part.Value {
			return ohms(d.ohmPerKm(working.Stated("S", "mm²", b.Conductor.CsaMm2)), working.Stated("l", "m", b.Conductor.LengthM))
		}
	}
	return working.Unknown("R_20", "Ω", r.Run.At())
}

// ohmPerKm is the resistance of a copper conductor of a size that the table has.
func (d *deriver) ohmPerKm(csa working.Number) working.Number {
	const name = "conductor_resistance"
	t := d.book.Tables[name]
	if t == nil {
		return working.Unknown("r", "Ω/km", "the rule set has no table "+name)
	}
	f := working.Lookup{Symbol: "r", Unit: "Ω/km", Text: "table “" + t.Title + "”", Source: t.Source}
	for _, row := range t.Rows {
		if per, ok := row["resistance_20c_ohm_per_km"].(float64); ok && row["csa_mm2"] == csa.Value() {
			return f.Of(func(...float64) float64 { return per }, csa)
		}
	}
	return working.Unknown("r", "Ω/km", append(csa.Missing(), csa.Pointers()...)...)
}

// runOhm is the resistance of the protective conductor of a run: the one within
// its cable, the one laid beside it, or the cable itself where it is one core
// laid for nothing else.
func (d *deriver) runOhm(run *schema.Run, length working.Number) working.Number {
	sheet := d.in.Datasheets.Cables[run.Cable.Value]
	per := working.Stated("r", "Ω/km", sheet.Resistance20cOhmPerKm)
	switch {
	case !run.Cable.Stated():
		per = working.Unknown("r", "Ω/km", run.Cable.At())
	case run.ProtectiveCable.Stated():
		per = working.Stated("r", "Ω/km", d.in.Datasheets.Cables[run.ProtectiveCable.Value].Resistance20cOhmPerKm)
	case sheet.CpcCsaMm2.Stated():
		per = working.Stated("r", "Ω/km", sheet.CpcResistance20cOhmPerKm)
	}
	return ohms(per, length)
}

func ohms(per, length working.Number) working.Number {
	f := working.Closure{Symbol: "R_20", Unit: "Ω", Text: "r · l / 1000", Source: conductorLaw}
	return f.Of(func(x ...float64) float64 { return x[0] * x[1] / 1000 }, per.As("r"), length.As("l"))
}
