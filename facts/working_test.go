package facts_test

import (
	"math"
	"testing"

	"sunclause/facts"
	"sunclause/facts/facttest"
	"sunclause/facts/working"
	"sunclause/schema"
	"sunclause/schema/examples"
)

// The working that is printed has to be true: whoever works out the formula
// with the numbers put in comes to the number beside it.
func TestPrintedWorkingIsTrue(t *testing.T) {
	for file, text := range samples(t) {
		if file == examples.Warehouse && !facttest.Thorough() {
			continue
		}
		d, err := schema.Decode(file, text)
		if err != nil {
			t.Errorf("%s: %v", file, err)
			continue
		}
		for _, method := range methods {
			f := facts.Derive(&d.Installation, withRoof(t, rules(method)))
			checkNumbers(t, f)
			everyNumber(f, func(path string, n working.Number) { checkWorking(t, file+": "+path, n) })
		}
	}
}

// checkWorking works out what is printed. A look-up says in words how it was found,
// and cannot be worked out: one that can is a formula.
func checkWorking(t *testing.T, path string, n working.Number) {
	t.Helper()
	if !n.Known() || n.Formula() == "" {
		return
	}
	got, err := working.WorkOut(n.Filled())
	switch {
	case n.Lookup() && err == nil:
		t.Errorf("%s = %s is arithmetic, and no look-up", path, n.Formula())
	case n.Lookup():
	case err != nil:
		t.Errorf("%s = %s = %s cannot be worked out: %v", path, n.Formula(), n.Filled(), err)
	case math.Abs(got-n.Value()) > 1e-9*math.Abs(n.Value()):
		t.Errorf("%s = %s = %s comes to %v, and %v is printed", path, n.Formula(), n.Filled(), got, n.Value())
	}
}
