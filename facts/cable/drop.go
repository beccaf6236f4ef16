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

// warm is the resistance of a conductor at a temperature.
func warm(symbol string, cold, alpha, at working.Number) working.Number {
	f := working.Closure{Symbol: symbol, Unit: "Ω/km", Text: cold.Symbol() + " · (1 + α · (T_R − 20))", Source: hotterBy}
	return f.Of(func(x ...float64) float64 { return x[0] * (1 + x[1]*(x[2]-20)) }, cold, alpha.As("α"), at.As("T_R"))
}

// lose works out the voltage drop of the run at its rated current: at maximum
// power on the PV side, else at the design current.
func (f *Run) lose(i int, r *schema.Run, p *plan, segments []Segment) {
	f.DropV, f.DropPct = working.Unknown("ΔU", "V"), working.Unknown("Δu", "%")
	f.U0V, f.UV, f.DropFactor = working.Unknown("U_0", "V"), working.Unknown("U", "V"), working.Unknown("C_t", "")
	many := working.Stated("n_par", "", r.ConductorsPerPole)
	hot, alpha := p.book.Number("dc_drop_conductor_c", "T_R"), p.book.Number("resistance_per_k", "α")
	switch f.Service.Value() {
	case "pv_string", "pv_array":
		f.DropV = overBoth(f.LengthM, f.ImpA, warm("R_T", f.Resistance20C, alpha, hot), many)
		f.DropPct = percent(f.DropV, f.lowestVmp(p.strings[i]))
	case "battery":
		f.DropV = overBoth(f.LengthM, f.DesignCurrentA, warm("R_T", f.Resistance20C, alpha, hot), many)
	case "ac":
		f.acDrop(p, many, segments)
	}
}

// overBoth is the drop over going and returning conductor.
func overBoth(length, current, resistance, many working.Number) working.Number {
	f := working.Closure{Symbol: "ΔU", Unit: "V", Text: "2 · l · I · R_T / 1000 / n_par", Source: ohm}
	return f.Of(func(x ...float64) float64 { return 2 * x[0] * x[1] * x[2] / 1000 / x[3] },
		length.As("l"), current.As("I"), resistance.As("R_T"), many)
}

func percent(drop, of working.Number) working.Number {
	f := working.Closure{Symbol: "Δu", Unit: "%", Text: "100 · ΔU / " + of.Symbol(), Source: working.ByDefinition}
	return f.Of(func(x ...float64) float64 { return 100 * x[0] / x[1] }, drop, of)
}

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
		f.DropV = working.Unknown("ΔU", "V", append(word.Missing(), "the rule set's ac_drop_method can be resistance or table")...)
	}
	f.DropFactor = f.cooler(p, many, segments)
	if c := f.DropFactor; !c.Known() || c.Value() != 1 {
		full := working.Closure{Symbol: "ΔU", Unit: "V", Text: "C_t · ΔU_full", Source: coolerConductor}
		f.DropV = full.Of(func(x ...float64) float64 { return x[0] * x[1] }, c, f.DropV.As("ΔU_full"))
	}
	if !f.Loaded.Known() {
		f.UV = working.Unknown("U", "V", f.Loaded.Missing()...)
		f.DropV = working.Unknown("ΔU", "V", f.Loaded.Missing()...)
	}
	f.DropPct = percent(f.DropV, f.UV)
}

func (f *Run) byResistance(p *plan, many working.Number, column string) working.Number {
	r := warm("R_T", f.Resistance20C, p.book.Number("resistance_per_k", "α"), f.ConductorMaxC)
	if column == "single_phase" {
		return overBoth(f.LengthM, f.DesignCurrentA, r, many)
	}
	lines := working.Closure{Symbol: "ΔU", Unit: "V", Text: "√3 · l · I · R_T / 1000 / n_par", Source: ohm}
	return lines.Of(func(x ...float64) float64 { return root3 * x[0] * x[1] * x[2] / 1000 / x[3] },
		f.LengthM.As("l"), f.DesignCurrentA.As("I"), r, many)
}

const root3 = 1.7320508075688772

// byTable takes the drop for each ampere and metre from the table of the rule
// set; holds is false where the table does not know the conductor.
func (f *Run) byTable(p *plan, many working.Number, column string) (n working.Number, holds bool) {
	row := p.book.Pick("cable_drop", book.Is("conductor", f.ConductorMetal), book.Equals("class", f.ConductorClass),
		book.Equals("conductor_c", f.ConductorMaxC), book.Equals("csa_mm2", f.CsaMm2))
	if row.Lacked() {
		return n, false
	}
	d := working.Closure{Symbol: "ΔU", Unit: "V", Text: "l · I · m / 1000 / n_par", Source: ohm}
	return d.Of(func(x ...float64) float64 { return x[0] * x[1] * x[2] / 1000 / x[3] },
		f.LengthM.As("l"), f.DesignCurrentA.As("I"), row.Number(column, "m"), many), true
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
	left := working.Closure{Symbol: "U_mp,inv", Unit: "V", Text: "U_mp,hot − ΔU_dc", Source: working.ByDefinition}
	d.VmpAtInverter = left.Of(func(x ...float64) float64 { return x[0] - x[1] }, s.VmpHotV, d.DcDropV)
	return d
}
