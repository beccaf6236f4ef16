package circuit_test

import (
	"fmt"
	"slices"
	"strconv"
	"strings"
	"testing"

	"sunclause/facts/circuit"
	"sunclause/facts/facttest"
	"sunclause/schema"
)

// sketch is an installation drawn in a few words, as a JSON document.
type sketch struct {
	Strings, Arrays, Cables, Isolators []map[string]any
	inputs                             int
}

// draw makes an installation with some strings and one inverter with so many
// tracking inputs.
func draw(inputs int, stringIDs ...string) *sketch {
	s := &sketch{inputs: inputs}
	for _, id := range stringIDs {
		s.addString(id)
	}
	return s
}

func (s *sketch) addString(id string) {
	s.Strings = append(s.Strings, map[string]any{"id": id, "module": "M", "modules_in_series": 10})
}

// run joins two terminals: "R1 S1 INV1.1". Runs serve strings unless a fourth
// word says otherwise.
func (s *sketch) run(drawn ...string) *sketch {
	for _, d := range drawn {
		w := append(strings.Fields(d), "pv_string")
		s.Cables = append(s.Cables, map[string]any{"id": w[0], "from": w[1], "to": w[2], "service": w[3]})
	}
	return s
}

// isolator adds one, with the conductors that each of its ways opens; "" is not
// stated.
func (s *sketch) isolator(id string, opened ...string) *sketch {
	ways := make([]map[string]any, len(opened))
	for i, o := range opened {
		ways[i] = map[string]any{"id": strconv.Itoa(i + 1)}
		if o != "" {
			ways[i]["conductors_opened"] = o
		}
	}
	s.Isolators = append(s.Isolators, map[string]any{"id": id, "circuit": "pv_dc", "ways": ways})
	return s
}

// joined joins a side of way 1 of the last isolator to a terminal without a run.
func (s *sketch) joined(side, terminal string) *sketch {
	last := s.Isolators[len(s.Isolators)-1]
	last["ways"].([]map[string]any)[0][side] = terminal
	return s
}

func (s *sketch) array(id string, ways int) *sketch {
	s.Arrays = append(s.Arrays, map[string]any{"id": id, "ways": ways})
	return s
}

func (s *sketch) installation(t facttest.T) *schema.Installation {
	t.Helper()
	return facttest.Installation(t, map[string]any{
		"project": map[string]any{"reference": "test", "stage": "design", "country": "GB"},
		"datasheets": map[string]any{
			"modules":   map[string]any{"M": map[string]any{"technology": "mono_si", "pmax_w": 1, "voc_v": 1, "isc_a": 1, "vmp_v": 1, "imp_a": 1}},
			"inverters": map[string]any{"I": map[string]any{"dc_voltage_max_v": 1, "ac_power_rated_w": 1, "phases": 1, "mppts": make([]struct{}, s.inputs)}},
		},
		"strings": s.Strings, "arrays": append([]map[string]any{}, s.Arrays...), "cables": append([]map[string]any{}, s.Cables...),
		"isolators": append([]map[string]any{}, s.Isolators...),
		"inverters": []any{map[string]any{"id": "INV1", "datasheet": "I"}},
	})
}

func (s *sketch) circuit(t facttest.T) *circuit.Circuit { return circuit.Of(s.installation(t)) }

func TestPaths(t *testing.T) {
	builtIn := draw(1, "S1").isolator("ISO", "both").joined("joined_out", "INV1.1").run("R1 S1 ISO.1.in")
	first := draw(1, "S1").isolator("ISO", "both").joined("joined_in", "S1").run("R1 ISO.1.out INV1.1")
	for _, c := range []struct {
		name      string
		drawn     *sketch
		from      string
		input     string
		runs      []int
		isolators []int
		ambiguous bool
	}{
		{"one run", draw(1, "S1").run("R1 S1 INV1.1"), "S1", "INV1.1", []int{0}, nil, false},
		{"runs drawn in any order and direction", draw(1, "S1").run("R1 INV1.1 ISO.1.out", "R2 ISO.1.in S1").isolator("ISO", "both"), "S1", "INV1.1", []int{1, 0}, []int{0}, false},
		{"second way", draw(2, "S1", "S2").isolator("ISO", "both", "both").run("R1 S1 ISO.1.in", "R2 ISO.1.out INV1.1", "R3 S2 ISO.2.in", "R4 ISO.2.out INV1.2"), "S2", "INV1.2", []int{2, 3}, []int{0}, false},
		{"two isolators", draw(1, "S1").isolator("A", "both").isolator("B", "both").run("R1 S1 A.1.in", "R2 A.1.out B.1.in", "R3 B.1.out INV1.1"), "S1", "INV1.1", []int{0, 1, 2}, []int{0, 1}, false},
		{"array", draw(1, "S1", "S2").array("A", 2).run("R1 S1 A.1", "R2 S2 A.2", "R3 A.out INV1.1 pv_array"), "S2", "INV1.1", []int{1, 2}, nil, false},
		{"array of arrays", draw(1, "S1", "S2").array("A", 1).array("B", 2).run("R1 S1 A.1", "R2 A.out B.1", "R3 S2 B.2", "R4 B.out INV1.1"), "S1", "INV1.1", []int{0, 1, 3}, nil, false},
		{"isolator in the inverter", builtIn, "S1", "INV1.1", []int{0}, []int{0}, false},
		{"isolator at the string", first, "S1", "INV1.1", []int{0}, []int{0}, false},
		{"two strings side by side on one input", draw(1, "S1", "S2").run("R1 S1 INV1.1", "R2 S2 INV1.1"), "S1", "INV1.1", []int{0}, nil, false},
		{"two runs in parallel", draw(1, "S1").run("R1 S1 INV1.1", "R2 S1 INV1.1"), "S1", "INV1.1", nil, nil, true},
		{"string on two inputs", draw(2, "S1").run("R1 S1 INV1.1", "R2 S1 INV1.2"), "S1", "INV1.1", nil, nil, true},
		{"loop on the way", draw(1, "S1").array("A", 2).run("R1 S1 A.1", "R2 S1 A.2", "R3 A.out INV1.1"), "S1", "INV1.1", nil, nil, true},
		{"loop beside the way", draw(1, "S1").array("A", 3).run("R1 S1 A.1", "R2 A.2 A.3", "R3 A.out INV1.1"), "S1", "INV1.1", nil, nil, true},
		{"not connected", draw(1, "S1"), "S1", "", nil, nil, false},
		{"ends at nothing", draw(1, "S1").isolator("ISO", "both").run("R1 S1 ISO.1.in"), "S1", "", nil, nil, false},
		{"joined by a run called a bonding conductor", draw(1, "S1").run("R1 S1 INV1.1 bonding"), "S1", "INV1.1", []int{0}, nil, false},
		{"joined by a bonding conductor to the body", draw(1, "S1").run("R1 S1 INV1 bonding"), "S1", "", nil, nil, false},
		{"a terminal that is none", draw(1, "S1"), "S9", "", nil, nil, false},
	} {
		t.Run(c.name, func(t *testing.T) {
			p := c.drawn.circuit(t).From(c.from)
			if p.Input != c.input && !c.ambiguous {
				t.Errorf("leads to %q, want %q", p.Input, c.input)
			}
			if p.Ambiguous != c.ambiguous {
				t.Errorf("ambiguous is %t, want %t", p.Ambiguous, c.ambiguous)
			}
			if !c.ambiguous && (!slices.Equal(p.Runs, c.runs) || !slices.Equal(p.Isolators, c.isolators)) {
				t.Errorf("by the runs %v and isolators %v, want %v and %v", p.Runs, p.Isolators, c.runs, c.isolators)
			}
		})
	}
}

func TestThrough(t *testing.T) {
	c := draw(2, "S1", "S2", "S3").array("A", 2).isolator("ISO", "both", "both").isolator("IDLE", "both").
		run("R1 S1 A.1", "R2 S2 A.2", "R3 A.out ISO.1.in", "R4 ISO.1.out INV1.1", "R5 S3 ISO.2.in", "R6 ISO.2.out INV1.2").circuit(t)
	got := fmt.Sprint(c.Through([]string{"S1", "S2", "S3"}))
	if want := "[[[0 1] [2]] [[]]]"; got != want {
		t.Errorf("strings through each way of each isolator: %s, want %s", got, want)
	}
}
