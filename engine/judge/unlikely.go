package judge

import (
	"fmt"
	"strconv"

	"sunclause/schema"
)

// Unlikely is a number of the document at which somebody has to look again. No
// rule set judges it; it makes the check fail until a departure says who looked
// and why it stays.
type Unlikely struct {
	schema.Unlikely
	Position  schema.Position
	Departure *Departure
}

// FailsCheck reports whether the value makes a check fail.
func (u Unlikely) FailsCheck() bool { return !u.Departure.Counts() }

// Says puts the value into one line, with what is plausible.
func (u Unlikely) Says() string {
	return fmt.Sprintf("%s is %s; plausible is %s", u.Name, u.Value, u.Plausible)
}

// accepted reports whether the value is the one that a departure accepts.
func (u Unlikely) accepted(value schema.Number) bool {
	v, err := strconv.ParseFloat(u.Value, 64)
	return err == nil && v == value.Value
}

// UnlikelyIn lists the unlikely values of a document, with the departures from them,
// for those who show what is derived and judge nothing.
func UnlikelyIn(doc *schema.Document) []Unlikely {
	r := Result{Document: doc, Unlikely: unlikely(doc)}
	r.depart(Options{})
	return r.Unlikely
}

// unlikely lists the numbers that are outside what the schema calls plausible. That
// there is no string, and no module on the roof, comes before all.
func unlikely(doc *schema.Document) []Unlikely {
	var all []Unlikely
	if nothing(&doc.Installation) {
		all = append(all, Unlikely{Unlikely: noStrings, Position: doc.Position(noStrings.At)})
	}
	for _, u := range doc.Unlikely() {
		all = append(all, Unlikely{Unlikely: u, Position: doc.Position(u.At)})
	}
	return all
}

// noStrings is what is unlikely of an installation that has nothing on the roof.
var noStrings = schema.Unlikely{
	At: "/strings", Name: "the number of strings", Value: "0", Plausible: "1 or more",
	Words:  "no string is described, and no module on the roof: there is nothing to check, and that nothing is wrong says nothing",
	Ground: "common practice", Source: "a PV installation has a PV generator",
}

// nothing reports whether an installation is said to have no string and has no module.
// A list of strings that is left out says nothing, and requirements are not shown.
func nothing(in *schema.Installation) bool {
	for i := range in.Roof.Planes {
		if len(in.Roof.Planes[i].Modules) > 0 {
			return false
		}
	}
	return in.Strings != nil && len(in.Strings) == 0
}

// NothingToCheck reports whether there was neither a string nor a module to judge.
func (r *Result) NothingToCheck() bool { return nothing(&r.Document.Installation) }

// LookAgain is what to do about an unlikely value.
const LookAgain = "Look again at the sheet, the drawing or the place. Where the value is right, state a departure with this member and value: who looked again, and why it stays."
