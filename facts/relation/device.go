package relation

import (
	"slices"

	"sunclause/facts/working"
	"sunclause/schema"
)

var wholeWave = working.NewFormula("I²t/wave", "", "I2t / ((1000 · I_cn)^2 · 0.02)", working.ByDefinition)

// device relates the values of the sheet of a protective device.
func (c *collector) device(id string, s *schema.ProtectiveDevice) {
	of := part{id, s.At(), "device " + id}
	c.add(of, "conventional_current", "conventional against rated current", ratio("I_2/I_n", "A", s.ConventionalCurrentA, s.RatedA))
	for _, trip := range []struct {
		id, words string
		current   schema.Number
	}{
		{"0_2s", "current that trips within 0.2 s", s.Operates02sA},
		{"0_4s", "current that trips within 0.4 s", s.Operates04sA},
		{"1s", "current that trips within 1 s", s.Operates1sA},
		{"5s", "current that trips within 5 s", s.Operates5sA},
	} {
		c.addAs(of, "trip_"+trip.id, tripKey(s), trip.words+" against rated current", ratio("I_a/I_n", "A", trip.current, s.RatedA))
	}
	c.add(of, "trips_in_order", "tripping currents, the quicker the greater", falls("I_a/I_a", "A", s.Operates02sA, s.Operates04sA, s.Operates1sA, s.Operates5sA))
	c.add(of, "protected_poles", "protected against all poles", ratio("n_prot/n", "", s.ProtectedPoles, s.Poles))
	c.add(of, "power_loss", "power loss against rated current", working.Ratio("P/I_n", working.Stated("a", "W", s.PowerLossW), working.Stated("b", "A", s.RatedA)))
	c.add(of, "let_through", "let-through energy against one whole wave of the breaking capacity",
		wholeWave.Of(working.Stated("I2t", "A²s", s.LetThroughA2s), working.Stated("I_cn", "kA", s.BreakingCapacityKa)))
}

// tripKey is the row of the table for the multiple of the rated current at which a
// device trips: by its characteristic where a standard bounds it.
func tripKey(s *schema.ProtectiveDevice) string {
	if slices.Contains([]string{"B", "C", "D"}, s.Characteristic.Value) {
		return "trip_" + s.Characteristic.Value
	}
	return "trip"
}

// switchDisconnector relates the values of the sheet of a switch-disconnector.
func (c *collector) switchDisconnector(id string, s *schema.SwitchDisconnector) {
	of := part{id, s.At(), "switch " + id}
	var thermal, series, falling []working.Number
	for i := range s.Ratings {
		a := &s.Ratings[i]
		thermal = append(thermal, ratio("I_e/I_the", "A", a.IeA, s.ItheA))
		series = append(series, ratio("n_ser/n", "", a.PolesInSeries, s.Poles))
		for j := range s.Ratings {
			b := &s.Ratings[j]
			if a.UtilizationCategory.Is(b.UtilizationCategory.Value) && a.PolesInSeries.Value == b.PolesInSeries.Value && a.UeV.Value < b.UeV.Value {
				falling = append(falling, ratio("I_e,low/I_e,high", "A", a.IeA, b.IeA))
			}
		}
	}
	c.add(of, "thermal_current", "operational against thermal current", working.Greatest("I_e/I_the", "", known(thermal...)...))
	c.add(of, "poles_in_series", "poles in series against all poles", working.Greatest("n_ser/n", "", known(series...)...))
	c.add(of, "ratings_fall", "operational current at a lower against that at a higher voltage", working.Least("I_e,low/I_e,high", "", falling...))
}

var levelOverVoltage = working.NewFormula("U_p/U_c", "", "1000 · U_p / U_c", working.ByDefinition)

// surgeDevice relates the values of the sheet of a surge protective device.
func (c *collector) surgeDevice(id string, s *schema.SPDDatasheet) {
	of := part{id, s.At(), "surge protective device " + id}
	c.add(of, "discharge_currents", "maximum against nominal discharge current", ratio("I_max/I_n", "A", s.ImaxKa, s.InKa))
	c.add(of, "total_discharge", "total against nominal discharge current", ratio("I_total/I_n", "A", s.ItotalKa, s.InKa))
	c.add(of, "temporary_overvoltage", "temporary overvoltage against continuous voltage", ratio("U_t/U_c", "V", s.UtV, s.UcV))
	c.add(of, "continuous_voltages", "one continuous voltage against the other", ratio("U_c/U_cpv", "V", s.UcV, s.UcpvV))
	continuous := s.UcV
	if !continuous.Stated() {
		continuous = s.UcpvV
	}
	level := levelOverVoltage.Of(working.Stated("U_p", "kV", s.UpKv), working.Stated("U_c", "V", continuous))
	switch s.System.Value {
	case "ac":
		c.add(of, "protection_level_ac", "protection level against continuous voltage", level)
	case "pv_dc", "dc":
		c.add(of, "protection_level_dc", "protection level against continuous voltage", level)
	}
}
