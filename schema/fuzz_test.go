package schema_test

import (
	"errors"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"unicode/utf8"

	"github.com/google/go-cmp/cmp"

	"sunclause/schema"
	"sunclause/schema/examples"
)

// FuzzDecode makes sure that no text brings the decoder down, that what is said
// of a text is said of a place in it, and that it is said twice alike.
// Some seeds are long: fuzz with -fuzzminimizetime 1x, or all the time goes into
// making them shorter.
func FuzzDecode(f *testing.F) {
	paths, err := filepath.Glob("../testdata/broken/*.json")
	if err != nil {
		f.Fatal(err)
	}
	for _, path := range paths {
		raw, err := os.ReadFile(path)
		if err != nil {
			f.Fatal(err)
		}
		f.Add(raw)
	}
	for _, name := range examples.Names {
		f.Add(examples.Text(f, name))
	}
	for _, text := range []string{"", "{}", "null", "{" + project + "}", sound, parts, `{"a":1,"a":[{"b":"é\u0000"}]}`, "[1e999,\n-0.5E+3]"} {
		f.Add([]byte(text))
	}
	f.Fuzz(func(t *testing.T, raw []byte) {
		doc, err := schema.Decode("x.json", raw)
		if (doc == nil) != (err != nil) {
			t.Fatalf("both or neither: %v, %v", doc, err)
		}
		problems := inText(t, raw, err)
		_, err = schema.Decode("x.json", raw)
		if diff := cmp.Diff(problems, inText(t, raw, err)); diff != "" {
			t.Errorf("told otherwise the second time:\n%s", diff)
		}
	})
}

// inText makes sure that an error is a list of problems, each with a place
// within the text and each on one line of a readable length.
func inText(t *testing.T, raw []byte, err error) schema.Problems {
	t.Helper()
	if err == nil {
		return nil
	}
	var problems schema.Problems
	if !errors.As(err, &problems) || len(problems) == 0 || len(problems) > 101 {
		t.Fatalf("no list of problems: %v", err)
	}
	lines := strings.Split(string(raw), "\n")
	for _, p := range problems {
		if p.Line < 1 || p.Line > len(lines) || p.Column < 1 || p.Column > utf8.RuneCountInString(lines[p.Line-1])+1 {
			t.Errorf("%d:%d is not in the text: %v", p.Line, p.Column, p)
		}
		if text := p.Error(); strings.ContainsFunc(text, isControl) || len(text) > 2000 || p.What == "" {
			t.Errorf("cannot be shown: %q", text)
		}
	}
	return problems
}

func isControl(r rune) bool { return r < ' ' || r >= 0x7f && r < 0xa0 }

// anything is a mirror for rule set files of every kind.
type anything struct {
	schema.Pointer
	Name    schema.Text `json:"name"`
	Extends schema.Text `json:"extends"`
	Rows    any         `json:"rows"`
}

// FuzzReadYAML makes sure of the same for the files of a rule set.
func FuzzReadYAML(f *testing.F) {
	for _, pattern := range []string{"../policies/*/*.yaml", "../policies/*/tables/*.yaml"} {
		paths, _ := filepath.Glob(pattern)
		for _, path := range paths[:min(len(paths), 8)] {
			raw, err := os.ReadFile(path)
			if err != nil {
				f.Fatal(err)
			}
			f.Add(raw)
		}
	}
	for _, text := range []string{"", "name: x\ntitle: y\nversion: 1.0.0\n", "a: [1, {b: c}]", "&a [*a]", "a:\n  - b: |\n      x\n", "a: 1\n---\nb: 2", "<<: {a: 1}", "? [a]\n: b", "a: !!int \"1\"", "é: \"\\e\"\na: 0x1F"} {
		f.Add([]byte(text))
	}
	f.Fuzz(func(t *testing.T, raw []byte) {
		var v anything
		_, err := schema.ReadYAML("x.yaml", raw, schema.RuleSetSchema, &v)
		problems := inText(t, raw, err)
		_, err = schema.ReadYAML("x.yaml", raw, schema.RuleSetSchema, &v)
		if diff := cmp.Diff(problems, inText(t, raw, err)); diff != "" {
			t.Errorf("told otherwise the second time:\n%s", diff)
		}
	})
}
