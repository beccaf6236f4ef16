package ruleset

import (
	"cmp"
	"slices"

	"sunclause/facts/working"
	"sunclause/schema"
)

// Level says how binding a requirement is, in the drafting words of ISO/IEC.
type Level string

// The levels.
const (
	Shall  Level = "shall"
	Should Level = "should"
)

// levelOf is the level that is written: shall, the strict one, where none is.
func levelOf(written schema.Text) Level {
	return cmp.Or(Level(written.Value), Shall)
}

// Requirement is one rule of a set, whether written as a limit row or in Rego.
type Requirement struct {
	ID        string
	Title     string
	Room      string
	Level     Level
	Subject   string      // list of facts that is judged, one by one; "installation" is the whole
	When      []Condition // under which it applies: all of them have to hold
	Condition             // what a row asks for; of a Rego rule what is shown beside its outcome, which may be nothing
	Broken    string      // what is wrong when a Rego rule speaks
	Remedy    string
	Source    working.Source
	Rego      bool
	Table     string // that asks for things, in which it is written; "" for a row of a room and a Rego rule

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

// Compared are all comparisons of the requirement: those under which it
// applies, and what it asks for.
func (r *Requirement) Compared() []Condition {
	return append(slices.Clone(r.When), r.Condition)
}

// RowUses reports whether what a row asks for names a parameter.
func (r *Requirement) RowUses(parameter string) bool { return !r.Rego && r.Condition.uses(parameter) }

// looksAt reports whether the requirement looks at a parameter, beside what a
// Rego rule reads.
func (r *Requirement) looksAt(parameter string) bool {
	return slices.ContainsFunc(r.Compared(), func(c Condition) bool { return c.uses(parameter) })
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
