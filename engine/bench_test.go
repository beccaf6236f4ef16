package engine_test

import (
	"context"
	"os"
	"testing"

	"sunclause/engine"
	"sunclause/facts"
	"sunclause/policies"
	"sunclause/schema"
)

// The steps of a check, one benchmark each, on the cottage and the warehouse.
// docs/speed.md has figures.

func document(b *testing.B, name string) ([]byte, *schema.Document) {
	b.Helper()
	raw, err := os.ReadFile("../testdata/" + name + "/installation.json")
	if err != nil {
		b.Fatal(err)
	}
	doc, err := schema.Decode(name, raw)
	if err != nil {
		b.Fatal(err)
	}
	return raw, doc
}

func BenchmarkLoad(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		if _, err := engine.Load(context.Background(), policies.FS, "gb"); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkSteps(b *testing.B) {
	set, err := engine.Load(context.Background(), policies.FS, "gb")
	if err != nil {
		b.Fatal(err)
	}
	for _, name := range []string{"gb-island-cottage", "gb-warehouse"} {
		raw, doc := document(b, name)
		b.Run(name+"/decode", func(b *testing.B) {
			b.ReportAllocs()
			b.SetBytes(int64(len(raw)))
			for b.Loop() {
				if _, err := schema.Decode(name, raw); err != nil {
					b.Fatal(err)
				}
			}
		})
		b.Run(name+"/derive", func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				facts.Derive(&doc.Installation, set.Book)
			}
		})
		b.Run(name+"/check", func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				if _, err := engine.Check(context.Background(), set, doc, engine.Options{}); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}
