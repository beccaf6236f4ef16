package working_test

import (
	"fmt"
	"testing"
	"time"

	"pgregory.net/rapid"

	"sunclause/facts/working"
	"sunclause/schema"
)

func day(date string) schema.Text { return schema.NewText("/"+date, date) }

func TestDays(t *testing.T) {
	for _, c := range []struct {
		from, to string
		want     float64
	}{
		{"2026-03-02", "2026-03-30", 28}, {"2026-03-02", "2026-04-01", 30}, {"2026-03-28", "2026-03-30", 2}, // over the change to summer time
		{"2026-05-07", "2026-05-06", -1}, {"2024-02-28", "2024-03-01", 2}, {"2026-02-28", "2026-03-01", 1}, {"1999-12-31", "2000-01-01", 1},
	} {
		if n := working.Days("t", day(c.from), day(c.to)); !n.Known() || n.Value() != c.want || n.Unit() != "d" {
			t.Errorf("from %s to %s: %v %s, want %v d", c.from, c.to, n.Value(), n.Unit(), c.want)
		}
	}
	for _, no := range []string{"2026-02-30", "2026-04-31", "2025-02-29"} {
		if n := working.Days("t", day(no), day("2026-05-01")); n.Known() || fmt.Sprint(n.Missing()) != "[/"+no+"]" {
			t.Errorf("from %s: %v, missing %v; want it unknown", no, n.Value(), n.Missing())
		}
	}
	if n := working.Days("t", schema.Text{}, day("2026-05-01")); n.Known() {
		t.Error("days from a date not stated are known")
	}
}

func TestDaysHold(t *testing.T) {
	rapid.Check(t, func(r *rapid.T) {
		start := time.Date(1990, 1, 1, 0, 0, 0, 0, time.UTC)
		a, b := rapid.IntRange(0, 40000).Draw(r, "a"), rapid.IntRange(0, 40000).Draw(r, "b")
		from, to := day(start.AddDate(0, 0, a).Format(time.DateOnly)), day(start.AddDate(0, 0, b).Format(time.DateOnly))
		there, back := working.Days("t", from, to).Value(), working.Days("t", to, from).Value()
		if there != float64(b-a) || back != -there {
			r.Fatalf("%v there and %v back, want %d", there, back, b-a)
		}
	})
}
