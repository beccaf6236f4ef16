package main

import (
	"bytes"
	"context"
	"fmt"
	"io"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"sunclause/engine/judge"
)

// typed runs a command line and gives back what it wrote.
func typed(t *testing.T, args ...string) (stdout, stderr string, status int) {
	t.Helper()
	var out, errs bytes.Buffer
	env := &environment{strings.NewReader(""), &out, &errs}
	status = dispatch(context.Background(), env, args)
	return out.String(), errs.String(), status
}

// golden compares a text with a file of the repository, or writes it.
func golden(t *testing.T, name, got string) {
	t.Helper()
	if *update {
		if err := os.WriteFile(name, []byte(got), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	want, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	if d := cmp.Diff(string(want), got); d != "" {
		t.Errorf("%s differs (- kept, + now); go test ./cmd/sunclause -update writes it:\n%s", name, d)
	}
}

// TestCases holds each example to everything that it must produce.
func TestCases(t *testing.T) {
	t.Chdir("../..")
	cases, err := filepath.Glob("testdata/*/installation.json")
	if err != nil || len(cases) == 0 {
		t.Fatal("no cases", err)
	}
	for _, name := range cases {
		folder := filepath.Dir(name)
		if testing.Short() && strings.Contains(folder, "warehouse") {
			continue // it is large
		}
		t.Run(filepath.Base(folder), func(t *testing.T) {
			text, errs, status := typed(t, "check", "--width", "60", name)
			if status == couldNot {
				t.Fatal(errs)
			}
			golden(t, filepath.Join(folder, "report.txt"), text)
			if filepath.Base(folder) != "gb-island-cottage" {
				return // the other papers say the same at great length
			}
			golden(t, filepath.Join(folder, "outcomes.txt"), outcomes(t, name))
			derived, _, _ := typed(t, "facts", "--width", "100", name)
			golden(t, filepath.Join(folder, "facts.txt"), derived)
		})
	}
}

// outcomes writes every outcome of a job on a line of its own, with what was
// measured. Of what does not apply it says to how many parts.
func outcomes(t *testing.T, name string) string {
	t.Helper()
	env := &environment{strings.NewReader(""), io.Discard, io.Discard}
	var o checkOptions
	o.rules = defaultRules
	r, err := env.checkNamed(context.Background(), name, o)
	if err != nil {
		t.Fatal(err)
	}
	var b strings.Builder
	idle := map[string]int{}
	for _, j := range r.Judgments {
		if j.Outcome == judge.NotApplicable {
			idle[j.Requirement.ID]++
			continue
		}
		fmt.Fprintf(&b, "%-10s%-34s %s: %s\n", j.Outcome, j.Subject.ID, j.Requirement.ID, j.Say())
	}
	for _, id := range slices.Sorted(maps.Keys(idle)) {
		fmt.Fprintf(&b, "does not apply to %4d %s\n", idle[id], id)
	}
	return b.String()
}

// TestWorking holds the working of one string, one run and one isolator, which
// go through every kind of step there is.
func TestWorking(t *testing.T) {
	t.Chdir("../..")
	working, errs, status := typed(t, "facts", "--working", "--width", "100", "testdata/gb-island-cottage/installation.json", "S1", "R2", "ISO-DC")
	if status != passes {
		t.Fatal(errs)
	}
	golden(t, "testdata/gb-island-cottage/working.txt", working)
}

// TestLargeRoofByHouseSet makes sure that the limits on a set from a folder leave
// room for the largest example.
func TestLargeRoofByHouseSet(t *testing.T) {
	if testing.Short() {
		t.Skip("takes some seconds")
	}
	text, errs, status := typed(t, "check", "--rules", "../../policies/house-example", "../../testdata/gb-warehouse/installation.json")
	if status != passes || !strings.Contains(text, "PASSES") {
		t.Errorf("status %d: %s", status, errs)
	}
}
