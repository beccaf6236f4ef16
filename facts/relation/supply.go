package relation

import (
	"math"

	"sunclause/facts/working"
	"sunclause/schema"
)

var (
	faultOfLoop    = working.NewFormula("I·Z/U", "", "1000 · I_f · Z / U_0", working.ByDefinition)
	agreedOfDevice = working.NewFormula("S/S_dev", "", "1000 · S_ag / (U_0 · n_ph · I_n)", working.ByDefinition)
	loopLow        = working.NewFormula("(Z_s+0.05)/ΣZ", "", "(Z_s + 0.05) / (Z_e + R_12)", working.ByDefinition)
	loopHigh       = working.NewFormula("(Z_s−0.05)/ΣZ", "", "(Z_s − 0.05) / (Z_e + R_12)", working.ByDefinition)
	offFrequency   = working.Lookup{Symbol: "Δf", Unit: "Hz", Text: "f from the nearer of 50 and 60 Hz", Source: working.Source{Document: "IEC 60038", How: working.Memory}}
)

// supply relates what is stated of the public supply.
func (c *collector) supply(in *schema.Installation) {
	s := &in.AC.Supply
	of := part{"supply", s.At(), "the supply"}
	voltage := working.Stated("U_0", "V", s.VoltageV)
	if s.ZeKnownBy.Is("measured") {
		c.addAs(of, "fault_of_loop", "fault_of_loop"+ofPhases(s.Phases), "fault current against loop impedance",
			faultOfLoop.Of(working.Stated("I_f", "kA", s.ProspectiveFaultKa), working.Stated("Z", "Ω", s.ZeOhm), voltage))
	}
	c.add(of, "voltage_measured", "measured against nominal voltage", ratio("U/U_0", "V", s.VoltageMeasuredV, s.VoltageV))
	c.add(of, "voltage_highest", "highest voltage recorded against the one measured", ratio("U_max/U", "V", s.VoltageMeasuredMaxV, s.VoltageMeasuredV))
	between := ratio("U/U_0", "V", s.VoltageBetweenLinesV, s.VoltageV)
	switch s.Form.Value {
	case "three_phase":
		c.add(of, "between_lines_three", "voltage between lines against that to neutral", between)
	case "split_phase":
		c.add(of, "between_lines_split", "voltage between lines against that to neutral", between)
	}
	c.add(of, "agreed_capacity", "agreed capacity against the supply's device", agreedOfDevice.Of(working.Stated("S_ag", "kVA", s.AgreedCapacityKva),
		voltage, working.Stated("n_ph", "", s.Phases), working.Stated("I_n", "A", s.Device.To().RatedA)))
	c.add(of, "frequency", "frequency", offFrequency.Of(func(x ...float64) float64 {
		return min(math.Abs(x[0]-50), math.Abs(x[0]-60))
	}, working.Stated("f", "Hz", s.FrequencyHz)))
}

// ofPhases is the end of a key for a fault that may be one of one or of three phases.
func ofPhases(phases schema.Number) string {
	if phases.Value == 3 {
		return "_three"
	}
	return "_one"
}

// circuits relates what the schedule of each AC circuit states to the supply. What was
// read on site is held against each other in the room of the tests.
func (c *collector) circuits(in *schema.Installation) {
	s := &in.AC.Supply
	for i := range in.AC.Circuits {
		v := &in.AC.Circuits[i]
		of := part{v.ID.Value, v.At(), "circuit " + v.ID.Value}
		z, ze, r := working.Stated("Z_s", "Ω", v.ZsOhm), working.Stated("Z_e", "Ω", s.ZeOhm), working.Stated("R_12", "Ω", v.R1R2Ohm)
		c.addAs(of, "fault_of_loop", "fault_of_loop"+ofPhases(s.Phases), "fault current against loop impedance",
			faultOfLoop.Of(working.Stated("I_f", "kA", v.ProspectiveFaultKa), z.For("Z"), working.Stated("U_0", "V", s.VoltageV)))
		c.add(of, "loop_low", "loop impedance against supply and conductors", loopLow.Of(z, ze, r))
		c.add(of, "loop_high", "loop impedance against supply and conductors", loopHigh.Of(z, ze, r))
		c.add(of, "loop_behind_origin", "loop impedance against that of the supply", ratio("Z_s/Z_e", "Ω", v.ZsOhm, s.ZeOhm))
		c.add(of, "fault_behind_origin", "fault current against that at the origin", ratio("I_f/I_pf", "kA", v.ProspectiveFaultKa, s.ProspectiveFaultKa))
		c.add(of, "fault_least", "least against prospective fault current", ratio("I_min/I_f", "kA", v.ProspectiveFaultMinKa, v.ProspectiveFaultKa))
	}
}

// settings relates the stages of the protection of each interface with the supply, and
// the voltage of each inverter to that of the supply.
func (c *collector) settings(in *schema.Installation) {
	for i := range in.Inverters {
		v := &in.Inverters[i]
		g := &v.Settings
		of := part{v.ID.Value, g.At(), "inverter " + v.ID.Value}
		c.add(of, "voltage_stages", "voltages of the protection, the second stage beyond the first",
			falls("U/U", "V", g.OverVoltage2V, g.OverVoltage1V, in.AC.Supply.VoltageV, g.UnderVoltage1V, g.UnderVoltage2V))
		c.add(of, "frequency_stages", "frequencies of the protection, the second stage beyond the first",
			falls("f/f", "Hz", g.OverFrequency2Hz, g.OverFrequency1Hz, g.PowerReductionFromHz, in.AC.Supply.FrequencyHz, g.UnderFrequency1Hz, g.UnderFrequency2Hz))
		sheet := v.Datasheet.To()
		supply := in.AC.Supply.VoltageV
		if sheet.Phases.Value == 3 && sheet.ACVoltageV.Value >= leastBetweenLines {
			supply = in.AC.Supply.VoltageBetweenLinesV
		}
		c.add(part{of.id, v.At(), of.name}, "inverter_voltage", "AC voltage against that of the supply", ratio("U_ac/U", "V", sheet.ACVoltageV, supply))
	}
}
