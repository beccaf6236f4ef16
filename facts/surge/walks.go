package surge

import (
	"slices"
	"strings"

	"sunclause/facts/cable"
	"sunclause/facts/circuit"
	"sunclause/facts/pvstring"
	"sunclause/facts/working"
	"sunclause/schema"
)

// walks are the ways through the wiring that this room goes.
type walks struct {
	c      *circuit.Circuit
	pv     pvstring.Facts
	runs   []cable.Run
	inputs map[string]bool // tracking inputs by terminal
}

// spot is where an SPD is connected: the tracking input or supply that its
// terminal leads to, and the runs on the way there.
type spot struct {
	terminal string
	circuit  schema.Text
	path     circuit.Path
}

func (w *walks) spotsOf(in *schema.Installation) []spot {
	spots := make([]spot, len(in.SPDs))
	for i, s := range in.SPDs {
		spots[i] = spot{terminal: s.ConnectedAt.Value, circuit: s.Circuit}
		switch s.Circuit.Value {
		case "pv_dc":
			spots[i].path = w.toInput(s.ConnectedAt.Value)
		case "ac":
			spots[i].path = w.c.ToSupply(s.ConnectedAt.Value)
			if s.ConnectedAt.Value == in.AC.Supply.ID.Value {
				spots[i].path = circuit.Path{Input: s.ConnectedAt.Value}
			}
		}
	}
	return spots
}

// toInput is the path to the tracking input; from the input itself it is empty.
func (w *walks) toInput(terminal string) circuit.Path {
	if w.inputs[terminal] {
		return circuit.Path{Input: terminal}
	}
	return w.c.From(terminal)
}

// leads reports whether the terminal leads to one end on one way.
func (s spot) leads() bool { return s.path.Input != "" && !s.path.Ambiguous }

// length adds the lengths of runs.
func (w *walks) length(symbol string, runs []int) working.Number {
	lengths := make([]working.Number, len(runs))
	for i, r := range runs {
		lengths[i] = w.runs[r].LengthM
	}
	return working.Sum(symbol, "m", lengths...)
}

// between lists the runs between two parts whose paths lead to the same end:
// those that only one of the paths takes.
func between(a, b []int) []int {
	for len(a) > 0 && len(b) > 0 && a[len(a)-1] == b[len(b)-1] {
		a, b = a[:len(a)-1], b[:len(b)-1]
	}
	return slices.Concat(a, b)
}

// feeding are the strings that feed a tracking input.
func (w *walks) feeding(input string) []*pvstring.String {
	var fed []*pvstring.String
	for i := range w.pv.Strings {
		if s := &w.pv.Strings[i]; s.Mppt.Known() && s.Mppt.Value() == input {
			fed = append(fed, s)
		}
	}
	return fed
}

// part is the id of the part that a terminal belongs to.
func part(terminal string) string {
	id, _, _ := strings.Cut(terminal, ".")
	return id
}
