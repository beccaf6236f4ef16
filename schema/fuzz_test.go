package schema_test

import (
	"errors"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"sunclause/schema"
)

// FuzzDecode makes sure that no text brings the decoder down, and that what it
// says of a text is said of a place in it, and said twice alike.
func FuzzDecode(f *testing.F) {
	names, _ := filepath.Glob("../testdata/broken/*.json")
	for _, name := range names {
		raw, err := os.ReadFile(name)
		if err != nil {
			f.Fatal(err)
		}
		f.Add(raw)
	}
	f.Add([]byte(`{` + job + `}`))
	f.Fuzz(func(t *testing.T, raw []byte) {
		_, err := schema.Decode("x.json", raw)
		if err == nil {
			return
		}
		var problems schema.Problems
		if !errors.As(err, &problems) {
			t.Fatalf("a fault of the decoder: %v", err)
		}
		lines := strings.Split(string(raw), "\n")
		for _, p := range problems {
			if p.Line < 1 || p.Line > len(lines) || p.Column < 1 || p.Column > len(lines[p.Line-1])+1 {
				t.Errorf("%v is at %d:%d, which is not in the text", p, p.Line, p.Column)
			}
		}
		if _, again := schema.Decode("x.json", raw); again == nil || again.Error() != err.Error() {
			t.Errorf("said first\n%v\nand then\n%v", err, again)
		}
	})
}

// FuzzReadYAML makes sure of the same for the files of a rule set.
func FuzzReadYAML(f *testing.F) {
	for _, text := range []string{"name: x\ntitle: y\nversion: 1.0.0\n", "a: [1, {b: c}]", "&a [*a]", "a:\n  - b: |\n      x\n"} {
		f.Add([]byte(text))
	}
	f.Fuzz(func(t *testing.T, raw []byte) {
		var v struct{ schema.Pointer }
		_, err := schema.ReadYAML("x.yaml", raw, schema.RuleSetSchema, &v)
		var problems schema.Problems
		if err != nil && !errors.As(err, &problems) {
			t.Fatalf("a fault of the reader: %v", err)
		}
	})
}
