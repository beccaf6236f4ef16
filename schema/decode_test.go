package schema_test

import (
	"errors"
	"fmt"
	"strings"
	"testing"

	"sunclause/schema"
)

const job = `"project": {"reference": "X", "stage": "design", "country": "GB"}`

// told decodes a text and gives back the lines that it is refused with.
func told(t *testing.T, text string) []string {
	t.Helper()
	_, err := schema.Decode("x.json", []byte(text))
	if err == nil {
		return nil
	}
	var problems schema.Problems
	if !errors.As(err, &problems) {
		t.Fatalf("refused with %T, not with problems: %v", err, err)
	}
	return strings.Split(err.Error(), "\n")
}

func TestDecodeRefuses(t *testing.T) {
	deep := strings.Repeat("[", 40) + strings.Repeat("]", 40)
	for _, c := range []struct {
		name, text string
		want       []string // what each line has, in order; all lines
	}{
		{"members twice, every one of them", `{` + job + `, "site": {"temp_min_c": 1, "temp_min_c": 2, "temp_max_c": 3, "temp_max_c": 4}}`,
			[]string{`1:95: member "temp_min_c" stands twice in site`, `1:129: member "temp_max_c" stands twice in site`}},
		{"an exponent that would crash exact arithmetic", `{` + job + `, "site": {"temp_min_c": 1e2000000}}`, []string{"1:92: "}},
		{"a tiny number", `{` + job + `, "site": {"temp_min_c": 1e-400}}`, []string{"1:92: "}},
		{"a number of 400 digits", `{` + job + `, "site": {"temp_min_c": ` + strings.Repeat("9", 400) + `}}`, []string{"1:92: "}},
		{"too deep", `{` + job + `, "labels": ` + deep + `}`, []string{"deep"}},
		{"nothing", "", []string{"1:1: the text is empty"}},
		{"blanks only", " \n", []string{"the text is empty"}},
		{"null", "null", []string{"the document is null"}},
		{"a list", "[]", []string{"allowed an object"}},
		{"text after the end", `{` + job + `} {}`, []string{"more text after the end"}},
		{"a byte order mark", "\ufeff{" + job + "}", []string{"byte order mark"}},
		{"not UTF-8", "{" + job + ", \"site\": {\"note\": \"\xff\"}}", []string{"1:"}},
		{"null member", `{` + job + `, "site": {"temp_min_c": null}}`, []string{"leave the member out if it is not known"}},
		{"column counted in characters", `{"project": {"reference": "äöü", "stage": "desing", "country": "GB"}}`, []string{`1:43: project.stage`}},
		{"in document order", `{"project": {"country": "gb", "stage": "x", "reference": ""}}`, []string{"project.country", "project.stage", "project.reference"}},
		{"coefficient in both units", `{` + job + `, "datasheets": {"modules": {"M": {"technology": "mono_si", "pmax_w": 1, "voc_v": 1, "isc_a": 1, "vmp_v": 1, "imp_a": 1, "voc_coeff_pct_per_k": -0.3, "voc_coeff_v_per_k": -0.1}}}}`,
			[]string{"datasheets.modules.M.voc_coeff_v_per_k states what"}},
		{"a run from a part to itself", `{` + job + `, "ac": {"supply": {"id": "SUP"}}, "cables": [{"id": "C", "from": "SUP", "to": "SUP", "service": "ac"}]}`, []string{"where it begins"}},
		{"a board's terminal", `{` + job + `, "ac": {"boards": [{"id": "B", "ways": [{"id": "1"}]}], "supply": {"id": "SUP"}}, "cables": [{"id": "C", "from": "SUP", "to": "B.7", "service": "ac"}]}`, []string{"it has B.in, B.1"}},
		{"an array's terminal", `{` + job + `, "arrays": [{"id": "A", "ways": 2}], "ac": {"supply": {"id": "SUP"}}, "cables": [{"id": "C", "from": "SUP", "to": "A.3", "service": "pv_array"}]}`, []string{"it has A.1, A.2, A.out"}},
		{"a reference to the wrong kind of part", `{` + job + `, "ac": {"supply": {"id": "SUP"}}, "isolators": [{"id": "I", "circuit": "ac", "ways": [{"id": "1"}], "built_into": "SUP"}]}`, []string{`"SUP" is the id of a supply`}},
	} {
		t.Run(c.name, func(t *testing.T) {
			lines := told(t, c.text)
			if len(lines) != len(c.want) {
				t.Fatalf("told\n%s\nwant %d lines", strings.Join(lines, "\n"), len(c.want))
			}
			for i, want := range c.want {
				if !strings.Contains(lines[i], want) {
					t.Errorf("told %q, want %q in it", lines[i], want)
				}
			}
		})
	}
}

// TestNotStated makes sure that what is left out is not zero, no or empty.
func TestNotStated(t *testing.T) {
	doc, err := schema.Decode("x.json", []byte(`{`+job+`, "isolators": [], "site": {"temp_min_c": 0, "orography_significant": false}}`))
	if err != nil {
		t.Fatal(err)
	}
	in := doc.Installation
	for _, c := range []struct {
		what string
		ok   bool
	}{
		{"zero is stated", in.Site.TempMinC.Stated() && in.Site.TempMinC.Value == 0},
		{"no is stated", in.Site.OrographySignificant.Stated() && !in.Site.OrographySignificant.Yes()},
		{"a number left out is not", !in.Site.TempMaxC.Stated()},
		{"it knows where it would stand", in.Site.TempMaxC.At() == "/site/temp_max_c"},
		{"an empty list is stated", in.Isolators != nil && len(in.Isolators) == 0},
		{"a list left out is not", in.Strings == nil},
		{"an object left out is not", !in.Earthing.Stated()},
	} {
		if !c.ok {
			t.Error("not so: " + c.what)
		}
	}
}

func TestPosition(t *testing.T) {
	doc, err := schema.Decode("x.json", []byte("{\n  "+job+",\n  \"site\": {\"temp_min_c\": -3}\n}"))
	if err != nil {
		t.Fatal(err)
	}
	for pointer, want := range map[string]schema.Position{
		"": {1, 1}, "/site": {3, 11}, "/site/temp_min_c": {3, 26}, "/site/temp_max_c": {3, 11}, "/strings/3/id": {1, 1},
	} {
		if got := doc.Position(pointer); got != want {
			t.Errorf("%q is at %v, want %v", pointer, got, want)
		}
	}
}

func TestSpoken(t *testing.T) {
	for pointer, want := range map[string]string{
		"": "the document", "/strings/0/voc_v": "strings[0].voc_v", "/a~1b/c~0d": `"a/b"."c~d"`,
	} {
		if got := schema.Spoken(pointer); got != want {
			t.Errorf("%q is spoken %q, want %q", pointer, got, want)
		}
	}
}

func TestYAMLRefuses(t *testing.T) {
	type mirror struct {
		schema.Pointer
		A schema.Text   `json:"a"`
		B schema.Number `json:"b"`
	}
	for text, want := range map[string]string{
		"a: &x y\nb: 1":          "anchor",
		"a: *x":                  "anchor",
		"a: !!str 1":             "tag",
		"b: 0x10":                "plain decimal",
		"b: .inf":                "plain decimal",
		"a: x\na: y":             "stands twice",
		"a: [":                   "YAML",
		"":                       "empty",
		"<<: {a: b}":             "",
		strings.Repeat("[", 100): "",
		"a: \"\xff\"":            "UTF-8",
	} {
		var m mirror
		_, err := schema.ReadYAML("x.yaml", []byte(text), "", &m)
		if err == nil || !strings.Contains(err.Error(), want) || !strings.HasPrefix(err.Error(), "x.yaml:") {
			t.Errorf("%q: told %v, want %q", text, err, want)
		}
	}
}

func ExampleDecode() {
	_, err := schema.Decode("job.json", []byte(`{"project": {"reference": "J1", "stage": "desing", "country": "GB"}}`))
	fmt.Println(err)
	doc, err := schema.Decode("job.json", []byte(`{"project": {"reference": "J1", "stage": "design", "country": "GB"}, "site": {"temp_min_c": -8}}`))
	fmt.Println(doc.Installation.Site.TempMinC.Value, doc.Installation.Site.TempMaxC.Stated(), err)
	// Output:
	// job.json:1:42: project.stage (how far the job has come): met "desing", allowed one of design, as_built; did you mean "design"?
	// -8 false <nil>
}
