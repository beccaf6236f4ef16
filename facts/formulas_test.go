package facts_test

import (
	"context"
	"maps"
	"testing"

	"sunclause/engine/ruleset"
	"sunclause/facts"
	"sunclause/facts/book"
	"sunclause/facts/working"
	"sunclause/policies"
	"sunclause/schema"
)

// otherWords are words for parameters that no embedded set chooses, and that lead
// to formulas of their own.
var otherWords = map[string]string{"ac_drop_temperature": "design_current"}

// worded is the book with other words for some parameters.
func worded(b book.Book, words map[string]string) book.Book {
	b.Parameters = maps.Clone(b.Parameters)
	for name, word := range words {
		p := b.Parameters[name]
		p.Text = word
		b.Parameters[name] = p
	}
	return b
}

// TestEveryFormulaIsUsed derives the samples by every embedded set, and by words
// that none of them chooses: a formula that is never worked out could name a
// symbol for which there is no number, and nobody would see it. Formulas are made
// at the start of the program only.
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
			facts.Derive(&d.Installation, worded(set.Book, otherWords))
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
