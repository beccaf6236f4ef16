package trial_test

import (
	"context"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"sunclause/engine/catalogue"
	"sunclause/engine/judge"
	"sunclause/engine/ruleset"
	"sunclause/engine/trial"
	"sunclause/facts"
	"sunclause/policies"
)

const manifest = "name: rows\ntitle: t\nversion: 0.1.0\nparameters: {made_of: {title: t, value: cdte, source: {document: test, how: house rule}}}\n"

// rowSet is a set of rows about strings, each given as the members that say what it
// asks for.
func rowSet(t *testing.T, rows ...string) *ruleset.RuleSet {
	t.Helper()
	dir := filepath.Join(t.TempDir(), "rows")
	text := "requirements:\n"
	for i, row := range rows {
		text += "  - {id: rows/row-" + string(rune('a'+i)) + ", title: t, level: shall, subject: strings, " + row + ", source: {document: test, how: house rule}}\n"
	}
	if err := os.Mkdir(dir, 0o755); err != nil {
		t.Fatal(err)
	}
	for name, text := range map[string]string{"ruleset.yaml": manifest, "pvstring.yaml": text} {
		if err := os.WriteFile(filepath.Join(dir, name), []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	set, err := ruleset.Load(context.Background(), policies.FS, dir)
	if err != nil {
		t.Fatal(err)
	}
	return set
}

// For each form of a row without a figure there are cases, and they go as the row
// says; for a row with a figure there are none.
func TestGenerated(t *testing.T) {
	ctx := context.Background()
	for _, c := range []struct {
		row      string
		outcomes string // of the cases: met, not met, not shown, not applicable
	}{
		{"require: fuse_fitted", "1 1 1 0"},
		{"require: not fuse_fitted", "1 1 1 0"},
		{"require: technology equals mono_si", "1 1 1 0"},
		{"require: technology equals parameters.made_of", "1 1 1 0"},
		{"require: technology differs mono_si", "1 1 1 0"},
		{"require: technology one_of mono_si cdte", "2 1 1 0"},
		{"require: technology none_of mono_si cdte", "1 1 1 0"},
		{"require: technology equals strings.fuse_kind", "2 1 2 0"},
		{"require: fuse_fitted equals connector_same_type", "2 1 2 0"},
		{"stage: as_built, when: [fuse_fitted, technology one_of cdte], require: not connector_same_type", "1 1 4 3"},
		{"when: [technology differs cdte], require: technology differs mono_si", "1 1 1 1"},
		{"require: {any_of: [fuse_fitted, technology equals cdte]}", "2 1 2 0"},
		{"when: [{any_of: [fuse_fitted, technology equals cdte]}], require: connector_same_type", "1 1 3 1"},
		{"require: voc_max_v at_most 600", "0 0 0 0"},
		{"when: [modules_in_series above 1], require: fuse_fitted", "0 0 0 0"},
		{"require: installation.design_date since 2026-01-01", "0 0 0 0"},
		{"since: 2026-01-01, require: fuse_fitted", "0 0 0 0"},
	} {
		set := rowSet(t, c.row)
		cases := trial.Generated(set, nil)
		failures, err := trial.Run(ctx, set, cases)
		if err != nil || len(failures) > 0 {
			t.Errorf("%s: %v, %v", c.row, failures, err)
		}
		if got := counted(cases); got != c.outcomes {
			t.Errorf("%s: %s cases; want %s", c.row, got, c.outcomes)
		}
	}
}

func counted(cases []trial.Case) string {
	n := map[judge.Outcome]int{}
	for _, c := range cases {
		n[c.Want]++
	}
	var words []string
	for _, o := range []judge.Outcome{judge.Met, judge.NotMet, judge.NotShown, judge.NotApplicable} {
		words = append(words, string(rune('0'+n[o])))
	}
	return strings.Join(words, " ")
}

// Generated cases cover a row and notice nothing; a document notices what its
// findings say.
func TestGeneratedNoticeNothing(t *testing.T) {
	ctx := context.Background()
	set := rowSet(t, "require: fuse_fitted", "require: voc_max_v at_most 600")
	cases := trial.Generated(set, nil)
	if d := cmp.Diff([]string{"rows/row-b has no test for met, not met, not shown"}, trial.Uncovered(set, cases)); d != "" {
		t.Error(d)
	}
	if d := cmp.Diff([]string{"rows/row-a"}, trial.GeneratedAlone(set, cases)); d != "" {
		t.Error(d)
	}
	all, err := trial.Mutate(ctx, set, cases, nil)
	if err != nil || slices.ContainsFunc(all, func(m trial.Mutation) bool { return m.Noticed }) {
		t.Errorf("%v, %v", all, err)
	}
	document := catalogue.Blank() // a string with a fuse, of unknown voltage
	of, _ := catalogue.Of("strings")
	of.Put(document, "S1", map[string]any{"fuse_fitted": true})
	all, err = trial.Mutate(ctx, set, cases, slices.Values([]*facts.Facts{document}))
	if err != nil {
		t.Fatal(err)
	}
	for _, m := range all {
		if want := m.Requirement == "rows/row-a"; m.Noticed != want {
			t.Errorf("%s, %s: noticed %t", m.Requirement, m.What, m.Noticed)
		}
	}
}
