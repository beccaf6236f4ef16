package implied

import (
	"sunclause/facts/circuit"
	"sunclause/facts/working"
	"sunclause/schema"
)

// readings are the lists of readings that a test of the order of tests fills.
type readings struct {
	member, words string
	tests         []string
	has           func(*schema.Commissioning) working.Flag
}

var readingsOfTests = []readings{
	{"inspections", "point looked at", []string{"inspection"}, read(func(c *schema.Commissioning) []schema.InspectionPoint { return c.Inspections }, "inspections")},
	{"loops", "loop impedance read", []string{"ac_tests"}, read(func(c *schema.Commissioning) []schema.LoopReading { return c.Loops }, "loops")},
	{"supply", "voltage of the supply read", []string{"ac_tests"}, read(func(c *schema.Commissioning) []schema.SupplyReading { return c.Supply }, "supply")},
	{"continuity", "continuity read", []string{"continuity"}, read(func(c *schema.Commissioning) []schema.ContinuityReading { return c.Continuity }, "continuity")},
	{"combiners", "polarity read", []string{"combiner"}, read(func(c *schema.Commissioning) []schema.CombinerReading { return c.Combiners }, "combiners")},
	{"strings", "string read", []string{"polarity", "open_circuit_voltage", "current", "voltage_to_earth"}, read(func(c *schema.Commissioning) []schema.StringReading { return c.Strings }, "strings")},
	{"functional", "functional test", []string{"functional"}, read(func(c *schema.Commissioning) []schema.FunctionalTest { return c.Functional }, "functional")},
	{"insulation", "insulation read", []string{"insulation", "wet_insulation"}, read(func(c *schema.Commissioning) []schema.InsulationReading { return c.Insulation }, "insulation")},
	{"curves", "curve taken", []string{"iv_curve"}, read(func(c *schema.Commissioning) []schema.IvCurveReading { return c.Curves }, "curves")},
	{"thermography", "part seen with the camera", []string{"thermography"}, read(func(c *schema.Commissioning) []schema.ThermographyReading { return c.Thermography }, "thermography")},
}

// read reports whether a list of readings has any.
func read[T any](list func(*schema.Commissioning) []T, member string) func(*schema.Commissioning) working.Flag {
	return func(c *schema.Commissioning) working.Flag {
		return working.Among(list(c), c.Member(member), func(*T) bool { return true })
	}
}

// tested wants readings of a kind where a test of that kind is said to have been
// passed.
func (r readings) tested(c *schema.Commissioning) []want {
	for _, test := range r.tests {
		for i := range c.Steps {
			if s := &c.Steps[i]; s.Test.Is(test) && s.Passed.Value {
				return []want{{r.words, s.Test.At(), r.has(c)}}
			}
		}
	}
	return nil
}

// residualTests wants a test of the residual current device of each circuit whose loop
// was read: who read the one had the circuit in hand.
func residualTests(in *schema.Installation) []want {
	devices := map[string]*schema.ProtectiveDevice{}
	for i := range in.AC.Boards {
		b := &in.AC.Boards[i]
		for j := range b.Ways {
			devices[b.ID.Value+"."+b.Ways[j].ID.Value] = b.Ways[j].Device.To()
		}
	}
	c := &in.Commissioning
	var all []want
	for i := range in.AC.Circuits {
		entry := &in.AC.Circuits[i]
		device := devices[entry.Way.Value]
		if device == nil || !loopRead(c, entry.ID.Value) {
			continue
		}
		if opens := circuit.OpensOnResidual(device); opens.Known() && opens.Value() {
			all = append(all, want{"test of the residual current device of circuit " + entry.ID.Value, device.Kind.At(),
				working.Among(c.Rcds, c.Member("rcds"), func(r *schema.RCDReading) bool { return r.Part.Value == entry.ID.Value || !r.Part.Stated() })})
		}
	}
	return all
}

func loopRead(c *schema.Commissioning, id string) bool {
	for i := range c.Loops {
		if c.Loops[i].Part.Value == id && c.Loops[i].At.Is("circuit_end") {
			return true
		}
	}
	return false
}
