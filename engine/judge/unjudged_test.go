package judge_test

import (
	"context"
	"testing"

	"github.com/google/go-cmp/cmp"

	"sunclause/engine/judge"
	"sunclause/engine/ruleset"
	"sunclause/facts"
	"sunclause/policies"
	"sunclause/schema"
)

// What no fact takes up is listed, once for all places, with the first; what a table
// of the set names is not, nor what is no more than an id, a reference or a remark.
func TestUnjudged(t *testing.T) {
	doc, err := schema.Decode("installation.json", []byte(`{
  "project": {"reference": "A7", "stage": "design", "country": "GB"},
  "site": {"temp_min_c": -10, "albedo_fraction": 0.2},
  "inverters": [{"id": "I", "datasheet": "i", "settings": {"over_voltage_1_v": 262.2, "vector_shift_deg": 50}}],
  "datasheets": {"inverters": {"i": {"dc_voltage_max_v": 600, "mppts": [{}], "ac_power_rated_w": 3000, "phases": 1}}},
  "ac": {"array_shutdown": {"fitted": true, "initiator": "I", "time_s": 900, "note": "in the hall"}},
  "roof": {"planes": [{"id": "A", "pitch_deg": 30, "tile_work": {"broken_replaced": 3}}, {"id": "B", "tile_work": {"broken_replaced": 0}}]}
}`))
	if err != nil {
		t.Fatal(err)
	}
	// In the order of the document, each with the name under which the list of members
	// that no fact takes up has it; one that leaves that list leaves the report.
	all := []struct {
		listed string
		judge.Unjudged
	}{
		{"site.albedo_fraction", judge.Unjudged{Member: "site.albedo_fraction", At: "/site/albedo_fraction", Places: 1}},
		{"grid_settings.vector_shift_deg", judge.Unjudged{Member: "inverters[].settings.vector_shift_deg", At: "/inverters/0/settings/vector_shift_deg", Places: 1}},
		{"array_shutdown.fitted", judge.Unjudged{Member: "ac.array_shutdown.fitted", At: "/ac/array_shutdown/fitted", Places: 1}},
		{"array_shutdown.time_s", judge.Unjudged{Member: "ac.array_shutdown.time_s", At: "/ac/array_shutdown/time_s", Places: 1}},
		{"tile_work.broken_replaced", judge.Unjudged{Member: "roof.planes[].tile_work.broken_replaced", At: "/roof/planes/0/tile_work/broken_replaced", Places: 2}},
	}
	untaken := facts.Untaken()
	var want []judge.Unjudged
	for _, one := range all {
		if untaken[one.listed] {
			want = append(want, one.Unjudged)
		}
	}
	set, err := ruleset.Load(context.Background(), policies.FS, "gb")
	if err != nil {
		t.Fatal(err)
	}
	r, err := judge.Check(context.Background(), set, doc, judge.Options{})
	if err != nil {
		t.Fatal(err)
	}
	if d := cmp.Diff(want, r.Unjudged); d != "" || len(want) == 0 {
		t.Error(d)
	}
}
