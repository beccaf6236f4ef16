package report

import (
	"crypto/sha256"
	"encoding/hex"
	"io"

	"sunclause/engine/judge"
	"sunclause/engine/ruleset"
)

// reportVersion is raised when a member changes its meaning or goes; a new
// member does not raise it.
const reportVersion = 2

type jsonDocument struct {
	Path      string `json:"path"`
	SHA256    string `json:"sha256"`
	Reference string `json:"reference"`
	Stage     string `json:"stage"`
}

type jsonRuleSet struct {
	Name    string              `json:"name"`
	Version string              `json:"version"`
	SHA256  string              `json:"sha256"`
	Layers  []ruleset.LayerInfo `json:"layers"`
	Changes []ruleset.Change    `json:"changes"`
}

// Summary counts the judgments by outcome. Departures are also counted as not
// met.
type Summary struct {
	Met           int `json:"met"`
	NotMet        int `json:"not_met"`
	NotShown      int `json:"not_shown"`
	NotApplicable int `json:"not_applicable"`
	Departures    int `json:"departures"`
}

type jsonMeasured struct {
	Value any    `json:"value"`
	Unit  string `json:"unit"`
	Fact  string `json:"fact"`
}

type jsonLimit struct {
	Comparison string `json:"comparison"`
	Value      any    `json:"value"`
	Unit       string `json:"unit"`
	Fact       string `json:"fact,omitempty"`
	Parameter  string `json:"parameter,omitempty"`
}

// JSON writes the report as one JSON object on one line, so that the reports of
// several documents make one object a line (NDJSON).
func JSON(w io.Writer, r *judge.Result, _ Options) error {
	sum := sha256.Sum256(r.Document.Raw)
	p := r.Document.Installation.Project
	j := newJSONWriter(w)
	j.begin('{')
	j.member("report_version")
	j.int(reportVersion)
	j.member("document")
	j.encoded(jsonDocument{r.Document.Name, hex.EncodeToString(sum[:]), p.Reference.Value, p.Stage.Value})
	j.member("rule_sets")
	j.encoded([]jsonRuleSet{ruleSetOf(r.RuleSet)})
	j.member("summary")
	j.encoded(Count(r))
	j.member("passes")
	j.bool(r.Passes)
	j.requirements(r)
	j.notApplicable(r)
	j.member("notes")
	j.strings(r.Notes)
	j.member("cautions")
	j.strings(Cautions)
	j.end('}')
	return j.close()
}

// requirements states what applies, a requirement and a part at a time.
func (j *jsonWriter) requirements(r *judge.Result) {
	j.member("requirements")
	j.begin('[')
	cards := map[*ruleset.Requirement]*jsonCard{}
	for _, one := range r.Judgments {
		if one.Outcome == judge.NotApplicable {
			continue
		}
		card := cards[one.Requirement]
		if card == nil {
			card = cardOf(one.Requirement)
			cards[one.Requirement] = card
		}
		j.item()
		j.judgment(card, one)
		j.pause()
	}
	j.end(']')
}

// jsonCard is what every judgment of a requirement says alike, as it is written:
// the members before those of the judgment, between them and after them.
type jsonCard struct{ head, remedy, source, changes []byte }

func cardOf(q *ruleset.Requirement) *jsonCard {
	var head, remedy, source, changes jsonWriter
	head.begin('{')
	for _, m := range [][2]string{{"id", q.ID}, {"title", q.Title}, {"room", q.Room}, {"level", string(q.Level)}} {
		head.member(m[0])
		head.string(m[1])
	}
	remedy.member("remedy")
	remedy.string(q.Remedy)
	source.member("source")
	source.encoded(q.Source)
	if len(q.Changes) > 0 {
		changes.member("changes")
		changes.encoded(q.Changes)
	}
	return &jsonCard{head.text, remedy.text, source.text, changes.text}
}

func (j *jsonWriter) judgment(card *jsonCard, one judge.Judgment) {
	j.text = append(j.text, card.head...)
	j.member("subject")
	j.string(one.Subject.ID)
	j.member("at")
	j.string(one.Subject.At)
	j.member("line")
	j.int(one.Position.Line)
	j.member("column")
	j.int(one.Position.Column)
	j.member("outcome")
	j.string(string(one.Outcome))
	j.measured(one.Measured)
	j.limit(one.Requirement.Comparison, one.Limit)
	j.member("margin_pct")
	if one.MarginPct == nil {
		j.null()
	} else {
		j.number(*one.MarginPct)
	}
	j.member("message")
	j.string(one.Say())
	j.text = append(j.text, card.remedy...)
	j.member("missing")
	j.strings(one.Missing)
	j.text = append(j.text, card.source...)
	j.member("departure")
	j.departure(one.Departure)
	j.text = append(j.text, card.changes...)
	j.end('}')
}

func (j *jsonWriter) departure(d *judge.Departure) {
	if d == nil {
		j.null()
		return
	}
	j.encoded(d)
}

func (j *jsonWriter) measured(m *judge.Quantity) {
	j.member("measured")
	if m == nil {
		j.null()
		return
	}
	j.begin('{')
	j.member("value")
	j.value(m.Value)
	j.member("unit")
	j.string(m.Unit)
	j.member("fact")
	j.string(m.Fact)
	j.end('}')
}

func (j *jsonWriter) limit(comparison string, l *judge.Quantity) {
	j.member("limit")
	if l == nil {
		j.null()
		return
	}
	j.begin('{')
	j.member("comparison")
	j.string(comparison)
	j.member("value")
	j.value(l.Value)
	j.member("unit")
	j.string(l.Unit)
	for _, m := range [][2]string{{"fact", l.Fact}, {"parameter", l.From}} {
		if m[1] != "" {
			j.member(m[0])
			j.string(m[1])
		}
	}
	j.end('}')
}

// notApplicable names the requirements that do not apply, part by part. Of those
// the name is enough: on a large roof they are most of all there is.
func (j *jsonWriter) notApplicable(r *judge.Result) {
	j.member("not_applicable")
	j.begin('[')
	var part *judge.Part
	for _, one := range r.Judgments {
		if one.Outcome != judge.NotApplicable {
			continue
		}
		if part == nil || part.Subject.ID != one.Subject.ID || part.Subject.At != one.Subject.At {
			if part != nil {
				j.end(']')
				j.end('}')
				j.pause()
			}
			part = one.Part
			j.item()
			j.begin('{')
			j.member("subject")
			j.string(part.Subject.ID)
			j.member("at")
			j.string(part.Subject.At)
			j.member("requirements")
			j.begin('[')
		}
		j.item()
		j.string(one.Requirement.ID)
	}
	if part != nil {
		j.end(']')
		j.end('}')
	}
	j.end(']')
}

func ruleSetOf(s *ruleset.RuleSet) jsonRuleSet {
	return jsonRuleSet{s.Name, s.Version, s.SHA256, s.Layers, append([]ruleset.Change{}, s.Changes...)}
}

func measuredOf(m *judge.Quantity) *jsonMeasured {
	if m == nil {
		return nil
	}
	return &jsonMeasured{m.Value, m.Unit, m.Fact}
}

func limitOf(comparison string, l *judge.Quantity) *jsonLimit {
	if l == nil {
		return nil
	}
	return &jsonLimit{comparison, l.Value, l.Unit, l.Fact, l.From}
}

// Count counts the judgments of a result by outcome.
func Count(r *judge.Result) Summary {
	var s Summary
	for _, j := range r.Judgments {
		switch j.Outcome {
		case judge.Met:
			s.Met++
		case judge.NotMet:
			s.NotMet++
		case judge.NotShown:
			s.NotShown++
		default:
			s.NotApplicable++
		}
		if j.Departure != nil && j.Departure.Void == "" {
			s.Departures++
		}
	}
	return s
}
