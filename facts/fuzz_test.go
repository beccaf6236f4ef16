package facts_test

import (
	"encoding/json"
	"fmt"
	"maps"
	"math"
	"math/rand/v2"
	"reflect"
	"slices"
	"strings"
	"testing"

	"sunclause/facts"
	"sunclause/facts/facttest"
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
// are left out and numbers changed, so that many can.
func TestDeriveDamagedDocuments(t *testing.T) {
	if testing.Short() {
		t.Skip("takes its time")
	}
	seeds, least := uint64(100), 40
	if facttest.Thorough() {
		seeds, least = 500, 200
	}
	read := 0
	for file, text := range samples(t) {
		if !strings.HasPrefix(file, "testdata") {
			continue
		}
		for seed := range seeds {
			r := rand.New(rand.NewPCG(seed, 0))
			d, err := schema.Decode(file, damaged(t, r, text))
			if err != nil {
				continue
			}
			read++
			method := methods[r.IntN(len(methods))]
			deriveTwice(t, &d.Installation, method)
			everyNumber(facts.Derive(&d.Installation, rules(method)), func(path string, n working.Number) {
				if !cancels(n) {
					checkWorking(t, fmt.Sprintf("%s damaged by %d: %s", file, seed, path), n)
				}
			})
		}
	}
	if read < least {
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

// damaged leaves out some members of a document and changes some numbers.
func damaged(t *testing.T, r *rand.Rand, text []byte) []byte {
	t.Helper()
	var tree any
	if err := json.Unmarshal(text, &tree); err != nil {
		t.Fatal(err)
	}
	for range 1 + r.IntN(3) {
		all := members(tree)
		m := all[r.IntN(len(all))]
		v, isNumber := m.of[m.name].(float64)
		if !isNumber || r.IntN(3) == 0 {
			delete(m.of, m.name)
			continue
		}
		others := []float64{1, 2, v + 1, 10 * v, v / 3, 0, -v, 1e9, 1e-9}
		m.of[m.name] = others[r.IntN(len(others))]
	}
	changed, err := json.Marshal(tree)
	if err != nil {
		t.Fatal(err)
	}
	return changed
}

// member is a member of an object within a tree.
type member struct {
	of   map[string]any
	name string
}

func members(tree any) []member {
	var all []member
	switch v := tree.(type) {
	case map[string]any:
		for _, name := range slices.Sorted(maps.Keys(v)) {
			all = append(append(all, member{v, name}), members(v[name])...)
		}
	case []any:
		for _, e := range v {
			all = append(all, members(e)...)
		}
	}
	return all
}
