package report

import (
	"bytes"
	"encoding/xml"
	"fmt"
	"io"
	"strings"

	"sunclause/engine/judge"
	"sunclause/engine/ruleset"
)

// The report as JUnit XML, which servers that run checks show as tests: a suite
// a document, a case for each requirement and part. The case is named by their
// ids alone, so that a server knows it again from run to run.
//
// What makes the check fail is a failure, "not shown" too: servers count errors
// apart, and some take an error for a fault of the tool. What is not met and does
// not make the check fail, a recommendation or something accepted in writing, is
// skipped with the reason: a pass would hide it, and there is nothing between.
// What does not apply is skipped as well.

type junitSuites struct {
	XMLName  xml.Name     `xml:"testsuites"`
	Name     string       `xml:"name,attr"`
	Tests    int          `xml:"tests,attr"`
	Failures int          `xml:"failures,attr"`
	Errors   int          `xml:"errors,attr"`
	Suites   []junitSuite `xml:"testsuite"`
}

type junitSuite struct {
	Name       string          `xml:"name,attr"`
	Tests      int             `xml:"tests,attr"`
	Failures   int             `xml:"failures,attr"`
	Errors     int             `xml:"errors,attr"`
	Skipped    int             `xml:"skipped,attr"`
	Properties []junitProperty `xml:"properties>property"`
	Cases      []junitCase     `xml:"testcase"`
	Says       string          `xml:"system-out"`
}

type junitProperty struct {
	Name  string `xml:"name,attr"`
	Value string `xml:"value,attr"`
}

type junitCase struct {
	Class   string        `xml:"classname,attr"`
	Name    string        `xml:"name,attr"`
	Skipped string        `xml:"skipped,omitempty"`
	Failure *junitFailure `xml:"failure"`
}

type junitFailure struct {
	Type    string `xml:"type,attr"`
	Message string `xml:"message,attr"`
	Text    string `xml:",chardata"`
}

// junitPart writes the suite of one document.
func junitPart(w io.Writer, r *judge.Result, o Options) error {
	suite := junitSuite{
		Name: Visible(r.Document.Name),
		Properties: []junitProperty{
			{"reference", Visible(r.Document.Installation.Project.Reference.Value)},
			{"verdict", strings.ToLower(verdict(r))},
			{"document_sha256", digestOf(r.Document.Raw)},
			{"rule_set", layersOf(r.RuleSet)},
			{"rule_set_sha256", r.RuleSet.SHA256},
		},
		Says: visibleLines(append(append([]string{}, r.Notes...), Cautions...)),
	}
	for _, j := range r.Judgments {
		c := junitOf(r, j, o)
		suite.Tests++
		if c.Failure != nil {
			suite.Failures++
		}
		if c.Skipped != "" {
			suite.Skipped++
		}
		suite.Cases = append(suite.Cases, c)
	}
	return writeXML(w, suite)
}

func junitOf(r *judge.Result, j judge.Judgment, o Options) junitCase {
	c := junitCase{Class: j.Requirement.ID, Name: j.Subject.ID}
	switch {
	case j.Outcome == judge.Met:
	case j.Outcome == judge.NotApplicable:
		c.Skipped = outcomeWords[j.Outcome]
	case j.FailsCheck(o.Strict):
		c.Failure = &junitFailure{string(j.Outcome), Visible(junitHead(j)), junitSay(r, j)}
	default:
		c.Skipped = Visible(junitHead(j)) + "\n" + junitSay(r, j)
	}
	return c
}

// junitHead is a finding in one line.
func junitHead(j judge.Judgment) string {
	return strings.ToLower(standing(j)) + ": " + j.Requirement.Title + ": " + sayJudgment(j)
}

// junitSay is what else there is to say of a finding, a line each.
func junitSay(r *judge.Result, j judge.Judgment) string {
	says := []string{fmt.Sprintf("%s:%d:%d: %s", r.Document.Name, j.Position.Line, j.Position.Column, j.Subject.Name)}
	if j.Outcome == judge.NotMet && j.Requirement.Remedy != "" {
		says = append(says, "To put it right: "+j.Requirement.Remedy)
	}
	if j.Departure != nil {
		says = append(says, sayDeparture(j.Departure))
	}
	return visibleLines(append(says, Cite(j.Requirement.Source)))
}

// visibleLines makes each line visible and keeps the breaks between them.
func visibleLines(lines []string) string {
	shown := make([]string, len(lines))
	for i, l := range lines {
		shown[i] = Visible(l)
	}
	return strings.Join(shown, "\n")
}

// junitWhole writes the suites with their totals.
func junitWhole(w io.Writer, _ *ruleset.RuleSet, parts [][]byte, _ Options) error {
	all := junitSuites{Name: "sunclause"}
	for _, text := range parts {
		var s junitSuite
		if err := xml.Unmarshal(text, &s); err != nil {
			return err
		}
		all.Tests += s.Tests
		all.Failures += s.Failures
		all.Suites = append(all.Suites, s)
	}
	if _, err := io.WriteString(w, xml.Header); err != nil {
		return err
	}
	return writeXML(w, all)
}

// writeXML writes a value as XML. No attribute has a break of line in it, so
// those in the text can stand as they are.
func writeXML(w io.Writer, v any) error {
	var text bytes.Buffer
	e := xml.NewEncoder(&text)
	e.Indent("", "  ")
	if err := e.Encode(v); err != nil {
		return err
	}
	text.WriteByte('\n')
	_, err := w.Write(bytes.ReplaceAll(text.Bytes(), []byte("&#xA;"), []byte("\n")))
	return err
}
