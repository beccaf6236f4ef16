package schema

import (
	"strings"
	"testing"
)

func TestNumberNamed(t *testing.T) {
	s := GridSettings{UnderVoltage1V: NewNumber("/settings/under_voltage_1_v", 184)}
	if n, ok := NumberNamed(&s, "under_voltage_1_v"); !ok || n != s.UnderVoltage1V {
		t.Errorf("a number that is stated is %v, %t", n, ok)
	}
	if n, ok := NumberNamed(&s, "droop_pct"); !ok || n.Stated() {
		t.Errorf("a number left out is %v, %t", n, ok)
	}
	for _, name := range []string{"locked", "no_such_member", "UnderVoltage1V"} {
		if _, ok := NumberNamed(&s, name); ok {
			t.Errorf("%s is a number", name)
		}
	}
}

func TestPlaces(t *testing.T) {
	d, err := Decode("test", []byte(`{"project": {"reference": "EX", "stage": "as_built", "design_date": "2026-02-10", "premises": "dwelling", "country": "GB"}, "handover": {"start_of_work": "2026-04-27", "documents": [
		{"id": "D1", "kind": "contract", "date": "2026-02-14"}, {"id": "D2", "kind": "warranties", "given": "2026-05-07"}]},
		"commissioning": {"inspections": [{"id": "P1", "point": "labels"}], "torques": [{"id": "T1", "part": "D1", "marked": true, "date": "2026-05-05"}]}}`))
	if err != nil {
		t.Fatal(err)
	}
	for path, want := range map[string]string{
		"/handover/start_of_work":                "/handover/start_of_work= 2026-04-27",
		"/handover/end_of_work":                  "/handover/end_of_work= ",
		"/roof/survey/date":                      "/roof/survey/date= ",
		"/handover/documents/*/date":             "/handover/documents/0/date=D1 2026-02-14, /handover/documents/1/date=D2 ",
		"/handover/documents/kind=contract/date": "/handover/documents/0/date=D1 2026-02-14",
		"/commissioning/*/*/date":                "/commissioning/inspections/0/date=P1 , /commissioning/torques/0/date=T1 2026-05-05",
		"/handover/documents":                    "",
		"/handover/warranties/*/start":           "/handover/warranties= ",
		"/labels/*/date_printed":                 "/labels= ",
		"/handover/no_such_member":               "",
		"/commissioning/torques/marked=yes/part": "/commissioning/torques/0/part=T1 D1",
		"/commissioning/torques/*/marked":        "/commissioning/torques/0/marked=T1 yes",
	} {
		var got []string
		for _, p := range Places(&d.Installation, path) {
			got = append(got, p.At()+"="+p.ID.Value+" "+p.Value)
		}
		if s := strings.Join(got, ", "); s != want {
			t.Errorf("%s leads to\n%s, want\n%s", path, s, want)
		}
	}
}
