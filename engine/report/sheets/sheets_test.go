package sheets_test

import (
	"bytes"
	"context"
	"encoding/csv"
	"encoding/xml"
	"errors"
	"io"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"sunclause/engine/judge"
	"sunclause/engine/report"
	"sunclause/engine/report/sheets"
	"sunclause/engine/ruleset"
	"sunclause/policies"
	"sunclause/schema"
	"sunclause/schema/examples"
)

func checked(t testing.TB, name string) *judge.Result {
	t.Helper()
	return checkedText(t, examples.Text(t, name))
}

func checkedText(t testing.TB, text []byte) *judge.Result {
	t.Helper()
	doc, err := schema.Decode("installation.json", text)
	if err != nil {
		t.Fatal(err)
	}
	set, err := ruleset.Load(context.Background(), policies.FS, "gb")
	if err != nil {
		t.Fatal(err)
	}
	r, err := judge.Check(context.Background(), set, doc, judge.Options{})
	if err != nil {
		t.Fatal(err)
	}
	return r
}

func sheetOf(t testing.TB, r *judge.Result, name string) sheets.Sheet {
	t.Helper()
	for _, s := range sheets.Of(r) {
		if s.Name == name {
			return s
		}
	}
	t.Fatalf("there is no sheet %s", name)
	return sheets.Sheet{}
}

// TestSheets holds figures of the cottage's sheets against values worked out by
// hand from its document: 8 modules of 38.8 V and 14.2 A at STC, factor 1.15 for
// the cold and 1.25 for the current (2006 guide, 2.1.2), −0.25 %/K.
func TestSheets(t *testing.T) {
	r := checked(t, "gb-island-cottage")
	for _, c := range []struct{ sheet, row, column, want string }{
		{"strings", "S1", "voltage at STC", "310.4 V"},                       // 8 · 38.8
		{"strings", "S1", "maximum voltage", "356.96 V"},                     // 1.15 · 310.4
		{"strings", "S1", "design current", "17.75 A"},                       // 1.25 · 14.2
		{"strings", "S1", "power", "3520 W"},                                 // 8 · 440
		{"cables", "R2", "length", "8.7 m"},                                  // 6.5 + 2.2
		{"cables", "R2", "design current", "17.75 A"},                        // of the string it carries
		{"cables", "R2", "live with all isolators open", "yes: in daylight"}, // it lies before the isolator
		{"cables", "R3", "live with all isolators open", "no"},               // it lies behind it
		{"tests", "S1", "insulation test voltage", "500 V"},                  // 1.25 · 310.4 = 388 V, between 120 and 500 V
		{"tests", "S1", "least resistance", "1 MΩ"},                          // IEC 62446-1, table of insulation tests
		{"expected-readings", "S1", "voltage at 1000 W/m²", "322.04 V"},      // 310.4 · (1 + 0.0025 · 15) at 10 °C
		{"expected-readings", "S1", "current at 1000 W/m²", "14.1 A"},        // 14.2 · (1 − 0.00045 · 15)
	} {
		s := sheetOf(t, r, c.sheet)
		column := slices.Index(s.Columns, c.column)
		row := slices.IndexFunc(s.Rows, func(row []string) bool { return row[0] == c.row })
		if column < 0 || row < 0 {
			t.Errorf("%s has no row %s or no column %s", c.sheet, c.row, c.column)
		} else if got := s.Rows[row][column]; got != c.want {
			t.Errorf("%s, %s, %s: %s, want %s", c.sheet, c.row, c.column, got, c.want)
		}
	}
}

// TestLiveRuns holds the cable sheet to the circuit of the battery's example: no run
// that anything feeds with every isolator open may be called dead.
func TestLiveRuns(t *testing.T) {
	s := sheetOf(t, checked(t, "gb-battery"), "cables")
	want := map[string]string{
		"R1": "yes: in daylight", "R3": "no", // before and behind the DC isolator
		"R15": "yes: from the battery", "R16": "no", // before and behind the battery's
		"R8": "yes: from the supply", "R7": "no", // towards the board, and towards the inverter
		"R10": "", // bonding
	}
	for _, row := range s.Rows {
		if w, named := want[row[0]]; named && row[9] != w {
			t.Errorf("run %s: %q, want %q", row[0], row[9], w)
		}
	}
}

// A run between a string and the inverter does not become dead by being called one for
// bonding.
func TestLiveRunCalledBonding(t *testing.T) {
	text := examples.Text(t, "gb-island-cottage")
	called := bytes.Replace(text, []byte(`"to": "J1.1", "service": "pv_string"`), []byte(`"to": "J1.1", "service": "bonding"`), 1)
	if bytes.Equal(called, text) {
		t.Fatal("the example has no such run")
	}
	for _, row := range sheetOf(t, checkedText(t, called), "cables").Rows {
		if row[0] == "R1" && row[9] != "yes: in daylight" {
			t.Errorf("R1: %q", row[9])
		}
	}
}

// TestSheetsWhole makes sure that each sheet of each example has rows, all of the
// width of its heading, the cautions, and no word of the program's own kind.
func TestSheetsWhole(t *testing.T) {
	for _, name := range []string{"gb-island-cottage", "gb-island-cottage-faulty", "gb-battery"} {
		for _, s := range sheets.Of(checked(t, name)) {
			if len(s.Rows) == 0 {
				t.Errorf("%s: sheet %s is empty", name, s.Name)
			}
			for _, row := range s.Rows {
				if len(row) != len(s.Columns) {
					t.Errorf("%s: sheet %s has a row of %d cells under %d columns: %q", name, s.Name, len(row), len(s.Columns), row)
				}
			}
			for _, c := range report.Cautions {
				if !slices.Contains(s.Notes, c) {
					t.Errorf("%s: sheet %s lacks a caution", name, s.Name)
				}
			}
		}
	}
}

// A job that does not pass says so on every sheet.
func TestSheetsOfAFaultyJob(t *testing.T) {
	for _, s := range sheets.Of(checked(t, "gb-island-cottage-faulty")) {
		if !strings.Contains(strings.Join(s.Notes, "\n"), "does not pass") {
			t.Errorf("sheet %s does not say that the job does not pass", s.Name)
		}
	}
}

// TestAnyCell writes texts that mean something to Markdown or a spreadsheet: the
// table keeps its cells, CSV reads back, and no cell begins like a formula.
func TestAnyCell(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		text := rapid.StringOfN(rapid.RuneFrom([]rune("=+-@|`*_#<>[]()\\\"',;1a \n\t\r")), 0, 30, -1).Draw(rt, "text")
		s := sheets.Sheet{Name: "x", Title: "x", Columns: []string{"a", "b", "c"}, Rows: [][]string{{text, "2", text}}}
		var markdown, table bytes.Buffer
		if s.Markdown(&markdown) != nil || s.CSV(&table) != nil {
			rt.Fatal("cannot be written")
		}
		lines := strings.Split(strings.TrimSuffix(markdown.String(), "\n"), "\n")
		last := strings.ReplaceAll(strings.ReplaceAll(lines[len(lines)-1], `\\`, ""), `\|`, "")
		if strings.Count(last, "|") != 4 || strings.ContainsAny(last, "<\r\t") {
			rt.Errorf("%q: %s", text, last)
		}
		records, err := csv.NewReader(&table).ReadAll()
		if err != nil || len(records) != 2 || len(records[1]) != 3 {
			rt.Fatalf("%q: %v %q", text, err, records)
		}
		if c := records[1][0]; c != "" && strings.ContainsRune("=+@\t\r", rune(c[0])) {
			rt.Errorf("%q begins like a formula", c)
		}
	})
}

// TestPages reads the pages strictly, as XML with the entities of HTML, with
// markup wherever the document has words for a label or a name for the job.
func TestPages(t *testing.T) {
	r := checked(t, "gb-island-cottage")
	const hostile = "<script>alert(1)</script>\"'> \u202egnirts </style>"
	r.Document.Installation.Project.Reference.Value = hostile
	for i := range r.Document.Installation.Labels {
		r.Document.Installation.Labels[i].Text.Value = hostile
	}
	var page, labels bytes.Buffer
	if err := sheets.Page(&page, r, sheets.Of(r)); err != nil {
		t.Fatal(err)
	}
	if err := sheets.Stickers(&labels, r); err != nil {
		t.Fatal(err)
	}
	for name, text := range map[string]string{"page": page.String(), "labels": labels.String()} {
		d := xml.NewDecoder(strings.NewReader(text))
		d.Entity = xml.HTMLEntity
		seen := map[string]int{}
		for {
			token, err := d.Token()
			if errors.Is(err, io.EOF) {
				break
			}
			if err != nil {
				t.Fatalf("%s: %v", name, err)
			}
			if e, ok := token.(xml.StartElement); ok {
				seen[e.Name.Local]++
			}
		}
		if seen["script"] > 0 || seen["style"] != 1 || strings.ContainsRune(text, '\u202e') {
			t.Errorf("%s: text of the document became markup: %v", name, seen)
		}
		if name == "page" && (seen["section"] != len(sheets.Of(r)) || seen["svg"] < 6) {
			t.Errorf("page: %d sheets, %d drawings", seen["section"], seen["svg"])
		}
		if name == "labels" && seen["figcaption"] < 50 {
			t.Errorf("labels: %d", seen["figcaption"])
		}
	}
}

// TestFoundOnSheets holds that a sheet says beside a part what the check found
// there, that labels say when the job does not pass, that both tell of unlikely
// values, and that a sound job has none of it.
func TestFoundOnSheets(t *testing.T) {
	for name, wanted := range map[string]bool{"gb-island-cottage-faulty": true, "gb-island-cottage": false} {
		r := checked(t, name)
		told := map[string]string{}
		s := sheetOf(t, r, "fixings")
		for _, row := range s.Rows {
			if len(row) != len(s.Columns) {
				t.Fatalf("%s: %d cells under %d columns", name, len(row), len(s.Columns))
			}
			told[row[3]] = row[len(row)-1]
		}
		if got := told["SEF05"]; strings.Contains(got, "rafter") != wanted {
			t.Errorf("%s: beside SEF05 stands %q", name, got)
		}
		var page bytes.Buffer
		if err := sheets.Stickers(&page, r); err != nil {
			t.Fatal(err)
		}
		if strings.Contains(page.String(), "does not pass") != wanted {
			t.Errorf("%s: labels say that the job does not pass: %t, want %t", name, !wanted, wanted)
		}
		const words = "not printed, since the words are wrong"
		if strings.Contains(page.String(), words) != wanted {
			t.Errorf("%s: a label with wrong words is left out: %t, want %t", name, !wanted, wanted)
		}
		const unlikely = "Unlikely, look again: datasheets.modules.mod440.voc_coeff_pct_per_k is -0.097"
		if notes := strings.Join(s.Notes, "\n"); strings.Contains(notes, unlikely) != wanted || strings.Contains(page.String(), unlikely) != wanted {
			t.Errorf("%s: sheets and labels tell of the unlikely value: %t, want %t", name, !wanted, wanted)
		}
	}
}
