package report

import (
	"cmp"
	"fmt"
	"slices"

	"sunclause/engine/judge"
)

// htmlFirst is one thing to put right first: a requirement, the part that breaks
// it, and how much else what is to do puts right.
type htmlFirst struct {
	Part, Anchor, Title, Remedy string
	More                        string
}

// mostFirst is how many things stand under what to put right first.
const mostFirst = 8

// first lists what makes the check fail, a line for each thing to do.
func (p *htmlReport) first(r *judge.Result, o Options) {
	anchors := map[string]string{}
	for _, part := range p.Parts {
		anchors[part.Name] = part.Anchor
	}
	all := putRightFirst(r, o)
	p.Rest = max(0, len(all)-mostFirst)
	for _, c := range all[:len(all)-p.Rest] {
		name := upperFirst(c.worst.Subject.Name)
		p.First = append(p.First, htmlFirst{name, anchors[name], c.worst.Requirement.Title, whatToDo(c.worst), c.sayMore()})
	}
}

// putRightFirst lists what makes the check fail. What is not met stands before
// what is not shown; then the rooms take turns, each with what its set has first, so
// that one with much wrong does not hide the others.
func putRightFirst(r *judge.Result, o Options) []failure {
	all := groupFailures(r, o)
	slices.SortStableFunc(all, func(a, b failure) int { return worst(a.worst, b.worst, o) })
	placed := map[[2]any]int{}
	for i := range all {
		of := [2]any{all[i].worst.Requirement.Room, badness(all[i].worst, o)}
		all[i].place = placed[of]
		placed[of]++
	}
	slices.SortStableFunc(all, func(a, b failure) int {
		return cmp.Or(cmp.Compare(badness(a.worst, o), badness(b.worst, o)), cmp.Compare(a.place, b.place))
	})
	return all
}

// failure is one thing that makes the check fail: a requirement that is not met,
// or members that are not stated.
type failure struct {
	worst judge.Judgment
	more  int // further parts that break it, or outcomes that lack the same
	place int // the place among those of its room
}

func (c failure) sayMore() string {
	switch {
	case c.more == 0:
		return ""
	case c.worst.Outcome == judge.NotShown:
		return fmt.Sprintf("and %d more because the same is missing", c.more)
	}
	return fmt.Sprintf("and at %d more", c.more)
}

// failureKey is the same for judgments that are put right together: what is not met,
// by requirement; what is not shown, by what is missing.
func failureKey(j judge.Judgment) string {
	if j.Outcome == judge.NotShown {
		return fmt.Sprint(j.Missing)
	}
	return j.Requirement.ID
}

// groupFailures lists what makes the check fail, each with the part that stands
// worst.
func groupFailures(r *judge.Result, o Options) []failure {
	var all []failure
	index := map[string]int{}
	for _, j := range r.Judgments {
		if !j.FailsCheck(o.Strict) || onlyMissingSections(r, j) {
			continue
		}
		i, seen := index[failureKey(j)]
		if !seen {
			index[failureKey(j)] = len(all)
			all = append(all, failure{worst: j})
			continue
		}
		all[i].more++
		if standsWorse(j, all[i].worst, o) {
			all[i].worst = j
		}
	}
	return all
}

// standsWorse compares two judgments that are put right alike.
func standsWorse(a, b judge.Judgment, o Options) bool {
	if x, y := badness(a, o), badness(b, o); x != y {
		return x < y
	}
	return marginOf(a) < marginOf(b)
}
