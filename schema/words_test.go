package schema

import (
	"cmp"
	"os"
	"strconv"
	"testing"
)

func TestWords(t *testing.T) {
	for pointer, want := range map[string]string{
		"/strings":                       "PV strings",
		"/strings/0":                     "PV string",
		"/strings/3/modules_in_series":   "modules in series",
		"/datasheets/modules/m1/voc_v":   "open-circuit voltage",
		"/project/premises":              "kind of premises",
		"/handover/departures/0/reason":  "why it is accepted",
		"/ac":                            "AC side",
		"/strings/0/nothing":             "",
		"/nothing":                       "",
		"":                               "",
		"/project/reference/nothing/too": "",
	} {
		if got := Words(pointer); got != want {
			t.Errorf("%s: %q, not %q", pointer, got, want)
		}
	}
}

// TestWordsOfEverything makes sure that whatever an example has is called
// something.
func TestWordsOfEverything(t *testing.T) {
	raw, err := os.ReadFile("../testdata/gb-island-cottage/installation.json")
	if err != nil {
		t.Fatal(err)
	}
	d, err := Decode("cottage", raw)
	if err != nil {
		t.Fatal(err)
	}
	var check func(n *node, at string)
	check = func(n *node, at string) {
		if at != "" && Words(at) == "" {
			t.Errorf("%s has no words", at)
		}
		for i := range n.children {
			check(&n.children[i], at+"/"+cmp.Or(escape(n.children[i].name), strconv.Itoa(i)))
		}
	}
	check(d.root, "")
}
