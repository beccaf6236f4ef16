package report

import (
	"fmt"
	"io"
	"strings"

	"sunclause/engine/judge"
	"sunclause/engine/record"
	"sunclause/engine/ruleset"
	"sunclause/facts/working"
)

// RulesText lists the requirements of a rule set by room: what each asks, of
// what, and where it comes from.
func RulesText(w io.Writer, s *ruleset.RuleSet, requirements []*ruleset.Requirement, o Options) error {
	p := newPage(w, o)
	p.line(0, bold, fmt.Sprintf("%s: %s", layersOf(s), s.Title))
	p.blank()
	for _, room := range roomsOf(requirements) {
		p.line(0, bold, room)
		for _, q := range requirements {
			if q.Room == room {
				p.requirement(s, q)
			}
		}
		p.blank()
	}
	p.changes(s)
	return p.err
}

func roomsOf(requirements []*ruleset.Requirement) []string {
	var rooms []string
	seen := map[string]bool{}
	for _, q := range requirements {
		if !seen[q.Room] {
			seen[q.Room] = true
			rooms = append(rooms, q.Room)
		}
	}
	return rooms
}

func (p *page) requirement(s *ruleset.RuleSet, q *ruleset.Requirement) {
	p.line(2, plain, fmt.Sprintf("%s (%s)", q.ID, q.Level))
	p.line(4, plain, q.Title)
	p.line(4, plain, "asks of "+q.Subject+": "+Asks(s, q))
	for _, w := range q.When {
		p.line(4, plain, "applies where "+SayCondition(s, w))
	}
	p.line(4, faint, Cite(q.Source))
	for _, c := range q.Changes {
		p.line(4, doubt, sayChange(c))
	}
}

// Asks puts what a requirement compares into words.
func Asks(s *ruleset.RuleSet, q *ruleset.Requirement) string {
	if q.Rego && q.Comparison == "" {
		return fmt.Sprintf("what the rule at %s:%d says", q.File, q.Line)
	}
	return sayEach(s, q.Condition, " ")
}

var comparisonWords = map[string]string{
	"at_most": "at most", "at_least": "at least", "below": "below", "above": "above",
	"equals": "equal to", "differs": "other than", "one_of": "one of", "none_of": "none of",
	"since": "on or after", "until": "on or before", "includes": "including", "lacks": "without",
}

// SayCondition puts a condition into words.
func SayCondition(s *ruleset.RuleSet, w ruleset.Condition) string {
	return sayEach(s, w, " is ")
}

// sayEach puts a comparison into words, or those of a group one after the other.
func sayEach(s *ruleset.RuleSet, c ruleset.Condition, is string) string {
	var all []string
	for _, one := range c.Each() {
		all = append(all, one.Fact+is+comparisonWords[one.Comparison]+" "+SayOperand(s, one.Limit))
	}
	return strings.Join(all, ", or ")
}

// SayOperand writes what a fact is compared with: a parameter with its present
// value.
func SayOperand(s *ruleset.RuleSet, o ruleset.Operand) string {
	switch f := o.Factor; {
	case f != nil:
		factor := SayOperand(s, ruleset.Operand{Value: f.Number, Parameter: f.Parameter})
		o.Factor = nil
		return factor + " times " + SayOperand(s, o)
	case o.Cell != nil:
		return o.Cell.String()
	case o.Fact != "":
		return o.Fact
	case o.Parameter != "":
		b := s.Book.Parameters[o.Parameter]
		if b.IsText {
			return fmt.Sprintf("%s (parameter %s of %s)", b.Text, o.Parameter, b.Set)
		}
		return fmt.Sprintf("%s (parameter %s of %s)", strings.TrimSpace(working.Plain(b.Number)+" "+b.Unit), o.Parameter, b.Set)
	}
	return judge.WriteValue(o.Value, "")
}

// changes lists what the set changes in the sets below it, so that nothing is
// loosened unseen.
func (p *page) changes(s *ruleset.RuleSet) {
	if len(s.Changes) == 0 {
		return
	}
	p.line(0, bold, "changes to the sets below")
	for _, c := range s.Changes {
		name := c.Requirement
		switch {
		case c.Parameter != "":
			name = "parameter " + c.Parameter
		case c.Table != "":
			name = "table " + c.Table
		}
		if c.Loosens {
			name += " (loosened)"
		}
		p.line(2, plain, fmt.Sprintf("%s, by %s on %s: %s, was %s. %s", name, c.Set, c.Date, c.To, c.From, c.Reason))
	}
}

// rulesVersion is raised when any member changes.
const rulesVersion = 1

// The requirements as JSON, as schema/rules.schema.json describes them.
type jsonRules struct {
	RulesVersion int `json:"rules_version"`
	record.RuleSet
	Title        string     `json:"title"`
	Requirements []jsonRule `json:"requirements"`
}

type jsonRule struct {
	ID      string           `json:"id"`
	Title   string           `json:"title"`
	Room    string           `json:"room"`
	Level   ruleset.Level    `json:"level"`
	Subject string           `json:"subject"`
	Asks    string           `json:"asks"`
	When    []string         `json:"when"`
	Remedy  string           `json:"remedy"`
	Source  working.Source   `json:"source"`
	Set     string           `json:"set"`
	File    string           `json:"file"`
	Line    int              `json:"line"`
	Changes []ruleset.Change `json:"changes"`
}

// RulesJSON writes the requirements as one JSON object.
func RulesJSON(w io.Writer, s *ruleset.RuleSet, requirements []*ruleset.Requirement) error {
	out := jsonRules{rulesVersion, record.RuleSetOf(s), s.Title, []jsonRule{}}
	for _, q := range requirements {
		when := []string{}
		for _, c := range q.When {
			when = append(when, SayCondition(s, c))
		}
		out.Requirements = append(out.Requirements, jsonRule{
			q.ID, q.Title, q.Room, q.Level, q.Subject, Asks(s, q), when, q.Remedy, q.Source, q.Set, q.File, q.Line, append([]ruleset.Change{}, q.Changes...),
		})
	}
	return encode(w, out, "")
}
