package trial

import (
	"sort"
	"strings"

	"sunclause/engine/judge"
	"sunclause/engine/ruleset"
)

// GeneratedAlone lists the set's own requirements that no case tries but those
// generated from them.
func GeneratedAlone(set *ruleset.RuleSet, cases []Case) []string {
	written, generated := map[string]bool{}, map[string]bool{}
	for _, c := range cases {
		if c.Generated {
			generated[c.Requirement] = true
		} else {
			written[c.Requirement] = true
		}
	}
	var alone []string
	for _, q := range set.Own() {
		if generated[q.ID] && !written[q.ID] {
			alone = append(alone, q.ID)
		}
	}
	return alone
}

// Uncovered lists the set's own requirements whose tests do not show each of
// met, not met and not shown, with what is lacking.
func Uncovered(set *ruleset.RuleSet, cases []Case) []string {
	seen := map[string]map[judge.Outcome]bool{}
	for _, t := range cases {
		if seen[t.Requirement] == nil {
			seen[t.Requirement] = map[judge.Outcome]bool{}
		}
		seen[t.Requirement][t.Want] = true
	}
	var lacking []string
	for _, q := range set.Own() {
		var outcomes []string
		for _, o := range []judge.Outcome{judge.Met, judge.NotMet, judge.NotShown} {
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
