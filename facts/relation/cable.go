package relation

import (
	"strconv"

	"sunclause/facts/working"
	"sunclause/schema"
)

var (
	resistivity    = working.NewFormula("R·S", "Ω·mm²/km", "R · S", working.ByDefinition)
	capacityOfSize = working.NewFormula("I/S^0.625", "", "I_z / S^0.625", working.ByDefinition)
	roundness      = working.NewFormula("D/√(n·S)", "", "D / √(n · S)", working.ByDefinition)
)

// cable relates the values of the sheet of a cable.
func (c *collector) cable(id string, s *schema.CableDatasheet) {
	of := part{id, s.At(), "cable " + id}
	csa := working.Stated("S", "mm²", s.CsaMm2)
	metal := s.Conductor.Value
	if metal == "copper" || metal == "aluminium" {
		c.add(of, "resistance_"+metal, "resistance against cross-section", resistivity.Of(working.Stated("R", "Ω/km", s.Resistance20cOhmPerKm), csa))
		for i := range s.Ratings {
			r := &s.Ratings[i]
			c.addAs(of, "capacity_"+strconv.Itoa(i+1), "capacity_"+metal, "capacity "+strconv.Itoa(i+1)+" against cross-section", capacityOfSize.Of(working.Stated("I_z", "A", r.CurrentA), csa))
		}
	}
	drop := working.Ratio("u/R", working.Stated("a", "mV/(A·m)", s.DropMvPerAM), working.Stated("b", "Ω/km", s.Resistance20cOhmPerKm))
	if s.CsaMm2.Value <= reactanceFrom {
		c.add(of, "drop_small", "voltage drop against resistance", drop)
	} else {
		c.add(of, "drop_large", "voltage drop against resistance", drop)
	}
	c.add(of, "diameter", "diameter against cross-section", roundness.Of(working.Stated("D", "mm", s.OutsideDiameterMm), working.Stated("n", "", s.Cores), csa))
	c.add(of, "protective_conductor", "protective conductor against cross-section", ratio("S_PE/S", "mm²", s.CpcCsaMm2, s.CsaMm2))
	c.add(of, "ac_voltages", "AC voltage to earth against that between conductors", ratio("U_0/U", "V", s.VoltageACToEarthV, s.VoltageACV))
	c.add(of, "dc_voltages", "DC voltage to earth against that between conductors", ratio("U_0/U", "V", s.VoltageDCToEarthMaxV, s.VoltageDCMaxV))
	c.add(of, "conductor_temperatures", "temperatures of the conductor, the shorter the higher", falls("T/T", "°C", s.ConductorFaultC, s.ConductorShortTermC, s.ConductorMaxC))
	c.add(of, "conductor_over_ambient", "temperature of the conductor against that around it", ratio("T_cond/T_amb", "°C", s.ConductorMaxC, s.AmbientMaxC))
	c.add(of, "flat", "width against height", ratio("w/h", "mm", s.OutsideWidthMm, s.OutsideHeightMm))
	c.add(of, "ambient", "ambient temperatures", ambientSpan(s.AmbientMinC, s.AmbientMaxC))
}

// reactanceFrom is the cross-section above which the reactance of a cable counts in its
// voltage drop, in mm².
const reactanceFrom = 95

// cableSizes relates each cable to the others of its kind that are larger: what is
// larger has less resistance, carries more and is thicker.
func (c *collector) cableSizes(sheets map[string]*schema.CableDatasheet) {
	each(sheets, func(id string, small *schema.CableDatasheet) {
		each(sheets, func(other string, large *schema.CableDatasheet) {
			if !ofOneKind(small, large) || small.CsaMm2.Value >= large.CsaMm2.Value {
				return
			}
			of := part{id + "." + other, large.At(), "cable " + other + " and the smaller " + id}
			c.add(of, "larger_resistance", "resistances", ratio("R_small/R_large", "Ω/km", small.Resistance20cOhmPerKm, large.Resistance20cOhmPerKm))
			c.add(of, "larger_diameter", "diameters", ratio("D_large/D_small", "mm", large.OutsideDiameterMm, small.OutsideDiameterMm))
			c.add(of, "larger_capacity", "capacities", working.Least("I_large/I_small", "", capacities(small, large)...))
		})
	})
}

// ofOneKind reports whether two cables differ in their size only.
func ofOneKind(a, b *schema.CableDatasheet) bool {
	same := func(x, y schema.Text) bool { return x.Stated() && x.Value == y.Value }
	return same(a.Kind, b.Kind) && same(a.Conductor, b.Conductor) && same(a.Insulation, b.Insulation) &&
		a.ConductorClass.Value == b.ConductorClass.Value && a.Cores.Value == b.Cores.Value && a.CsaMm2.Stated() && b.CsaMm2.Stated()
}

// capacities relates the capacities of two cables in the same conditions.
func capacities(small, large *schema.CableDatasheet) []working.Number {
	var all []working.Number
	for i := range small.Ratings {
		for j := range large.Ratings {
			a, b := &small.Ratings[i], &large.Ratings[j]
			if a.Method.Stated() && a.Method.Value == b.Method.Value && a.LoadedConductors.Value == b.LoadedConductors.Value &&
				a.AmbientC.Value == b.AmbientC.Value && a.ConductorC.Value == b.ConductorC.Value {
				all = append(all, ratio("I_large/I_small", "A", b.CurrentA, a.CurrentA))
			}
		}
	}
	return known(all...)
}
