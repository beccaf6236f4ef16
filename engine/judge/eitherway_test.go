package judge_test

import (
	"context"
	"os"
	"path/filepath"
	"slices"
	"testing"

	"sunclause/engine/catalogue"
	"sunclause/engine/judge"
	"sunclause/engine/ruleset"
	"sunclause/facts/working"
	"sunclause/policies"
)

// A condition that is not known leaves three cases: what is asked for is there in
// any case, it is not there, or that is not known either.
func TestEitherWay(t *testing.T) {
	dir := filepath.Join(t.TempDir(), "either")
	for name, text := range map[string]string{
		"ruleset.yaml": "name: either\ntitle: t\nversion: 0.1.0\n",
		"pvstring.yaml": `requirements:
  - {id: either/row, title: t, level: shall, subject: strings, when: [fuse_fitted], require: modules_in_series at_most 10, source: {document: test, how: house rule}}
`,
		"pvstring.rego": `package either.pvstring

# METADATA
# title: t
# custom:
#   id: either/rule
#   level: shall
#   subject: strings
#   when: [fuse_fitted]
#   broken: too many modules
#   source: {document: test, how: house rule}
findings contains f if {
	some s in input.strings
	s.modules_in_series > 10
	f := {"id": "either/rule", "subject": s.id}
}
`,
	} {
		if err := os.MkdirAll(dir, 0o755); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(filepath.Join(dir, name), []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	set, err := ruleset.Load(context.Background(), policies.FS, dir)
	if err != nil {
		t.Fatal(err)
	}
	modules := func(n float64) working.Number {
		return working.Figure("modules_in_series", "", n, "a test", working.ByDefinition)
	}
	unknown := working.UnknownFlag("/strings/0/overcurrent/fitted")
	for name, c := range map[string]struct {
		fused     working.Flag
		modules   working.Number
		want      judge.Outcome
		eitherWay bool
		missing   []string
	}{
		"known to apply, kept":          {working.KnownFlag(true, ""), modules(10), judge.Met, false, nil},
		"known to apply, broken":        {working.KnownFlag(true, ""), modules(11), judge.NotMet, false, nil},
		"known not to apply, broken":    {working.KnownFlag(false, ""), modules(11), judge.NotApplicable, false, nil},
		"not known to apply, kept":      {unknown, modules(10), judge.Met, true, []string{"/strings/0/overcurrent/fitted"}},
		"not known to apply, broken":    {unknown, modules(11), judge.NotShown, false, []string{"/strings/0/overcurrent/fitted"}},
		"not known to apply, not known": {unknown, working.Unknown("n", "", "/n"), judge.NotShown, false, []string{"/n", "/strings/0/overcurrent/fitted"}},
		"known to apply, not known":     {working.KnownFlag(true, ""), working.Unknown("n", "", "/n"), judge.NotShown, false, []string{"/n"}},
		"known not to apply, not known": {working.KnownFlag(false, ""), working.Unknown("n", "", "/n"), judge.NotApplicable, false, nil},
	} {
		t.Run(name, func(t *testing.T) {
			f := catalogue.Blank()
			of, _ := catalogue.Of("strings")
			of.Put(f, "S1", nil)
			f.Strings[0].FuseFitted, f.Strings[0].ModulesInSeries = c.fused, c.modules
			for _, q := range set.Requirements {
				all, err := judge.Requirement(context.Background(), set, f, q)
				if err != nil {
					t.Fatal(err)
				}
				if j := all[0]; j.Outcome != c.want || j.EitherWay != c.eitherWay || !slices.Equal(working.Pointers(j.Missing), c.missing) {
					t.Errorf("%s: %s, either way %t, missing %v; want %s, %t, %v", q.ID, j.Outcome, j.EitherWay, j.Missing, c.want, c.eitherWay, c.missing)
				}
			}
		})
	}
}
