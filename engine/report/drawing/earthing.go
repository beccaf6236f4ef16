package drawing

import (
	"slices"

	"sunclause/engine/judge"
	"sunclause/facts/circuit"
	"sunclause/schema"
)

// earthingDrawing shows how frames, bars and devices are led to the main
// earthing terminal by the runs of the PV work.
func earthingDrawing(r *judge.Result, found map[string]string) []Drawing {
	in := &r.Document.Installation
	main := in.Earthing.MainTerminal.ID
	if !main.Stated() {
		return nil
	}
	e := earthTree(in, main.Value)
	if len(e.toward) == 0 {
		return nil
	}
	d := e.layout(in)
	words := "Protective, bonding and earthing conductors of the PV work, led to the main earthing terminal " + main.Value + "."
	return []Drawing{{Name: "earthing", Title: "Earthing", Words: words, SVG: d.draw(r, found, "circuit earthing", "Earthing diagram")}}
}

// earthing is the tree of earthing conductors: for each part the run that leads
// nearer to the main earthing terminal.
type earthing struct {
	main   string
	toward map[string]circuit.Step
	order  []string // parts as they were reached from the main terminal
}

// earthTree walks from the main earthing terminal along the runs that earth.
func earthTree(in *schema.Installation, main string) earthing {
	e := earthing{main: main, toward: map[string]circuit.Step{}}
	for queue := []string{main}; len(queue) > 0; queue = queue[1:] {
		here := queue[0]
		for i, run := range in.Cables {
			if !slices.Contains([]string{"protective", "bonding", "earthing"}, run.Service.Value) {
				continue
			}
			there := circuit.Part(run.To.Value)
			if there == here {
				there = circuit.Part(run.From.Value)
			} else if circuit.Part(run.From.Value) != here {
				continue
			}
			if _, reached := e.toward[there]; reached || there == main {
				continue
			}
			e.toward[there] = circuit.Step{From: there, To: here, Run: i}
			e.order = append(e.order, there)
			queue = append(queue, there)
		}
	}
	return e
}

// layout puts the ends of the tree into lanes, and what leads on between them.
func (e earthing) layout(in *schema.Installation) *diagram {
	inner := map[string]bool{}
	for _, s := range e.toward {
		inner[s.To] = true
	}
	var ways []way
	deepest := 0
	for _, id := range e.order {
		if inner[id] {
			continue
		}
		w := way{start: id}
		for at := id; at != e.main; at = e.toward[at].To {
			w.steps = append(w.steps, e.toward[at])
		}
		ways = append(ways, w)
		deepest = max(deepest, len(w.steps))
	}
	kinds := kindsOf(in)
	for _, f := range in.Earthing.Frames {
		kinds[f.ID.Value] = "frame"
	}
	kinds[e.main] = "main_terminal"
	d := newDiagram(ways, kinds)
	d.moveTo(e.main, deepest)
	return d
}
