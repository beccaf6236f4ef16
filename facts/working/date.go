package working

import (
	"time"

	"sunclause/schema"
)

// secondsADay is the length of a day of the calendar, which knows no summer time.
const secondsADay = 24 * 60 * 60

// Day is a date of the document as a count of days, for reckoning between
// dates. A date that the calendar does not have is unknown.
func Day(symbol string, date schema.Text) Number {
	d, err := time.Parse(time.DateOnly, date.Value)
	if !date.Stated() || err != nil {
		return Unknown(symbol, "d", date.At())
	}
	return Number{value: float64(d.Unix() / secondsADay), known: true, symbol: symbol, unit: "d", at: date.At()}
}

// Days counts the days from one date of the document to another; below zero
// when the second comes first.
func Days(symbol string, from, to schema.Text) Number {
	l := Lookup{Symbol: symbol, Unit: "d", Text: "days from " + from.Value + " to " + to.Value, Source: ByDefinition}
	return l.Of(func(x ...float64) float64 { return x[1] - x[0] }, Day("from", from), Day("to", to))
}
