package report_test

import (
	"encoding/json"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"sunclause/engine/judge"
	"sunclause/engine/report"
	"sunclause/schema"
	"sunclause/schema/examples"
)

const cottage = "../../testdata/gb-island-cottage/"

// byBritishSet checks a document by the embedded set for Great Britain.
func byBritishSet(t testing.TB, raw []byte) *judge.Result {
	t.Helper()
	return judgedBy(t, "gb", "installation.json", raw, judge.Options{})
}

// TestDrawings holds each drawing of the cottage, as a file that opens by itself.
func TestDrawings(t *testing.T) {
	stale, err := filepath.Glob(filepath.Join(cottage, "drawings", "*.svg"))
	if err != nil {
		t.Fatal(err)
	}
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
		stale = slices.DeleteFunc(stale, func(s string) bool { return s == name })
	}
	if len(stale) > 0 {
		t.Errorf("no drawing is called so any more: %v", stale)
	}
}

// withBackup is the example with a battery, the backup output of its inverter
// led to a changeover switch between the meter and the board.
func withBackup(t *testing.T) []byte {
	t.Helper()
	var doc map[string]any
	if err := json.Unmarshal(examples.Text(t, examples.Battery), &doc); err != nil {
		t.Fatal(err)
	}
	doc["ac"].(map[string]any)["changeovers"] = []any{map[string]any{"id": "CHO1"}}
	runs := doc["cables"].([]any)
	for _, r := range runs {
		run := r.(map[string]any)
		if run["to"] != "B1.in" {
			continue
		}
		run["to"] = "CHO1.grid"
		for _, ends := range [][3]string{{"R20", "CHO1.load", "B1.in"}, {"R21", "INV1.backup", "CHO1.source"}} {
			other := maps.Clone(run)
			other["id"], other["from"], other["to"] = ends[0], ends[1], ends[2]
			runs = append(runs, other)
		}
	}
	doc["cables"] = runs
	text, err := json.Marshal(doc)
	if err != nil {
		t.Fatal(err)
	}
	return text
}

// TestBackupDrawn finds both outputs of an inverter in the circuit diagram, and
// the switch at which they meet.
func TestBackupDrawn(t *testing.T) {
	for _, d := range report.Drawings(byBritishSet(t, withBackup(t))) {
		if d.Name != "circuit-ac" {
			continue
		}
		for _, part := range []string{">CHO1<", ">R7 ", ">R9 ", ">R20 ", ">R21 ", ">SUP<"} {
			if n := strings.Count(string(d.SVG), part); n != 1 {
				t.Errorf("%s stands %d times in the diagram", part, n)
			}
		}
		return
	}
	t.Fatal("there is no circuit diagram of the AC side")
}

// TestManyStrings holds that each inverter of a large roof has a diagram of its
// own, and that every string and every run stands on one drawing.
func TestManyStrings(t *testing.T) {
	r := byBritishSet(t, examples.Text(t, examples.Warehouse))
	circuits, labels := "", ""
	count := map[string]int{}
	for _, d := range report.Drawings(r) {
		kind, _, _ := strings.Cut(d.Name, "-")
		switch count[kind]++; kind {
		case "circuit":
			circuits += string(d.SVG)
		case "labels":
			labels += string(d.SVG)
		}
	}
	if want := len(r.Document.Installation.Inverters) + 1; count["circuit"] != want {
		t.Errorf("%d circuit diagrams, want %d", count["circuit"], want)
	}
	for _, s := range r.Document.Installation.Strings {
		if n := strings.Count(circuits, ">"+s.ID.Value+"<"); n != 1 {
			t.Errorf("string %s is drawn %d times", s.ID.Value, n)
		}
	}
	for _, run := range r.Document.Installation.Cables {
		if n := strings.Count(labels, ">"+run.ID.Value+"<"); run.Service.Is("pv_string") && n != 1 {
			t.Errorf("the labels along run %s are drawn %d times", run.ID.Value, n)
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
