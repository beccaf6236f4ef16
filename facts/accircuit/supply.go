package accircuit

import (
	"slices"

	"sunclause/facts/working"
	"sunclause/schema"
)

// Supply holds the facts of the public supply.
type Supply struct {
	SupplyForm      working.Text   `json:"supply_form" words:"form of the supply: single_phase, three_phase, …"`
	SupplyEarthing  working.Text   `json:"supply_earthing" words:"system earthing at the origin: TN-S, TN-C-S, TT, …"`
	FormByPhases    working.Text   `json:"supply_form_by_phases" words:"form of the supply by its phases; the word of the document where several would do"`
	SupplyPhases    working.Number `json:"supply_phases" words:"phases that reach the premises"`
	SupplyU0V       working.Number `json:"supply_u0_v" words:"nominal voltage between line and neutral"`
	SupplyMeasuredV working.Number `json:"supply_voltage_measured_v" words:"voltage between line and neutral measured without generation"`
	ZeOhm           working.Number `json:"ze_ohm" words:"external earth fault loop impedance, Ze"`
	ZeReadOhm       working.Number `json:"ze_read_ohm" words:"external earth fault loop impedance as last read at the origin"`
	ZeMaxOhm        working.Number `json:"ze_max_ohm" words:"greatest external loop impedance that distributors declare for the system earthing"`
	ZeKnownBy       working.Text   `json:"ze_known_by" words:"how Ze and the fault current are known"`
	SupplyFaultKa   working.Number `json:"supply_fault_ka" words:"prospective fault current at the origin"`
	SupplyDeviceA   working.Number `json:"supply_device_a" words:"rated current of the distributor's fuse or circuit-breaker"`
	GenerationL1A   working.Number `json:"generation_l1_a" words:"current of all generators in L1, those that were there before included"`
	GenerationL2A   working.Number `json:"generation_l2_a" words:"current of the generators in L2"`
	GenerationL3A   working.Number `json:"generation_l3_a" words:"current of the generators in L3"`
	GenerationA     working.Number `json:"generation_per_phase_a" words:"greatest of them"`
}

func (m *mains) supply() Supply {
	s := m.in.AC.Supply
	arrangement := working.StatedText(m.in.Earthing.Arrangement)
	f := Supply{
		SupplyEarthing:  arrangement,
		SupplyForm:      working.StatedText(s.Form),
		SupplyPhases:    working.Stated("n_ph", "", s.Phases),
		SupplyU0V:       working.Stated("U_0", "V", s.VoltageV),
		SupplyMeasuredV: working.Stated("U_meas", "V", s.VoltageMeasuredV),
		ZeOhm:           working.Stated("Z_e", "Ω", s.ZeOhm),
		ZeReadOhm:       m.lastLoop("Z_e", func(r *schema.LoopReading) bool { return r.At.Is("origin") }),
		ZeMaxOhm:        m.book.Keyed("external_loop_maxima", "arrangement", arrangement, "ze_ohm", "Z_e,max"),
		ZeKnownBy:       working.StatedText(s.ZeKnownBy),
		SupplyFaultKa:   working.Stated("I_pf", "kA", s.ProspectiveFaultKa),
		SupplyDeviceA:   working.Stated("I_n", "A", s.Device.To().RatedA),
	}
	f.FormByPhases = formOf(s.Phases, f.SupplyForm)
	m.generationOf(&f)
	return f
}

// generationOf adds up all generators by line conductor.
func (m *mains) generationOf(f *Supply) {
	var all []*generator
	for _, list := range [][]generator{m.own, m.existing} {
		for i := range list {
			all = append(all, &list[i])
		}
	}
	lines := m.currents(all)
	if missing := m.undeclared(); len(missing) > 0 {
		for i := range lines {
			lines[i] = working.Unknown(lines[i].Symbol(), "A", missing...)
		}
	}
	f.GenerationL1A, f.GenerationL2A, f.GenerationL3A = lines[0], lines[1], lines[2]
	f.GenerationA = working.Greatest("I_g", "A", lines[:]...)
}

// formOf is the form of a supply by the phases that reach the premises.
func formOf(phases schema.Number, stated working.Text) working.Text {
	if !phases.Stated() {
		return working.UnknownText(phases.At())
	}
	forms := map[float64][]string{1: {"single_phase"}, 2: {"split_phase"}, 3: {"three_phase", "three_phase_delta"}}[phases.Value]
	if slices.Contains(forms, stated.Value()) {
		return working.KnownText(stated.Value(), phases.At())
	}
	return working.KnownText(forms[0], phases.At())
}
