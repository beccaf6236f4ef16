package cable

import (
	"slices"

	"sunclause/facts/circuit"
	"sunclause/facts/pvstring"
	"sunclause/facts/working"
	"sunclause/schema"
)

// carriedBy lists, for each run, the strings on whose path it lies.
func carriedBy(c *circuit.Circuit, pv pvstring.Facts) map[int][]*pvstring.String {
	carried := map[int][]*pvstring.String{}
	for i := range pv.Strings {
		s := &pv.Strings[i]
		for _, r := range c.From(s.ID).Runs {
			carried[r] = append(carried[r], s)
		}
	}
	return carried
}

// load adds up what the strings put on the run. It is unknown for a run of the
// PV side as long as some string was not traced.
func (f *Run) load(i int, r *schema.Run, carried []*pvstring.String, p *plan) {
	var ids []string
	var voc, stc, design, mp []working.Number
	for _, s := range carried {
		ids = append(ids, s.ID)
		voc, stc = append(voc, s.VocMaxV), append(stc, s.IscStcA)
		design, mp = append(design, s.IscMaxA), append(mp, s.ImpA)
	}
	f.Strings = working.List(ids...)
	f.StringsParallel = working.Counted("N_p", len(ids), r.At())
	f.VocMaxV = working.Greatest("U_oc,max", "V", voc...)
	f.IscStcA = working.Sum("I_sc,run", "A", stc...)
	f.IscMaxA = working.Sum("I_sc,max,run", "A", design...)
	f.ImpA = working.Sum("I_mp,run", "A", mp...)
	f.reverse(carried, p.inputs)
	f.fuses(carried)
	if p.pv.Untraced == nil || !p.circuit.CarriesPV(i) {
		return
	}
	f.Strings = working.UnknownList(p.pv.Untraced...)
	f.Fused = working.UnknownFlag(p.pv.Untraced...)
	for _, n := range []*working.Number{&f.StringsParallel, &f.VocMaxV, &f.IscStcA, &f.IscMaxA, &f.ImpA, &f.ReverseMaxA, &f.FuseRatedA} {
		*n = working.Unknown(n.Symbol(), n.Unit(), p.pv.Untraced...)
	}
}

var reverseLaw = working.Source{Document: "IEC 62548", Edition: "2016", Clause: "table of minimum current ratings of circuits", How: working.Memory}

var reverseMax = working.NewFormula("I_rev,max", "A", "I_sc,max,input − I_sc,max,run", reverseLaw)

// reverse is what the strings of the same input that do not come through the
// run can drive back through it.
func (f *Run) reverse(carried []*pvstring.String, inputs map[string]*pvstring.Mppt) {
	if len(carried) == 0 {
		f.ReverseMaxA = working.NoNumber("I_rev,max", "A")
		return
	}
	input := inputs[carried[0].Mppt.Value()]
	if input == nil {
		f.ReverseMaxA = working.Unknown("I_rev,max", "A", carried[0].Mppt.Missing()...)
		return
	}
	f.ReverseMaxA = reverseMax.Of(input.IscMaxA.As("I_sc,max,input"), f.IscMaxA)
}

// fuses takes the overcurrent protection of the strings on the run.
func (f *Run) fuses(carried []*pvstring.String) {
	fitted := []working.Flag{working.KnownFlag(len(carried) > 0, f.At)}
	var rated []working.Number
	for _, s := range carried {
		fitted, rated = append(fitted, s.FuseFitted), append(rated, s.FuseRatedA)
	}
	f.Fused = working.All(fitted...)
	f.FuseRatedA = working.Greatest("I_n", "A", rated...)
}

// design is the current that the conductors must be good for.
func (f *Run) design(i int, p *plan) {
	switch f.Service.Value() {
	case "pv_string", "pv_array":
		f.DesignCurrentA = f.pvDesign()
	case "ac":
		f.DesignCurrentA = p.mains.current(i)
	case "battery":
		f.DesignCurrentA = p.duties.current(i)
	case "":
		f.DesignCurrentA = working.Unknown("I_b", "A", f.Service.Missing()...)
	default:
		f.DesignCurrentA = working.NoNumber("I_b", "A")
	}
}

// pvDesign is the greater of the strings' own current and what others can drive
// back. The device of a single string stops the latter.
func (f *Run) pvDesign() working.Number {
	own := f.IscMaxA.As("I_sc,max")
	one := f.StringsParallel.Known() && f.StringsParallel.Value() == 1
	if one && f.Service.Value() == "pv_string" {
		if f.ReverseMaxA.Known() && f.ReverseMaxA.Value() == 0 || f.Fused.Known() && f.Fused.Value() {
			return working.Greatest("I_b", "A", own)
		}
		if !f.Fused.Known() {
			return working.Unknown("I_b", "A", slices.Concat(f.Fused.Missing(), own.Missing())...)
		}
	}
	return working.Greatest("I_b", "A", own, f.ReverseMaxA)
}
