// Package record keeps the evidence of checks: which document met which rules,
// with which outcomes. It signs records, judges them again, and compares checks
// and documents.
package record

import (
	"encoding/json"
	"path"
	"strings"
	"unicode"

	"sunclause/engine/judge"
	"sunclause/engine/ruleset"
	"sunclause/facts/working"
	"sunclause/schema"
)

// recordVersion is raised when a member of a record changes, comes or goes: a
// record is held to its schema closely, since it is evidence.
const recordVersion = 2

// Record is the evidence of one check: which document, by which rules, with
// which outcomes. It is described by schema/record.schema.json. It has nothing
// in it of the machine or the moment but what the caller states.
type Record struct {
	RecordVersion int        `json:"record_version"`
	Tool          Tool       `json:"tool"`
	Time          string     `json:"time,omitempty"` // as the caller states it, RFC 3339
	Document      Document   `json:"document"`
	RuleSet       RuleSet    `json:"rule_set"`
	Options       Options    `json:"options"`
	Passes        bool       `json:"passes"`
	Unlikely      []Unlikely `json:"unlikely"` // since version 2
	Parts         []Part     `json:"parts"`
	Cautions      []string   `json:"cautions"`
}

// Tool is the program that judged.
type Tool struct {
	Name    string `json:"name"`
	Version string `json:"version"`
}

// Document is the document that was judged.
type Document struct {
	File      string `json:"file"` // without its folder
	SHA256    string `json:"sha256"`
	Reference string `json:"reference"`
	Stage     string `json:"stage"`
}

// RuleSet is the rule set that judged, with what it builds on.
type RuleSet struct {
	Name    string              `json:"name"`
	Version string              `json:"version"`
	SHA256  string              `json:"sha256"`
	Layers  []ruleset.LayerInfo `json:"layers"`
	Changes []ruleset.Change    `json:"changes"`
}

// RuleSetOf is what a record, or a report, says of a rule set.
func RuleSetOf(s *ruleset.RuleSet) RuleSet {
	return RuleSet{s.Name, s.Version, s.SHA256, s.Layers, append([]ruleset.Change{}, s.Changes...)}
}

// Options are the choices under which it judged.
type Options struct {
	Strict   bool   `json:"strict"`
	Date     string `json:"date,omitempty"`
	Designed string `json:"designed,omitempty"`
}

// Part is a part of the installation with what was stated of it.
type Part struct {
	Subject  string    `json:"subject"`
	At       string    `json:"at"` // JSON pointer
	Outcomes []Outcome `json:"outcomes"`
	Idle     []string  `json:"not_applicable,omitempty"` // requirements that do not apply to it
}

// Outcome is one requirement held against one part.
type Outcome struct {
	Requirement string           `json:"requirement"`
	Level       ruleset.Level    `json:"level"`
	Outcome     judge.Outcome    `json:"outcome"`
	Measured    *Measured        `json:"measured,omitempty"`
	Limit       *Limit           `json:"limit,omitempty"`
	MarginPct   *float64         `json:"margin_pct,omitempty"`
	Missing     []string         `json:"missing,omitempty"`
	Departure   *judge.Departure `json:"departure,omitempty"`
}

// Measured is the value that was compared.
type Measured struct {
	Fact  string `json:"fact"`
	Value any    `json:"value"`
	Unit  string `json:"unit,omitempty"`
}

// Limit is what it was compared with.
type Limit struct {
	Comparison string `json:"comparison,omitempty"`
	Value      any    `json:"value"`
	Unit       string `json:"unit,omitempty"`
	Fact       string `json:"fact,omitempty"`
	Parameter  string `json:"parameter,omitempty"`
}

// Of is the record of a result that was judged under options, by the
// program of a version, with the cautions that go with it.
func Of(r *judge.Result, o judge.Options, version string, cautions []string) *Record {
	s, p := r.RuleSet, r.Document.Installation.Project
	rec := &Record{
		RecordVersion: recordVersion,
		Tool:          Tool{"sunclause", version},
		Document:      Document{fileName(r.Document.Name), ruleset.Hash(r.Document.Raw), p.Reference.Value, p.Stage.Value},
		RuleSet:       RuleSetOf(s),
		Options:       Options(o),
		Passes:        r.Passes,
		Unlikely:      unlikelyOf(r),
		Parts:         []Part{},
		Cautions:      cautions,
	}
	for _, j := range r.Judgments {
		if n := len(rec.Parts); n == 0 || rec.Parts[n-1].Subject != j.Subject.ID || rec.Parts[n-1].At != j.Subject.At {
			rec.Parts = append(rec.Parts, Part{Subject: j.Subject.ID, At: j.Subject.At, Outcomes: []Outcome{}})
		}
		rec.Parts[len(rec.Parts)-1].state(j)
	}
	return rec
}

// state takes one judgment into the record of a part. Of what does not apply the
// name is enough: on a large roof that is most of all there is.
func (p *Part) state(j judge.Judgment) {
	if j.Outcome == judge.NotApplicable {
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

func outcomeOf(j judge.Judgment) Outcome {
	q := j.Requirement
	out := Outcome{Requirement: q.ID, Level: q.Level, Outcome: j.Outcome, MarginPct: j.MarginPct, Missing: working.Pointers(j.Missing), Departure: j.Departure}
	if m := j.Measured; m != nil {
		out.Measured = &Measured{m.Fact, m.Value, m.Unit}
	}
	if l := j.Limit; l != nil {
		out.Limit = &Limit{j.Compared().Comparison, l.Value, l.Unit, l.Fact, l.From}
	}
	return out
}

// key names one requirement for one part.
type key struct{ requirement, subject string }

// outcomes lists what a record states, one requirement and part at a time.
func (rec *Record) outcomes() map[key]statedOutcome {
	all := map[key]statedOutcome{}
	for _, p := range rec.Parts {
		for _, o := range p.Outcomes {
			all[key{o.Requirement, p.Subject}] = statedOutcome{p.At, o}
		}
		for _, id := range p.Idle {
			all[key{id, p.Subject}] = statedOutcome{p.At, Outcome{Requirement: id, Outcome: judge.NotApplicable}}
		}
	}
	return all
}

// statedOutcome is an outcome with the place of the part it is about.
type statedOutcome struct {
	at     string
	stated Outcome
}

// Read reads a record, and refuses what is none.
func Read(name string, raw []byte) (*Record, error) {
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
				o.Measured.Value = asList(o.Measured.Value)
			}
			if o.Limit != nil {
				o.Limit.Value = asList(o.Limit.Value)
			}
		}
	}
	return &rec, nil
}

// asList gives a list that was read the type that lists of facts and of limits
// have.
func asList(v any) any {
	list, ok := v.([]any)
	if !ok {
		return v
	}
	words, numbers := make([]string, len(list)), make([]float64, len(list))
	isNumbers := false
	for i, e := range list { // the schema lets nothing else through
		words[i], _ = e.(string)
		if n, ok := e.(float64); ok {
			numbers[i], isNumbers = n, true
		}
	}
	if isNumbers {
		return numbers
	}
	return words
}
