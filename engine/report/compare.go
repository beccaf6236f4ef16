package report

import (
	"fmt"
	"io"
	"slices"
	"strings"

	"sunclause/engine/record"
)

// Compared is how one document comes out on two sides: two states of it, or two
// rule sets.
type Compared struct {
	Names         [2]string // of the documents, as they were named
	Before, After *record.Record
	Unlikely      []record.UnlikelyChange
	Outcomes      []record.OutcomeChange
}

// Compare holds two records of a document against each other. Without all it
// keeps what matters; values that only moved, and what only one side judges and
// finds in order, are left out.
func Compare(before, after *record.Record, all bool) Compared {
	c := Compared{Before: before, After: after, Unlikely: []record.UnlikelyChange{}, Outcomes: []record.OutcomeChange{}}
	onlyMoved := func(differs []string) bool { return slices.Equal(differs, []string{"at"}) }
	for _, u := range record.CompareUnlikely(before, after) {
		if u.Matters() || all && !onlyMoved(u.Differs) {
			c.Unlikely = append(c.Unlikely, u)
		}
	}
	for _, o := range record.CompareOutcomes(before, after) {
		if o.Matters() || all && !onlyMoved(o.Differs) {
			c.Outcomes = append(c.Outcomes, o)
		}
	}
	return c
}

// Otherwise reports whether a document comes out otherwise on the two sides.
func (c Compared) Otherwise() bool {
	return c.Before.Passes != c.After.Passes || slices.ContainsFunc(c.Unlikely, record.UnlikelyChange.Matters) || slices.ContainsFunc(c.Outcomes, record.OutcomeChange.Matters)
}

// comparisonVersion is raised when any member of a comparison changes.
const comparisonVersion = 2

// side is one of two sides as a program reads it.
type side struct {
	Path     string          `json:"path"`
	Document record.Document `json:"document"`
	RuleSet  record.RuleSet  `json:"rule_set"`
	Passes   bool            `json:"passes"`
}

func sideOf(name string, r *record.Record) side { return side{name, r.Document, r.RuleSet, r.Passes} }

// DocumentsJSON writes what differs between two documents as one JSON object on
// one line, as schema/compare-documents.schema.json describes it.
func DocumentsJSON(w io.Writer, c Compared, members []record.MemberChange) error {
	return encode(w, struct {
		ComparisonVersion int                     `json:"comparison_version"`
		Before            side                    `json:"before"`
		After             side                    `json:"after"`
		Members           []record.MemberChange   `json:"members"`
		Unlikely          []record.UnlikelyChange `json:"unlikely"`
		Outcomes          []record.OutcomeChange  `json:"outcomes"`
		Cautions          []string                `json:"cautions"`
	}{comparisonVersion, sideOf(c.Names[0], c.Before), sideOf(c.Names[1], c.After), members, c.Unlikely, c.Outcomes, Cautions}, "")
}

// DocumentsText writes what differs between two documents for people.
func DocumentsText(w io.Writer, c Compared, members []record.MemberChange, o Options) error {
	p := newPage(w, o)
	p.line(0, bold, "before: "+documentOf(c.Names[0], c.Before))
	p.line(0, bold, "after: "+documentOf(c.Names[1], c.After))
	p.line(0, plain, "by "+layerNames(c.After.RuleSet.Layers))
	p.blank()
	p.line(0, plain, fmt.Sprintf("%s and %s differ", number(len(members), "member", "members"), number(len(c.Outcomes), "outcome", "outcomes")))
	p.blank()
	if len(members) > 0 {
		p.line(0, bold, "In the installation")
		for _, m := range members {
			p.member(m)
		}
		p.blank()
	}
	p.unlikelyChanges(c.Unlikely, "before", "after")
	p.outcomeChanges(c.Outcomes, "before", "after")
	p.cautions()
	return p.err
}

func documentOf(name string, r *record.Record) string {
	verdict := "does not pass"
	if r.Passes {
		verdict = "passes"
	}
	return fmt.Sprintf("%s, %s, %s", name, r.Document.Reference, verdict)
}

// number counts things in words.
func number(n int, one, many string) string {
	if n == 1 {
		return "1 " + one
	}
	return fmt.Sprintf("%d %s", n, many)
}

func (p *page) member(m record.MemberChange) {
	name := m.Change + ": " + m.Name
	if m.Words != "" {
		name += " (" + m.Words + ")"
	}
	p.line(2, plain, name)
	if m.Change != record.Added {
		p.line(4, plain, fmt.Sprintf("before, line %d: %s", m.BeforeLine, shortJSON(m.Before)))
	}
	if m.Change != record.Removed {
		p.line(4, plain, fmt.Sprintf("after, line %d: %s", m.AfterLine, shortJSON(m.After)))
	}
}

// maxShort is how many characters of a value are shown.
const maxShort = 200

// shortJSON is the beginning of a value as it stands in a document.
func shortJSON(v any) string {
	var text strings.Builder
	if err := encode(&text, v, ""); err != nil {
		return err.Error()
	}
	characters := []rune(strings.TrimSpace(text.String()))
	if len(characters) > maxShort {
		return string(characters[:maxShort]) + "…"
	}
	return string(characters)
}
