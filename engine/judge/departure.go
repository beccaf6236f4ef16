package judge

import (
	"cmp"
	"fmt"

	"sunclause/schema"
)

// Departure is a requirement that is not met, or an unlikely value, accepted so
// in writing. It stays visible; it only stops the check from failing.
type Departure struct {
	Reason string `json:"reason"`
	Author string `json:"author"`
	Date   string `json:"date"`
	Until  string `json:"until,omitempty"`
	At     string `json:"at"`             // JSON pointer
	Void   string `json:"void,omitempty"` // why it does not count
}

// Counts reports whether there is a departure that has not ended.
func (d *Departure) Counts() bool { return d != nil && d.Void == "" }

// depart marks what the document departs from. A departure that fits nothing that
// is not met, and no unlikely value, is noted: it may be misspelt, or no longer
// needed.
func (r *Result) depart(o Options) {
	day := cmp.Or(o.Date, o.Designed, r.Document.Installation.Project.DesignDate.Value)
	for _, d := range r.Document.Installation.Handover.Departures {
		from, fit := d.Requirement, "fits no requirement that is not met"
		if d.Member.Stated() {
			from, fit = d.Member, "fits no unlikely value"
		}
		if !r.departFrom(d, departure(d, day)) {
			pos := r.Document.Position(d.At())
			r.Notes = append(r.Notes, fmt.Sprintf("line %d: the departure from %s %s", pos.Line, from.Value, fit))
		}
	}
}

// departFrom marks what one departure fits, and reports whether there is any.
func (r *Result) departFrom(d schema.Departure, out *Departure) bool {
	used := false
	for i := range r.Unlikely {
		if u := &r.Unlikely[i]; d.Member.Is(u.At) && !u.Departure.Counts() {
			u.Departure, used = out, true
			if !u.accepted(d.Value) {
				out.Void = "it is for another value"
			}
		}
	}
	for i := range r.Judgments {
		if j := &r.Judgments[i]; j.Outcome == NotMet && fits(d, *j) {
			j.Departure, used = out, true
		}
	}
	return used
}

func fits(d schema.Departure, j Judgment) bool {
	return d.Requirement.Is(j.Requirement.ID) && (!d.Subject.Stated() || d.Subject.Value == j.Subject.ID)
}

// departure takes a departure of the document. One with a last day counts only
// where there is a day to hold it against.
func departure(d schema.Departure, day string) *Departure {
	out := &Departure{Reason: d.Reason.Value, Author: d.Author.Value, Date: d.Date.Value, Until: d.Until.Value, At: d.At()}
	switch {
	case !d.Until.Stated():
	case day == "":
		out.Void = "it ends on a day, and no day to judge by is known"
	case d.Until.Value < day:
		out.Void = "it ended on " + d.Until.Value
	}
	return out
}
