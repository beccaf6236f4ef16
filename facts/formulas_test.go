package facts_test

import (
	"context"
	"testing"

	"sunclause/engine/ruleset"
	"sunclause/facts"
	"sunclause/facts/working"
	"sunclause/policies"
	"sunclause/schema"
)

// TestEveryFormulaIsUsed derives the samples by every embedded set: a formula
// that none of them works out could name a symbol for which there is no number,
// and nobody would see it. Formulas are made at the start of the program only.
func TestEveryFormulaIsUsed(t *testing.T) {
	made := len(working.Formulas())
	for _, name := range ruleset.Embedded(policies.FS) {
		set, err := ruleset.Load(context.Background(), policies.FS, name)
		if err != nil {
			t.Fatal(err)
		}
		for file, text := range samples(t) {
			d, err := schema.Decode(file, text)
			if err != nil {
				t.Fatal(err)
			}
			facts.Derive(&d.Installation, set.Book)
		}
	}
	for _, f := range working.Formulas() {
		if !f.Used() {
			t.Errorf("no sample works out %v", f)
		}
	}
	if n := len(working.Formulas()); n != made {
		t.Errorf("%d formulas were made while facts were derived; declare them as variables of the package", n-made)
	}
}
