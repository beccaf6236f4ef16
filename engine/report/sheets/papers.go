package sheets

import (
	"slices"
	"strings"

	"sunclause/engine"
	"sunclause/engine/report"
)

// paperSheet is the checklist of documents that the rule set asks for on this
// very job.
func paperSheet(r *engine.Result) Sheet {
	s := Sheet{Name: "documents", Title: "Documents to exist and to hand over", Columns: []string{"document", "asked by", "source", "there", "done"}}
	for _, j := range r.Judgments {
		q := j.Requirement
		kind, isWord := q.Limit.Value.(string)
		asks := slices.Contains([]string{"papers", "papers_given"}, q.Measure) && q.Comparison == "includes"
		if !asks || !isWord || j.Outcome == engine.NotApplicable {
			continue
		}
		there := map[engine.Outcome]string{engine.Met: "yes", engine.NotMet: "no", engine.NotShown: "not known"}[j.Outcome]
		s.Rows = append(s.Rows, []string{strings.ReplaceAll(kind, "_", " "), q.Title, report.Cite(q.Source), there, Blank})
	}
	return s
}
