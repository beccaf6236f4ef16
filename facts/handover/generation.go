package handover

import (
	"slices"

	"sunclause/facts/book"
	"sunclause/facts/circuit"
	"sunclause/facts/working"
	"sunclause/schema"
)

var perPhase = working.Source{Document: "distributor's connection procedure for G98", Clause: "rating of the generators together", How: working.Read}

// generator is one source of power on the AC side, of this document or found at
// the premises.
type generator struct {
	power  working.Number
	phases working.Number
	phase  schema.Text // of one on a single phase
	typed  working.Flag
}

// generators lists all of them; what is missing where that cannot be done.
func generators(in *schema.Installation, c *circuit.Circuit) (all []generator, missing []working.Gap) {
	ways := phasesOfWays(in)
	for _, inv := range in.Inverters {
		sheet := inv.Datasheet.To()
		all = append(all, generator{working.Stated("P", "W", sheet.ACPowerRatedW), working.Stated("n", "", sheet.Phases),
			phaseAt(c, inv.ID.Value+".ac", ways, inv.ID), typeTested(sheet.GridTypeTest)})
	}
	for _, b := range in.Storage.Batteries {
		switch sheet := b.Datasheet.To(); {
		case !sheet.Coupling.Stated():
			missing = append(missing, working.Unstated(sheet.Coupling.At()))
		case sheet.Coupling.Is("ac"):
			all = append(all, generator{powerOf(b, sheet), working.Stated("n", "", sheet.Phases),
				phaseAt(c, b.ID.Value+".ac", ways, b.ID), typeTested(sheet.GridTypeTest)})
		}
	}
	for _, g := range in.AC.ExistingGeneration {
		all = append(all, generator{working.Stated("P", "W", g.ACPowerRatedW), working.Stated("n", "", g.Phases), g.Phase, working.StatedFlag(g.TypeTested)})
	}
	return all, append(missing, unstated(in)...)
}

// unstated names the lists of generators that the document leaves out: there
// may be any number of them.
func unstated(in *schema.Installation) []working.Gap {
	var lists []working.Gap
	if in.Inverters == nil {
		lists = append(lists, working.Unstated("/inverters"))
	}
	if in.Storage.Batteries == nil {
		lists = append(lists, working.Unstated(in.Storage.Member("batteries")))
	}
	if in.AC.ExistingGeneration == nil {
		lists = append(lists, working.Unstated(in.AC.Member("existing_generation")))
	}
	return lists
}

var phaseCurrent = working.NewFormula("I", "A", "P / (n · U_0)", perPhase)

// powerOf is the rated AC power of a battery with an inverter built in, of all
// its units together.
func powerOf(b schema.Battery, sheet *schema.BatteryDatasheet) working.Number {
	return working.Product("P", "W", working.ByDefinition, working.Stated("n_units", "", b.Units), working.Stated("P_unit", "W", sheet.ACPowerRatedW))
}

// typeTested reports whether a sheet claims a type test for connection.
func typeTested(standard schema.Text) working.Flag {
	return working.Not(working.StatedText(standard).OneOf("none"))
}

func phasesOfWays(in *schema.Installation) map[string]schema.Text {
	ways := map[string]schema.Text{}
	for _, b := range in.AC.Boards {
		for _, w := range b.Ways {
			ways[b.ID.Value+"."+w.ID.Value] = w.Phase
		}
	}
	return ways
}

// phaseAt is the phase of the first board way on the path to the supply. Where
// none is found the part itself is what cannot be placed.
func phaseAt(c *circuit.Circuit, terminal string, ways map[string]schema.Text, id schema.Text) schema.Text {
	for _, w := range c.ToSupply(terminal).Ways {
		if phase, ok := ways[w]; ok {
			return phase
		}
	}
	return id
}

// addGenerators adds up what the generators can feed into each phase at once. Nothing
// is taken off for their not running together.
func (f *Connection) addGenerators(in *schema.Installation, c *circuit.Circuit, b book.Book) {
	all, missing := generators(in, c)
	u0 := b.Number("generation_nominal_voltage_v", "U_0")
	phases := map[string][]working.Number{}
	units := []working.Number{working.Sum("0", "A")} // so that of no generators there is a greatest
	powers := []working.Number{}
	for _, g := range all {
		a := phaseCurrent.Of(g.power, g.phases, u0)
		units, powers = append(units, a), append(powers, g.power)
		on, unplaced := g.phasesFed(in.AC.Supply.Phases)
		missing = append(missing, unplaced...)
		for _, p := range on {
			phases[p] = append(phases[p], a)
		}
	}
	f.GenerationW, f.UnitPhaseA = working.Sum("P_gen", "W", powers...), working.Greatest("I_unit", "A", units...)
	lines := []working.Number{working.Sum("I_L1", "A", phases["L1"]...), working.Sum("I_L2", "A", phases["L2"]...), working.Sum("I_L3", "A", phases["L3"]...)}
	f.PhaseA, f.Unbalance = working.Greatest("I_phase", "A", lines...), unbalance(lines, in.AC.Supply.Phases)
	f.Untyped = withoutTypeTest(all)
	if missing != nil {
		for _, n := range []*working.Number{&f.GenerationW, &f.UnitPhaseA, &f.PhaseA, &f.Unbalance, &f.Untyped} {
			*n = working.Unknown(n.Symbol(), n.Unit(), missing...)
		}
	}
}

// unbalance is what the phases of the supply differ by.
func unbalance(lines []working.Number, phases schema.Number) working.Number {
	if !phases.Stated() || phases.Value < 1 || phases.Value > 3 {
		return working.Unknown("ΔI", "A", phases.At())
	}
	return working.Spread("ΔI", "A", lines[:int(phases.Value)]...)
}

// phasesFed are the phases that the generator feeds, or what is missing to place it.
func (g generator) phasesFed(supply schema.Number) (phases []string, missing []working.Gap) {
	lines := []string{"L1", "L2", "L3"}
	switch {
	case g.phases.Known() && g.phases.Value() > 1:
		return lines, nil
	case supply.Stated() && supply.Value == 1:
		return lines[:1], nil
	case slices.Contains(lines, g.phase.Value):
		return []string{g.phase.Value}, nil
	}
	return nil, []working.Gap{working.Unstated(supply.At()), working.Unstated(g.phase.At())}
}

// withoutTypeTest counts the generators without a type test.
func withoutTypeTest(all []generator) working.Number {
	untested := make([]working.Flag, len(all))
	for i, g := range all {
		untested[i] = working.Not(g.typed)
	}
	return working.Count("n", "/inverters", untested...)
}
