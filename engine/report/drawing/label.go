package drawing

import (
	"fmt"
	"html/template"
	"slices"
	"strconv"

	"sunclause/engine/judge"
	"sunclause/facts/working"
	"sunclause/schema"
)

// Sizes of the label map, in units of the drawing.
const (
	mapLeft   = 90.0
	mapLength = 580.0
	mapRow    = 34.0
)

// labelDrawing is a map of the labels along the runs of the PV side: each run
// drawn out straight, its labels, and where the way turns or passes a wall.
func labelDrawing(r *judge.Result) []Drawing {
	m := &labelSketch{r: r, found: map[string]bool{}}
	for _, j := range r.Judgments {
		if j.IsFinding() && j.Requirement.Room == "label" {
			m.found[j.Subject.ID] = true
		}
	}
	for i := range r.Document.Installation.Cables {
		run := &r.Document.Installation.Cables[i]
		if length := r.Facts.Runs[i].LengthM; length.Known() && (run.Service.Is("pv_string") || run.Service.Is("pv_array")) {
			m.runs = append(m.runs, mappedRun{run, i, length.Value(), labelsAlong(&r.Document.Installation, run.ID.Value)})
			m.longest = max(m.longest, length.Value())
		}
	}
	if len(m.runs) == 0 || m.longest == 0 {
		return nil
	}
	return m.sheets()
}

// mostRuns is how many runs one drawing shows, so that none is longer than a
// sheet of paper.
const mostRuns = 24

// sheets draws the runs, so many on a drawing, all to one scale.
func (m *labelSketch) sheets() []Drawing {
	words := "Each run drawn out straight from its start. Triangles: labels. Strokes across: walls, floors and roofs. Ticks: changes of direction. Brackets: the widest gap; red where labels are amiss. Thick: live in daylight with every isolator open."
	if len(m.runs) <= mostRuns {
		return []Drawing{{Name: "labels", Title: "Labels along the cables", Words: words, SVG: m.draw(m.runs)}}
	}
	var all []Drawing
	for runs := range slices.Chunk(m.runs, mostRuns) {
		n := strconv.Itoa(len(all) + 1)
		title := fmt.Sprintf("Labels along the cables, %s to %s", runs[0].ID.Value, runs[len(runs)-1].ID.Value)
		all = append(all, Drawing{Name: "labels-" + n, Title: title, Words: words, SVG: m.draw(runs)})
		words = ""
	}
	return all
}

// mappedRun is a run with the places of its labels.
type mappedRun struct {
	*schema.Run
	index  int
	length float64
	labels []float64
}

// labelSketch draws the label map.
type labelSketch struct {
	svg
	r       *judge.Result
	runs    []mappedRun
	longest float64
	found   map[string]bool // runs of which something about labels is not met or not shown
}

// labelsAlong are the places of the labels fixed along a run, in metres.
func labelsAlong(in *schema.Installation, run string) []float64 {
	var at []float64
	for _, l := range in.Labels {
		if l.Run.Is(run) && l.PositionM.Stated() {
			at = append(at, l.PositionM.Value)
		}
	}
	return at
}

func (m *labelSketch) x(metres float64) float64 { return mapLeft + metres/m.longest*mapLength }

func (m *labelSketch) draw(runs []mappedRun) template.HTML {
	sheet := *m
	sheet.svg = svg{width: mapLeft + mapLength + 190, height: float64(len(runs))*mapRow + 20}
	for i, run := range runs {
		sheet.run(run, 20+float64(i)*mapRow)
	}
	return sheet.done("labels", "Labels along the runs of cable")
}

func (m *labelSketch) run(run mappedRun, y float64) {
	class := "route"
	if f := m.r.Facts.Runs[run.index].LiveWithAllOpen; f.Known() && f.Value() {
		class = "live"
	}
	found := ""
	if m.found[run.ID.Value] {
		found = " found"
	}
	m.text("name"+found, mapLeft-10, y+4, "end", run.ID.Value, 9)
	m.line(class, m.x(0), y, m.x(run.length), y)
	m.text("small", m.x(run.length)+6, y+4, "start", m.gapWords(run), 0)
	m.bends(run, y)
	m.gap("gap"+found, run, y+13)
	for _, at := range run.labels {
		m.path("sticker", "M0 -1L-5 -10H5Z", m.x(at), y)
	}
}

// gap brackets the widest gap between labels, where there is room for it.
func (m *labelSketch) gap(class string, run mappedRun, y float64) {
	from, to := widest(m.r.Facts.Runs[run.index].GapM)
	if m.x(to)-m.x(from) < 12 {
		return
	}
	m.add(`<path class="%s" d="M%s %sv-4h%sv4"/>`, class, num(m.x(from)), num(y), num(m.x(to)-m.x(from)))
}

// widest finds in the working of the widest gap from where to where it reaches,
// in metres.
func widest(gap working.Number) (from, to float64) {
	if !gap.Known() {
		return 0, 0
	}
	for _, g := range gap.Inputs() {
		if ends := g.Inputs(); len(ends) == 2 && g.Value() == gap.Value() {
			return min(ends[0].Value(), ends[1].Value()), max(ends[0].Value(), ends[1].Value())
		}
	}
	return 0, 0
}

// gapWords tell the length of a run and its widest gap between labels, where
// labels are due along it.
func (m *labelSketch) gapWords(run mappedRun) string {
	words := judge.WriteValue(run.length, "m")
	if gap := m.r.Facts.Runs[run.index].GapM; gap.Known() && gap.Value() > 0 {
		words += ", widest gap " + judge.WriteValue(gap.Value(), "m")
	}
	return words
}

// bends marks where the way passes something or changes its direction.
func (m *labelSketch) bends(run mappedRun, y float64) {
	at := 0.0
	for _, s := range run.Segments {
		at += s.LengthM.Value
		switch {
		case s.Passage.Stated():
			m.line("wall", m.x(at), y-7, m.x(at), y+9)
		case s.EndsAt.Is("bend"):
			m.line("turn", m.x(at), y, m.x(at), y+6)
		}
	}
}
