package relation

import (
	"strings"

	"sunclause/facts/working"
	"sunclause/schema"
)

var (
	rateOfDischarge = working.NewFormula("P/E", "1/h", "U_nom · I_dis / 1000 / E", working.ByDefinition)
	volume          = working.NewFormula("V", "l", "h · w · d / 1000000", working.ByDefinition)
	densityOf       = working.NewFormula("ρ", "kg/m³", "1000 · m / V", working.ByDefinition)
)

// battery relates the values of the sheet of a battery.
func (c *collector) battery(id string, s *schema.BatteryDatasheet) {
	of := part{id, s.At(), "battery " + id}
	energy, mass := working.Stated("E", "kWh", s.EnergyKwh), working.Stated("m", "kg", s.MassKg)
	c.add(of, "usable_energy", "usable against rated energy", ratio("E_use/E", "kWh", s.EnergyUsableKwh, s.EnergyKwh))
	c.add(of, "nominal_over_least", "nominal against lowest voltage", ratio("U_nom/U_min", "V", s.VoltageNominalV, s.VoltageMinV))
	c.add(of, "greatest_over_nominal", "highest against nominal voltage", ratio("U_max/U_nom", "V", s.VoltageMaxV, s.VoltageNominalV))
	c.add(of, "discharge_rate", "greatest discharge against energy", rateOfDischarge.Of(
		working.Stated("U_nom", "V", s.VoltageNominalV), working.Stated("I_dis", "A", s.DischargeCurrentMaxA), energy))
	c.add(of, "ambient", "ambient temperatures", ambientSpan(s.AmbientMinC, s.AmbientMaxC))
	c.add(of, "apparent_power", "apparent against rated power", ratio("S/P", "W", s.ACApparentMaxVA, s.ACPowerRatedW))
	c.add(of, "greatest_breaker", "greatest breaker against AC current", ratio("I_n,max/I_ac", "A", s.ACOCPDMaxA, s.ACCurrentMaxA))
	if family := chemistryFamily(s.Chemistry.Value); family != "" {
		c.add(of, "mass_"+family, "mass against energy", working.Ratio("m/E", mass, energy))
	}
	v := volume.Of(working.Stated("h", "mm", s.HeightMm), working.Stated("w", "mm", s.WidthMm), working.Stated("d", "mm", s.DepthMm))
	c.add(of, "cabinet_density", "mass against size", densityOf.Of(mass, v))
	c.add(of, "energy_of_litre", "energy against size", working.Ratio("E/V", energy, v))
}

// chemistryFamily is the family of a chemistry of whose batteries the mass is known;
// "" for others.
func chemistryFamily(word string) string {
	for _, family := range []string{"lithium", "lead", "nickel", "flow"} {
		if strings.HasPrefix(word, family) {
			return family
		}
	}
	return ""
}
