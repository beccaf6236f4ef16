package report

import (
	"bytes"
	"crypto/sha256"
	"encoding/hex"
	"encoding/json"
	"io"
	"net/url"
	"strings"

	"sunclause/engine/judge"
	"sunclause/engine/record"
	"sunclause/engine/ruleset"
	"sunclause/facts/working"
	"sunclause/schema"
)

// The report as SARIF 2.1.0 (OASIS): the findings of all documents in one run,
// whose rules are the requirements of the set. A finding that is "not shown" is
// of the kind fail as well: a viewer shows no other, and silence is never a
// pass. What was accepted in writing is a suppression.

const (
	sarifVersion = "2.1.0"
	sarifSchema  = "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json"
)

// sarifPart writes what one document contributes, as JSON that sarifReports puts
// in its place.
func sarifPart(w io.Writer, r *judge.Result, o Options) error {
	place := sarifPlace{uriOf(r.Document.Name)}
	part := sarifDocument{
		Artifact: sarifArtifact{
			Location: place, Roles: []string{"analysisTarget"},
			Hashes:     map[string]string{"sha-256": ruleset.Hash(r.Document.Raw)},
			Properties: &sarifArtifactFacts{r.Document.Installation.Project.Reference.Value, r.Passes, r.NothingToCheck(), Count(r)},
		},
	}
	index := map[*ruleset.Requirement]int{}
	for i, q := range r.RuleSet.Requirements {
		index[q] = i
	}
	for _, u := range r.Unlikely {
		part.Results = append(part.Results, sarifUnlikely(r, u, len(index)))
	}
	for _, j := range r.Judgments {
		if j.IsFinding() {
			part.Results = append(part.Results, sarifOf(r, j, index[j.Requirement], o))
		}
	}
	for _, n := range beside(r) {
		part.Notifications = append(part.Notifications, sarifNotification{"note", sarifText(n), []sarifLocation{{PhysicalLocation: sarifPhysical{ArtifactLocation: place}}}})
	}
	return encode(w, part, "")
}

// sarifUnchecked writes what a document contributes that could not be checked:
// notifications of errors, since there is no result.
func sarifUnchecked(w io.Writer, u Unchecked, _ Options) error {
	place := sarifPlace{uriOf(u.Path)}
	part := sarifDocument{Artifact: sarifArtifact{Location: place, Roles: []string{"analysisTarget"}}}
	if u.SHA256 != "" {
		part.Artifact.Hashes = map[string]string{"sha-256": u.SHA256}
	}
	for _, e := range u.Errors {
		at := sarifPhysical{ArtifactLocation: place}
		if e.Line > 0 {
			at.Region = &sarifRegion{e.Line, e.Column}
		}
		says := sarifText(upperFirst(uncheckedWords) + ": " + e.says())
		part.Notifications = append(part.Notifications, sarifNotification{"error", says, []sarifLocation{{PhysicalLocation: at}}})
	}
	return encode(w, part, "")
}

func sarifOf(r *judge.Result, j judge.Judgment, rule int, o Options) sarifResult {
	q := j.Requirement
	place := sarifPlace{uriOf(r.Document.Name)}
	level := "warning"
	if q.Level == ruleset.Shall || o.Strict {
		level = "error"
	}
	return sarifResult{
		RuleID: q.ID, RuleIndex: rule, Kind: "fail", Level: level,
		Message: sarifText(sarifSay(j)),
		Locations: []sarifLocation{{
			PhysicalLocation: sarifPhysical{place, sarifAt(j.Position)},
			LogicalLocations: []sarifLogical{{j.Subject.ID, j.Subject.At}},
		}},
		RelatedLocations:    sarifMissing(r, j, place),
		PartialFingerprints: map[string]string{"requirementAndSubject/v1": fingerprint(q.ID, j.Subject.ID)},
		Suppressions:        suppressions(j.Departure),
		Properties:          sarifResultFacts{j.Outcome, j.Subject.ID, j.Subject.At, measuredOf(j.Measured), limitOf(j.Compared().Comparison, j.Limit), j.MarginPct, append([]string{}, working.Pointers(j.Missing)...), Cite(q.Source)},
	}
}

func sarifAt(p schema.Position) *sarifRegion { return &sarifRegion{p.Line, p.Column} }

// sarifRelated is how many places a finding refers to beside its own.
const sarifRelated = 10

// sarifMissing says where the members would stand that are not stated, and where
// those stand with which something is the matter. The property missing lists all of
// them.
func sarifMissing(r *judge.Result, j judge.Judgment, place sarifPlace) []sarifLocation {
	var places []sarifLocation
	for i := range j.Missing {
		gap := j.Missing[i : i+1]
		says := sarifText(working.Spoken(gap))
		for _, at := range placesOf(gap) {
			if len(places) < sarifRelated && j.Outcome == judge.NotShown {
				places = append(places, sarifLocation{PhysicalLocation: sarifPhysical{place, sarifAt(r.Document.Position(at))}, Message: &says})
			}
		}
	}
	return places
}

// sarifSay tells a finding in sentences, since a viewer may show nothing else.
func sarifSay(j judge.Judgment) string {
	text := sentence(upperFirst(j.Subject.Name)+": "+strings.ToLower(outcomeWords[j.Outcome])+": "+j.Requirement.Title) + " " + sentence(sayJudgment(j))
	if j.Outcome == judge.NotMet && j.Requirement.Remedy != "" {
		text += " To put it right: " + sentence(j.Requirement.Remedy)
	}
	if d := j.Departure; d != nil {
		text += " " + sentence(sayDeparture(d))
	}
	return text
}

// sentence ends a text with a full stop where it has no end of its own.
func sentence(s string) string {
	if strings.HasSuffix(s, ".") || strings.HasSuffix(s, "!") || strings.HasSuffix(s, "?") {
		return s
	}
	return s + "."
}

// fingerprint knows a finding again when lines or values have moved.
func fingerprint(requirement, subject string) string {
	sum := sha256.Sum256([]byte(requirement + "\n" + subject))
	return hex.EncodeToString(sum[:])
}

// suppressions is a departure that counts. One that does not is no suppression:
// some viewers hide what has any, whatever its status.
func suppressions(d *judge.Departure) []sarifSuppression {
	if !d.Counts() {
		return nil
	}
	return []sarifSuppression{{"external", "accepted", Visible(sayDeparture(d))}}
}

// sarifReports keeps the results until the end: above them stand the artifacts
// and the notifications of all documents.
type sarifReports struct {
	w          io.Writer
	options    Options
	results    spool
	artifacts  []json.RawMessage
	seen       map[[sha256.Size]byte]bool // digests of the parts: a document may be named twice, and the artifacts of a run are a set
	invocation sarifInvocation
	some       bool // whether there is a result
}

func collectSARIF(w io.Writer, o Options) Collector {
	return &sarifReports{w: w, options: o, artifacts: []json.RawMessage{}, seen: map[[sha256.Size]byte]bool{}, invocation: sarifInvocation{ExecutionSuccessful: true}}
}

func (s *sarifReports) Add(write func(io.Writer) error) error {
	var text bytes.Buffer
	if err := write(&text); err != nil {
		return err
	}
	digest := sha256.Sum256(text.Bytes())
	if s.seen[digest] {
		return nil
	}
	s.seen[digest] = true
	var part struct {
		Artifact      json.RawMessage
		Results       []json.RawMessage
		Notifications []sarifNotification
	}
	if err := json.Unmarshal(text.Bytes(), &part); err != nil {
		return err
	}
	s.artifacts = append(s.artifacts, part.Artifact)
	for _, n := range part.Notifications {
		s.invocation.ExecutionSuccessful = s.invocation.ExecutionSuccessful && n.Level != "error"
		s.invocation.Notifications = append(s.invocation.Notifications, n)
	}
	for _, result := range part.Results {
		if err := s.keep(result); err != nil {
			return err
		}
	}
	return nil
}

// keep writes a result as it will stand in the list of results.
func (s *sarifReports) keep(result json.RawMessage) error {
	before := "\n        "
	if s.some {
		before = ",\n        "
	}
	s.some = true
	var text bytes.Buffer
	text.WriteString(before)
	if err := json.Indent(&text, result, "        ", "  "); err != nil {
		return err
	}
	_, err := s.results.Write(text.Bytes())
	return err
}

// End writes the run.
func (s *sarifReports) End(set *ruleset.RuleSet, summary *Summary) error {
	defer s.results.close()
	run := sarifRun{
		Tool:              sarifTool{sarifDriver{"sunclause", s.options.Version, sarifRules(set)}},
		AutomationDetails: sarifAutomation{"sunclause/" + set.Name + "/"},
		Invocations:       []sarifInvocation{s.invocation},
		Artifacts:         s.artifacts, Results: []json.RawMessage{},
		ColumnKind: "unicodeCodePoints",
		Properties: sarifRunFacts{record.RuleSetOf(set), summary, Cautions},
	}
	var text bytes.Buffer
	if err := encode(&text, sarifLog{sarifSchema, sarifVersion, []sarifRun{run}}, "  "); err != nil {
		return err
	}
	if !s.some {
		_, err := s.w.Write(text.Bytes())
		return err
	}
	// No text in JSON has a line feed in it, so this line is the run's own.
	above, below, _ := bytes.Cut(text.Bytes(), []byte("\n      \"results\": []"))
	if _, err := io.WriteString(s.w, string(above)+"\n      \"results\": ["); err != nil {
		return err
	}
	if err := s.results.copyTo(s.w); err != nil {
		return err
	}
	_, err := io.WriteString(s.w, "\n      ]"+string(below))
	return err
}

func sarifRules(s *ruleset.RuleSet) []sarifRule {
	rules := make([]sarifRule, len(s.Requirements))
	for i, q := range s.Requirements {
		asks := sentence("Asks of " + q.Subject + ": " + Asks(s, q))
		for _, w := range q.When {
			asks += " " + sentence("Applies where "+SayCondition(s, w))
		}
		help := asks
		if q.Remedy != "" {
			help += " To put it right: " + sentence(q.Remedy)
		}
		help += " " + sentence("Source: "+Cite(q.Source))
		level := "warning"
		if q.Level == ruleset.Shall {
			level = "error"
		}
		rules[i] = sarifRule{
			ID: q.ID, ShortDescription: sarifText(q.Title), FullDescription: sarifText(asks), Help: sarifText(help),
			DefaultConfiguration: sarifLevel{level}, Properties: sarifRuleBack{q.Level, q.Room, Cite(q.Source)},
		}
	}
	return append(rules, sarifUnlikelyRule())
}

// sarifText makes a message of a text. In a message, braces stand for arguments
// and a bracket followed by a parenthesis makes a link (SARIF 2.1.0, clause
// 3.11); in texts of a document they are only characters.
func sarifText(s string) sarifMessage { return sarifMessage{sarifEscapes.Replace(Visible(s))} }

var sarifEscapes = strings.NewReplacer("{", "{{", "}", "}}", "](", "] (")

// uriOf writes the name of a document as a URI reference.
func uriOf(name string) string {
	switch {
	case strings.HasPrefix(name, "/"):
		return (&url.URL{Scheme: "file", Path: name}).String()
	case len(name) > 2 && name[1:3] == ":/": // a drive
		return (&url.URL{Scheme: "file", Path: "/" + name}).String()
	}
	return (&url.URL{Path: name}).String()
}
