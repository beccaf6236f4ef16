package facttest_test

import (
	"testing"

	"sunclause/facts/facttest"
	"sunclause/facts/working"
)

// counter counts what a check finds wrong.
type counter struct {
	facttest.T
	wrong int
}

func (c *counter) Helper() {}

func (c *counter) Errorf(string, ...any) { c.wrong++ }

// TestChecksFail makes sure that each check passes what is as wanted, and fails
// what is not.
func TestChecksFail(t *testing.T) {
	two, none := working.Counted("n", 2, ""), working.Unknown("n", "", "/a", "/b")
	for what, c := range map[string]struct {
		check func(facttest.T)
		wrong int
	}{
		"the value":             {func(t facttest.T) { facttest.Is(t, "n", two, 2) }, 0},
		"another value":         {func(t facttest.T) { facttest.Is(t, "n", two, 3) }, 1},
		"a value of an unknown": {func(t facttest.T) { facttest.Is(t, "n", none, 0) }, 1},
		"near":                  {func(t facttest.T) { facttest.Near(t, "n", two, 2.5, 0.5) }, 0},
		"not near":              {func(t facttest.T) { facttest.Near(t, "n", two, 2.5, 0.4) }, 1},
		"near an unknown":       {func(t facttest.T) { facttest.Near(t, "n", none, 0, 1) }, 1},
		"what is missing":       {func(t facttest.T) { facttest.Wants(t, "n", none, "/a", "/b") }, 0},
		"some of what is":       {func(t facttest.T) { facttest.Wants(t, "n", none, "/a") }, 1},
		"nothing is":            {func(t facttest.T) { facttest.Wants(t, "n", two) }, 1},
		"a list unknown":        {func(t facttest.T) { facttest.Lists(t, "n", working.Names{}) }, 1},
	} {
		var counted counter
		if c.check(&counted); counted.wrong != c.wrong {
			t.Errorf("%s: %d found wrong, want %d", what, counted.wrong, c.wrong)
		}
	}
}

func TestAt(t *testing.T) {
	doc := map[string]any{"a": []any{map[string]any{"id": "X"}, map[string]any{"id": "Y"}}}
	if id := facttest.At(doc, "a", 1)["id"]; id != "Y" {
		t.Errorf("/a/1/id is %v, want Y", id)
	}
}
