package working_test

import (
	"slices"
	"testing"

	"pgregory.net/rapid"

	"sunclause/facts/working"
)

// flag is a flag of the tests: yes, no, or unknown because some members are
// missing.
type flag struct {
	known, value bool
	missing      []string
}

func (f flag) working() working.Flag {
	if f.known {
		return working.KnownFlag(f.value, "/known")
	}
	return working.UnknownFlag(f.missing...)
}

func flags(t *rapid.T) []flag {
	return rapid.SliceOfN(rapid.Custom(func(t *rapid.T) flag {
		f := flag{known: rapid.Bool().Draw(t, "known"), value: rapid.Bool().Draw(t, "value")}
		f.missing = rapid.SliceOfN(rapid.SampledFrom([]string{"/a", "/b", "/c"}), 1, 2).Draw(t, "missing")
		return f
	}), 0, 6).Draw(t, "flags")
}

// worlds are all ways to fill in what is unknown.
func worlds(all []flag) [][]bool {
	out := [][]bool{{}}
	for _, f := range all {
		var next [][]bool
		for _, w := range out {
			for _, v := range []bool{false, true} {
				if !f.known || f.value == v {
					next = append(next, append(slices.Clone(w), v))
				}
			}
		}
		out = next
	}
	return out
}

func unknowns(all []flag) []string {
	var names []string
	for _, f := range all {
		if !f.known {
			names = append(names, f.missing...)
		}
	}
	slices.Sort(names)
	return slices.Compact(names)
}

func given(all []flag) []working.Flag {
	var out []working.Flag
	for _, f := range all {
		out = append(out, f.working())
	}
	return out
}

// holds makes sure that an answer is known just where it is the same in every
// world, and else names what is missing.
func holds[V comparable](t *rapid.T, what string, all []flag, known bool, value V, missing []string, in func(world []bool) V) {
	ways := worlds(all)
	want := in(ways[0])
	settled := !slices.ContainsFunc(ways, func(w []bool) bool { return in(w) != want })
	switch {
	case known != settled:
		t.Fatalf("%s of %v: known is %t, want %t", what, all, known, settled)
	case known && value != want:
		t.Fatalf("%s of %v is %v, want %v", what, all, value, want)
	case known && len(missing) > 0:
		t.Fatalf("%s of %v is known and misses %v", what, all, missing)
	case !known && !slices.Equal(missing, unknowns(all)):
		t.Fatalf("%s of %v misses %v, want %v", what, all, missing, unknowns(all))
	}
}

func TestLogicHoldsInEveryWorld(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		all := flags(t)
		every := func(w []bool) bool { return !slices.Contains(w, false) }
		some := func(w []bool) bool { return slices.Contains(w, true) }
		f := working.All(given(all)...)
		holds(t, "All", all, f.Known(), f.Value(), working.Pointers(f.Missing()), every)
		f = working.Any(given(all)...)
		holds(t, "Any", all, f.Known(), f.Value(), working.Pointers(f.Missing()), some)
		f = working.Not(working.Any(given(all)...))
		holds(t, "Not Any", all, f.Known(), f.Value(), working.Pointers(f.Missing()), func(w []bool) bool { return !some(w) })
		n := working.Count("n", "/list", given(all)...)
		holds(t, "Count", all, n.Known(), int(n.Value()), working.Pointers(n.Missing()), func(w []bool) int {
			count := 0
			for _, v := range w {
				if v {
					count++
				}
			}
			return count
		})
	})
}

// Not All of some flags is Any of their opposites, whatever is unknown.
func TestNotTurnsAllIntoAny(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		all := given(flags(t))
		var opposite []working.Flag
		for _, f := range all {
			opposite = append(opposite, working.Not(f))
		}
		a, b := working.Not(working.All(all...)), working.Any(opposite...)
		if a.Known() != b.Known() || a.Value() != b.Value() || !slices.Equal(a.Missing(), b.Missing()) {
			t.Fatalf("not all of %v is %v, any of the opposites %v", all, a, b)
		}
	})
}

func TestPlaceOfWhatSettles(t *testing.T) {
	yes, no, open := working.KnownFlag(true, "/yes"), working.KnownFlag(false, "/no"), working.UnknownFlag("/open")
	for name, c := range map[string]struct {
		f    working.Flag
		want string
	}{
		"one that holds": {working.Any(open, no, yes), "/yes"}, "one that does not": {working.All(open, yes, no), "/no"},
		"none that holds": {working.Any(no, no), "/no"}, "all that hold": {working.All(yes, yes), "/yes"},
		"the opposite": {working.Not(no), "/no"}, "no flags": {working.All(), ""},
	} {
		if !c.f.Known() || c.f.At() != c.want {
			t.Errorf("%s: at %q, want %q", name, c.f.At(), c.want)
		}
	}
	if f := working.Any(working.Flag{}); f.Known() {
		t.Error("a flag that is unknown, and does not say why, is settled")
	}
}

func TestTextsCompared(t *testing.T) {
	a, b, open := working.KnownText("roof", "/a"), working.KnownText("wall", "/b"), working.UnknownText("/open")
	if f := a.OneOf("wall", "roof"); !f.Known() || !f.Value() || f.At() != "/a" {
		t.Errorf("one of two words: %v", f)
	}
	if f := a.OneOf("wall"); !f.Known() || f.Value() {
		t.Errorf("none of the words: %v", f)
	}
	if f := open.OneOf("wall"); f.Known() || !slices.Equal(working.Pointers(f.Missing()), []string{"/open"}) {
		t.Errorf("an unknown text: %v", f)
	}
	if f := working.Same(a, b); !f.Known() || f.Value() || f.At() != "/b" {
		t.Errorf("two texts: %v", f)
	}
	if f := working.Same(working.UnknownText("/z"), open); f.Known() || !slices.Equal(working.Pointers(f.Missing()), []string{"/open", "/z"}) {
		t.Errorf("two unknown texts: %v", f)
	}
}

func TestNumbersCompared(t *testing.T) {
	two, three := working.Counted("a", 2, "/two"), working.Counted("b", 3, "/three")
	for name, c := range map[string]struct {
		f    working.Flag
		want bool
	}{"below": {working.AtMost(two, three), true}, "equal": {working.AtMost(two, two), true}, "above": {working.AtMost(three, two), false},
		"at least less": {working.AtLeast(three, two), true}, "at least as much": {working.AtLeast(two, two), true}, "at least more": {working.AtLeast(two, three), false}} {
		if !c.f.Known() || c.f.Value() != c.want {
			t.Errorf("%s: %v, want %t", name, c.f, c.want)
		}
	}
	if f := working.AtMost(working.Unknown("x", "", "/z"), working.Unknown("y", "", "/a")); f.Known() || !slices.Equal(working.Pointers(f.Missing()), []string{"/a", "/z"}) {
		t.Errorf("two unknown numbers: %v", f)
	}
}

func TestAmong(t *testing.T) {
	even := func(n *int) bool { return *n%2 == 0 }
	if f := working.Among([]int{1, 4}, "/list", even); !f.Known() || !f.Value() || f.At() != "/list" {
		t.Errorf("a list that holds one: %v", f)
	}
	for _, list := range [][]int{{1, 3}, {}} {
		if f := working.Among(list, "/list", even); !f.Known() || f.Value() {
			t.Errorf("%v: %v, want none", list, f)
		}
	}
	if f := working.Among(nil, "/list", even); f.Known() || !slices.Equal(working.Pointers(f.Missing()), []string{"/list"}) {
		t.Errorf("a list left out: %v", f)
	}
}
