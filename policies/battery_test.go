package policies_test

import (
	"path/filepath"
	"testing"

	"github.com/google/go-cmp/cmp"

	"sunclause/engine/judge"

	"sunclause/schema/examples"
)

// TestBatteryFaults makes small changes to the example with a battery; each
// names every finding that it brings.
func TestBatteryFaults(t *testing.T) {
	set := load(t, "gb")
	base := examples.Text(t, examples.Battery)
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
