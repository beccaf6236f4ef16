// Package report writes the result of a check in the formats that people and
// programs read, one file a format.
package report

import (
	"io"

	"sunclause/engine/judge"
	"sunclause/engine/ruleset"
)

// Options are choices of how a report looks.
type Options struct {
	Width  int  // columns of the text report; 0 is 80
	Colour bool // whether the text report may use colour
	All    bool // whether reports for people list what is met, and the text report what does not apply
	Strict bool // whether the check counted should as shall

	Version string // of sunclause, where a format names the tool
}

// Format writes the reports of one or more documents. Each document is written
// by itself, so that many can be judged at once and none need be kept.
type Format struct {
	Part      func(w io.Writer, r *judge.Result, o Options) error // what one document contributes
	Unchecked func(w io.Writer, u Unchecked, o Options) error     // what one contributes that could not be checked
	Collect   func(w io.Writer, o Options) Collector              // puts the parts together
	AtEnd     bool                                                // nothing is written before the end
}

// Collector puts what documents contribute together into one report, in the
// order in which it gets them.
type Collector interface {
	// Add takes what the next document contributes, as write writes it.
	Add(write func(io.Writer) error) error
	// End writes what stands under the documents. The summary is nil where there
	// is one document and nobody asked for more.
	End(s *ruleset.RuleSet, summary *Summary) error
}

// Formats are the formats there are, by the name that the command line uses.
var Formats = map[string]Format{
	"text":     {Text, textUnchecked, collectText, false},
	"json":     {JSON, jsonUnchecked, collectJSON, false},
	"html":     {HTML, htmlUnchecked, collectHTML, false},
	"junit":    {junitPart, junitUnchecked, collectJUnit, true},
	"markdown": {markdownPart, markdownUnchecked, collectMarkdown, false},
	"sarif":    {sarifPart, sarifUnchecked, collectSARIF, true},
}

// Write writes results of one rule set in a format, without a summary.
func (f Format) Write(w io.Writer, s *ruleset.RuleSet, results []*judge.Result, o Options) error {
	all := f.Collect(w, o)
	for _, r := range results {
		if err := all.Add(func(w io.Writer) error { return f.Part(w, r, o) }); err != nil {
			return err
		}
	}
	return all.End(s, nil)
}

// Cautions stand under every report.
var Cautions = []string{
	"A PV string is live whenever there is light on it; opening an isolator does not make it dead.",
	"Work on roofs kills. Plan the access and the fall protection before anyone climbs.",
	"This is a check of what the document states, not of the roof. Local codes, the makers' instructions and licensed people decide.",
}
