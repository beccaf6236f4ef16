package examples

import (
	"bytes"
	"encoding/json"
	"fmt"
	"math"
	"path/filepath"
	"regexp"
	"text/template"
)

// On each of the two planes of the warehouse there are ten rows of modules. A
// row is two strings, left and right of the pathway, in parallel on one input of
// an inverter: four inverters with five inputs. A string lies on four tables with
// a pair of rails each, of five modules beside the pathway across the slope. In
// the other rows every second table has four: that leaves room for rooflights.

type roof struct {
	Planes    []plane
	Rows      []row // of both planes
	Inverters []inverter
	Inputs    []int
}

type plane struct {
	ID                string // A, B
	AzimuthDeg, BondM int
	Rows              []row
	Modules, Rails    []string // values of the document, a line each
	Fixings, Clamps   []string
}

type row struct {
	ID, Plane              string // A01 of A
	Inverter, Input        int
	ToColumnM, ToInverterM float64 // along the roof, and indoors; between them it goes down a column
	Rooflights             bool
	PassesYMm              int // where its cable goes through the roof
	Halves                 []half
	Marks                  []mark
}

type half struct {
	ID, Row, Plane             string // A01L of A01
	Way                        int
	Modules                    []string
	RooflightXMm, RooflightYMm int
}

type mark struct {
	AtM  float64
	Side string
}

type inverter struct {
	N, Bond, BondM int
	ToBoardM       float64
}

const (
	moduleMm, gapMm          = 1303, 20  // along the rails, and between modules
	lowerRailMm, upperRailMm = 500, 1672 // up from the lower edge of a module
	columnM                  = 6.6       // of cable down the column
	markedEveryM, beforeEndM = 9, 0.3    // labels along a run
)

func buildRoof() roof {
	r := roof{Inputs: []int{1, 2, 3, 4, 5}}
	for n := range 4 {
		r.Inverters = append(r.Inverters, inverter{N: n + 1, Bond: n + 2, BondM: 6 + 2*n, ToBoardM: 9.5 + 2.5*float64(n)})
	}
	r.Planes = []plane{buildPlane("A", 115, 18, 0), buildPlane("B", 295, 22, 10)}
	for _, p := range r.Planes {
		r.Rows = append(r.Rows, p.Rows...)
	}
	return r
}

// buildPlane lays the rows of a plane, whose inputs follow those of the rows before.
func buildPlane(id string, azimuthDeg, bondM, before int) plane {
	p := plane{ID: id, AzimuthDeg: azimuthDeg, BondM: bondM}
	for n := range 10 {
		upper := n / 5 // above the pathway across the slope
		y := 2250 + 2192*n + 1000*upper
		w := row{
			ID: fmt.Sprintf("%s%02d", id, n+1), Plane: id, Inverter: (before+n)/5 + 1, Input: n%5 + 1,
			ToColumnM: tidy(3.3 + 2.1*float64(n) + float64(upper)), ToInverterM: 11.5 + 0.5*float64(n-upper) + 0.4*float64(before),
			Rooflights: n == 1 || n == 3 || n == 6 || n == 8, PassesYMm: 500 + 100*n,
		}
		w.Marks = marks(w.ToColumnM, columnM, w.ToInverterM)
		for side, name := range []string{"L", "R"} {
			h := half{
				ID: w.ID + name, Row: w.ID, Plane: id, Way: side + 1,
				RooflightXMm: 14969 + 28500*side, RooflightYMm: y + 336,
			}
			p.layTables(&h, fmt.Sprintf("%s%d%s", id, n+1, name), 2453+28500*side, y, n == 4 || n == 5)
			w.Halves = append(w.Halves, h)
		}
		p.Rows = append(p.Rows, w)
	}
	return p
}

// layTables lays the modules of half a row on four tables, from the left.
func (p *plane) layTables(h *half, id string, left, y int, whole bool) {
	n := 0
	for table := range 4 {
		modules, x, every := 5, left+6750*table, 1500
		if !whole && table%2 == 1 {
			modules, x, every = 4, x+161, 1250
		}
		var on []string
		for m := range modules {
			n++
			on = append(on, fmt.Sprintf("%s%d", id, n))
			p.Modules = append(p.Modules, fmt.Sprintf(`{"id": %q, "string": "S%s", "x_mm": %d, "y_mm": %d, "orientation": "portrait"}`,
				on[m], h.ID, x+m*(moduleMm+gapMm), y))
		}
		h.Modules = append(h.Modules, on...)
		for _, edge := range []struct {
			name string
			up   int
		}{{"L", lowerRailMm}, {"U", upperRailMm}} {
			rail := fmt.Sprintf("%s-%d%s", id, table+1, edge.name)
			length := modules*moduleMm + (modules-1)*gapMm + 120
			p.Rails = append(p.Rails, fmt.Sprintf(`{"id": %q, "datasheet": "rail", "x_mm": %d, "y_mm": %d, "direction": "across_slope", "length_mm": %d, "carried_by": "fixings", "joints": []}`,
				rail, x-60, y+edge.up, length))
			p.fix(rail, x-60, y+edge.up, length, every)
			p.clamp(rail, on)
		}
	}
}

// fix puts five brackets under a rail, evenly about its middle; they come to stand
// on ribs of the sheet, 250 mm apart.
func (p *plane) fix(rail string, x, y, length, every int) {
	first := x + (length-4*every)/2
	for n := range 5 {
		p.Fixings = append(p.Fixings, fmt.Sprintf(`{"id": "%sF%d", "datasheet": "brk", "rail": %q, "x_mm": %d, "y_mm": %d, "member": "sheet", "screw": "scr", "screws": 6, "weathering": "sealing_washer"}`,
			p.ID, len(p.Fixings)+1, rail, first+n*every, y))
	}
}

// clamp holds the modules of a rail: one at each end, one between each two.
func (p *plane) clamp(rail string, modules []string) {
	side := func(module, side string) string {
		return fmt.Sprintf(`{"module": %q, "side": %q, "from_corner_mm": %d}`, module, side, lowerRailMm)
	}
	add := func(datasheet, kind, holds string) {
		p.Clamps = append(p.Clamps, fmt.Sprintf(`{"id": "%sC%d", "datasheet": %q, "kind": %q, "rail": %q, "holds": [%s]}`,
			p.ID, len(p.Clamps)+1, datasheet, kind, rail, holds))
	}
	add("ec", "end", side(modules[0], "left"))
	for i := range modules[1:] {
		add("mc", "mid", side(modules[i], "right")+", "+side(modules[i+1], "left"))
	}
	add("ec", "end", side(modules[len(modules)-1], "right"))
}

// marks are the labels along a run that goes through the roof and through a
// wall: at its ends, on both sides of what it passes, and no more than nine
// metres apart.
func marks(lengths ...float64) []mark {
	var all []mark
	start := 0.0
	for i, length := range lengths {
		from, to := start+beforeEndM, start+length-beforeEndM
		first, last := mark{AtM: tidy(from), Side: "to_side"}, mark{AtM: tidy(to), Side: "from_side"}
		if i == 0 {
			first.Side = ""
		}
		if i == len(lengths)-1 {
			last.Side = ""
		}
		all = append(all, first)
		spans := math.Ceil(tidy(to-from) / markedEveryM)
		for n := 1.0; n < spans; n++ {
			all = append(all, mark{AtM: tidy(from + n*(to-from)/spans)})
		}
		if last.AtM > first.AtM {
			all = append(all, last)
		}
		start += length
	}
	return all
}

// tidy rounds to a hundredth.
func tidy(v float64) float64 { return math.Round(100*v) / 100 }

var lastComma = regexp.MustCompile(`, ?(\n *[\]}]|\])`)

// warehouse fills in the template. In it every value of a list ends with a
// comma; that of the last is taken away.
func warehouse() ([]byte, error) {
	counts := map[string]int{}
	next := func(of string) int {
		counts[of]++
		return counts[of]
	}
	t, err := template.New("installation.json.tmpl").Funcs(template.FuncMap{
		"next":  next,
		"label": func() string { return fmt.Sprintf("L%03d", next("label")) },
		"list":  func(words ...string) []string { return words },
	}).ParseFiles(kept(Warehouse, "installation.json.tmpl"))
	if err != nil {
		return nil, err
	}
	var b bytes.Buffer
	if err := t.Execute(&b, buildRoof()); err != nil {
		return nil, err
	}
	text := lastComma.ReplaceAll(b.Bytes(), []byte("$1"))
	if !json.Valid(text) {
		return nil, fmt.Errorf("%s does not make a JSON document", filepath.Base(t.Name()))
	}
	return text, nil
}
