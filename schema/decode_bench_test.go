package schema_test

import (
	"os"
	"testing"

	"sunclause/schema"
)

// BenchmarkDecode reads the cottage and the warehouse, again and again.
func BenchmarkDecode(b *testing.B) {
	for _, name := range []string{"gb-island-cottage", "gb-warehouse"} {
		raw, err := os.ReadFile("../testdata/" + name + "/installation.json")
		if err != nil {
			b.Fatal(err)
		}
		b.Run(name, func(b *testing.B) {
			b.SetBytes(int64(len(raw)))
			for b.Loop() {
				if _, err := schema.Decode(name, raw); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}
