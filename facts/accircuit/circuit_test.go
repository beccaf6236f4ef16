package accircuit_test

import (
	"slices"
	"testing"

	"sunclause/facts/facttest"
)

func TestCircuitOfHouse(t *testing.T) {
	f := one(t, house(), laid{1, 0.1, 30})
	if f.ID != "B1.2" || f.At != "/ac/boards/0/ways/1" || !slices.Equal(f.Generators.Values(), []string{"INV1"}) {
		t.Errorf("circuit %s at %s with %v", f.ID, f.At, f.Generators.Values())
	}
	facttest.Is(t, "meets the generator", f.MeetsGenerator, true)
	facttest.Is(t, "overcurrent device", f.OvercurrentFitted, true)
	facttest.Near(t, "isolators", f.ACIsolators, 1, 0)
	facttest.Near(t, "isolator's current", f.IsolatorRatedA, 40, 0)
	facttest.Is(t, "breaks all", f.IsolatorBreaksAll, true)
	facttest.Near(t, "design current", f.DesignCurrentA, 16, 0)
	facttest.Near(t, "margin", f.RatedOverDesign, 1.25, 0)
	facttest.Near(t, "rise over three runs", f.RiseV, 3, 1e-9)
	facttest.Near(t, "loop of two runs to the main board", f.ZsComputedOhm, 0.55, 1e-9)
}

// plant is two three-phase inverters on a generation board, which hangs on way
// 9 of the main board.
func plant() object {
	doc := house()
	facttest.At(doc, "datasheets", "inverters")["I"] = inverter(3, 50)
	doc["inverters"] = list{object{"id": "INV1", "datasheet": "I"}, object{"id": "INV2", "datasheet": "I"}}
	delete(doc, "isolators")
	doc["cables"] = list{run("R1", "INV1.ac", "G.1"), run("R2", "INV2.ac", "G.2"), run("R3", "G.in", "B1.9"), run("R4", "M.out", "B1.in")}
	facttest.At(doc, "ac", "supply")["phases"] = 3
	boards := doc["ac"].(object)["boards"].(list)
	boards[0].(object)["ways"] = list{object{"id": "9", "device": "D", "phase": "L1_L2_L3", "rcd_fitted": false}}
	facttest.At(doc, "ac")["boards"] = append(boards, object{"id": "G", "role": "generation", "rated_a": 125, "incoming_device": "FUSE", "busbar_carries_loads": false,
		"ways": list{object{"id": "1", "device": "D", "phase": "L1_L2_L3"}, object{"id": "2", "device": "D", "phase": "L1_L2_L3"}}})
	facttest.At(doc, "ac")["circuits"] = list{}
	return doc
}

func TestDistributionCircuit(t *testing.T) {
	f := derive(t, plant(), laid{1, 0.1, 60})
	var ids []string
	for _, c := range f.Circuits {
		ids = append(ids, c.ID)
	}
	if !slices.Equal(ids, []string{"G.1", "B1.9", "G.2"}) {
		t.Fatalf("circuits %v", ids)
	}
	shared := f.Circuits[1]
	facttest.Is(t, "meets no generator", shared.MeetsGenerator, false)
	facttest.Near(t, "carries both", shared.DesignCurrentA, 100, 0)
	facttest.Near(t, "line conductors", shared.WayPhases, 3, 0)
	facttest.Near(t, "loop to the generation board", shared.ZsComputedOhm, 0.45, 1e-9)
	facttest.Near(t, "loop to the inverter", f.Circuits[0].ZsComputedOhm, 0.55, 1e-9)
	facttest.Near(t, "rise over all runs", f.Circuits[0].RiseV, 3, 1e-9)
	facttest.Near(t, "main board", f.Boards[0].BusbarDutyA, 180, 0)
	facttest.Near(t, "generation board without loads", f.Boards[1].BusbarDutyA, 80, 0)
	facttest.Near(t, "its generators", f.Boards[1].GenerationA, 100, 0)
	facttest.Near(t, "all in L2", f.Supply.GenerationL2A, 100, 0)
}

// Generators of one phase add up only where they share it.
func TestPhases(t *testing.T) {
	doc := plant()
	facttest.At(doc, "datasheets", "inverters")["I"] = inverter(1, 50)
	ways := facttest.At(doc, "ac", "boards", 1)["ways"].(list)
	ways[0].(object)["phase"], ways[1].(object)["phase"] = "L1", "L2"
	f := derive(t, doc, laid{})
	facttest.Near(t, "on two phases", f.Circuits[1].DesignCurrentA, 50, 0)
	ways[1].(object)["phase"] = "L1"
	facttest.Near(t, "on one phase", derive(t, doc, laid{}).Circuits[1].DesignCurrentA, 100, 0)
	delete(ways[1].(object), "phase")
	facttest.Wants(t, "on a phase not stated", derive(t, doc, laid{}).Circuits[1].DesignCurrentA, "/ac/boards/1/ways/1/phase")
	facttest.Wants(t, "as may be one that was there", derive(t, doc, laid{}).Supply.GenerationL3A, "/ac/boards/1/ways/1/phase")
	ways[1].(object)["phase"] = "L1"
	facttest.At(doc, "ac")["existing_generation"] = list{object{"id": "OLD", "kind": "pv", "phases": 1, "phase": "L3", "ac_current_max_a": 16, "way": "B1.9"}}
	facttest.Near(t, "one that was there", derive(t, doc, laid{}).Supply.GenerationL3A, 16, 0)
}

func TestUntraced(t *testing.T) {
	doc := house()
	doc["cables"] = list{run("R1", "INV1.ac", "ISO.1.in"), run("R3", "M.out", "B1.in")}
	f := derive(t, doc, laid{})
	if len(f.Circuits) != 1 || f.Circuits[0].ID != "INV1.ac" {
		t.Fatalf("circuits %v", f.Circuits)
	}
	c := f.Circuits[0]
	facttest.Near(t, "design current all the same", c.DesignCurrentA, 16, 0)
	facttest.Wants(t, "rise", c.RiseV, "/cables")
	facttest.Wants(t, "capacity", c.CapacityA, "/cables")
	facttest.Wants(t, "rated current", c.RatedA, "/cables")
	facttest.Wants(t, "isolators", c.ACIsolators, "/cables")
	open(t, "residual current device", c.RCDFitted)
	open(t, "concealed", c.ConcealedBare)
	facttest.Wants(t, "generation on the board", f.Boards[0].GenerationA, "/cables")
	delete(doc, "inverters")
	doc["cables"] = list{}
	if f := derive(t, doc, laid{}); f.Circuits != nil {
		t.Errorf("circuits %v without generators stated, want none known", f.Circuits)
	}
}

// The busbars of a board of 100 A bear 80 A of mains and 16 A of generation,
// not 100 A of mains and 16 A; a board of 96 A just does the former.
func TestBoard(t *testing.T) {
	doc := house()
	facttest.Near(t, "80 and 16 A", derive(t, doc, laid{}).Boards[0].BusbarDutyA, 96, 0)
	facttest.At(doc, "datasheets", "protective_devices", "FUSE")["rated_a"] = 100
	f := derive(t, doc, laid{}).Boards[0]
	facttest.Near(t, "100 and 16 A", f.BusbarDutyA, 116, 0)
	facttest.Near(t, "generators", f.GeneratorsCounted, 1, 0)
	delete(facttest.At(doc, "ac"), "existing_generation")
	facttest.Wants(t, "what was there is not stated", derive(t, doc, laid{}).Boards[0].BusbarDutyA, "/ac/existing_generation")
	facttest.At(doc, "ac")["existing_generation"] = list{object{"id": "OLD", "kind": "pv", "phases": 1, "ac_current_max_a": 10, "way": "B1.1"}}
	facttest.Near(t, "with one that was there", derive(t, doc, laid{}).Boards[0].BusbarDutyA, 126, 0)
	delete(facttest.At(doc, "ac", "existing_generation", 0), "way")
	facttest.Wants(t, "one without a way", derive(t, doc, laid{}).Boards[0].BusbarDutyA, "/cables")
}

// 10 kW on three phases are 14.49 A, 5 kW on one 21.74 A.
func TestOutput(t *testing.T) {
	for _, c := range []struct {
		phases      int
		power, want float64
	}{{3, 10000, 14.49}, {1, 5000, 21.74}, {1, 3680, 16}} {
		doc := house()
		sheet := inverter(c.phases, 30)
		sheet["ac_power_rated_w"] = c.power
		facttest.At(doc, "datasheets", "inverters")["I"] = sheet
		f := derive(t, doc, laid{}).Outputs[0]
		facttest.Near(t, "rated current", f.ACCurrentRatedA, c.want, 0.005)
		facttest.Near(t, "length", f.ACLengthM, 15, 0)
	}
}
