package policies_test

import (
	"bytes"
	"encoding/json"
	"os"
	"path/filepath"
	"testing"

	"github.com/google/go-cmp/cmp"

	"sunclause/engine/judge"
)

// TestBatteryExample keeps the example with a battery true to what it is: the
// cottage, and a patch that puts the battery in.
func TestBatteryExample(t *testing.T) {
	patch, err := os.ReadFile("../testdata/gb-battery/patch.json")
	if err != nil {
		t.Fatal(err)
	}
	raw := fault{Patch: patch}.apply(t, example(t, "gb-island-cottage"))
	var want bytes.Buffer
	if err := json.Indent(&want, raw, "", "  "); err != nil {
		t.Fatal(err)
	}
	want.WriteByte('\n')
	name := "../testdata/gb-battery/installation.json"
	if *update {
		if err := os.WriteFile(name, want.Bytes(), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	got, err := os.ReadFile(name)
	if err != nil || !bytes.Equal(got, want.Bytes()) {
		t.Errorf("%s is not the cottage with its battery (%v); go test ./policies -update writes it", name, err)
	}
}

// TestBatteryFaults makes small changes to the example with a battery; each
// names every finding that it brings.
func TestBatteryFaults(t *testing.T) {
	set := load(t, "gb")
	base := example(t, "gb-battery")
	sound := outcomes(t, set, base)
	files, err := filepath.Glob("../testdata/gb-battery/faults/*.json")
	if err != nil || len(files) == 0 {
		t.Fatal("no faults", err)
	}
	for _, name := range files {
		t.Run(filepath.Base(name), func(t *testing.T) {
			f := readFault(t, name)
			want := map[change]judge.Outcome{}
			for _, c := range f.Changes {
				want[change{Requirement: c.Requirement, Subject: c.Subject}] = c.Outcome
			}
			if d := cmp.Diff(want, difference(sound, outcomes(t, set, f.apply(t, base)))); d != "" {
				t.Errorf("outcomes changed otherwise than the fault says (- said, + found):\n%s", d)
			}
		})
	}
}
