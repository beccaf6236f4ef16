package policies_test

import (
	"encoding/json"
	"errors"
	"fmt"
	"maps"
	"math/rand/v2"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"

	"sunclause/schema"
	"sunclause/schema/examples"
)

// faulty is an example with all the faults of the files that a pattern names.
func faulty(t *testing.T, name, pattern string) map[string]any {
	t.Helper()
	raw := examples.Text(t, name)
	files, err := filepath.Glob("../testdata/" + pattern)
	if err != nil || len(files) == 0 {
		t.Fatal("no faults", err)
	}
	for _, name := range files {
		raw = readFault(t, name).apply(t, raw)
	}
	return tree(t, raw)
}

// spoilt is an example of which a third of all figures and answers are wrong, by
// a seed: figures by a factor, answers turned into their opposite. What a
// document may not say is put back.
func spoilt(t *testing.T, name string, seed uint64) map[string]any {
	t.Helper()
	document := tree(t, examples.Text(t, name))
	s := spoiling{rand.New(rand.NewPCG(0, seed)), map[string]func(){}}
	s.spoil(document, "")
	for {
		_, err := schema.Decode("installation.json", text(document))
		var problems schema.Problems
		if err == nil {
			return document
		} else if !errors.As(err, &problems) || s.putBack(problems) == 0 {
			t.Fatal(err)
		}
	}
}

type spoiling struct {
	chance *rand.Rand
	back   map[string]func() // by JSON pointer: makes it as it was
}

func (s spoiling) spoil(v any, at string) {
	switch v := v.(type) {
	case map[string]any:
		for _, name := range slices.Sorted(maps.Keys(v)) {
			s.value(v[name], at+"/"+name, func(to any) { v[name] = to })
		}
	case []any:
		for i := range v {
			s.value(v[i], at+"/"+strconv.Itoa(i), func(to any) { v[i] = to })
		}
	}
}

func (s spoiling) value(v any, at string, set func(any)) {
	wrong := v
	switch v := v.(type) {
	case bool:
		wrong = !v
	case float64:
		wrong = v * []float64{0.2, 0.5, 2, 5}[s.chance.IntN(4)]
	default:
		s.spoil(v, at)
		return
	}
	if s.chance.IntN(3) == 0 {
		set(wrong)
		s.back[at] = func() { set(v) }
	}
}

// putBack undoes what was made wrong where there are problems, and counts it.
func (s spoiling) putBack(problems schema.Problems) int {
	n := 0
	for _, p := range problems {
		for at, undo := range s.back {
			if at == p.At || strings.HasPrefix(at, p.At+"/") {
				undo()
				delete(s.back, at)
				n++
			}
		}
	}
	return n
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

func text(v any) []byte {
	raw, err := json.Marshal(v)
	if err != nil {
		panic(fmt.Sprint("a tree that came from JSON: ", err))
	}
	return raw
}
