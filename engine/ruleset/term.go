package ruleset

import "sunclause/engine/catalogue"

// term puts since and until of a card into conditions on the date of the design: a
// job is judged by what was in force when it was designed. A document that does not
// state it leaves the requirement not shown.
func (c cardFile) term() []Condition {
	var when []Condition
	if c.Since.Stated() {
		when = append(when, Condition{Fact: c.ofWhole("design_date"), Comparison: "since", Limit: Operand{Value: c.Since.Value}})
	}
	if c.Until.Stated() {
		when = append(when, Condition{Fact: c.ofWhole("design_date"), Comparison: "until", Limit: Operand{Value: c.Until.Value}})
	}
	return when
}

// stage puts the stage of a card into a condition: a row for work as built does
// not apply to a design.
func (c cardFile) stage() []Condition {
	if !c.Stage.Stated() {
		return nil
	}
	return []Condition{{Fact: c.ofWhole("stage"), Comparison: "equals", Limit: Operand{Value: c.Stage.Value}}}
}

// ofWhole is a fact of the installation as the card would name it.
func (c cardFile) ofWhole(fact string) string {
	if c.Subject.Value == catalogue.Whole {
		return fact
	}
	return catalogue.Whole + "." + fact
}
