package trial

import (
	"context"
	"maps"

	"sunclause/engine/judge"
	"sunclause/engine/ruleset"
	"sunclause/facts"
)

// pending is a mutant that no case noticed so far.
type pending struct {
	mutant
	row *ruleset.Requirement
	at  int // among all mutations
}

// tryOn judges the facts of a document by each mutant, and marks those by which
// there would be other findings. It hands back the rest.
func tryOn(ctx context.Context, set *ruleset.RuleSet, f *facts.Facts, left []pending, all []Mutation) ([]pending, error) {
	sound := map[string]map[string]judge.Outcome{}
	var rest []pending
	for _, p := range left {
		if p.facts != nil { // the document would be another
			rest = append(rest, p)
			continue
		}
		before, known := sound[p.row.ID]
		if !known {
			var err error
			if before, err = findings(ctx, set.Only(*p.row), f); err != nil {
				return nil, err
			}
			sound[p.row.ID] = before
		}
		after, err := findings(ctx, p.set, f)
		if err != nil {
			return nil, err
		}
		if maps.Equal(before, after) {
			rest = append(rest, p)
		} else {
			all[p.at].Noticed = true
		}
	}
	return rest, nil
}

// findings are those of the one requirement of a set, by part.
func findings(ctx context.Context, set *ruleset.RuleSet, f *facts.Facts) (map[string]judge.Outcome, error) {
	judged, err := judge.Requirement(ctx, set, f, set.Requirements[0])
	found := map[string]judge.Outcome{}
	for _, j := range judged {
		if j.IsFinding() {
			found[j.Subject.ID] = j.Outcome
		}
	}
	return found, err
}
