package policies_test

import (
	"encoding/json"
	"flag"
	"fmt"
	"path/filepath"
	"runtime"
	"slices"
	"strconv"
	"strings"
	"sync"
	"testing"

	"sunclause/engine"
	"sunclause/schema"
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
	raw := example(t, "gb-island-cottage")
	files, _ := filepath.Glob("../testdata/faults/*.json")
	for _, name := range files {
		raw = readFault(t, name).apply(t, raw)
	}
	var document map[string]any
	if err := json.Unmarshal(raw, &document); err != nil {
		t.Fatal(err)
	}
	small := map[string]any{}
	for _, m := range judged {
		small[m] = document[m]
	}
	small["cables"] = pvRuns(document["cables"])
	small["roof"] = map[string]any{"planes": bare(document["roof"])}
	every := 5
	if testing.Short() {
		every = 25
	}
	trySilence(t, set, small, everyNth(members(small, ""), every))
	all := members(document, "")
	sample := 150
	if testing.Short() {
		sample = 20
	}
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

func everyNth(all []string, n int) []string {
	var some []string
	for i := 0; i < len(all); i += max(n, 1) {
		some = append(some, all[i])
	}
	return some
}

// members lists the pointers of all members of objects, at any depth.
func members(v any, at string) []string {
	var all []string
	switch v := v.(type) {
	case map[string]any:
		for name, m := range v {
			all = append(all, at+"/"+name)
			all = append(all, members(m, at+"/"+name)...)
		}
	case []any:
		for i, m := range v {
			all = append(all, members(m, at+"/"+strconv.Itoa(i))...)
		}
	}
	slices.Sort(all)
	return all
}

// without copies a tree but for the value at a pointer.
func without(v any, path []string) any {
	switch v := v.(type) {
	case map[string]any:
		kept := map[string]any{}
		for name, m := range v {
			switch {
			case name != path[0]:
				kept[name] = m
			case len(path) > 1:
				kept[name] = without(m, path[1:])
			}
		}
		return kept
	case []any:
		kept := slices.Clone(v)
		i, _ := strconv.Atoi(path[0])
		kept[i] = without(v[i], path[1:])
		return kept
	}
	return v
}

func trySilence(t *testing.T, set *engine.RuleSet, document map[string]any, pointers []string) {
	before := outcomes(t, set, text(t, document))
	queue := make(chan string)
	var workers sync.WaitGroup
	var mu sync.Mutex
	tried := 0
	for range runtime.GOMAXPROCS(0) {
		workers.Go(func() {
			for p := range queue {
				raw := text(t, without(document, strings.Split(p[1:], "/")))
				if _, err := schema.Decode("installation.json", raw); err != nil {
					continue // the member is required, or something refers to it
				}
				after := outcomes(t, set, raw)
				mu.Lock()
				tried++
				for k, o := range before {
					if finding(o) && after[k] == engine.Met {
						t.Errorf("without %s, %s of %s is met; it was %s", p, k.Requirement, k.Subject, o)
					}
				}
				mu.Unlock()
			}
		})
	}
	for _, p := range pointers {
		queue <- p
	}
	close(queue)
	workers.Wait()
	if tried == 0 {
		t.Error("no member could be left out")
	}
}

func text(t *testing.T, v any) []byte {
	raw, err := json.Marshal(v)
	if err != nil {
		panic(fmt.Sprint("a tree that came from JSON: ", err))
	}
	return raw
}
