// Package circuit walks the graph that the parts and the runs of cable of an
// installation make: terminals, and what joins them. From it come the strings
// whose current each run carries, the tracking input each string ends at, and
// what stays live for any state of the isolators.
//
// A run stands for all conductors of its circuit, so the graph has one edge
// where the roof has a pair.
package circuit

import (
	"slices"
	"strconv"

	"sunclause/schema"
)

// edge joins two terminals.
type edge struct {
	a, b string
	run  int // index into the runs; -1 for anything else
	way  *way
}

// way is one circuit through an isolator: an edge that can be opened.
type way struct {
	isolator int // index into the isolators
	breaks   breaks
	at       string // JSON pointer of the member that says what it breaks
}

// breaks says whether opening a way makes what lies behind it dead. A way that
// breaks only some of the live conductors does not.
type breaks int

const (
	unknown breaks = iota
	all
	some
)

// Circuit is the graph of an installation.
type Circuit struct {
	edges  []edge
	meet   map[string][]int // edges that end at a terminal
	runs   []schema.Run
	paths  map[string]*Path // by the terminal of the string, once walked
	inputs map[string]bool  // terminals that are tracking inputs of inverters
	suns   []string         // terminals where a string feeds in
}

// Of builds the graph of an installation.
func Of(in *schema.Installation) *Circuit {
	c := &Circuit{meet: map[string][]int{}, runs: in.Cables, paths: map[string]*Path{}, inputs: map[string]bool{}}
	for i, r := range in.Cables {
		if carriesPower(r) {
			c.join(edge{a: r.From.Value, b: r.To.Value, run: i})
		}
	}
	for i, iso := range in.Isolators {
		c.addIsolator(i, iso)
	}
	for _, a := range in.Arrays {
		for w := 1; w <= int(a.Ways.Value); w++ {
			c.join(edge{a: a.ID.Value + "." + strconv.Itoa(w), b: a.ID.Value + ".out", run: -1})
		}
	}
	for _, s := range in.Strings {
		c.suns = append(c.suns, s.ID.Value)
	}
	for _, inv := range in.Inverters {
		for i := range in.Datasheets.Inverters[inv.Datasheet.Value].MPPTs {
			c.inputs[Input(inv.ID.Value, i)] = true
		}
	}
	return c
}

// carriesPower leaves protective, bonding, earthing and control conductors out
// of the graph: they join parts, but feed nothing.
func carriesPower(r schema.Run) bool {
	return slices.Contains([]string{"pv_string", "pv_array", "battery", "ac"}, r.Service.Value)
}

// Input is the terminal of an inverter's tracking input, the first being 0 in
// the datasheet's list and .1 in the document.
func Input(inverter string, index int) string {
	return inverter + "." + strconv.Itoa(index+1)
}

func (c *Circuit) addIsolator(i int, iso schema.Isolator) {
	for _, w := range iso.Ways {
		in, out := iso.ID.Value+"."+w.ID.Value+".in", iso.ID.Value+"."+w.ID.Value+".out"
		c.join(edge{a: in, b: out, run: -1, way: &way{i, breaksOf(w.ConductorsOpened), w.ConductorsOpened.At()}})
		if w.JoinedIn.Stated() {
			c.join(edge{a: w.JoinedIn.Value, b: in, run: -1})
		}
		if w.JoinedOut.Stated() {
			c.join(edge{a: out, b: w.JoinedOut.Value, run: -1})
		}
	}
}

func breaksOf(t schema.Text) breaks {
	switch {
	case !t.Stated():
		return unknown
	case slices.Contains([]string{"both", "line_and_neutral", "all_lines", "all_lines_and_neutral"}, t.Value):
		return all
	}
	return some
}

func (c *Circuit) join(e edge) {
	i := len(c.edges)
	c.edges = append(c.edges, e)
	c.meet[e.a] = append(c.meet[e.a], i)
	c.meet[e.b] = append(c.meet[e.b], i)
}

func (e edge) far(near string) string {
	if near == e.a {
		return e.b
	}
	return e.a
}

// BreaksAll reports whether what a way breaks is every live conductor.
func BreaksAll(conductorsOpened schema.Text) bool { return breaksOf(conductorsOpened) == all }
