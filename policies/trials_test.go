package policies_test

import (
	"context"
	"io/fs"
	"os"
	"path/filepath"
	"testing"
	"unicode/utf8"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/format"

	"sunclause/engine/ruleset"
	"sunclause/engine/trial"
	"sunclause/policies"
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
			mutate(t, set, trials)
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

func mutate(t *testing.T, set *ruleset.RuleSet, trials []trial.Case) {
	all, err := trial.Mutate(context.Background(), set, trials)
	if err != nil {
		t.Fatal(err)
	}
	for _, m := range all {
		if !m.Noticed {
			t.Logf("%s:%d: %s: no test noticed: %s", m.File, m.Line, m.Requirement, m.What)
		}
	}
	score := trial.Score(all)
	t.Logf("%d requirements, %d tests, %.1f %% of %d mutations noticed", len(set.Own()), len(trials), score, len(all))
	if score < leastScore {
		t.Errorf("%.1f %% of the mutations were noticed; it must be %d %%", score, leastScore)
	}
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
