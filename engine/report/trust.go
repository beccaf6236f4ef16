package report

import (
	"fmt"
	"strings"

	"sunclause/engine/judge"
	"sunclause/facts/working"
)

// sourcesOf says how far the requirements that apply can be trusted, and the figures
// behind them: how many of their clauses somebody has read in the document itself,
// and how the others are known. A requirement counts once, however many parts it is
// held against; tables and parameters are all those of the rule set.
func sourcesOf(r *judge.Result) string {
	var apply []working.Source
	counted := map[string]bool{}
	for _, j := range r.Judgments {
		if q := j.Requirement; j.Outcome != judge.NotApplicable && !counted[q.ID] {
			counted[q.ID] = true
			apply = append(apply, q.Source)
		}
	}
	if len(apply) == 0 {
		return ""
	}
	says := fmt.Sprintf("sources of the %s that apply: %s", judge.Many(len(apply), "requirement"), trustIn(apply))
	var figures []working.Source
	for _, t := range r.RuleSet.Book.Tables {
		figures = append(figures, t.Source)
	}
	for _, p := range r.RuleSet.Book.Parameters {
		figures = append(figures, p.Source)
	}
	if len(figures) == 0 {
		return says
	}
	return fmt.Sprintf("%s; of the %s and %s of the rule set: %s", says,
		judge.Many(len(r.RuleSet.Book.Tables), "table"), judge.Many(len(r.RuleSet.Book.Parameters), "parameter"), trustIn(figures))
}

// trustIn counts sources by how they are known.
func trustIn(sources []working.Source) string {
	known := map[string]int{}
	for _, s := range sources {
		known[trustOf(s)]++
	}
	var says []string
	for _, trust := range []string{"verified", "read second-hand", "from memory", "by definition", "common practice", "house rule"} {
		if n := known[trust]; n > 0 || trust == "verified" {
			says = append(says, fmt.Sprintf("%d %s", n, trust))
		}
	}
	return strings.Join(says, ", ")
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
	case s.How == working.Definition:
		return "by definition"
	}
	return string(s.How)
}
