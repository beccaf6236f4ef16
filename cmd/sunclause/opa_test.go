package main

import (
	"context"
	"encoding/json"
	"fmt"
	"os/exec"
	"path/filepath"
	"testing"

	"sunclause/engine/judge"
	"sunclause/engine/ruleset"
	"sunclause/policies"
	"sunclause/schema"
	"sunclause/schema/examples"
)

// TestOPAAgrees makes sure that the opa command, where there is one, finds
// broken what sunclause does.
func TestOPAAgrees(t *testing.T) {
	opa, err := exec.LookPath("opa")
	if err != nil {
		t.Skip("there is no opa command here")
	}
	set, err := ruleset.Load(context.Background(), policies.FS, "gb")
	if err != nil {
		t.Fatal(err)
	}
	doc, err := schema.Decode(examples.Faulty, examples.Text(t, examples.Faulty))
	if err != nil {
		t.Fatal(err)
	}
	r, err := judge.Check(context.Background(), set, doc, judge.Options{})
	if err != nil {
		t.Fatal(err)
	}
	dir := t.TempDir()
	query, err := set.WriteForOPA(dir, r.Facts)
	if err != nil {
		t.Fatal(err)
	}
	out, err := exec.Command(opa, "eval", "-d", filepath.Join(dir, "rules"), "-i", filepath.Join(dir, "input.json"), query).Output()
	if err != nil {
		t.Fatal(err)
	}
	var answer struct {
		Result []struct {
			Bindings map[string]json.RawMessage
		}
	}
	if err := json.Unmarshal(out, &answer); err != nil || len(answer.Result) != 1 {
		t.Fatal(err, string(out))
	}
	broken := brokenByOPA(t, set, answer.Result[0].Bindings)
	for _, j := range r.Judgments {
		if j.Outcome == judge.NotMet && !broken[j.Requirement.ID+" "+j.Subject.ID] {
			t.Errorf("opa does not find %s of %s broken", j.Requirement.ID, j.Subject.ID)
		}
	}
}

// brokenByOPA reads what opa found broken: comparisons by number and part, and
// findings of Rego rules.
func brokenByOPA(t *testing.T, set *ruleset.RuleSet, bindings map[string]json.RawMessage) map[string]bool {
	t.Helper()
	broken := map[string]bool{}
	for name, raw := range bindings {
		var pairs [][2]any
		var found []struct{ ID, Subject string }
		into := any(&found)
		if name == "broken" {
			into = &pairs
		}
		if err := json.Unmarshal(raw, into); err != nil {
			t.Fatal(err)
		}
		for _, f := range found {
			broken[f.ID+" "+f.Subject] = true
		}
		for _, p := range pairs {
			for _, id := range set.RowsOf(int(p[0].(float64))) {
				broken[fmt.Sprint(id, " ", p[1])] = true
			}
		}
	}
	return broken
}
