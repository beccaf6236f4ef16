package sheets

import (
	"embed"
	"html/template"
	"io"
	"slices"
	"strings"
	"sync"

	"sunclause/engine/judge"
	"sunclause/engine/report"
	"sunclause/engine/report/drawing"
)

//go:embed page.tmpl stickers.tmpl
var pageFiles embed.FS

// pageTemplates are read when a page is asked for, and not at every start.
var pageTemplates = sync.OnceValue(func() *template.Template { return template.Must(template.ParseFS(pageFiles, "*.tmpl")) })

// drawnOn tells on which sheet each drawing stands, by the beginning of its name.
var drawnOn = map[string]string{"circuit": "strings", "voltage": "strings", "earthing": "cables", "labels": "labels", "roof": "fixings"}

// Page writes all sheets as one page that prints a sheet after the other, with
// the drawings where they belong.
func Page(w io.Writer, r *judge.Result, all []Sheet) error {
	type drawn struct {
		Sheet
		Drawings []drawing.Drawing
	}
	drawings := report.Drawings(r)
	sheets := make([]drawn, len(all))
	for i, s := range all {
		sheets[i] = drawn{Sheet: visible(s)}
		for _, d := range drawings {
			if kind, _, _ := strings.Cut(d.Name, "-"); drawnOn[kind] == s.Name {
				sheets[i].Drawings = append(sheets[i].Drawings, d)
			}
		}
	}
	return pageTemplates().ExecuteTemplate(w, "page.tmpl", map[string]any{
		"Title": report.Visible(r.Document.Installation.Project.Reference.Value), "Style": report.Style(), "Sheets": sheets})
}

// visible spells out whatever in a sheet would act instead of being seen.
func visible(s Sheet) Sheet {
	rows := make([][]string, len(s.Rows))
	for i, row := range s.Rows {
		rows[i] = make([]string, len(row))
		for k, cell := range row {
			rows[i][k] = report.Visible(cell)
		}
	}
	s.Rows = rows
	s.Notes = slices.Clone(s.Notes)
	for i, n := range s.Notes {
		s.Notes[i] = report.Visible(n)
	}
	return s
}
