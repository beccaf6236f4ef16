package report_test

import (
	"strings"
	"testing"

	"sunclause/engine/report"
)

// TestEitherWayIsAGroup holds that every report for people tells what is met
// although it is not known to apply, names what is missing, and says nothing of
// the kind where there is none.
func TestEitherWayIsAGroup(t *testing.T) {
	r := eitherWay(t)
	for format, heading := range map[string]string{"text": "Met whether they apply or not\n", "markdown": "### Met whether they apply or not\n", "html": ">Met whether they apply or not</h2>"} {
		_, group, found := strings.Cut(string(written(t, format, report.Options{Width: 200}, r)), heading)
		if !found {
			t.Errorf("%s has no group of what holds either way", format)
			continue
		}
		for _, want := range []string{"overcurrent.fitted", "2 requirements are met at string S1, string S2, string S3", "formats/modules-few"} {
			if !strings.Contains(group, want) {
				t.Errorf("%s does not say %s: %.300s", format, want, group)
			}
		}
		if strings.Contains(string(written(t, format, report.Options{}, shed(t))), "whether they apply or not") {
			t.Errorf("%s tells of it where there is none", format)
		}
	}
	if text := string(written(t, "text", report.Options{Width: 200}, r)); !strings.Contains(text, "4 of the met whether they apply or not") {
		t.Errorf("the counts do not tell: %.300s", text)
	}
}
