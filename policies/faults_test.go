package policies_test

import (
	"context"
	"encoding/json"
	"os"
	"path/filepath"
	"strings"
	"sync"
	"testing"

	jsonpatch "github.com/evanphx/json-patch/v5"
	"github.com/google/go-cmp/cmp"

	"sunclause/engine/judge"
	"sunclause/engine/ruleset"
	"sunclause/policies"
	"sunclause/schema"
	"sunclause/schema/examples"
)

// fault is a small change to a sound installation and every finding that it
// must bring. There must be no other.
type fault struct {
	Note         string          `json:"note"`
	Installation string          `json:"installation"`
	Patch        json.RawMessage `json:"patch"` // RFC 6902
	Changes      []change        `json:"changes"`
	Unlikely     []string        `json:"unlikely"` // JSON pointers of the values at which somebody has to look again
}

type change struct {
	Requirement string        `json:"requirement"`
	Subject     string        `json:"subject"`
	Outcome     judge.Outcome `json:"outcome"` // not_met or not_shown
}

var sets = map[string]func() (*ruleset.RuleSet, error){}

func init() {
	for _, name := range ruleset.Embedded(policies.FS) {
		sets[name] = sync.OnceValues(func() (*ruleset.RuleSet, error) { return ruleset.Load(context.Background(), policies.FS, name) })
	}
}

// load gives an embedded set, which is loaded once for all tests.
func load(t testing.TB, name string) *ruleset.RuleSet {
	t.Helper()
	set, err := sets[name]()
	if err != nil {
		t.Fatal(err)
	}
	return set
}

// outcomes judges a text and keys the outcomes by requirement and part.
func outcomes(t testing.TB, set *ruleset.RuleSet, raw []byte) map[change]judge.Outcome {
	t.Helper()
	return keyed(judged(t, set, raw))
}

// judged judges a text.
func judged(t testing.TB, set *ruleset.RuleSet, raw []byte) *judge.Result {
	t.Helper()
	doc, err := schema.Decode("installation.json", raw)
	if err != nil {
		t.Fatal(err)
	}
	r, err := judge.Check(context.Background(), set, doc, judge.Options{})
	if err != nil {
		t.Fatal(err)
	}
	return r
}

// unlikely lists the values at which somebody has to look again.
func unlikely(r *judge.Result) []string {
	all := []string{}
	for _, u := range r.Unlikely {
		all = append(all, u.At)
	}
	return all
}

func readFault(t testing.TB, name string) fault {
	t.Helper()
	var f fault
	raw, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	if err := json.Unmarshal(raw, &f); err != nil {
		t.Fatal(err)
	}
	return f
}

// apply makes the faulty document.
func (f fault) apply(t testing.TB, base []byte) []byte {
	t.Helper()
	patch, err := jsonpatch.DecodePatch(f.Patch)
	if err != nil {
		t.Fatal(err)
	}
	faulty, err := patch.Apply(base)
	if err != nil {
		t.Fatal(err)
	}
	return faulty
}

func TestFaults(t *testing.T) {
	for name, files := range faultsOf(t) {
		t.Run(name, func(t *testing.T) { tryFaults(t, name, files) })
	}
}

// faultsOf lists the files of faults by the example that they are faults of. Those
// in a folder singly are made one at a time only; the others can be made all at
// once, as in the faulty cottage.
func faultsOf(t *testing.T) map[string][]string {
	all := map[string][]string{}
	for name, folder := range map[string]string{examples.Cottage: "../testdata/faults", examples.Battery: "../testdata/gb-battery/faults"} {
		for _, pattern := range []string{"/*.json", "/singly/*.json"} {
			files, err := filepath.Glob(folder + pattern)
			if err != nil || len(files) == 0 {
				t.Fatal("no faults", err)
			}
			all[name] = append(all[name], files...)
		}
	}
	return all
}

// tryFaults makes each fault alone in an example, and holds what it brings to
// what it says.
func tryFaults(t *testing.T, name string, files []string) {
	set, base := load(t, "gb"), examples.Text(t, name)
	sound := outcomes(t, set, base)
	for i, file := range files {
		if testing.Short() && i%3 > 0 {
			continue // a third of them
		}
		t.Run(strings.TrimSuffix(filepath.Base(file), ".json"), func(t *testing.T) {
			t.Parallel()
			f := readFault(t, file)
			if f.Installation != name {
				t.Fatalf("it is a fault of %s", f.Installation)
			}
			want := map[change]judge.Outcome{}
			for _, c := range f.Changes {
				want[change{Requirement: c.Requirement, Subject: c.Subject}] = c.Outcome
			}
			r := judged(t, set, f.apply(t, base))
			if d := cmp.Diff(append([]string{}, f.Unlikely...), unlikely(r)); d != "" {
				t.Errorf("other values are unlikely than the fault says (- said, + found):\n%s", d)
			}
			if d := cmp.Diff(want, difference(sound, keyed(r))); d != "" {
				t.Errorf("outcomes changed otherwise than the fault says (- said, + found):\n%s", d)
			}
		})
	}
}

// difference is every finding that is new, and "" for every one that is gone.
func difference(before, after map[change]judge.Outcome) map[change]judge.Outcome {
	d := map[change]judge.Outcome{}
	for k, o := range after {
		if finding(o) && before[k] != o {
			d[k] = o
		}
	}
	for k, o := range before {
		if finding(o) && !finding(after[k]) {
			d[k] = ""
		}
	}
	return d
}

func finding(o judge.Outcome) bool { return o == judge.NotMet || o == judge.NotShown }

// TestExamplesAreSound makes sure that the shipped examples pass.
func TestExamplesAreSound(t *testing.T) {
	set := load(t, "gb")
	for _, name := range examples.Names {
		if name == examples.Faulty {
			continue
		}
		r := judged(t, set, examples.Text(t, name))
		if u := unlikely(r); len(u) > 0 {
			t.Errorf("%s: unlikely is %v", name, u)
		}
		for k, o := range keyed(r) {
			if o == judge.NotMet || o == judge.NotShown {
				t.Errorf("%s: %s of %s is %s", name, k.Requirement, k.Subject, o)
			}
		}
	}
}
