package trial_test

import (
	"context"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/google/go-cmp/cmp"

	"sunclause/engine/trial"
)

// readTests reads a text as the tests of a set.
func readTests(t *testing.T, text string, rows ...string) ([]trial.Case, []trial.Failure, error) {
	t.Helper()
	set := rowSet(t, rows...)
	cases, err := trial.Read(set, fstest.MapFS{"tests/pvstring.yaml": {Data: []byte(text)}}, "rows")
	if err != nil {
		return nil, nil, err
	}
	failures, err := trial.Run(context.Background(), set, cases)
	return cases, failures, err
}

// A case has the facts of an earlier one and what it changes. It is called by its
// own words, or by the change, and points to its line.
func TestCasesAreChanges(t *testing.T) {
	cases, failures, err := readTests(t, `requirements:
  rows/row-a:
    met: [{voc_max_v: 600, fuse_fitted: true, installation.premises: dwelling}, {voc_max_v: 10}]
    not_met:
      - {says: beyond, voc_max_v: 600.1}
      - {installation.premises: industrial}
    not_applicable: {fuse_fitted: false}
    not_shown: [voc_max_v, {without: [fuse_fitted, installation.premises]}, {without: fuse_fitted, voc_max_v: 601}]
  rows/row-b: {met: {fuse_fitted: true}, not_met: {fuse_fitted: false}, not_shown: fuse_fitted}
`, "when: [fuse_fitted, installation.premises one_of dwelling industrial], require: voc_max_v at_most 600", "require: fuse_fitted")
	if err != nil || len(failures) > 0 {
		t.Fatal(failures, err)
	}
	var got []string
	for _, c := range cases {
		got = append(got, trial.Failure{Case: c, Got: "-"}.Error())
	}
	want := []string{
		"rows/tests/pvstring.yaml:3: rows/row-a (fuse_fitted true, installation.premises dwelling, voc_max_v 600): wanted met, got -",
		"rows/tests/pvstring.yaml:3: rows/row-a (voc_max_v 10): wanted met, got -",
		"rows/tests/pvstring.yaml:5: rows/row-a (beyond): wanted not_met, got -",
		"rows/tests/pvstring.yaml:6: rows/row-a (installation.premises industrial): wanted not_met, got -",
		"rows/tests/pvstring.yaml:7: rows/row-a (fuse_fitted false): wanted not_applicable, got -",
		"rows/tests/pvstring.yaml:8: rows/row-a (without voc_max_v): wanted not_shown, got -",
		"rows/tests/pvstring.yaml:8: rows/row-a (without fuse_fitted, without installation.premises): wanted not_shown, got -",
		"rows/tests/pvstring.yaml:8: rows/row-a (without fuse_fitted, voc_max_v 601): wanted not_shown, got -",
		"rows/tests/pvstring.yaml:9: rows/row-b (fuse_fitted true): wanted met, got -",
		"rows/tests/pvstring.yaml:9: rows/row-b (fuse_fitted false): wanted not_met, got -",
		"rows/tests/pvstring.yaml:9: rows/row-b (without fuse_fitted): wanted not_shown, got -",
	}
	if d := cmp.Diff(want, got); d != "" {
		t.Error(d)
	}
}

func TestCasesRefused(t *testing.T) {
	for text, want := range map[string]string{
		"rows/row-b: {met: {fuse_fitted: true}}":                        `rows/tests/pvstring.yaml:2:15: the rule set has no requirement "rows/row-b"; did you mean "rows/row-a"?`,
		"rows/row-a: {met: {voc_mx_v: 1}}":                              `strings have no fact called "voc_mx_v"; did you mean "voc_max_v"?`,
		"rows/row-a: {met: {installation.stag: design}}":                `installation have no fact called "installation.stag"`,
		"rows/row-a: {met: {voc_max_v: high}}":                          "rows/tests/pvstring.yaml:2:33: voc_max_v is a number",
		"rows/row-a: {met: {voc_max_v: 1}, not_shown: voc_max}":         "voc_max is left out, and what the case is a change of does not have it",
		"rows/row-a: {met: {voc_max_v: 1, others: {strngs: []}}}":       `there is no list of facts called "strngs"; did you mean "strings"?`,
		"rows/row-a: {met: {others: {strings: [{id: B, voc_max: 1}]}}}": `strings have no fact called "voc_max"`,
		"rows/row-a: {mett: {voc_max_v: 1}}":                            "mett",
		"- requirement: rows/row-a\n    cases: [{says: at the limit, outcome: met, facts: {voc_max_v: 600}}, {says: in a shop, outcome: not_met, facts: {voc_max_v: 601}, installation: {premises: commercial}}]": "rows/tests/pvstring.yaml:2:5: this is written in the form of older versions; now it is rows/row-a: {met: {voc_max_v: 600}, not_met: {says: in a shop, voc_max_v: 601, installation.premises: commercial}}; sunclause ruleset upgrade FOLDER rewrites a whole set",
	} {
		_, _, err := readTests(t, "requirements:\n  "+text+"\n", "require: voc_max_v at_most 600")
		if err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("%s: got %v\nwant %s", text, err, want)
		}
	}
}

// A test of figures may change the installation stated above it; the one above stays
// what it is.
func TestFiguresChange(t *testing.T) {
	const stated = `figures:
  - installation: {project: {reference: TRIAL, stage: design, country: GB}, roof: {planes: [{id: P, pitch_deg: 20}]}}
    gives: [{subject: planes, id: P, fact: pitch_deg, value: 20}]
`
	cases, failures, err := readTests(t, stated+`  - {says: steeper, changes: {/roof/planes/0/pitch_deg: 30, /project/stage: as_built}, gives: [{subject: planes, id: P, fact: pitch_deg, value: 30}]}
  - {says: of another date, changes: {/project/design_date: "2026-01-01"}, gives: [{subject: planes, id: P, fact: pitch_deg, value: 20}, {subject: installation, id: installation, fact: stage, value: design}]}
`, "require: fuse_fitted")
	if err != nil || len(failures) > 0 || len(cases) != 3 {
		t.Error(len(cases), failures, err)
	}
	for text, want := range map[string]string{
		stated + "  - {changes: {/roof/planes/1/pitch_deg: 3}, gives: [{subject: planes, id: P, fact: pitch_deg, value: 3}]}\n":               "rows/tests/pvstring.yaml:4:5: there is no place /roof/planes/1/pitch_deg in the installation that the test changes",
		stated + "  - {changes: {pitch_deg: 3}, gives: [{subject: planes, id: P, fact: pitch_deg, value: 3}]}\n":                              "there is no place pitch_deg",
		stated + "  - {changes: {/roof/pitch/deg: 3}, gives: [{subject: planes, id: P, fact: pitch_deg, value: 3}]}\n":                        "there is no place /roof/pitch/deg",
		stated + "  - {installation: {}, changes: {/a: 3}, gives: [{subject: planes, id: P, fact: pitch_deg, value: 3}]}\n":                   "both an installation and changes",
		"figures:\n  - {changes: {/project/stage: design}, gives: [{subject: installation, id: installation, fact: stage, value: design}]}\n": "no installation, and none above it",
		stated + "  - {changes: {/project/stage: planned}, gives: [{subject: installation, id: installation, fact: stage, value: design}]}\n": "the installation cannot be read",
	} {
		if _, _, err := readTests(t, text, "require: fuse_fitted"); err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("got %v\nwant %s", err, want)
		}
	}
}
