package schema_test

import (
	"encoding/json"
	"maps"
	"reflect"
	"slices"
	"strconv"
	"strings"
	"testing"

	"sunclause/schema"
	"sunclause/schema/examples"
)

// TestLeaveOut makes sure that a member left out of the mirror is as if the
// document did not have it, and that it can be stated again.
func TestLeaveOut(t *testing.T) {
	if testing.Short() {
		t.Skip("takes its time")
	}
	raw := examples.Text(t, examples.Battery)
	d, again := read(t, raw), read(t, raw)
	var root map[string]any
	if err := json.Unmarshal(raw, &root); err != nil {
		t.Fatal(err)
	}
	tried := 0
	for i, p := range slices.Sorted(maps.Keys(pointers(root, "", map[string]func(){}))) {
		if strings.HasPrefix(p, "/$") || strings.Count(p, "/") > 1 && i%200 != 0 {
			continue
		}
		want, ok := without(t, raw, p)
		if !ok {
			continue // it is required, or something refers to it
		}
		tried++
		back, err := d.Installation.LeaveOut(p)
		if err != nil {
			t.Fatal(err)
		}
		if !reflect.DeepEqual(d.Installation, want.Installation) {
			t.Errorf("%s: the mirror is not that of the document without it", p)
		}
		if back(); !reflect.DeepEqual(d.Installation, again.Installation) {
			t.Fatalf("%s: stated again, the mirror is not as it was", p)
		}
	}
	if tried < 30 {
		t.Errorf("only %d members could be left out", tried)
	}
	for _, p := range []string{"", "/cables/0", "/cables/9999/id", "/nothing", "/project/reference/nothing", "/datasheets/modules/none"} {
		if _, err := d.Installation.LeaveOut(p); err == nil {
			t.Errorf("%q was left out; it is no member", p)
		}
	}
}

func read(t *testing.T, raw []byte) *schema.Document {
	t.Helper()
	d, err := schema.Decode("x.json", raw)
	if err != nil {
		t.Fatal(err)
	}
	return d
}

// without reads a document again without a member.
func without(t *testing.T, raw []byte, pointer string) (*schema.Document, bool) {
	t.Helper()
	var root map[string]any
	if err := json.Unmarshal(raw, &root); err != nil {
		t.Fatal(err)
	}
	pointers(root, "", map[string]func(){})[pointer]()
	text, err := json.Marshal(root)
	if err != nil {
		t.Fatal(err)
	}
	d, err := schema.Decode("x.json", text)
	return d, err == nil
}

// pointers finds all members of objects, with what takes each out.
func pointers(v any, at string, all map[string]func()) map[string]func() {
	switch v := v.(type) {
	case map[string]any:
		for name, m := range v {
			all[at+"/"+name] = func() { delete(v, name) }
			pointers(m, at+"/"+name, all)
		}
	case []any:
		for i, m := range v {
			pointers(m, at+"/"+strconv.Itoa(i), all)
		}
	}
	return all
}
