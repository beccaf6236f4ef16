package label_test

import (
	"fmt"
	"testing"

	"pgregory.net/rapid"

	"sunclause/facts/facttest"
	"sunclause/facts/working"
)

// Sources of the expectations: the spacing is that of IEC 62548:2016 (from
// memory), 10 m where straight and visible and 5 m elsewhere; the route of 18 m
// with labels at 0, 6, 12 and 18 m is a worked example of the trade. The others
// follow from the words of the facts.
func TestGaps(t *testing.T) {
	straight, bent := object{}, object{"straight": false}
	hidden, evident := object{"visible": false}, object{"function_evident": true}
	for _, c := range []struct {
		name     string
		segments list
		labels   []float64
		want     string // gap, gap straight, gap other, coverage, stretches without
	}{
		{"worked example, straight and visible", list{stretch(18, straight)}, []float64{0, 6, 12, 18}, "6 6 0 100 0"},
		{"worked example, not straight", list{stretch(18, bent)}, []float64{0, 6, 12, 18}, "6 0 6 0 0"},
		{"worked example, concealed", list{stretch(18, hidden)}, []float64{0, 6, 12, 18}, "6 0 6 0 0"},
		{"at the limit", list{stretch(20, straight)}, []float64{0, 10, 20}, "10 10 0 100 0"},
		{"one too far", list{stretch(30, straight)}, []float64{0, 10, 22, 30}, "12 12 0 60 0"},
		{"ends count", list{stretch(18, straight)}, []float64{6}, "12 12 0 33.3333333333 0"},
		{"none at all", list{stretch(4, straight)}, nil, "4 4 0 0 1"},
		{"evident all the way", list{stretch(30, evident)}, nil, "0 0 0 [] 0"},
		{"evident in the middle", list{stretch(4), stretch(30, evident), stretch(4)}, []float64{2}, "4 4 0 50 1"},
		{"gap over both kinds", list{stretch(10), stretch(10, bent)}, []float64{0, 7, 13, 18, 20}, "7 7 6 85 0"},
		{"buried", list{stretch(4), stretch(30, object{"place": "underground"}), stretch(4)}, []float64{0, 38}, "4 4 0 100 0"},
		{"straight not stated", list{stretch(8, object{"straight": nil})}, []float64{0, 8}, "8 [/cables/0/segments/0/straight] [/cables/0/segments/0/straight] [/cables/0/segments/0/straight] 0"},
		{"not straight, visible not stated", list{stretch(4, bent, object{"visible": nil})}, []float64{0, 4}, "4 0 4 100 0"},
		{"evident not stated", list{stretch(8, object{"function_evident": nil})}, []float64{0, 8}, unknown(5, "/cables/0/segments/0/function_evident")},
		{"place not stated", list{stretch(8, object{"place": nil})}, []float64{0, 8}, unknown(5, "/cables/0/segments/0/place")},
		{"length not stated", list{stretch(8, object{"length_m": nil})}, []float64{0, 8}, unknown(5, "/cables/0/segments/0/length_m")},
	} {
		t.Run(c.name, func(t *testing.T) {
			m := derive(t, route(c.segments, c.labels...), figures()).Markings[0]
			got := fmt.Sprint(facttest.Shown(m.GapM), " ", facttest.Shown(m.GapStraightM), " ", facttest.Shown(m.GapOtherM), " ", facttest.Shown(m.CoveragePct), " ", facttest.Shown(m.StretchesWithout))
			if got != c.want {
				t.Errorf("gaps, coverage and bare stretches are %s, want %s", got, c.want)
			}
		})
	}
}

func unknown(times int, member string) string {
	s := ""
	for range times {
		s += "[" + member + "] "
	}
	return s[:len(s)-1]
}

func TestPositionNotStated(t *testing.T) {
	doc := route(list{stretch(8)}, 0, 8)
	delete(doc["labels"].(list)[0].(object), "position_m")
	m := derive(t, doc, figures()).Markings[0]
	for _, n := range []working.Number{m.WarningLabels, m.GapM, m.CoveragePct, m.PassagesWithout, m.BendsWithout, m.StretchesWithout} {
		if facttest.Shown(n) != "[/labels/0/position_m]" {
			t.Errorf("%s is %s though nobody knows where a label is", n.Symbol(), facttest.Shown(n))
		}
	}
	delete(doc, "labels")
	if m := derive(t, doc, figures()).Markings[0]; facttest.Shown(m.GapM) != "[/labels]" {
		t.Errorf("without labels the gap is %s", facttest.Shown(m.GapM))
	}
}

// A warning within 1 m on both sides of a passage and at bends is common
// practice.
func TestTurns(t *testing.T) {
	wall, bend := object{"ends_at": "wall"}, object{"ends_at": "bend"}
	evident := object{"function_evident": true}
	in := object{"place": "wall_penetration"}
	for _, c := range []struct {
		name     string
		segments list
		labels   []float64
		want     string // passages, bends
	}{
		{"both sides of a wall", list{stretch(5, wall), stretch(5)}, []float64{4, 6}, "0 0"},
		{"a little too far", list{stretch(5, wall), stretch(5)}, []float64{3.9, 6.1}, "2 0"},
		{"one side only", list{stretch(5, wall), stretch(5)}, []float64{4.5}, "1 0"},
		{"from where it is evident", list{stretch(5, wall, evident), stretch(5)}, []float64{5.5}, "0 0"},
		{"a thick wall", list{stretch(5, wall), stretch(2, in, wall), stretch(5)}, []float64{4.5, 7.5}, "0 0"},
		{"within a thick wall", list{stretch(5, wall), stretch(2, in, wall), stretch(5)}, []float64{4.5, 6.5}, "1 0"},
		{"two walls close together", list{stretch(5, wall), stretch(0.5, wall), stretch(5)}, []float64{4.5, 5.7}, "2 0"},
		{"right at the wall, side not stated", list{stretch(5, wall), stretch(5)}, []float64{5}, "2 0"},
		{"passage described", list{stretch(5, object{"ends_at": nil, "passage": object{"through": "roof"}}), stretch(5)}, []float64{4.5, 5.5}, "0 0"},
		{"bend", list{stretch(5, bend), stretch(5)}, []float64{6}, "0 0"},
		{"bend without", list{stretch(5, bend), stretch(5)}, []float64{6.1}, "0 1"},
		{"bend where it is evident", list{stretch(5, bend, evident), stretch(5, evident)}, nil, "0 0"},
		{"end not stated", list{stretch(5, object{"ends_at": nil}), stretch(5)}, []float64{5}, unknown(2, "/cables/0/segments/0/ends_at")},
		{"side not known to need one, labelled", list{stretch(5, wall, object{"function_evident": nil}), stretch(5)}, []float64{4.5, 5.5}, "0 0"},
		{"side not known to need one", list{stretch(5, wall, object{"function_evident": nil}), stretch(5)}, []float64{5.5}, "[/cables/0/segments/0/function_evident] 0"},
	} {
		t.Run(c.name, func(t *testing.T) {
			m := derive(t, route(c.segments, c.labels...), figures()).Markings[0]
			if got := facttest.Shown(m.PassagesWithout) + " " + facttest.Shown(m.BendsWithout); got != c.want {
				t.Errorf("sides and bends without are %s, want %s", got, c.want)
			}
		})
	}
}

func TestSideRightAtTheWall(t *testing.T) {
	doc := route(list{stretch(5, object{"ends_at": "wall"}), stretch(5)}, 5, 5)
	doc["labels"].(list)[0].(object)["side"] = "from_side"
	if m := derive(t, doc, figures()).Markings[0]; m.PassagesWithout.Value() != 1 {
		t.Errorf("%s sides without, want the far one", facttest.Shown(m.PassagesWithout))
	}
	doc["labels"].(list)[1].(object)["side"] = "to_side"
	if m := derive(t, doc, figures()).Markings[0]; facttest.Shown(m.PassagesWithout) != "0" {
		t.Errorf("%s sides without, want none", facttest.Shown(m.PassagesWithout))
	}
}

func TestWarningDue(t *testing.T) {
	due := func(change func(object)) string {
		doc := route(list{stretch(5)})
		change(doc)
		f := derive(t, doc, figures())
		return facttest.Shown(f.Markings[0].WarningDue) + " " + facttest.Shown(f.Markings[1].WarningDue)
	}
	segment := func(doc object) object {
		return doc["cables"].(list)[0].(object)["segments"].(list)[0].(object)
	}
	way := func(doc object) object {
		return doc["isolators"].(list)[0].(object)["ways"].(list)[0].(object)
	}
	for _, c := range []struct {
		name   string
		change func(object)
		want   string
	}{
		{"before the isolator", func(object) {}, "true false"},
		{"evident", func(d object) { segment(d)["function_evident"] = true }, "false false"},
		{"one pole opened", func(d object) { way(d)["conductors_opened"] = "positive" }, "true [/cables/1/segments]"},
		{"poles not stated", func(d object) { delete(way(d), "conductors_opened") }, "true [/cables/1/segments /isolators/0/ways/0/conductors_opened]"},
		{"route not stated", func(d object) { delete(d["cables"].(list)[0].(object), "segments") }, "[/cables/0/segments] false"},
		{"string goes nowhere", func(d object) { d["cables"].(list)[1].(object)["from"] = "INV1.battery" }, "true [/cables /cables/1 several_answers battery_dc at INV1.battery, pv_dc at INV1.1 /cables/1/segments /cables/1/service unconfirmed pv_string]"},
	} {
		if got := due(c.change); got != c.want {
			t.Errorf("%s: warnings due on the two runs: %s, want %s", c.name, got, c.want)
		}
	}
}

// Whatever the route, another label never lowers the coverage nor widens a gap.
func TestMoreLabelsNeverLower(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		segments, total := list{}, 0.0
		for range rapid.IntRange(1, 5).Draw(t, "segments") {
			length := float64(rapid.IntRange(1, 150).Draw(t, "dm")) / 10
			total += length
			segments = append(segments, stretch(length, object{
				"straight": rapid.Bool().Draw(t, "straight"), "visible": rapid.Bool().Draw(t, "visible"), "function_evident": rapid.Bool().Draw(t, "evident"),
				"ends_at": rapid.SampledFrom([]string{"straight_on", "bend", "wall"}).Draw(t, "end"),
				"place":   rapid.SampledFrom([]string{"roof_space", "indoors_surface", "wall_penetration", "underground"}).Draw(t, "place"),
			}))
		}
		place := rapid.Map(rapid.IntRange(0, int(10*total)), func(dm int) float64 { return float64(dm) / 10 })
		at := rapid.SliceOfN(place, 0, 8).Draw(t, "labels")
		before := derive(t, route(segments, at...), figures()).Markings[0]
		after := derive(t, route(segments, append(at, place.Draw(t, "one more"))...), figures()).Markings[0]
		if before.CoveragePct.Known() && after.CoveragePct.Value() < before.CoveragePct.Value()-1e-9 {
			t.Errorf("coverage fell from %s to %s", facttest.Shown(before.CoveragePct), facttest.Shown(after.CoveragePct))
		}
		for _, p := range [][2]working.Number{{before.GapM, after.GapM}, {before.GapStraightM, after.GapStraightM}, {before.GapOtherM, after.GapOtherM},
			{before.StretchesWithout, after.StretchesWithout}, {before.PassagesWithout, after.PassagesWithout}, {before.BendsWithout, after.BendsWithout}} {
			if p[1].Value() > p[0].Value() {
				t.Errorf("%s rose from %s to %s", p[0].Symbol(), facttest.Shown(p[0]), facttest.Shown(p[1]))
			}
		}
		full := after.CoveragePct.Known() && after.CoveragePct.Value() == 100
		if after.CoveragePct.Known() && full != (after.GapStraightM.Value() <= 10 && after.GapOtherM.Value() <= 5 && after.StretchesWithout.Value() == 0) {
			t.Errorf("coverage %s with gaps %s and %s, %s bare", facttest.Shown(after.CoveragePct), facttest.Shown(after.GapStraightM), facttest.Shown(after.GapOtherM), facttest.Shown(after.StretchesWithout))
		}
	})
}

// Opening one conductor more never calls for more warnings.
func TestOpeningMoreNeedsNoMore(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		opened := rapid.SliceOfN(rapid.SampledFrom([]string{"both", "positive", "negative"}), 1, 5).Draw(t, "opened")
		before := dueOn(t, opened)
		opened[rapid.IntRange(0, len(opened)-1).Draw(t, "changed")] = "both"
		for run, due := range dueOn(t, opened) {
			if due && !before[run] {
				t.Errorf("run %d is due now", run)
			}
		}
	})
}

// dueOn puts isolators one after the other between string and inverter, and
// reports for each run whether warnings are due.
func dueOn(t *rapid.T, opened []string) []bool {
	doc, from := route(list{stretch(5)}), "S1"
	cables, isolators := list{}, list{}
	segments := list{stretch(5)}
	for i, o := range append(opened, "") {
		to := fmt.Sprintf("X%d.1.in", i)
		if o == "" {
			to = "INV1.1"
		} else {
			isolators = append(isolators, object{"id": fmt.Sprintf("X%d", i), "circuit": "pv_dc", "ways": list{object{"id": "1", "conductors_opened": o}}})
		}
		cables = append(cables, object{"id": fmt.Sprintf("C%d", i), "from": from, "to": to, "service": "pv_string", "segments": segments})
		from = fmt.Sprintf("X%d.1.out", i)
	}
	doc["cables"], doc["isolators"], doc["labels"] = cables, isolators, list{}
	var due []bool
	for _, m := range derive(t, doc, figures()).Markings {
		due = append(due, m.WarningDue.Value())
	}
	return due
}
