package sheets

import (
	"slices"
	"strings"

	"sunclause/engine/judge"
	"sunclause/engine/report"
)

// paperSheet is the checklist of documents that the rule set asks for on this
// very job.
func paperSheet(r *judge.Result) Sheet {
	s := Sheet{Name: "documents", Title: "Documents to exist and to hand over", Columns: []string{"document", "asked by", "source", "there", "done"}}
	for _, j := range r.Judgments {
		q := j.Requirement
		kind, isWord := q.Limit.Value.(string)
		asks := slices.Contains([]string{"papers", "papers_given"}, q.Fact) && q.Comparison == "includes"
		if !asks || !isWord || j.Outcome == judge.NotApplicable {
			continue
		}
		there := map[judge.Outcome]string{judge.Met: "yes", judge.NotMet: "no", judge.NotShown: "not known"}[j.Outcome]
		s.Rows = append(s.Rows, []string{strings.ReplaceAll(kind, "_", " "), q.Title, report.Cite(q.Source), there, Blank})
	}
	return s
}
