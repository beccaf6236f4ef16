package working_test

import (
	"slices"
	"testing"

	"sunclause/facts/working"
)

// guard is embedded in part, as rooms embed what belongs together.
type guard struct{ Sealed working.Flag }

type part struct {
	working.Subject
	LengthM working.Number
	Place   working.Text
	Strings working.Names
	guard
}

func TestBlank(t *testing.T) {
	p := part{Subject: working.Subject{ID: "R1.1"}, LengthM: stated("l", "/l", 4), Place: working.KnownText("roof", "/p")}
	working.Blank(&p, "/cables/0/segments")
	for name, fact := range map[string]interface {
		Known() bool
		Missing() []working.Gap
	}{"number": p.LengthM, "text": p.Place, "list": p.Strings, "flag of what is embedded": p.Sealed} {
		if fact.Known() || !slices.Equal(working.Pointers(fact.Missing()), []string{"/cables/0/segments"}) {
			t.Errorf("%s: known is %t, missing %v", name, fact.Known(), fact.Missing())
		}
	}
	if p.ID != "R1.1" {
		t.Errorf("the part lost its name: %q", p.ID)
	}
}
