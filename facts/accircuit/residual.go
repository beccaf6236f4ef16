package accircuit

import (
	"sunclause/facts/working"
	"sunclause/schema"
)

// Residual holds the residual current device of a circuit, and what asks for one.
type Residual struct {
	RCDFitted        working.Flag   `json:"rcd_fitted" words:"whether a residual current device protects it"`
	RCDType          working.Text   `json:"rcd_type" words:"type of that device: AC, A, F, B or EV"`
	RCDGrade         working.Number `json:"rcd_grade" words:"what faults it sees: 1 AC, 2 A (and EV), 3 F, 4 B"`
	RCDGradeAsked    working.Number `json:"rcd_grade_asked" words:"grade of the device that the makers of its generators ask for; 0 none"`
	RCDTypeBNeeded   working.Flag   `json:"rcd_type_b_needed" words:"whether a fault at an inverter can send DC through the device"`
	ResidualMa       working.Number `json:"residual_current_ma" words:"rated residual operating current of the device, IΔn"`
	RCDDelayed       working.Flag   `json:"rcd_delayed" words:"whether the device is selective or delayed"`
	RCDShared        working.Flag   `json:"rcd_shared" words:"whether the device protects other circuits too"`
	RCDOpensNeutral  working.Flag   `json:"rcd_opens_neutral" words:"whether the device opens the neutral too"`
	LeakageMa        working.Number `json:"generator_leakage_ma" words:"protective conductor current of its generators in normal operation"`
	LeakageSharePct  working.Number `json:"leakage_share_pct" words:"that current over the rated residual current"`
	ConcealedBare    working.Flag   `json:"concealed_unprotected" words:"whether a stretch of it is concealed without protection against nails and screws"`
	ConcealedDepthMm working.Number `json:"concealed_depth_mm" words:"least depth of such a stretch"`
	AdditionalNeeded working.Flag   `json:"additional_protection_needed" words:"whether sockets, a shallow concealed stretch or its designer ask for additional protection"`
	RCDNeeded        working.Flag   `json:"rcd_needed" words:"whether TT earthing, a maker or additional protection asks for a residual current device"`
}

var withRCD = []string{"rcbo", "afdd_with_rcbo", "rccb"}

// grades orders the types of residual current devices by the faults they see.
var grades = map[string]int{"none": 0, "AC": 1, "A": 2, "EV": 2, "F": 3, "B": 4}

var leakageShare = working.NewFormula("I_PE/I_Δn", "%", "100 · I_PE / I_Δn", working.ByDefinition)

func (m *mains) residual(l *link, u Use) Residual {
	d, fitted := l.rcd()
	r := Residual{
		RCDFitted:       fitted,
		RCDType:         working.StatedText(d.RCDType),
		ResidualMa:      working.Stated("I_Δn", "mA", d.ResidualCurrentMa),
		RCDDelayed:      working.StatedFlag(d.TimeDelayed),
		RCDShared:       working.StatedFlag(l.way.RCDShared),
		RCDOpensNeutral: working.StatedFlag(d.OpensNeutral),
		RCDTypeBNeeded:  working.Any(each(l.generators, func(g *generator) working.Flag { return g.typeBNeeded })...),
		LeakageMa:       working.Sum("I_PE", "mA", each(l.generators, func(g *generator) working.Number { return g.leakage })...),
	}
	r.RCDGrade = grade("g", r.RCDType)
	r.RCDGradeAsked = working.Greatest("g_asked", "", each(l.generators, func(g *generator) working.Number { return grade("g_asked", g.rcdAsked) })...)
	r.LeakageSharePct = leakageShare.Of(r.LeakageMa, r.ResidualMa)
	r.ConcealedBare, r.ConcealedDepthMm = m.concealed(l)
	r.AdditionalNeeded = working.Any(u.Sockets, u.AdditionalStated, m.shallow(r))
	r.RCDNeeded = working.Any(u.SystemEarthing.OneOf("TT"), l.askedByMaker(), r.AdditionalNeeded)
	return r
}

// rcd finds the residual current device of a circuit: the device of its way,
// or the one that the way names. That there is none has to be said.
func (l *link) rcd() (*schema.ProtectiveDevice, working.Flag) {
	own := working.StatedText(l.device.Kind).OneOf(withRCD...)
	if own.Known() && own.Value() {
		return l.device, own
	}
	named := l.way.RCD
	if named.Stated() {
		return named.To(), working.KnownFlag(true, named.At())
	}
	return named.To(), working.Any(own, working.StatedFlag(l.way.RCDFitted))
}

func grade(symbol string, kind working.Text) working.Number {
	if !kind.Known() {
		return working.Unknown(symbol, "", kind.Missing()...)
	}
	return working.Counted(symbol, grades[kind.Value()], kind.At())
}

// concealed reports whether a stretch of the circuit is concealed without
// mechanical protection, and the least depth of those.
func (m *mains) concealed(l *link) (working.Flag, working.Number) {
	var bare []working.Flag
	var depths []working.Number
	for _, i := range l.runs {
		r := &m.in.Cables[i]
		if r.Segments == nil {
			bare = append(bare, working.UnknownFlag(r.Member("segments")))
		}
		for j := range r.Segments {
			s := &r.Segments[j]
			b := bareStretch(s)
			bare = append(bare, b)
			if !b.Known() || b.Value() {
				depths = append(depths, working.Stated("d", "mm", s.ConcealedDepthMm))
			}
		}
	}
	if !l.traced() {
		bare = append(bare, working.UnknownFlag(l.missing...))
	}
	return working.Any(bare...), working.Least("d", "mm", depths...)
}

func bareStretch(s *schema.Segment) working.Flag {
	concealed := working.StatedText(s.Place).OneOf("wall_cavity", "indoors_concealed")
	return working.All(concealed, working.Not(working.StatedFlag(s.MechanicallyProtected)))
}

// shallow reports whether a bare stretch lies less deep than the book asks. The
// depth counts only where it is known that there is a bare stretch.
func (m *mains) shallow(r Residual) working.Flag {
	if bare := r.ConcealedBare; !bare.Known() || !bare.Value() {
		return bare
	}
	return working.Not(working.AtMost(m.book.Number("concealed_depth_min_mm", "d_min"), r.ConcealedDepthMm))
}

// askedByMaker reports whether the maker of one of the generators asks for a
// residual current device of whatever type.
func (l *link) askedByMaker() working.Flag {
	return working.Any(each(l.generators, func(g *generator) working.Flag { return working.Not(g.rcdAsked.OneOf("none")) })...)
}
