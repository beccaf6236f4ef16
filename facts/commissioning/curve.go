package commissioning

import (
	"math"

	"sunclause/facts/working"
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
		return none[CombinerTest](d.in)
	}
	size := working.Closure{Symbol: "|U|", Unit: "V", Text: "|U|", Source: working.ByDefinition}
	share := working.Closure{Symbol: "U/U_oc", Unit: "%", Text: "100 · |U| / U_oc,STC", Source: working.ByDefinition}
	all := make([]CombinerTest, len(d.in.Commissioning.Combiners))
	for i, r := range d.in.Commissioning.Combiners {
		all[i] = CombinerTest{
			Subject:  working.Subject{ID: r.ID.Value, At: r.At(), Name: "combiner reading " + r.ID.Value},
			VoltageV: size.Of(func(x ...float64) float64 { return math.Abs(x[0]) }, working.Stated("U", "V", r.VoltageV)),
		}
		stc := working.Unknown("U_oc,STC", "V", r.String.At())
		if j, ok := d.find.strings[r.String.Value]; ok {
			stc = d.pv.Strings[j].VocStcV
		}
		all[i].OverVocPct = share.Of(func(x ...float64) float64 { return 100 * x[0] / x[1] }, all[i].VoltageV, stc)
	}
	return all
}

// curves derives the facts of every curve; nil when the document states none.
func (d *deriver) curves() []CurveTest {
	if d.in.Commissioning.Curves == nil {
		return none[CurveTest](d.in)
	}
	all := make([]CurveTest, len(d.in.Commissioning.Curves))
	for i, r := range d.in.Commissioning.Curves {
		all[i] = CurveTest{
			Subject:          working.Subject{ID: r.ID.Value, At: r.At(), Name: "curve " + r.ID.Value},
			IrradianceWPerM2: working.Stated("G", "W/m²", r.IrradianceWPerM2),
			Shape:            working.StatedText(r.Shape),
			FillFactor: fillFactor(working.Stated("U_mp", "V", r.VmpV), working.Stated("I_mp", "A", r.ImpA),
				working.Stated("U_oc", "V", r.VocV), working.Stated("I_sc", "A", r.IscA)),
			FillFactorStc: working.Unknown("FF", "", r.String.At()),
		}
		if j, ok := d.find.strings[r.String.Value]; ok {
			m := d.in.Datasheets.Modules[d.in.Strings[j].Module.Value]
			all[i].FillFactorStc = fillFactor(working.Stated("U_mp", "V", m.VmpV), working.Stated("I_mp", "A", m.ImpA),
				working.Stated("U_oc", "V", m.VocV), working.Stated("I_sc", "A", m.IscA))
		}
	}
	return all
}

func fillFactor(ump, imp, uoc, isc working.Number) working.Number {
	f := working.Closure{Symbol: "FF", Text: "U_mp · I_mp / (U_oc · I_sc)", Source: working.ByDefinition}
	return f.Of(func(x ...float64) float64 { return x[0] * x[1] / (x[2] * x[3]) }, ump, imp, uoc, isc)
}

// curvesOf counts the curves taken of a string.
func (d *deriver) curvesOf(id string) working.Number {
	if d.in.Commissioning.Curves == nil {
		return working.Unknown("n", "", d.at("curves"))
	}
	return working.Counted("n", d.find.curves[id], d.at("curves"))
}
