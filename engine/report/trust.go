package report

import (
	"fmt"
	"strings"

	"sunclause/engine/judge"
	"sunclause/facts/working"
)

// sourcesOf says how far the requirements that apply can be trusted: how many of
// their clauses somebody has read in the document itself, and how the others are
// known. A requirement counts once, however many parts it is held against.
func sourcesOf(r *judge.Result) string {
	known := map[string]int{}
	total, counted := 0, map[string]bool{}
	for _, j := range r.Judgments {
		q := j.Requirement
		if j.Outcome == judge.NotApplicable || counted[q.ID] {
			continue
		}
		counted[q.ID] = true
		total++
		known[trustOf(q.Source)]++
	}
	if total == 0 {
		return ""
	}
	var says []string
	for _, trust := range []string{"verified", "read second-hand", "from memory", "common practice", "house rule"} {
		if n := known[trust]; n > 0 || trust == "verified" {
			says = append(says, fmt.Sprintf("%d %s", n, trust))
		}
	}
	return fmt.Sprintf("sources of the %s that apply: %s", judge.Many(total, "requirement"), strings.Join(says, ", "))
}

// trustOf says in a word how a source is known.
func trustOf(s working.Source) string {
	switch {
	case s.Verified:
		return "verified"
	case s.How == working.Memory:
		return "from memory"
	case s.How == working.Read:
		return "read second-hand"
	}
	return string(s.How)
}
