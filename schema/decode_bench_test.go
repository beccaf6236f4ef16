package schema_test

import (
	"testing"

	"sunclause/schema"
	"sunclause/schema/examples"
)

// BenchmarkDecode reads the cottage and the warehouse, again and again.
func BenchmarkDecode(b *testing.B) {
	for _, name := range []string{examples.Cottage, examples.Warehouse} {
		raw := examples.Text(b, name)
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
