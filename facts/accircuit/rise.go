package accircuit

import (
	"slices"

	"sunclause/facts/working"
)

// Rise holds how far the voltage at the generator rises above that of the
// supply when it feeds at full output.
type Rise struct {
	RisePct         working.Number `json:"rise_pct" words:"voltage rise from the origin to the generator at full output, over all runs between, of the nominal voltage"`
	RiseV           working.Number `json:"rise_v" words:"voltage rise in volts, between lines where the generator is three-phase"`
	VoltageFeedingV working.Number `json:"voltage_feeding_v" words:"voltage to neutral at the generator at full output: the supply as measured and the rise"`
	VoltageHighestV working.Number `json:"voltage_highest_v" words:"voltage at the inverter from the highest voltage recorded at the supply"`
}

var (
	shareOfNominal = working.NewFormula("Δu", "%", "100 · ΔU / U_n", working.ByDefinition)
	shareInVolts   = working.NewFormula("ΔU", "V", "Δu · U_n / 100", working.ByDefinition)
)

// rise adds the drops of the runs; of several generators the farthest counts.
func (m *mains) rise(l *link) Rise {
	supply := m.in.AC.Supply
	var pct, volts []working.Number
	for i, runs := range l.toOrigin {
		p := working.Sum("Δu", "%", each(runs, m.dropPct)...)
		pct, volts = append(pct, p), append(volts, inVolts(p, m.nominal(l.generators[i].phases)))
	}
	f := Rise{RisePct: working.Unknown("Δu", "%", l.missing...), RiseV: working.Unknown("ΔU", "V", l.missing...)}
	if len(pct) > 0 {
		f.RisePct, f.RiseV = working.Greatest("Δu", "%", pct...), working.Greatest("ΔU", "V", volts...)
	}
	toNeutral := inVolts(f.RisePct, working.Stated("U_n", "V", supply.VoltageV))
	f.VoltageFeedingV = working.Sum("U", "V", working.Stated("U_meas", "V", supply.VoltageMeasuredV), toNeutral)
	f.VoltageHighestV = working.Sum("U", "V", working.Stated("U_max", "V", supply.VoltageMeasuredMaxV), toNeutral)
	return f
}

// dropPct is the drop of one run in % of the nominal voltage, between lines
// where a three-phase generator feeds through it.
func (m *mains) dropPct(run int) working.Number {
	r := &m.cables.Runs[run]
	return shareOfNominal.Of(r.DropV.As("ΔU"), m.nominal(m.phasesOn(run))).As("Δu_" + r.ID)
}

// phasesOn is the most phases of a generator that feeds through a run.
func (m *mains) phasesOn(run int) working.Number {
	var phases []working.Number
	for _, list := range [][]generator{m.own, m.existing} {
		for i := range list {
			if slices.Contains(list[i].path.Runs, run) {
				phases = append(phases, list[i].phases)
			}
		}
	}
	return working.Greatest("n_ph", "", phases...)
}

// nominal is the voltage that a drop of so many phases is measured by.
func (m *mains) nominal(phases working.Number) working.Number {
	supply := m.in.AC.Supply
	switch {
	case !phases.Known():
		return working.Unknown("U_n", "V", phases.Missing()...)
	case phases.Value() == 3:
		return working.Stated("U_n", "V", supply.VoltageBetweenLinesV)
	}
	return working.Stated("U_n", "V", supply.VoltageV)
}

// inVolts is a share of the nominal voltage in volts.
func inVolts(pct, nominal working.Number) working.Number {
	return shareInVolts.Of(pct.As("Δu"), nominal)
}
