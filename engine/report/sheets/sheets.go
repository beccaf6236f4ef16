// Package sheets writes the papers that go in the van: calculations of strings
// and cables, the labels to stick and where, the tests with what to expect and
// blanks for what is read, the fixings rail by rail, and what the network
// operator and the customer are to get. Every figure comes from the facts.
package sheets

import (
	"slices"
	"strings"

	"sunclause/engine/judge"
	"sunclause/engine/report"
	"sunclause/facts/working"
)

// Sheet is one paper: a table with a heading.
type Sheet struct {
	Name    string // of the file, without an ending
	Title   string
	Notes   []string // above the table
	Columns []string
	Rows    [][]string
}

// Blank is a cell to write in by hand.
const Blank = "________"

// Of makes all sheets of an installation, in the order of the job.
func Of(r *judge.Result) []Sheet {
	all := []Sheet{stringSheet(r), cableSheet(r), fixingSheet(r), labelSheet(r), testSheet(r), expectedSheet(r), notificationSheet(r), paperSheet(r)}
	found := report.Found(r)
	for i := range all {
		all[i].mark(found)
		all[i].Notes = append(all[i].Notes, notes(r)...)
	}
	return all
}

// named is in which column of a sheet the id of the part stands that a row is
// about.
var named = map[string]int{"strings": 0, "cables": 0, "fixings": 3}

// mark says beside each part what the check found there, so that nobody follows a
// sheet into a fault. A sheet without any has no such column.
func (s *Sheet) mark(found map[string]string) {
	column, ok := named[s.Name]
	if !ok || !slices.ContainsFunc(s.Rows, func(row []string) bool { return found[row[column]] != "" }) {
		return
	}
	s.Columns = append(s.Columns, "not met or not shown: see the report")
	for i, row := range s.Rows {
		s.Rows[i] = append(row, found[row[column]])
	}
}

// notes stand on every sheet: which job it is, by which rules, which values somebody
// has to look at again, and the cautions.
func notes(r *judge.Result) []string {
	p := r.Document.Installation.Project
	job := "Job " + p.Reference.Value + ", " + strings.ReplaceAll(p.Stage.Value, "_", " ") + "; figures by rule set " + r.RuleSet.Name + " " + r.RuleSet.Version + "."
	if !r.Passes {
		job += " The installation does not pass: see the report before any of this is used."
	}
	return slices.Concat([]string{job}, report.UnlikelyLines(r), report.Cautions)
}

// number writes a quantity with its unit; an unknown one says so.
func number(n working.Number) string {
	if !n.Known() {
		return "not known"
	}
	return judge.WriteValue(n.Value(), n.Unit())
}

func text(t working.Text) string {
	if !t.Known() {
		return "not known"
	}
	return t.Value()
}

// flag writes an answer; an unknown one says so.
func flag(f working.Flag) string {
	switch {
	case !f.Known():
		return "not known"
	case f.Value():
		return "yes"
	}
	return "no"
}
