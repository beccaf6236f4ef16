package drawing

import (
	"html/template"
	"math"
	"slices"
	"strconv"
	"strings"

	"sunclause/engine/judge"
	"sunclause/facts/circuit"
	"sunclause/facts/working"
	"sunclause/schema"
)

// Sizes of the circuit diagram, in units of the drawing.
const (
	leastGap    = 56.0 // between two columns
	letter      = 6.4  // width of a small letter, on the safe side
	mostLetters = 26   // of the words on a run
	laneHeight  = 64.0
	partWidth   = 52.0
	diagramTop  = 40.0
	diagramLeft = 28.0
)

// circuitDrawings are the circuit diagrams of the two sides of the inverters, one
// line for all conductors.
func circuitDrawings(r *judge.Result, found map[string]string) []Drawing {
	in := &r.Document.Installation
	c, kinds := circuit.Of(in), kindsOf(in)
	all := directDrawings(r, c, kinds, found)
	if d := newDiagram(alternatingCurrent(r, c), kinds); len(d.wires) > 0 {
		words := "From the inverters to the public supply. Red: something is not met or not shown of that part or run."
		all = append(all, Drawing{Name: "circuit-ac", Title: "Circuit diagram, AC side", Words: words, SVG: d.draw(r, found, "circuit", "Circuit diagram from the inverters to the public supply")})
	}
	return all
}

// directDrawings are the diagrams from the strings and batteries to the
// inverters. Runs that stay live in daylight with every isolator open stand out.
func directDrawings(r *judge.Result, c *circuit.Circuit, kinds, found map[string]string) (all []Drawing) {
	words := "One line stands for all conductors of a circuit. Thick lines stay live in daylight with every isolator open. Red: something is not met or not shown of that part or run."
	groups, loose := directCurrent(r, c)
	if len(loose) > 0 {
		words += " Not led to any inverter: " + judge.Some(loose) + "."
	}
	drawn := map[string]int{} // how many drawings there are of an inverter
	for _, ways := range groups {
		d := newDiagram(ways, kinds)
		for _, w := range ways {
			d.moveTo(w.end(), d.lastColumn())
		}
		if len(d.wires) == 0 {
			continue
		}
		name, title := "circuit-dc", "Circuit diagram, DC side"
		if end := ways[0].end(); len(groups) > 1 {
			name, title = name+"-"+end, title+" "+end
			if drawn[end]++; drawn[end] > 1 {
				more := strconv.Itoa(drawn[end])
				name, title = name+"-"+more, title+", sheet "+more
			}
		}
		all = append(all, Drawing{Name: name, Title: title, Words: words, SVG: d.draw(r, found, "circuit", "Circuit diagram from the strings to the inverter")})
		words = ""
	}
	return all
}

// circuitSketch draws a diagram.
type circuitSketch struct {
	svg
	*diagram
	r       *judge.Result
	runs    []schema.Run
	columns []float64 // where each column begins
	found   map[string]string
}

func (d *diagram) draw(r *judge.Result, found map[string]string, class, title string) template.HTML {
	lanes := 0.0
	for _, lane := range d.lanes {
		lanes = max(lanes, lane)
	}
	s := &circuitSketch{diagram: d, r: r, runs: r.Document.Installation.Cables, found: found}
	s.setColumns()
	s.width = s.columns[len(s.columns)-1] + partWidth + diagramLeft + 30
	s.height = diagramTop + lanes*laneHeight + 60
	for _, w := range d.wires {
		s.wire(w)
	}
	for _, id := range d.order {
		s.part(d.parts[id])
	}
	for _, w := range d.through {
		s.within(w)
	}
	s.surges()
	return s.done(class, title)
}

func (s *circuitSketch) y(terminal string) float64 { return diagramTop + s.lanes[terminal]*laneHeight }

// setColumns makes room between the columns for the words on the runs.
func (s *circuitSketch) setColumns() {
	gaps := make([]float64, s.lastColumn()+1)
	for _, w := range s.wires {
		if c := s.parts[circuit.Part(w.from)].column; w.run >= 0 {
			gaps[c] = max(gaps[c], letter*min(mostLetters, letters(s.runWords(w.run)))+14+s.turnRoom(w))
		}
	}
	x := diagramLeft
	for _, gap := range gaps {
		s.columns = append(s.columns, x)
		x += partWidth + max(gap, leastGap)
	}
}

// classOf adds to a class that something is not met or not shown of a part.
func (s *circuitSketch) classOf(class, id string) string {
	if s.found[id] != "" {
		return class + " found"
	}
	return class
}

func (s *circuitSketch) left(p *diagramPart) float64 { return s.columns[p.column] }

// wire draws a run, or a joint without one, from the right of a part to the left
// of the next.
func (s *circuitSketch) wire(w wire) {
	a, b := s.parts[circuit.Part(w.from)], s.parts[circuit.Part(w.to)]
	x1, x2 := s.left(a)+partWidth, s.left(b)
	y1, y2 := s.y(w.from), s.y(w.to)
	class := "wire"
	if w.run >= 0 && s.live(w.run) {
		class = "live"
	}
	bend := x2 - s.turnRoom(w)
	s.add(`<path class="%s" d="M%s %sH%sV%sH%s"/>`, class, num(x1), num(y1), num(bend), num(y2), num(x2))
	if w.run >= 0 {
		s.text(s.classOf("small", s.runs[w.run].ID.Value), x1+5, y1-5, "start", s.runWords(w.run), mostLetters)
	}
}

// spdRoom is the width of a surge protective device with its name.
const spdRoom = 50.0

// turnRoom is how far before the next part a run turns into its lane: left of
// the surge protective devices that hang there.
func (s *circuitSketch) turnRoom(w wire) float64 {
	room := 10.0
	if s.y(w.from) == s.y(w.to) {
		return room
	}
	for _, spd := range s.r.Document.Installation.SPDs {
		if spd.ConnectedAt.Is(w.to) {
			room += spdRoom
		}
	}
	return room
}

func (s *circuitSketch) live(run int) bool {
	f := s.r.Facts.Runs[run].LiveWithAllOpen
	return f.Known() && f.Value()
}

// runWords name a run with its length and cross-section, where they are stated.
func (s *circuitSketch) runWords(run int) string {
	words := s.runs[run].ID.Value
	if l := s.r.Facts.Runs[run].LengthM; l.Known() {
		words += " " + judge.WriteValue(l.Value(), "m")
	}
	sheet := s.runs[run].Cable.To()
	if sheet.CsaMm2.Stated() {
		words += ", " + working.Plain(sheet.CsaMm2.Value) + " mm²"
	}
	return words
}

// part draws the outline of a part, its name and its symbol.
func (s *circuitSketch) part(p *diagramPart) {
	x := s.left(p)
	top, bottom := diagramTop+slices.Min(p.lanes)*laneHeight-15, diagramTop+slices.Max(p.lanes)*laneHeight+15
	s.rect(s.classOf("part", p.id), x, top, partWidth, bottom-top)
	s.text("name", x+partWidth/2, top-4, "middle", p.id, 12)
	middle := (top + bottom) / 2
	switch p.kind {
	case "string":
		s.path("symbol", "M-14 8V-8L0 2L14 -8V8Z", x+partWidth/2, middle)
	case "inverter":
		s.path("symbol", "M-16 13V-13H16V13Z M-16 13L16 -13 M-12 -9H-2 M-12 -5H-9.5 M-8 -5H-6 M-4.5 -5H-2 M1 6C3.5 1 5.5 1 7 6S10.5 11 13 6", x+partWidth/2, middle)
	case "supply":
		s.circle("symbol", x+partWidth/2, middle, 11)
		s.path("symbol", "M-7 0C-4 -6 -2 -6 0 0S4 6 7 0", x+partWidth/2, middle)
	case "meter":
		s.text("inside", x+partWidth/2, middle+4, "middle", "kWh", 0)
	case "battery":
		s.path("symbol", "M-16 0H-4 M-4 -9V9 M2 -5V5 M2 0H16", x+partWidth/2, middle)
	case "frame":
		s.path("symbol", "M-14 -5H14 M-12 -5L-16 3 M-4 -5L-8 3 M4 -5L0 3 M12 -5L8 3", x+partWidth/2, middle)
	case "main_terminal":
		s.path("symbol", "M0 -9V0 M-9 0H9 M-6 3.5H6 M-3 7H3", x+partWidth/2, middle)
	case "changeover":
		s.path("symbol", "M-16 0H-6L8 -7 M8 -9V-5 M8 5V9 M16 0H10", x+partWidth/2, middle)
	}
}

// within draws what lies between two terminals of a part: a switch, a fuse or
// circuit-breaker, or a joint.
func (s *circuitSketch) within(w wire) {
	p := s.parts[circuit.Part(w.from)]
	x, y1, y2 := s.left(p), s.y(w.from), s.y(w.to)
	switch p.kind {
	case "isolator":
		s.path("symbol", "M0 0H15 M15 0L34 -10 M36 -6V6 M37 0H52", x, y1)
		s.circle("joint", x+37, y1, 2.6)
	case "board":
		s.path("symbol", "M0 0H14 M14 0L30 -9 M29 -3l6 6m0 -6l-6 6 M32 0H40", x, y1)
		s.add(`<path class="symbol" d="M%s %sV%sH%s"/>`, num(x+40), num(y1), num(y2), num(x+partWidth))
	case "array":
		s.add(`<path class="symbol" d="M%s %sH%sV%sH%s"/>`, num(x), num(y1), num(x+partWidth/2), num(y2), num(x+partWidth))
		s.circle("joint", x+partWidth/2, y2, 2.6)
	}
}

// surges hangs the surge protective devices below the terminals at which they
// are connected, beside the part; one on a way that leads to no generator hangs
// below its board.
func (s *circuitSketch) surges() {
	hung := map[string]float64{}
	for _, spd := range s.r.Document.Installation.SPDs {
		at := spd.ConnectedAt.Value
		p := s.parts[circuit.Part(at)]
		if p == nil || s.beyond(p, at) || s.parts[s.r.Document.Installation.Earthing.MainTerminal.ID.Value] != nil {
			continue
		}
		x, y, side, anchor := s.left(p)+partWidth+12, s.y(at), 8.0, "start"
		switch _, placed := s.lanes[at]; {
		case !placed:
			x, y = s.left(p)+partWidth/2, diagramTop+slices.Max(p.lanes)*laneHeight+15
		case strings.HasSuffix(at, ".in") || p.kind == "inverter" && !alternating(at):
			x, side, anchor = s.left(p)-8, -8, "end"
		}
		x += math.Copysign(spdRoom, side) * hung[at]
		hung[at]++
		s.path("symbol", "M0 0V8 M-4 8H4V20H-4Z M-4 20L4 8 M0 20V25 M-6 25H6 M-4 27.5H4 M-2 30H2", x, y)
		s.text(s.classOf("small", spd.ID.Value), x+side, y+18, anchor, spd.ID.Value, 8)
	}
}

// beyond reports whether a terminal of an inverter lies on the side of it that
// is not drawn.
func (s *circuitSketch) beyond(p *diagramPart, terminal string) bool {
	_, drawn := s.lanes[p.id+".ac"]
	return p.kind == "inverter" && drawn != alternating(terminal)
}

// alternating reports whether a terminal of an inverter carries alternating current.
func alternating(terminal string) bool {
	return strings.HasSuffix(terminal, ".ac") || strings.HasSuffix(terminal, ".backup")
}
