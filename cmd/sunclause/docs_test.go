package main

import (
	"bytes"
	"context"
	"fmt"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"sunclause/engine/catalogue"
	"sunclause/engine/report"
	"sunclause/engine/ruleset"
	"sunclause/facts/working"
	"sunclause/policies"
	"sunclause/schema/examples"
)

const generated = "<!-- Written by go test ./cmd/sunclause -update. Do not edit. -->\n\n"

// TestFactsPage keeps docs/facts.md true to the facts there are.
func TestFactsPage(t *testing.T) {
	var b strings.Builder
	b.WriteString(generated + "# Facts\n\nWhat is derived from an installation and rules can judge, by subject. The unit stands at the end of the name.\n" +
		"`sunclause facts --working FILE PART` shows those of a part with formula, numbers put in and the lines they came from; without a\n" +
		"part, how many there are in each list.\n" +
		"For a program there is `--format json`, which [schema/facts.schema.json](../schema/facts.schema.json) describes.\n\n")
	for _, s := range catalogue.Subjects() {
		fmt.Fprintf(&b, "- [%s](#%s): %s, %d facts\n", s.Name, s.Name, lower(s.Words), len(s.Facts))
	}
	for _, s := range catalogue.Subjects() {
		fmt.Fprintf(&b, "\n## %s\n\n%s.\n\n| fact | kind | what it is |\n|---|---|---|\n", s.Name, upper(s.Words))
		for _, f := range s.Facts {
			if f.Words == "" {
				t.Errorf("%s.%s has no words", s.Name, f.Name)
			}
			fmt.Fprintf(&b, "| `%s` | %s | %s |\n", f.Name, f.Kind, f.Words)
		}
	}
	golden(t, "../../docs/facts.md", b.String())
}

func upper(s string) string { return strings.ToUpper(s[:1]) + s[1:] }

// lower leaves a word that is all capitals as it is.
func lower(s string) string {
	if len(s) > 1 && s[1] >= 'A' && s[1] <= 'Z' {
		return s
	}
	return strings.ToLower(s[:1]) + s[1:]
}

// TestRulesPages keeps docs/rules-SET.md true to the embedded sets.
func TestRulesPages(t *testing.T) {
	for _, name := range ruleset.Embedded(policies.FS) {
		set, err := ruleset.Load(context.Background(), policies.FS, name)
		if err != nil {
			t.Fatal(err)
		}
		golden(t, "../../docs/rules-"+name+".md", rulesPage(set))
	}
}

func rulesPage(set *ruleset.RuleSet) string {
	var b strings.Builder
	fmt.Fprintf(&b, "%s# Rule set %s\n\n%s. Version %s.\n\n", generated, set.Name, set.Title, set.Version)
	b.WriteString("Of which parts each requirement asks what, in the words of its row, and what puts it right. Clauses are marked with how\n" +
		"they are known; look each up in your own copy of the standard. The parameters, with their values, stand at the end.\n\n")
	own := set.Own()
	slices.SortStableFunc(own, func(a, b *ruleset.Requirement) int { return strings.Compare(a.Room, b.Room) })
	for i, q := range own {
		if i == 0 || q.Room != own[i-1].Room {
			fmt.Fprintf(&b, "%s## %s\n\n", strings.Repeat("\n", min(i, 1)), q.Room)
		}
		b.WriteString(ruleLine(q))
	}
	b.WriteString("\n")
	b.WriteString("## Parameters\n\n| parameter | value | what it is | source |\n|---|---|---|---|\n")
	for _, p := range set.Parameters() {
		value := p.Text
		if !p.IsText {
			value = strings.TrimSpace(working.Plain(p.Number) + " " + p.Unit)
		}
		fmt.Fprintf(&b, "| `%s` | %s | %s | %s |\n", p.Name, value, p.Title, report.Cite(p.Source))
	}
	return b.String()
}

// ruleLine puts a requirement on one line, with what it compares as its row has it.
func ruleLine(q *ruleset.Requirement) string {
	asks := "`" + q.Condition.String() + "`"
	if q.Rego {
		asks = "what its rule in Rego says"
	}
	line := fmt.Sprintf("- **%s** (%s): %s. Of %s: %s", q.ID, q.Level, q.Title, q.Subject, asks)
	for i, w := range q.When {
		line += [2]string{", where ", " and "}[min(i, 1)] + "`" + w.String() + "`"
	}
	return line + ". " + q.Remedy + " *" + report.Cite(q.Source) + "*\n"
}

// TestREADMEReport keeps the picture of a report in the README true.
func TestREADMEReport(t *testing.T) {
	const name = "../../README.md"
	raw, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	repo := amongExamples(t)
	text, _, _ := typed(t, "check", "--width", "76", "examples/gb-island-cottage-faulty/installation.json")
	lines := strings.Split(text, "\n")
	block := "<!-- report -->\n\n```text\n" + strings.Join(lines[:34], "\n") + "\n…\n```\n\n<!-- /report -->"
	got := regexp.MustCompile(`(?s)<!-- report -->.*<!-- /report -->`).ReplaceAllLiteralString(string(raw), block)
	golden(t, filepath.Join(repo, "README.md"), got)
}

// TestREADMECommands runs every command of the README, in a folder that has the
// files they name. Those that build and test this very repository are the ones
// that run this test.
func TestREADMECommands(t *testing.T) {
	if testing.Short() {
		t.Skip("takes its time")
	}
	raw, err := os.ReadFile("../../README.md")
	if err != nil {
		t.Fatal(err)
	}
	here, err := filepath.Abs("../..")
	if err != nil {
		t.Fatal(err)
	}
	dir := t.TempDir()
	prepare(t, dir, here, string(raw))
	t.Chdir(dir)
	found := 0
	for _, m := range regexp.MustCompile("(?m)(?:`|^    )((?:go run ./cmd/sunclause|sunclause) [^`\n|]+)").FindAllStringSubmatch(string(raw), -1) {
		line := strings.TrimPrefix(strings.TrimPrefix(m[1], "go run ./cmd/"), "sunclause ")
		var out, errs bytes.Buffer
		job, err := os.ReadFile("job.json")
		if err != nil {
			t.Fatal(err)
		}
		env := &environment{bytes.NewReader(job), &out, &errs}
		if status := dispatch(context.Background(), env, strings.Fields(line)); status == exitError {
			t.Errorf("sunclause %s: %s", line, errs.String())
		}
		found++
	}
	if found < 10 {
		t.Errorf("only %d commands found", found)
	}
}

// prepare makes the files that the README names.
func prepare(t *testing.T, dir, repo, readme string) {
	t.Helper()
	cottage, err := os.ReadFile(filepath.Join(repo, "testdata/gb-island-cottage/installation.json"))
	if err != nil {
		t.Fatal(err)
	}
	files := map[string]string{"job.json": string(cottage), "jobs/a.installation.json": string(cottage)}
	current := ""
	for line := range strings.Lines(readme) {
		code, indented := strings.CutPrefix(line, "    ")
		if m := regexp.MustCompile(`^# (\w+\.yaml)\n$`).FindStringSubmatch(code); indented && m != nil {
			current = "our-house/" + m[1]
		} else if !indented && line != "\n" {
			current = ""
		}
		if current != "" {
			files[current] += code
		}
	}
	if len(files) != 4 {
		t.Fatalf("the README shows %d files of a rule set", len(files)-2)
	}
	for name, text := range files {
		name = filepath.Join(dir, name)
		if err := os.MkdirAll(filepath.Dir(name), 0o755); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(name, []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	for _, folder := range []string{"testdata", "examples"} {
		if err := examples.Write(filepath.Join(dir, folder)); err != nil {
			t.Fatal(err)
		}
	}
}
