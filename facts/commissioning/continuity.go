package commissioning

import (
	"sunclause/facts/book"
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

var conductorOhms = working.NewFormula("R_20", "Ω", "r · l / 1000", conductorLaw)

// continuity derives the facts of every reading; nil when the document states
// none.
func (d *deriver) continuity() []ContinuityTest {
	if d.in.Commissioning.Continuity == nil {
		return emptyBeforeBuild[ContinuityTest](d.in)
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
		all[i].ExcessOhm = working.Difference("ΔR", "Ω", all[i].ResistanceOhm, all[i].ExpectedOhm)
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
			size := working.Stated("S", "mm²", b.Conductor.CsaMm2)
			perKm := d.book.Pick("conductor_resistance", book.Equals("csa_mm2", size)).Number("resistance_20c_ohm_per_km", "r")
			return conductorOhms.Of(perKm, working.Stated("l", "m", b.Conductor.LengthM))
		}
	}
	return working.Unknown("R_20", "Ω", r.Run.At())
}

// runOhm is the resistance of the protective conductor of a run: the one within
// its cable, the one laid beside it, or the cable itself where it is one core
// laid for nothing else.
func (d *deriver) runOhm(run *schema.Run, length working.Number) working.Number {
	sheet := run.Cable.To()
	perKm := sheet.Resistance20cOhmPerKm
	switch {
	case !run.Cable.Stated(): // nobody knows what is within the cable
	case run.ProtectiveCable.Stated():
		perKm = run.ProtectiveCable.To().Resistance20cOhmPerKm
	case sheet.CpcCsaMm2.Stated():
		perKm = sheet.CpcResistance20cOhmPerKm
	}
	return conductorOhms.Of(working.Stated("r", "Ω/km", perKm), length.As("l"))
}
