package judge_test

import (
	"context"
	"fmt"
	"os"
	"path/filepath"
	"testing"

	"sunclause/engine/judge"
	"sunclause/engine/ruleset"
	"sunclause/facts"
	"sunclause/policies"
	"sunclause/schema"
	"sunclause/schema/examples"
)

// The steps of a check, one benchmark each, on the cottage and the warehouse.
// docs/speed.md has figures.

func document(b *testing.B, name string) ([]byte, *schema.Document) {
	b.Helper()
	raw := examples.Text(b, name)
	doc, err := schema.Decode(name, raw)
	if err != nil {
		b.Fatal(err)
	}
	return raw, doc
}

func BenchmarkLoad(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		if _, err := ruleset.Load(context.Background(), policies.FS, "gb"); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkSteps(b *testing.B) {
	set, err := ruleset.Load(context.Background(), policies.FS, "gb")
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
				if _, err := judge.Check(context.Background(), set, doc, judge.Options{}); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}

// BenchmarkRowAgainstRego asks the same hundred things of the warehouse's
// strings, once as limit rows and once as Rego rules.
func BenchmarkRowAgainstRego(b *testing.B) {
	const n = 100
	rows, rules := "requirements:\n", "package %s.pvstring\n"
	for i := range n {
		id := fmt.Sprintf("asked-%03d", i)
		limit := 1000 + i
		rows += fmt.Sprintf("  - {id: asrows/%s, title: t, level: shall, subject: strings, require: voc_max_v at_most %d, source: {document: benchmark, how: house rule}}\n", id, limit)
		rules += fmt.Sprintf("\n# METADATA\n# title: t\n# custom: {id: asrules/%s, level: shall, subject: strings, broken: b, source: {document: benchmark, how: house rule}}\nfindings contains f if {\n\tsome s in input.strings\n\ts.voc_max_v > %d\n\tf := {\"id\": \"asrules/%s\", \"subject\": s.id}\n}\n", id, limit, id)
	}
	_, doc := document(b, "gb-warehouse")
	for name, file := range map[string][2]string{"asrows": {"pvstring.yaml", rows}, "asrules": {"pvstring.rego", fmt.Sprintf(rules, "asrules")}} {
		dir := filepath.Join(b.TempDir(), name)
		text := fmt.Sprintf("name: %s\ntitle: t\nversion: 0.1.0\n", name)
		for file, text := range map[string]string{"ruleset.yaml": text, file[0]: file[1]} {
			if err := os.MkdirAll(dir, 0o755); err != nil {
				b.Fatal(err)
			}
			if err := os.WriteFile(filepath.Join(dir, file), []byte(text), 0o644); err != nil {
				b.Fatal(err)
			}
		}
		set, err := ruleset.Load(context.Background(), policies.FS, dir)
		if err != nil {
			b.Fatal(err)
		}
		b.Run(name+"/load", func(b *testing.B) {
			for b.Loop() {
				if _, err := ruleset.Load(context.Background(), policies.FS, dir); err != nil {
					b.Fatal(err)
				}
			}
		})
		b.Run(name+"/check", func(b *testing.B) {
			for b.Loop() {
				if _, err := judge.Check(context.Background(), set, doc, judge.Options{}); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}
