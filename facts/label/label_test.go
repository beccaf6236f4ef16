package label_test

import (
	"slices"
	"testing"

	"sunclause/facts/label"
	"sunclause/facts/working"
	"sunclause/schema"
)

func TestLegends(t *testing.T) {
	const job = `"project": {"reference": "X", "stage": "design", "country": "GB"}`
	for text, want := range map[string][]string{
		`{` + job + `}`:               nil,
		`{` + job + `, "labels": []}`: {},
		`{` + job + `, "labels": [{"id": "L1", "legend": "dual_supply", "location": "origin"}, {"id": "L2", "legend": "dc_isolator", "location": "origin"}, {"id": "L3", "legend": "dual_supply", "location": "origin"}]}`: {"dc_isolator", "dual_supply"},
	} {
		doc, err := schema.Decode("x.json", []byte(text))
		if err != nil {
			t.Fatal(err)
		}
		got := label.Legends(&doc.Installation)
		if got.Known() != (want != nil) || !slices.Equal(got.Values(), want) && len(want) > 0 {
			t.Errorf("%s: legends %v, known %t, want %v", text, got.Values(), got.Known(), want)
		}
		if want == nil && !slices.Equal(working.Pointers(got.Missing()), []string{"/labels"}) {
			t.Errorf("missing %v", got.Missing())
		}
	}
}
