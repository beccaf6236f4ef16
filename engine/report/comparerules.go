package report

import (
	"fmt"
	"io"
	"slices"
	"strings"

	"sunclause/engine/record"
	"sunclause/engine/ruleset"
)

// RulesCompared are two rule sets, and how documents come out by each.
type RulesCompared struct {
	Before, After *ruleset.RuleSet
	Documents     []Compared
}

// OnlyIn lists the requirements of a set that another has not got.
func OnlyIn(a, b *ruleset.RuleSet) []string {
	only := []string{}
	for _, q := range a.Requirements {
		if _, ok := b.Requirement(q.ID); !ok {
			only = append(only, q.ID)
		}
	}
	return only
}

// Otherwise counts the documents that come out otherwise.
func (c RulesCompared) Otherwise() int {
	n := 0
	for _, d := range c.Documents {
		if d.Otherwise() {
			n++
		}
	}
	return n
}

type jsonCompared struct {
	Path         string                 `json:"path"`
	Document     record.Document        `json:"document"`
	PassesBefore bool                   `json:"passes_before"`
	PassesAfter  bool                   `json:"passes_after"`
	Outcomes     []record.OutcomeChange `json:"outcomes"`
}

// RulesComparedJSON writes what differs between two rule sets as one JSON object
// on one line, as schema/compare.schema.json describes it.
func RulesComparedJSON(w io.Writer, c RulesCompared) error {
	documents := make([]jsonCompared, len(c.Documents))
	for i, d := range c.Documents {
		documents[i] = jsonCompared{d.Names[0], d.Before.Document, d.Before.Passes, d.After.Passes, d.Outcomes}
	}
	return encode(w, struct {
		ComparisonVersion int            `json:"comparison_version"`
		Before            record.RuleSet `json:"before"`
		After             record.RuleSet `json:"after"`
		OnlyBefore        []string       `json:"only_before"`
		OnlyAfter         []string       `json:"only_after"`
		Documents         []jsonCompared `json:"documents"`
		Cautions          []string       `json:"cautions"`
	}{comparisonVersion, record.RuleSetOf(c.Before), record.RuleSetOf(c.After), OnlyIn(c.Before, c.After), OnlyIn(c.After, c.Before), documents, Cautions}, "")
}

// RulesComparedText writes what differs between two rule sets for people.
func RulesComparedText(w io.Writer, c RulesCompared, o Options) error {
	p := newPage(w, o)
	before, after := sideNames(c.Before, c.After)
	p.line(0, bold, before+": "+layersOf(c.Before))
	p.line(0, bold, after+": "+layersOf(c.After))
	p.blank()
	p.line(0, plain, fmt.Sprintf("%s, %d come out otherwise; %s passes %d, %s %d", number(len(c.Documents), "document", "documents"), c.Otherwise(),
		before, c.passing(func(d Compared) bool { return d.Before.Passes }), after, c.passing(func(d Compared) bool { return d.After.Passes })))
	p.blank()
	p.only(before, OnlyIn(c.Before, c.After))
	p.only(after, OnlyIn(c.After, c.Before))
	for _, d := range c.Documents {
		if len(d.Outcomes) == 0 && !d.Otherwise() {
			continue
		}
		p.line(0, bold, fmt.Sprintf("%s, %s", d.Names[0], sayVerdicts(d, before, after)))
		p.blank()
		p.outcomeChanges(d.Outcomes, "by "+before, "by "+after)
	}
	p.cautions()
	return p.err
}

func (c RulesCompared) passing(passes func(Compared) bool) int {
	n := 0
	for _, d := range c.Documents {
		if passes(d) {
			n++
		}
	}
	return n
}

func sayVerdicts(d Compared, before, after string) string {
	switch {
	case d.Before.Passes && d.After.Passes:
		return "passes by both"
	case d.Before.Passes:
		return "passes by " + before + " only"
	case d.After.Passes:
		return "passes by " + after + " only"
	}
	return "passes by neither"
}

// sideNames are short names of two sets that tell them apart.
func sideNames(a, b *ruleset.RuleSet) (before, after string) {
	switch {
	case a.Name != b.Name:
		return a.Name, b.Name
	case a.Version != b.Version:
		return a.Name + " " + a.Version, b.Name + " " + b.Version
	}
	return "the first " + a.Name, "the second " + b.Name
}

func (p *page) only(name string, ids []string) {
	if len(ids) == 0 {
		return
	}
	slices.Sort(ids)
	p.line(0, plain, fmt.Sprintf("%s only in %s: %s", number(len(ids), "requirement", "requirements"), name, strings.Join(ids, ", ")))
	p.blank()
}
