package report

import (
	"bytes"
	"encoding/xml"
	"fmt"
	"io"
	"slices"
	"strconv"
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

type junitSuite struct {
	XMLName    xml.Name        `xml:"testsuite"`
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
			{"document_sha256", ruleset.Hash(r.Document.Raw)},
			{"rule_set", layersOf(r.RuleSet)},
			{"rule_set_sha256", r.RuleSet.SHA256},
		},
		Says: visibleLines(slices.Concat(beside(r), Cautions)),
	}
	cases := make([]junitCase, 0, len(r.Unlikely)+len(r.Judgments))
	for _, u := range r.Unlikely {
		cases = append(cases, junitUnlikely(r, u))
	}
	for _, j := range r.Judgments {
		cases = append(cases, junitOf(r, j, o))
	}
	for _, c := range cases {
		suite.Tests++
		if c.Failure != nil {
			suite.Failures++
		}
		if c.Skipped != "" {
			suite.Skipped++
		}
	}
	suite.Cases = cases
	return writeXML(w, suite)
}

// junitUnchecked writes the suite of a document that could not be checked: one
// case, which fails.
func junitUnchecked(w io.Writer, u Unchecked, _ Options) error {
	says := make([]string, len(u.Errors))
	for i, e := range u.Errors {
		says[i] = e.String()
	}
	suite := junitSuite{
		Name: Visible(u.Path), Tests: 1, Failures: 1,
		Properties: []junitProperty{{"verdict", uncheckedWords}},
		Cases: []junitCase{{Class: "document", Name: "can be checked",
			Failure: &junitFailure{string(NotChecked), Visible(uncheckedWords + ": " + says[0]), visibleLines(says)}}},
		Says: visibleLines(Cautions),
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

// junitReports keeps the suites until their totals are known, which stand above
// them.
type junitReports struct {
	w               io.Writer
	suites          spool
	tests, failures int
}

func collectJUnit(w io.Writer, _ Options) Collector { return &junitReports{w: w} }

func (u *junitReports) Add(write func(io.Writer) error) error {
	var text bytes.Buffer
	if err := write(&text); err != nil {
		return err
	}
	tests, failures, err := junitTotals(text.Bytes())
	u.tests, u.failures = u.tests+tests, u.failures+failures
	if err == nil {
		_, err = u.suites.Write(text.Bytes())
	}
	return err
}

// junitTotals reads how many tests and failures a suite says that it has.
func junitTotals(suite []byte) (tests, failures int, err error) {
	d := xml.NewDecoder(bytes.NewReader(suite))
	for {
		token, err := d.Token()
		if err != nil {
			return 0, 0, err
		}
		if start, ok := token.(xml.StartElement); ok {
			return junitNumber(start, "tests"), junitNumber(start, "failures"), nil
		}
	}
}

// junitNumber reads an attribute of an element that we wrote.
func junitNumber(e xml.StartElement, name string) int {
	for _, a := range e.Attr {
		if n, err := strconv.Atoi(a.Value); a.Name.Local == name && err == nil {
			return n
		}
	}
	return 0
}

func (u *junitReports) End(_ *ruleset.RuleSet, summary *Summary) error {
	defer u.suites.close()
	if summary != nil {
		if err := writeXML(&u.suites, junitSummary(summary)); err != nil {
			return err
		}
	}
	if _, err := fmt.Fprintf(u.w, "%s<testsuites name=\"sunclause\" tests=\"%d\" failures=\"%d\" errors=\"0\">\n", xml.Header, u.tests, u.failures); err != nil {
		return err
	}
	if err := u.suites.copyTo(u.w); err != nil {
		return err
	}
	_, err := io.WriteString(u.w, "</testsuites>\n")
	return err
}

// junitSummary is a suite without a test, which says how the others came out.
func junitSummary(s *Summary) junitSuite {
	says := []string{s.Totals()}
	for _, job := range s.Jobs {
		says = append(says, job.Verdict.Words()+": "+job.says())
		for i, d := range job.First {
			says = append(says, fmt.Sprintf("  %d. %s", i+1, d.say()))
		}
	}
	return junitSuite{
		Name: "summary",
		Properties: []junitProperty{
			{string(Passes), strconv.Itoa(s.Pass)}, {string(DoesNotPass), strconv.Itoa(s.DoNotPass)}, {string(NotChecked), strconv.Itoa(s.NotChecked)},
		},
		Says: visibleLines(says),
	}
}

// writeXML writes a value as XML, as it stands below the root. No attribute has a
// break of line in it, so those in the text can stand as they are.
func writeXML(w io.Writer, v any) error {
	var text bytes.Buffer
	e := xml.NewEncoder(&text)
	e.Indent("  ", "  ")
	if err := e.Encode(v); err != nil {
		return err
	}
	text.WriteByte('\n')
	_, err := w.Write(bytes.ReplaceAll(text.Bytes(), []byte("&#xA;"), []byte("\n")))
	return err
}
