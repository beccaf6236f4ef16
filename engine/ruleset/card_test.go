package ruleset_test

import (
	"context"
	"strings"
	"testing"

	"sunclause/engine/ruleset"
	"sunclause/policies"
)

// aRow is a set with one row, of which id, title and source are given.
func aRow(t *testing.T, members string) (*ruleset.RuleSet, error) {
	return ruleset.Load(context.Background(), policies.FS, writeSet(t, "rows", map[string]string{
		"ruleset.yaml":  "name: rows\ntitle: t\nversion: 0.1.0\n",
		"pvstring.yaml": "requirements:\n  - id: rows/a-b\n    title: t\n    source: {document: test, how: house rule}\n    " + strings.ReplaceAll(members, "\n", "\n    ") + "\n",
	}))
}

// A row is about what it says, or the list that its comparison begins with, and
// binding where it says nothing else.
func TestRowSaysWhatItIsAbout(t *testing.T) {
	for members, want := range map[string]string{
		"require: strings.voc_max_v at_most 600":                                                                  "shall strings: voc_max_v at_most 600",
		"require: not strings.fuse_fitted\nlevel: should":                                                         "should strings: not fuse_fitted",
		"require: installation.voc_max_v at_most 600\nwhen: [premises equals dwelling]\nlevel: shall":             "shall installation: premises equals dwelling, voc_max_v at_most 600",
		"require: installation.engineer_report_given\nstage: as_built\nsince: 2026-06-18":                         "shall installation: stage equals as_built, design_date since 2026-06-18, engineer_report_given",
		"require: strings.voc_max_v at_most strings.voc_table_v\nsubject: strings\nwhen: [strings.fuse_fitted]":   "shall strings: fuse_fitted, voc_max_v at_most voc_table_v",
		"require: installation.voc_max_v at_most 600\nwhen: [fuse_fitted]\nsubject: strings\nuntil: 2026-06-18":   "shall strings: fuse_fitted, installation.design_date until 2026-06-18, installation.voc_max_v at_most 600",
		"require: {any_of: [fuse_fitted, strings_in_parallel at_most 2]}\nsubject: strings":                       "shall strings: fuse_fitted or strings_in_parallel at_most 2",
		"require: strings.voc_max_v at_most 600\nwhen: [{any_of: [fuse_fitted, installation.voc_max_v above 1]}]": "shall strings: fuse_fitted or installation.voc_max_v above 1, voc_max_v at_most 600",
	} {
		set, err := aRow(t, members)
		if err != nil {
			t.Errorf("%s: %v", members, err)
			continue
		}
		q := set.Requirements[0]
		var all []string
		for _, c := range q.Compared() {
			all = append(all, c.String())
		}
		if got := string(q.Level) + " " + q.Subject + ": " + strings.Join(all, ", "); got != want {
			t.Errorf("%s\nis read as %s", members, got)
		}
	}
}

func TestRowThatDoesNotSayWhatItIsAbout(t *testing.T) {
	for members, want := range map[string]string{
		"require: voc_table_v at_most 600":                                                                         "5:14: nothing says whose fact voc_table_v is; write strings.voc_table_v, or add subject",
		"require: not outdoors":                                                                                    "5:18: nothing says whose fact outdoors is; write ",
		"require: voc_mx_v at_most 600":                                                                            "nothing says whose fact voc_mx_v is; write LIST.FACT, as in strings.voc_max_v, or add subject; docs/facts.md lists facts",
		"require: strngs.voc_max_v at_most 600":                                                                    `5:14: there are no facts called "strngs"; did you mean "strings"?`,
		"require: strings.voc_mx_v at_most 600":                                                                    `5:14: strings have no fact called "voc_mx_v"; did you mean "voc_max_v"?`,
		"require: voc_max_v at_most 600\nsubject: strngs":                                                          `there are no facts called "strngs"; did you mean "strings"?`,
		"require: {any_of: [strings.fuse_fitted, strings.strings_in_parallel at_most 2]}":                          "5:14: nothing says what the row is about; add subject, as in subject: strings; a group does not say it",
		"require: installation.voc_max_v at_most 600\nwhen: [premises equals dwelling, not fuse_fitted]":           "6:42: fuse_fitted is no fact of the installation, with one of which require begins; add subject: strings",
		"require: installation.voc_max_v at_most 600\nwhen: [{any_of: [premises equals dwelling, runs.outdoors]}]": "runs.outdoors is no fact of the installation, with one of which require begins; add subject: runs",
	} {
		if _, err := aRow(t, members); err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("%s\n%v\nwant %s", members, err, want)
		}
	}
}

// The unit of a figure is the ending of its name, and is not said otherwise.
func TestUnitsOfParameters(t *testing.T) {
	for figure, want := range map[string]string{
		"run_max_m: {value: 30, ":                 "m",
		"run_max_m: {value: 30, unit: m, ":        "m",
		"load_max_kn_per_m2: {value: 30, ":        "kN/m²",
		"strings_max: {value: 3, ":                "",
		"separation_min: {value: 60, unit: min, ": "min",
		"made_in_m: {value: dwelling, ":           "",
	} {
		set, err := figureSet(t, figure)
		if err != nil {
			t.Errorf("%s: %v", figure, err)
			continue
		}
		name, _, _ := strings.Cut(figure, ":")
		if got := set.Book.Parameters[name].Unit; got != want {
			t.Errorf("%s: %q, want %q", figure, got, want)
		}
	}
	if _, err := figureSet(t, "run_max_m: {value: 30, unit: mm, "); err == nil || !strings.Contains(err.Error(), `ruleset.yaml:5:32: parameter "run_max_m" is in "mm", and its name says m; leave unit out, or call it by what it is in`) {
		t.Error(err)
	}
	if _, err := figureSet(t, "voc_factor: {value: 1, "); err == nil || !strings.Contains(err.Error(), `ruleset.yaml:5:3: parameter "voc_factor" is already in set iec`) {
		t.Error(err)
	}
}

func figureSet(t *testing.T, figure string) (*ruleset.RuleSet, error) {
	return ruleset.Load(context.Background(), policies.FS, writeSet(t, "figures", map[string]string{
		"ruleset.yaml": "name: figures\ntitle: t\nversion: 0.1.0\nparameters:\n  " + figure + "title: t, source: {document: test, how: house rule}}\nextends: iec\n",
	}))
}

// What is wrong is said of all files at once, up to a bound.
func TestProblemsOfAllFiles(t *testing.T) {
	files := map[string]string{"ruleset.yaml": "name: many\ntitle: t\nversion: 0.1.0\nparameters: [{name: a, title: t, value: 1, source: {document: test, how: house rule}}]\n"}
	rows := "requirements:\n" + strings.Repeat("  - {id: many/a-b, title: t, subject: strings, measure: voc_max_v, comparison: at_most, limit: {value: 1}, source: {document: test, how: house rule}}\n", 60)
	files["cable.yaml"], files["pvstring.yaml"] = rows, rows
	_, err := ruleset.Load(context.Background(), policies.FS, writeSet(t, "many", files))
	if err == nil {
		t.Fatal("it loads")
	}
	lines := strings.Split(err.Error(), "\n")
	last := lines[len(lines)-1]
	if len(lines) != 101 || !strings.Contains(err.Error(), "pvstring.yaml:2:5: ") || !strings.Contains(err.Error(), "cable.yaml:61:5: ") || !strings.Contains(last, "and 21 more problems from here on; put the first ones right and check again") {
		t.Errorf("%d lines, the last: %s", len(lines), last)
	}
}
