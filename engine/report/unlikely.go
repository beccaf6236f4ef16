package report

import (
	"encoding/json"
	"fmt"
	"strconv"
	"strings"

	"sunclause/engine/judge"
	"sunclause/engine/record"
)

// What is unlikely stands before all else: whatever was worked out with such a
// value is as doubtful as the value.

// unlikelyWords are the heading of unlikely values, for people.
const unlikelyWords = "unlikely, look again"

// alikeUnlikely groups unlikely values of one member, as of all modules of a plane
// whose place was written in metres.
func alikeUnlikely(all []judge.Unlikely) [][]judge.Unlikely {
	return alike(all, func(u judge.Unlikely) string {
		return fmt.Sprint(shapeOf(u.At), u.Plausible, u.FailsCheck(), u.Departure)
	})
}

// shapeOf is a JSON pointer without the numbers of items.
func shapeOf(pointer string) string {
	steps := strings.Split(pointer, "/")
	for i, s := range steps {
		if _, err := strconv.Atoi(s); err == nil {
			steps[i] = ""
		}
	}
	return strings.Join(steps, "/")
}

// sayUnlikely says what an unlikely value is about, what it may be instead, and on
// what that rests, a line each.
func sayUnlikely(u judge.Unlikely) []string {
	var says []string
	if u.Words != "" {
		says = append(says, upperFirst(u.Words)+".")
	}
	if u.Slips != "" {
		says = append(says, "Often such a value is: "+u.Slips+".")
	}
	if u.Departure != nil {
		says = append(says, sayDeparture(u.Departure))
	}
	return says
}

// groundOf says on what the plausible values rest.
func groundOf(u judge.Unlikely) string {
	if u.Source == "" {
		return u.Ground
	}
	return u.Ground + ": " + u.Source
}

// unlikely lists the unlikely values before all else. Unless all is asked for, of
// values of one member the first stands for the others.
func (p *page) unlikely(all []judge.Unlikely) {
	if len(all) == 0 {
		return
	}
	p.line(0, bad, strings.ToUpper(unlikelyWords))
	for _, group := range alikeUnlikely(all) {
		more := len(group) - 1
		if p.options.All {
			more = 0
		}
		for _, u := range group[:len(group)-more] {
			style := bad
			if !u.FailsCheck() {
				style = doubt
			}
			p.line(2, style, fmt.Sprintf("%s (line %d)", u.Says(), u.Position.Line))
			for _, says := range sayUnlikely(u) {
				p.line(4, plain, says)
			}
			p.line(4, faint, groundOf(u))
			p.line(4, faint, u.At)
		}
		if more > 0 {
			p.line(4, plain, fmt.Sprintf("And %d more of this member; --all lists them.", more))
		}
	}
	p.line(2, plain, judge.LookAgain)
	p.blank()
}

// UnlikelyLines tell of the unlikely values that nobody has accepted, a line for each
// member.
func UnlikelyLines(r *judge.Result) []string {
	var all []string
	for _, do := range unlikelyToDo(r) {
		all = append(all, fmt.Sprintf("%s (line %d). What rests on it is as doubtful.", do.What, do.Line))
	}
	return all
}

// unlikelyToDo are the unlikely values that make the check fail, as things to do.
func unlikelyToDo(r *judge.Result) []ToDo {
	var all []ToDo
	for _, group := range alikeUnlikely(r.Unlikely) {
		u := group[0]
		if !u.FailsCheck() {
			continue
		}
		what := upperFirst(unlikelyWords) + ": " + u.Says()
		if more := len(group) - 1; more > 0 {
			what += fmt.Sprintf(", and %d more of this member", more)
		}
		all = append(all, ToDo{Line: u.Position.Line, What: strings.Clone(what), Remedy: judge.LookAgain})
	}
	return all
}

// markdownUnlikely tells of the unlikely values.
func markdownUnlikely(b *strings.Builder, r *judge.Result) {
	if len(r.Unlikely) == 0 {
		return
	}
	fmt.Fprintf(b, "### %s\n\n", upperFirst(unlikelyWords))
	for i, group := range alikeUnlikely(r.Unlikely) {
		if i == markdownRows {
			b.WriteString("- and more; the report of sunclause check lists all\n")
			break
		}
		u := group[0]
		fmt.Fprintf(b, "- **%s** (%s)", inline(u.Says()), inline(fmt.Sprintf("%s:%d", r.Document.Name, u.Position.Line)))
		for _, says := range sayUnlikely(u) {
			b.WriteString(" " + inline(says))
		}
		if more := len(group) - 1; more > 0 {
			fmt.Fprintf(b, " And %d more of this member.", more)
		}
		b.WriteString("\n")
	}
	fmt.Fprintf(b, "\n%s\n\n", judge.LookAgain)
}

// unlikely states the unlikely values.
func (j *jsonWriter) unlikely(all []judge.Unlikely) {
	j.member("unlikely")
	j.begin('[')
	for _, u := range all {
		j.item()
		j.begin('{')
		j.text("at", u.At)
		j.text("name", u.Name)
		j.member("line")
		j.int(u.Position.Line)
		j.member("column")
		j.int(u.Position.Column)
		j.member("value")
		j.encoded(json.Number(u.Value))
		j.text("plausible", u.Plausible)
		j.text("message", u.Says())
		j.textIfAny("often", u.Slips)
		j.text("ground", u.Ground)
		j.textIfAny("source", u.Source)
		if u.Departure != nil {
			j.member("departure")
			j.encoded(u.Departure)
		}
		j.end('}')
		j.pause()
	}
	j.end(']')
}

// unlikelyRule is the id under which unlikely values stand among requirements.
const unlikelyRule = "sunclause/unlikely-value"

// sarifUnlikelyRule is the rule of SARIF for unlikely values.
func sarifUnlikelyRule() sarifRule {
	asks := sarifText("No value is outside what the schema of the document calls plausible, or a departure says who looked again and why it stays.")
	return sarifRule{
		ID: unlikelyRule, ShortDescription: sarifText("Value plausible"), FullDescription: asks, Help: sarifText(asks.Text + " " + judge.LookAgain),
		DefaultConfiguration: sarifLevel{"error"}, Properties: sarifRuleBack{"shall", "", "the schema of the document"},
	}
}

// sarifUnlikely is the result for an unlikely value.
func sarifUnlikely(r *judge.Result, u judge.Unlikely, rule int) sarifResult {
	says := sentence(upperFirst(unlikelyWords) + ": " + u.Says())
	for _, s := range sayUnlikely(u) {
		says += " " + sentence(s)
	}
	return sarifResult{
		RuleID: unlikelyRule, RuleIndex: rule, Kind: "fail", Level: "error",
		Message: sarifText(says + " " + judge.LookAgain),
		Locations: []sarifLocation{{
			PhysicalLocation: sarifPhysical{sarifPlace{uriOf(r.Document.Name)}, sarifAt(u.Position)},
			LogicalLocations: []sarifLogical{{u.Name, u.At}},
		}},
		PartialFingerprints: map[string]string{"requirementAndSubject/v1": fingerprint(unlikelyRule, u.Name)},
		Suppressions:        suppressions(u.Departure),
		Properties:          sarifResultFacts{Outcome: "unlikely", Subject: u.Name, At: u.At, Missing: []string{}, Clause: groundOf(u)},
	}
}

// junitUnlikely is the case for an unlikely value.
func junitUnlikely(r *judge.Result, u judge.Unlikely) junitCase {
	c := junitCase{Class: unlikelyRule, Name: Visible(u.Name)}
	head := unlikelyWords + ": " + u.Says()
	says := append([]string{fmt.Sprintf("%s:%d:%d: %s", r.Document.Name, u.Position.Line, u.Position.Column, u.Name)}, sayUnlikely(u)...)
	says = append(says, judge.LookAgain, groundOf(u))
	if u.FailsCheck() {
		c.Failure = &junitFailure{"unlikely", Visible(head), visibleLines(says)}
	} else {
		c.Skipped = Visible(head) + "\n" + visibleLines(says)
	}
	return c
}

// htmlUnlikely is an unlikely value with others of the same member.
type htmlUnlikely struct {
	Says, Ground string
	Lines        []string // what else there is to say
	Line         int
	Accepted     bool
	More         int
}

func htmlUnlikelyOf(r *judge.Result, lines map[int]bool) []htmlUnlikely {
	var all []htmlUnlikely
	for _, group := range alikeUnlikely(r.Unlikely) {
		u := group[0]
		lines[u.Position.Line] = true
		all = append(all, htmlUnlikely{u.Says(), groundOf(u), sayUnlikely(u), u.Position.Line, !u.FailsCheck(), len(group) - 1})
	}
	return all
}

// unlikelyChanges lists the unlikely values that two checks state differently.
func (p *page) unlikelyChanges(changes []record.UnlikelyChange, before, after string) {
	if len(changes) == 0 {
		return
	}
	p.line(0, bold, "Unlikely values")
	for _, c := range changes {
		p.line(2, plain, c.Name)
		p.line(4, plain, before+": "+sayRecorded(c.Before))
		p.line(4, plain, after+": "+sayRecorded(c.After))
	}
	p.blank()
}

// sayRecorded says what a record has of an unlikely value.
func sayRecorded(u *record.Unlikely) string {
	switch {
	case u == nil:
		return "not unlikely, or not stated"
	case u.Departure != nil:
		return fmt.Sprintf("%s; plausible is %s; %s", u.Value, u.Plausible, sayDeparture(u.Departure))
	}
	return fmt.Sprintf("%s; plausible is %s", u.Value, u.Plausible)
}
