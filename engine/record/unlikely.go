package record

import (
	"cmp"
	"encoding/json"
	"reflect"
	"slices"

	"sunclause/engine/judge"
)

// Unlikely is a value at which somebody has to look again.
type Unlikely struct {
	At        string           `json:"at"`        // JSON pointer
	Name      string           `json:"name"`      // as people say it, parts by their ids
	Value     json.Number      `json:"value"`     // as it is written
	Plausible string           `json:"plausible"` // the values that are believed, in words
	Departure *judge.Departure `json:"departure,omitempty"`
}

func unlikelyOf(r *judge.Result) []Unlikely {
	all := make([]Unlikely, len(r.Unlikely))
	for i, u := range r.Unlikely {
		all[i] = Unlikely{u.At, u.Name, json.Number(u.Value), u.Plausible, u.Departure}
	}
	return all
}

// UnlikelyChange is an unlikely value that two checks state differently.
type UnlikelyChange struct {
	Name    string    `json:"name"`
	Differs []string  `json:"differs"` // which members, as they are called in a record; unlikely where only one check has it
	Before  *Unlikely `json:"before"`
	After   *Unlikely `json:"after"`
}

// Matters reports whether somebody has to look at a change: the value has become
// unlikely or is so no more, or was accepted or is so no more.
func (c UnlikelyChange) Matters() bool {
	return c.Before == nil || c.After == nil || c.Before.Departure.Counts() != c.After.Departure.Counts()
}

// CompareUnlikely lists the unlikely values that two records state differently,
// by name.
func CompareUnlikely(before, after *Record) []UnlikelyChange {
	changes := []UnlikelyChange{}
	for i := range before.Unlikely {
		x := &before.Unlikely[i]
		if y := after.unlikely(x.Name); y == nil {
			changes = append(changes, UnlikelyChange{x.Name, []string{"unlikely"}, x, nil})
		} else if differs := x.differs(y); len(differs) > 0 {
			changes = append(changes, UnlikelyChange{x.Name, differs, x, y})
		}
	}
	for i := range after.Unlikely {
		if y := &after.Unlikely[i]; before.unlikely(y.Name) == nil {
			changes = append(changes, UnlikelyChange{y.Name, []string{"unlikely"}, nil, y})
		}
	}
	slices.SortStableFunc(changes, func(a, b UnlikelyChange) int { return cmp.Compare(a.Name, b.Name) })
	return changes
}

// unlikely finds an unlikely value by name; nil where there is none.
func (rec *Record) unlikely(name string) *Unlikely {
	i := slices.IndexFunc(rec.Unlikely, func(u Unlikely) bool { return u.Name == name })
	if i < 0 {
		return nil
	}
	return &rec.Unlikely[i]
}

func (u *Unlikely) differs(v *Unlikely) []string {
	var names []string
	for _, m := range []struct {
		name string
		same bool
	}{
		{"value", u.Value == v.Value},
		{"plausible", u.Plausible == v.Plausible},
		{"departure", reflect.DeepEqual(u.Departure, v.Departure)},
		{"at", u.At == v.At},
	} {
		if !m.same {
			names = append(names, m.name)
		}
	}
	return names
}
