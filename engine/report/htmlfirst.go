package report

import (
	"slices"
	"sort"

	"sunclause/engine"
)

// htmlFirst is one thing to put right first: a requirement, the part that breaks
// it, and how many parts more do.
type htmlFirst struct {
	Part, Anchor, Title, Remedy string
	More                        int
}

// mostFirst is how many things stand under what to put right first.
const mostFirst = 8

// first lists what makes the check fail, a line for each requirement. What is
// not met stands before what is not shown; then each room has its turn, so that
// one with much wrong does not hide the others.
func (p *htmlReport) first(r *engine.Result, o Options) {
	anchors := map[string]string{}
	for _, part := range p.Parts {
		anchors[part.Name] = part.Anchor
	}
	all := countingOnce(r, o)
	takeTurns(all, o)
	for _, c := range all {
		if len(p.First) == mostFirst {
			p.Rest = len(all) - mostFirst
			break
		}
		name := upperFirst(c.worst.Subject.Name)
		p.First = append(p.First, htmlFirst{name, anchors[name], c.worst.Requirement.Title, whatToDo(c.worst), c.more})
	}
}

// counting is a requirement that makes the check fail.
type counting struct {
	worst engine.Judgment
	more  int // further parts that break it
	turn  int // the place among those of its room
}

// countingOnce lists the requirements that make the check fail, each with the
// part that stands worst.
func countingOnce(r *engine.Result, o Options) []counting {
	var all []counting
	index := map[string]int{}
	for _, j := range r.Judgments {
		if !j.Counts(o.Strict) || waits(r, j) {
			continue
		}
		i, seen := index[j.Requirement.ID]
		if !seen {
			index[j.Requirement.ID] = len(all)
			all = append(all, counting{worst: j})
			continue
		}
		all[i].more++
		if standsWorse(j, all[i].worst, o) {
			all[i].worst = j
		}
	}
	return all
}

// standsWorse compares two judgments of one requirement.
func standsWorse(a, b engine.Judgment, o Options) bool {
	if x, y := badness(a, o), badness(b, o); x != y {
		return x < y
	}
	return marginOf(a) < marginOf(b)
}

// takeTurns puts the first requirement of each room before the second of any.
func takeTurns(all []counting, o Options) {
	turns := map[[2]any]int{}
	for i := range all {
		of := [2]any{all[i].worst.Requirement.Room, badness(all[i].worst, o)}
		all[i].turn = turns[of]
		turns[of]++
	}
	key := func(c counting) []int {
		return []int{badness(c.worst, o), c.turn, harm(c.worst.Requirement.Room)}
	}
	sort.SliceStable(all, func(a, b int) bool { return slices.Compare(key(all[a]), key(all[b])) < 0 })
}
