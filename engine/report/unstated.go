package report

import (
	"encoding/json"
	"slices"
	"strings"

	"sunclause/engine"
)

// unstatedMember is a whole member of the document that is not there, with how
// many requirements are not shown for want of it.
type unstatedMember struct {
	Name  string
	Count int
}

// unstated finds the members of which the document says nothing at all. A bare
// document lacks most of them, and to list every requirement that asks for one
// would bury the rest.
type unstated struct {
	members []unstatedMember
	missing map[string]bool
}

// unstatedOf finds them for a result.
func unstatedOf(r *engine.Result) unstated {
	u := unstated{missing: map[string]bool{}}
	var there map[string]json.RawMessage
	counts := map[string]int{}
	for _, j := range r.Judgments {
		if j.Outcome != engine.NotShown {
			continue
		}
		if there == nil {
			if json.Unmarshal(r.Document.Raw, &there) != nil {
				return u // it is no JSON: then nothing is left out
			}
		}
		for name := range topMembers(j) {
			if _, stated := there[name]; !stated {
				u.missing[name] = true
			}
		}
		if name := u.lacks(j); name != "" {
			counts[name]++
		}
	}
	for name, n := range counts {
		u.members = append(u.members, unstatedMember{name, n})
	}
	slices.SortFunc(u.members, func(a, b unstatedMember) int {
		if a.Count != b.Count {
			return b.Count - a.Count
		}
		return strings.Compare(a.Name, b.Name)
	})
	return u
}

// topMembers are the first members of the pointers that a judgment lacks.
func topMembers(j engine.Judgment) map[string]bool {
	names := map[string]bool{}
	for _, m := range j.Missing {
		if rest, ok := strings.CutPrefix(m, "/"); ok {
			name, _, _ := strings.Cut(rest, "/")
			names[name] = true
		}
	}
	return names
}

// lacks names the member for want of which a judgment is not shown, when the
// document says nothing at all of it; of several the first by name.
func (u unstated) lacks(j engine.Judgment) string {
	if j.Outcome != engine.NotShown {
		return ""
	}
	var names []string
	for name := range topMembers(j) {
		if u.missing[name] {
			names = append(names, name)
		}
	}
	if len(names) == 0 {
		return ""
	}
	return slices.Min(names)
}
