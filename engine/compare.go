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

// Turned tells whether the outcome is another or counts in another way, and not
// only the values behind it.
func (c OutcomeChange) Turned() bool {
	a, b := c.Before, c.After
	return a == nil || b == nil || a.Outcome != b.Outcome || a.Level != b.Level || a.accepted() != b.accepted()
}

// accepted tells whether a departure counts.
func (o *RecordOutcome) accepted() bool { return o.Departure != nil && o.Departure.Void == "" }

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
