package record

import (
	"encoding/json"
	"fmt"
	"strconv"
	"strings"
)

// Reproduction is what came of judging a document again that a record is about.
type Reproduction struct {
	Identical   bool             `json:"identical"`
	Differences []Difference     `json:"differences"` // other than of outcomes and unlikely values
	Unlikely    []UnlikelyChange `json:"unlikely"`
	Outcomes    []OutcomeChange  `json:"outcomes"`
	Notes       []string         `json:"notes"`
}

// Difference is something that is not as the record has it.
type Difference struct {
	What   string `json:"what"`
	Before string `json:"before"`
	After  string `json:"after"`
}

// Reproduce compares a record with the record of the same check made anew. The
// version of sunclause is a note: another one that comes to the same is no
// difference. The time and the name of the file are statements of whoever made
// the record, and nothing to compare.
func Reproduce(before, after *Record) Reproduction {
	out := Reproduction{Differences: []Difference{}, Unlikely: CompareUnlikely(before, after), Outcomes: CompareOutcomes(before, after), Notes: []string{}}
	add := func(what, a, b string) {
		if a != b {
			out.Differences = append(out.Differences, Difference{what, a, b})
		}
	}
	add("SHA-256 of the document", before.Document.SHA256, after.Document.SHA256)
	add("reference of the job", before.Document.Reference, after.Document.Reference)
	add("stage", before.Document.Stage, after.Document.Stage)
	add("rule set", before.RuleSet.Name+" "+before.RuleSet.Version, after.RuleSet.Name+" "+after.RuleSet.Version)
	add("SHA-256 of the rule set with all it builds on", before.RuleSet.SHA256, after.RuleSet.SHA256)
	add("layers of the rule set", layersIn(before), layersIn(after))
	add("changes that the rule set makes", written(before.RuleSet.Changes), written(after.RuleSet.Changes))
	add("passes", strconv.FormatBool(before.Passes), strconv.FormatBool(after.Passes))
	add("unlikely values", fmt.Sprint(len(before.Unlikely)), fmt.Sprint(len(after.Unlikely)))
	add("outcomes stated", fmt.Sprint(before.count()), fmt.Sprint(after.count()))
	if a, b := before.Tool.Version, after.Tool.Version; a != b {
		out.Notes = append(out.Notes, fmt.Sprintf("the record was made by sunclause %s, and reproduced by %s", a, b))
	}
	out.Identical = len(out.Differences)+len(out.Unlikely)+len(out.Outcomes) == 0
	return out
}

// count is how many outcomes a record has. One that states something twice of
// the same part has more than there are to compare.
func (rec *Record) count() int {
	n := 0
	for _, p := range rec.Parts {
		n += len(p.Outcomes) + len(p.Idle)
	}
	return n
}

func layersIn(rec *Record) string {
	names := make([]string, len(rec.RuleSet.Layers))
	for i, l := range rec.RuleSet.Layers {
		names[i] = fmt.Sprintf("%s %s (%s) %s", l.Name, l.Version, l.Title, l.SHA256)
	}
	return strings.Join(names, ", ")
}

// written is a value as a record holds it.
func written(v any) string {
	text, err := json.Marshal(v)
	if err != nil {
		return err.Error()
	}
	return string(text)
}

func sameWritten(a, b any) bool { return written(a) == written(b) }
