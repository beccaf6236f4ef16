package judge_test

import (
	"context"
	"encoding/json"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/rego"
	"github.com/open-policy-agent/opa/v1/storage/inmem"
	"pgregory.net/rapid"

	"sunclause/engine/catalogue"
	"sunclause/engine/judge"
	"sunclause/engine/ruleset"
	"sunclause/facts"
	"sunclause/policies"
)

// TestRowsMeanWhatIsPublished holds the judging of rows in Go against their
// published meaning, policies/lib/limit.rego: random rows over random facts, in
// which each fact may be unknown. Whatever opa finds broken is not met, or not
// shown where something else is unknown; whatever is not met, opa finds broken.
func TestRowsMeanWhatIsPublished(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		dir, err := os.MkdirTemp("", "rows")
		if err != nil {
			t.Fatal(err)
		}
		defer os.RemoveAll(dir)
		rows := rapid.SliceOfN(rapid.Custom(drawRow), 1, 12).Draw(t, "rows")
		set, err := loadRows(dir, rows)
		if err != nil {
			t.Fatal(err)
		}
		f := drawFacts(t)
		broken := askOPA(t, set, f)
		for _, q := range set.Requirements {
			all, err := judge.Requirement(context.Background(), set, f, q)
			if err != nil {
				t.Fatal(err)
			}
			for _, j := range all {
				checkAgainst(t, q, j, broken)
			}
		}
	})
}

// checkAgainst holds one judgment against what opa found broken, of the row and
// of the conditions under which it applies.
func checkAgainst(t *rapid.T, q *ruleset.Requirement, j judge.Judgment, broken map[string]bool) {
	of := func(c *ruleset.Comparison) bool {
		subject := j.Subject.ID
		if c.Subject.Name == catalogue.Whole {
			subject = catalogue.Whole
		}
		return broken[fmt.Sprint(c.Number, " ", subject)]
	}
	excluded := false
	for _, c := range q.Conditions() {
		excluded = excluded || of(c)
	}
	if excluded != (j.Outcome == judge.NotApplicable) {
		t.Fatalf("%s of %s is %s, and opa finds a condition broken: %t", q.ID, j.Subject.ID, j.Outcome, excluded)
	}
	if row := of(q.Row()); len(q.When) == 0 && row != (j.Outcome == judge.NotMet) {
		t.Fatalf("%s of %s is %s, which has no conditions, and opa finds the row broken: %t", q.ID, j.Subject.ID, j.Outcome, row)
	} else if j.Outcome == judge.NotMet && !row || j.Outcome == judge.Met && row {
		t.Fatalf("%s of %s is %s, and opa finds the row broken: %t", q.ID, j.Subject.ID, j.Outcome, row)
	}
}

// What rows are drawn from: facts of each kind, of strings and the installation,
// with values close enough to meet one another.
var (
	numbers = []string{"voc_max_v", "modules_in_series", "isc_max_a", "installation.temp_min_c", "installation.temp_max_c"}
	words   = []string{"technology", "fuse_kind", "mppt", "installation.stage"}
	flags   = []string{"fuse_fitted", "connector_same_type"}
	days    = []string{"installation.design_date"}
	dates   = []string{"2026-01-31", "2026-02-01", "2027-01-01"}
	values  = []float64{-1, 0, 0.1, 0.3, 1, 10, 600, 1000000000, 569.25}
	factors = []string{"1", "0.1", "1.25", "3", "-2", "one_third"}
	drawn   = slices.Concat(numbers, words, flags, days)
)

// drawnTable has steps up and down, rows for any, cells that are words where
// numbers are wanted, and cells that are missing.
const drawnTable = `title: t
source: {document: test, how: house rule}
columns: [{name: word}, {name: step}, {name: number}, {name: says}]
rows:
  - {word: a, step: 1, number: 0.1, says: a}
  - {word: a, step: 10, number: 10, says: b}
  - {word: b, step: any, number: 600, says: c}
  - {word: b, step: 1, number: 1}
  - {word: any, step: 0.3, number: 569.25, says: a}
  - {word: any, step: 600, number: a, says: 10}
  - {word: a, step: 10, number: 1, says: c}
`

// drawRow draws a limit row about strings, in YAML.
func drawRow(t *rapid.T) string {
	group := func(t *rapid.T) string {
		if rapid.IntRange(0, 3).Draw(t, "group") > 0 {
			return fmt.Sprintf("%q", drawLine(t))
		}
		lines := rapid.SliceOfN(rapid.Custom(drawLine), 2, 3).Draw(t, "lines")
		return fmt.Sprintf("{any_of: [%q]}", strings.Join(lines, `", "`))
	}
	when := rapid.SliceOfN(rapid.Custom(group), 0, 3).Draw(t, "when")
	return strings.ReplaceAll("when: ["+strings.Join(when, ", ")+"], require: "+group(t), `\"`, `"`)
}

// drawLine draws one comparison of a fact with a limit.
func drawLine(t *rapid.T) string {
	pick := func(from []string, label string) string { return rapid.SampledFrom(from).Draw(t, label) }
	switch pick([]string{"number", "word", "flag", "day"}, "kind") {
	case "number":
		how := pick(catalogue.Number.Comparisons(), "comparison")
		if how == "one_of" || how == "none_of" {
			return fmt.Sprintf("%s %s 0.1 600 -1", pick(numbers, "fact"), how)
		}
		return pick(numbers, "fact") + " " + how + " " + drawNumber(t, pick)
	case "word":
		how := pick([]string{"equals", "differs", "one_of", "none_of"}, "comparison")
		limit := pick([]string{"a", "'b'", "strings.technology", "strings.mppt", "installation.stage", "parameters.said", drawCell(t, pick, "says")}, "limit")
		if how == "one_of" || how == "none_of" {
			limit = "a b"
		}
		return pick(words, "fact") + " " + how + " " + limit
	case "flag":
		fact := pick(flags, "fact")
		return pick([]string{fact, "not " + fact, fact + " equals fuse_fitted", fact + " differs yes"}, "flag")
	}
	return pick(days, "fact") + " " + pick([]string{"since", "until"}, "comparison") + " " + pick(dates, "limit")
}

// drawNumber draws what a number is held to: a plain one, a fact or the cell of a
// table, each with or without a factor.
func drawNumber(t *rapid.T, pick func([]string, string) string) string {
	limit := pick([]string{fmt.Sprint(rapid.SampledFrom(values[:7]).Draw(t, "limit")), pick(numbers, "by fact"), "one_third", drawCell(t, pick, "number")}, "limit")
	if rapid.Bool().Draw(t, "with a factor") {
		return pick(factors, "factor") + " times " + limit
	}
	return limit
}

func drawCell(t *rapid.T, pick func([]string, string) string, column string) string {
	keys := []string{"word equals " + pick(words, "key"), "step " + pick([]string{"equals", "at_least", "at_most"}, "step") + " " + pick(numbers, "key")}
	return "drawn." + column + " where " + pick([]string{keys[0], keys[1], keys[0] + " and " + keys[1]}, "keys")
}

// loadRows makes a rule set of rows about strings.
func loadRows(dir string, rows []string) (*ruleset.RuleSet, error) {
	text := "requirements:\n"
	for i, row := range rows {
		text += fmt.Sprintf("  - {id: drawn/row-%d, title: t, level: shall, subject: strings, %s, source: {document: test, how: house rule}}\n", i, row)
	}
	dir = filepath.Join(dir, "drawn")
	if err := os.Mkdir(dir, 0o755); err != nil {
		return nil, err
	}
	const manifest = `name: drawn
title: t
version: 0.1.0
parameters:
  one_third: {title: t, value: 0.333333333333, source: {document: test, how: house rule}}
  said: {title: t, value: b, source: {document: test, how: house rule}}
`
	if err := os.Mkdir(filepath.Join(dir, "tables"), 0o755); err != nil {
		return nil, err
	}
	for name, text := range map[string]string{"ruleset.yaml": manifest, "pvstring.yaml": text, "tables/drawn.yaml": drawnTable} {
		if err := os.WriteFile(filepath.Join(dir, name), []byte(text), 0o644); err != nil {
			return nil, err
		}
	}
	return ruleset.Load(context.Background(), policies.FS, dir)
}

// drawFacts draws some strings and an installation, of which any fact that rows
// look at may be unknown.
func drawFacts(t *rapid.T) *facts.Facts {
	f := catalogue.Blank()
	draw := func(of *catalogue.Subject, id string) {
		plain := map[string]any{}
		for _, fact := range of.Facts {
			if name := strings.TrimPrefix(catalogue.FullName(of.Name, fact.Name), "strings."); !slices.Contains(drawn, name) {
				continue
			}
			if rapid.IntRange(0, 3).Draw(t, "unknown") == 0 {
				continue
			}
			switch fact.Kind {
			case catalogue.Number:
				plain[fact.Name] = rapid.SampledFrom(values).Draw(t, fact.Name)
			case catalogue.Flag:
				plain[fact.Name] = rapid.Bool().Draw(t, fact.Name)
			case catalogue.Text:
				from := []string{"a", "b", "c"}
				if strings.HasSuffix(fact.Name, "date") {
					from = dates
				}
				plain[fact.Name] = rapid.SampledFrom(from).Draw(t, fact.Name)
			}
		}
		of.Put(f, id, plain)
	}
	draw(catalogue.Installation(), catalogue.Whole)
	of, _ := catalogue.Of("strings")
	for i := range rapid.IntRange(1, 3).Draw(t, "strings") {
		draw(of, fmt.Sprintf("S%d", i+1))
	}
	return f
}

// askOPA asks opa, by the files that are written for it, which comparisons are
// broken: number and part.
func askOPA(t *rapid.T, set *ruleset.RuleSet, f *facts.Facts) map[string]bool {
	dir, err := os.MkdirTemp("", "opa")
	if err != nil {
		t.Fatal(err)
	}
	defer os.RemoveAll(dir)
	query, err := set.WriteForOPA(dir, f)
	if err != nil {
		t.Fatal(err)
	}
	var data map[string]any
	var input any
	readJSON(t, filepath.Join(dir, "rules", "data.json"), &data)
	readJSON(t, filepath.Join(dir, "input.json"), &input)
	options := []func(*rego.Rego){rego.Query(query), rego.Input(input), rego.Store(inmem.NewFromObject(data)), rego.SetRegoVersion(ast.RegoV1)}
	modules, _ := filepath.Glob(filepath.Join(dir, "rules", "*.rego"))
	for _, name := range modules {
		text, err := os.ReadFile(name)
		if err != nil {
			t.Fatal(err)
		}
		options = append(options, rego.Module(name, string(text)))
	}
	answers, err := rego.New(options...).Eval(context.Background())
	if err != nil || len(answers) != 1 {
		t.Fatal(err, len(answers))
	}
	broken := map[string]bool{}
	for _, pair := range answers[0].Bindings["broken"].([]any) {
		p := pair.([]any)
		broken[fmt.Sprint(p[0], " ", p[1])] = true
	}
	return broken
}

func readJSON(t *rapid.T, name string, into any) {
	raw, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	d := json.NewDecoder(strings.NewReader(string(raw)))
	d.UseNumber()
	if err := d.Decode(into); err != nil {
		t.Fatal(err)
	}
}
