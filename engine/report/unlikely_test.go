package report_test

import (
	"bytes"
	"strings"
	"testing"

	"sunclause/engine/judge"
	"sunclause/engine/record"
	"sunclause/engine/report"
	"sunclause/facts"
	"sunclause/schema"
)

// TestUnlikelyIsToldFirst holds that every format tells of an unlikely value
// before it tells of any requirement, and that an accepted one stays visible.
func TestUnlikelyIsToldFirst(t *testing.T) {
	sound := read(t, formats+"job.json")
	raw := bytes.Replace(sound, []byte(`"temp_max_c": 30`), []byte(`"temp_max_c": 2.8`), 1)
	accepted := bytes.Replace(raw, []byte(`"departures": [`), []byte(`"departures": [{"member": "/site/temp_max_c", "value": 2.8, "reason": "looked up again", "author": "surveyor", "date": "2026-03-01"},`), 1)
	r, a := judged(t, "job.json", raw, judge.Options{}), judged(t, "job.json", accepted, judge.Options{})
	for format, before := range map[string]string{
		"text": "formats/", "html": "formats/", "json": `"requirements"`, "markdown": "formats/", "junit": `testcase classname="formats/`, "sarif": `"ruleId": "formats/`,
	} {
		text := string(written(t, format, report.Options{Width: 400}, r))
		first, tells := strings.Index(text, before), strings.Index(text, "site.temp_max_c is 2.8; plausible is from 20 to 41")
		if tells < 0 || first < 0 || tells > first {
			t.Errorf("%s tells of the unlikely value at %d, of the rest at %d", format, tells, first)
		}
		if text = string(written(t, format, report.Options{Width: 400}, a)); !strings.Contains(text, "looked up again") {
			t.Errorf("%s does not tell of the accepted value", format)
		}
	}
	for doc, want := range map[*judge.Result]string{r: "UNLIKELY, LOOK AGAIN\n  site.temp_max_c is 2.8", a: "looked up again"} {
		var text bytes.Buffer
		if err := report.FactsText(&text, doc.Document, facts.Derive(&doc.Document.Installation, doc.RuleSet.Book), report.FactSelection{Summary: true}, report.Options{Width: 400}); err != nil {
			t.Fatal(err)
		}
		if !strings.Contains(text.String(), want) || strings.Index(text.String(), want) > strings.Index(text.String(), "installation:") {
			t.Errorf("the facts begin with %.300s", text.String())
		}
	}
	if first := report.JobOf(r, report.Options{}).First[0]; !strings.HasPrefix(first.What, "Unlikely, look again: site.temp_max_c") || first.Line != 3 {
		t.Errorf("to be put right first: %+v", first)
	}
	var text bytes.Buffer
	if err := report.JSON(&text, r, report.Options{}); err != nil {
		t.Fatal(err)
	}
	if err := schema.Validate("report", text.Bytes(), schema.ReportSchema); err != nil {
		t.Error(err)
	}
	if c := report.Compare(recordOf(r), recordOf(a), false); len(c.Unlikely) != 1 || !c.Unlikely[0].Matters() || !c.Otherwise() {
		t.Errorf("compared: %+v", c.Unlikely)
	}
	text.Reset()
	if err := report.Record(&text, recordOf(a)); err != nil {
		t.Fatal(err)
	}
	back, err := record.Read("record.json", text.Bytes())
	if err != nil {
		t.Fatal(err)
	}
	if came := record.Reproduce(back, recordOf(a)); !came.Identical {
		t.Errorf("%+v", came)
	}
	back.Unlikely[0].Value = "3"
	if record.Reproduce(back, recordOf(a)).Identical {
		t.Error("another unlikely value is not seen")
	}
}
