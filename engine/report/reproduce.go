package report

import (
	"fmt"
	"io"
	"slices"
	"strings"

	"sunclause/engine/judge"
	"sunclause/engine/record"
	"sunclause/engine/ruleset"
)

// reproductionVersion is raised when any member of a reproduction changes.
const reproductionVersion = 2

// jsonReproduction is what reproduce writes for a program, as
// schema/reproduce.schema.json describes it.
type jsonReproduction struct {
	ReproductionVersion int `json:"reproduction_version"`
	record.Reproduction
	Signature string   `json:"signature"`
	Cautions  []string `json:"cautions"`
}

// ReproductionJSON writes what came of a reproduction as one JSON object on one
// line. Signature says what is known of it.
func ReproductionJSON(w io.Writer, r record.Reproduction, signature string) error {
	return encode(w, jsonReproduction{reproductionVersion, r, signature, Cautions}, "")
}

// ReproductionText writes what came of a reproduction for people.
func ReproductionText(w io.Writer, r record.Reproduction, signature string, o Options) error {
	p := newPage(w, o)
	if r.Identical {
		p.line(0, good, "IDENTICAL")
		p.line(0, plain, "The document, the rules and every outcome are as the record has them.")
	} else {
		p.line(0, bad, "DIFFERS")
		p.line(0, plain, fmt.Sprintf("%d differences from the record, %d of them in outcomes", len(r.Differences)+len(r.Unlikely)+len(r.Outcomes), len(r.Outcomes)))
	}
	p.line(0, plain, "Signature: "+signature)
	p.blank()
	for _, d := range r.Differences {
		p.line(0, bad, upperFirst(d.What))
		p.line(2, plain, "in the record: "+orNone(d.Before))
		p.line(2, plain, "made anew: "+orNone(d.After))
	}
	if len(r.Differences) > 0 {
		p.blank()
	}
	p.unlikelyChanges(r.Unlikely, "in the record", "made anew")
	p.outcomeChanges(r.Outcomes, "in the record", "made anew")
	p.notes(r.Notes)
	p.cautions()
	return p.err
}

// outcomeChanges lists what two checks state differently, part by part.
func (p *page) outcomeChanges(changes []record.OutcomeChange, before, after string) {
	for i, c := range changes {
		if i == 0 || c.Subject != changes[i-1].Subject {
			if i > 0 {
				p.blank()
			}
			p.line(0, bold, c.Subject)
		}
		p.line(2, plain, c.Requirement)
		show := c.Differs
		if slices.Contains(show, "outcome") {
			show = behindOutcome
		}
		p.line(4, plain, before+": "+sayStated(c.Before, show))
		p.line(4, plain, after+": "+sayStated(c.After, show))
	}
	if len(changes) > 0 {
		p.blank()
	}
}

// behindOutcome are the members that explain an outcome.
var behindOutcome = []string{"measured", "limit", "margin_pct", "missing", "departure"}

// sayStated says what one of two checks states, and some of the values behind
// it.
func sayStated(o *record.Outcome, show []string) string {
	if o == nil {
		return "not judged"
	}
	says := []string{strings.ToLower(outcomeWords[o.Outcome])}
	if o.Departure != nil {
		says[0] += ", departure"
	}
	if o.Level == ruleset.Should {
		says[0] += " (should)"
	}
	for _, name := range show {
		if value := sayMember(o, name); value != "" {
			says = append(says, value)
		}
	}
	return strings.Join(says, "; ")
}

// sayMember writes one member of an outcome; "" when it says no more than the
// outcome does.
func sayMember(o *record.Outcome, name string) string {
	switch {
	case name == "measured" && o.Measured != nil:
		return "value " + judge.WriteValue(o.Measured.Value, o.Measured.Unit)
	case name == "limit" && o.Limit != nil:
		return strings.TrimSpace("limit "+comparisonWords[o.Limit.Comparison]) + " " + judge.WriteValue(o.Limit.Value, o.Limit.Unit)
	case name == "margin_pct" && o.MarginPct != nil:
		return "margin " + judge.WriteValue(*o.MarginPct, "%")
	case name == "missing" && len(o.Missing) > 0:
		return "missing " + strings.Join(spokenPlaces(o.Missing), ", ")
	case name == "departure" && o.Departure != nil:
		return sayDeparture(o.Departure)
	}
	return ""
}

func orNone(s string) string {
	if s == "" {
		return "none"
	}
	return s
}
