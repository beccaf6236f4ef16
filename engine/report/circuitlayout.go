package report

import (
	"slices"
	"sort"
	"strings"

	"sunclause/engine"
	"sunclause/facts/circuit"
	"sunclause/schema"
)

// diagram is a circuit diagram before it is drawn: parts in columns from the
// strings to the supply, and the wires between them.
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

// layout lays an installation out: each string has a lane of its own, and what
// strings are joined in runs in the middle of them.
func layout(r *engine.Result) *diagram {
	in := &r.Document.Installation
	c, kinds := circuit.Of(in), kindsOf(in)
	d := &diagram{parts: map[string]*diagramPart{}, lanes: map[string]float64{}, seen: map[[2]string]bool{}}
	dc := waysOf(c, startsOf(r))
	d.place(dc, kinds, 0)
	var starts []string
	width := d.lastColumn()
	for _, inv := range in.Inverters {
		d.moveTo(inv.ID.Value, width)
		starts = append(starts, inv.ID.Value+".ac")
		d.lanes[inv.ID.Value+".ac"] = d.middle(inv.ID.Value)
	}
	d.place(waysOf(c, starts), kinds, width)
	return d
}

// startsOf are the strings in the order of the inputs they feed, then the
// batteries.
func startsOf(r *engine.Result) []string {
	all := slices.Clone(r.Facts.Strings)
	sort.SliceStable(all, func(a, b int) bool { return natural(all[a].Mppt.Value(), all[b].Mppt.Value()) })
	var starts []string
	for i := range all {
		starts = append(starts, all[i].ID)
	}
	for _, b := range r.Document.Installation.Storage.Batteries {
		starts = append(starts, b.ID.Value)
	}
	return starts
}

// natural orders names so that INV1.9 stands before INV1.10.
func natural(a, b string) bool {
	if len(a) != len(b) && strings.TrimRight(a, "0123456789") == strings.TrimRight(b, "0123456789") {
		return len(a) < len(b)
	}
	return a < b
}

func waysOf(c *circuit.Circuit, starts []string) map[string][]circuit.Step {
	ways := map[string][]circuit.Step{"": nil}
	for _, s := range starts {
		ways[s] = c.Steps(s)
	}
	return ways
}

// place puts the parts of some ways into columns and their terminals into lanes.
func (d *diagram) place(ways map[string][]circuit.Step, kinds map[string]string, from int) {
	var starts []string
	for s := range ways {
		if s != "" {
			starts = append(starts, s)
		}
	}
	sort.Slice(starts, func(a, b int) bool { return natural(starts[a], starts[b]) })
	d.firstLanes(starts)
	d.meanLanes(starts, ways)
	for _, s := range starts {
		column := from
		d.enter(s, kinds, column)
		for _, step := range ways[s] {
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

// firstLanes gives every start that has none yet a lane below the others.
func (d *diagram) firstLanes(starts []string) {
	next := 0.0
	for _, lane := range d.lanes {
		next = max(next, lane+1)
	}
	for _, s := range starts {
		if _, has := d.lanes[s]; !has {
			d.lanes[s] = next
			next++
		}
	}
}

// meanLanes puts every terminal in the middle of the lanes of the starts that
// lead over it.
func (d *diagram) meanLanes(starts []string, ways map[string][]circuit.Step) {
	over := map[string][]float64{}
	for _, s := range starts {
		for _, step := range ways[s] {
			over[step.To] = append(over[step.To], d.lanes[s])
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

// middle is the lane in the middle of a part.
func (d *diagram) middle(id string) float64 {
	p := d.parts[id]
	if p == nil || len(p.lanes) == 0 {
		return 0
	}
	return (slices.Min(p.lanes) + slices.Max(p.lanes)) / 2
}
