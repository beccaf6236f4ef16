package policies_test

import (
	"testing"

	"sunclause/facts/facttest"
	"sunclause/schema/examples"
	"sunclause/schema/slips"
)

// A list of the document counts as "none" only where nothing else speaks of one.
// TestListsGone empties each list of the examples, and leaves each out, in turn, with
// all that refers to its parts. Each has to bring a finding, or stands in a list with
// the reason why it need not. A list that no example has stands there too, and so do
// the reasons for single items and for references left as they are, by which TestSlips
// goes.

const argumentsFile = "../testdata/slips/lists.json"

func TestListsGone(t *testing.T) {
	if testing.Short() {
		t.Skip("takes its time")
	}
	arguments, err := readSurvivors(argumentsFile)
	if err != nil {
		t.Fatal(err)
	}
	set := load(t, "gb")
	had, silent := map[string]bool{}, survivors{}
	for _, d := range sound {
		if !d.always && !facttest.Thorough() {
			continue
		}
		document := staged(t, d.name, d.stage)
		all, err := slips.OfLists(document)
		if err != nil {
			t.Fatal(err)
		}
		first := newJudging(t, set, text(document))
		tried := map[string]int{}
		for _, s := range all {
			had[s.Shape] = true
			if tried[s.Class+s.Shape]++; d.name == examples.Warehouse && tried[s.Class+s.Shape] > 1 {
				continue // there it is one of thousands
			}
			o, broken := first.slipped(s.In(document))
			switch {
			case broken != "":
				t.Errorf("%s: %s: %s: %s", d.name, s.Pointer, s.What, broken)
			case o == survives:
				silent.add(s.Class, s.Shape, d.name+" "+d.stage)
			}
			if o == survives && arguments[s.Class][s.Shape] == "" {
				t.Errorf("%s %s: %s, %s: nothing finds it, and %s does not say why", d.name, d.stage, s.Pointer, s.Class, argumentsFile)
			}
		}
	}
	if facttest.Thorough() {
		holdArguments(t, arguments, had, silent)
	}
}

// holdArguments makes sure that each list of the schema was tried or is argued, and
// that no argument stands for what is found.
func holdArguments(t *testing.T, arguments survivors, had map[string]bool, silent survivors) {
	t.Helper()
	shapes, err := slips.Lists()
	if err != nil {
		t.Fatal(err)
	}
	const never = "no example has one"
	for _, shape := range shapes {
		if !had[shape] && arguments[never][shape] == "" {
			t.Errorf("%s: no example has such a list, and %s does not say what is found where it is gone", shape, argumentsFile)
		}
		if had[shape] && arguments[never][shape] != "" {
			t.Errorf("%s: an example has such a list; %s says that none has", shape, argumentsFile)
		}
	}
	for _, class := range []string{slips.EmptiedAll, slips.LeftOutAll} {
		for shape := range arguments[class] {
			if silent[class][shape] == "" {
				t.Errorf("%s, %s: it is found, and argued in %s", shape, class, argumentsFile)
			}
		}
	}
}
