package record

import (
	"cmp"
	"reflect"
	"slices"

	"sunclause/engine/judge"
)

// OutcomeChange is a requirement and part of which two checks state different
// things.
type OutcomeChange struct {
	Requirement string   `json:"requirement"`
	Subject     string   `json:"subject"`
	Differs     []string `json:"differs"` // which members, as they are called in a record
	Before      *Outcome `json:"before"`  // nil where only the other check states anything
	After       *Outcome `json:"after"`
}

// turned reports whether the outcome is another or a finding counts in another way,
// and not only the values behind it.
func (c OutcomeChange) turned() bool {
	a, b := c.Before, c.After
	return a.Outcome != b.Outcome || a.Departure.Counts() != b.Departure.Counts() || b.finding() && a.Level != b.Level
}

// Matters reports whether somebody has to look at a change: the outcome turned, or
// only one side judges, and it finds something.
func (c OutcomeChange) Matters() bool {
	switch {
	case c.Before == nil:
		return c.After.finding()
	case c.After == nil:
		return c.Before.finding()
	}
	return c.turned()
}

func (o *Outcome) finding() bool { return o.Outcome == judge.NotMet || o.Outcome == judge.NotShown }

// CompareOutcomes lists what two records state differently, by part and
// requirement.
func CompareOutcomes(before, after *Record) []OutcomeChange {
	a, b := before.outcomes(), after.outcomes()
	changes := []OutcomeChange{}
	for k, x := range a {
		y, ok := b[k]
		if !ok {
			changes = append(changes, OutcomeChange{k.requirement, k.subject, []string{"outcome"}, &x.stated, nil})
			continue
		}
		if differs := x.differs(y); len(differs) > 0 {
			changes = append(changes, OutcomeChange{k.requirement, k.subject, differs, &x.stated, &y.stated})
		}
	}
	for k, y := range b {
		if _, ok := a[k]; !ok {
			changes = append(changes, OutcomeChange{k.requirement, k.subject, []string{"outcome"}, nil, &y.stated})
		}
	}
	slices.SortFunc(changes, func(x, y OutcomeChange) int {
		return cmp.Or(cmp.Compare(x.Subject, y.Subject), cmp.Compare(x.Requirement, y.Requirement))
	})
	return changes
}

// differs names the members in which two outcomes differ. A value is compared
// as it is written: a list read from a record and one that was derived are the
// same.
func (o statedOutcome) differs(p statedOutcome) []string {
	a, b := o.stated, p.stated
	var names []string
	for _, m := range []struct {
		name string
		same bool
	}{
		{"outcome", a.Outcome == b.Outcome},
		{"level", a.Level == b.Level},
		{"measured", sameWritten(a.Measured, b.Measured)},
		{"limit", sameWritten(a.Limit, b.Limit)},
		{"margin_pct", sameWritten(a.MarginPct, b.MarginPct)},
		{"missing", slices.Equal(a.Missing, b.Missing)},
		{"departure", reflect.DeepEqual(a.Departure, b.Departure)},
		{"at", o.at == p.at},
	} {
		if !m.same {
			names = append(names, m.name)
		}
	}
	return names
}
