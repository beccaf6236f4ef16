package policies_test

import (
	"encoding/json"
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

// faulty is the cottage with all the faults of the files that a pattern names.
func faulty(t *testing.T, pattern string) map[string]any {
	t.Helper()
	raw := example(t, "gb-island-cottage")
	files, err := filepath.Glob("../testdata/faults/" + pattern)
	if err != nil || len(files) == 0 {
		t.Fatal("no faults", err)
	}
	for _, name := range files {
		raw = readFault(t, name).apply(t, raw)
	}
	return tree(t, raw)
}

// tree is a document as it stands in JSON.
func tree(t *testing.T, raw []byte) map[string]any {
	t.Helper()
	var document map[string]any
	if err := json.Unmarshal(raw, &document); err != nil {
		t.Fatal(err)
	}
	return document
}

// inShort is one number in a short run, and another otherwise.
func inShort(short, otherwise int) int {
	if testing.Short() {
		return short
	}
	return otherwise
}

// everyNth takes some of many.
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

// trySilence leaves members out of a document, one at a time, wherever it is
// still read without them. What was not met or not shown before must never come
// out as met.
func trySilence(t *testing.T, set *engine.RuleSet, document map[string]any, pointers []string) {
	before := outcomes(t, set, text(document))
	queue := make(chan string)
	var workers sync.WaitGroup
	var mu sync.Mutex
	tried := 0
	for range runtime.GOMAXPROCS(0) {
		workers.Go(func() {
			for p := range queue {
				raw := text(without(document, strings.Split(p[1:], "/")))
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

func text(v any) []byte {
	raw, err := json.Marshal(v)
	if err != nil {
		panic(fmt.Sprint("a tree that came from JSON: ", err))
	}
	return raw
}
