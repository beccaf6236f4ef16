package policies_test

import (
	"strings"
	"testing"
)

// TestSilenceOfEarthing takes the cottage with the faults of its earthing and
// leaves members of the earthing out, one at a time; a few in a short run.
func TestSilenceOfEarthing(t *testing.T) {
	document := faulty(t, "earthing-*.json")
	var own []string
	for _, p := range members(document, "") {
		if strings.HasPrefix(p, "/earthing/") || strings.HasPrefix(p, "/ac/supply/") {
			own = append(own, p)
		}
	}
	trySilence(t, load(t, "gb"), document, everyNth(own, inShort(20, 2)))
}
