package report_test

import (
	"bytes"
	"encoding/xml"
	"strconv"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"sunclause/engine/judge"
	"sunclause/engine/report"
)

// junitOf reads a JUnit report back after holding it to the published schema.
func junitOf(t testing.TB, text []byte) node {
	t.Helper()
	var n node
	d := xml.NewDecoder(bytes.NewReader(text))
	if err := d.Decode(&n); err != nil {
		t.Fatal(err)
	}
	for _, wrong := range readXSD(t, "../../testdata/published/jenkins-junit.xsd").check(n) {
		t.Error(wrong)
	}
	return n
}

func (n node) attribute(name string) string {
	for _, a := range n.Attributes {
		if a.Name.Local == name {
			return a.Value
		}
	}
	return ""
}

// count counts elements below a node.
func (n node) count(name string) int {
	found := 0
	for _, b := range below(n) {
		if b.XMLName.Local == name {
			found++
		}
	}
	return found
}

// TestJUnitKeepsItsSchema holds reports to the published schema, and the counts
// in them to what is there.
func TestJUnitKeepsItsSchema(t *testing.T) {
	if testing.Short() {
		t.Skip("takes its time")
	}
	for _, results := range [][]*judge.Result{
		{shed(t)},
		{result(t, "gb-island-cottage")},
		{result(t, "gb-island-cottage-faulty")},
		{shed(t), shed(t)},
	} {
		all := junitOf(t, written(t, "junit", report.Options{}, results...))
		failures := 0
		for i, suite := range all.Nodes {
			failures += suite.count("failure")
			for attribute, element := range map[string]string{"tests": "testcase", "failures": "failure", "errors": "error", "skipped": "skipped"} {
				if got := suite.attribute(attribute); got != strconv.Itoa(suite.count(element)) {
					t.Errorf("%s: %s %s, but %d", suite.attribute("name"), got, attribute, suite.count(element))
				}
			}
			if fails := suite.count("failure") > 0; fails == results[i].Passes {
				t.Errorf("%s: passes is %v, with %d failures", suite.attribute("name"), results[i].Passes, suite.count("failure"))
			}
		}
		if all.attribute("failures") != strconv.Itoa(failures) {
			t.Errorf("%s failures in all, but %d", all.attribute("failures"), failures)
		}
	}
}

// TestJUnitSchemaRefuses makes sure that the test above could fail.
func TestJUnitSchemaRefuses(t *testing.T) {
	text := string(written(t, "junit", report.Options{}, shed(t)))
	for old, wrong := range map[string]string{
		`<testcase classname="formats/modules-few" name="S2">`:       `<testcase classname="formats/modules-few">`,
		`<failure type="not_met" `:                                   `<failure kind="not_met" `,
		`<skipped>does not apply</skipped>`:                          `<skipped>does not apply</skipped><skipped/>`,
		`<testcase classname="formats/modules-few" name="S1"></test`: `<testcase classname="formats/modules-few" name="S1">text</test`,
		`<testcase classname="formats/modules-few" name="S3"></test`: `<testcase classname="formats/modules-few" name="S3"><note/></test`,
		`</testsuites>`: `<properties/></testsuites>`,
	} {
		var n node
		if err := xml.Unmarshal([]byte(strings.Replace(text, old, wrong, 1)), &n); err != nil {
			t.Fatal(err)
		}
		if len(readXSD(t, "../../testdata/published/jenkins-junit.xsd").check(n)) == 0 {
			t.Errorf("the schema lets %s pass", wrong)
		}
	}
}

// TestJUnitSaysWhatWasFound looks at what each case of the small job comes to,
// with and without strict.
func TestJUnitSaysWhatWasFound(t *testing.T) {
	for strict, want := range map[bool]map[string]string{
		false: {"formats/dwellings-only installation": "skipped", "formats/fuse-standard S1": "skipped", "formats/modules-few S2": "not_met", "formats/voltage-within S3": "not_shown"},
		true:  {"formats/dwellings-only installation": "skipped", "formats/fuse-standard S1": "not_met", "formats/modules-few S2": "not_met", "formats/voltage-within S3": "not_shown"},
	} {
		r := judged(t, "shed.json", read(t, formats+"job.json"), judge.Options{Strict: strict})
		got := map[string]string{}
		for _, n := range below(junitOf(t, written(t, "junit", report.Options{Strict: strict}, r))) {
			if n.XMLName.Local != "testcase" || len(n.Nodes) == 0 || n.Nodes[0].Text == "does not apply" {
				continue
			}
			outcome := n.Nodes[0].attribute("type")
			if outcome == "" {
				outcome = n.Nodes[0].XMLName.Local
			}
			got[n.attribute("classname")+" "+n.attribute("name")] = outcome
		}
		if d := cmp.Diff(want, got); d != "" {
			t.Errorf("strict %v: %s", strict, d)
		}
	}
}
