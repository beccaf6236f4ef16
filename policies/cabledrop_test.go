package policies_test

import (
	"encoding/json"
	"maps"
	"math"
	"testing"

	"sunclause/facts"
	"sunclause/facts/book"
	"sunclause/schema"
)

// cooled works a job out with the drop at the temperature of the design current.
func cooled(t *testing.T, doc object) *facts.Run {
	t.Helper()
	b := bookOf(t, "gb")
	b.Parameters = maps.Clone(b.Parameters)
	b.Parameters["ac_drop_temperature"] = book.Parameter{Name: "ac_drop_temperature", Text: "design_current", IsText: true}
	text, err := json.Marshal(doc)
	if err != nil {
		t.Fatal(err)
	}
	d, err := schema.Decode("job", text)
	if err != nil {
		t.Fatal(err)
	}
	return runOf(t, facts.Derive(&d.Installation, b), "R1")
}

// BS 7671, appendix 4, 6.1, as quoted; worked by hand. 16 A in 6 mm² twin and
// earth clipped to a wall (47 A, 7.3 mV/A/m) over 25 m: 0.8821 and 2.576 V,
// where conductors at 70 °C would take 2.92 V.
func TestDropOfCoolerConductors(t *testing.T) {
	big := with(flat6, object{"kind": "multicore", "csa_mm2": 25})
	for _, c := range []struct {
		name         string
		job          job
		factor, drop float64
	}{
		{"alone on a wall", job{amps: 16, cable: flat6}, 0.88212, 2.5758},
		{"as hot as it may get", job{amps: 47, cable: flat6}, 1, 8.5775},
		{"five together", job{amps: 16, cable: flat6, segment: object{"grouped_circuits": 5}}, 0.96745, 2.8250},
		{"at 40 °C", job{amps: 16, cable: flat6, segment: object{"ambient_c": 40}}, 0.91453, 2.6704},
		{"at 20 °C, as at 30 °C", job{amps: 16, cable: flat6, segment: object{"ambient_c": 20}}, 0.88212, 2.5758},
		{"in lagging", job{amps: 16, cable: flat6, segment: object{"thermal_insulation": "surrounded", "thermal_insulation_length_mm": 600}}, 0.98212, 2.8678},
		{"above 16 mm²", job{amps: 40, cable: big}, 1, 1.75},
	} {
		c.job.service, c.job.segment = "ac", with(object{"length_m": 25}, c.job.segment)
		r := cooled(t, c.job.document())
		if math.Abs(r.DropFactor.Value()-c.factor) > 1e-4 || math.Abs(r.DropV.Value()-c.drop) > 1e-3 {
			t.Errorf("%s: factor %v and %v V (missing %v), want %v and %v V", c.name, r.DropFactor.Value(), r.DropV.Value(), r.DropV.Missing(), c.factor, c.drop)
		}
		full := runOf(t, derive(t, "gb", c.job.document()), "R1")
		if full.DropFactor.Value() != 1 || full.DropV.Value() < r.DropV.Value() {
			t.Errorf("%s: at full load factor %v and %v V, cooler %v V", c.name, full.DropFactor.Value(), full.DropV.Value(), r.DropV.Value())
		}
	}
}

// Stretches count with their lengths; a semi-enclosed fuse rules the factor out;
// what is not stated leaves the drop open.
func TestDropOfCoolerStretches(t *testing.T) {
	j := job{service: "ac", amps: 16, cable: flat6}
	doc := j.document()
	run := doc["cables"].(list)[0].(object)
	run["segments"] = list{with(plain, object{"length_m": 15}), with(plain, object{"length_m": 5, "ambient_c": 40})}
	if r := cooled(t, doc); math.Abs(r.DropFactor.Value()-(0.88212*15+0.91453*5)/20) > 1e-4 {
		t.Errorf("two stretches: factor %v", r.DropFactor.Value())
	}
	doc["datasheets"].(object)["protective_devices"] = object{"f": object{"kind": "fuse", "characteristic": "semi_enclosed"}}
	if r := cooled(t, doc); r.DropFactor.Value() != 1 {
		t.Errorf("with a semi-enclosed fuse: factor %v", r.DropFactor.Value())
	}
	doc = j.document()
	delete(doc["cables"].(list)[0].(object)["segments"].(list)[0].(object), "grouped_circuits")
	if r := cooled(t, doc); r.DropV.Known() || r.DropFactor.Known() {
		t.Errorf("grouping not stated: factor %v, %v V", r.DropFactor.Value(), r.DropV.Value())
	}
}
