package facts_test

import (
	"reflect"
	"testing"

	"sunclause/facts"
	"sunclause/schema"
)

// FuzzDerive derives the facts of any document that can be read: nothing
// panics, what is known is finite, and the same document gives the same facts.
func FuzzDerive(f *testing.F) {
	for _, text := range samples(f) {
		for i := range methods {
			f.Add(text, uint8(i))
		}
	}
	f.Fuzz(func(t *testing.T, text []byte, method uint8) {
		d, err := schema.Decode("fuzz", text)
		if err != nil {
			t.Skip()
		}
		b := rules(methods[int(method)%len(methods)])
		first := facts.Derive(&d.Installation, b)
		checkNumbers(t, first)
		if !reflect.DeepEqual(first, facts.Derive(&d.Installation, b)) {
			t.Error("the same document gave other facts")
		}
	})
}
