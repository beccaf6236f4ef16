package accircuit

import (
	"math"

	"sunclause/facts/working"
)

// Rise holds how far the voltage at the generator rises above that of the
// supply when it feeds at full output.
type Rise struct {
	RiseV           working.Number `json:"rise_v" words:"voltage rise from the origin to the generator at full output, over all runs between"`
	RisePct         working.Number `json:"rise_pct" words:"that rise over the nominal voltage"`
	VoltageFeedingV working.Number `json:"voltage_feeding_v" words:"voltage to neutral at the generator at full output: the supply as measured and the rise"`
	VoltageHighestV working.Number `json:"voltage_highest_v" words:"the same from the highest voltage recorded at the supply"`
}

// rise adds the drops of the runs; of several generators the farthest counts.
func (m *mains) rise(l *link) Rise {
	supply := m.in.AC.Supply
	f := Rise{RiseV: working.Unknown("ΔU", "V", l.missing...)}
	if l.outlet.way != nil {
		f.RiseV = working.Greatest("ΔU", "V", each(l.toOrigin, m.drop)...)
	}
	phases := l.generators[0].phases
	nominal := working.Stated("U_n", "V", supply.VoltageV)
	toNeutral := f.RiseV
	if !phases.Known() {
		nominal = working.Unknown("U_n", "V", phases.Missing()...)
		toNeutral = working.Unknown("ΔU", "V", phases.Missing()...)
	} else if phases.Value() == 3 {
		nominal = working.Stated("U_n", "V", supply.VoltageBetweenLinesV)
		line := working.Formula{Symbol: "ΔU_0", Unit: "V", Text: "ΔU / √3", Source: working.ByDefinition}
		toNeutral = line.Of(func(x ...float64) float64 { return x[0] / math.Sqrt(3) }, f.RiseV)
	}
	pct := working.Formula{Symbol: "ΔU/U_n", Unit: "%", Text: "100 · ΔU / U_n", Source: working.ByDefinition}
	f.RisePct = pct.Of(func(x ...float64) float64 { return 100 * x[0] / x[1] }, f.RiseV, nominal)
	f.VoltageFeedingV = working.Sum("U", "V", working.Stated("U_meas", "V", supply.VoltageMeasuredV), toNeutral)
	f.VoltageHighestV = working.Sum("U", "V", working.Stated("U_max", "V", supply.VoltageMeasuredMaxV), toNeutral)
	return f
}

// drop adds up what some runs take.
func (m *mains) drop(runs []int) working.Number {
	return working.Sum("ΔU", "V", each(runs, func(r int) working.Number {
		run := &m.cables.Runs[r]
		return run.DropV.As("ΔU_" + run.ID)
	})...)
}
