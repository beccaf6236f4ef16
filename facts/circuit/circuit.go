// Package circuit walks the graph that the parts and the runs of cable of an
// installation make: terminals, and what joins them. From it come the strings
// whose current each run carries, the tracking input each string ends at, the
// way from each inverter to the public supply, and what stays live for any
// state of the isolators.
//
// A run stands for all conductors of its circuit, so the graph has one edge
// where the roof has a pair.
package circuit

import (
	"slices"
	"strconv"
	"strings"

	"sunclause/facts/working"
	"sunclause/schema"
)

// edge joins two terminals.
type edge struct {
	a, b    int
	run     int    // index into the runs; -1 for anything else
	way     *way   // through an isolator
	outlet  string // way of a board, by its terminal
	changes bool   // through a switch between sources
}

// way is one circuit through an isolator: an edge that can be opened.
type way struct {
	isolator int // index into the isolators
	index    int // index into the isolator's ways
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

// Circuit is the graph of an installation. Terminals are numbered as they come
// up, and edges and terminals know each other by number.
type Circuit struct {
	terminals map[string]int
	edges     []edge
	meet      [][]int // edges that end at a terminal
	runs      []schema.Run
	feeds     []int        // edge of a run, -1 for one that carries no power
	ways      [][]int      // edges through an isolator, in the order of its ways
	sources   []int        // terminals where a string feeds in
	goals     map[int]goal // terminals that paths lead to
	toward    []int        // edge that leads a terminal nearer to its goal
	sections  []*section   // section of the graph in which a terminal lies
	places    map[string]schema.Text
	walked    []*section // in the order of their ends
	nets      nets
	opens     map[string]working.Text // kind of circuit that an isolator opens, by its id
	carried   []load                  // by run
	switches  map[string]bool         // ids of the switches between sources
	supply    *schema.Supply
	branchOf  func(terminal string) *branch
	outlets   map[string]*outlet // ways of boards, by their terminals
	earthed   map[string]string  // parts to which only protective conductors go, with their places
}

// Of builds the graph of an installation.
func Of(in *schema.Installation) *Circuit {
	c := &Circuit{terminals: map[string]int{}, runs: in.Cables, goals: map[int]goal{}, supply: &in.AC.Supply, switches: map[string]bool{}, places: PlacesOf(in), opens: map[string]working.Text{}}
	for i, r := range in.Cables {
		c.addRun(i, r)
	}
	for i, iso := range in.Isolators {
		c.addIsolator(i, iso)
	}
	for _, a := range in.Arrays {
		for w := 1; w <= int(a.Ways.Value); w++ {
			c.join(a.ID.Value+"."+strconv.Itoa(w), a.ID.Value+".out", edge{run: -1})
		}
	}
	for _, s := range in.Strings {
		c.sources = append(c.sources, c.terminal(s.ID.Value))
	}
	for _, inv := range in.Inverters {
		for i := range inv.Datasheet.To().MPPTs {
			name := Input(inv.ID.Value, i)
			c.goals[c.terminal(name)] = goal{trackingInput, name}
		}
		c.goals[c.terminal(inv.ID.Value+".battery")] = goal{batteryTerminal, inv.ID.Value}
	}
	c.addMains(&in.AC)
	c.earthed = earthedParts(&in.Earthing)
	c.findNets(in)
	c.admit()
	for i := range in.Isolators {
		iso := &in.Isolators[i]
		c.opens[iso.ID.Value] = working.Confirmed(working.StatedText(iso.Circuit), c.OpensMade(iso))
	}
	c.trace()
	c.count(in)
	c.findOutlets(in)
	return c
}

// terminal gives a terminal its number.
func (c *Circuit) terminal(name string) int {
	t, known := c.terminals[name]
	if !known {
		t = len(c.meet)
		c.terminals[name] = t
		c.meet = append(c.meet, nil)
	}
	return t
}

// join puts an edge between two terminals and gives its number.
func (c *Circuit) join(a, b string, e edge) int {
	i := len(c.edges)
	e.a, e.b = c.terminal(a), c.terminal(b)
	c.edges = append(c.edges, e)
	c.meet[e.a] = append(c.meet[e.a], i)
	c.meet[e.b] = append(c.meet[e.b], i)
	return i
}

func (c *Circuit) addRun(i int, r schema.Run) {
	feeds := -1
	if carriesPower(r) {
		feeds = c.join(r.From.Value, r.To.Value, edge{run: i})
	}
	c.feeds = append(c.feeds, feeds)
}

// Part is the id of the part that a terminal belongs to.
func Part(terminal string) string {
	id, _, _ := strings.Cut(terminal, ".")
	return id
}

// Input is the terminal of an inverter's tracking input, the first being 0 in
// the datasheet's list and .1 in the document.
func Input(inverter string, index int) string {
	return inverter + "." + strconv.Itoa(index+1)
}

func (c *Circuit) addIsolator(i int, iso schema.Isolator) {
	var through []int
	for n, w := range iso.Ways {
		in, out := iso.ID.Value+"."+w.ID.Value+".in", iso.ID.Value+"."+w.ID.Value+".out"
		opens := &way{isolator: i, index: n, breaks: breaksOf(w.ConductorsOpened), at: w.ConductorsOpened.At()}
		through = append(through, c.join(in, out, edge{run: -1, way: opens}))
		c.joined(w.JoinedIn, in)
		c.joined(w.JoinedOut, out)
	}
	c.ways = append(c.ways, through)
}

// allConductors are the words of conductors_opened for every live conductor.
var allConductors = []string{"both", "line_and_neutral", "all_lines", "all_lines_and_neutral"}

func breaksOf(t schema.Text) breaks {
	switch {
	case !t.Stated():
		return unknown
	case slices.Contains(allConductors, t.Value):
		return all
	}
	return some
}

func (e edge) far(near int) int {
	if near == e.a {
		return e.b
	}
	return e.a
}

// BreaksAll reports whether every way of an isolator breaks all live conductors.
func BreaksAll(iso *schema.Isolator) working.Flag {
	if len(iso.Ways) == 0 {
		return working.UnknownFlag(iso.At())
	}
	var breaking []working.Flag
	for _, w := range iso.Ways {
		breaking = append(breaking, working.StatedText(w.ConductorsOpened).OneOf(allConductors...))
	}
	return working.All(breaking...)
}
