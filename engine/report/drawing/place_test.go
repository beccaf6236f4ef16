package drawing

import (
	"math"
	"testing"

	"sunclause/schema"
)

// TestShortened keeps names to the room there is, whatever they are written in.
func TestShortened(t *testing.T) {
	for _, c := range []struct {
		words string
		most  int
		want  string
	}{
		{"R1 4.8 m", 26, "R1 4.8 m"}, {"R1 4.8 m", 0, "R1 4.8 m"}, {"", 3, ""},
		{"abcdefgh", 5, "abcd…"}, {"WWWWWW", 5, "WW…"}, {"接線箱接線箱", 5, "接線…"},
	} {
		if got := shortened(c.words, c.most); got != c.want {
			t.Errorf("%q in %d: %q, want %q", c.words, c.most, got, c.want)
		}
	}
}

// TestNearest finds the shortest way from an opening to a module: square to it
// where they face each other, from corner to corner where they do not.
func TestNearest(t *testing.T) {
	plane := schema.Plane{Modules: make([]schema.PlacedModule, 2)}
	plane.Modules[0].ID.Value, plane.Modules[1].ID.Value = "left", "far"
	opening := box{2000, 1000, 500, 800}
	for _, c := range []struct {
		name   string
		module box
		mm     float64
	}{
		{"beside", box{0, 900, 1700, 1100}, 300},
		{"above", box{1500, 2000, 1700, 1100}, 200},
		{"past the corner", box{0, 2200, 1700, 1100}, 500}, // 300 across and 400 up
		{"over it", box{1900, 900, 1700, 1100}, 0},
	} {
		s := &planSketch{plane: &plane, modules: map[string]box{"left": c.module, "far": {9000, 0, 1700, 1100}}}
		from, to, mm := s.nearest(opening)
		if mm != c.mm || math.Hypot(to[0]-from[0], to[1]-from[1]) != mm {
			t.Errorf("%s: %v mm from %v to %v, want %v", c.name, mm, from, to, c.mm)
		}
	}
}

// TestNaturally orders names as people count.
func TestNaturally(t *testing.T) {
	for _, c := range [][2]string{{"INV1.2", "INV1.10"}, {"INV1.9", "INV2.1"}, {"A", "B"}, {"S9", "S10"}, {"b2", "b10"}, {"b1x", "b10"}, {"R2", "R2a"}} {
		if naturally(c[0], c[1]) >= 0 || naturally(c[1], c[0]) <= 0 {
			t.Errorf("%s has to stand before %s", c[0], c[1])
		}
	}
	if naturally("S1", "S1") != 0 {
		t.Error("a name is not before itself")
	}
}
