package judge

import "testing"

// TestPair makes sure that a value and its limit are told apart where they are
// not the same, and that any two kinds can be written side by side.
func TestPair(t *testing.T) {
	list := func(names ...string) Quantity { return Quantity{Value: names} }
	for _, c := range []struct {
		a, b         Quantity
		value, limit string
	}{
		{Quantity{Value: 4.0, Unit: "mm²"}, Quantity{Value: 6.0, Unit: "mm²"}, "4 mm²", "6 mm²"},
		{Quantity{Value: 10.00004}, Quantity{Value: 10.0}, "10.00004", "10"},
		{Quantity{Value: 3.0}, Quantity{Value: 3.0}, "3", "3"},
		{Quantity{Value: "T1"}, Quantity{Value: "T2"}, "T1", "T2"},
		{Quantity{Value: true}, Quantity{Value: true}, "yes", "yes"},
		{list("S1", "S2"), list("S1", "S3"), "S1, S2", "S1, S3"},
		{list("S1", "S2"), list("S1", "S2"), "S1, S2", "S1, S2"},
		{list("S1"), Quantity{Value: "S1"}, "S1", "S1"},
		{list(), list(), "", ""},
		{list("T1", "T2", "T3", "T4", "T5", "T6"), Quantity{Value: "T6"}, "T6, among 6", "T6"},
		{list("T1", "T2", "T3", "T4", "T5", "T6"), Quantity{Value: "T7"}, "6 others", "T7"},
		{list("T1", "T2", "T3", "T4", "T5", "T6"), list("T7"), "T1, T2, T3, T4, T5 and 1 more", "T7"},
	} {
		if value, limit := pair(c.a, c.b); value != c.value || limit != c.limit {
			t.Errorf("%v and %v: %q and %q; want %q and %q", c.a, c.b, value, limit, c.value, c.limit)
		}
	}
}
