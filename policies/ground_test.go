package policies_test

import (
	"testing"

	"sunclause/engine/ruleset"
	"sunclause/facts/working"
)

// TestShallHasAGround: what fails a check has a document that asks for it, or follows
// from physics, geometry or the meaning of what is stated; then the remedy says what is
// to be put right. What the trade merely does is a should.
func TestShallHasAGround(t *testing.T) {
	for _, q := range load(t, "gb").Requirements {
		if q.Level != ruleset.Shall {
			continue
		}
		switch how := q.Source.How; {
		case how == working.Read || how == working.Memory:
		case how != working.Definition:
			t.Errorf("%s is a shall and rests on %q", q.ID, how)
		case q.Remedy == "":
			t.Errorf("%s follows from %s, and no remedy says what is wrong", q.ID, q.Source.Document)
		}
	}
}
