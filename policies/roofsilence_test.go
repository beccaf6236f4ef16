package policies_test

import (
	"encoding/json"
	"path/filepath"
	"slices"
	"strings"
	"testing"
)

// TestSilenceOfTheRoof does for the roof what TestSilenceIsNeverAPass does for
// the circuits: it takes the roof of the cottage with all its faults, cut down to
// the parts that have them and a few others, and leaves its members out.
func TestSilenceOfTheRoof(t *testing.T) {
	set := load(t, "gb")
	raw := example(t, "gb-island-cottage")
	files, _ := filepath.Glob("../testdata/faults/roof-*.json")
	for _, name := range files {
		raw = readFault(t, name).apply(t, raw)
	}
	var document map[string]any
	if err := json.Unmarshal(raw, &document); err != nil {
		t.Fatal(err)
	}
	sheets := document["datasheets"].(map[string]any)
	small := map[string]any{
		"project": document["project"], "site": document["site"], "strings": document["strings"], "roof": document["roof"],
		"datasheets": map[string]any{"modules": sheets["modules"], "fixings": sheets["fixings"]},
	}
	for _, p := range document["roof"].(map[string]any)["planes"].([]any) {
		cutDown(p.(map[string]any))
	}
	every := 2
	if testing.Short() {
		every = 20
	}
	var tried []string
	for _, p := range members(small, "") {
		if !strings.HasPrefix(p, "/strings") {
			tried = append(tried, p)
		}
	}
	trySilence(t, set, small, everyNth(tried, every))
}

// cutDown leaves of a plane the rails of the parts that have faults, and what is
// on them.
func cutDown(plane map[string]any) {
	kept := []string{"SER1L", "SER1U", "SER2L", "SWR1L", "SWR2U"}
	on := func(part any, member string) bool {
		rail, _ := part.(map[string]any)[member].(string)
		return slices.Contains(kept, rail)
	}
	for list, member := range map[string]string{"rails": "id", "fixings": "rail", "clamps": "rail"} {
		plane[list] = slices.DeleteFunc(plane[list].([]any), func(p any) bool { return !on(p, member) })
	}
	seen := map[string]int{}
	plane["fixings"] = slices.DeleteFunc(plane["fixings"].([]any), func(p any) bool {
		f := p.(map[string]any)
		seen[f["rail"].(string)]++
		faulty := []string{"SEF05", "SEF10", "SEF19", "SWF01", "SWF28"}
		return seen[f["rail"].(string)] > 1 && !slices.Contains(faulty, f["id"].(string))
	})
	plane["clamps"] = plane["clamps"].([]any)[:4]
	delete(plane, "penetrations") // their runs are left out here
}
