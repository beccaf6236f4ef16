package policies_test

import (
	"fmt"
	"hash/fnv"
	"path"
	"runtime"
	"runtime/debug"
	"slices"
	"strconv"
	"strings"
	"sync"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/google/go-cmp/cmp/cmpopts"

	"sunclause/engine/judge"
	"sunclause/engine/ruleset"
	"sunclause/facts/facttest"
	"sunclause/schema"
	"sunclause/schema/examples"
)

// Silence is never a pass. The tests leave the members of documents out, one at
// a time, and hold what comes of it to three sentences:
//
//   - What was not met or not shown does not become met.
//   - What was judged does not become not applicable, unless some requirement of
//     the same part, as binding, is not shown or not met for that.
//   - Where a part goes with the member that describes it, some requirement as
//     binding as those it was judged by is not shown or not met for that.

// silences are the documents. Some are sound and show what goes unjudged; the
// others break as much as can be broken at once, in ways that hide each other as
// little as can be.
var silences = []struct {
	name     string
	document func(*testing.T) map[string]any
	always   share
	thorough share
}{
	{"every fault at once", func(t *testing.T) map[string]any { return faulty(t, examples.Cottage, "faults/*.json") }, oneHalf, all},
	{"the faults of its earthing", func(t *testing.T) map[string]any { return faulty(t, examples.Cottage, "faults/earthing-*.json") }, none, ofEachShape},
	{"the faults of its roof", func(t *testing.T) map[string]any { return faulty(t, examples.Cottage, "faults/roof-*.json") }, none, ofEachShape},
	{"a battery", func(t *testing.T) map[string]any { return tree(t, examples.Text(t, examples.Battery)) }, none, all},
	{"every fault of the battery", func(t *testing.T) map[string]any { return faulty(t, examples.Battery, "gb-battery/faults/*.json") }, none, ofEachShape},
	{"a battery and surge protection, badly", func(t *testing.T) map[string]any { return tree(t, []byte(badly)) }, all, all},
	{"spoilt", func(t *testing.T) map[string]any { return spoilt(t, examples.Battery, 1) }, otherHalf, all},
	{"spoilt otherwise", func(t *testing.T) map[string]any { return spoilt(t, examples.Battery, 2) }, none, all},
	{"spoilt a third time", func(t *testing.T) map[string]any { return spoilt(t, examples.Battery, 3) }, none, all},
	{"a warehouse", func(t *testing.T) map[string]any { return tree(t, examples.Text(t, examples.Warehouse)) }, none, oneHalf},
	{"a spoilt warehouse", func(t *testing.T) map[string]any { return spoilt(t, examples.Warehouse, 1) }, none, ofEachShape},
}

func TestSilenceIsNeverAPass(t *testing.T) {
	defer debug.SetGCPercent(debug.SetGCPercent(200)) // what is derived is thrown away at once
	set := load(t, "gb")
	for _, s := range silences {
		share := s.always
		switch {
		case facttest.Thorough():
			share = s.thorough
		case testing.Short() && share != all:
			share = none
		}
		if share == none {
			continue
		}
		t.Run(s.name, func(t *testing.T) {
			document := s.document(t)
			trySilence(t, set, document, share.of(members(document, "")))
		})
	}
}

// share is how many of the members are left out. Members are of one shape when
// their pointers differ in the numbers of items only.
type share int

const (
	none share = iota
	oneHalf
	otherHalf
	ofEachShape
	all
)

// of takes the share: one member of some of the shapes. Which one goes by the
// shape, so that they are not all of the first part.
func (s share) of(pointers []string) []string {
	if s == all {
		return pointers
	}
	shapes := map[string][]string{}
	for _, p := range pointers {
		shapes[shapeOf(p)] = append(shapes[shapeOf(p)], p)
	}
	var some []string
	for shape, of := range shapes {
		h := fnv.New32a()
		h.Write([]byte(shape))
		if n := int(h.Sum32()); s == ofEachShape || share(n%2) == s-oneHalf {
			some = append(some, of[n/2%len(of)])
		}
	}
	slices.Sort(some)
	return some
}

func shapeOf(pointer string) string {
	tokens := strings.Split(pointer, "/")
	for i, t := range tokens {
		if _, err := strconv.Atoi(t); err == nil {
			tokens[i] = "*"
		}
	}
	return strings.Join(tokens, "/")
}

// trySilence leaves members out of a document, one at a time, on all processors.
func trySilence(t *testing.T, set *ruleset.RuleSet, document map[string]any, pointers []string) {
	t.Helper()
	raw := text(document)
	queue := make(chan string)
	var workers sync.WaitGroup
	first := newJudging(t, set, raw)
	for range runtime.GOMAXPROCS(0) {
		j := first.again(t, raw)
		workers.Go(func() {
			for p := range queue {
				if wrong := j.silenced(p); len(wrong) > 0 && readable(without(document, strings.Split(p[1:], "/"))) {
					t.Errorf("without %s\n\t%s", p, strings.Join(wrong, "\n\t"))
				}
			}
		})
	}
	for _, p := range pointers {
		queue <- p
	}
	close(queue)
	workers.Wait()
}

// readable reports whether a document is read at all: a member may be required, or
// others may refer to it.
func readable(document any) bool {
	_, err := schema.Decode("installation.json", text(document))
	return err == nil
}

// excuses are what silence may do after all, by requirement, with the members
// that may be left out. In each the document says one thing twice and the worse
// counts. One of two statements that contradict each other left out makes another
// document, whole in itself: nothing is left unsaid that somebody could still
// state, and nothing could be shown as missing.
var excuses = []struct{ requirement, shape, why string }{
	{"iec/rail-overhang-maker", "/datasheets/fixings/*/rail/cantilever_max_fraction", "some sheets print a share of the span beside a length; most print the length alone"},
	{"iec/fixing-screw-depth", "/datasheets/fixings/*/screw/depth_min_mm", "a maker may declare more than the general rule asks; most sheets print nothing"},
	{"iec/fixing-screw-pull", "/roof/planes/*/rafters/timber_class", "the class of the timber or its density may be stated; the example states both"},
	{"iec/attendances-recorded", "/handover/attendances", "nobody asks for the list; stated, it must not contradict the dates of the work"},
	{"iec/values-*", "/datasheets/*/*/*", "values of a sheet that contradict each other, and one of them left out"},
	{"iec/values-*", "/datasheets/*/*/*/*", "values of a sheet that contradict each other, and one of them left out"},
	{"iec/values-*", "/datasheets/*/*/*/*/*", "values of a sheet that contradict each other, and one of them left out"},
	{"iec/values-*", "/ac/supply/*", "values of the supply that contradict each other, and one of them left out"},
	{"iec/values-*", "/ac/circuits/*/*", "values of a circuit that contradict each other, and one of them left out"},
	{"iec/values-*", "/inverters/*/settings/*", "values of the settings that contradict each other, and one of them left out"},
	{"iec/words-fit", "/handover", "a decision of the customer, and the part that shows the opposite"},
	{"iec/words-fit", "/handover/decisions", "a decision of the customer, and the part that shows the opposite"},
	{"iec/words-fit", "/spds/*/circuit", "a decision of the customer, and the part that shows the opposite"},
	{"iec/thermography-light", "/commissioning", "thermography that nobody asked for, and nothing of it any more"},
	{"iec/screw-distances-in-order", "/datasheets/fixings/*/screw/*_min_mm", "a maker declares some of the distances, or none; those that are printed have to be in order"},
	{"iec/screw-distances-in-order", "/datasheets/fixings/*/screw", "without the values of a screw there is nothing out of order, and what needs them is not shown"},
	{"iec/penetration-of-cable", "/roof/planes/*/penetrations/*/run", "a bolt or pipe has no run; where one is named, the kind has to go with it"},
	{"gb/rcd-button", "/commissioning/rcds/*/test_button_works", "the button of a device that is tested several times is pressed once, and one of the tests says so"},
}

func excused(requirement, pointer string) bool {
	for _, e := range excuses {
		like, _ := path.Match(e.shape, pointer)
		of, _ := path.Match(e.requirement, requirement)
		if like && of {
			return true
		}
	}
	return false
}

// silenced tells what passes for silence about one member.
func (j *judging) silenced(pointer string) (wrong []string) {
	defer func() {
		if r := recover(); r != nil {
			wrong = []string{fmt.Sprint("it breaks: ", r)}
		}
	}()
	after, err := j.without(pointer)
	if err != nil {
		return []string{err.Error()}
	}
	for k, o := range after {
		switch was := j.before[k]; {
		case was == "" || was == judge.NotApplicable, excused(k.Requirement, pointer):
		case o == judge.Met && finding(was):
			wrong = append(wrong, fmt.Sprintf("%s of %s is met; it was %s", k.Requirement, k.Subject, was))
		case o == judge.NotApplicable && !j.opened(after, k.Subject, j.level(k)):
			wrong = append(wrong, fmt.Sprintf("%s of %s does not apply; it was %s", k.Requirement, k.Subject, was))
		case o == "" && !j.opened(after, "", j.level(k)):
			wrong = append(wrong, fmt.Sprintf("%s of %s is gone, and nothing is open for it; it was %s", k.Requirement, k.Subject, was))
		}
	}
	slices.Sort(wrong)
	return wrong
}

// opened reports whether something is not shown or not met that was otherwise
// before: of a part, or of any, and at least as binding.
func (j *judging) opened(after map[change]judge.Outcome, of string, as ruleset.Level) bool {
	for k, o := range after {
		if finding(o) && (of == "" || k.Subject == of) && (as == ruleset.Should || j.level(k) == ruleset.Shall) {
			return true
		}
	}
	return false
}

func (j *judging) level(k change) ruleset.Level {
	q, _ := j.set.Requirement(k.Requirement)
	return q.Level
}

// TestSilenceJudgesAlike holds what is judged of a part of the facts to whole
// checks of documents read anew.
func TestSilenceJudgesAlike(t *testing.T) {
	if testing.Short() {
		t.Skip("takes its time")
	}
	set := load(t, "gb")
	document := spoilt(t, examples.Battery, 1)
	j := newJudging(t, set, text(document))
	all := ofEachShape.of(members(document, ""))
	alike := 0
	for i := 0; i < len(all); i += 60 {
		left := without(document, strings.Split(all[i][1:], "/"))
		if !readable(left) {
			continue // the whole check could not be made
		}
		got, err := j.without(all[i])
		if err != nil {
			t.Fatal(err)
		}
		if d := cmp.Diff(differing(j.before, outcomes(t, set, text(left))), got, cmpopts.EquateEmpty()); d != "" {
			t.Errorf("without %s (- whole checks, + parts):\n%s", all[i], d)
		}
		alike++
	}
	if alike < 15 {
		t.Errorf("only %d members could be left out", alike)
	}
}

// differing are the outcomes that are not as they were, "" where there is none.
func differing(before, after map[change]judge.Outcome) map[change]judge.Outcome {
	d := map[change]judge.Outcome{}
	for k, o := range after {
		if before[k] != o {
			d[k] = o
		}
	}
	for k := range before {
		if _, still := after[k]; !still {
			d[k] = ""
		}
	}
	return d
}
