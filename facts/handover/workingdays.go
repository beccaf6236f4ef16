package handover

import (
	"time"

	"sunclause/facts/book"
	"sunclause/facts/working"
	"sunclause/schema"
)

// workingDays counts the days from one date to another that are neither at a
// weekend nor a holiday of the table. The first day does not count, the last
// does. In a year that the table does not hold, the answer is unknown.
func workingDays(symbol string, from, to schema.Text, list string, b book.Book) working.Number {
	plain := days(symbol, from, to, list)
	if !plain.Known() {
		return plain
	}
	const name = "bank_holidays"
	t := b.Tables[name]
	if t == nil {
		return working.Unknown(symbol, "d", "the rule set has no table "+name)
	}
	off, years := holidays(t)
	start, _ := time.Parse(time.DateOnly, from.Value)
	end, _ := time.Parse(time.DateOnly, to.Value)
	sign := 1.0
	if end.Before(start) {
		start, end, sign = end, start, -1
	}
	n := 0.0
	for day := start; day.Before(end); {
		day = day.AddDate(0, 0, 1)
		if !years[day.Year()] {
			return working.Unknown(symbol, "d", from.At(), to.At())
		}
		if wd := day.Weekday(); wd != time.Saturday && wd != time.Sunday && !off[day.Format(time.DateOnly)] {
			n++
		}
	}
	f := working.Lookup{Symbol: symbol, Unit: "d", Source: t.Source,
		Text: "days from " + from.Value + " to " + to.Value + " without weekends and those of “" + t.Title + "”"}
	return f.Of(func(...float64) float64 { return sign * n }, plain)
}

// holidays are the dates of the table and the years that it holds.
func holidays(t *book.Table) (off map[string]bool, years map[int]bool) {
	off, years = map[string]bool{}, map[int]bool{}
	for _, row := range t.Rows {
		date, _ := row["date"].(string)
		if d, err := time.Parse(time.DateOnly, date); err == nil {
			off[date], years[d.Year()] = true, true
		}
	}
	return off, years
}
