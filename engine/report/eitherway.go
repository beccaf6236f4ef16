package report

import (
	"fmt"
	"slices"
	"strings"

	"sunclause/engine/judge"
)

// EitherWay is what is met although it is not known to apply, because the same
// members are missing: what is asked for is there in any case.
type EitherWay struct {
	Lacks        string   // what would have to be stated to know whether it applies
	Says         string   // how many requirements are met, and at which parts
	Requirements []string // their ids
}

// AllEitherWay lists what holds either way by what is missing, in the order of
// the document.
func AllEitherWay(r *judge.Result) []EitherWay {
	var met []judge.Judgment
	for _, j := range r.Judgments {
		if j.EitherWay {
			met = append(met, j)
		}
	}
	groups := alike(met, func(j judge.Judgment) string { return fmt.Sprint(j.Missing) })
	all := make([]EitherWay, len(groups))
	for i, group := range groups {
		all[i] = eitherWayOf(group)
	}
	return all
}

// alike groups what has the same key, in the order in which each key came first.
func alike[T any](all []T, key func(T) string) [][]T {
	var groups [][]T
	index := map[string]int{}
	for _, one := range all {
		k := key(one)
		i, seen := index[k]
		if !seen {
			i = len(groups)
			index[k] = i
			groups = append(groups, nil)
		}
		groups[i] = append(groups[i], one)
	}
	return groups
}

func eitherWayOf(group []judge.Judgment) EitherWay {
	var ids, parts []string
	for _, j := range group {
		ids, parts = append(ids, j.Requirement.ID), append(parts, j.Subject.Name)
	}
	slices.Sort(ids)
	ids = slices.Compact(ids)
	slices.Sort(parts)
	are := " are met at "
	if len(ids) == 1 {
		are = " is met at "
	}
	return EitherWay{upperFirst(group[0].SayMissing()), judge.Many(len(ids), "requirement") + are + judge.Some(slices.Compact(parts)), ids}
}

// eitherWay lists what is met although it is not known to apply.
func (p *page) eitherWay(r *judge.Result) {
	all := AllEitherWay(r)
	if len(all) == 0 {
		return
	}
	p.line(0, bold, "Met whether they apply or not")
	for _, e := range all {
		p.line(2, plain, e.Lacks+": "+e.Says)
		p.line(4, faint, strings.Join(e.Requirements, ", "))
	}
	p.blank()
}
