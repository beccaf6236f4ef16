package main

import (
	"bytes"
	"context"
	"crypto/sha256"
	"encoding/json"
	"fmt"
	"hash"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"sunclause/engine/judge"
	"sunclause/engine/ruleset"
	"sunclause/policies"
	"sunclause/schema"
	"sunclause/schema/examples"
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

// amongExamples goes into a folder in which every example stands in examples/,
// and gives back the way to the repository.
func amongExamples(t *testing.T) string {
	t.Helper()
	repo, err := filepath.Abs("../..")
	if err != nil {
		t.Fatal(err)
	}
	dir := t.TempDir()
	if err := examples.Write(filepath.Join(dir, "examples")); err != nil {
		t.Fatal(err)
	}
	t.Chdir(dir)
	return repo
}

// TestCases holds each example to its report and to every outcome, and the
// cottage to every fact.
func TestCases(t *testing.T) {
	repo := amongExamples(t)
	set, err := ruleset.Load(context.Background(), policies.FS, "gb")
	if err != nil {
		t.Fatal(err)
	}
	for _, name := range examples.Names {
		if testing.Short() && name == examples.Warehouse {
			continue // it is large
		}
		t.Run(name, func(t *testing.T) {
			file, kept := "examples/"+name+"/installation.json", filepath.Join(repo, "testdata", name)
			text, errs, status := typed(t, "check", "--width", "60", file)
			if status == exitError {
				t.Fatal(errs)
			}
			golden(t, filepath.Join(kept, "report.txt"), text)
			doc, err := schema.Decode(file, examples.Text(t, name))
			if err != nil {
				t.Fatal(err)
			}
			r, err := judge.Check(context.Background(), set, doc, judge.Options{})
			if err != nil {
				t.Fatal(err)
			}
			golden(t, filepath.Join(kept, "outcomes.txt"), outcomes(r))
			if name != examples.Cottage {
				return // the facts of the others are much the same
			}
			derived, _, _ := typed(t, "facts", "--format", "json", file)
			golden(t, filepath.Join(kept, "facts.txt"), lists(t, derived))
			sample, _, _ := typed(t, "facts", "--width", "100", file, "installation", "INV1", "B1", "C-PV", "P-SE", "SPD1", "L001", "SEF05", "FR1")
			golden(t, filepath.Join(kept, "facts-sample.txt"), sample)
		})
	}
}

// outcomes is a line for each room: how often each outcome came out, and a digest
// of every outcome with its requirement, part, value and limit. A digest alone
// that changes is to be looked into with the reports of before and after.
func outcomes(r *judge.Result) string {
	counts, digests := map[string]map[judge.Outcome]int{}, map[string]hash.Hash{}
	for _, j := range r.Judgments {
		room := j.Requirement.Room
		if counts[room] == nil {
			counts[room], digests[room] = map[judge.Outcome]int{}, sha256.New()
		}
		counts[room][j.Outcome]++
		fmt.Fprintln(digests[room], j.Outcome, j.Subject.ID, j.Requirement.ID, j.Describe())
	}
	var b strings.Builder
	fmt.Fprintf(&b, "%-14s %7s %7s %9s %14s  %s\n", "room", "met", "not met", "not shown", "not applicable", "digest")
	for _, room := range slices.Sorted(maps.Keys(counts)) {
		n := counts[room]
		fmt.Fprintf(&b, "%-14s %7d %7d %9d %14d  %.12x\n", room, n[judge.Met], n[judge.NotMet], n[judge.NotShown], n[judge.NotApplicable], digests[room].Sum(nil))
	}
	return b.String()
}

// lists is a line for each list of facts: how many parts it has, how many of
// their facts are known and how many are not, and a digest of them all.
func lists(t *testing.T, derived string) string {
	t.Helper()
	type part struct {
		ID    string
		At    string
		Facts map[string]struct {
			Value   any
			Unit    string
			Missing []string
		}
	}
	var all struct{ Facts map[string]json.RawMessage }
	if err := json.Unmarshal([]byte(derived), &all); err != nil {
		t.Fatal(err)
	}
	var b strings.Builder
	fmt.Fprintf(&b, "%-20s %5s %6s %9s  %s\n", "list", "parts", "known", "not known", "digest")
	for _, name := range slices.Sorted(maps.Keys(all.Facts)) {
		parts, known, unknown := make([]part, 1), 0, 0
		if json.Unmarshal(all.Facts[name], &parts) != nil {
			if err := json.Unmarshal(all.Facts[name], &parts[0]); err != nil { // the installation is no list
				t.Fatal(err)
			}
		}
		digest := sha256.New()
		for _, p := range parts {
			fmt.Fprintln(digest, p.ID, p.At)
			for _, fact := range slices.Sorted(maps.Keys(p.Facts)) {
				f := p.Facts[fact]
				fmt.Fprintln(digest, fact, f.Value, f.Unit, f.Missing)
				if f.Value == nil {
					unknown++
				} else {
					known++
				}
			}
		}
		fmt.Fprintf(&b, "%-20s %5d %6d %9d  %.12x\n", name, len(parts), known, unknown, digest.Sum(nil))
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
	repo := amongExamples(t)
	text, errs, status := typed(t, "check", "--rules", filepath.Join(repo, "policies/house-example"), "examples/gb-warehouse/installation.json")
	if status != passes || !strings.Contains(text, "PASSES") {
		t.Errorf("status %d: %s", status, errs)
	}
}
