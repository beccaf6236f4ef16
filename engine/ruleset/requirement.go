package ruleset

import (
	"sunclause/facts/working"
)

// Level says how binding a requirement is, in the drafting words of ISO/IEC.
type Level string

// The levels.
const (
	Shall  Level = "shall"
	Should Level = "should"
)

// Requirement is one rule of a set, whether written as a limit row or in Rego.
type Requirement struct {
	ID         string
	Title      string
	Room       string
	Level      Level
	Subject    string // list of facts that is judged, one by one; "installation" is the whole
	When       []Condition
	Measure    string // fact that is compared, or shown beside the outcome of a Rego rule; may be empty there
	Comparison string
	Limit      Operand
	Broken     string // what is wrong when a Rego rule speaks
	Remedy     string
	Source     working.Source
	Rego       bool

	Set     string   // rule set that wrote it
	File    string   // file and line where it is written
	Line    int      //
	Place   int      // among those of its set and room, as they are written: the gravest stand first
	Changes []Change // what sets above it changed, in order

	when []*Comparison // as resolved against the facts there are
	row  *Comparison   // nil for a Rego rule
}

// Conditions are the conditions under which the requirement applies, resolved.
func (r *Requirement) Conditions() []*Comparison { return r.when }

// Row is what is compared, resolved; nil for a Rego rule.
func (r *Requirement) Row() *Comparison { return r.row }

// Condition is one of the conditions under which a requirement applies.
type Condition struct {
	Fact       string
	Comparison string
	Limit      Operand
}

// Operand is what a fact is compared with: a plain value, another fact of the
// subject, or a parameter of the set. Exactly one of them is set.
type Operand struct {
	Value     any // float64, string, bool or []string
	Fact      string
	Parameter string
}

// Change is what one rule set changed in a set below it: a parameter, a
// requirement or a table.
type Change struct {
	Set         string `json:"set"`
	Parameter   string `json:"parameter,omitempty"`
	Requirement string `json:"requirement,omitempty"`
	Table       string `json:"table,omitempty"`
	From        string `json:"from"`
	To          string `json:"to"`
	Reason      string `json:"reason"`
	Date        string `json:"date"`
	Loosens     bool   `json:"loosens"` // it lets something pass that the set below would not
}
