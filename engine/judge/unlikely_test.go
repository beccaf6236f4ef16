package judge_test

import (
	"context"
	"fmt"
	"strings"
	"testing"

	"sunclause/engine/judge"
	"sunclause/engine/ruleset"
	"sunclause/policies"
	"sunclause/schema"
)

// TestUnlikelyFailsUntilDepartedFrom holds that a value beyond what is plausible
// makes a check fail by whatever rule set, until a departure on its member counts.
func TestUnlikelyFailsUntilDepartedFrom(t *testing.T) {
	set, err := ruleset.Load(context.Background(), policies.FS, "../../testdata/formats/rules")
	if err != nil {
		t.Fatal(err)
	}
	const job = `{"project": {"reference": "r", "stage": "design", "design_date": "2026-03-01", "country": "NO"}, "isolators": [], "site": {"altitude_m": %s}, "handover": {"departures": [%s]}}`
	departure := func(member, until string) string {
		return fmt.Sprintf(`{"member": %q, "value": 2400, "reason": "a pass in the mountains", "author": "surveyor", "date": "2026-03-01"%s}`, member, until)
	}
	for what, c := range map[string]struct {
		altitude, departures string
		unlikely             int
		fails                bool
		note                 string
	}{
		"plausible":              {"1999", "", 0, false, ""},
		"unlikely":               {"2400", "", 1, true, ""},
		"departed from":          {"2400", departure("/site/altitude_m", ""), 1, false, ""},
		"departed from, in term": {"2400", departure("/site/altitude_m", `, "until": "2026-03-01"`), 1, false, ""},
		"departed from no more":  {"2400", departure("/site/altitude_m", `, "until": "2026-02-28"`), 1, true, ""},
		"another value accepted": {"2450", departure("/site/altitude_m", ""), 1, true, ""},
		"written otherwise":      {"2.4e3", departure("/site/altitude_m", ""), 1, false, ""},
		"another first":          {"2400", strings.Replace(departure("/site/altitude_m", ""), "2400", "2300", 1) + "," + departure("/site/altitude_m", ""), 1, false, ""},
		"another after it":       {"2400", departure("/site/altitude_m", "") + "," + strings.Replace(departure("/site/altitude_m", ""), "2400", "2300", 1), 1, false, ""},
		"another departed from":  {"2400", departure("/site/temp_min_c", ""), 1, true, "the departure from /site/temp_min_c fits no unlikely value"},
		"needed no more":         {"1999", departure("/site/altitude_m", ""), 0, false, "the departure from /site/altitude_m fits no unlikely value"},
	} {
		doc, err := schema.Decode("job.json", fmt.Appendf(nil, job, c.altitude, c.departures))
		if err != nil {
			t.Fatal(what, err)
		}
		r, err := judge.Check(context.Background(), set, doc, judge.Options{})
		if err != nil {
			t.Fatal(err)
		}
		fails := false
		for _, u := range r.Unlikely {
			fails = fails || u.FailsCheck()
		}
		if len(r.Unlikely) != c.unlikely || fails != c.fails || fails && r.Passes || !strings.Contains(strings.Join(r.Notes, "\n"), c.note) {
			t.Errorf("%s: %+v, passes %t, %v", what, r.Unlikely, r.Passes, r.Notes)
		}
	}
	for _, bad := range []string{`{"member": "/site/altitude_m", "reason": "r", "author": "a", "date": "2026-03-01"}`, `{"requirement": "a/b", "value": 1, "reason": "r", "author": "a", "date": "2026-03-01"}`, `{"reason": "r", "author": "a", "date": "2026-03-01"}`, `{"requirement": "a/b", "member": "/site", "reason": "r", "author": "a", "date": "2026-03-01"}`} {
		if _, err := schema.Decode("job.json", fmt.Appendf(nil, job, "1", bad)); err == nil {
			t.Errorf("a departure from both or neither, or without its value, is read: %s", bad)
		}
	}
}

// TestNothingToCheck holds that a job without a string and without a module does not
// pass by whatever rule set, until a departure says who looked again.
func TestNothingToCheck(t *testing.T) {
	set, err := ruleset.Load(context.Background(), policies.FS, "../../testdata/formats/rules")
	if err != nil {
		t.Fatal(err)
	}
	const project = `{"project": {"reference": "r", "stage": "design", "country": "NO", "premises": "dwelling"}, "isolators": []`
	for what, c := range map[string]struct {
		more            string
		nothing, passes bool
	}{
		"no string":               {`"strings": []`, true, false},
		"no string, no module":    {`"strings": [], "roof": {"planes": [{"id": "P1", "modules": []}]}`, true, false},
		"a module":                {`"strings": [], "roof": {"planes": [{"id": "P1", "modules": [{"id": "M1", "x_mm": 0, "y_mm": 0, "orientation": "portrait"}]}]}`, false, true},
		"strings not stated":      {`"labels": []`, false, false},
		"somebody looked at that": {`"strings": [], "handover": {"departures": [{"member": "/strings", "value": 0, "reason": "a battery only", "author": "a", "date": "2026-03-01"}]}`, true, true},
	} {
		doc, err := schema.Decode("job.json", []byte(project+", "+c.more+"}"))
		if err != nil {
			t.Fatal(what, err)
		}
		r, err := judge.Check(context.Background(), set, doc, judge.Options{})
		if err != nil {
			t.Fatal(err)
		}
		if r.NothingToCheck() != c.nothing || r.Passes != c.passes {
			t.Errorf("%s: nothing to check %t, passes %t; want %t, %t: %v", what, r.NothingToCheck(), r.Passes, c.nothing, c.passes, r.Judgments)
		}
	}
}
