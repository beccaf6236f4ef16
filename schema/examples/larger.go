package examples

import (
	"encoding/json"
	"fmt"
	"maps"
	"slices"
	"strings"
)

// cloned are the lists whose parts a larger roof has more of.
var cloned = []string{"strings", "arrays", "cables", "isolators", "spds", "inverters", "labels"}

// Larger is the warehouse with its parts so many times over, each with ids of its
// own, and without what lies on its roof. It has forty strings for each time.
func Larger(t T, times int) []byte {
	t.Helper()
	raw := Text(t, Warehouse)
	var doc map[string]any
	if err := json.Unmarshal(raw, &doc); err != nil {
		t.Fatal(err)
	}
	delete(doc, "roof") // of modules and clamps there are as many as there are planes
	for _, s := range doc["strings"].([]any) {
		delete(s.(map[string]any), "plane")
	}
	ids := map[string]bool{}
	for _, list := range cloned {
		collectIDs(doc[list], ids)
	}
	for _, list := range cloned {
		parts := doc[list].([]any)
		all := slices.Clone(parts)
		for i := 1; i < times; i++ {
			for _, part := range parts {
				all = append(all, renamed(part, ids, fmt.Sprintf("-%d", i)))
			}
		}
		doc[list] = all
	}
	text, err := json.Marshal(doc)
	if err != nil {
		t.Fatal(err)
	}
	return text
}

// collectIDs finds the ids of parts; those of ways count only within their part.
func collectIDs(v any, ids map[string]bool) {
	switch v := v.(type) {
	case map[string]any:
		if id, ok := v["id"].(string); ok {
			ids[id] = true
		}
		for name, e := range v {
			if name != "ways" {
				collectIDs(e, ids)
			}
		}
	case []any:
		for _, e := range v {
			collectIDs(e, ids)
		}
	}
}

// renamed is a copy of a value in which each id, alone or of a terminal, has an ending.
func renamed(v any, ids map[string]bool, ending string) any {
	switch v := v.(type) {
	case map[string]any:
		m := maps.Clone(v)
		for name, e := range m {
			m[name] = renamed(e, ids, ending)
		}
		return m
	case []any:
		l := slices.Clone(v)
		for i := range l {
			l[i] = renamed(l[i], ids, ending)
		}
		return l
	case string:
		if id, rest, terminal := strings.Cut(v, "."); ids[id] && terminal {
			return id + ending + "." + rest
		} else if ids[id] {
			return id + ending
		}
	}
	return v
}
