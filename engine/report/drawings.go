package report

import (
	"sunclause/engine"
	"sunclause/engine/report/drawing"
)

// Drawings are the pictures of an installation, what is found marked in them.
func Drawings(r *engine.Result) []drawing.Drawing { return drawing.Of(r, Found(r)) }

// Found are the parts of which something is not met or not shown, with
// the title of what is worst.
func Found(r *engine.Result) map[string]string {
	worstOf := map[string]engine.Judgment{}
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
