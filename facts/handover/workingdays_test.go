package handover_test

import (
	"testing"
	"time"

	"pgregory.net/rapid"
)

// Working days are never more than the days, seven days hold five of them but
// for holidays, and a later entry never has fewer.
func TestWorkingDaysHold(t *testing.T) {
	rapid.Check(t, func(r *rapid.T) {
		start := time.Date(2026, 1, 1, 0, 0, 0, 0, time.UTC)
		from := rapid.IntRange(0, 300).Draw(r, "from")
		n := rapid.IntRange(0, 60).Draw(r, "days")
		count := func(days int) float64 {
			doc := premises(1)
			doc["commissioning"] = object{"date": start.AddDate(0, 0, from).Format(time.DateOnly)}
			doc["handover"].(object)["notifications"] = list{notice("N1", "certification_scheme", "register_entry",
				object{"notified": start.AddDate(0, 0, from+days).Format(time.DateOnly)})}
			return derive(t, doc).Connection.RegisterDays.Value()
		}
		got := count(n)
		if whole := 5 * (n / 7); got > float64(n) || got > float64(whole+min(n%7, 5)) || got < float64(whole-3) {
			r.Fatalf("%v working days of %d", got, n)
		}
		if count(n+1) < got {
			r.Fatalf("%v working days of %d, %v of %d", got, n, count(n+1), n+1)
		}
	})
}
