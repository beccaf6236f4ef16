package policies_test

import (
	"slices"
	"strings"
	"testing"
)

// TestSilenceOfTheRoof does for the roof what TestSilenceIsNeverAPass does for
// the circuits: it takes the roof of the cottage with all its faults, cut down to
// the parts that have them and a few others, and leaves its members out.
func TestSilenceOfTheRoof(t *testing.T) {
	set := load(t, "gb")
	document := faulty(t, "roof-*.json")
	sheets := document["datasheets"].(map[string]any)
	small := map[string]any{
		"project": document["project"], "site": document["site"], "strings": document["strings"], "roof": document["roof"],
		"datasheets": map[string]any{"modules": sheets["modules"], "fixings": sheets["fixings"]},
	}
	for _, p := range document["roof"].(map[string]any)["planes"].([]any) {
		cutDown(p.(map[string]any))
	}
	var tried []string
	for _, p := range members(small, "") {
		if !strings.HasPrefix(p, "/strings") {
			tried = append(tried, p)
		}
	}
	trySilence(t, set, small, everyNth(tried, inShort(20, 2)))
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
