package report

import (
	"html/template"
	"slices"

	"sunclause/engine"
)

// drawing is one picture of the installation, derived from the document.
type drawing struct {
	Title, Words string
	SVG          template.HTML
}

// drawings are the pictures of a report, in reading order.
func drawings(r *engine.Result) []drawing {
	return slices.Concat(circuitDrawing(r), earthingDrawing(r), labelDrawing(r), roofDrawings(r), voltageDrawings(r))
}
