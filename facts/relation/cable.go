package relation

import (
	"strconv"

	"sunclause/facts/working"
	"sunclause/schema"
)

var capacityOfSize = working.NewFormula("I/S^0.625", "", "I_z / S^0.625", working.ByDefinition)

// cable relates those values of the sheet of a cable that the room of cables does not.
func (c *collector) cable(id string, s *schema.CableDatasheet) {
	of := part{id, s.At(), "cable " + id}
	if metal := s.Conductor.Value; metal == "copper" || metal == "aluminium" {
		for i := range s.Ratings {
			c.addAs(of, "capacity_"+strconv.Itoa(i+1), "capacity_"+metal, "capacity "+strconv.Itoa(i+1)+" against cross-section",
				capacityOfSize.Of(working.Stated("I_z", "A", s.Ratings[i].CurrentA), working.Stated("S", "mm²", s.CsaMm2)))
		}
	}
	c.add(of, "dc_voltages", "DC voltage to earth against that between conductors", ratio("U_0/U", "V", s.VoltageDCToEarthMaxV, s.VoltageDCMaxV))
	c.add(of, "conductor_temperatures", "temperatures of the conductor, the shorter the higher", falls("T/T", "°C", s.ConductorFaultC, s.ConductorShortTermC, s.ConductorMaxC))
	c.add(of, "ambient", "ambient temperatures", ambientSpan(s.AmbientMinC, s.AmbientMaxC))
}

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
