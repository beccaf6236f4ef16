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
		when = append(when, Condition{Fact: designDate, Comparison: "since", Limit: Operand{Value: c.Since.Value}})
	}
	if c.Until.Stated() {
		when = append(when, Condition{Fact: designDate, Comparison: "until", Limit: Operand{Value: c.Until.Value}})
	}
	return when
}

// stage puts the stage of a card into a condition: a row for work as built does
// not apply to a design.
func (c cardFile) stage() []Condition {
	if !c.Stage.Stated() {
		return nil
	}
	fact := catalogue.Whole + ".stage"
	if c.Subject.Value == catalogue.Whole {
		fact = "stage"
	}
	return []Condition{{Fact: fact, Comparison: "equals", Limit: Operand{Value: c.Stage.Value}}}
}
