package circuit_test

import (
	"fmt"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"sunclause/facts/circuit"
	"sunclause/facts/facttest"
	"sunclause/facts/working"
)

// cottage is two strings on one isolator of two ways.
func cottage(opened ...string) *sketch {
	return draw(2, "S1", "S2").isolator("ISO", opened...).isolator("AC", "line_and_neutral").
		run("R1 S1 ISO.1.in", "R2 ISO.1.out INV1.1", "R3 S2 ISO.2.in", "R4 ISO.2.out INV1.2",
			"R5 S1 INV1 bonding", "R6 INV1.ac AC.1.in ac")
}

func open(isolators ...int) func(int) bool {
	return func(i int) bool { return slices.Contains(isolators, i) }
}

func everyOpen(int) bool { return true }

func TestBothPolesOpened(t *testing.T) {
	c := cottage("both", "both").circuit(t)
	facttest.Lists(t, "closed", c.Daylight(open()).LiveRuns(), "R1", "R2", "R3", "R4")
	facttest.Lists(t, "open", c.Daylight(everyOpen).LiveRuns(), "R1", "R3")
	live, dead := c.Alone(0)
	facttest.Lists(t, "live", live, "R1", "R3")
	facttest.Lists(t, "dead", dead, "R2", "R4")
}

// One conductor that goes through keeps what lies behind live to earth.
func TestOnePoleOpened(t *testing.T) {
	for _, opened := range []string{"positive", "negative"} {
		c := cottage("both", opened).circuit(t)
		facttest.Lists(t, opened, c.Daylight(everyOpen).LiveRuns(), "R1", "R3", "R4")
		live, dead := c.Alone(0)
		facttest.Lists(t, opened+", live", live, "R1", "R3", "R4")
		facttest.Lists(t, opened+", dead", dead, "R2")
	}
}

func TestConductorsNotStated(t *testing.T) {
	const member = "/isolators/0/ways/1/conductors_opened"
	c := cottage("both", "").circuit(t)
	state := c.Daylight(everyOpen)
	facttest.Wants(t, "live runs", state.LiveRuns(), member)
	for terminal, want := range map[string]bool{"INV1.1": false, "ISO.2.in": true, "S2": true} {
		if f := state.Terminal(terminal, ""); !f.Known() || f.Value() != want {
			t.Errorf("%s: live is %t, known %t, want %t", terminal, f.Value(), f.Known(), want)
		}
	}
	if f := state.Terminal("INV1.2", ""); f.Known() || !slices.Equal(working.Pointers(f.Missing()), []string{member}) {
		t.Errorf("INV1.2: known %t, missing %v", f.Known(), f.Missing())
	}
	live, dead := c.Alone(0)
	facttest.Wants(t, "live", live, member)
	facttest.Wants(t, "dead", dead, member)
	facttest.Lists(t, "closed, it makes no difference", c.Daylight(open()).LiveRuns(), "R1", "R2", "R3", "R4")
}

// What a way breaks makes no difference when something before it has broken
// the circuit already, or when nothing lies behind it.
func TestConductorsNotStatedMakesNoDifference(t *testing.T) {
	c := draw(1, "S1").isolator("A", "both").isolator("B", "").isolator("SPARE", "").
		run("R1 S1 A.1.in", "R2 A.1.out B.1.in", "R3 B.1.out INV1.1", "R4 S1 SPARE.1.in").circuit(t)
	facttest.Lists(t, "all open", c.Daylight(everyOpen).LiveRuns(), "R1", "R4")
	live, dead := c.Alone(2)
	facttest.Lists(t, "spare: live", live, "R1", "R2", "R3", "R4")
	facttest.Lists(t, "spare: dead", dead)
	live, _ = c.Alone(1)
	facttest.Wants(t, "B alone", live, "/isolators/1/ways/0/conductors_opened")
}

func TestProtectiveConductorsDoNotConduct(t *testing.T) {
	c := cottage("both", "both").run("R7 ISO.1.in ISO.1.out earthing", "R8 S1 INV1.1 protective", "R9 S1 INV1.1 control").circuit(t)
	state := c.Daylight(everyOpen)
	facttest.Lists(t, "live", state.LiveRuns(), "R1", "R3")
	for i, run := range map[int]string{4: "bonding", 6: "earthing", 7: "protective", 8: "control", 5: "AC"} {
		if f := state.Run(i); !f.Known() || f.Value() {
			t.Errorf("%s conductor: live is %t, known %t", run, f.Value(), f.Known())
		}
	}
}

// An isolator answers for the circuits it opens, not for those of others.
func TestAloneKeepsToItsOwnCircuits(t *testing.T) {
	c := draw(2, "S1", "S2").isolator("A", "both").isolator("B", "both").isolator("AC", "line_and_neutral").
		run("R1 S1 A.1.in", "R2 A.1.out INV1.1", "R3 S2 B.1.in", "R4 B.1.out INV1.2", "R5 INV1.ac AC.1.in ac").circuit(t)
	live, dead := c.Alone(0)
	facttest.Lists(t, "A live", live, "R1")
	facttest.Lists(t, "A dead", dead, "R2")
	live, dead = c.Alone(2)
	facttest.Lists(t, "AC live", live)
	facttest.Lists(t, "AC dead", dead)
}

// A second string behind the isolator feeds back.
func TestStringsOnBothSides(t *testing.T) {
	c := draw(1, "S1", "S2").array("A", 2).isolator("ISO", "both").
		run("R1 S1 ISO.1.in", "R2 ISO.1.out A.1", "R3 S2 A.2", "R4 A.out INV1.1").circuit(t)
	live, dead := c.Alone(0)
	facttest.Lists(t, "live", live, "R1", "R2", "R3", "R4")
	facttest.Lists(t, "dead", dead)
}

// forest draws a random installation: terminals of strings, isolators and arrays
// joined at random, with loops now and then.
func forest(t *rapid.T) *sketch {
	var ids []string
	for i := range rapid.IntRange(1, 5).Draw(t, "strings") {
		ids = append(ids, fmt.Sprintf("S%d", i))
	}
	s := draw(2, ids...)
	ends := append(slices.Clone(ids), "INV1.1", "INV1.2")
	for i := range rapid.IntRange(0, 5).Draw(t, "isolators") {
		id := fmt.Sprintf("ISO%d", i)
		opened := rapid.SliceOfN(rapid.SampledFrom([]string{"both", "both", "positive", ""}), 1, 3).Draw(t, "opened")
		s.isolator(id, opened...)
		for w := range opened {
			ends = append(ends, fmt.Sprintf("%s.%d.in", id, w+1), fmt.Sprintf("%s.%d.out", id, w+1))
		}
	}
	for i := range rapid.IntRange(0, 2).Draw(t, "arrays") {
		id := fmt.Sprintf("A%d", i)
		s.array(id, 2)
		ends = append(ends, id+".1", id+".2", id+".out")
	}
	end := rapid.SampledFrom(ends)
	for i := range rapid.IntRange(0, 14).Draw(t, "runs") {
		service := rapid.SampledFrom([]string{"pv_string", "pv_string", "pv_array", "bonding"}).Draw(t, "service")
		if from, to := end.Draw(t, "from"), end.Draw(t, "to"); from != to {
			s.run(fmt.Sprintf("R%02d %s %s %s", i, from, to, service))
		}
	}
	return s
}

// Opening one more isolator never makes anything more live, neither for
// certain nor as a possibility.
func TestOpeningMakesNothingMoreLive(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := forest(t).installation(t)
		c := circuit.Of(in)
		var opened []int
		before := c.Daylight(open())
		for i := range in.Isolators {
			opened = append(opened, i)
			after := c.Daylight(open(opened...))
			for r := range in.Cables {
				was, is := before.Run(r), after.Run(r)
				if was.Known() && !was.Value() && !(is.Known() && !is.Value()) {
					t.Fatalf("run %s was dead and is not with isolator %d open too", in.Cables[r].ID.Value, i)
				}
				if !was.Known() && is.Known() && is.Value() {
					t.Fatalf("run %s was undetermined and is live with isolator %d open too", in.Cables[r].ID.Value, i)
				}
			}
			before = after
		}
	})
}

// What an isolator does alone is what the whole state says of the runs that
// were live before and hang together with it.
func TestAloneAgreesWithTheWhole(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := forest(t).installation(t)
		c := circuit.Of(in)
		for i := range in.Isolators {
			closed, opened := c.Daylight(open()), c.Daylight(open(i))
			live, dead := c.Alone(i)
			for r := range in.Cables {
				if was := closed.Run(r); !was.Value() || in.Cables[r].Service.Value == "bonding" {
					continue
				}
				id := in.Cables[r].ID.Value
				is := opened.Run(r)
				switch {
				case !is.Known():
					if live.Known() || dead.Known() {
						t.Errorf("isolator %d: the lists are known, though run %s is undetermined", i, id)
					}
				case !live.Known():
				case !is.Value() && !slices.Contains(dead.Values(), id):
					t.Errorf("isolator %d: run %s goes dead and is not listed in %v", i, id, dead.Values())
				case is.Value() && slices.Contains(dead.Values(), id):
					t.Errorf("isolator %d: run %s stays live and is listed as dead", i, id)
				}
			}
			for _, id := range live.Values() {
				if slices.Contains(dead.Values(), id) {
					t.Errorf("isolator %d: run %s is both live and dead", i, id)
				}
			}
		}
	})
}

// A string's path, where there is just one, is made of runs that lie end to end
// and leads to an input.
func TestPathsLieEndToEnd(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := forest(t).installation(t)
		c := circuit.Of(in)
		for _, str := range in.Strings {
			p := c.From(str.ID.Value)
			if p.Input == "" {
				if len(p.Runs) > 0 {
					t.Errorf("%s reaches no input and has the path %v", str.ID.Value, p.Runs)
				}
				continue
			}
			if p.Input != "INV1.1" && p.Input != "INV1.2" {
				t.Errorf("%s leads to %q", str.ID.Value, p.Input)
			}
			last := in.Cables[p.Runs[len(p.Runs)-1]]
			if last.From.Value != p.Input && last.To.Value != p.Input {
				t.Errorf("%s: the path ends with run %s, which does not end at %s", str.ID.Value, last.ID.Value, p.Input)
			}
			seen := map[int]bool{}
			for _, r := range p.Runs {
				if seen[r] {
					t.Errorf("%s passes twice through run %d", str.ID.Value, r)
				}
				seen[r] = true
			}
		}
	})
}

// In a tree there is one way to the input; any run more makes a loop.
func TestTreesAndOneRunMore(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := draw(1, "S0")
		ends := []string{"INV1.1"}
		for i := range rapid.IntRange(1, 12).Draw(t, "nodes") {
			id := fmt.Sprintf("S%d", i)
			if i > 0 {
				s.addString(id)
			}
			s.run(fmt.Sprintf("R%d %s %s", i, id, rapid.SampledFrom(ends).Draw(t, "parent")))
			ends = append(ends, id)
		}
		if p := s.circuit(t).From("S0"); p.Ambiguous || p.Input != "INV1.1" {
			t.Fatalf("in a tree the path is ambiguous (%t) or leads to %q", p.Ambiguous, p.Input)
		}
		s.run(fmt.Sprintf("X %s S0", rapid.SampledFrom(slices.DeleteFunc(ends, func(e string) bool { return e == "S0" })).Draw(t, "end")))
		if p := s.circuit(t).From("S0"); !p.Ambiguous {
			t.Fatal("a run more closes a loop, and the path is not ambiguous")
		}
	})
}
