package ruleset_test

import (
	"context"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"sunclause/engine/ruleset"
	"sunclause/policies"
)

// writeSet writes the files of a rule set into a folder of its name.
func writeSet(t testing.TB, name string, files map[string]string) string {
	t.Helper()
	dir := filepath.Join(t.TempDir(), name)
	for file, text := range files {
		path := filepath.Join(dir, filepath.FromSlash(file))
		if err := os.MkdirAll(filepath.Dir(path), 0o755); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(path, []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	return dir
}

// lineSet is a set with one row about strings that requires what it is given.
func lineSet(t testing.TB, require string) (*ruleset.RuleSet, error) {
	t.Helper()
	dir := writeSet(t, "lines", map[string]string{
		"ruleset.yaml": `name: lines
title: t
version: 0.1.0
parameters:
  most_v: {title: t, value: 600, source: {document: test, how: house rule}}
  isc_max_a: {title: t, value: 10, source: {document: test, how: house rule}}
  made_of: {title: t, value: mono_si, source: {document: test, how: house rule}}
`,
		"pvstring.yaml": "requirements:\n  - id: lines/a-b\n    title: t\n    level: shall\n    subject: strings\n    require: " + require + "\n    source: {document: test, how: house rule}\n",
		"tables/breaking.yaml": `title: t
source: {document: test, how: house rule}
columns: [{name: technology}, {name: modules}, {name: breaks_a, unit: A}, {name: says}]
rows: [{technology: mono_si, modules: 10, breaks_a: 5, says: x}]
`,
	})
	return ruleset.Load(context.Background(), policies.FS, dir)
}

// Each line is read as what it says, names and all.
func TestLines(t *testing.T) {
	for line, want := range map[string]string{
		"fuse_fitted":                                                      "fuse_fitted",
		"not fuse_fitted":                                                  "not fuse_fitted",
		"fuse_fitted equals no":                                            "not fuse_fitted",
		"fuse_fitted differs yes":                                          "fuse_fitted differs yes",
		"voc_max_v at_most 600":                                            "voc_max_v at_most 600",
		"voc_max_v at_most most_v":                                         "voc_max_v at_most parameters.most_v",
		"strings.voc_max_v below voc_table_v":                              "voc_max_v below voc_table_v",
		"voc_max_v above -1.5e2":                                           "voc_max_v above -150",
		"isc_max_a at_most parameters.isc_max_a":                           "isc_max_a at_most parameters.isc_max_a",
		"fuse_breaking_a at_least strings.isc_max_a":                       "fuse_breaking_a at_least isc_max_a",
		"technology equals mono_si":                                        "technology equals mono_si",
		"technology equals parameters.made_of":                             "technology equals parameters.made_of",
		"technology equals 'made_of'":                                      "technology equals made_of",
		"technology differs ''":                                            "technology differs ''",
		"fuse_standard one_of 'EN 50618' gG":                               "fuse_standard one_of 'EN 50618' gG",
		"modules_in_series one_of 8 10 12":                                 "modules_in_series one_of 8 10 12",
		"installation.design_date since 2026-06-18":                        "installation.design_date since 2026-06-18",
		"voc_max_v at_most 0.9 times inverter_dc_voltage_max_v":            "voc_max_v at_most 0.9 times inverter_dc_voltage_max_v",
		"voc_max_v at_most most_v times 2":                                 "voc_max_v at_most parameters.most_v times 2",
		"isc_max_a at_most breaking.breaks_a where technology equals mppt": "isc_max_a at_most breaking.breaks_a where technology equals mppt",
		"isc_max_a at_most 1.25 times breaking.breaks_a where technology equals technology and modules at_least modules_in_series": "isc_max_a at_most 1.25 times breaking.breaks_a where technology equals technology and modules at_least modules_in_series",
		"{any_of: [not fuse_fitted, fuse_breaking_a at_least 5]}":                                                                  "not fuse_fitted or fuse_breaking_a at_least 5",
		"\"technology equals\n      mono_si\"":                                                                                     "technology equals mono_si",
	} {
		set, err := lineSet(t, line)
		if err != nil {
			t.Errorf("%s: %v", line, err)
			continue
		}
		if got := set.Requirements[0].Condition.String(); got != want {
			t.Errorf("%s is read as %s", line, got)
		}
	}
}

// What cannot be read is refused at the word that is wrong, with what would do.
func TestLinesRefused(t *testing.T) {
	for line, want := range map[string]string{
		"voc_mx_v at_most 600":                                              `6:14: strings have no fact called "voc_mx_v"; did you mean "voc_max_v"?`,
		"installation.stge equals design":                                   `6:14: installation have no fact called "stge"; did you mean "stage"?`,
		"voc_max_v at_mst 600":                                              `6:24: "at_mst" is no comparison; did you mean "at_most"?`,
		"voc_max_v includes 600":                                            `6:24: voc_max_v is a number, which cannot be compared by "includes"; it can be compared by at_most`,
		"voc_max_v":                                                         `6:14: voc_max_v is a number, which does not stand alone; say how it must stand to what: at_most`,
		"not voc_max_v":                                                     `6:18: voc_max_v is a number, which does not stand alone`,
		"not":                                                               `6:14: nothing is compared; name a fact`,
		"voc_max_v at_most":                                                 `6:24: voc_max_v is compared with nothing; add the limit`,
		"voc_max_v at_most 600 700":                                         `6:36: 700 is one word too many; a word with spaces in it stands in quotes`,
		"voc_max_v at_most mst_v":                                           `6:32: "mst_v" is no number, nor the name of a fact or parameter that is one; did you mean "most_v"?`,
		"voc_max_v at_most 'most_v'":                                        `6:32: 'most_v' is a word; it needs a number here`,
		"voc_max_v at_most made_of":                                         `6:32: parameter "made_of" cannot limit a number`,
		"voc_max_v at_most fuse_fitted":                                     `6:32: fuse_fitted is a yes or no and cannot limit a number`,
		"voc_max_v at_most parameters.mst_v":                                `6:32: the rule set has no parameter "mst_v"; did you mean "most_v"?`,
		"voc_max_v at_most installation.temp_mn_c":                          `6:32: installation have no fact called "temp_mn_c"; did you mean "temp_min_c"?`,
		"fuse_breaking_a at_least isc_max_a":                                `6:39: "isc_max_a" could be the fact or the parameter; write strings.isc_max_a for the fact, parameters.isc_max_a for the parameter`,
		"technology equals made_of":                                         `6:32: "made_of" could be the parameter or the word; write parameters.made_of for the parameter, 'made_of' for the word`,
		"technology equals fuse_kind":                                       `6:32: "fuse_kind" could be the fact or the word; write strings.fuse_kind for the fact, 'fuse_kind' for the word`,
		"technology equals parameters.made_off":                             `6:32: the rule set has no parameter "made_off"; did you mean "made_of"?`,
		"technology differs strings.fuse_knd":                               `6:33: strings have no fact called "fuse_knd"; did you mean "fuse_kind"?`,
		"technology equals installation.stge":                               `6:32: installation have no fact called "stge"; did you mean "stage"?`,
		"technology equals runs.kind":                                       `6:32: "runs.kind" is no text, nor the name of a fact or parameter that is one`,
		"technology none_of parameters.made_of b":                           `6:33: parameters.made_of is a name, and a list has none; write out the words or numbers`,
		"technology one_of a, b":                                            `6:32: "a," ends in a comma; words of a list stand one after the other, without commas`,
		"modules_in_series one_of 8 ten":                                    `6:41: ten is no number; a number is compared with numbers here`,
		"technology since 2026-01-01":                                       `6:25: technology is no date, which cannot be compared by "since"; it can be compared by equals, differs, one_of, none_of`,
		"installation.design_date since soon":                               `6:45: the limit does not suit the comparison "since"; it needs a day here, as 2026-03-02`,
		"fuse_fitted equals mono_si":                                        `6:33: "mono_si" is no yes or no`,
		"voc_max_v at_most mst_v times 5":                                   `6:32: "mst_v" is neither a number nor a parameter; did you mean "most_v"?`,
		"technology equals 2 times mono_si":                                 `6:34: a text has no factor; only a number is taken times another`,
		"voc_max_v at_most breking.breaks_a where a equals mppt":            `6:32: the rule set has no table "breking"; did you mean "breaking"?`,
		"voc_max_v at_most breaking.breaks where technology equals mppt":    `6:32: table breaking has no column "breaks"; did you mean "breaks_a"?`,
		"voc_max_v at_most breaking.breaks_a where technlogy equals mppt":   `6:56: table breaking has no column "technlogy"; did you mean "technology"?`,
		"voc_max_v at_most breaking.breaks_a where technology equals mpt":   `6:74: strings have no fact called "mpt"; did you mean "mppt"?`,
		"voc_max_v at_most breaking.breaks_a where technology at_most mppt": `6:67: a row cannot be picked by "at_most" of mppt, which is a text; it can be equals`,
		"voc_max_v at_most breaking.says where technology equals mppt":      `6:32: column says of table breaking has no number in it, and voc_max_v is one`,
		"voc_max_v at_most breaking.breaks_a where modules equals mppt":     `6:56: column modules of table breaking has no text in it, and mppt is one`,
		"voc_max_v at_most breaking.breaks_a where modules":                 `6:56: what picks the row of the table is not said whole`,
		"{any_of: [fuse_fitted, voc_max_v at_mst 600]}":                     `6:47: "at_mst" is no comparison; did you mean "at_most"?`,
		"[fuse_fitted]":                                                     `6:14: requirements[0].require`,
	} {
		_, err := lineSet(t, line)
		if err == nil || !strings.Contains(err.Error(), "pvstring.yaml:"+want) {
			t.Errorf("%s\n got %v\nwant %s", line, err, want)
		}
	}
}

// A parameter of a set above changes nothing of what a word of a set below means.
func TestWordsStayWords(t *testing.T) {
	dir := writeSet(t, "words", map[string]string{"ruleset.yaml": `name: words
title: t
version: 0.1.0
extends: iec
parameters:
  pv_dc: {title: t, value: x, source: {document: test, how: house rule}}
`})
	above, err := ruleset.Load(context.Background(), policies.FS, dir)
	if err != nil {
		t.Fatal(err)
	}
	below, err := ruleset.Load(context.Background(), policies.FS, "iec")
	if err != nil {
		t.Fatal(err)
	}
	for i, q := range below.Requirements {
		if got := above.Requirements[i]; fmt.Sprint(got.Compared()) != fmt.Sprint(q.Compared()) {
			t.Errorf("%s: %v, and %v", q.ID, got.Compared(), q.Compared())
		}
	}
}
