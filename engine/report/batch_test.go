package report_test

import (
	"bytes"
	"encoding/json"
	"errors"
	"io"
	"strings"
	"testing"

	"sunclause/engine/judge"
	"sunclause/engine/report"
	"sunclause/schema"
)

// unread is a document that could not be checked, for two reasons, the texts of
// which are somebody else's.
func unread(path, text string) report.Unchecked {
	return report.UncheckedOf(path, []byte("{}"), schema.Problems{
		{File: path, Line: 3, Column: 7, At: "/project", What: text, Remedy: text},
		{File: path, Line: 4, Column: 1, What: "something else"},
	})
}

// inBatch gives the reports of a batch: what was judged, and after it what could
// not be checked.
func inBatch(t testing.TB, format string, judged []*judge.Result, unchecked ...report.Unchecked) []byte {
	t.Helper()
	var text bytes.Buffer
	f, o := report.Formats[format], report.Options{Width: 100}
	all := f.Collect(&text, o)
	if format == "html" {
		all = report.Pages(func(string) (io.WriteCloser, error) { return kept{&text}, nil })
	}
	var summary report.Summary
	add := func(job report.Job, write func(io.Writer) error) {
		summary.Add(job)
		if err := all.Add(write); err != nil {
			t.Fatal(err)
		}
	}
	for _, r := range judged {
		add(report.JobOf(r, o), func(w io.Writer) error { return f.Part(w, r, o) })
	}
	for _, u := range unchecked {
		add(u.Job(), func(w io.Writer) error { return f.Unchecked(w, u, o) })
	}
	if err := all.End(judged[0].RuleSet, &summary); err != nil {
		t.Fatal(err)
	}
	return text.Bytes()
}

// kept is a file that a test keeps.
type kept struct{ *bytes.Buffer }

func (kept) Close() error { return nil }

// TestBatchInEveryFormat holds that a batch tells in every format what could not
// be checked, in its place, and sums up.
func TestBatchInEveryFormat(t *testing.T) {
	r := shed(t)
	for format, wants := range map[string][]string{
		"text":     {"EX-7, shed, design", "COULD NOT BE CHECKED", "bad.json:3:7: no good; no good", "0 pass, 1 does not pass, 1 could not be checked", "1. Few modules in one string, string S2. Divide the string in two."},
		"markdown": {"## Does not pass: EX-7, shed, design", "## Could not be checked: `bad.json`", "no good; no good", "## Summary of 2 installations", "| does not pass |"},
		"json":     {`"reference":"EX-7, shed"`, `"errors":[{"file":"bad.json","line":3,"column":7,"message":"no good","remedy":"no good"}`, `{"summary_version":1,`},
		"junit":    {`name="jobs/shed.json"`, `<failure type="could_not_be_checked" message="could not be checked: bad.json:3:7: no good; no good">`, `<testsuite name="summary"`},
		"sarif":    {`"uri": "jobs/shed.json"`, `"executionSuccessful": false`, `"text": "Could not be checked: no good; no good"`, `"startLine": 3`, `"could_not_be_checked": 1`},
		"html":     {"<bdi>EX-7, shed</bdi>", `<p class="verdict broken">could not be checked</p>`, "line 3: <bdi>no good</bdi>", `<a href="job-0002.html"><bdi>bad.json</bdi></a>`},
	} {
		rest := string(inBatch(t, format, []*judge.Result{r}, unread("bad.json", "no good")))
		if format == "sarif" { // where everything stands by kind and not by document
			for _, want := range wants {
				if !strings.Contains(rest, want) {
					t.Errorf("%s does not say %s", format, want)
				}
			}
			continue
		}
		for _, want := range wants {
			_, after, found := strings.Cut(rest, want)
			if !found {
				t.Errorf("%s does not say %s, or not in this order", format, want)
				break
			}
			rest = after
		}
	}
}

// TestBatchKeepsItsContracts holds a batch to the schemas of its formats.
func TestBatchKeepsItsContracts(t *testing.T) {
	judged := []*judge.Result{shed(t), result(t, "gb-island-cottage-faulty")}
	bad := report.UncheckedOf("gone.json", nil, errors.New("gone.json: no such file"))
	lines := bytes.Split(bytes.TrimSpace(inBatch(t, "json", judged, unread("bad.json", "no good"), bad)), []byte("\n"))
	if len(lines) != 5 {
		t.Fatalf("%d lines, want four reports and the summary", len(lines))
	}
	for i, line := range lines {
		contract := schema.ReportSchema
		if i == len(lines)-1 {
			contract = schema.SummarySchema
		}
		if err := schema.Validate("line", line, contract); err != nil {
			t.Errorf("line %d: %v", i+1, err)
		}
	}
	var summary report.Summary
	if err := json.Unmarshal(lines[4], &summary); err != nil {
		t.Fatal(err)
	}
	if len(summary.Jobs) != 4 || summary.DoNotPass != 2 || summary.NotChecked != 2 || len(summary.Jobs[1].First) != 3 || *summary.Jobs[1].Counts != report.Count(judged[1]) {
		t.Errorf("%+v", summary)
	}
	junitOf(t, inBatch(t, "junit", judged, unread("bad.json", "no good"), bad))
	run := sarifOf(t, inBatch(t, "sarif", judged, unread("bad.json", "no good"), bad))
	if n := len(run["artifacts"].([]any)); n != 4 {
		t.Errorf("%d artifacts", n)
	}
}

// TestHostileBatches holds what could not be checked, and the summary, to what no
// text may do to a report.
func TestHostileBatches(t *testing.T) {
	if testing.Short() {
		t.Skip("takes its time")
	}
	for _, text := range hostile {
		r := hostileShed(t, text)
		for format := range report.Formats {
			got := inBatch(t, format, []*judge.Result{r}, unread(text, text))
			if i := bytes.IndexFunc(got, acts); i >= 0 {
				t.Errorf("%s of %+.30q has %+q in it", format, text, got[i:min(len(got), i+8)])
			}
			switch format {
			case "junit":
				junitOf(t, got)
			case "sarif":
				sarifOf(t, got)
			case "markdown":
				want := bytes.Count(inBatch(t, format, []*judge.Result{shed(t)}, unread("x", "x")), []byte("\n"))
				if n := bytes.Count(got, []byte("\n")); n != want {
					t.Errorf("%.30q: %d lines in Markdown, want %d", text, n, want)
				}
			case "html":
				for page := range bytes.SplitSeq(got, []byte("<!DOCTYPE html>")) {
					for _, e := range elements(t, page) {
						if name := e.Name.Local; name == "script" || name == "img" {
							t.Errorf("%.30q became a <%s>", text, name)
						}
					}
				}
			}
		}
	}
}
