package facts_test

import (
	"context"
	"testing"

	"sunclause/engine/ruleset"
	"sunclause/facts"
	"sunclause/facts/facttest"
	"sunclause/facts/working"
	"sunclause/policies"
	"sunclause/schema"
	"sunclause/schema/examples"
)

// The printed working has to be true by the figures of every embedded set too,
// whose tables the small book of the tests does not have.
func TestPrintedWorkingIsTrueByTheSets(t *testing.T) {
	if testing.Short() {
		t.Skip("takes its time")
	}
	texts := samples(t)
	for _, name := range ruleset.Embedded(policies.FS) {
		set, err := ruleset.Load(context.Background(), policies.FS, name)
		if err != nil {
			t.Fatal(err)
		}
		for file, text := range texts {
			if file == examples.Warehouse && !facttest.Thorough() {
				continue // it has the formulas of the cottage many times over, and few of its own
			}
			d, err := schema.Decode(file, text)
			if err != nil {
				t.Fatal(err)
			}
			everyNumber(facts.Derive(&d.Installation, set.Book), func(path string, n working.Number) { checkWorking(t, name+", "+file+": "+path, n) })
		}
	}
}
