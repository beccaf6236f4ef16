package policies_test

import (
	"testing"
	"time"
)

// TestBankHolidays holds the table of holidays against the calendar: Good Friday
// and Easter Monday by the reckoning of Easter, the Mondays of May and August,
// and substitutes for those that fall on a weekend.
func TestBankHolidays(t *testing.T) {
	listed := map[string]bool{}
	years := map[int]bool{}
	for _, row := range load(t, "gb").Book.Tables["bank_holidays"].Rows {
		date := row["date"].(string)
		d, err := time.Parse(time.DateOnly, date)
		if err != nil || d.Weekday() == time.Saturday || d.Weekday() == time.Sunday || listed[date] {
			t.Errorf("%s is no working day, or stands twice (%v)", date, err)
		}
		listed[date], years[d.Year()] = true, true
	}
	want := 0
	for year := range years {
		for _, d := range holidaysOf(year) {
			want++
			if !listed[d.Format(time.DateOnly)] {
				t.Errorf("%s is not in the table", d.Format(time.DateOnly))
			}
		}
	}
	if want != len(listed) {
		t.Errorf("%d holidays in the table, %d by the calendar", len(listed), want)
	}
}

func holidaysOf(year int) []time.Time {
	easter := easterOf(year)
	days := []time.Time{easter.AddDate(0, 0, -2), easter.AddDate(0, 0, 1),
		monday(date(year, 5, 1)), monday(date(year, 5, 25)), monday(date(year, 8, 25))}
	taken := map[time.Time]bool{}
	for _, d := range []time.Time{date(year, 1, 1), date(year, 12, 25), date(year, 12, 26)} {
		for d.Weekday() == time.Saturday || d.Weekday() == time.Sunday || taken[d] {
			d = d.AddDate(0, 0, 1)
		}
		taken[d] = true
		days = append(days, d)
	}
	return days
}

func date(year, month, day int) time.Time {
	return time.Date(year, time.Month(month), day, 0, 0, 0, 0, time.UTC)
}

// monday is the first Monday from a day on.
func monday(d time.Time) time.Time {
	for d.Weekday() != time.Monday {
		d = d.AddDate(0, 0, 1)
	}
	return d
}

// easterOf is Easter Sunday of the Gregorian calendar (Meeus, Jones and Butcher).
func easterOf(y int) time.Time {
	a, b, c := y%19, y/100, y%100
	h := (19*a + b - b/4 - (b-(b+8)/25+1)/3 + 15) % 30
	l := (32 + 2*(b%4) + 2*(c/4) - h - c%4) % 7
	m := (a + 11*h + 22*l) / 451
	return date(y, (h+l-7*m+114)/31, (h+l-7*m+114)%31+1)
}
