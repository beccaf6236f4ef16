package policies_test

import (
	"context"
	"io/fs"
	"iter"
	"os"
	"path/filepath"
	"testing"
	"unicode/utf8"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/format"

	"sunclause/engine/ruleset"
	"sunclause/engine/trial"
	"sunclause/facts"
	"sunclause/facts/book"
	"sunclause/policies"
	"sunclause/schema"
	"sunclause/schema/examples"
)

// leastScore is the part of the mutations, in %, that the tests of a set must
// notice.
const leastScore = 95

// TestTrials runs the tests that each embedded set carries, and makes sure that
// they would notice if a requirement or a figure of the set were another.
func TestTrials(t *testing.T) {
	for _, name := range ruleset.Embedded(policies.FS) {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			set := load(t, name)
			trials := trialsOf(t, set)
			trials = append(trials, trial.Generated(set, trials)...)
			failures, err := trial.Run(context.Background(), set, trials)
			if err != nil {
				t.Fatal(err)
			}
			for _, f := range failures {
				t.Error(f)
			}
			for _, lacking := range trial.Uncovered(set, trials) {
				t.Error(lacking)
			}
			if !testing.Short() {
				mutate(t, set, trials)
			}
		})
	}
}

func trialsOf(t *testing.T, set *ruleset.RuleSet) []trial.Case {
	t.Helper()
	folder, err := fs.Sub(policies.FS, set.Name)
	if err != nil {
		t.Fatal(err)
	}
	trials, err := trial.Read(set, folder, set.Name)
	if err != nil {
		t.Fatal(err)
	}
	return trials
}

// mutate makes sure that a small change of the set would be noticed: by a case that
// somebody wrote, or by the findings in an example or in one of its faults. Cases
// that are generated from a row restate it, and count for nothing here.
func mutate(t *testing.T, set *ruleset.RuleSet, trials []trial.Case) {
	all, err := trial.Mutate(context.Background(), set, trials, tried(t))
	if err != nil {
		t.Fatal(err)
	}
	for _, m := range all {
		if !m.Noticed {
			t.Logf("%s:%d: %s: no test noticed: %s", m.File, m.Line, m.Requirement, m.What)
		}
	}
	score, generated := trial.Score(all), 0
	for _, c := range trials {
		if c.Generated {
			generated++
		}
	}
	t.Logf("%d requirements, %d tests of which %d are generated, %.1f %% of %d mutations noticed", len(set.Own()), len(trials), generated, score, len(all))
	if score < leastScore {
		t.Errorf("%.1f %% of the mutations were noticed; it must be %d %%", score, leastScore)
	}
}

// tried are the facts of the examples and of each of their faults, one after the
// other: the tests of faults and of examples know every finding in them.
func tried(t *testing.T) iter.Seq[*facts.Facts] {
	return func(yield func(*facts.Facts) bool) {
		book := load(t, "gb").Book
		for name, files := range faultsOf(t) {
			base := examples.Text(t, name)
			if !yield(derived(t, base, book)) {
				return
			}
			for _, file := range files {
				if !yield(derived(t, readFault(t, file).apply(t, base), book)) {
					return
				}
			}
		}
	}
}

func derived(t *testing.T, text []byte, b book.Book) *facts.Facts {
	doc, err := schema.Decode("installation.json", text)
	if err != nil {
		t.Fatal(err)
	}
	return facts.Derive(&doc.Installation, b)
}

// TestTrialsFolders loads each set from its folder, where it is held against
// the schemas; as an embedded set it is not.
func TestTrialsFolders(t *testing.T) {
	for _, name := range ruleset.Embedded(policies.FS) {
		set, err := ruleset.Load(context.Background(), policies.FS, "./"+name)
		if err != nil {
			t.Error(err)
			continue
		}
		if set.SHA256 != load(t, name).SHA256 {
			t.Errorf("%s in its folder is not the embedded one", name)
		}
	}
}

// TestTrialsWords makes sure that every requirement tells what is wrong, how to
// put it right and where it comes from.
func TestTrialsWords(t *testing.T) {
	for _, name := range ruleset.Embedded(policies.FS) {
		for _, q := range load(t, name).Own() {
			if n := utf8.RuneCountInString(q.Title); n == 0 || n > 80 {
				t.Errorf("%s: the title has %d characters; 1 to 80 fit on a line", q.ID, n)
			}
			if q.Remedy == "" {
				t.Errorf("%s has no remedy", q.ID)
			}
			if q.Source.Document == "" || q.Source.How == "" {
				t.Errorf("%s does not say where it comes from", q.ID)
			}
		}
	}
}

// TestTrialsFormat holds the Rego modules to the one layout.
func TestTrialsFormat(t *testing.T) {
	files, err := filepath.Glob("*/*.rego")
	if err != nil || len(files) == 0 {
		t.Fatal("no Rego modules", err)
	}
	for _, name := range files {
		raw, err := os.ReadFile(name)
		if err != nil {
			t.Fatal(err)
		}
		want, err := format.SourceWithOpts(name, raw, format.Opts{RegoVersion: ast.RegoV1})
		if err != nil {
			t.Error(err)
		} else if string(want) != string(raw) {
			t.Errorf("%s is not laid out as opa fmt does it; it would be:\n%s", name, want)
		}
	}
}
