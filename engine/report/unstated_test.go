package report_test

import (
	"bytes"
	"strings"
	"testing"

	"sunclause/engine/judge"
	"sunclause/engine/report"
)

// TestBeginsWithWhatIsNotStated holds that a document only begun gets a report
// that says what to state next, and that nothing is lost of the counts.
func TestBeginsWithWhatIsNotStated(t *testing.T) {
	raw := []byte(`{"project": {"reference": "J", "stage": "design", "country": "GB"}, "storage": {}, "isolators": []}`)
	r := judgedBy(t, "gb", "bare", raw, judge.Options{})
	members := map[string]bool{}
	for _, u := range report.AllUnstated(r) {
		members[u.Member] = true
	}
	for member, want := range map[string]bool{"earthing": true, "roof": true, "storage.batteries": true, "storage": false, "isolators": false, "project": false} {
		if members[member] != want {
			t.Errorf("%s is listed: %v", member, !want)
		}
	}
	var short, long bytes.Buffer
	if err := report.Text(&short, r, report.Options{}); err != nil {
		t.Fatal(err)
	}
	if err := report.Text(&long, r, report.Options{All: true}); err != nil {
		t.Fatal(err)
	}
	if n := strings.Count(long.String(), "NOT SHOWN"); n != report.Count(r).NotShown {
		t.Errorf("--all lists %d of %d not shown", n, report.Count(r).NotShown)
	}
	if !strings.Contains(short.String(), "Nothing is stated yet of") || strings.Count(short.String(), "\n") > 150 {
		t.Errorf("the report of a bare document does not lead:\n%s", short.String())
	}
}
