package relation

import (
	"math"
	"strconv"

	"sunclause/facts/working"
	"sunclause/schema"
)

var (
	carriedPower = working.NewFormula("S/P", "", "k · U_ac · I_ac / P_r", working.ByDefinition)
	inputPower   = working.NewFormula("P_in/P", "", "P_in / P_r", working.ByDefinition)
)

// inverter relates the values of the sheet of an inverter.
func (c *collector) inverter(id string, s *schema.InverterDatasheet) {
	of := part{id, s.At(), "inverter " + id}
	rated := working.Stated("P_r", "W", s.ACPowerRatedW)
	c.add(of, "ac_current", "AC current against rated power", carriedPower.Of(phaseFactor(s),
		working.Stated("U_ac", "V", s.ACVoltageV), working.Stated("I_ac", "A", s.ACCurrentMaxA), rated))
	c.add(of, "apparent_power", "apparent against rated power", ratio("S/P", "W", s.ACApparentMaxVA, s.ACPowerRatedW))
	c.add(of, "greatest_breaker", "greatest breaker against AC current", ratio("I_n,max/I_ac", "A", s.ACOCPDMaxA, s.ACCurrentMaxA))
	c.add(of, "pv_power", "PV power against AC power", ratio("P_dc/P_r", "W", s.DCPowerMaxW, s.ACPowerRatedW))
	c.add(of, "ambient", "ambient temperatures", ambientSpan(s.AmbientMinC, s.AmbientMaxC))
	if s.DCVoltageMaxV.Stated() {
		c.add(of, "impulse_"+impulseBand(s.DCVoltageMaxV.Value), "impulse withstand against DC voltage", working.Stated("U_w", "kV", s.DCImpulseWithstandKv))
	}
	c.inputs(of, s)
}

// phaseFactor is how many times voltage times current make the power: once, or where
// there are three phases √3 for a voltage between lines and 3 for one to neutral.
func phaseFactor(s *schema.InverterDatasheet) working.Number {
	switch {
	case !s.Phases.Stated():
		return working.Unknown("k", "", s.Phases.At())
	case s.Phases.Value == 1:
		return working.Counted("k", 1, s.Phases.At())
	case s.ACVoltageV.Value < leastBetweenLines:
		return working.Counted("k", 3, s.Phases.At())
	}
	return working.Figure("k", "", math.Sqrt(3), "three phases, voltage between lines", working.ByDefinition).ChosenBy(s.Phases.At())
}

// leastBetweenLines is the voltage from which one printed for three phases is that
// between lines, in V: 380 and more beside 240 and less to neutral.
const leastBetweenLines = 300

// impulseBand is the band of the DC voltage that an impulse withstand voltage goes with.
func impulseBand(v float64) string {
	switch {
	case v <= 300:
		return "to_300_v"
	case v <= 600:
		return "to_600_v"
	}
	return "above_600_v"
}

// inputs relates the values of each tracking input, and what all carry together.
func (c *collector) inputs(of part, s *schema.InverterDatasheet) {
	var powers []working.Number
	for i := range s.MPPTs {
		m := &s.MPPTs[i]
		input := part{of.id + "." + strconv.Itoa(i+1), m.At(), "input " + strconv.Itoa(i+1) + " of " + of.name}
		c.add(input, "tracking_range", "tracking range", ratio("U_max/U_min", "V", m.VoltageMaxV, m.VoltageMinV))
		c.add(input, "tracking_top", "top of the tracking range against the DC maximum", ratio("U_max/U_dc", "V", m.VoltageMaxV, s.DCVoltageMaxV))
		c.add(input, "input_currents", "short-circuit against operating current", ratio("I_sc/I_max", "A", m.IscMaxA, m.CurrentMaxA))
		c.add(input, "start_voltage_least", "start voltage against the bottom of the tracking range", ratio("U_start/U_min", "V", s.DCStartVoltageV, m.VoltageMinV))
		c.add(input, "start_voltage_greatest", "start voltage against the top of the tracking range", ratio("U_start/U_max", "V", s.DCStartVoltageV, m.VoltageMaxV))
		powers = append(powers, working.Product("P", "W", working.ByDefinition, working.Stated("I", "A", m.CurrentMaxA), working.Stated("U", "V", m.VoltageMaxV)))
	}
	if len(powers) > 0 {
		c.add(of, "power_of_inputs", "power of all inputs against rated power", inputPower.Of(working.Sum("P_in", "W", powers...), working.Stated("P_r", "W", s.ACPowerRatedW)))
	}
}
