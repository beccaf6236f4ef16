package report_test

import (
	"encoding/json"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"sunclause/engine"
	"sunclause/engine/report"
	"sunclause/schema"
)

const cottage = "../../testdata/gb-island-cottage/"

// byBritishSet checks a document by the embedded set for Great Britain.
func byBritishSet(t testing.TB, raw []byte) *engine.Result {
	t.Helper()
	return judgedBy(t, "gb", "installation.json", raw, engine.Options{})
}

// TestDrawings holds each drawing of the cottage, as a file that opens by itself.
func TestDrawings(t *testing.T) {
	for _, d := range report.Drawings(byBritishSet(t, read(t, cottage+"installation.json"))) {
		name := filepath.Join(cottage, "drawings", d.Name+".svg")
		got := d.Alone()
		elements(t, []byte(got))
		if *update {
			if err := os.WriteFile(name, []byte(got), 0o644); err != nil {
				t.Fatal(err)
			}
		}
		if want := string(read(t, name)); want != got {
			t.Errorf("%s is another; go test ./engine/report -update writes it, then look at it", name)
		}
	}
}

// TestDrawingsOfGaps takes members out of the roof, the cables and the other
// parts at random. Whatever is left, the drawings are made without a fault, and
// nothing in them is no number.
func TestDrawingsOfGaps(t *testing.T) {
	raw := read(t, cottage+"installation.json")
	rapid.Check(t, func(rt *rapid.T) {
		var doc map[string]any
		if err := json.Unmarshal(raw, &doc); err != nil {
			rt.Fatal(err)
		}
		for range rapid.IntRange(1, 12).Draw(rt, "members") {
			takeOut(rt, doc)
		}
		text, err := json.Marshal(doc)
		if err != nil {
			rt.Fatal(err)
		}
		if _, err := schema.Decode("installation.json", text); err != nil {
			return // the member is required, or something refers to it
		}
		for _, d := range report.Drawings(byBritishSet(t, text)) {
			elements(t, []byte(d.Alone()))
			for _, bad := range []string{"NaN", "Inf"} {
				if strings.Contains(string(d.SVG), bad) {
					rt.Errorf("%s has %s in it", d.Name, bad)
				}
			}
		}
	})
}

// takeOut goes down a document at random and leaves out the member it comes to.
func takeOut(rt *rapid.T, v any) {
	for depth := 0; ; depth++ {
		switch node := v.(type) {
		case map[string]any:
			var names []string
			for name := range node {
				names = append(names, name)
			}
			if len(names) == 0 {
				return
			}
			name := rapid.SampledFrom(slices.Sorted(slices.Values(names))).Draw(rt, "member")
			_, isObject := node[name].(map[string]any)
			_, isList := node[name].([]any)
			if depth > 1 && !isObject && !isList {
				delete(node, name)
				return
			}
			v = node[name]
		case []any:
			if len(node) == 0 {
				return
			}
			v = node[rapid.IntRange(0, len(node)-1).Draw(rt, "element")]
		default:
			return
		}
	}
}
