package report_test

import (
	"bytes"
	"encoding/json"
	"fmt"
	"io"
	"reflect"
	"slices"
	"testing"

	"github.com/google/go-cmp/cmp"

	"sunclause/engine/judge"
	"sunclause/engine/report"
	"sunclause/engine/ruleset"
	"sunclause/facts/working"
	"sunclause/schema"
)

// jsonReport is version 3 of the report as a program would read it. Its members
// stand in the order in which they are written, so that what is read and
// written again has the same bytes.
type jsonReport struct {
	ReportVersion int `json:"report_version"`
	Document      struct {
		Path      string `json:"path"`
		SHA256    string `json:"sha256"`
		Reference string `json:"reference"`
		Stage     string `json:"stage"`
	} `json:"document"`
	RuleSets []struct {
		Name    string              `json:"name"`
		Version string              `json:"version"`
		SHA256  string              `json:"sha256"`
		Layers  []ruleset.LayerInfo `json:"layers"`
		Changes []ruleset.Change    `json:"changes"`
	} `json:"rule_sets"`
	Summary  report.Counts `json:"summary"`
	Passes   bool          `json:"passes"`
	Unlikely []struct {
		At        string           `json:"at"`
		Name      string           `json:"name"`
		Line      int              `json:"line"`
		Column    int              `json:"column"`
		Value     json.Number      `json:"value"`
		Plausible string           `json:"plausible"`
		Message   string           `json:"message"`
		Often     string           `json:"often,omitempty"`
		Ground    string           `json:"ground"`
		Source    string           `json:"source,omitempty"`
		Departure *judge.Departure `json:"departure,omitempty"`
	} `json:"unlikely"`
	Requirements  []jsonCard `json:"requirements"`
	Parts         []jsonPart `json:"parts"`
	NotApplicable []struct {
		Requirements []string `json:"requirements"`
		Parts        []string `json:"parts"`
	} `json:"not_applicable"`
	Unjudged []struct {
		Member string `json:"member"`
		At     string `json:"at"`
		Places int    `json:"places"`
	} `json:"judged_by_no_rule,omitempty"`
	Notes    []string `json:"notes"`
	Cautions []string `json:"cautions"`
}

type jsonCard struct {
	ID         string           `json:"id"`
	Title      string           `json:"title"`
	Room       string           `json:"room"`
	Level      ruleset.Level    `json:"level"`
	List       string           `json:"list"`
	Measure    string           `json:"measure,omitempty"`
	Comparison string           `json:"comparison,omitempty"`
	Limit      *jsonLimit       `json:"limit,omitempty"`
	AnyOf      []jsonCompared   `json:"any_of,omitempty"`
	Remedy     string           `json:"remedy"`
	Source     working.Source   `json:"source"`
	Changes    []ruleset.Change `json:"changes,omitempty"`
}

type jsonCompared struct {
	Measure    string     `json:"measure"`
	Comparison string     `json:"comparison"`
	Limit      *jsonLimit `json:"limit"`
}

type jsonLimit struct {
	Fact      string   `json:"fact,omitempty"`
	Parameter string   `json:"parameter,omitempty"`
	Cell      string   `json:"cell,omitempty"`
	Factor    *float64 `json:"factor,omitempty"`
	Value     any      `json:"value,omitempty"`
	Unit      string   `json:"unit,omitempty"`
}

type jsonPart struct {
	ID       string        `json:"id"`
	Name     string        `json:"name"`
	At       string        `json:"at"`
	Line     int           `json:"line"`
	Column   int           `json:"column"`
	Outcomes []jsonOutcome `json:"outcomes"`
}

type jsonOutcome struct {
	Requirement string           `json:"requirement"`
	Outcome     judge.Outcome    `json:"outcome"`
	EitherWay   bool             `json:"holds_either_way,omitempty"`
	Measure     string           `json:"measure,omitempty"`
	Comparison  string           `json:"comparison,omitempty"`
	Value       any              `json:"value,omitempty"`
	Unit        string           `json:"unit,omitempty"`
	Limit       any              `json:"limit,omitempty"`
	LimitUnit   string           `json:"limit_unit,omitempty"`
	MarginPct   *float64         `json:"margin_pct,omitempty"`
	Message     string           `json:"message,omitempty"`
	Missing     []string         `json:"missing,omitempty"`
	Reasons     []working.Gap    `json:"reasons,omitempty"`
	Departure   *judge.Departure `json:"departure,omitempty"`
}

// readReport reads a JSON report and holds that an encoder would write the same
// bytes.
func readReport(t *testing.T, text []byte) jsonReport {
	t.Helper()
	var out jsonReport
	d := json.NewDecoder(bytes.NewReader(text))
	d.DisallowUnknownFields()
	if err := d.Decode(&out); err != nil {
		t.Fatal(err)
	}
	var again bytes.Buffer
	e := json.NewEncoder(&again)
	e.SetEscapeHTML(false)
	if err := e.Encode(out); err != nil {
		t.Fatal(err)
	}
	if !bytes.Equal(again.Bytes(), text) {
		t.Errorf("an encoder writes otherwise: %s", cmp.Diff(string(text), again.String()))
	}
	return out
}

// TestJSONStatesEverything holds that a program can work out from the report
// every judgment there was, and that the report keeps to its schema.
func TestJSONStatesEverything(t *testing.T) {
	if testing.Short() {
		t.Skip("takes its time")
	}
	results := map[string]*judge.Result{"shed": shed(t)}
	for _, name := range []string{"gb-island-cottage", "gb-island-cottage-faulty"} {
		results[name] = result(t, name)
	}
	results["either way"] = eitherWay(t)
	for name, r := range results {
		var text bytes.Buffer
		if err := report.JSON(&text, r, report.Options{}); err != nil {
			t.Fatal(err)
		}
		if err := schema.Validate(name, text.Bytes(), schema.ReportSchema); err != nil {
			t.Errorf("%s: %v", name, err)
		}
		got, want := statedBy(t, readReport(t, text.Bytes())), judgmentsOf(r)
		slices.Sort(got)
		slices.Sort(want)
		if d := cmp.Diff(want, got); d != "" {
			t.Errorf("%s: the report states other outcomes (- judged, + stated): %s", name, d)
		}
	}
}

// statedBy writes a line for every outcome of a report, with the limit looked up
// where the outcome leaves it to the requirement.
func statedBy(t *testing.T, r jsonReport) []string {
	t.Helper()
	cards := map[string]jsonCard{}
	for _, q := range r.Requirements {
		cards[q.ID] = q
	}
	var all []string
	for _, p := range r.Parts {
		for _, o := range p.Outcomes {
			q := cards[o.Requirement]
			limit, unit := o.Limit, o.LimitUnit
			if unit == "" {
				unit = o.Unit
			}
			if q.Limit != nil && q.Limit.Fact == "" && q.Limit.Cell == "" && q.Limit.Factor == nil {
				limit, unit = q.Limit.Value, o.Unit
				if q.Limit.Parameter != "" {
					unit = q.Limit.Unit
				}
			}
			says := o.Message
			if o.Outcome == judge.Met {
				says = ""
			}
			all = append(all, outcomeLine(q, p.ID, p.At, p.Line, p.Column, o.Outcome, o.EitherWay, o.Value, o.Unit, limit, unit, o.MarginPct, says, o.Missing, o.Reasons, o.Departure))
		}
	}
	for _, idle := range r.NotApplicable {
		for _, p := range idle.Parts {
			for _, id := range idle.Requirements {
				all = append(all, "not applicable: "+cards[id].ID+" "+p)
			}
		}
	}
	return all
}

// judgmentsOf writes the same lines of the judgments themselves.
func judgmentsOf(r *judge.Result) []string {
	var all []string
	for _, j := range r.Judgments {
		if j.Outcome == judge.NotApplicable {
			all = append(all, "not applicable: "+j.Requirement.ID+" "+j.Subject.ID)
			continue
		}
		var value, limit any
		var unit, limitUnit, says string
		if m := j.Measured; m != nil {
			value, unit = m.Value, m.Unit
		}
		limitUnit = unit
		if l := j.Limit; l != nil {
			limit, limitUnit = l.Value, l.Unit
		}
		if j.IsFinding() {
			says = j.Describe()
		}
		q := jsonCard{ID: j.Requirement.ID, Title: j.Requirement.Title, Room: j.Requirement.Room, Level: j.Requirement.Level, Remedy: j.Requirement.Remedy, Source: j.Requirement.Source}
		all = append(all, outcomeLine(q, j.Subject.ID, j.Subject.At, j.Position.Line, j.Position.Column, j.Outcome, j.EitherWay, value, unit, limit, limitUnit, j.MarginPct, says, working.Pointers(j.Missing), working.Doubts(j.Missing), j.Departure))
	}
	return all
}

func outcomeLine(q jsonCard, more ...any) string {
	line := fmt.Sprintln(q.ID, q.Title, q.Room, q.Level, q.Remedy, q.Source)
	for _, m := range more {
		if v := reflect.ValueOf(m); v.IsValid() && v.Kind() == reflect.Pointer && !v.IsNil() {
			m = v.Elem().Interface()
		}
		line += fmt.Sprint(m) + "\n"
	}
	return line
}

// TestJSONIsHandedOn holds that a report is written in pieces as it comes, and
// that one which cannot be written is an error.
func TestJSONIsHandedOn(t *testing.T) {
	r := result(t, "gb-island-cottage")
	var w pieces
	if err := report.JSON(&w, r, report.Options{}); err != nil {
		t.Fatal(err)
	}
	if w.count < 5 || w.largest > 200_000 {
		t.Errorf("%d pieces, the largest of %d bytes", w.count, w.largest)
	}
	if err := report.JSON(full{}, r, report.Options{}); err == nil {
		t.Error("a report that cannot be written is no error")
	}
}

type pieces struct{ count, largest int }

func (p *pieces) Write(text []byte) (int, error) {
	p.count++
	p.largest = max(p.largest, len(text))
	return len(text), nil
}

type full struct{}

func (full) Write([]byte) (int, error) { return 0, io.ErrShortWrite }

// eitherWay is the small job where of what is met some is not known to apply.
func eitherWay(t testing.TB) *judge.Result {
	t.Helper()
	r := shed(t)
	n := 0
	for i := range r.Judgments {
		if j := &r.Judgments[i]; j.Outcome == judge.Met && j.Requirement.Room == "pvstring" {
			j.EitherWay, j.Missing = true, []working.Gap{working.Unstated("/strings/0/overcurrent/fitted")}
			n++
		}
	}
	if n < 2 {
		t.Fatal("less than two of the small job are met")
	}
	return r
}
