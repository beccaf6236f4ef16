package policies_test

import (
	"encoding/json"
	"fmt"
	"maps"
	"slices"
	"strings"
	"testing"

	jsonpatch "github.com/evanphx/json-patch/v5"

	"sunclause/schema"
	"sunclause/schema/examples"
)

// everyDate is what the cottage lacks of the dates that a document can state, each as
// an honest job would have it.
const everyDate = `[
	{"op": "add", "path": "/commissioning/combiners", "value": [{"id": "CB1", "string": "S1", "against": "S2", "date": "2026-05-05"}]},
	{"op": "add", "path": "/commissioning/curves", "value": [{"id": "IV1", "string": "S1", "date": "2026-05-05"}]},
	{"op": "add", "path": "/commissioning/electrodes", "value": [{"id": "ER1", "date": "2026-05-05"}]},
	{"op": "add", "path": "/handover/connection/other_premises_date", "value": "2026-05-20"},
	{"op": "add", "path": "/handover/notifications/0/inspected", "value": "2026-05-12"},
	{"op": "add", "path": "/handover/departures", "value": [{"requirement": "gb/rcd-button", "reason": "test", "author": "assessor", "date": "2026-05-06", "until": "2027-05-06"}]}
]`

// TestEveryDateIsHeld moves each date of the document by a century, either way: there
// is no date that nothing else speaks against.
func TestEveryDateIsHeld(t *testing.T) {
	raw := patched(t, examples.Text(t, examples.Cottage), everyDate)
	j := newJudging(t, load(t, "gb"), raw)
	stated := map[string]string{} // by shape, the pointer of the first
	for _, p := range slices.Backward(members(tree(t, raw), "")) {
		stated[shapeOf(p)] = p
	}
	for _, shape := range dateMembers(t) {
		p := stated[shape]
		if p == "" {
			t.Errorf("no date is stated at %s: add it to the document of this test", shape)
			continue
		}
		for _, date := range []string{"1926-05-05", "2126-05-05"} {
			doc, err := schema.Decode("installation.json", patched(t, raw, fmt.Sprintf(`[{"op": "replace", "path": %q, "value": %q}]`, p, date)))
			if err != nil {
				t.Fatal(err)
			}
			changed, _, err := j.changed(doc)
			if err != nil {
				t.Fatal(err)
			}
			if !slices.ContainsFunc(slices.Collect(maps.Values(changed)), finding) {
				t.Errorf("%s: nothing speaks against %s", p, date)
			}
		}
	}
}

func patched(t *testing.T, raw []byte, patch string) []byte {
	t.Helper()
	p, err := jsonpatch.DecodePatch([]byte(patch))
	if err == nil {
		raw, err = p.Apply(raw)
	}
	if err != nil {
		t.Fatal(err)
	}
	return raw
}

// dateMembers are the shapes of all dates of the schema of the document.
func dateMembers(t *testing.T) []string {
	t.Helper()
	var all []string
	var walk func(file string, n map[string]any, at string)
	walk = func(file string, n map[string]any, at string) {
		if ref, ok := n["$ref"].(string); ok {
			if strings.HasSuffix(ref, "#/$defs/date") {
				all = append(all, at)
				return
			}
			if other, _, _ := strings.Cut(ref, "#"); other != "" {
				file = other
			}
			walk(file, definition(t, file, ref), at)
		}
		properties, _ := n["properties"].(map[string]any)
		for _, name := range slices.Sorted(maps.Keys(properties)) {
			walk(file, properties[name].(map[string]any), at+"/"+name)
		}
		for _, each := range []string{"items", "additionalProperties"} {
			if item, ok := n[each].(map[string]any); ok {
				walk(file, item, at+"/*")
			}
		}
	}
	walk(schema.InstallationSchema, definition(t, schema.InstallationSchema, ""), "")
	return all
}

// definition is what a reference leads to in a file of the schema.
func definition(t *testing.T, file, ref string) map[string]any {
	t.Helper()
	raw, err := schema.File(file)
	var n map[string]any
	if err == nil {
		err = json.Unmarshal(raw, &n)
	}
	if err != nil {
		t.Fatal(err)
	}
	_, path, _ := strings.Cut(ref, "#/")
	for _, name := range strings.FieldsFunc(path, func(r rune) bool { return r == '/' }) {
		n = n[name].(map[string]any)
	}
	return n
}
