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

// FactsText lists what was derived from an installation, part by part. With
// working it shows for each number the formula, the numbers put in, the source
// and the lines of the document they came from. Only says of which parts; nil is
// all.
func FactsText(w io.Writer, doc *schema.Document, f *facts.Facts, withWorking bool, only []string, o Options) error {
	p := newPage(w, o)
	for _, subject := range catalogue.Subjects() {
		parts, stated := subject.Parts(f)
		if !stated && only == nil {
			p.line(0, bold, subject.Name+": not stated")
			p.blank()
		}
		for _, part := range parts {
			if only != nil && !slices.Contains(only, part.ID) {
				continue
			}
			line := doc.Position(part.At).Line
			p.line(0, bold, fmt.Sprintf("%s (line %d)", upperFirst(part.Name), line))
			for _, fact := range subject.Facts {
				p.fact(doc, part, fact, withWorking)
			}
			p.blank()
		}
	}
	return p.err
}

func (p *page) fact(doc *schema.Document, part catalogue.Part, f *catalogue.Fact, withWorking bool) {
	v := part.Value(f)
	if !v.Known {
		p.line(2, doubt, f.Name+" not known: "+strings.Join(spoken(v.Missing), ", "))
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

func spoken(pointers []string) []string {
	words := make([]string, len(pointers))
	for i, m := range pointers {
		words[i] = m
		if strings.HasPrefix(m, "/") {
			words[i] = schema.Spoken(m)
		}
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
const factsVersion = 1

// The facts as JSON, as schema/facts.schema.json describes them.
type jsonFacts struct {
	FactsVersion int                   `json:"facts_version"`
	Document     string                `json:"document"`
	RuleSet      string                `json:"rule_set"`
	Facts        map[string][]jsonPart `json:"facts"`
}

type jsonPart struct {
	ID    string              `json:"id"`
	At    string              `json:"at"`
	Facts map[string]jsonFact `json:"facts"`
}

type jsonFact struct {
	Value   any          `json:"value"`
	Unit    string       `json:"unit,omitempty"`
	Missing []string     `json:"missing,omitempty"`
	Working *jsonWorking `json:"working,omitempty"`
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

// FactsJSON writes the facts as one JSON object on one line.
func FactsJSON(w io.Writer, doc *schema.Document, set *ruleset.RuleSet, f *facts.Facts, withWorking bool, only []string) error {
	out := jsonFacts{factsVersion, doc.Name, set.Name, map[string][]jsonPart{}}
	for _, subject := range catalogue.Subjects() {
		parts, stated := subject.Parts(f)
		if !stated {
			continue
		}
		list := []jsonPart{}
		for _, part := range parts {
			if only != nil && !slices.Contains(only, part.ID) {
				continue
			}
			list = append(list, partJSON(subject, part, withWorking))
		}
		out.Facts[subject.Name] = list
	}
	return encode(w, out, "")
}

func partJSON(subject *catalogue.Subject, part catalogue.Part, withWorking bool) jsonPart {
	p := jsonPart{part.ID, part.At, map[string]jsonFact{}}
	for _, f := range subject.Facts {
		v := part.Value(f)
		j := jsonFact{Value: v.Plain(), Unit: v.Unit, Missing: v.Missing}
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
