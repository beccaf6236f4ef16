package report_test

import (
	"bytes"
	"fmt"
	"strings"
	"testing"

	"sunclause/engine/judge"
	"sunclause/engine/report"
	"sunclause/schema/examples"
)

// result judges an example by the set gb.
func result(t testing.TB, name string) *judge.Result {
	t.Helper()
	return judgedBy(t, "gb", name, examples.Text(t, name), judge.Options{})
}

// TestTextFitsThePage makes sure that no line but one of a single word is wider
// than asked for.
func TestTextFitsThePage(t *testing.T) {
	for _, width := range []int{40, 60, 80} {
		var text bytes.Buffer
		if err := report.Text(&text, result(t, "gb-island-cottage-faulty"), report.Options{Width: width, All: true}); err != nil {
			t.Fatal(err)
		}
		for line := range strings.Lines(text.String()) {
			line = strings.TrimRight(line, "\n")
			if len([]rune(line)) > width && strings.Contains(strings.TrimSpace(line), " ") {
				t.Errorf("%d columns wide, %d wanted: %q", len([]rune(line)), width, line)
			}
		}
	}
}

// TestColourSaysNothingMore makes sure that without colour nothing is lost.
func TestColourSaysNothingMore(t *testing.T) {
	r := result(t, "gb-island-cottage-faulty")
	var plain, coloured bytes.Buffer
	if err := report.Text(&plain, r, report.Options{}); err != nil {
		t.Fatal(err)
	}
	if err := report.Text(&coloured, r, report.Options{Colour: true}); err != nil {
		t.Fatal(err)
	}
	stripped := coloured.String()
	for _, sgr := range []string{"\x1b[1m", "\x1b[2m", "\x1b[1;31m", "\x1b[33m", "\x1b[32m", "\x1b[0m"} {
		stripped = strings.ReplaceAll(stripped, sgr, "")
	}
	if stripped != plain.String() || plain.String() == coloured.String() {
		t.Error("the coloured report differs from the plain one in more than colour")
	}
}

// TestSourcesTold holds that a report says how its requirements are known, each
// that applies counted once.
func TestSourcesTold(t *testing.T) {
	r := result(t, "gb-battery")
	applies := map[string]bool{}
	for _, j := range r.Judgments {
		if j.Outcome != judge.NotApplicable {
			applies[j.Requirement.ID] = true
		}
	}
	var text bytes.Buffer
	if err := report.Text(&text, r, report.Options{Width: 400}); err != nil {
		t.Fatal(err)
	}
	var total, verified, read, memory, definition, practice int
	_, line, _ := strings.Cut(text.String(), "sources of the ")
	if _, err := fmt.Sscanf(line, "%d requirements that apply: %d verified, %d read second-hand, %d from memory, %d by definition, %d common practice", &total, &verified, &read, &memory, &definition, &practice); err != nil {
		t.Fatalf("%v: %.120s", err, line)
	}
	if total != len(applies) || verified+read+memory+definition+practice != total {
		t.Errorf("%d requirements, %d apply: %d, %d, %d, %d, %d", total, len(applies), verified, read, memory, definition, practice)
	}
}
