package record_test

import (
	"bytes"
	"encoding/json"
	"os"
	"slices"
	"strings"
	"testing"

	jsonpatch "github.com/evanphx/json-patch/v5"
	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"sunclause/engine/judge"
	"sunclause/engine/record"
	"sunclause/engine/ruleset"
	"sunclause/schema"
)

func decoded(t rapid.TB, raw []byte) *schema.Document {
	t.Helper()
	doc, err := schema.Decode("job.json", raw)
	if err != nil {
		t.Fatal(err)
	}
	return doc
}

func shedJSON(t testing.TB) []byte {
	t.Helper()
	raw, err := os.ReadFile("../../testdata/formats/job.json")
	if err != nil {
		t.Fatal(err)
	}
	return raw
}

// TestCompareMembers patches the small job, and looks at what is said of it.
func TestCompareMembers(t *testing.T) {
	type told struct{ change, name, words, before, after string }
	for what, c := range map[string]struct {
		patch string
		want  []told
	}{
		"nothing": {`[]`, nil},
		"a number": {
			`[{"op": "replace", "path": "/strings/1/modules_in_series", "value": 9}]`,
			[]told{{"changed", "strings.S2.modules_in_series", "modules in series", "/strings/1/modules_in_series", "/strings/1/modules_in_series"}},
		},
		"the same number written otherwise": {`[{"op": "replace", "path": "/site/temp_max_c", "value": 30.0}]`, nil},
		"a member added": {
			`[{"op": "add", "path": "/strings/0/mounting", "value": "on_roof"}]`,
			[]told{{"added", "strings.S1.mounting", "how the modules stand to the roof", "", "/strings/0/mounting"}},
		},
		"a member removed": {
			`[{"op": "remove", "path": "/project/premises"}]`,
			[]told{{"removed", "project.premises", "kind of premises", "/project/premises", ""}},
		},
		"a string put in front is one string, not all": {
			`[{"op": "add", "path": "/strings/0", "value": {"id": "S0", "module": "m1", "modules_in_series": 3}},
			  {"op": "replace", "path": "/strings/3/modules_in_series", "value": 5}]`,
			[]told{
				{"added", "strings.S0", "PV string", "", "/strings/0"},
				{"changed", "strings.S3.modules_in_series", "modules in series", "/strings/2/modules_in_series", "/strings/3/modules_in_series"},
			},
		},
		"strings in another order": {
			`[{"op": "move", "from": "/strings/2", "path": "/strings/0"}]`,
			[]told{{"reordered", "strings", "PV strings", "/strings", "/strings"}},
		},
		"a string taken out": {
			`[{"op": "remove", "path": "/strings/0"}]`,
			[]told{{"removed", "strings.S1", "PV string", "/strings/0", ""}},
		},
		"a datasheet": {
			`[{"op": "replace", "path": "/datasheets/modules/m1/voc_v", "value": 41}]`,
			[]told{{"changed", "datasheets.modules.m1.voc_v", "open-circuit voltage", "/datasheets/modules/m1/voc_v", "/datasheets/modules/m1/voc_v"}},
		},
		"a departure, which has no id, put in front": {
			`[{"op": "add", "path": "/handover/departures/0", "value": {"requirement": "formats/x", "reason": "r", "author": "a", "date": "2026-01-01"}}]`,
			[]told{{"added", "handover.departures[0]", "departure", "", "/handover/departures/0"}},
		},
		"a departure changed and one added": {
			`[{"op": "replace", "path": "/handover/departures/0/reason", "value": "other"},
			  {"op": "add", "path": "/handover/departures/-", "value": {"requirement": "formats/x", "reason": "r", "author": "a", "date": "2026-01-01"}}]`,
			[]told{
				{"changed", "handover.departures[0].reason", "why it is accepted", "/handover/departures/0/reason", "/handover/departures/0/reason"},
				{"added", "handover.departures[2]", "departure", "", "/handover/departures/2"},
			},
		},
	} {
		patch, err := jsonpatch.DecodePatch([]byte(c.patch))
		if err != nil {
			t.Fatal(what, err)
		}
		after, err := patch.Apply(shedJSON(t))
		if err != nil {
			t.Fatal(what, err)
		}
		var got []told
		for _, m := range record.CompareMembers(decoded(t, shedJSON(t)), decoded(t, after)) {
			got = append(got, told{m.Change, m.Name, m.Words, m.BeforeAt, m.AfterAt})
		}
		if d := cmp.Diff(c.want, got, cmp.AllowUnexported(told{})); d != "" {
			t.Errorf("%s: %s", what, d)
		}
	}
}

// TestCompareMembersLines makes sure that each side has its own line.
func TestCompareMembersLines(t *testing.T) {
	after := "\n\n" + strings.Replace(string(shedJSON(t)), `"modules_in_series": 10`, `"modules_in_series": 9`, 1)
	got := record.CompareMembers(decoded(t, shedJSON(t)), decoded(t, []byte(after)))
	if len(got) != 1 || got[0].BeforeLine != 15 || got[0].AfterLine != 17 {
		t.Errorf("%+v", got)
	}
}

// TestCompareMembersMirrors swaps the two documents: what was added is removed,
// and nothing else is said. Parts in another order are the same parts.
func TestCompareMembersMirrors(t *testing.T) {
	var tree map[string]any
	if err := json.Unmarshal(shedJSON(t), &tree); err != nil {
		t.Fatal(err)
	}
	rapid.Check(t, func(t *rapid.T) {
		a, b := drawn(t, tree, "a"), drawn(t, tree, "b")
		there, back := record.CompareMembers(a, b), record.CompareMembers(b, a)
		if len(record.CompareMembers(a, a)) != 0 {
			t.Fatal("a document differs from itself")
		}
		if bytes.Equal(a.Raw, b.Raw) != (len(there) == 0) {
			t.Fatalf("%d changes between\n%s\n%s", len(there), a.Raw, b.Raw)
		}
		opposite := map[string]string{record.Added: record.Removed, record.Removed: record.Added, record.Changed: record.Changed, record.Reordered: record.Reordered}
		if d := cmp.Diff(said(there, nil), said(back, opposite)); d != "" {
			t.Fatal(d)
		}
	})
}

// drawn is the small job with strings left out, in any order and of any length.
func drawn(t *rapid.T, tree map[string]any, label string) *schema.Document {
	strings := slices.Clone(tree["strings"].([]any))
	strings = rapid.Permutation(strings).Draw(t, label)[:rapid.IntRange(0, len(strings)).Draw(t, label)]
	for i, s := range strings {
		s := clone(s.(map[string]any))
		s["modules_in_series"] = rapid.IntRange(1, 3).Draw(t, label)
		strings[i] = s
	}
	job := clone(tree)
	job["strings"] = strings
	raw, err := json.Marshal(job)
	if err != nil {
		t.Fatal(err)
	}
	return decoded(t, raw)
}

func clone(m map[string]any) map[string]any {
	c := map[string]any{}
	for k, v := range m {
		c[k] = v
	}
	return c
}

func said(changes []record.MemberChange, as map[string]string) []string {
	all := []string{}
	for _, c := range changes {
		change := c.Change
		if as != nil {
			change = as[change]
		}
		all = append(all, change+" "+c.Name)
	}
	slices.Sort(all)
	return all
}

// TestCompareOutcomes looks at which changes matter.
func TestCompareOutcomes(t *testing.T) {
	shall := record.Outcome{Requirement: "a/b", Level: ruleset.Shall, Outcome: judge.NotMet}
	with := func(change func(*record.Outcome)) *record.Outcome {
		o := shall
		change(&o)
		return &o
	}
	met := with(func(o *record.Outcome) { o.Outcome = judge.Met })
	for what, c := range map[string]struct {
		before, after *record.Outcome
		differs       []string
		matters       bool
	}{
		"the same":                {&shall, &shall, nil, false},
		"another outcome":         {&shall, met, []string{"outcome"}, true},
		"another level":           {&shall, with(func(o *record.Outcome) { o.Level = ruleset.Should }), []string{"level"}, true},
		"a level that met has":    {met, with(func(o *record.Outcome) { o.Outcome, o.Level = judge.Met, ruleset.Should }), []string{"level"}, false},
		"a departure":             {&shall, with(func(o *record.Outcome) { o.Departure = &judge.Departure{} }), []string{"departure"}, true},
		"a departure that ended":  {&shall, with(func(o *record.Outcome) { o.Departure = &judge.Departure{Void: "it ended"} }), []string{"departure"}, false},
		"another value":           {&shall, with(func(o *record.Outcome) { o.Measured = &record.Measured{Value: 1.0} }), []string{"measured"}, false},
		"a finding that comes":    {nil, &shall, []string{"outcome"}, true},
		"a finding that goes":     {&shall, nil, []string{"outcome"}, true},
		"judged anew, and met":    {nil, met, []string{"outcome"}, false},
		"met, and judged no more": {met, nil, []string{"outcome"}, false},
	} {
		got := record.CompareOutcomes(recordWith(c.before), recordWith(c.after))
		if len(got) == 0 && c.differs == nil {
			continue
		}
		if len(got) != 1 || !slices.Equal(got[0].Differs, c.differs) || got[0].Matters() != c.matters {
			t.Errorf("%s: %+v", what, got)
		}
	}
}

func recordWith(o *record.Outcome) *record.Record {
	if o == nil {
		return &record.Record{}
	}
	return &record.Record{Parts: []record.Part{{Subject: "S1", Outcomes: []record.Outcome{*o}}}}
}
