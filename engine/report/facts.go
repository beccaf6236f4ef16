package report

import (
	"fmt"
	"io"
	"slices"
	"strings"

	"sunclause/engine/catalogue"
	"sunclause/engine/judge"
	"sunclause/engine/ruleset"
	"sunclause/facts"
	"sunclause/facts/working"
	"sunclause/schema"
)

// FactSelection says which facts are listed, and how fully.
type FactSelection struct {
	Summary bool     // only how many there are in each list
	Working bool     // with formula, numbers put in, source and lines of the document
	Parts   []string // ids of the parts; nil is all
}

func (a FactSelection) includes(part catalogue.Part) bool {
	return !a.Summary && (a.Parts == nil || slices.Contains(a.Parts, part.ID))
}

// FactsText lists what was derived from an installation, part by part, after the
// values that it may be wrong by.
func FactsText(w io.Writer, doc *schema.Document, f *facts.Facts, selection FactSelection, o Options) error {
	p := newPage(w, o)
	p.unlikely(judge.UnlikelyIn(doc))
	if selection.Summary {
		p.factsSummary(f)
		return p.err
	}
	for _, subject := range catalogue.Subjects() {
		parts, stated := subject.Parts(f)
		if !stated && selection.Parts == nil {
			p.line(0, bold, subject.Name+": not stated")
			p.blank()
		}
		for _, part := range parts {
			if !selection.includes(part) {
				continue
			}
			line := doc.Position(part.At).Line
			p.line(0, bold, fmt.Sprintf("%s (line %d)", upperFirst(part.Name), line))
			for _, fact := range subject.Facts {
				p.fact(doc, part, fact, selection.Working)
			}
			p.blank()
		}
	}
	return p.err
}

// factsSummary says of each list how many parts it has, and how many facts about
// them are known.
func (p *page) factsSummary(f *facts.Facts) {
	for _, subject := range catalogue.Subjects() {
		parts, stated := subject.Parts(f)
		if !stated {
			p.line(0, doubt, subject.Name+": not stated")
			continue
		}
		s := summaryOf(subject, parts)
		text := fmt.Sprintf("%s: %s, %s known", subject.Name, judge.Many(s.Parts, "part"), judge.Many(s.Known, "fact"))
		if s.NotKnown > 0 {
			text += fmt.Sprintf(", %d not known", s.NotKnown)
		}
		p.line(0, plain, text)
		if ids := idsOf(parts); len(ids) > 0 && subject.Many {
			p.line(2, faint, judge.Some(ids))
		}
	}
	p.blank()
	p.line(0, plain, "Name a part to see its working, or --all to see that of every part.")
}

func idsOf(parts []catalogue.Part) []string {
	ids := make([]string, len(parts))
	for i, part := range parts {
		ids[i] = part.ID
	}
	return ids
}

// listSummary counts the facts of a list.
type listSummary struct {
	Parts    int `json:"parts"`
	Known    int `json:"known"`
	NotKnown int `json:"not_known"`
}

func summaryOf(subject *catalogue.Subject, parts []catalogue.Part) listSummary {
	s := listSummary{Parts: len(parts)}
	for _, part := range parts {
		for _, f := range subject.Facts {
			if part.Value(f).Known {
				s.Known++
			} else {
				s.NotKnown++
			}
		}
	}
	return s
}

func (p *page) fact(doc *schema.Document, part catalogue.Part, f *catalogue.Fact, withWorking bool) {
	v := part.Value(f)
	if !v.Known {
		p.line(2, doubt, f.Name+" not known: "+spokenGaps(v.Missing))
		return
	}
	text := judge.WriteValue(v.Plain(), v.Unit)
	if text == "" {
		text = "none"
	}
	p.line(2, plain, f.Name+" = "+text)
	if withWorking {
		p.line(6, faint, f.Words)
		if n := part.Working(f); n != nil {
			p.working(doc, *n, 6)
		}
	}
}

// spokenGaps names what is not stated, and says what is the matter with what is.
func spokenGaps(gaps []working.Gap) string {
	words := make([]string, len(gaps))
	for i, g := range gaps {
		words[i] = working.Spoken(gaps[i : i+1])
		if g.Why == working.NotStated {
			words[i] = working.SpokenPlace(g.At)
		}
	}
	return strings.Join(words, ", ")
}

// spokenPlaces writes the places of gaps as people say them.
func spokenPlaces(places []string) []string {
	words := make([]string, len(places))
	for i, at := range places {
		words[i] = working.SpokenPlace(at)
	}
	return words
}

// working shows how a number came about, and how those put into it did.
func (p *page) working(doc *schema.Document, n working.Number, indent int) {
	if n.Formula() == "" {
		p.line(indent, plain, n.Symbol()+" = "+withUnit(n)+" "+whence(doc, n))
		return
	}
	p.line(indent, plain, fmt.Sprintf("%s = %s", n.Symbol(), n.Formula()))
	p.line(indent, plain, fmt.Sprintf("%s = %s = %s", n.Symbol(), n.Filled(), withUnit(n)))
	if n.Source().How != working.Definition {
		p.line(indent, faint, Cite(n.Source()))
	}
	if indent > 18 {
		return // deeper than this it is the same story again
	}
	for _, in := range n.Inputs() {
		p.working(doc, in, indent+2)
	}
}

func withUnit(n working.Number) string {
	return strings.TrimSpace(working.Plain(n.Value()) + " " + n.Unit())
}

// whence says where a number that was not derived comes from.
func whence(doc *schema.Document, n working.Number) string {
	switch {
	case n.Origin() != "":
		return "(" + n.Origin() + "; " + Cite(n.Source()) + ")"
	case n.Source().How == working.Definition:
		return "(counted)"
	case n.At() != "":
		return fmt.Sprintf("(line %d, %s)", doc.Position(n.At()).Line, schema.Spoken(n.At()))
	}
	return ""
}

// factsVersion is raised when any member changes; a new fact does not raise it.
const factsVersion = 3

// A part with its facts as JSON, as schema/facts.schema.json describes it.
type jsonPart struct {
	ID    string              `json:"id"`
	At    string              `json:"at"`
	Facts map[string]jsonFact `json:"facts"`
}

type jsonFact struct {
	Value   any           `json:"value"`
	Unit    string        `json:"unit,omitempty"`
	Missing []string      `json:"missing,omitempty"`
	Reasons []working.Gap `json:"reasons,omitempty"`
	Working *jsonWorking  `json:"working,omitempty"`
}

type jsonWorking struct {
	Symbol  string          `json:"symbol"`
	Value   *float64        `json:"value"`
	Unit    string          `json:"unit,omitempty"`
	Formula string          `json:"formula,omitempty"`
	Filled  string          `json:"filled,omitempty"`
	At      string          `json:"at,omitempty"`
	Origin  string          `json:"origin,omitempty"`
	Source  *working.Source `json:"source,omitempty"`
	From    []jsonWorking   `json:"from,omitempty"`
}

// FactsJSON writes the facts as one JSON object on one line, part by part as they
// come: with their working those of a large roof are a hundred megabytes.
func FactsJSON(w io.Writer, doc *schema.Document, set *ruleset.RuleSet, f *facts.Facts, selection FactSelection) error {
	j := newJSONWriter(w)
	j.begin('{')
	j.member("facts_version")
	j.int(factsVersion)
	j.text("document", doc.Name)
	j.text("rule_set", set.Name)
	j.unlikely(judge.UnlikelyIn(doc))
	j.member("summary")
	j.begin('{')
	for _, subject := range catalogue.Subjects() {
		if parts, stated := subject.Parts(f); stated {
			j.member(subject.Name)
			j.encoded(summaryOf(subject, parts))
		}
	}
	j.end('}')
	j.member("facts")
	j.begin('{')
	for _, subject := range catalogue.Subjects() {
		if parts, stated := subject.Parts(f); stated && !selection.Summary {
			j.member(subject.Name)
			j.factsOf(subject, parts, selection)
		}
	}
	j.end('}')
	j.end('}')
	return j.close()
}

func (j *jsonWriter) factsOf(subject *catalogue.Subject, parts []catalogue.Part, selection FactSelection) {
	j.begin('[')
	for _, part := range parts {
		if selection.includes(part) {
			j.item()
			j.encoded(partJSON(subject, part, selection.Working))
			j.pause()
		}
	}
	j.end(']')
}

func partJSON(subject *catalogue.Subject, part catalogue.Part, withWorking bool) jsonPart {
	p := jsonPart{part.ID, part.At, map[string]jsonFact{}}
	for _, f := range subject.Facts {
		v := part.Value(f)
		j := jsonFact{Value: v.Plain(), Unit: v.Unit, Missing: working.Pointers(v.Missing), Reasons: working.Doubts(v.Missing)}
		if n := part.Working(f); withWorking && n != nil {
			j.Working = workingJSON(*n)
		}
		p.Facts[f.Name] = j
	}
	return p
}

func workingJSON(n working.Number) *jsonWorking {
	w := &jsonWorking{Symbol: n.Symbol(), Unit: n.Unit(), Formula: n.Formula(), Filled: n.Filled(), At: n.At(), Origin: n.Origin()}
	if n.Known() {
		v := n.Value()
		w.Value = &v
	}
	if src := n.Source(); src.Document != "" {
		w.Source = &src
	}
	for _, in := range n.Inputs() {
		w.From = append(w.From, *workingJSON(in))
	}
	return w
}
