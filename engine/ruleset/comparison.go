package ruleset

import (
	"fmt"
	"strings"

	"sunclause/engine/catalogue"
)

// Comparison holds one fact of every part of a subject to a limit. Hundreds of
// requirements share a condition; each distinct comparison of a set stands once,
// by its number.
type Comparison struct {
	Number  int                // among those of the set, from 0
	Subject *catalogue.Subject // whose parts are compared; the installation when the comparison looks at nothing else
	Fact    Reading
	How     string
	Limit   catalogue.Value // when LimitFact is nil
	// LimitFact is the fact that limits, where the limit is no plain value.
	LimitFact *Reading
}

// Reading is a fact to be read: of the part, or of the installation.
type Reading struct {
	Whole bool
	*catalogue.Fact
}

// compared resolves a condition against the facts there are, which it has been
// held to, and finds it among the comparisons of the set.
func (s *RuleSet) compared(subject string, c Condition) *Comparison {
	own, _ := catalogue.Of(subject)
	out := Comparison{Subject: own, Fact: readingOf(own, c.Fact), How: c.Comparison}
	if c.Limit.Fact != "" {
		limit := readingOf(own, c.Limit.Fact)
		out.LimitFact = &limit
	} else {
		out.Limit = catalogue.ValueOf(s.Value(c.Limit))
		if out.Fact.Whole {
			out.Subject = catalogue.Installation()
		}
	}
	key := fmt.Sprintf("%s %s %s %#v", out.Subject.Name, strings.TrimPrefix(c.Fact, catalogue.Whole+"."), c.Comparison, c.Limit)
	if out.Subject == own {
		key = fmt.Sprintf("%s %s %s %#v", subject, c.Fact, c.Comparison, c.Limit)
	}
	if known, ok := s.comparisons[key]; ok {
		return known
	}
	out.Number = len(s.comparisons)
	s.comparisons[key] = &out
	return &out
}

func readingOf(own *catalogue.Subject, name string) Reading {
	of, f, _ := own.Find(name)
	return Reading{of.Name == catalogue.Whole, f}
}

// resolve gives every requirement the comparisons that decide it.
func (s *RuleSet) resolve() {
	s.comparisons = map[string]*Comparison{}
	for i, r := range s.Requirements {
		resolved := *r
		resolved.when, resolved.row = nil, nil
		for _, w := range r.When {
			resolved.when = append(resolved.when, s.compared(r.Subject, w))
		}
		if !r.Rego {
			resolved.row = s.compared(r.Subject, Condition{r.Measure, r.Comparison, r.Limit})
		}
		s.Requirements[i], s.byID[r.ID] = &resolved, &resolved
	}
}
