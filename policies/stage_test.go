package policies_test

import (
	"testing"
)

// workmanship are members that say how the finished work is: nobody can know them
// while nothing is built.
var workmanship = map[string]bool{
	"edges_protected": true, "touches_roof_covering": true, "gland_fits": true, "glands_fit": true, "rests_in_water": true,
	"way_identified": true, "noticed": true,
	"rests_on_tile": true, "tile_clearance_mm": true, "underlay": true, "resistance_to_main_terminal_kohm": true,
}

// TestDesignAsksForNoFinishedWork takes what only exists when the work is finished
// out of sound examples, and all labels: a design passes without them, and the work as
// built does not.
func TestDesignAsksForNoFinishedWork(t *testing.T) {
	set := load(t, "gb")
	for _, name := range []string{"gb-island-cottage", "gb-battery"} {
		for stage, passes := range map[string]bool{"design": true, "as_built": false} {
			document := staged(t, name, stage)
			withoutWorkmanship(document)
			document["labels"] = []any{}
			fails := 0
			for _, j := range judged(t, set, text(document)).Judgments {
				if !j.FailsCheck(false) {
					continue
				}
				if fails++; passes {
					t.Errorf("%s at design: %s of %s: %s", name, j.Requirement.ID, j.Subject.ID, j.Describe())
				}
			}
			if !passes && fails == 0 {
				t.Errorf("%s passes as built", name)
			}
		}
	}
}

func withoutWorkmanship(v any) {
	switch v := v.(type) {
	case map[string]any:
		for name, of := range v {
			if workmanship[name] {
				delete(v, name)
			}
			withoutWorkmanship(of)
		}
	case []any:
		for _, of := range v {
			withoutWorkmanship(of)
		}
	}
}
