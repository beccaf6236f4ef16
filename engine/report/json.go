package report

import (
	"crypto/sha256"
	"encoding/hex"
	"io"

	"sunclause/engine/judge"
	"sunclause/engine/ruleset"
	"sunclause/facts/working"
)

// reportVersion is raised when a member changes its meaning or goes; a new
// member does not raise it.
const reportVersion = 2

// The JSON report, as schema/report.schema.json describes it.
type jsonReport struct {
	ReportVersion int               `json:"report_version"`
	Document      jsonDocument      `json:"document"`
	RuleSets      []jsonRuleSet     `json:"rule_sets"`
	Summary       Summary           `json:"summary"`
	Passes        bool              `json:"passes"`
	Requirements  []jsonRequirement `json:"requirements"`
	NotApplicable []jsonIdle        `json:"not_applicable"`
	Notes         []string          `json:"notes"`
	Cautions      []string          `json:"cautions"`
}

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

type jsonRequirement struct {
	ID        string           `json:"id"`
	Title     string           `json:"title"`
	Room      string           `json:"room"`
	Level     ruleset.Level    `json:"level"`
	Subject   string           `json:"subject"`
	At        string           `json:"at"`
	Line      int              `json:"line"`
	Column    int              `json:"column"`
	Outcome   judge.Outcome    `json:"outcome"`
	Measured  *jsonMeasured    `json:"measured"`
	Limit     *jsonLimit       `json:"limit"`
	MarginPct *float64         `json:"margin_pct"`
	Message   string           `json:"message"`
	Remedy    string           `json:"remedy"`
	Missing   []string         `json:"missing"`
	Source    working.Source   `json:"source"`
	Departure *judge.Departure `json:"departure"`
	Changes   []ruleset.Change `json:"changes,omitempty"`
}

// jsonIdle names the requirements that do not apply to one part. Of those the
// name is enough: on a large roof they are most of all there is.
type jsonIdle struct {
	Subject      string   `json:"subject"`
	At           string   `json:"at"`
	Requirements []string `json:"requirements"`
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
	return encode(w, jsonOf(r), "")
}

func jsonOf(r *judge.Result) jsonReport {
	sum := sha256.Sum256(r.Document.Raw)
	p := r.Document.Installation.Project
	out := jsonReport{
		ReportVersion: reportVersion,
		Document:      jsonDocument{r.Document.Name, hex.EncodeToString(sum[:]), p.Reference.Value, p.Stage.Value},
		RuleSets:      []jsonRuleSet{ruleSetOf(r.RuleSet)},
		Summary:       Count(r),
		Passes:        r.Passes,
		Requirements:  []jsonRequirement{},
		NotApplicable: []jsonIdle{},
		Notes:         append([]string{}, r.Notes...),
		Cautions:      Cautions,
	}
	for _, j := range r.Judgments {
		out.state(j)
	}
	return out
}

// state takes one judgment into the report.
func (out *jsonReport) state(j judge.Judgment) {
	if j.Outcome != judge.NotApplicable {
		out.Requirements = append(out.Requirements, requirementOf(j))
		return
	}
	if n := len(out.NotApplicable); n == 0 || out.NotApplicable[n-1].Subject != j.Subject.ID || out.NotApplicable[n-1].At != j.Subject.At {
		out.NotApplicable = append(out.NotApplicable, jsonIdle{Subject: j.Subject.ID, At: j.Subject.At})
	}
	last := &out.NotApplicable[len(out.NotApplicable)-1]
	last.Requirements = append(last.Requirements, j.Requirement.ID)
}

func ruleSetOf(s *ruleset.RuleSet) jsonRuleSet {
	return jsonRuleSet{s.Name, s.Version, s.SHA256, s.Layers, append([]ruleset.Change{}, s.Changes...)}
}

func requirementOf(j judge.Judgment) jsonRequirement {
	q := j.Requirement
	out := jsonRequirement{
		ID: q.ID, Title: q.Title, Room: q.Room, Level: q.Level,
		Subject: j.Subject.ID, At: j.Subject.At, Line: j.Position.Line, Column: j.Position.Column,
		Outcome: j.Outcome, MarginPct: j.MarginPct, Message: j.Say(), Remedy: q.Remedy,
		Missing: append([]string{}, j.Missing...), Source: q.Source, Departure: j.Departure, Changes: q.Changes,
	}
	if m := j.Measured; m != nil {
		out.Measured = &jsonMeasured{m.Value, m.Unit, m.Fact}
	}
	if l := j.Limit; l != nil {
		out.Limit = &jsonLimit{j.Compared().Comparison, l.Value, l.Unit, l.Fact, l.From}
	}
	return out
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
