package ruleset

import "sunclause/engine/catalogue"

// designDate is the fact by which a set chooses among the editions of its book:
// a job is judged by what was in force when it was designed.
const designDate = catalogue.Whole + ".design_date"

// term puts since and until of a card into conditions on the date of the design.
// A document that does not state it leaves the requirement not shown.
func (c cardFile) term() []Condition {
	var when []Condition
	if c.Since.Stated() {
		when = append(when, Condition{designDate, "since", Operand{Value: c.Since.Value}})
	}
	if c.Until.Stated() {
		when = append(when, Condition{designDate, "until", Operand{Value: c.Until.Value}})
	}
	return when
}
