package policies_test

import (
	"flag"
	"testing"
)

// thorough has every member of the whole document left out, which takes minutes.
var thorough = flag.Bool("thorough", false, "leave out every member of the whole document in turn")

// judged are the top members of the document from which facts are derived so
// far. The others are tried in a sample: each costs a whole check.
var judged = []string{"project", "site", "datasheets", "strings", "arrays", "cables", "isolators", "inverters"}

// TestSilenceIsNeverAPass takes the cottage with all its faults at once and
// leaves its members out, one at a time, wherever the document is still read
// without it. What was not met or not shown before must never come out as met.
func TestSilenceIsNeverAPass(t *testing.T) {
	set := load(t, "gb")
	document := faulty(t, "*.json")
	small := map[string]any{}
	for _, m := range judged {
		small[m] = document[m]
	}
	small["cables"] = pvRuns(document["cables"])
	small["roof"] = map[string]any{"planes": bare(document["roof"])}
	trySilence(t, set, small, everyNth(members(small, ""), inShort(25, 5)))
	all := members(document, "")
	sample := inShort(20, 150)
	if *thorough {
		sample = len(all)
	}
	trySilence(t, set, document, everyNth(all, len(all)/sample))
}

// bare keeps of the planes what the facts take: where they face.
func bare(roof any) any {
	var planes []any
	for _, p := range roof.(map[string]any)["planes"].([]any) {
		kept := map[string]any{}
		for _, m := range []string{"id", "azimuth_deg", "pitch_deg"} {
			kept[m] = p.(map[string]any)[m]
		}
		planes = append(planes, kept)
	}
	return planes
}

// pvRuns keeps the runs of the PV side: the others end at parts left out here.
func pvRuns(cables any) any {
	var runs []any
	for _, r := range cables.([]any) {
		if service := r.(map[string]any)["service"]; service == "pv_string" || service == "pv_array" {
			runs = append(runs, r)
		}
	}
	return runs
}
