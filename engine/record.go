package engine

import (
	"encoding/json"
	"path"
	"strings"
	"unicode"

	"sunclause/schema"
)

// recordVersion is raised when a member of a record changes, comes or goes: a
// record is held to its schema closely, since it is evidence.
const recordVersion = 1

// Record is the evidence of one check: which document, by which rules, with
// which outcomes. It is described by schema/record.schema.json. It has nothing
// in it of the machine or the moment but what the caller states.
type Record struct {
	RecordVersion int            `json:"record_version"`
	Tool          RecordTool     `json:"tool"`
	Time          string         `json:"time,omitempty"` // as the caller states it, RFC 3339
	Document      RecordDocument `json:"document"`
	RuleSet       RecordRuleSet  `json:"rule_set"`
	Options       RecordOptions  `json:"options"`
	Passes        bool           `json:"passes"`
	Parts         []RecordPart   `json:"parts"`
	Cautions      []string       `json:"cautions"`
}

// RecordTool is the program that judged.
type RecordTool struct {
	Name    string `json:"name"`
	Version string `json:"version"`
}

// RecordDocument is the document that was judged.
type RecordDocument struct {
	File      string `json:"file"` // without its folder
	SHA256    string `json:"sha256"`
	Reference string `json:"reference"`
	Stage     string `json:"stage"`
}

// RecordRuleSet is the rule set that judged, with what it builds on.
type RecordRuleSet struct {
	Name    string      `json:"name"`
	Version string      `json:"version"`
	SHA256  string      `json:"sha256"`
	Layers  []LayerInfo `json:"layers"`
	Changes []Change    `json:"changes"`
}

// RecordOptions are the choices under which it judged.
type RecordOptions struct {
	Strict   bool   `json:"strict"`
	Date     string `json:"date,omitempty"`
	Designed string `json:"designed,omitempty"`
}

// RecordPart is a part of the installation with what was stated of it.
type RecordPart struct {
	Subject  string          `json:"subject"`
	At       string          `json:"at"` // JSON pointer
	Outcomes []RecordOutcome `json:"outcomes"`
	Idle     []string        `json:"not_applicable,omitempty"` // requirements that do not apply to it
}

// RecordOutcome is one requirement held against one part.
type RecordOutcome struct {
	Requirement string          `json:"requirement"`
	Level       Level           `json:"level"`
	Outcome     Outcome         `json:"outcome"`
	Measured    *RecordMeasured `json:"measured,omitempty"`
	Limit       *RecordLimit    `json:"limit,omitempty"`
	MarginPct   *float64        `json:"margin_pct,omitempty"`
	Missing     []string        `json:"missing,omitempty"`
	Departure   *Departure      `json:"departure,omitempty"`
}

// RecordMeasured is the value that was compared.
type RecordMeasured struct {
	Fact  string `json:"fact"`
	Value any    `json:"value"`
	Unit  string `json:"unit,omitempty"`
}

// RecordLimit is what it was compared with.
type RecordLimit struct {
	Comparison string `json:"comparison,omitempty"`
	Value      any    `json:"value"`
	Unit       string `json:"unit,omitempty"`
	Fact       string `json:"fact,omitempty"`
	Parameter  string `json:"parameter,omitempty"`
}

// RecordOf is the record of a result that was judged under options, by the
// program of a version, with the cautions that go with it.
func RecordOf(r *Result, o Options, version string, cautions []string) *Record {
	s, p := r.RuleSet, r.Document.Installation.Project
	rec := &Record{
		RecordVersion: recordVersion,
		Tool:          RecordTool{"sunclause", version},
		Document:      RecordDocument{fileName(r.Document.Name), hashOf(r.Document.Raw), p.Reference.Value, p.Stage.Value},
		RuleSet:       RecordRuleSet{s.Name, s.Version, s.SHA256, s.Layers, append([]Change{}, s.Changes...)},
		Options:       RecordOptions(o),
		Passes:        r.Passes,
		Parts:         []RecordPart{},
		Cautions:      cautions,
	}
	for _, j := range r.Judgments {
		if n := len(rec.Parts); n == 0 || rec.Parts[n-1].Subject != j.Subject.ID || rec.Parts[n-1].At != j.Subject.At {
			rec.Parts = append(rec.Parts, RecordPart{Subject: j.Subject.ID, At: j.Subject.At, Outcomes: []RecordOutcome{}})
		}
		rec.Parts[len(rec.Parts)-1].state(j)
	}
	return rec
}

// state takes one judgment into the record of a part. Of what does not apply the
// name is enough: on a large roof that is most of all there is.
func (p *RecordPart) state(j Judgment) {
	if j.Outcome == NotApplicable {
		p.Idle = append(p.Idle, j.Requirement.ID)
		return
	}
	p.Outcomes = append(p.Outcomes, outcomeOf(j))
}

// fileName is the name of a document without its folder, as a record can hold
// it: a name can have control characters, which no text that is read has.
func fileName(name string) string {
	return strings.Map(func(r rune) rune {
		if unicode.IsControl(r) {
			return '_'
		}
		return r
	}, path.Base(name))
}

func outcomeOf(j Judgment) RecordOutcome {
	q := j.Requirement
	out := RecordOutcome{Requirement: q.ID, Level: q.Level, Outcome: j.Outcome, MarginPct: j.MarginPct, Missing: j.Missing, Departure: j.Departure}
	if m := j.Measured; m != nil {
		out.Measured = &RecordMeasured{m.Fact, m.Value, m.Unit}
	}
	if l := j.Limit; l != nil {
		out.Limit = &RecordLimit{q.Comparison, l.Value, l.Unit, l.Fact, l.From}
	}
	return out
}

// outcomes lists what a record states, one requirement and part at a time.
func (rec *Record) outcomes() map[verdictKey]statedOutcome {
	all := map[verdictKey]statedOutcome{}
	for _, p := range rec.Parts {
		for _, o := range p.Outcomes {
			all[verdictKey{o.Requirement, p.Subject}] = statedOutcome{p.At, o}
		}
		for _, id := range p.Idle {
			all[verdictKey{id, p.Subject}] = statedOutcome{p.At, RecordOutcome{Requirement: id, Outcome: NotApplicable}}
		}
	}
	return all
}

// statedOutcome is an outcome with the place of the part it is about.
type statedOutcome struct {
	at string
	RecordOutcome
}

// ReadRecord reads a record, and refuses what is none.
func ReadRecord(name string, raw []byte) (*Record, error) {
	if err := schema.Validate(name, raw, schema.RecordSchema); err != nil {
		return nil, err
	}
	var rec Record
	if err := json.Unmarshal(raw, &rec); err != nil {
		return nil, err
	}
	for _, p := range rec.Parts {
		for _, o := range p.Outcomes {
			if o.Measured != nil {
				o.Measured.Value = asListOfWords(o.Measured.Value)
			}
			if o.Limit != nil {
				o.Limit.Value = asListOfWords(o.Limit.Value)
			}
		}
	}
	return &rec, nil
}

// asListOfWords gives a list that was read the type that lists of facts have.
func asListOfWords(v any) any {
	list, ok := v.([]any)
	if !ok {
		return v
	}
	words := make([]string, len(list))
	for i, e := range list {
		words[i], _ = e.(string) // the schema lets nothing else through
	}
	return words
}
