package report_test

import (
	"bytes"
	"strings"
	"testing"

	"sunclause/engine/judge"
	"sunclause/engine/record"
	"sunclause/engine/report"
	"sunclause/facts/facttest"
	"sunclause/schema"
	"sunclause/schema/examples"
)

// The examples, sound, faulty, large and of another rule set, are held to the
// published schemas of what commands write for programs.

// refusesMore are the contracts that were seen to refuse a member they do not
// know, or not to.
var refusesMore = map[string]bool{}

// held are the examples that are held to the contracts. What is written of the
// large one is the same at great length.
func held() []string {
	if facttest.Thorough() {
		return examples.Names
	}
	return []string{examples.Cottage, examples.Faulty, examples.Battery}
}

// keepsContract holds what a function writes to a published schema.
func keepsContract(t *testing.T, name, contract string, write func(*bytes.Buffer) error) {
	t.Helper()
	var text bytes.Buffer
	if err := write(&text); err != nil {
		t.Fatal(err)
	}
	if err := schema.Validate(name, text.Bytes(), contract); err != nil {
		first, _, _ := strings.Cut(err.Error(), "\n")
		t.Errorf("%s is not what %s says: %s", name, contract, first)
	}
	if !refusesMore[contract] {
		refusesMore[contract] = true
		more := append([]byte(`{"members_to_come": 1,`), text.Bytes()[1:]...)
		if schema.Validate(name, more, contract) == nil {
			t.Errorf("%s lets members pass that it does not know", contract)
		}
	}
	if n := bytes.Count(text.Bytes(), []byte("\n")); n != 1 {
		t.Errorf("%s has %d lines; one object stands on one line", name, n)
	}
}

// TestContractsAreClosed holds that the schemas whose version goes up with every
// member refuse a member that they do not know.
func TestContractsAreClosed(t *testing.T) {
	for _, contract := range []string{schema.FactsSchema, schema.RulesSchema, schema.CompareSchema, schema.CompareDocsSchema, schema.ReproduceSchema} {
		if err := schema.Validate("text", []byte(`{"members_to_come": 1}`), contract); err == nil || !strings.Contains(err.Error(), `"members_to_come"`) {
			t.Errorf("%s lets a member pass that it does not know: %v", contract, err)
		}
	}
}

func recordOf(r *judge.Result) *record.Record {
	return record.Of(r, judge.Options{}, "0.0.0", report.Cautions)
}

func TestFactsKeepTheirContract(t *testing.T) {
	if testing.Short() {
		t.Skip("takes its time")
	}
	for _, name := range held() {
		r := result(t, name)
		keepsContract(t, name, schema.FactsSchema, func(w *bytes.Buffer) error {
			return report.FactsJSON(w, r.Document, r.RuleSet, r.Facts, report.FactSelection{})
		})
	}
	r := result(t, "gb-island-cottage-faulty") // the working of all parts has more values than a document may have
	for _, part := range []string{"installation", "S1", "R5", "INV1", "SPD1", "SEF05", "SW1"} {
		keepsContract(t, part, schema.FactsSchema, func(w *bytes.Buffer) error {
			return report.FactsJSON(w, r.Document, r.RuleSet, r.Facts, report.FactSelection{Working: true, Parts: []string{part}})
		})
	}
}

func TestRulesKeepTheirContract(t *testing.T) {
	for _, name := range []string{"gb", "iec", "house-example", formats + "rules"} {
		set := loaded(t, name)
		keepsContract(t, name, schema.RulesSchema, func(w *bytes.Buffer) error {
			return report.RulesJSON(w, set, set.Requirements)
		})
	}
}

func TestComparisonOfRuleSetsKeepsItsContract(t *testing.T) {
	if testing.Short() {
		t.Skip("takes its time")
	}
	c := report.RulesCompared{Before: loaded(t, "gb"), After: loaded(t, "house-example")}
	for _, name := range held() {
		raw := examples.Text(t, name)
		before, after := judgedBy(t, "gb", name, raw, judge.Options{}), judgedBy(t, "house-example", name, raw, judge.Options{})
		one := report.Compare(recordOf(before), recordOf(after), true)
		one.Names = [2]string{name, name}
		c.Documents = append(c.Documents, one)
	}
	keepsContract(t, "gb and house-example", schema.CompareSchema, func(w *bytes.Buffer) error {
		return report.RulesComparedJSON(w, c)
	})
}

func TestComparisonOfDocumentsKeepsItsContract(t *testing.T) {
	if testing.Short() {
		t.Skip("takes its time")
	}
	sound := result(t, "gb-island-cottage")
	for _, name := range []string{"gb-island-cottage", "gb-island-cottage-faulty", "gb-battery"} {
		other := result(t, name)
		c := report.Compare(recordOf(sound), recordOf(other), true)
		members := record.CompareMembers(sound.Document, other.Document)
		keepsContract(t, name, schema.CompareDocsSchema, func(w *bytes.Buffer) error {
			return report.DocumentsJSON(w, c, members)
		})
	}
}

func TestReproductionKeepsItsContract(t *testing.T) {
	if testing.Short() {
		t.Skip("takes its time")
	}
	before := recordOf(result(t, "gb-island-cottage"))
	for _, name := range []string{"gb-island-cottage", "gb-island-cottage-faulty", "gb-battery"} {
		after := recordOf(result(t, name))
		after.Tool.Version = "0.0.1"
		keepsContract(t, name, schema.ReproduceSchema, func(w *bytes.Buffer) error {
			return report.ReproductionJSON(w, record.Reproduce(before, after), "not looked at")
		})
	}
}
