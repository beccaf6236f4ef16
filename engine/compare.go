package engine

import (
	"cmp"
	"reflect"
	"slices"
)

// OutcomeChange is a requirement and part of which two checks state different
// things.
type OutcomeChange struct {
	Requirement string         `json:"requirement"`
	Subject     string         `json:"subject"`
	Differs     []string       `json:"differs"` // which members, as they are called in a record
	Before      *RecordOutcome `json:"before"`  // nil where only the other check states anything
	After       *RecordOutcome `json:"after"`
}

// turned tells whether the outcome is another or a finding counts in another way,
// and not only the values behind it.
func (c OutcomeChange) turned() bool {
	a, b := c.Before, c.After
	return a.Outcome != b.Outcome || a.accepted() != b.accepted() || b.finding() && a.Level != b.Level
}

// accepted tells whether a departure counts.
func (o *RecordOutcome) accepted() bool { return o.Departure != nil && o.Departure.Void == "" }

// Matters tells whether somebody has to look at a change: the outcome turned, or
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

func (o *RecordOutcome) finding() bool { return o.Outcome == NotMet || o.Outcome == NotShown }

// CompareOutcomes lists what two records state differently, by part and
// requirement.
func CompareOutcomes(before, after *Record) []OutcomeChange {
	a, b := before.outcomes(), after.outcomes()
	changes := []OutcomeChange{}
	for key, x := range a {
		y, ok := b[key]
		if !ok {
			changes = append(changes, OutcomeChange{key.id, key.subject, []string{"outcome"}, &x.RecordOutcome, nil})
			continue
		}
		if differs := x.differs(y); len(differs) > 0 {
			changes = append(changes, OutcomeChange{key.id, key.subject, differs, &x.RecordOutcome, &y.RecordOutcome})
		}
	}
	for key, y := range b {
		if _, ok := a[key]; !ok {
			changes = append(changes, OutcomeChange{key.id, key.subject, []string{"outcome"}, nil, &y.RecordOutcome})
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
	var names []string
	for _, m := range []struct {
		name string
		same bool
	}{
		{"outcome", o.Outcome == p.Outcome},
		{"level", o.Level == p.Level},
		{"measured", sameWritten(o.Measured, p.Measured)},
		{"limit", sameWritten(o.Limit, p.Limit)},
		{"margin_pct", sameWritten(o.MarginPct, p.MarginPct)},
		{"missing", slices.Equal(o.Missing, p.Missing)},
		{"departure", reflect.DeepEqual(o.Departure, p.Departure)},
		{"at", o.at == p.at},
	} {
		if !m.same {
			names = append(names, m.name)
		}
	}
	return names
}
