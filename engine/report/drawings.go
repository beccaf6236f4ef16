package report

import (
	"sunclause/engine/judge"
	"sunclause/engine/report/drawing"
)

// Drawings are the pictures of an installation, what is found marked in them.
func Drawings(r *judge.Result) []drawing.Drawing { return drawing.Of(r, Found(r)) }

// Found are the parts of which something is not met or not shown, with
// the title of what is worst.
func Found(r *judge.Result) map[string]string {
	worstOf := map[string]judge.Judgment{}
	for _, j := range r.Judgments {
		if known, seen := worstOf[j.Subject.ID]; j.IsFinding() && (!seen || worst(j, known, Options{}) < 0) {
			worstOf[j.Subject.ID] = j
		}
	}
	titles := make(map[string]string, len(worstOf))
	for id, j := range worstOf {
		titles[id] = j.Requirement.Title
	}
	return titles
}
