package report_test

import (
	"bytes"
	"context"
	"encoding/json"
	"strings"
	"testing"
	"unicode"

	"pgregory.net/rapid"

	"sunclause/engine/judge"
	"sunclause/engine/record"
	"sunclause/engine/report"
	"sunclause/schema"
)

// hostile are texts that a document could have in order to mislead whoever
// reads a report of it, or the program that shows it.
var hostile = []string{
	"<script>alert(1)</script>", "<img src=x onerror=alert(1)>", "</testcase></testsuite>", "]]>", "<!-- gone", "&lt;b&gt; &#124; &amp;",
	"a | b | c", "a\\| b \\\\| c", "`code` and ``more``", "`a|b", "ends with `", "\\", "\\`", "***bold*** ~~struck~~ __under__ _a_",
	"[link](javascript:alert(1))", "[link][1]", "![picture](http://x.example/p.png)", "<http://x.example>", "https://x.example/", "www.x.example", "x.example",
	"@somebody", "#1 !2 $3$ ~4 %5", ":warning:", "::error::x", "| --- |", "# heading", "- list", "1. list", "    code", "> quote", "---", "```",
	"\x1b[2J\x1b]0;title\x07", "\u009b31mred", "\u0085next", "bell\x07 del\x7f", "\u202egnp.exe", "\u2066over\u2069", "\u200fright", "\u061cmark",
	"no\u200bwidth\ufeff\u2060", "soft\u00adhyphen", "tag\U000e0041", "line\u2028and\u2029paragraph", "break\nof\r\nline\tand tab", "{0} {{1}} {", "\ufffe\uffff",
	strings.Repeat("long ", 400), strings.Repeat("W", 2000), strings.Repeat("|", 2000),
}

// hostileShed is the small job with a text in every place where a document has
// texts that reach a report; its name is the text too. The text is put in after
// reading, since reading already refuses control characters.
func hostileShed(t testing.TB, text string) *judge.Result {
	t.Helper()
	set := loaded(t, formats+"rules")
	doc, err := schema.Decode(text, read(t, formats+"job.json"))
	if err != nil {
		t.Fatal(err)
	}
	in := &doc.Installation
	in.Project.Reference.Value = text
	for i := range in.Handover.Departures {
		d := &in.Handover.Departures[i]
		d.Reason.Value, d.Author.Value = text, text
	}
	in.Handover.Departures[1].Requirement.Value = text
	in.Datasheets.ProtectiveDevices["f1"].Standard.Value = text
	r, err := judge.Check(context.Background(), set, doc, judge.Options{})
	if err != nil {
		t.Fatal(err)
	}
	return r
}

// hostileChecks say for each format what no text may do to it.
var hostileChecks = map[string]func(testing.TB, string, []byte){
	"text": hostileText, "html": hostileHTML, "json": hostileJSON, "sarif": hostileSARIF, "junit": hostileJUnit, "markdown": hostileMarkdown,
}

// TestHostileTexts writes every hostile text in every format.
func TestHostileTexts(t *testing.T) {
	for _, text := range hostile {
		hold(t, text)
	}
}

// TestAnyText does the same with texts made at random of what has a meaning
// somewhere.
func TestAnyText(t *testing.T) {
	rapid.Check(t, func(r *rapid.T) {
		letters := rapid.RuneFrom([]rune("`|\\<>&*_[](){}!#@:$~^-+=%\"';/.,1aé \n\r\t\u202e\u200b\u2028\x1b\u009b"))
		hold(t, rapid.StringOfN(letters, 1, 40, -1).Draw(r, "text"))
		if t.Failed() {
			r.FailNow()
		}
	})
}

// hold writes a text in every format and holds each to what it may do.
func hold(t testing.TB, text string) {
	t.Helper()
	result := hostileShed(t, text)
	for format := range report.Formats {
		check, ok := hostileChecks[format]
		if !ok {
			t.Fatalf("format %s is not held against hostile texts", format)
		}
		got := written(t, format, report.Options{All: true}, result)
		if i := bytes.IndexFunc(got, acts); i >= 0 {
			t.Errorf("%s of %+.30q has %+q in it", format, text, got[i:min(len(got), i+8)])
		}
		check(t, text, got)
	}
}

// TestHostileComparisons holds what compare and reproduce write to the same.
func TestHostileComparisons(t *testing.T) {
	for _, text := range hostile {
		judged := hostileShed(t, text)
		before := record.Of(judged, judge.Options{}, text, []string{text})
		after := record.Of(shed(t), judge.Options{}, "0.0.0", report.Cautions)
		c := report.Compare(before, after, true)
		c.Names = [2]string{text, text}
		members := []record.MemberChange{{Change: record.Changed, Name: text, Words: text, Before: text, After: []any{text}}}
		sides := report.RulesCompared{Before: shed(t).RuleSet, After: shed(t).RuleSet, Documents: []report.Compared{c}}
		came := record.Reproduce(before, after)
		for what, write := range map[string]func(*bytes.Buffer) error{
			"documents":            func(b *bytes.Buffer) error { return report.DocumentsText(b, c, members, report.Options{}) },
			"documents in JSON":    func(b *bytes.Buffer) error { return report.DocumentsJSON(b, c, members) },
			"rules":                func(b *bytes.Buffer) error { return report.RulesComparedText(b, sides, report.Options{}) },
			"rules in JSON":        func(b *bytes.Buffer) error { return report.RulesComparedJSON(b, sides) },
			"reproduction":         func(b *bytes.Buffer) error { return report.ReproductionText(b, came, text, report.Options{}) },
			"reproduction in JSON": func(b *bytes.Buffer) error { return report.ReproductionJSON(b, came, text) },
			"record":               func(b *bytes.Buffer) error { return report.Record(b, before) },
			"facts": func(b *bytes.Buffer) error {
				return report.FactsText(b, judged.Document, judged.Facts, report.FactSelection{Working: true}, report.Options{})
			},
			"facts in JSON": func(b *bytes.Buffer) error {
				return report.FactsJSON(b, judged.Document, judged.RuleSet, judged.Facts, report.FactSelection{Working: true})
			},
		} {
			var got bytes.Buffer
			if err := write(&got); err != nil {
				t.Fatal(err)
			}
			if i := bytes.IndexFunc(got.Bytes(), acts); i >= 0 {
				t.Errorf("%s of %+.30q has %+q in it", what, text, got.Bytes()[i:min(got.Len(), i+8)])
			}
		}
	}
}

// acts is told anew here, by the standard's categories: what is neither seen
// nor a line feed.
func acts(r rune) bool {
	return r != '\n' && (unicode.IsControl(r) || unicode.Is(unicode.Cf, r) || r == '\u2028' || r == '\u2029')
}

// hostileText: a terminal gets lines of the report only.
func hostileText(t testing.TB, text string, got []byte) {
	for line := range strings.Lines(string(got)) {
		if strings.HasPrefix(line, "PASSES") {
			t.Errorf("%.30q makes the report pass", text)
		}
	}
}

// hostileJSON: a program gets the text as it was.
func hostileJSON(t testing.TB, text string, got []byte) {
	var v any
	if err := json.Unmarshal(got, &v); err != nil {
		t.Fatal(err)
	}
	if reference := at(v, "document", "reference"); reference != text {
		t.Errorf("%+.30q came back as %+.30q", text, reference)
	}
}

// hostileSARIF: no message has a link or a place for an argument.
func hostileSARIF(t testing.TB, text string, got []byte) {
	run := sarifOf(t, got)
	if n := len(run["results"].([]any)); n != 4 {
		t.Errorf("%.30q: %d results", text, n)
	}
	for _, r := range run["results"].([]any) {
		message := at(r, "message", "text").(string)
		if strings.Contains(message, "](") || strings.ContainsFunc(message, acts) {
			t.Errorf("%.30q: %q", text, message)
		}
		if rest := strings.NewReplacer("{{", "", "}}", "").Replace(message); strings.ContainsAny(rest, "{}") {
			t.Errorf("%.30q: %q", text, message)
		}
	}
}

// hostileJUnit: neither cases nor failures are added or lost.
func hostileJUnit(t testing.TB, text string, got []byte) {
	all := junitOf(t, got)
	if cases, failures := all.count("testcase"), all.count("failure"); cases != 11 || failures != 2 {
		t.Errorf("%.30q: %d cases, %d failures", text, cases, failures)
	}
}

// hostileMarkdown: the lines and the cells are those of the harmless job, and
// outside of code nothing is markup but what the report itself writes.
func hostileMarkdown(t testing.TB, text string, got []byte) {
	want := strings.Split(string(written(t, "markdown", report.Options{}, shed(t))), "\n")
	lines := strings.Split(string(got), "\n")
	if len(lines) != len(want) {
		t.Fatalf("%.30q: %d lines:\n%s", text, len(lines), got)
	}
	for i, line := range lines {
		if strings.Count(line, "|") != strings.Count(want[i], "|") {
			t.Errorf("%.30q: other cells: %s", text, line)
		}
		if !strings.HasPrefix(line, want[i][:min(2, len(want[i]))]) {
			t.Errorf("%.30q begins a line: %s", text, line)
		}
		rest := withoutCode(t, line)
		if strings.Count(rest, "*") != strings.Count(want[i], "*") || strings.ContainsAny(strings.TrimLeft(rest, "#"), "<>[]`@#!$~\\&{}^") {
			t.Errorf("%.30q is markup: %s", text, rest)
		}
		if strings.Contains(rest, "://") || strings.Contains(rest, "www.") || strings.Contains(rest, ":warning:") {
			t.Errorf("%.30q is a link or a picture: %s", text, rest)
		}
		if len([]rune(line)) > 12000 {
			t.Errorf("%.30q: a line of %d characters", text, len([]rune(line)))
		}
	}
}

// withoutCode takes the code out of a line, in HTML and between backticks.
func withoutCode(t testing.TB, line string) string {
	for {
		before, code, found := strings.Cut(line, "<code>")
		if !found {
			break
		}
		inside, after, _ := strings.Cut(code, "</code>")
		if strings.ContainsAny(strings.NewReplacer("&#", "", ";", "").Replace(inside), "<>`|*[]_&@#.:") {
			t.Errorf("code in HTML has markup: %s", inside)
		}
		line = before + "C" + after
	}
	parts := strings.Split(line, "`")
	for i := range parts {
		if i%2 == 1 {
			parts[i] = "C"
		}
	}
	return strings.Join(parts, "")
}

// TestMarkdownIsShort makes sure that a job with very many findings still makes
// a comment of bounded size, and says that there are more.
func TestMarkdownIsShort(t *testing.T) {
	r := shed(t)
	for len(r.Judgments) < 5000 {
		r.Judgments = append(r.Judgments, r.Judgments...)
	}
	got := string(written(t, "markdown", report.Options{}, r))
	if len(got) > 60_000 || !strings.Contains(got, " more; the report of sunclause check lists all.") {
		t.Errorf("%d bytes: %s", len(got), got)
	}
}
