package cable

import (
	"slices"

	"sunclause/facts/book"
	"sunclause/facts/circuit"
	"sunclause/facts/working"
	"sunclause/schema"
)

// protective is the conductor that serves for protection: a separate cable laid
// with the run, a core of its own cable, or the armour.
type protective struct {
	csa        working.Number
	resistance working.Number // Ω/km at 20 °C
	k          working.Number
}

var (
	loopResistance = working.NewFormula("R_1+R_2", "Ω", "(R_1 + R_2) · l / 1000 / n_par", ohm)
	protectiveSize = working.NewFormula("S_p", "mm²", "n_par · S", working.ByDefinition)
	armourSize     = working.NewFormula("S_p", "mm²", "S_armour · k_p / k_Cu", adiabatic)
)

// protect takes the protective conductor of the run, and with the line
// conductor the resistance of the fault loop within it.
func (f *Run) protect(r *schema.Run, p *plan) {
	c := p.protectiveOf(f, r)
	f.ProtectiveMm2, f.ProtectiveK = c.csa, c.k
	f.ProtectiveA2s = withstand(c.k, c.csa)
	f.LoopOhm = working.Unknown("R_1+R_2", "Ω", c.resistance.Missing()...)
	if !f.Service.Known() {
		f.LoopOhm = working.Unknown("R_1+R_2", "Ω", f.Service.Missing()...)
	}
	if f.Service.Value() != "ac" {
		return
	}
	alpha := p.book.Number("loop_resistance_per_k", "α")
	line, back := warmResistance("R_1", f.Resistance20C, alpha, f.ConductorMaxC), warmResistance("R_2", c.resistance, alpha, f.ConductorMaxC)
	f.LoopOhm = loopResistance.Of(line, back, f.LengthM.As("l"), working.Stated("n_par", "", r.ConductorsPerPole))
}

func (p *plan) protectiveOf(f *Run, r *schema.Run) protective {
	sheet := r.Cable.To()
	switch {
	case slices.Contains(circuit.ProtectiveServices, f.Service.Value()):
		return p.separate(f.Wire, r)
	case r.ProtectiveCable.Stated():
		c := p.separate(p.wireOf(r.ProtectiveCable), r)
		if r.ProtectiveByArmour.Yes() {
			c.orStronger(p.armour(f, sheet))
		}
		return c
	case r.ProtectiveByArmour.Yes() && sheet.CpcCsaMm2.Stated() && r.ProtectiveInService.Yes():
		c := p.core(f, sheet, r)
		c.orStronger(p.armour(f, sheet))
		return c
	case r.ProtectiveByArmour.Yes():
		return p.armour(f, sheet)
	case sheet.CpcCsaMm2.Stated():
		return p.core(f, sheet, r)
	}
	missing := []string{r.ProtectiveCable.At(), sheet.CpcCsaMm2.At()}
	if !r.Cable.Stated() {
		missing = []string{r.ProtectiveCable.At(), r.Cable.At()}
	}
	return noProtective(missing...)
}

func noProtective(missing ...string) protective {
	return protective{
		csa:        working.Unknown("S_p", "mm²", missing...),
		resistance: working.Unknown("R_20,p", "Ω/km", missing...),
		k:          working.Unknown("k_p", "A·√s/mm²", missing...),
	}
}

// separate is a conductor in a cable of its own.
func (p *plan) separate(w Wire, r *schema.Run) protective {
	return protective{
		csa:        protectiveSize.Of(working.Stated("n_par", "", r.ConductorsPerPole), w.CsaMm2),
		resistance: w.Resistance20C.As("R_20,p"),
		k:          p.protectiveK("separate", w.ConductorMetal, w.CableInsulation),
	}
}

// orStronger takes the size of another conductor beside this one where it bears
// more; the resistance stays that of this one alone, which is on the safe side.
func (c *protective) orStronger(other protective) {
	mine, its := withstand(c.k, c.csa), withstand(other.k, other.csa)
	if its.Known() && mine.Known() && its.Value() > mine.Value() {
		c.csa, c.k = other.csa, other.k
	}
}

// core is a conductor within the cable, of the same metal and make.
func (p *plan) core(f *Run, s *schema.CableDatasheet, r *schema.Run) protective {
	csa := working.Stated("S_cpc", "mm²", s.CpcCsaMm2)
	if in := r.ProtectiveInService; !in.Yes() {
		return noProtective(in.At()) // not connected, or not said to be
	}
	printed := working.Stated("R_sheet,cpc", "Ω/km", s.CpcResistance20cOhmPerKm)
	return protective{
		csa:        protectiveSize.Of(working.Stated("n_par", "", r.ConductorsPerPole), csa.For("S")),
		resistance: p.resistance(s.Conductor, s.ConductorClass, s.Tinned, csa, printed).As("R_20,p"),
		k:          p.protectiveK("core", f.ConductorMetal, f.CableInsulation),
	}
}

// armour counts with the cross-section of copper that would bear the same; no
// figure for its resistance is in the books at hand.
func (p *plan) armour(f *Run, s *schema.CableDatasheet) protective {
	k := p.protectiveK("armour", working.StatedText(s.Armour), f.CableInsulation)
	like := p.protectiveK("core", working.KnownText("copper", s.Armour.At()), f.CableInsulation).As("k_Cu")
	return protective{
		csa:        armourSize.Of(working.Stated("S_armour", "mm²", s.ArmourCsaMm2), k, like),
		resistance: working.Unknown("R_20,p", "Ω/km", "the rule set has no resistance of armour"),
		k:          like.As("k_p"),
	}
}

func (p *plan) protectiveK(by string, metal, insulation working.Text) working.Number {
	return p.book.Pick("protective_withstand", book.Is("by", working.KnownText(by, "")), book.Is("metal", metal), book.Is("insulation", insulation)).Number("k", "k_p")
}
