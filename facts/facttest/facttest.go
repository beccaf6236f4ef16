// Package facttest helps the tests of the rooms: it decodes the installations
// that they write as Go maps, derives what a room builds on, and holds facts
// against what they should be, or against what they should say is missing. Only
// tests use it.
package facttest

import (
	"encoding/json"
	"math"
	"slices"

	"sunclause/facts/book"
	"sunclause/facts/cable"
	"sunclause/facts/circuit"
	"sunclause/facts/pvstring"
	"sunclause/facts/working"
	"sunclause/schema"
)

// T is what tests and property tests have in common.
type T interface {
	Helper()
	Fatal(args ...any)
	Errorf(format string, args ...any)
}

// Installation decodes a document, which has to be a valid one.
func Installation(t T, doc any) *schema.Installation {
	t.Helper()
	text, err := json.Marshal(doc)
	if err != nil {
		t.Fatal(err)
	}
	d, err := schema.Decode("test", text)
	if err != nil {
		t.Fatal(err)
	}
	return &d.Installation
}

// Below is what most rooms are derived from.
type Below struct {
	Installation *schema.Installation
	Circuit      *circuit.Circuit
	Strings      pvstring.Facts
	Cables       cable.Facts
}

// Derive decodes a document and derives, in their order, what most rooms are
// derived from.
func Derive(t T, doc any, b book.Book) Below {
	t.Helper()
	in := Installation(t, doc)
	c := circuit.Of(in)
	pv := pvstring.Derive(in, c, b)
	return Below{in, c, pv, cable.Derive(in, c, pv, b)}
}

// At goes down a document by names of members and places in lists, to an object.
func At(doc any, path ...any) map[string]any {
	for _, p := range path {
		switch p := p.(type) {
		case string:
			doc = doc.(map[string]any)[p]
		case int:
			doc = doc.([]any)[p]
		}
	}
	return doc.(map[string]any)
}

// Fact is a fact of one value: working.Number, Text or Flag.
type Fact[V comparable] interface {
	Unknowable
	Value() V
}

// Unknowable is any fact: it is known, or names what is missing.
type Unknowable interface {
	Known() bool
	Missing() []working.Gap
}

// Is holds a fact against its value.
func Is[V comparable](t T, what string, got Fact[V], want V) {
	t.Helper()
	if !got.Known() {
		t.Errorf("%s is not known, missing %v; want %v", what, got.Missing(), want)
	} else if got.Value() != want {
		t.Errorf("%s is %v, want %v", what, got.Value(), want)
	}
}

// Near holds a number against a value that it may be so far from.
func Near(t T, what string, got working.Number, want, within float64) {
	t.Helper()
	if !got.Known() {
		t.Errorf("%s is not known, missing %v; want %v", what, got.Missing(), want)
	} else if math.Abs(got.Value()-want) > within {
		t.Errorf("%s is %v, want %v within %v", what, got.Value(), want, within)
	}
}

// Lists holds a list of names against what it should list, in that order.
func Lists(t T, what string, got working.Names, want ...string) {
	t.Helper()
	if !got.Known() {
		t.Errorf("%s is not known, missing %v; want %v", what, got.Missing(), want)
	} else if !slices.Equal(got.Values(), want) {
		t.Errorf("%s lists %v, want %v", what, got.Values(), want)
	}
}

// Wants makes sure that a fact is unknown because just the named members are missing.
func Wants(t T, what string, got Unknowable, missing ...string) {
	t.Helper()
	if got.Known() {
		t.Errorf("%s is known: %v; want it unknown because %v are missing", what, got, missing)
	} else if !slices.Equal(working.Pointers(got.Missing()), missing) {
		t.Errorf("%s wants %v, want %v", what, got.Missing(), missing)
	}
}
