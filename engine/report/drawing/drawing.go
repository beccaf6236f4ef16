// Package drawing makes the pictures of an installation, derived from its document
// and facts, one a file: circuit diagrams in the symbols of IEC 60617, earthing,
// labels along the cables, plans of the roof, and voltages over temperature.
package drawing

import (
	"embed"
	"html/template"
	"slices"
	"strings"

	"sunclause/engine/judge"
)

//go:embed palette.css drawing.css
var styleSheets embed.FS

// Drawing is one picture. Its colours come from the classes of the style sheet.
type Drawing struct {
	Name         string // for a file: circuit-dc, roof-P1, …
	Title, Words string
	SVG          template.HTML
}

// Of makes the drawings of an installation, in reading order. What the document
// does not state is left out of them. Parts of which something is not met or not
// shown stand out; found has them by id, with the title of what is worst there.
func Of(r *judge.Result, found map[string]string) []Drawing {
	return slices.Concat(circuitDrawings(r, found), earthingDrawing(r, found), labelDrawing(r), roofDrawings(r, found), voltageDrawings(r))
}

// Style is the style sheet of drawings, with the colours for light, dark and
// print that a page around them shares.
func Style() template.CSS {
	var all template.CSS
	for _, name := range []string{"palette.css", "drawing.css"} {
		css, err := styleSheets.ReadFile(name)
		if err != nil {
			panic(err) // they are embedded
		}
		all += template.CSS(css)
	}
	return all
}

// Alone is a drawing as a file of its own, with its colours in it.
func (d Drawing) Alone() string {
	head := `<svg xmlns="http://www.w3.org/2000/svg" `
	svg := strings.Replace(string(d.SVG), "<svg ", head, 1)
	opened := strings.Index(svg, ">") + 1
	return svg[:opened] + "\n<style>\n" + string(Style()) + "</style>\n<rect class=\"ground\" width=\"100%\" height=\"100%\"/>" + svg[opened:] + "\n"
}
