package judge

import (
	"math"

	"sunclause/engine/catalogue"
	"sunclause/engine/ruleset"
	"sunclause/facts/working"
	"sunclause/schema"
)

// Outcome is what is stated of one requirement for one part.
type Outcome string

// The four outcomes.
const (
	Met           Outcome = "met"
	NotMet        Outcome = "not_met"
	NotShown      Outcome = "not_shown"
	NotApplicable Outcome = "not_applicable"
)

// Judgment is one requirement held against one part of the installation.
type Judgment struct {
	Requirement *ruleset.Requirement
	*Part
	Outcome   Outcome
	Measured  *Quantity     // nil when the requirement measures nothing or does not apply, or it is unknown
	Limit     *Quantity     // nil likewise
	MarginPct *float64      // how far inside the limit, in % of it; below zero when beyond
	Message   string        // for a Rego rule, what it said
	EitherWay bool          // it is met although it is not known to apply: what it asks for is there in any case
	Missing   []working.Gap // for not shown, and for what holds either way: why that is not known
	Departure *Departure

	decides int        // of a group: the place of the comparison that was measured
	others  []Judgment // of a group that is not met: what each of the other comparisons measured
}

// Compared is what was measured against what: of a group the first comparison
// that holds, else the first that is not known, else the first.
func (j Judgment) Compared() *ruleset.Condition {
	if group := j.Requirement.AnyOf; group != nil {
		return &group[j.decides]
	}
	return &j.Requirement.Condition
}

// Part is what a judgment is about: a part of the installation, or the whole.
type Part struct {
	Subject  working.Subject
	Position schema.Position // in the document

	facts catalogue.Part // not known for a requirement that is about no part
}

// Quantity is a value that was compared, or what it was compared with.
type Quantity struct {
	Value any    // float64, string, bool or []string
	Unit  string // "" for words and counts
	Fact  string // name of the fact, as in strings.voc_max_v; "" for a plain value
	From  string // name of the parameter, when the limit is one
}

// IsFinding reports whether the judgment is one that somebody has to look at.
func (j Judgment) IsFinding() bool { return j.Outcome == NotMet || j.Outcome == NotShown }

// FailsCheck reports whether the judgment makes a check fail.
func (j Judgment) FailsCheck(strict bool) bool {
	if j.Requirement.Level != ruleset.Shall && !strict {
		return false
	}
	return j.Outcome == NotShown || j.Outcome == NotMet && !j.Departure.Counts()
}

// margin is how far a value is inside its limit, in % of the limit.
func margin(comparison string, measured, limit *Quantity) *float64 {
	if measured == nil || limit == nil {
		return nil
	}
	v, ok1 := measured.Value.(float64)
	l, ok2 := limit.Value.(float64)
	if !ok1 || !ok2 || l == 0 {
		return nil
	}
	var m float64
	switch comparison {
	case "at_most", "below":
		m = 100 * (l - v) / math.Abs(l)
	case "at_least", "above":
		m = 100 * (v - l) / math.Abs(l)
	default:
		return nil
	}
	m = math.Round(m*100) / 100
	return &m
}
