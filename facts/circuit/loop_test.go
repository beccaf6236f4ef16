package circuit_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"sunclause/facts/circuit"
)

// Whatever leads on by more than one way is found as what it is, once, with the runs
// in it; the runs that lead to it are none of them.
func TestLoops(t *testing.T) {
	for _, c := range []struct {
		name  string
		drawn *sketch
		want  string
	}{
		{"one run", draw(1, "S1").run("R1 S1 INV1.1"), ""},
		{"two strings side by side on one input", draw(1, "S1", "S2").run("R1 S1 INV1.1", "R2 S2 INV1.1"), ""},
		{"strings joined in an array", draw(1, "S1", "S2").array("A", 2).run("R1 S1 A.1", "R2 S2 A.2", "R3 A.out INV1.1"), ""},
		{"a string with two runs", draw(1, "S1").run("R1 S1 INV1.1", "R2 S1 INV1.1"), "R1 R2 to INV1.1"},
		{"a fork to two inputs", draw(2, "S1").array("A", 1).run("R1 S1 A.1", "R2 A.out INV1.1", "R3 A.out INV1.2"), "R2 R3 to INV1.1 INV1.2"},
		{"a run stated twice", draw(1, "S1").array("A", 1).run("R1 S1 A.1", "R2 A.out INV1.1", "R3 S1 A.1"), "R1 R3 to INV1.1"},
		{"round an isolator", draw(1, "S1").isolator("Q", "both").run("R1 S1 Q.1.in", "R2 Q.1.out INV1.1", "R3 Q.1.in Q.1.out"), "R3 Q to INV1.1"},
		{"joined, and by a run as well", draw(1, "S1").isolator("Q", "both").joined("joined_out", "INV1.1").run("R1 S1 Q.1.in", "R2 Q.1.out INV1.1"), "R2 Q to INV1.1"},
		{"two loops that do not meet", draw(2, "S1", "S2").run("R1 S1 INV1.1", "R2 S1 INV1.1", "R3 S2 INV1.2", "R4 S2 INV1.2"), "R1 R2 to INV1.1; R3 R4 to INV1.2"},
		{"from one input to another", draw(2, "S1").run("R1 S1 INV1.1", "R2 INV1.1 INV1.2"), "R2 to INV1.1 INV1.2"},
		{"a loop that leads nowhere", draw(1, "S1").array("A", 2).run("R1 S1 A.1", "R2 S1 A.2"), ""},
	} {
		t.Run(c.name, func(t *testing.T) {
			var got []string
			for _, l := range c.drawn.circuit(t).Loops() {
				got = append(got, strings.Join(l.Names, " ")+" to "+strings.Join(l.Ends, " "))
			}
			if got := strings.Join(got, "; "); got != c.want {
				t.Errorf("loops %q, want %q", got, c.want)
			}
		})
	}
}

func TestRoundIsolator(t *testing.T) {
	for _, c := range []struct {
		name  string
		drawn *sketch
		want  string
	}{
		{"in the only way", draw(1, "S1").isolator("Q", "both").run("R1 S1 Q.1.in", "R2 Q.1.out INV1.1"), "[]"},
		{"from side to side", draw(1, "S1").isolator("Q", "both").run("R1 S1 Q.1.in", "R2 Q.1.out INV1.1", "R3 Q.1.in Q.1.out"), "[R3]"},
		{"from the string to the input", draw(1, "S1").isolator("Q", "both").run("R1 S1 Q.1.in", "R2 Q.1.out INV1.1", "R3 S1 INV1.1"), "[R2 R3 R1]"},
		{"by its other way, which opens as well", draw(1, "S1").isolator("Q", "both", "both").run("R1 S1 Q.1.in", "R2 Q.1.out INV1.1", "R3 S1 Q.2.in", "R4 Q.2.out INV1.1"), "[]"},
		{"strings that meet behind an isolator each", draw(1, "S1", "S2").isolator("Q", "both").isolator("P", "both").
			run("R1 S1 Q.1.in", "R2 Q.1.out INV1.1", "R3 S2 P.1.in", "R4 P.1.out INV1.1"), "[]"},
	} {
		if got := fmt.Sprint(c.drawn.circuit(t).Round(0)); got != c.want {
			t.Errorf("%s: current passes round by %s, want %s", c.name, got, c.want)
		}
	}
}

// Current passes round an isolator just where, with it alone open, what is on one
// side of a way still hangs on the other.
func TestRoundPropertyOpenStaysJoined(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		s := forest(rt)
		c := s.circuit(t)
		for i, iso := range s.Isolators {
			runs := c.Round(i)
			for _, r := range runs {
				if !slices.ContainsFunc(s.Cables, func(run map[string]any) bool { return run["id"] == r }) && r != "a joint without a cable" {
					rt.Fatalf("%s is no run", r)
				}
			}
			bypassed := false
			for _, l := range c.Loops() {
				bypassed = bypassed || slices.Contains(l.Names, iso["id"].(string))
			}
			if len(runs) > 0 && !bypassed {
				rt.Fatalf("current passes round %v by %v, and it is on no loop", iso["id"], runs)
			}
		}
	})
}

// wired is a chain of isolators, or isolators each joined with every other.
func wired(b *testing.B, isolators int, dense bool) (*circuit.Circuit, int) {
	s := draw(1, "S1")
	for i := range isolators {
		s.isolator(fmt.Sprintf("Q%d", i), "both")
	}
	s.run("IN S1 Q0.1.in", fmt.Sprintf("OUT Q%d.1.out INV1.1", isolators-1))
	for i := range isolators {
		last := isolators - 1
		if !dense {
			last = min(last, i+1)
		}
		for k := i + 1; k <= last; k++ {
			s.run(fmt.Sprintf("R%d-%d Q%d.1.out Q%d.1.in", i, k, i, k))
		}
	}
	return s.circuit(b), len(s.Cables)
}

// BenchmarkWiring walks chains and dense graphs of as many runs. Reported is the time
// for each run: that of the dense graph, of 99 isolators each joined with every other,
// is to be at most twice that of the chain.
func BenchmarkWiring(b *testing.B) {
	for _, w := range []struct {
		name      string
		isolators int
		dense     bool
	}{{"chain", 4850, false}, {"dense", 99, true}} {
		b.Run(w.name, func(b *testing.B) {
			c, runs := wired(b, w.isolators, w.dense)
			b.ResetTimer()
			for range b.N {
				c.Loops()
				c.Through([]string{"S1"})
				c.Daylight(func(int) bool { return true }).LiveRuns()
				for i := range min(w.isolators, 99) {
					c.Round(i)
					c.Alone(i)
				}
			}
			b.ReportMetric(float64(b.Elapsed().Nanoseconds())/float64(b.N*runs), "ns/run")
		})
	}
}
