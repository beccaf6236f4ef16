package sheets

import (
	"strings"

	"sunclause/engine/judge"
	"sunclause/facts/working"
	"sunclause/schema"
)

// labelSheet is the schedule of labels: those that the label tables ask for at
// parts and places, then those along the cables.
func labelSheet(r *judge.Result) Sheet {
	s := Sheet{Name: "labels", Title: "Labels and where to stick them", Columns: []string{
		"legend", "on", "where", "words", "prints", "voltage to print", "current to print", "in the document", "done"}}
	texts := textsOf(r)
	for _, p := range r.Facts.LabelPlaces {
		if p.Due.Known() && !p.Due.Value() {
			continue
		}
		s.Rows = append(s.Rows, []string{words(p.Legend), text(p.Part), text(p.Where), wording(p.ServedBy, texts), words(p.Prints), known(p.VoltageDueV), known(p.CurrentDueA), flag(p.Present), Blank})
	}
	for _, l := range r.Document.Installation.Labels {
		if l.Run.Stated() {
			s.Rows = append(s.Rows, alongRun(l, texts[l.ID.Value]))
		}
	}
	return s
}

func alongRun(l schema.Label, words string) []string {
	where := number(working.Stated("", "m", l.PositionM)) + " from the start"
	if l.Side.Stated() {
		where += ", " + strings.ReplaceAll(l.Side.Value, "_", " ")
	}
	return []string{strings.ReplaceAll(l.Legend.Value, "_", " "), "run " + l.Run.Value, where, words, "", "", "", "yes", Blank}
}

// textsOf are the words on the labels of the document, by their ids, with what is
// wrong in them.
func textsOf(r *judge.Result) map[string]string {
	texts, wrong := map[string]string{}, wrongWords(r)
	for _, l := range r.Document.Installation.Labels {
		id := l.ID.Value
		texts[id] = l.Text.Value
		if wrong[id] != "" {
			texts[id] += " (wrong: " + wrong[id] + ")"
		}
	}
	return texts
}

// wording is what the document has printed on the label that serves a place.
func wording(servedBy working.Names, texts map[string]string) string {
	for _, id := range servedBy.Values() {
		if texts[id] != "" {
			return texts[id]
		}
	}
	return ""
}

// words is a word of a table with spaces for its underscores; nothing for one
// that the table leaves out.
func words(t working.Text) string { return strings.ReplaceAll(t.Value(), "_", " ") }

// known is a number that not every row has.
func known(n working.Number) string {
	if !n.Known() {
		return ""
	}
	return number(n)
}
