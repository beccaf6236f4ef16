package engine

import (
	"fmt"
	"strings"
)

// comparisonList is what the general module holds every part to: the limits of
// rows and the conditions of requirements. Hundreds of requirements share a
// condition; each distinct one is asked once, by its number.
type comparisonList struct {
	numbers map[string]int
	plain   map[string]any // lists by comparison: a fact with a plain value
	between []any          // a fact with another, or with one of the whole installation
}

// asked are the comparisons that decide one requirement.
type asked struct {
	when []comparisonAsked
	row  comparisonAsked // number 0 for a Rego rule
}

// comparisonAsked is a comparison by its number. One that looks only at the
// whole installation is asked once, and not for every part.
type comparisonAsked struct {
	number int
	whole  bool
}

// brokenKey names a comparison that one part does not keep.
type brokenKey struct {
	number  int
	subject string
}

func (a comparisonAsked) key(subject string) brokenKey {
	if a.whole {
		subject = wholeInstallation
	}
	return brokenKey{a.number, subject}
}

// number collects the comparisons of the set.
func (s *RuleSet) number() *comparisonList {
	c := &comparisonList{numbers: map[string]int{}, plain: map[string]any{}, between: []any{}}
	for _, name := range allComparisons {
		c.plain[name] = []any{}
	}
	s.asked = make(map[*Requirement]asked, len(s.Requirements))
	for _, r := range s.Requirements {
		var a asked
		for _, w := range r.When {
			a.when = append(a.when, c.add(s, r.Subject, w))
		}
		if !r.Rego {
			a.row = c.add(s, r.Subject, Condition{r.Measure, r.Comparison, r.Limit})
		}
		s.asked[r] = a
	}
	return c
}

// add numbers a comparison, from 1.
func (c *comparisonList) add(s *RuleSet, subject string, w Condition) comparisonAsked {
	fact, whole := strings.CutPrefix(w.Fact, wholeInstallation+".")
	if whole = whole && w.Limit.Fact == ""; whole {
		subject, w.Fact = wholeInstallation, fact
	}
	key := fmt.Sprintf("%s %s %#v", subject, w.Fact+" "+w.Comparison, w.Limit)
	n, known := c.numbers[key]
	if !known {
		n = len(c.numbers) + 1
		c.numbers[key] = n
		c.list(s, n, subject, w)
	}
	return comparisonAsked{n, whole}
}

// list hands a comparison to the general module.
func (c *comparisonList) list(s *RuleSet, number int, subject string, w Condition) {
	d := map[string]any{"number": number, "subject": subject}
	if w.Limit.Fact != "" {
		d["comparison"], d["fact"], d["limit"] = w.Comparison, factPath(w.Fact), factPath(w.Limit.Fact)
		c.between = append(c.between, d)
		return
	}
	d["fact"], d["limit"] = w.Fact, forRego(s.operandValue(w.Limit))
	same, _ := c.plain[w.Comparison].([]any)
	c.plain[w.Comparison] = append(same, d)
}

// factPath tells the general module whether a fact is the subject's own or the
// installation's.
func factPath(name string) map[string]any {
	if whole, ok := strings.CutPrefix(name, wholeInstallation+"."); ok {
		return map[string]any{"installation": whole}
	}
	return map[string]any{"own": name}
}
