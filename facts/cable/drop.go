package cable

import (
	"sunclause/facts/book"
	"sunclause/facts/pvstring"
	"sunclause/facts/working"
	"sunclause/schema"
)

// Drop holds what the cables take from one string.
type Drop struct {
	DcDropV       working.Number `json:"dc_drop_v" words:"voltage that the cables between it and its tracking input take at maximum power, conductors warm"`
	DcDropPct     working.Number `json:"dc_drop_pct" words:"voltage drop of the DC cables as a share of the voltage at maximum power at STC"`
	CsaLeastMm2   working.Number `json:"csa_least_mm2" words:"smallest cross-section on its way"`
	VmpAtInverter working.Number `json:"vmp_hot_at_inverter_v" words:"voltage at maximum power with hot cells, less the voltage drop"`
}

var (
	ohm      = working.Source{Document: "IEC 60364-5-52", Edition: "2009", Clause: "Annex G", How: working.Memory}
	hotterBy = working.Source{Document: "IEC 60228", Edition: "2004", Clause: "Annex A, temperature correction", How: working.Memory}
)

var (
	hotResistance = working.NewFormula("R_T", "Ω/km", "R · (1 + α · (T_R − 20))", hotterBy)
	bothWaysDrop  = working.NewFormula("ΔU", "V", "2 · l · I · R_T / 1000 / n_par", ohm)
	threeDrop     = working.NewFormula("ΔU", "V", "√3 · l · I · R_T / 1000 / n_par", ohm)
	tabulatedDrop = working.NewFormula("ΔU", "V", "l · I · m / 1000 / n_par", ohm)
	coolerDrop    = working.NewFormula("ΔU", "V", "C_t · ΔU_full", coolerConductor)
	dropShare     = working.NewFormula("Δu", "%", "100 · ΔU / U", working.ByDefinition)
	vmpLeft       = working.NewFormula("U_mp,inv", "V", "U_mp,hot − ΔU_dc", working.ByDefinition)
)

// warmResistance is the resistance of a conductor at a temperature.
func warmResistance(symbol string, cold, alpha, at working.Number) working.Number {
	return hotResistance.Of(cold.For("R"), alpha, at.As("T_R")).As(symbol)
}

// voltageDrop works out the voltage drop of the run at its rated current: at maximum
// power on the PV side, else at the design current.
func (f *Run) voltageDrop(i int, r *schema.Run, p *plan, segments []Segment) {
	f.DropV, f.DropPct = working.NoNumber("ΔU", "V"), working.NoNumber("Δu", "%")
	f.U0V, f.UV, f.DropFactor = working.NoNumber("U_0", "V"), working.NoNumber("U", "V"), working.NoNumber("C_t", "")
	many := working.Stated("n_par", "", r.ConductorsPerPole)
	hot, alpha := p.book.Number("dc_drop_conductor_c", "T_R"), p.book.Number("resistance_per_k", "α")
	switch f.Service.Value() {
	case "":
		f.DropV, f.DropPct = working.Unknown("ΔU", "V", f.Service.Missing()...), working.Unknown("Δu", "%", f.Service.Missing()...)
	case "pv_string", "pv_array":
		f.DropV = bothWays(f.LengthM, f.ImpA, warmResistance("R_T", f.Resistance20C, alpha, hot), many)
		f.DropPct = percent(f.DropV, f.lowestVmp(p.strings[i]))
	case "battery":
		f.DropV = bothWays(f.LengthM, f.DesignCurrentA, warmResistance("R_T", f.Resistance20C, alpha, hot), many)
	case "ac":
		f.acDrop(p, many, segments)
	}
}

// bothWays is the drop over going and returning conductor.
func bothWays(length, current, resistance, many working.Number) working.Number {
	return bothWaysDrop.Of(length.As("l"), current.As("I"), resistance.As("R_T"), many)
}

// percent is a drop as a share of a voltage.
func percent(drop, of working.Number) working.Number { return dropShare.Of(drop, of.For("U")) }

// lowestVmp is the lowest voltage at maximum power among the strings on the run.
func (f *Run) lowestVmp(carried []*pvstring.String) working.Number {
	if !f.Strings.Known() {
		return working.Unknown("U_mp", "V", f.Strings.Missing()...)
	}
	var all []working.Number
	for _, s := range carried {
		all = append(all, s.VmpStcV)
	}
	return working.Least("U_mp", "V", all...)
}

// acDrop goes by resistance, or by the table of the rule set where its word
// says so and the table has the conductor.
func (f *Run) acDrop(p *plan, many working.Number, segments []Segment) {
	supply := &p.in.AC.Supply
	f.U0V, f.UV = working.Stated("U_0", "V", supply.VoltageV), working.Stated("U", "V", supply.VoltageV)
	column := "single_phase"
	if f.Loaded.Known() && f.Loaded.Value() == 3 {
		f.UV, column = working.Stated("U", "V", supply.VoltageBetweenLinesV), "three_phase"
	}
	f.DropV = f.byResistance(p, many, column)
	switch word := p.book.Word("ac_drop_method"); word.Value() {
	case "resistance":
	case "table":
		if n, holds := f.byTable(p, many, column); holds {
			f.DropV = n
		}
	default:
		f.DropV = working.Unknown("ΔU", "V", append(word.Missing(), working.Unstated("the rule set's ac_drop_method can be resistance or table"))...)
	}
	f.DropFactor = f.dropFactor(p, many, segments)
	if c := f.DropFactor; !c.Known() || c.Value() != 1 {
		f.DropV = coolerDrop.Of(c, f.DropV.As("ΔU_full"))
	}
	if !f.Loaded.Known() {
		f.UV = working.Unknown("U", "V", f.Loaded.Missing()...)
		f.DropV = working.Unknown("ΔU", "V", f.Loaded.Missing()...)
	}
	f.DropPct = percent(f.DropV, f.UV)
}

func (f *Run) byResistance(p *plan, many working.Number, column string) working.Number {
	r := warmResistance("R_T", f.Resistance20C, p.book.Number("resistance_per_k", "α"), f.ConductorMaxC)
	if column == "single_phase" {
		return bothWays(f.LengthM, f.DesignCurrentA, r, many)
	}
	return threeDrop.Of(f.LengthM.As("l"), f.DesignCurrentA.As("I"), r, many)
}

// byTable takes the drop for each ampere and metre from the table of the rule
// set; holds is false where the table does not know the conductor.
func (f *Run) byTable(p *plan, many working.Number, column string) (n working.Number, holds bool) {
	row := p.book.Pick("cable_drop", book.Is("conductor", f.ConductorMetal), book.Equals("class", f.ConductorClass),
		book.Equals("conductor_c", f.ConductorMaxC), book.Equals("csa_mm2", f.CsaMm2), book.Is("cores", coresWord(f.SingleCores)))
	if row.Lacked() {
		return n, false
	}
	return tabulatedDrop.Of(f.LengthM.As("l"), f.DesignCurrentA.As("I"), row.Number(column, "m"), many), true
}

// coresWord is the word of the table for cables of one core, and for those of more.
func coresWord(single working.Flag) working.Text {
	switch {
	case !single.Known():
		return working.UnknownText(single.Missing()...)
	case single.Value():
		return working.KnownText("single", single.At())
	}
	return working.KnownText("more", single.At())
}

// drop adds up what the runs on the way of a string take from it.
func (p *plan) drop(s *pvstring.String, runs []Run) Drop {
	d := Drop{
		DcDropV:     working.Unknown("ΔU_dc", "V", s.Mppt.Missing()...),
		CsaLeastMm2: working.Unknown("S_min", "mm²", s.Mppt.Missing()...),
	}
	if s.Mppt.Known() {
		var drops, sizes []working.Number
		for _, r := range p.circuit.From(s.ID).Runs {
			drops, sizes = append(drops, runs[r].DropV), append(sizes, runs[r].CsaMm2)
		}
		d.DcDropV = working.Sum("ΔU_dc", "V", drops...)
		d.CsaLeastMm2 = working.Least("S_min", "mm²", sizes...)
	}
	d.DcDropPct = percent(d.DcDropV.As("ΔU"), s.VmpStcV)
	d.VmpAtInverter = vmpLeft.Of(s.VmpHotV, d.DcDropV)
	return d
}
