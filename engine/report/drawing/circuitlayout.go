package drawing

import (
	"cmp"
	"slices"
	"strings"

	"sunclause/engine/judge"
	"sunclause/facts"
	"sunclause/facts/circuit"
	"sunclause/schema"
)

// diagram is a circuit diagram before it is drawn: parts in columns, in the
// direction of the power, and the wires between them.
type diagram struct {
	parts   map[string]*diagramPart
	order   []string // ids of the parts as they come up
	wires   []wire
	through []wire // within parts: from one terminal to another
	lanes   map[string]float64
	seen    map[[2]string]bool
}

// diagramPart is one part: its kind, its column, and the lanes of its terminals.
type diagramPart struct {
	id, kind string
	column   int
	lanes    []float64
}

// wire joins two terminals.
type wire struct {
	from, to string
	run      int // -1 where parts are joined without a run
}

// kindsOf tells of each part of an installation what it is.
func kindsOf(in *schema.Installation) map[string]string {
	kinds := map[string]string{in.AC.Supply.ID.Value: "supply"}
	for _, s := range in.Strings {
		kinds[s.ID.Value] = "string"
	}
	for _, a := range in.Arrays {
		kinds[a.ID.Value] = "array"
	}
	for _, i := range in.Isolators {
		kinds[i.ID.Value] = "isolator"
	}
	for _, i := range in.Inverters {
		kinds[i.ID.Value] = "inverter"
	}
	for _, b := range in.AC.Boards {
		kinds[b.ID.Value] = "board"
	}
	for _, m := range in.AC.Meters {
		kinds[m.ID.Value] = "meter"
	}
	for _, c := range in.AC.Changeovers {
		kinds[c.ID.Value] = "changeover"
	}
	for _, b := range in.Storage.Batteries {
		kinds[b.ID.Value] = "battery"
	}
	return kinds
}

// way is the way of the power from a terminal on.
type way struct {
	start string
	steps []circuit.Step
}

// end is the part that a way leads to; "" when it leads nowhere.
func (w way) end() string {
	if len(w.steps) == 0 {
		return ""
	}
	return circuit.Part(w.steps[len(w.steps)-1].To)
}

func waysOf(c *circuit.Circuit, starts []string) []way {
	ways := make([]way, len(starts))
	for i, s := range starts {
		ways[i] = way{s, c.Steps(s)}
	}
	return ways
}

// newDiagram lays out some ways: each has a lane of its own where it starts, and
// what they are joined in runs in the middle of them.
func newDiagram(ways []way, kinds map[string]string) *diagram {
	d := &diagram{parts: map[string]*diagramPart{}, lanes: map[string]float64{}, seen: map[[2]string]bool{}}
	d.place(ways, kinds)
	return d
}

// mostLanes is how many ways one drawing shows, so that it fits on a sheet of
// paper.
const mostLanes = 16

// directCurrent lists the ways from the strings and batteries to the inverters,
// as they are drawn together: all of them, or where there are many those of each
// inverter by themselves, and of one with many so many at a time. Ways that lead
// nowhere come apart.
func directCurrent(r *judge.Result, c *circuit.Circuit) (groups [][]way, loose []string) {
	var all []way
	index := map[string]int{}
	byEnd := [][]way{}
	for _, w := range waysOf(c, startsOf(r)) {
		if w.end() == "" {
			loose = append(loose, w.start)
			continue
		}
		all = append(all, w)
		i, seen := index[w.end()]
		if !seen {
			i = len(byEnd)
			index[w.end()] = i
			byEnd = append(byEnd, nil)
		}
		byEnd[i] = append(byEnd[i], w)
	}
	if len(all) <= mostLanes {
		return [][]way{all}, loose
	}
	for _, ways := range byEnd {
		groups = slices.AppendSeq(groups, slices.Chunk(ways, mostLanes))
	}
	return groups, loose
}

// alternatingCurrent lists the ways from the inverters to the public supply, by
// their outputs for the mains and for backup.
func alternatingCurrent(r *judge.Result, c *circuit.Circuit) []way {
	var starts []string
	for _, inv := range r.Document.Installation.Inverters {
		starts = append(starts, inv.ID.Value+".ac")
		if backup := inv.ID.Value + ".backup"; len(c.Steps(backup)) > 0 {
			starts = append(starts, backup)
		}
	}
	return waysOf(c, starts)
}

// startsOf are the strings in the order of the inputs they feed, then the
// batteries.
func startsOf(r *judge.Result) []string {
	all := slices.Clone(r.Facts.Strings)
	slices.SortStableFunc(all, func(a, b facts.String) int { return naturally(a.Mppt.Value(), b.Mppt.Value()) })
	var starts []string
	for i := range all {
		starts = append(starts, all[i].ID)
	}
	for _, b := range r.Document.Installation.Storage.Batteries {
		starts = append(starts, b.ID.Value)
	}
	return starts
}

// naturally compares names as people count: INV1.9 stands before INV1.10.
func naturally(a, b string) int {
	for a != "" && b != "" {
		m, n := digits(a), digits(b)
		if m == 0 || n == 0 {
			if a[0] != b[0] {
				return cmp.Compare(a[0], b[0])
			}
			a, b = a[1:], b[1:]
			continue
		}
		x, y := strings.TrimLeft(a[:m], "0"), strings.TrimLeft(b[:n], "0")
		if c := cmp.Or(cmp.Compare(len(x), len(y)), strings.Compare(x, y)); c != 0 {
			return c
		}
		a, b = a[m:], b[n:]
	}
	return strings.Compare(a, b)
}

// digits is how many digits a text begins with.
func digits(s string) int { return len(s) - len(strings.TrimLeft(s, "0123456789")) }

// place puts the parts of some ways into columns and their terminals into lanes.
func (d *diagram) place(ways []way, kinds map[string]string) {
	for i, w := range ways {
		d.lanes[w.start] = float64(i)
	}
	d.meanLanes(ways)
	for _, w := range ways {
		column := 0
		d.enter(w.start, kinds, column)
		for _, step := range w.steps {
			a, b := circuit.Part(step.From), circuit.Part(step.To)
			if a != b {
				column = max(column+1, d.columnOf(b))
				d.enter(step.To, kinds, column)
			}
			d.enter(step.To, kinds, d.columnOf(b))
			d.join(wire{step.From, step.To, step.Run}, a == b)
		}
	}
}

// meanLanes puts every terminal in the middle of the lanes of the ways that lead
// over it.
func (d *diagram) meanLanes(ways []way) {
	over := map[string][]float64{}
	for _, w := range ways {
		for _, step := range w.steps {
			over[step.To] = append(over[step.To], d.lanes[w.start])
		}
	}
	for terminal, lanes := range over {
		sum := 0.0
		for _, l := range lanes {
			sum += l
		}
		d.lanes[terminal] = sum / float64(len(lanes))
	}
}

func (d *diagram) enter(terminal string, kinds map[string]string, column int) {
	id := circuit.Part(terminal)
	p := d.parts[id]
	if p == nil {
		p = &diagramPart{id: id, kind: kinds[id]}
		d.parts[id] = p
		d.order = append(d.order, id)
	}
	p.column = max(p.column, column)
	if lane := d.lanes[terminal]; !slices.Contains(p.lanes, lane) {
		p.lanes = append(p.lanes, lane)
	}
}

func (d *diagram) join(w wire, within bool) {
	if d.seen[[2]string{w.from, w.to}] {
		return
	}
	d.seen[[2]string{w.from, w.to}] = true
	if within {
		d.through = append(d.through, w)
		return
	}
	d.wires = append(d.wires, w)
}

func (d *diagram) columnOf(id string) int {
	if p := d.parts[id]; p != nil {
		return p.column
	}
	return 0
}

// lastColumn is the last column that is taken.
func (d *diagram) lastColumn() int {
	last := 0
	for _, p := range d.parts {
		last = max(last, p.column)
	}
	return last
}

func (d *diagram) moveTo(id string, column int) {
	if p := d.parts[id]; p != nil {
		p.column = column
	}
}
