package report_test

import (
	"bytes"
	"context"
	"flag"
	"os"
	"path/filepath"
	"strings"
	"sync"
	"testing"

	"github.com/google/go-cmp/cmp"

	"sunclause/engine/judge"
	"sunclause/engine/report"
	"sunclause/engine/ruleset"
	"sunclause/policies"
	"sunclause/schema"
)

var update = flag.Bool("update", false, "write the goldens anew")

const formats = "../../testdata/formats/"

// judged checks a document by the small rule set of testdata/formats.
func judged(t testing.TB, name string, raw []byte, o judge.Options) *judge.Result {
	t.Helper()
	return judgedBy(t, formats+"rules", name, raw, o)
}

// sets are the rule sets that tests have loaded, by name.
var sets sync.Map

// loaded gives a rule set, which is loaded once.
func loaded(t testing.TB, rules string) *ruleset.RuleSet {
	t.Helper()
	if set, ok := sets.Load(rules); ok {
		return set.(*ruleset.RuleSet)
	}
	set, err := ruleset.Load(context.Background(), policies.FS, rules)
	if err != nil {
		t.Fatal(err)
	}
	sets.Store(rules, set)
	return set
}

func judgedBy(t testing.TB, rules, name string, raw []byte, o judge.Options) *judge.Result {
	t.Helper()
	set := loaded(t, rules)
	doc, err := schema.Decode(name, raw)
	if err != nil {
		t.Fatal(err)
	}
	r, err := judge.Check(context.Background(), set, doc, o)
	if err != nil {
		t.Fatal(err)
	}
	return r
}

func read(t testing.TB, name string) []byte {
	t.Helper()
	raw, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	return raw
}

// shed is the job of testdata/formats, judged.
func shed(t testing.TB) *judge.Result {
	t.Helper()
	return judged(t, "jobs/shed.json", read(t, formats+"job.json"), judge.Options{})
}

// written gives the reports of results in a format.
func written(t testing.TB, format string, o report.Options, results ...*judge.Result) []byte {
	t.Helper()
	var text bytes.Buffer
	if err := report.Formats[format].Write(&text, results[0].RuleSet, results, o); err != nil {
		t.Fatal(err)
	}
	return text.Bytes()
}

// TestFormatsLook keeps what the reports of the small job look like. The digest
// of the rule set takes in the modules that all sets share, and is left out.
func TestFormatsLook(t *testing.T) {
	r := shed(t)
	set := *r.RuleSet
	set.SHA256 = strings.Repeat("0", 64)
	r.RuleSet = &set
	for format, name := range map[string]string{"sarif": "report.sarif", "junit": "report.junit.xml", "markdown": "report.md"} {
		got := written(t, format, report.Options{Version: "0.0.0"}, r)
		path := filepath.Join(formats, name)
		if *update {
			if err := os.WriteFile(path, got, 0o644); err != nil {
				t.Fatal(err)
			}
		}
		if d := cmp.Diff(string(read(t, path)), string(got)); d != "" {
			t.Errorf("%s differs (- kept, + now); go test ./engine/report -update writes it:\n%s", name, d)
		}
	}
}

// TestFormatsSameBytes makes sure that the same result gives the same bytes.
func TestFormatsSameBytes(t *testing.T) {
	for format := range report.Formats {
		if a, b := written(t, format, report.Options{}, shed(t)), written(t, format, report.Options{}, shed(t)); !bytes.Equal(a, b) {
			t.Errorf("%s: two reports of one job differ", format)
		}
	}
}
