package trial

import (
	"fmt"
	"maps"
	"slices"
	"strings"

	"sunclause/engine/catalogue"
	"sunclause/engine/judge"
	"sunclause/engine/ruleset"
	"sunclause/facts"
)

// requirements reads the tests of requirements, in the order of the file.
func (r *reader) requirements(file testsFile) {
	for _, m := range r.src.Members("/requirements") {
		t := file.Requirements[m.Name]
		q, ok := r.set.Requirement(m.Name)
		if !ok {
			r.refuse(t.At(), fmt.Sprintf("the rule set has no requirement %q", m.Name), r.set.NearestID(m.Name))
			continue
		}
		r.requirement(q, t)
	}
}

// givenFacts are what a case puts in: facts by the names that a row has for them,
// and other parts, by list.
type givenFacts struct {
	facts  assignment
	others map[string]any
}

// requirement reads the cases of one requirement. Each is a change of an earlier
// one: of the first that is met up to the first that is not, and of that one from
// there on.
func (r *reader) requirement(q *ruleset.Requirement, t requirementFile) {
	base := &givenFacts{}
	first := true
	for _, of := range []struct {
		outcome judge.Outcome
		cases   any
	}{{judge.Met, t.Met}, {judge.NotMet, t.NotMet}, {judge.NotApplicable, t.NotApplicable}, {judge.NotShown, t.NotShown}} {
		for i, c := range each(of.cases, t.Member(string(of.outcome))) {
			given, says := r.changed(q, base, c)
			if first || of.outcome == judge.NotMet && i == 0 {
				base, first = given, false
			}
			r.cases = append(r.cases, Case{
				Requirement: q.ID, Says: says, Want: of.outcome, File: r.src.Name, Line: r.src.Position(c.at).Line,
				facts: r.factsOf(q, given, c.at), given: given.facts,
			})
		}
	}
}

// change is a case as it stands: what is different in it, or the name of the one
// fact that it lacks.
type change struct {
	at string // JSON pointer
	is any
}

// each is a case, or every one of a list.
func each(cases any, at string) []change {
	if cases == nil {
		return nil
	}
	list, isList := cases.([]any)
	if !isList {
		return []change{{at, cases}}
	}
	all := make([]change, len(list))
	for i, one := range list {
		all[i] = change{fmt.Sprintf("%s/%d", at, i), one}
	}
	return all
}

// changed makes what a case puts in of what another does, and says what it is about:
// in its own words, or else what is different.
func (r *reader) changed(q *ruleset.Requirement, base *givenFacts, c change) (given *givenFacts, says string) {
	given = &givenFacts{assignment{}, base.others}
	maps.Copy(given.facts, base.facts)
	members, _ := c.is.(map[string]any)
	var different []string
	for _, name := range append(namesIn(c.is), namesIn(members["without"])...) {
		if _, has := given.facts[name]; !has {
			r.refuse(c.at, fmt.Sprintf("%s is left out, and what the case is a change of does not have it", name),
				catalogue.DidYouMean(name, slices.Sorted(maps.Keys(given.facts))))
		}
		delete(given.facts, name)
		different = append(different, "without "+name)
	}
	if others, ok := members["others"].(map[string]any); ok {
		given.others = others
	}
	of, _ := catalogue.Of(q.Subject)
	for _, name := range slices.Sorted(maps.Keys(members)) {
		if slices.Contains([]string{"says", "without", "others"}, name) {
			continue
		}
		if v, ok := r.fact(of, name, members[name], c.at); ok {
			if !of.Many {
				name = strings.TrimPrefix(name, catalogue.Whole+".")
			}
			given.facts[name] = v
			different = append(different, fmt.Sprintf("%s %v", name, v))
		}
	}
	if words, ok := members["says"].(string); ok {
		return given, words
	}
	return given, strings.Join(different, ", ")
}

// namesIn is a name, or each of a list.
func namesIn(v any) []string {
	if name, is := v.(string); is {
		return []string{name}
	}
	names, _ := ruleset.Plain(v).([]string)
	return names
}

// fact is the plain value of a fact that a case gives; ok is false where there is no
// such fact, or it is of another kind.
func (r *reader) fact(of *catalogue.Subject, name string, v any, at string) (plain any, ok bool) {
	in, fact, ok := of.Find(name)
	switch plain = ruleset.Plain(v); {
	case !ok:
		r.refuse(at+"/"+name, fmt.Sprintf("%s have no fact called %q", in.Name, name), catalogue.DidYouMean(name, in.FactNames()))
	case catalogue.ValueOf(plain).Kind != fact.Kind:
		r.refuse(at+"/"+name, fmt.Sprintf("%s is a %s", name, fact.Kind), "")
		return nil, false
	}
	return plain, ok
}

// tried is the id of the subject that a case is about.
const tried = "tried"

// factsOf makes the facts that a case puts in: one subject, and what else it
// names. Lists that it does not name are stated and empty.
func (r *reader) factsOf(q *ruleset.Requirement, given *givenFacts, at string) *facts.Facts {
	f := partWith(q, given.facts)
	for name, list := range given.others {
		of, ok := catalogue.Of(name)
		at := at + "/others/" + name
		if !ok || !of.Many {
			r.refuse(at, fmt.Sprintf("there is no list of facts called %q", name), catalogue.DidYouMean(name, catalogue.Names()))
			continue
		}
		parts, _ := list.([]any)
		for i, p := range parts {
			part, _ := p.(map[string]any)
			id, _ := part["id"].(string)
			of.Put(f, id, r.factsOfPart(of, part, fmt.Sprintf("%s/%d", at, i)))
		}
	}
	return f
}

// factsOfPart are the facts that another part is given; those not named stay unknown.
func (r *reader) factsOfPart(of *catalogue.Subject, part map[string]any, at string) map[string]any {
	plain := map[string]any{}
	for name, v := range part {
		if name == "id" {
			continue
		}
		if v, ok := r.fact(of, name, v, at); ok {
			plain[name] = v
		}
	}
	return plain
}
