package report

import (
	"slices"
	"strings"

	"sunclause/engine/judge"
	"sunclause/facts"
	"sunclause/facts/working"
)

// A document that has only been begun says nothing of whole rooms. Hundreds of
// requirements then wait for a few members; they are counted by what they wait
// for, so that the findings of what is stated can be seen.

// Unstated is a whole member of the document, or a whole list of parts, that is
// not stated, and how many requirements wait for it.
type Unstated struct {
	Member       string // as in earthing, or storage.batteries
	List         bool   // of parts, for which an empty list says that there are none
	Requirements int
}

// AllUnstated lists what is not stated at all, what most waits for first.
func AllUnstated(r *judge.Result) []Unstated {
	waiting := map[string]map[string]bool{}
	lists := map[string]bool{}
	for _, j := range r.Judgments {
		for _, m := range j.Missing {
			member, list := unstated(r, m)
			if member == "" || j.Outcome != judge.NotShown {
				continue
			}
			if waiting[member] == nil {
				waiting[member] = map[string]bool{}
			}
			waiting[member][j.Requirement.ID] = true
			lists[member] = list
		}
	}
	var all []Unstated
	for member, ids := range waiting {
		all = append(all, Unstated{member, lists[member], len(ids)})
	}
	slices.SortFunc(all, func(a, b Unstated) int {
		if a.Requirements != b.Requirements {
			return b.Requirements - a.Requirements
		}
		return strings.Compare(a.Member, b.Member)
	})
	return all
}

// unstated names the room, or else the list of parts, that has to be there
// before a member that is not stated can be; "" when both are.
func unstated(r *judge.Result, gap working.Gap) (member string, list bool) {
	pointer := gap.At
	if !strings.HasPrefix(pointer, "/") || gap.Why != working.NotStated {
		return "", false
	}
	room, rest, _ := strings.Cut(pointer[1:], "/")
	if !r.Document.Has("/" + room) {
		return room, isList(pointer) && rest == ""
	}
	if rest != "" && isList(pointer) && !r.Document.Has(pointer) {
		return room + "." + rest, true
	}
	return "", false
}

// isList reports whether a JSON pointer is that of a list of parts.
func isList(pointer string) bool {
	for _, at := range facts.Lists {
		if at == pointer {
			return true
		}
	}
	return false
}

// adviceOn says what to write where there are no parts of a kind.
func adviceOn(all []Unstated) string {
	if !slices.ContainsFunc(all, func(u Unstated) bool { return u.List }) {
		return ""
	}
	return "Where there are no such parts, state an empty list: []. What is left out is not known."
}

// onlyMissingSections reports whether a judgment waits for nothing but what is not
// stated at all.
func onlyMissingSections(r *judge.Result, j judge.Judgment) bool {
	if j.Outcome != judge.NotShown || len(j.Missing) == 0 {
		return false
	}
	return !slices.ContainsFunc(j.Missing, func(m working.Gap) bool {
		member, _ := unstated(r, m)
		return member == ""
	})
}

// unstated lists what is not stated at all, with what to write when there is none.
func (p *page) unstated(r *judge.Result) {
	all := AllUnstated(r)
	if len(all) == 0 {
		return
	}
	p.line(0, bold, "Nothing is stated yet of")
	for _, u := range all {
		p.line(2, doubt, u.Member+": "+judge.Many(u.Requirements, "requirement")+" not shown without it")
	}
	if advice := adviceOn(all); advice != "" {
		p.line(2, plain, advice)
	}
	if !p.options.All {
		p.line(2, plain, "What waits for nothing else is not listed below; --all lists it.")
	}
	p.blank()
}
