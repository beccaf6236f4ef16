// Package report writes the result of a check in the formats that people and
// programs read, one file a format.
package report

import (
	"bytes"
	"fmt"
	"io"
	"strings"

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
	Part  func(w io.Writer, r *judge.Result, o Options) error                    // what one document contributes
	Whole func(w io.Writer, s *ruleset.RuleSet, parts [][]byte, o Options) error // puts the parts together
}

// Formats are the formats there are, by the name that the command line uses.
var Formats = map[string]Format{
	"text":     {Text, joined("\n" + strings.Repeat("-", 30) + "\n\n")},
	"json":     {JSON, joined("")},
	"html":     {HTML, single},
	"junit":    {junitPart, junitWhole},
	"markdown": {markdownPart, markdownWhole},
	"sarif":    {sarifPart, sarifWhole},
}

// joined puts parts one after the other, each a report by itself.
func joined(between string) func(io.Writer, *ruleset.RuleSet, [][]byte, Options) error {
	return func(w io.Writer, _ *ruleset.RuleSet, parts [][]byte, _ Options) error {
		_, err := w.Write(bytes.Join(parts, []byte(between)))
		return err
	}
}

// single is for a format whose report is a page of its own.
func single(w io.Writer, _ *ruleset.RuleSet, parts [][]byte, _ Options) error {
	if len(parts) != 1 {
		return fmt.Errorf("a page in HTML is about one installation, and there are %d; check them one by one, or take --format markdown", len(parts))
	}
	_, err := w.Write(parts[0])
	return err
}

// Write writes results of one rule set in a format.
func (f Format) Write(w io.Writer, s *ruleset.RuleSet, results []*judge.Result, o Options) error {
	parts := make([][]byte, len(results))
	for i, r := range results {
		var text bytes.Buffer
		if err := f.Part(&text, r, o); err != nil {
			return err
		}
		parts[i] = text.Bytes()
	}
	return f.Whole(w, s, parts, o)
}

// Cautions stand under every report.
var Cautions = []string{
	"A PV string is live whenever there is light on it; opening an isolator does not make it dead.",
	"Work on roofs kills. Plan the access and the fall protection before anyone climbs.",
	"This is a check of what the document states, not of the roof. Local codes, the makers' instructions and licensed people decide.",
}
