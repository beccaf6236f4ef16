package judge_test

import (
	"context"
	"testing"

	"github.com/google/go-cmp/cmp"

	"sunclause/engine/judge"
	"sunclause/engine/ruleset"
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
  "roof": {"planes": [{"id": "A", "pitch_deg": 30, "eaves_height_m": 5}, {"id": "B", "eaves_height_m": 3}]}
}`))
	if err != nil {
		t.Fatal(err)
	}
	for name, want := range map[string][]judge.Unjudged{
		"gb": {
			{Member: "site.albedo_fraction", At: "/site/albedo_fraction", Places: 1},
			{Member: "inverters[].settings.vector_shift_deg", At: "/inverters/0/settings/vector_shift_deg", Places: 1},
			{Member: "ac.array_shutdown.fitted", At: "/ac/array_shutdown/fitted", Places: 1},
			{Member: "ac.array_shutdown.time_s", At: "/ac/array_shutdown/time_s", Places: 1},
			{Member: "roof.planes[].eaves_height_m", At: "/roof/planes/0/eaves_height_m", Places: 2},
		},
		"iec": { // which has no table of settings
			{Member: "site.albedo_fraction", At: "/site/albedo_fraction", Places: 1},
			{Member: "inverters[].settings.over_voltage_1_v", At: "/inverters/0/settings/over_voltage_1_v", Places: 1},
			{Member: "inverters[].settings.vector_shift_deg", At: "/inverters/0/settings/vector_shift_deg", Places: 1},
			{Member: "ac.array_shutdown.fitted", At: "/ac/array_shutdown/fitted", Places: 1},
			{Member: "ac.array_shutdown.time_s", At: "/ac/array_shutdown/time_s", Places: 1},
			{Member: "roof.planes[].eaves_height_m", At: "/roof/planes/0/eaves_height_m", Places: 2},
		},
	} {
		set, err := ruleset.Load(context.Background(), policies.FS, name)
		if err != nil {
			t.Fatal(err)
		}
		r, err := judge.Check(context.Background(), set, doc, judge.Options{})
		if err != nil {
			t.Fatal(err)
		}
		if d := cmp.Diff(want, r.Unjudged); d != "" {
			t.Errorf("%s:\n%s", name, d)
		}
	}
}
