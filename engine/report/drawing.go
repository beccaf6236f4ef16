package report

import (
	"html/template"
	"slices"
	"strings"

	"sunclause/engine"
)

// Drawing is one picture of the installation, derived from the document. Its
// colours come from the classes of the report's style sheet.
type Drawing struct {
	Name         string // for a file: circuit, roof-P1, …
	Title, Words string
	SVG          template.HTML
}

// Drawings are the pictures of an installation, in reading order. What the
// document does not state is left out of them.
func Drawings(r *engine.Result) []Drawing {
	return slices.Concat(circuitDrawings(r), earthingDrawing(r), labelDrawing(r), roofDrawings(r), voltageDrawings(r))
}

// Alone is a drawing as a file of its own, with its colours in it.
func (d Drawing) Alone() string {
	head := `<svg xmlns="http://www.w3.org/2000/svg" `
	svg := strings.Replace(string(d.SVG), "<svg ", head, 1)
	opened := strings.Index(svg, ">") + 1
	return svg[:opened] + "\n<style>\n" + string(styles("palette", "drawing")) + "</style>\n<rect class=\"ground\" width=\"100%\" height=\"100%\"/>" + svg[opened:] + "\n"
}
