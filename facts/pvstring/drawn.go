package pvstring

import (
	"strings"

	"sunclause/facts/working"
	"sunclause/schema"
)

// Drawn holds what the drawing of the roof says of one string.
type Drawn struct {
	RoofDrawn    working.Flag   `json:"roof_drawn" words:"whether modules are drawn on the roof at all"`
	ModulesDrawn working.Number `json:"modules_drawn" words:"modules drawn on the roof as its own"`
	Plane        working.Text   `json:"plane" words:"plane that it is said to lie on"`
	DrawnOn      working.Text   `json:"drawn_on" words:"planes on which its modules are drawn"`
}

// drawnOf finds the modules that are drawn for a string. One that says of no string may
// be of any; it leaves the count open only where modules are lacking.
func drawnOf(in *schema.Installation, s *schema.String) Drawn {
	d := Drawn{RoofDrawn: roofDrawn(in), Plane: working.StatedText(s.Plane.Text)}
	var on []string
	var loose []working.Gap
	n, at := 0, in.Roof.Member("planes")
	for i := range in.Roof.Planes {
		p := &in.Roof.Planes[i]
		here := 0
		for k := range p.Modules {
			switch m := &p.Modules[k]; {
			case !m.String.Stated():
				loose = append(loose, working.Unstated(m.String.At()))
			case m.String.Is(s.ID.Value):
				here++
			}
		}
		if here > 0 {
			n, at = n+here, p.At()
			on = append(on, p.ID.Value)
		}
	}
	d.ModulesDrawn = working.Counted("n_drawn", n, at)
	if loose != nil && float64(n) < s.ModulesInSeries.Value {
		d.ModulesDrawn = working.Unknown("n_drawn", "", loose...)
	}
	d.DrawnOn = working.KnownText(strings.Join(on, ", "), at)
	if on == nil {
		d.DrawnOn = working.UnknownText(at)
	}
	if !s.Plane.Stated() { // then nothing is said that could be wrong
		d.Plane = d.DrawnOn
	}
	return d
}

// roofDrawn reports whether any module is drawn on a plane. A list that is left out
// could have one.
func roofDrawn(in *schema.Installation) working.Flag {
	if in.Roof.Planes == nil {
		return working.UnknownFlag(in.Roof.Member("planes"))
	}
	var drawn []working.Flag
	for i := range in.Roof.Planes {
		p := &in.Roof.Planes[i]
		drawn = append(drawn, working.Among(p.Modules, p.Member("modules"), func(*schema.PlacedModule) bool { return true }))
	}
	return working.Any(drawn...)
}
