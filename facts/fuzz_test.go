package facts_test

import (
	"encoding/json"
	"maps"
	"math"
	"reflect"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"sunclause/facts"
	"sunclause/facts/working"
	"sunclause/schema"
)

// FuzzDerive derives the facts of any document that can be read: nothing
// panics, what is known is finite, and the same document gives the same facts.
func FuzzDerive(f *testing.F) {
	for file, text := range samples(f) {
		if !strings.HasPrefix(file, "testdata") {
			continue // the whole jobs are too long to be changed byte by byte
		}
		for i := range methods {
			f.Add(text, uint8(i))
		}
	}
	f.Fuzz(func(t *testing.T, text []byte, method uint8) {
		d, err := schema.Decode("fuzz", text)
		if err != nil {
			t.Skip()
		}
		deriveTwice(t, &d.Installation, methods[int(method)%len(methods)])
	})
}

func deriveTwice(t *testing.T, in *schema.Installation, method string) {
	t.Helper()
	first := facts.Derive(in, rules(method))
	checkNumbers(t, first)
	if !reflect.DeepEqual(first, facts.Derive(in, rules(method))) {
		t.Error("the same document gave other facts")
	}
}

// Bytes changed at random seldom leave a document that can be read. Here members
// are left out and numbers changed, so that most can.
func TestDeriveDamagedDocuments(t *testing.T) {
	read := 0
	for file, text := range samples(t) {
		if !strings.HasPrefix(file, "testdata") {
			continue
		}
		rapid.Check(t, func(r *rapid.T) {
			var tree any
			if err := json.Unmarshal(text, &tree); err != nil {
				t.Fatal(err)
			}
			damaged, err := json.Marshal(damage(r, tree))
			if err != nil {
				t.Fatal(err)
			}
			d, err := schema.Decode(file, damaged)
			if err != nil {
				return
			}
			read++
			method := rapid.SampledFrom(methods).Draw(r, "method")
			deriveTwice(t, &d.Installation, method)
			everyNumber(facts.Derive(&d.Installation, rules(method)), func(path string, n working.Number) {
				if !cancels(n) {
					checkWorking(t, file+": "+path, n)
				}
			})
		})
	}
	if read < 100 {
		t.Errorf("only %d damaged documents could be read", read)
	}
}

// cancels reports whether so little is left of the terms of a number that the
// last digits of a binary fraction count.
func cancels(n working.Number) bool {
	greatest := 0.0
	for _, in := range n.Inputs() {
		greatest = max(greatest, math.Abs(in.Value()))
	}
	return math.Abs(n.Value()) < 1e-4*greatest
}

// damage leaves out some members of a tree and changes some of its numbers.
func damage(r *rapid.T, tree any) any {
	switch v := tree.(type) {
	case map[string]any:
		for _, name := range slices.Sorted(maps.Keys(v)) {
			if rapid.IntRange(0, 60).Draw(r, "leave out "+name) == 60 {
				delete(v, name)
			} else {
				v[name] = damage(r, v[name])
			}
		}
	case []any:
		for i := range v {
			v[i] = damage(r, v[i])
		}
	case float64:
		if rapid.IntRange(0, 19).Draw(r, "change") == 19 {
			return rapid.SampledFrom([]float64{1, 2, v + 1, 10 * v, v / 3, 0, -v, 1e9, 1e-9}).Draw(r, "number")
		}
	}
	return tree
}
