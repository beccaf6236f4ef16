package engine

import (
	"sort"
	"strings"
)

// Uncovered lists the set's own requirements whose tests do not show each of
// met, not met and not shown, with what is lacking.
func (s *RuleSet) Uncovered(trials []Trial) []string {
	seen := map[string]map[Outcome]bool{}
	for _, t := range trials {
		if seen[t.Requirement] == nil {
			seen[t.Requirement] = map[Outcome]bool{}
		}
		seen[t.Requirement][t.Want] = true
	}
	var lacking []string
	for _, q := range s.Own() {
		var outcomes []string
		for _, o := range []Outcome{Met, NotMet, NotShown} {
			if !seen[q.ID][o] {
				outcomes = append(outcomes, strings.ReplaceAll(string(o), "_", " "))
			}
		}
		if len(outcomes) > 0 {
			lacking = append(lacking, q.ID+" has no test for "+strings.Join(outcomes, ", "))
		}
	}
	sort.Strings(lacking)
	return lacking
}

// Own lists the requirements that the set itself wrote, not those it builds on.
func (s *RuleSet) Own() []*Requirement {
	var own []*Requirement
	for _, q := range s.Requirements {
		if q.Set == s.Name {
			own = append(own, q)
		}
	}
	return own
}
