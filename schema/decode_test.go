package schema_test

import (
	"errors"
	"fmt"
	"regexp"
	"runtime"
	"slices"
	"strings"
	"syscall"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"

	"sunclause/schema"
)

// project is the least that a document must hold.
const project = `"project": {"reference": "EX", "stage": "design", "country": "GB"}`

// told decodes a text and lists what is wrong with it, a problem a line.
func told(t testing.TB, text string) []string {
	t.Helper()
	_, err := schema.Decode("x.json", []byte(text))
	if err == nil {
		return nil
	}
	var problems schema.Problems
	if !errors.As(err, &problems) {
		t.Fatalf("got %v; want problems", err)
	}
	return strings.Split(problems.Error(), "\n")
}

// refuses holds what is told of a text against the lines that are expected.
func refuses(t *testing.T, text string, want ...string) {
	t.Helper()
	if diff := cmp.Diff(want, told(t, text)); diff != "" {
		t.Errorf("%.200s (-want +got):\n%s", text, diff)
	}
}

// marked takes the mark § out of a text, and tells where it stood.
func marked(text string) (clean, place string) {
	before, after, _ := strings.Cut(text, "§")
	line := strings.Count(before, "\n") + 1
	column := len([]rune(before[strings.LastIndex(before, "\n")+1:])) + 1
	return before + after, fmt.Sprintf("x.json:%d:%d: ", line, column)
}

func TestNotJSON(t *testing.T) {
	for _, c := range []struct{ name, text, want string }{
		{"empty", "", "1:1: the text is empty; an installation is one JSON object that begins with {"},
		{"white space", " \n\t", "1:1: the text is empty; an installation is one JSON object that begins with {"},
		{"null", "null", "1:1: the document is null; an installation is one JSON object that begins with {"},
		{"list", " []", "1:2: the document: found a list of 0, allowed an object { }"},
		{"number", "5", "1:1: the document: found 5, allowed an object { }"},
		{"byte order mark", "\ufeff{}", "1:1: the text begins with a byte order mark; save the file as UTF-8 without a byte order mark"},
		{"UTF-16", "\xff\xfe{\x00}\x00", "1:1: the text is in UTF-16; save the file as UTF-8"},
		{"word processor file", "PK\x03\x04…", "1:1: this is a word processor, spreadsheet or zip file, not a JSON text; save the document as plain text"},
		{"PDF", "%PDF-1.7", "1:1: this is a PDF, not a JSON text; give the JSON document itself"},
		{"not UTF-8 in a text", "{\"°é\": \"25 \xb0C\"}", "1:12: the text is not UTF-8 here; save the file as UTF-8"},
		{"not UTF-8 outside", "{\xb0}", "1:2: the text is not UTF-8 here; save the file as UTF-8"},
		{"lone surrogate", `{"a": "\ud800"}`, "1:8: half a character stands in a text (a lone surrogate); write the character itself"},
		{"NUL bare", "{\"a\": \"\x00\"}", "1:8: the control character U+0000 stands in a text; take it out"},
		{"tab bare", "{\"a\": \"1\t2\"}", "1:9: a tab stands in a text; put a space in its place"},
		{"escape unknown", `{"a": "C:\plans"}`, `1:10: a \ stands in a text before a character it cannot go with; write \\ for a \ and \" for a quote inside a text`},
		{"text after the end", "{}\n x", "2:2: there is more text after the end of the document; one file holds one installation; remove what follows, or the bracket that closes it too early"},
		{"ends in a list", "{\"a\": [1,", "1:10: the text ends before the document does; the [ on line 1, column 7, is not closed; write the bracket that closes it"},
		{"ends in a text", `{"a": "x`, `1:7: a text begins here with " and is never closed; put the missing " at its end`},
		{"two commas", `{"a": 1,, "b": 2}`, "1:9: two commas stand in a row; take one away"},
		{"comma first", `{,"a": 1}`, "1:2: a comma stands where a value should; take the comma away, or write the value before it"},
		{"comma last", `{"a": [1, 2,]}`, "1:12: a comma stands before the closing ]; take the comma away"},
		{"comma in a number", `{"a": -12,50 }`, "1:7: a comma stands in the number -12,50; the decimal sign is a point: write -12.50"},
		{"number breaks off", `{"a": 5.}`, "1:7: a number breaks off; write it whole, as in 5 or 5.2"},
		{"number begins with a point", `{"a": .5}`, "1:7: a number begins with a point; write the 0 before it, as in 0.5"},
		{"number begins with +", `{"a": +5}`, "1:7: a number begins with +; leave the + out"},
		{"number begins with 0", `{"a": 05}`, "1:7: a number begins with 0 and goes on; leave the leading 0 out; put a number that is a name or a date in quotes"},
		{"date bare", `{"a": 2026-03-02}`, "1:11: a number goes on in a way that numbers do not; put a date, a time or a name in quotes"},
		{"per cent", `{"a": 50%}`, `1:9: found "%" after a number; write the number alone; its unit stands in the name of the member`},
		{"NaN", `{"a": NaN}`, "1:7: the word NaN stands without quotes; leave the member out if it is not known"},
		{"True", `{"a": True}`, "1:7: the word True stands without quotes; write true"},
		{"no", `{"a": no}`, "1:7: the word no stands without quotes; write false"},
		{"bare word", `{"a": mono_si}`, `1:7: the word mono_si stands without quotes; write "mono_si"`},
		{"bare name", `{a: 1}`, `1:2: the word a stands without quotes; write "a"`},
		{"number for a name", `{1: 1}`, `1:2: found "1" where a member name in quotes should stand; write "name": value`},
		{"single quotes", `{'a': 1}`, `1:2: found a single quote '; write double quotes "`},
		{"no value", `{"a": }`, "1:7: a member has no value; write its value, or leave the member out"},
		{"no value or colon", `{"a"}`, "1:5: a member has no value; write its value after a colon, or leave the member out"},
		{"equals sign", `{"a" = 1}`, `1:6: found "=" where a colon should stand; write "name": value; look for a quote too many or too few before this place`},
		{"semicolon", `{"a": 1; "b": 2}`, "1:8: found ; where a comma should stand; put a comma after the value before it"},
		{"quote inside", `{"a": "the "old" one"}`, `1:13: a text goes on after its closing quote; write a quote inside a text as \"`},
		{"hard space", "{\"a\":\u00a01}", "1:6: found a space that is not a plain one (U+00A0); type it again as a plain space"},
		{"wrong bracket", `{"a": [1}`, "1:9: found }, but the [ on line 1, column 7, is not closed yet; close that first; look for a bracket of the wrong kind, or one missing"},
	} {
		t.Run(c.name, func(t *testing.T) { refuses(t, c.text, "x.json:"+c.want) })
	}
}

func TestDuplicateMembers(t *testing.T) {
	refuses(t, `{`+project+`,
  "site": {"temp_min_c": -5, "note": "a", "temp_min_c": -6,
    "note": "b", "note": "c"},
  "site": {"note": "x", "note": "y"}
}`,
		`x.json:2:43: member "temp_min_c" stands twice in site; the first is on line 2; keep one of the two`,
		`x.json:3:5: member "note" stands twice in site; the first is on line 2; keep one of the two`,
		`x.json:3:18: member "note" stands twice in site; the first is on line 2; keep one of the two`,
		`x.json:4:3: member "site" stands twice in the document; the first is on line 2; keep one of the two`,
		`x.json:4:25: member "note" stands twice in site; the first is on line 4; keep one of the two`,
	)
}

func TestNumbers(t *testing.T) {
	for _, token := range []string{"1e2000000", "1e1000000", "-1e400", "1e-400", "1E+99999", "0e99999999", "1e16", "1e-16"} {
		text, place := marked(`{` + project + `, "site": {"temp_min_c": §` + token + `}}`)
		refuses(t, text, place+"site.temp_min_c: the number "+token+" is out of any range that a quantity can have; write it as a plain decimal number")
	}
	text, place := marked(`{` + project + `, "site": {"temp_min_c": §` + strings.Repeat("4", 400) + `}}`)
	refuses(t, text, place+"site.temp_min_c: a number of 400 characters; at most 40 are read; write it as a plain decimal number")
	for _, token := range []string{"0", "-0", "0.0e5", "1e1", "-4.35", "12.500"} {
		if got := told(t, `{`+project+`, "site": {"temp_min_c": `+token+`}}`); got != nil {
			t.Errorf("%s: %s", token, got)
		}
	}
}

func TestDepth(t *testing.T) {
	nested := func(n int) string {
		return strings.Repeat("[", n) + strings.Repeat("]", n)
	}
	refuses(t, nested(32), "x.json:1:1: the document: found a list of one, allowed an object { }")
	refuses(t, nested(33), "x.json:1:33: lists and objects stand more than 32 deep one in the other; no document needs that; look for brackets too many")
	refuses(t, `{"a":1,"a":`+nested(32)+`}`,
		`x.json:1:8: member "a" stands twice in the document; the first is on line 1; keep one of the two`,
		"x.json:1:43: lists and objects stand more than 32 deep one in the other; no document needs that; look for brackets too many")
}

func TestSize(t *testing.T) {
	if testing.Short() {
		t.Skip("takes its time")
	}
	refuses(t, strings.Repeat(" ", 192<<20+1),
		"x.json:1:1: the text has 201326593 bytes; at most 201326592 are read; split the job into several documents")
}

// TestMembers holds texts with one fault each, marked with §, against what is
// told of it.
func TestMembers(t *testing.T) {
	for _, c := range []struct{ name, text, want string }{
		{"number for text", `{"project": {"reference": §12, "stage": "design", "country": "GB"}}`,
			`project.reference (reference of the job): found 12, allowed a text in quotes; put it in quotes: "12"`},
		{"text for yes or no", `{"project": {"reference": "EX", "stage": "design", "country": "GB", "certification_scheme": §"yes"}}`,
			`project.certification_scheme (whether the job is certified under an installer scheme): found "yes", allowed true or false; write true, without quotes`},
		{"null member", `{` + project + `, "site": §null}`,
			"site (what the place brings with it): found null, allowed an object { }; leave the member out if it is not known"},
		{"null item", `{` + project + `, "strings": [§null]}`,
			"strings[0] (PV modules in series): found null, allowed an object { }; leave the member out if it is not known"},
		{"unknown and near", `{` + project + `, §"sites": {}}`,
			`the document has no member "sites"; did you mean "site"?`},
		{"unknown and far", `{` + project + `, §"weather": {}}`,
			`the document has no member "weather"; remove it`},
		{"unknown and far, with room for a note", `{` + project + `, "site": {§"weather": "wet"}}`,
			`site has no member "weather"; remove it, or put what it says into note`},
		{"near word", `{"project": {"reference": "EX", "stage": §"As-Built", "country": "GB"}}`,
			`project.stage (how far the job has come): found "As-Built", allowed one of design, as_built; did you mean "as_built"?`},
		{"missing", `{"project": §{"reference": "EX", "country": "GB"}}`,
			`project lacks "stage" (how far the job has come); add it`},
		{"empty text", `{` + project + `, "site": {"note": §""}}`,
			`site.note (a short text, at most 2000 characters): found "", allowed a text that is not empty`},
		{"fraction in per cent", `{` + project + `, "site": {"albedo_fraction": §20}}`,
			"site.albedo_fraction (reflectance of the ground or roof in front of bifacial modules): found 20, allowed 1 or less; if that is in %, write 0.2"},
		{"part of a module", `{` + project + `, "strings": [{"id": "S1", "module": "m", "modules_in_series": §7.5}]}`,
			"strings[0].modules_in_series (modules in series): found 7.5, allowed a whole number; leave out what follows the point"},
		{"control character", `{` + project + `, "site": {"note": §"red \u001b[31m"}}`,
			"site.note: the text holds the control character U+001B; take it out"},
		{"NUL", `{` + project + `, "site": {"note": §"\u0000"}}`,
			"site.note: the text holds the control character U+0000; take it out"},
		{"control character in a name", `{` + project + `, §"\u001b[31m": 1}`,
			`the document has no member "\x1b[31m"; remove it`},
		{"control character in a word", `{"project": {"reference": "EX", "stage": "design", "country": §"\u001b"}}`,
			`project.country: the text holds the control character U+001B; take it out`},
		{"key that is no id", `{` + project + `, "datasheets": {"batteries": {§"cell é/%~": {"energy_kwh": 5}}}}`,
			`datasheets.batteries: found the key "cell é/%~", allowed letters, digits, - and _, at most 40; unique in the document; give it such a key`},
		{"empty key", `{` + project + `, "datasheets": {"batteries": {§"": {"energy_kwh": 5}}}}`,
			`datasheets.batteries: found the key "", allowed letters, digits, - and _, at most 40; unique in the document; give it such a key`},
		{"long text", `{` + project + `, "site": {"terrain": §"` + strings.Repeat("é", 100) + `"}}`,
			`site.terrain (terrain category of EN 1991-1-4): found "` + strings.Repeat("é", 40) + `…", allowed one of 0, I, II, III, IV, sea, country, town`},
	} {
		t.Run(c.name, func(t *testing.T) {
			text, place := marked(c.text)
			refuses(t, text, place+c.want)
		})
	}
}

// parts is a document with a part of each kind that has terminals, into which
// a test puts a fault.
const parts = `{
  "project": {"reference": "EX", "stage": "design", "country": "GB"},
  "datasheets": {
    "modules": {"m": {"technology": "mono_si", "pmax_w": 440, "voc_v": 38.8, "isc_a": 14, "vmp_v": 32, "imp_a": 13}},
    "inverters": {"i": {"kind": "hybrid", "dc_voltage_max_v": 600, "ac_power_rated_w": 5000, "phases": 1, "mppts": [{"voltage_min_v": 90, "voltage_max_v": 520, "isc_max_a": 22}]}},
    "cables": {"c": {"kind": "multicore", "csa_mm2": 6, "conductor": "copper"}},
    "batteries": {"b": {"energy_kwh": 5}}
  },
  "strings": [{"id": "S1", "module": "m", "modules_in_series": 7}],
  "arrays": [{"id": "A1", "ways": 2}],
  "isolators": [{"id": "Q1", "circuit": "pv_dc", "ways": [{"id": "1"}]}],
  "inverters": [{"id": "INV1", "datasheet": "i"}],
  "ac": {
    "supply": {"id": "SUP"},
    "meters": [{"id": "M1"}],
    "boards": [{"id": "B1", "ways": [{"id": "7"}]}],
    "changeovers": [{"id": "X1"}]
  },
  "storage": {"batteries": [{"id": "BAT", "datasheet": "b"}]},
  "earthing": {},
  "labels": [],
  "spds": [],
  "cables": [
    {"id": "C1", "from": "FROM", "to": "SUP", "service": "SERVICE", "cable": "c", "segments": [{"length_m": 3}]}
  ]
}`

func TestReferences(t *testing.T) {
	run := func(from, service string) string {
		return strings.NewReplacer(`"FROM"`, `"`+from+`"`, "SERVICE", service).Replace(parts)
	}
	for _, from := range []string{"S1", "A1.1", "A1.2", "A1.out", "Q1.1.in", "Q1.1.out", "INV1.1", "INV1.battery", "INV1.ac", "INV1.backup",
		"M1.in", "M1.out", "B1.in", "B1.7", "X1.grid", "X1.source", "X1.load", "BAT", "BAT.ac"} {
		if got := told(t, run(from, "ac")); got != nil {
			t.Errorf("%s: %s", from, strings.Join(got, "\n"))
		}
	}
	for from, want := range map[string]string{
		"S1.1":     `the string S1 has no terminal "S1.1"; write "S1"`,
		"A1.3":     `the array A1 has no terminal "A1.3"; it has A1.1, A1.2, A1.out`,
		"Q1.in":    `the isolator Q1 has no terminal "Q1.in"; it has Q1.1.in, Q1.1.out`,
		"Q1.2.in":  `the isolator Q1 has no terminal "Q1.2.in"; it has Q1.1.in, Q1.1.out`,
		"INV1.2":   `the inverter INV1 has no terminal "INV1.2"; it has INV1.1, INV1.battery, INV1.ac, INV1.backup`,
		"M1.load":  `the meter M1 has no terminal "M1.load"; it has M1.in, M1.out`,
		"B1.8":     `the board B1 has no terminal "B1.8"; it has B1.in, B1.7`,
		"X1.in":    `the changeover X1 has no terminal "X1.in"; it has X1.grid, X1.source, X1.load`,
		"BAT.dc":   `the battery BAT has no terminal "BAT.dc"; it has BAT.ac`,
		"C1.start": `the run of cable C1 has no terminal "C1.start"; write "C1"`,
		"INV1":     `the inverter INV1 has several terminals, and the run must say which; it has INV1.1, INV1.battery, INV1.ac, INV1.backup`,
		"INV9.ac":  `there is no part with the id "INV9"; did you mean "INV1"?`,
		"B7":       `there is no part with the id "B7"; did you mean "B1"?`,
	} {
		refuses(t, run(from, "ac"), `x.json:24:26: cables[0].from: `+want)
	}
	if got := told(t, run("INV1", "protective")); got != nil {
		t.Errorf("a protective conductor may end at the body of a part: %s", got)
	}
	refuses(t, run("SUP", "ac"), fmt.Sprintf("x.json:24:%d: cables[0].to: run C1 ends at SUP, where it begins; name the terminal at its other end", 39))
}

// sound is parts without a fault.
var sound = strings.NewReplacer(`"FROM"`, `"INV1.ac"`, "SERVICE", "ac").Replace(parts)

// TestReferencesByKind puts one fault, marked with §, into a sound document.
func TestReferencesByKind(t *testing.T) {
	for _, c := range []struct{ name, old, put, want string }{
		{"datasheet", `"module": "m"`, `"module": §"m440"`, `strings[0].module: there is no datasheet "m440" among the modules; there is only m`},
		{"part that is not there", `"module": "m", `, `"module": "m", "plane": §"P1", `, `strings[0].plane: there is no roof plane with the id "P1"; describe it, or leave the member out`},
		{"part of another kind", `"circuit": "pv_dc", `, `"circuit": "pv_dc", "built_into": §"S1", `, `isolators[0].built_into: "S1" is the id of a string; the id of an inverter is wanted here; there is only INV1`},
		{"any part", `"labels": []`, `"labels": [{"id": "L1", "legend": "dc_isolator", "on": §"INV2"}]`, `labels[0].on: there is no part with the id "INV2"; did you mean "INV1"?`},
		{"any parts", `"labels": []`, `"labels": [{"id": "L1", "legend": "dc_isolator", "on": "INV1", "parts_named": ["INV1", §"INV2"]}]`, `labels[0].parts_named[1]: there is no part with the id "INV2"; did you mean "INV1"?`},
		{"id twice", `"id": "M1"`, `"id": §"INV1"`, `id "INV1" stands twice; the first is on line 12; give each part an id of its own`},
		{"coefficient twice", `"imp_a": 13`, `"imp_a": 13, "voc_coeff_pct_per_k": -0.25, "voc_coeff_v_per_k": §-0.1`, `datasheets.modules.m.voc_coeff_v_per_k states what datasheets.modules.m.voc_coeff_pct_per_k has stated already; keep the one that the sheet prints`},
		{"current coefficient twice", `"imp_a": 13`, `"imp_a": 13, "isc_coeff_a_per_k": §0.006, "isc_coeff_pct_per_k": 0.04`, `datasheets.modules.m.isc_coeff_a_per_k states what datasheets.modules.m.isc_coeff_pct_per_k has stated already; keep the one that the sheet prints`},
		{"bend twice", `"csa_mm2": 6, `, `"csa_mm2": 6, "bend_radius_min_diameters": 4, "bend_radius_min_mm": §20, `, `datasheets.cables.c.bend_radius_min_mm states what datasheets.cables.c.bend_radius_min_diameters has stated already; keep the one that the sheet prints`},
		{"label nowhere", `"labels": []`, `"labels": [{"id": §"L1", "legend": "dc_isolator"}]`, `label L1 does not say where it hangs; name a part (on), a run of cable (run) or a location`},
		{"label in two places", `"labels": []`, `"labels": [{"id": "L1", "legend": "dc_isolator", "location": §"origin", "on": "INV1"}]`, `labels[0].location: label L1 hangs somewhere else already, by labels[0].on; keep one of the two, or describe two labels`},
		{"position along no run", `"labels": []`, `"labels": [{"id": "L1", "legend": "dc_isolator", "on": "INV1", "position_m": §2}]`, `labels[0].position_m: a position is measured along a run, and label L1 names none; name the run, or leave the position out`},
		{"word far from a long list", `"labels": []`, `"labels": [{"id": "L1", "legend": §"dc_isolater"}]`, `labels[0].legend (what it says, as a word of the label lists of the rule sets): found "dc_isolater", allowed one of LEGENDS words; did you mean "dc_isolator"?`},
	} {
		t.Run(c.name, func(t *testing.T) {
			if !strings.Contains(sound, c.old) {
				t.Fatalf("%s is not in the document", c.old)
			}
			text, place := marked(strings.Replace(sound, c.old, c.put, 1))
			got := legends.ReplaceAllString(strings.Join(told(t, text), "\n"), "one of LEGENDS words")
			if want := place + c.want; got != want {
				t.Errorf("got  %s\nwant %s", got, want)
			}
		})
	}
}

// legends hides how many legends there are, which grows.
var legends = regexp.MustCompile(`one of \d+ words`)

// TestWaysAreLocal makes sure that the ways of two devices may be numbered alike.
func TestWaysAreLocal(t *testing.T) {
	text := strings.Replace(sound, `"ways": [{"id": "7"}]`, `"ways": [{"id": "1"}, {"id": "2"}]`, 1)
	if got := told(t, text); got != nil {
		t.Error(got)
	}
}

func TestOrder(t *testing.T) {
	text := `{"zzzzzz": 1, "project": {"stage": 5}, "project": 1,
 "site": {"temp_min_c": "x", "temp_max_c": 1e999}, "strings": 3}`
	first := told(t, text)
	if len(first) != 8 {
		t.Errorf("%d problems, want 8:\n%s", len(first), strings.Join(first, "\n"))
	}
	var places []int
	for _, line := range first {
		var row, column int
		if _, err := fmt.Sscanf(line, "x.json:%d:%d:", &row, &column); err != nil {
			t.Fatal(err)
		}
		places = append(places, row*1000+column)
	}
	if !slices.IsSorted(places) {
		t.Errorf("not in the order of the document:\n%s", strings.Join(first, "\n"))
	}
	for range 20 {
		if diff := cmp.Diff(first, told(t, text)); diff != "" {
			t.Fatalf("told otherwise the next time:\n%s", diff)
		}
	}
}

func TestColumnsCountCharacters(t *testing.T) {
	const told = `site.temp_min_c (lowest expected ambient temperature): found "x", allowed a number`
	text, place := marked("{" + project + ",\r\n\t\"site\": {\"note\": \"−9,4 °C 🏝\", \"temp_min_c\": §\"x\"}}")
	refuses(t, text, place+told)
	text, place = marked(`{` + project + `, "site": {"note": "` + strings.Repeat("é", 2000) + `", "wind_source": "` + strings.Repeat("°", 1999) + `", "temp_min_c": §"x"}}`)
	refuses(t, text, place+told)
}

func TestPosition(t *testing.T) {
	doc, err := schema.Decode("x.json", []byte(sound))
	if err != nil {
		t.Fatal(err)
	}
	for pointer, want := range map[string]schema.Position{
		"":                        {1, 1},
		"/strings":                {9, 14},
		"/strings/0":              {9, 15},
		"/strings/0/id":           {9, 22},
		"/strings/0/note":         {9, 15}, // not stated: the string that would have it
		"/strings/7/id":           {9, 14},
		"/nothing":                {1, 1},
		"/ac/boards/0/ways/0/id":  {16, 45},
		"/datasheets/modules/m":   {4, 22},
		"/datasheets/modules/m/x": {4, 22},
	} {
		if got := doc.Position(pointer); got != want {
			t.Errorf("%s: got %v, want %v", pointer, got, want)
		}
	}
	placed := schema.Placed("rules.rego", "", 40)
	if got := placed.Position("/level"); got != (schema.Position{Line: 40, Column: 1}) {
		t.Errorf("placed on line 40: got %v", got)
	}
	if got := placed.ProblemAt("/level", "level is not known", "").Error(); got != "rules.rego:40:1: level is not known" {
		t.Error(got)
	}
}

func TestSpoken(t *testing.T) {
	for pointer, want := range map[string]string{
		"":                                       "the document",
		"/strings":                               "strings",
		"/strings/0/voc_v":                       "strings[0].voc_v",
		"/cables/12/segments/3":                  "cables[12].segments[3]",
		"/datasheets/modules/mod-440":            "datasheets.modules.mod-440",
		"/a~1b/c~0d":                             `"a/b"."c~d"`,
		"/\x1b[31m":                              `"\x1b[31m"`,
		"/" + strings.Repeat("long", 20) + "/id": strings.Repeat("long", 10) + "….id",
		"/":                                      `""`,
	} {
		if got := schema.Spoken(pointer); got != want {
			t.Errorf("%q: got %s, want %s", pointer, got, want)
		}
	}
}

// TestNotStated makes sure that a member left out is told from zero, no and
// the empty list.
func TestNotStated(t *testing.T) {
	doc, err := schema.Decode("x.json", []byte(`{`+project+`, "site": {"temp_min_c": 0, "orography_significant": false}, "strings": []}`))
	if err != nil {
		t.Fatal(err)
	}
	in := doc.Installation
	site := in.Site
	if !site.TempMinC.Stated() || site.TempMinC.Value != 0 || site.TempMaxC.Stated() {
		t.Error("zero and not stated are alike")
	}
	if !site.OrographySignificant.Stated() || site.OrographySignificant.Yes() || in.Project.CertificationScheme.Stated() {
		t.Error("no and not stated are alike")
	}
	if in.Strings == nil || in.Arrays != nil {
		t.Error("the empty list and not stated are alike")
	}
	if !site.Stated() || in.AC.Stated() || in.AC.Supply.Stated() {
		t.Error("a part and one that is not stated are alike")
	}
	if got := site.TempMaxC.At(); got != "/site/temp_max_c" {
		t.Errorf("what is not stated would stand at %s", got)
	}
	if got := in.AC.Supply.Member("ze_ohm"); got != "/ac/supply/ze_ohm" {
		t.Errorf("a member of what is not stated would stand at %s", got)
	}
	if !in.Project.Stage.Is("design") || in.Project.Premises.Is("") {
		t.Error("a word that is not stated reads as one")
	}
}

func TestValues(t *testing.T) {
	if n := schema.NewNumber("/n", 3); !n.Stated() || n.Value != 3 || n.At() != "/n" {
		t.Errorf("number %v", n)
	}
	if w := schema.NewText("/w", "a"); !w.Is("a") || w.At() != "/w" {
		t.Errorf("text %v", w)
	}
	if f := schema.NewFlag("/f", true); !f.Yes() || f.At() != "/f" {
		t.Errorf("flag %v", f)
	}
	if p := schema.NewPointer("/a"); !p.Stated() || p.Member("b/c") != "/a/b~1c" {
		t.Errorf("pointer %v", p)
	}
}

func TestNearest(t *testing.T) {
	for _, c := range []struct{ word, want string }{
		{"vocv", "voc_v"}, {"VOC_V", "voc_v"}, {"isc", "isc_a"}, {"x", ""}, {"mass_kg", ""}, {strings.Repeat("voc_v", 1e6), ""},
	} {
		if got := schema.Nearest(c.word, []string{"isc_a", "voc_v", "temp_min_c"}); got != c.want {
			t.Errorf("%.20s: got %q, want %q", c.word, got, c.want)
		}
	}
}

// hostile are texts of a size made to cost much.
func hostile(size int) map[string]string {
	fill := func(head, each, tail string) string {
		return head + strings.Repeat(each, (size-len(head)-len(tail))/len(each)) + tail
	}
	numbered := func(head, format, tail string) string {
		var b strings.Builder
		b.WriteString(head)
		for i := 0; b.Len() < size-100; i++ {
			fmt.Fprintf(&b, format, i)
		}
		return b.String() + tail
	}
	deep := strings.Repeat(`{"`+strings.Repeat("n", 99)+`":`, 30)
	return map[string]string{
		"brackets":           fill("", "[", ""),
		"objects":            fill("", `{"a":`, ""),
		"zeros":              fill("[", "0,", "0]"),
		"zeros in place":     fill(`{`+project+`,"strings":[`, "0,", "0]}"),
		"objects in place":   fill(`{`+project+`,"strings":[`, "{},", "{}]}"),
		"wrong in place":     fill(`{`+project+`,"strings":[`, `{"id":0,"note":0,"module":0,"modules_in_series":"","plane":0,"mounting":0},`, "{}]}"),
		"white space":        fill("", " ", "{}"),
		"line ends":          fill("", "\n", "{}"),
		"duplicates":         fill(`{`+project, `,"site":{}`, "}"),
		"duplicate rows":     fill(`{`+project, ",\n\"site\":{}", "}"),
		"unknown members":    numbered(`{`+project, `,"m%d":0`, "}"),
		"keys that are none": numbered(`{`+project+`,"datasheets":{"modules":{"":{}`, `,"%%%d":0`, "}}}"),
		"long name":          fill(`{"`, "voc_v", `":0}`),
		"long names":         numbered(`{`+project, `,"`+strings.Repeat("temp_min_", 10)+`%d":0`, "}"),
		"long lists":         longLists(),
		"long text":          fill(`{`+project+`,"site":{"note":"`, "é", `"}}`),
		"long word":          fill(`{"project":{"reference":"EX","country":"GB","stage":"`, "design", `"}}`),
		"long number":        fill(`{`+project+`,"site":{"temp_min_c":`, "1", `}}`),
		"odd numbers":        fill(`{`+project+`,"strings":[`, "1e999999,", "0]}"),
		"control characters": fill(`{`+project+`,"strings":[`, `"\u0000",`, "0]}"),
		"deep names":         fill(deep+"[", "0,", "0]"+strings.Repeat("}", 30)),
		"same ids":           fill(`{`+project+`,"labels":[`, `{"id":"L","legend":"x"},`, `{"id":"L","legend":"x"}]}`),
		"invalid UTF-8":      fill(`{"a":"`, "\xff", ""),
	}
}

// longLists has every top list of the document as long as it can be read, with
// nothing in it that is right.
func longLists() string {
	var b strings.Builder
	b.WriteString("{" + project)
	for _, name := range []string{"strings", "arrays", "cables", "isolators", "spds", "inverters", "labels"} {
		b.WriteString(`, "` + name + `": [` + strings.Repeat(`{"id": 0, "x": 0},`, 99_999) + "{}]")
	}
	return b.String() + "}"
}

// TestHostile makes sure that a text from a stranger costs a bounded time and
// memory, and gets a short answer.
func TestHostile(t *testing.T) {
	if testing.Short() {
		t.Skip("thirty megabytes each")
	}
	for name, text := range hostile(30 << 20) {
		bounded(t, name, text)
	}
	bounded(t, "values without end", "["+strings.Repeat("["+strings.Repeat("0,", 99_999)+"0],", 900)+"0]")
	for name, text := range hostile(2 << 20) { // small enough to come as far as the schema
		bounded(t, name+", less of it", text)
	}
}

// processorTime is what this process has used of the processors. The time on the
// clock says nothing on a busy machine.
func processorTime(t *testing.T) time.Duration {
	t.Helper()
	var used syscall.Rusage
	if err := syscall.Getrusage(syscall.RUSAGE_SELF, &used); err != nil {
		t.Fatal(err)
	}
	return time.Duration(used.Utime.Nano() + used.Stime.Nano())
}

func bounded(t *testing.T, name, text string) {
	t.Run(name, func(t *testing.T) {
		var before, after runtime.MemStats
		runtime.GC()
		runtime.ReadMemStats(&before)
		start := processorTime(t)
		lines := told(t, text)
		took := processorTime(t) - start
		runtime.ReadMemStats(&after)
		used := (after.TotalAlloc - before.TotalAlloc) >> 20
		t.Logf("%v, %d MB, %d problems: %.150s", took.Round(time.Millisecond), used, len(lines), lines[0])
		if took > 30*time.Second {
			t.Errorf("took %v", took)
		}
		if used > 2500 {
			t.Errorf("asked for %d MB", used)
		}
		if len(lines) > 101 {
			t.Errorf("%d problems", len(lines))
		}
		for _, line := range lines {
			if len(line) > 2000 {
				t.Errorf("a line of %d bytes: %.100s…", len(line), line)
			}
		}
	})
}

// TestLimits makes sure that what is far above any real installation is not
// read at all, whatever else is wrong with it.
func TestLimits(t *testing.T) {
	text, place := marked(`{` + project + `, "strings": [` + strings.Repeat("0,", 100_000) + `§0]}`)
	refuses(t, text, place+"strings has more than 100000 items; split the job into several documents")
	var b strings.Builder
	for i := range 10_000 {
		fmt.Fprintf(&b, `"n%d": 0, `, i)
	}
	text, place = marked(`{"site": {` + b.String() + `§"n": 0}}`)
	refuses(t, text, place+"site has more than 10000 members; split the job into several documents")
	lines := told(t, `{"strings": [`+strings.Repeat("1e999,", 20_000)+`0]}`)
	if last := lines[len(lines)-1]; len(lines) != 101 || !strings.Contains(last, "and more than 9900 others from here on") {
		t.Errorf("%d lines; the last: %s", len(lines), last)
	}
	text, place = marked(`{§"` + strings.Repeat("n", 101) + `": {"a": 1, "a": 2}, "project": 1e999}`)
	lines = told(t, text)
	if want := place + `a member name of 101 bytes in the document: "` + strings.Repeat("n", 40) + `…"; look for a quote missing at its end`; lines[0] != want {
		t.Errorf("got  %s\nwant %s", lines[0], want)
	}
}

func TestMoreProblems(t *testing.T) {
	text, place := marked(`{` + project + `, "strings": [` + strings.Repeat("0, ", 100) + `§0` + strings.Repeat(", 0", 149) + `]}`)
	lines := told(t, text)
	if len(lines) != 101 {
		t.Fatalf("%d lines", len(lines))
	}
	if want := place + "and 150 more problems from here on; put the first ones right and check again"; lines[100] != want {
		t.Errorf("got  %s\nwant %s", lines[100], want)
	}
}

// The segments of all runs together are bounded: each is judged by itself.
func TestSegmentsInAll(t *testing.T) {
	if testing.Short() {
		t.Skip("takes its time")
	}
	runs := func(n int) string {
		run := `{"id":"R%d","from":"INV1.1","to":"INV1.1","service":"bonding","segments":[` + strings.Repeat("{},", 199) + `{}]},`
		var text strings.Builder
		for i := range n {
			fmt.Fprintf(&text, run, i)
		}
		return `{"project":{"reference":"x","stage":"design","country":"GB"},"cables":[` + strings.TrimSuffix(text.String(), ",") + `]}`
	}
	for n, refused := range map[int]bool{250: false, 251: true} {
		_, err := schema.Decode("x.json", []byte(runs(n)))
		if got := err != nil && strings.Contains(err.Error(), "50200 segments in all; at most 50000 are read"); got != refused {
			t.Errorf("%d runs of 200 segments: refused %t, want %t", n, got, refused)
		}
	}
}
