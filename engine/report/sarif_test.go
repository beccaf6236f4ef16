package report_test

import (
	"bytes"
	"encoding/json"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/santhosh-tekuri/jsonschema/v5"

	"sunclause/engine/judge"
	"sunclause/engine/report"
)

// sarifOf reads a SARIF report back after holding it to the published schema.
func sarifOf(t testing.TB, text []byte) map[string]any {
	t.Helper()
	const name = "sarif-schema-2.1.0.json"
	c := jsonschema.NewCompiler()
	c.AssertFormat = true
	if err := c.AddResource(name, bytes.NewReader(read(t, "../../testdata/published/"+name))); err != nil {
		t.Fatal(err)
	}
	s, err := c.Compile(name)
	if err != nil {
		t.Fatal(err)
	}
	var v any
	if err := json.Unmarshal(text, &v); err != nil {
		t.Fatal(err)
	}
	if err := s.Validate(v); err != nil {
		t.Errorf("%#v", err)
	}
	return at(v, "runs", 0).(map[string]any)
}

// at follows member names and numbers of items.
func at(v any, path ...any) any {
	for _, p := range path {
		switch p := p.(type) {
		case string:
			v = v.(map[string]any)[p]
		case int:
			v = v.([]any)[p]
		}
	}
	return v
}

// TestSARIFKeepsItsSchema holds reports to the schema that OASIS publishes, and
// makes sure that the schema is one that refuses.
func TestSARIFKeepsItsSchema(t *testing.T) {
	for _, results := range [][]*judge.Result{
		{shed(t)},
		{result(t, "gb-island-cottage")},
		{result(t, "gb-island-cottage-faulty")},
		{shed(t), shed(t)},
	} {
		sarifOf(t, written(t, "sarif", report.Options{Version: "0.0.0"}, results...))
	}
	wrong := strings.Replace(string(written(t, "sarif", report.Options{}, shed(t))), `"kind": "fail"`, `"kind": "poor"`, 1)
	var silent silence
	silent.TB = t
	sarifOf(&silent, []byte(wrong))
	if !silent.failed {
		t.Error("the schema lets a kind pass that there is not")
	}
}

// silence is a test that may fail.
type silence struct {
	testing.TB
	failed bool
}

func (s *silence) Errorf(string, ...any) { s.failed = true }

// TestSARIFSaysWhatWasFound looks at each finding of the small job.
func TestSARIFSaysWhatWasFound(t *testing.T) {
	run := sarifOf(t, written(t, "sarif", report.Options{}, shed(t)))
	type found struct {
		rule, level, subject string
		line                 float64
		suppressed           bool
	}
	var got []found
	for _, r := range run["results"].([]any) {
		_, suppressed := r.(map[string]any)["suppressions"]
		got = append(got, found{
			at(r, "ruleId").(string), at(r, "level").(string), at(r, "properties", "subject").(string),
			at(r, "locations", 0, "physicalLocation", "region", "startLine").(float64), suppressed,
		})
		if rule := at(run, "tool", "driver", "rules", int(at(r, "ruleIndex").(float64)), "id"); rule != at(r, "ruleId") {
			t.Errorf("%s has the index of %s", at(r, "ruleId"), rule)
		}
	}
	want := []found{
		{"formats/dwellings-only", "error", "installation", 1, true},
		{"formats/fuse-standard", "warning", "S1", 14, false},
		{"formats/modules-few", "error", "S2", 15, false},
		{"formats/voltage-within", "error", "S3", 16, false},
	}
	if d := cmp.Diff(want, got, cmp.AllowUnexported(found{})); d != "" {
		t.Error(d)
	}
	if line := at(run, "results", 3, "relatedLocations", 0, "physicalLocation", "region", "startLine"); line != 7.0 {
		t.Errorf("what is missing would stand on line %v", line)
	}
	if says := at(run, "invocations", 0, "toolExecutionNotifications", 0, "message", "text"); says == nil {
		t.Error("the note on a departure that fits nothing is missing")
	}
}

// TestSARIFStrict makes a should count where the check counted it.
func TestSARIFStrict(t *testing.T) {
	r := judged(t, "shed.json", read(t, formats+"job.json"), judge.Options{Strict: true})
	run := sarifOf(t, written(t, "sarif", report.Options{Strict: true}, r))
	if level := at(run, "results", 1, "level"); level != "error" {
		t.Errorf("level %s", level)
	}
}

// TestSARIFVoidDeparture makes sure that a departure that does not count hides
// nothing.
func TestSARIFVoidDeparture(t *testing.T) {
	raw := strings.Replace(string(read(t, formats+"job.json")), `"date": "2026-03-01"},`, `"date": "2026-01-01", "until": "2026-02-01"},`, 1)
	run := sarifOf(t, written(t, "sarif", report.Options{}, judged(t, "shed.json", []byte(raw), judge.Options{})))
	first := at(run, "results", 0)
	if _, ok := first.(map[string]any)["suppressions"]; ok {
		t.Error("a departure that has ended suppresses")
	}
	if says := at(first, "message", "text").(string); !strings.Contains(says, "it does not count: it ended on 2026-02-01") {
		t.Error(says)
	}
}

// TestSARIFFingerprints makes sure that a finding is known again after lines
// have moved and values have changed, and that no two share a fingerprint.
func TestSARIFFingerprints(t *testing.T) {
	prints := func(raw string) []string {
		var all []string
		run := sarifOf(t, written(t, "sarif", report.Options{}, judged(t, "shed.json", []byte(raw), judge.Options{})))
		for _, r := range run["results"].([]any) {
			all = append(all, at(r, "partialFingerprints", "requirementAndSubject/v1").(string))
		}
		return all
	}
	before := string(read(t, formats+"job.json"))
	after := "\n\n" + strings.Replace(before, `"modules_in_series": 10`, `"modules_in_series": 12`, 1)
	if d := cmp.Diff(prints(before), prints(after)); d != "" {
		t.Error(d)
	}
	seen := map[string]bool{}
	for _, p := range prints(before) {
		if seen[p] {
			t.Error("two findings share a fingerprint")
		}
		seen[p] = true
	}
}

// TestSARIFPlaces makes sure that any name of a document becomes a URI.
func TestSARIFPlaces(t *testing.T) {
	for name, uri := range map[string]string{
		"jobs/shed.json":     "jobs/shed.json",
		"/var/jobs/a b.json": "file:///var/jobs/a%20b.json",
		"C:/jobs/a.json":     "file:///C:/jobs/a.json",
		"a:b.json":           "./a:b.json",
		"x\"#?%[1].json":     "x%22%23%3F%25%5B1%5D.json",
		"standard input":     "standard%20input",
	} {
		run := sarifOf(t, written(t, "sarif", report.Options{}, judged(t, name, read(t, formats+"job.json"), judge.Options{})))
		if got := at(run, "artifacts", 0, "location", "uri"); got != uri {
			t.Errorf("%s: %s, not %s", name, got, uri)
		}
	}
}
