package accircuit

import (
	"sunclause/facts/circuit"
	"sunclause/facts/working"
	"sunclause/schema"
)

// Residual holds the residual current device of a circuit, and what asks for one.
type Residual struct {
	RCDFitted        working.Flag   `json:"rcd_fitted" words:"whether a residual current device protects it: of its way, or before its board"`
	RCDFound         working.Flag   `json:"rcd_found" words:"whether one of the devices named between it and the supply opens on residual current"`
	RCDStated        working.Flag   `json:"rcd_stated" words:"whether its way is said to be behind a residual current device; what is found where nothing is said"`
	RCDType          working.Text   `json:"rcd_type" words:"type of that device: AC, A, F, B or EV"`
	RCDGrade         working.Number `json:"rcd_grade" words:"what faults it sees: 1 AC, 2 A (and EV), 3 F, 4 B"`
	RCDGradeAsked    working.Number `json:"rcd_grade_asked" words:"grade of the device that the makers of its generators ask for; 0 none"`
	RCDTypeBNeeded   working.Flag   `json:"rcd_type_b_needed" words:"whether a fault at an inverter can send DC through the device"`
	ResidualMa       working.Number `json:"residual_current_ma" words:"rated residual operating current of the device, IΔn"`
	RCDDelayed       working.Flag   `json:"rcd_delayed" words:"whether the device is selective or delayed"`
	SharedStated     working.Flag   `json:"rcd_shared_stated" words:"whether its residual current device is said to protect other ways too"`
	RCDShared        working.Flag   `json:"rcd_shared" words:"whether the device protects other circuits too"`
	RCDOpensNeutral  working.Flag   `json:"rcd_opens_neutral" words:"whether the device opens the neutral too"`
	LeakageMa        working.Number `json:"generator_leakage_ma" words:"protective conductor current of its generators in normal operation"`
	LeakageSharePct  working.Number `json:"leakage_share_pct" words:"that current over the rated residual current"`
	ConcealedBare    working.Flag   `json:"concealed_unprotected" words:"whether a stretch of it is concealed without protection against nails and screws"`
	ConcealedDepthMm working.Number `json:"concealed_depth_mm" words:"least depth of such a stretch"`
	AdditionalNeeded working.Flag   `json:"additional_protection_needed" words:"whether sockets, a shallow concealed stretch or its designer ask for additional protection"`
	RCDNeeded        working.Flag   `json:"rcd_needed" words:"whether TT earthing, a maker or additional protection asks for a residual current device"`
}

// grades orders the types of residual current devices by the faults they see.
var grades = map[string]int{"none": 0, "AC": 1, "A": 2, "EV": 2, "F": 3, "B": 4}

var leakageShare = working.NewFormula("I_PE/I_Δn", "%", "100 · I_PE / I_Δn", working.ByDefinition)

func (m *mains) residual(l *link, u Use) Residual {
	r := l.residualDevices()
	r.RCDTypeBNeeded = working.Any(each(l.generators, func(g *generator) working.Flag { return g.typeBNeeded })...)
	r.LeakageMa = working.Sum("I_PE", "mA", each(l.generators, func(g *generator) working.Number { return g.leakage })...)
	r.RCDGrade = grade("g", r.RCDType)
	r.RCDGradeAsked = working.Greatest("g_asked", "", each(l.generators, func(g *generator) working.Number { return grade("g_asked", g.rcdAsked) })...)
	r.LeakageSharePct = leakageShare.Of(r.LeakageMa, r.ResidualMa)
	r.ConcealedBare, r.ConcealedDepthMm = m.concealed(l)
	r.AdditionalNeeded = working.Any(u.Sockets, u.AdditionalStated, m.shallow(r))
	r.RCDNeeded = working.Any(u.SystemEarthing.OneOf("TT"), l.askedByMaker(), r.AdditionalNeeded)
	return r
}

// residualDevices takes what there is of residual current devices between the
// circuit and the supply: the device of its way, the one that the way names, and
// those before its board. Of several the worst counts: the type that sees fewest
// faults, the rated residual current that operates first. That there is none has to
// be said.
func (l *link) residualDevices() Residual {
	way := l.way
	own := []circuit.Upstream{{Device: l.device, Shared: working.StatedFlag(way.RCDShared)}}
	if way.RCD.Stated() {
		own = append(own, circuit.Upstream{Device: way.RCD.To(), Shared: working.StatedFlag(way.RCDShared)})
	}
	var found []working.Flag
	var all []circuit.Upstream
	for _, u := range append(own, l.before...) {
		is := circuit.OpensOnResidual(u.Device)
		found = append(found, is)
		if working.MayHold(is) {
			all = append(all, u)
		}
	}
	r := Residual{RCDFound: working.Any(found...), SharedStated: working.KnownFlag(way.RCDShared.Yes(), way.RCDShared.At())}
	r.RCDStated = r.RCDFound
	if way.RCDFitted.Stated() {
		r.RCDStated = working.StatedFlag(way.RCDFitted)
	}
	r.RCDFitted = r.RCDFound
	if !way.RCD.Stated() {
		r.RCDFitted = working.Any(r.RCDFound, working.StatedFlag(way.RCDFitted))
	}
	if all == nil {
		all = []circuit.Upstream{{Device: way.RCD.To(), Shared: working.StatedFlag(way.RCDShared)}}
	}
	r.worst(all)
	return r
}

// worst takes the worst of the residual current devices that a circuit is behind.
func (r *Residual) worst(all []circuit.Upstream) {
	first := all[0].Device
	r.RCDType, r.ResidualMa = working.StatedText(first.RCDType), working.Stated("I_Δn", "mA", first.ResidualCurrentMa)
	var delayed, opens, shared []working.Flag
	for i, u := range all {
		delayed = append(delayed, working.StatedFlag(u.Device.TimeDelayed))
		opens = append(opens, working.StatedFlag(u.Device.OpensNeutral))
		shared = append(shared, u.Shared)
		if i > 0 {
			r.RCDType = lesserType(r.RCDType, working.StatedText(u.Device.RCDType))
			r.ResidualMa = working.Least("I_Δn", "mA", r.ResidualMa, working.Stated("I_Δn", "mA", u.Device.ResidualCurrentMa))
		}
	}
	r.RCDDelayed, r.RCDOpensNeutral, r.RCDShared = working.Any(delayed...), working.All(opens...), working.Any(shared...)
}

// lesserType is the one of two types of residual current devices that sees fewer
// faults; unknown as soon as one of them is.
func lesserType(a, b working.Text) working.Text {
	switch {
	case !a.Known() || !b.Known():
		return working.UnknownText(working.Gaps(append(a.Missing(), b.Missing()...))...)
	case grades[b.Value()] < grades[a.Value()]:
		return b
	}
	return a
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
			if working.MayHold(b) {
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
