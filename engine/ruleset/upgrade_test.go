package ruleset_test

import (
	"context"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"sunclause/engine/ruleset"
	"sunclause/policies"
)

// TestUpgrade puts a set of the older form, with comments everywhere, into the
// present one. The set as it must be lies beside it.
func TestUpgrade(t *testing.T) {
	old, want := "testdata/old/older", "testdata/upgraded/older"
	changed, err := ruleset.Upgrade(context.Background(), policies.FS, old)
	if err != nil {
		t.Fatal(err)
	}
	got := map[string]string{}
	for _, c := range changed {
		got[c.Name] = string(c.Text)
	}
	for _, name := range []string{"ruleset.yaml", "pvstring.yaml", "braces.yaml", "site.yaml", "mppt.rego", "signs.yaml", "tables/labels_older.yaml", "tests/pvstring.yaml"} {
		raw, err := os.ReadFile(filepath.Join(want, filepath.FromSlash(name)))
		if err != nil {
			t.Fatal(err)
		}
		if d := cmp.Diff(string(raw), got[name]); d != "" {
			t.Errorf("%s (- wanted, + got):\n%s", name, d)
		}
		delete(got, name)
	}
	for name := range got {
		t.Errorf("%s changed", name)
	}
	again, err := ruleset.Upgrade(context.Background(), policies.FS, want)
	if err != nil || len(again) > 0 {
		t.Errorf("a second time: %d files, %v", len(again), err)
	}
}

// The sets that ship are in the present form, so that an upgrade writes nothing.
func TestShippedSetsAreInThePresentForm(t *testing.T) {
	for _, name := range []string{"iec", "gb", "house-example"} {
		changed, err := ruleset.Upgrade(context.Background(), policies.FS, filepath.Join("../../policies", name))
		if err != nil {
			t.Fatal(err)
		}
		for _, c := range changed {
			t.Errorf("%s/%s changes", name, c.Name)
		}
	}
}

// Lines that end in a carriage return and a line feed do so afterwards.
func TestUpgradeKeepsLineEndings(t *testing.T) {
	dos := func(text []byte) string { return strings.ReplaceAll(string(text), "\n", "\r\n") }
	files := map[string]string{}
	old, want := os.DirFS("testdata/old/older"), os.DirFS("testdata/upgraded/older")
	err := fs.WalkDir(old, ".", func(name string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		raw, err := fs.ReadFile(old, name)
		files[name] = dos(raw)
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	changed, err := ruleset.Upgrade(context.Background(), policies.FS, writeSet(t, "older", files))
	if err != nil || len(changed) == 0 {
		t.Fatal(len(changed), err)
	}
	for _, c := range changed {
		raw, err := fs.ReadFile(want, c.Name)
		if err != nil {
			t.Fatal(err)
		}
		if d := cmp.Diff(dos(raw), string(c.Text)); d != "" {
			t.Errorf("%s (- wanted, + got):\n%s", c.Name, d)
		}
	}
}

// The older form is refused, and what the row is now is said.
func TestOlderFormIsRefused(t *testing.T) {
	_, err := ruleset.Load(context.Background(), policies.FS, "testdata/old/older")
	for _, want := range []string{
		`ruleset.yaml:9:3: this is written in the form of older versions; now it is modules_max: {title: most modules, value: 20, source: {document: house rule, how: house rule}}; sunclause ruleset upgrade FOLDER rewrites a whole set`,
		`braces.yaml:1:14: this is written in the form of older versions; now it is gap_mm: {title: in brackets, value: 4, unit: mm, source: {document: house rule, how: house rule}}`,
		"pvstring.yaml:9:5: this is written in the form of older versions; now it is stage: as_built, when: [fuse_fitted, technology one_of mono_si multi_si, installation.premises equals 'dwelling'], require: voc_max_v at_most strings.inverter_dc_voltage_max_v; sunclause ruleset upgrade FOLDER rewrites a whole set",
		`technology differs 'made_of', fuse_fitted differs yes, installation.design_date since 2026-01-31]`, // a parameter is called so
		`site.yaml:2:3: this is written in the form of older versions; now it is stage: as_built`,
		`pvstring.yaml:46:5: this is written in the form of older versions; now it is when: [not fuse_fitted], require: technology differs ''`,
	} {
		if err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("got %v\nwant %s", err, want)
		}
	}
}

// What cannot be put otherwise is named, and nothing is handed out.
func TestUpgradeRefused(t *testing.T) {
	manifest := "name: odd\ntitle: t\nversion: 0.1.0\n"
	row := func(rest string) string {
		return "requirements:\n  - {id: odd/a-b, title: t, level: shall, subject: strings, " + rest + "source: {document: test, how: house rule}}\n"
	}
	for name, c := range map[string]struct{ rows, want string }{
		"two limits":    {row("measure: voc_max_v, comparison: at_most, limit: {value: 1, fact: voc_max_v}, "), "pvstring.yaml:2:5: it cannot be upgraded: it does not say which fact is compared how with one limit"},
		"no limit":      {row("measure: voc_max_v, comparison: at_most, "), "it does not say which fact"},
		"a comment":     {row("measure: voc_max_v, # why\n    comparison: at_most, limit: {value: 1}, "), "there is a comment within the braces (# why); move it above the row"},
		"unknown facts": {row("measure: voc_mx_v, comparison: at_most, limit: {value: 1}, "), `rewritten, the set could not be used`},
		"a condition":   {row("when: [{fact: fuse_fitted}], measure: voc_max_v, comparison: at_most, limit: {value: 1}, "), "condition 1: it does not say which fact"},
	} {
		dir := writeSet(t, "odd", map[string]string{"ruleset.yaml": manifest, "pvstring.yaml": c.rows})
		if changed, err := ruleset.Upgrade(context.Background(), policies.FS, dir); err == nil || !strings.Contains(err.Error(), c.want) || changed != nil {
			t.Errorf("%s: %v\nwant %s", name, err, c.want)
		}
	}
}
