package commissioning

import (
	"sunclause/facts/working"
	"sunclause/schema"
)

var (
	magnitude  = working.NewFormula("|U|", "V", "|U|", working.ByDefinition)
	shareOfVoc = working.NewFormula("U/U_oc", "%", "100 · U / U_oc,STC", working.ByDefinition)
	fillFactor = working.NewFormula("FF", "", "U_mp · I_mp / (U_oc · I_sc)", working.ByDefinition)
)

// CombinerTest holds the facts of one polarity reading where strings are put in
// parallel.
type CombinerTest struct {
	working.Subject

	VoltageV   working.Number `json:"voltage_v" words:"voltage between the same poles of two strings, whichever way"`
	OverVocPct working.Number `json:"voltage_over_voc_pct" words:"that voltage over the open-circuit voltage of the string at STC: near zero, or near 200 % with one string reversed"`
}

// CurveTest holds the facts of one current-voltage curve.
type CurveTest struct {
	working.Subject

	IrradianceWPerM2 working.Number `json:"irradiance_w_per_m2" words:"irradiance in the plane of the modules"`
	Shape            working.Text   `json:"shape" words:"shape of the curve"`
	FillFactor       working.Number `json:"fill_factor" words:"fill factor of the curve"`
	FillFactorStc    working.Number `json:"fill_factor_stc" words:"fill factor by the module's sheet"`
}

// combiners derives the facts of every reading; nil when the document states
// none.
func (d *deriver) combiners() []CombinerTest {
	if d.in.Commissioning.Combiners == nil {
		return emptyBeforeBuild[CombinerTest](d.in)
	}
	all := make([]CombinerTest, len(d.in.Commissioning.Combiners))
	for i, r := range d.in.Commissioning.Combiners {
		all[i] = CombinerTest{
			Subject:  working.Subject{ID: r.ID.Value, At: r.At(), Name: "combiner reading " + r.ID.Value},
			VoltageV: magnitude.Of(working.Stated("U", "V", r.VoltageV)),
		}
		stc := working.Unknown("U_oc,STC", "V", r.String.At())
		if j, ok := d.find.strings[r.String.Value]; ok {
			stc = d.pv.Strings[j].VocStcV
		}
		all[i].OverVocPct = shareOfVoc.Of(all[i].VoltageV.For("U"), stc)
	}
	return all
}

// curves derives the facts of every curve; nil when the document states none.
func (d *deriver) curves() []CurveTest {
	if d.in.Commissioning.Curves == nil {
		return emptyBeforeBuild[CurveTest](d.in)
	}
	all := make([]CurveTest, len(d.in.Commissioning.Curves))
	for i, r := range d.in.Commissioning.Curves {
		m := r.String.To().Module.To()
		all[i] = CurveTest{
			Subject:          working.Subject{ID: r.ID.Value, At: r.At(), Name: "curve " + r.ID.Value},
			IrradianceWPerM2: working.Stated("G", "W/m²", r.IrradianceWPerM2),
			Shape:            working.StatedText(r.Shape),
			FillFactor:       fillFactorOf(r.VmpV, r.ImpA, r.VocV, r.IscA),
			FillFactorStc:    fillFactorOf(m.VmpV, m.ImpA, m.VocV, m.IscA),
		}
	}
	return all
}

func fillFactorOf(vmp, imp, voc, isc schema.Number) working.Number {
	return fillFactor.Of(working.Stated("U_mp", "V", vmp), working.Stated("I_mp", "A", imp), working.Stated("U_oc", "V", voc), working.Stated("I_sc", "A", isc))
}

// curvesOf counts the curves taken of a string.
func (d *deriver) curvesOf(id string) working.Number {
	if d.in.Commissioning.Curves == nil {
		return working.Unknown("n", "", d.at("curves"))
	}
	return working.Counted("n", d.find.curves[id], d.at("curves"))
}
