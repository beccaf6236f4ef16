package policies_test

import (
	"encoding/json"
	"path/filepath"
	"strings"
	"testing"
)

// TestSilenceOfEarthing takes the cottage with the faults of its earthing and
// leaves members of the earthing out, one at a time; a few in a short run.
func TestSilenceOfEarthing(t *testing.T) {
	raw := example(t, "gb-island-cottage")
	files, _ := filepath.Glob("../testdata/faults/earthing-*.json")
	for _, name := range files {
		raw = readFault(t, name).apply(t, raw)
	}
	var document map[string]any
	if err := json.Unmarshal(raw, &document); err != nil {
		t.Fatal(err)
	}
	var own []string
	for _, p := range members(document, "") {
		if strings.HasPrefix(p, "/earthing/") || strings.HasPrefix(p, "/ac/supply/") {
			own = append(own, p)
		}
	}
	every := 2
	if testing.Short() {
		every = 20
	}
	trySilence(t, load(t, "gb"), document, everyNth(own, every))
}
