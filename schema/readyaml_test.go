package schema_test

import (
	"errors"
	"fmt"
	"math"
	"strings"
	"testing"
	"time"

	"sunclause/schema"
)

// page is a mirror for the small texts of these tests.
type page struct {
	schema.Pointer
	A    schema.Text            `json:"a"`
	N    schema.Number          `json:"n"`
	F    schema.Flag            `json:"f"`
	List []schema.Text          `json:"list"`
	By   map[string]schema.Text `json:"by"`
	Any  any                    `json:"any"`
}

func TestYAMLRefused(t *testing.T) {
	for _, c := range []struct{ name, text, want string }{
		{"empty", "", "1:1: the text is empty; remove the file, or write what it is for"},
		{"only a remark", "# nothing\n", "1:1: the text is empty; remove the file, or write what it is for"},
		{"not UTF-8", "a: \"\xff\"", "1:1: the text is not UTF-8; save it as UTF-8"},
		{"anchor", "b: 1\na: &x y", "2:4: a: an anchor or alias (& or *); write the value out; put a text that begins so in quotes"},
		{"merge key", "a:\n  <<: {b: c}", "2:3: a: a member name that is not a plain word; write the name of the member as it stands in the guide"},
		{"tag", "a: !!str 1", "1:4: a: a tag \"!!str\"; write the value without it; put a text that begins with ! in quotes"},
		{"tag of one's own", "a: !run x", "1:4: a: a tag \"!run\"; write the value without it; put a text that begins with ! in quotes"},
		{"list for a name", "? [a]\n: b", "1:3: the document: a member name that is not a plain word; write the name of the member as it stands in the guide"},
		{"hexadecimal", "n: 0x10", "1:4: n: the number 0x10; write it as a plain decimal number, or in quotes if it is a text"},
		{"octal", "n: 0o17", "1:4: n: the number 0o17; write it as a plain decimal number, or in quotes if it is a text"},
		{"leading zero", "n: 017", "1:4: n: the number 017; write it as a plain decimal number, or in quotes if it is a text"},
		{"underscore", "n: 1_000", "1:4: n: the number 1_000; write it as a plain decimal number, or in quotes if it is a text"},
		{"infinite", "n: .inf", "1:4: n: the number .inf; write it as a plain decimal number, or in quotes if it is a text"},
		{"no number", "n: .nan", "1:4: n: the number .nan; write it as a plain decimal number, or in quotes if it is a text"},
		{"plus", "n: +5", "1:4: n: the number +5; write it as a plain decimal number, or in quotes if it is a text"},
		{"exponent", "n: 1e300", "1:4: n: the number 1e300 is out of any range that a quantity can have; write it as a plain decimal number"},
		{"member twice", "a: x\nn: 1\na: y", "3:1: member \"a\" stands twice in the document; the first is on line 1; keep one of the two"},
		{"two documents", "a: x\n---\na: y", "1:1: a second document begins after ---; one file holds one document; split it"},
		{"too deep", "any: " + strings.Repeat("[", 40) + strings.Repeat("]", 40), "1:37: lists and objects stand more than 32 deep one in the other; no rule set needs that"},
		{"position in characters", "any: [\"é°\", *x]", ""},
	} {
		t.Run(c.name, func(t *testing.T) {
			var p page
			_, err := schema.ReadYAML("x.yaml", []byte(c.text), "", &p)
			var problems schema.Problems
			if !errors.As(err, &problems) {
				t.Fatalf("got %v, want problems", err)
			}
			if c.want != "" && problems.Error() != "x.yaml:"+c.want {
				t.Errorf("got  %v\nwant x.yaml:%s", problems, c.want)
			}
		})
	}
}

func TestYAMLBroken(t *testing.T) {
	for _, text := range []string{"a: [", "a: b: c", "\ta: b", "a: 'x", "a: *nobody", "a: \"\x00\""} {
		var p page
		_, err := schema.ReadYAML("x.yaml", []byte("n: 1\n"+text), "", &p)
		if err == nil || !strings.HasPrefix(err.Error(), "x.yaml:") || !strings.Contains(err.Error(), "this is not YAML: ") {
			t.Errorf("%q: %v", text, err)
		}
	}
}

func TestYAMLRead(t *testing.T) {
	text := "a: yes\nn: -4.5e1\nf: True\nlist: [no, '5', 2026-03-02]\nby:\n  \"é\": ~\n  y: |\n    two\n    lines\nany: {x: [1, on]}\n"
	var p page
	src, err := schema.ReadYAML("x.yaml", []byte(text), "", &p)
	if err != nil {
		t.Fatal(err)
	}
	if !p.A.Is("yes") || p.N.Value != -45 || !p.F.Yes() || len(p.List) != 3 {
		t.Errorf("read %+v", p)
	}
	for i, want := range []string{"no", "5", "2026-03-02"} {
		if !p.List[i].Is(want) {
			t.Errorf("list[%d] is %q, want %q", i, p.List[i].Value, want)
		}
	}
	if p.By["é"].Stated() || !p.By["y"].Is("two\nlines\n") {
		t.Errorf("by %+v", p.By)
	}
	for pointer, want := range map[string]schema.Position{
		"/a": {1, 4}, "/list/2": {4, 17}, "/by/é": {6, 8}, "/by/y": {7, 6}, "/any/x/1": {10, 14}, "/by/none": {6, 3},
	} {
		if got := src.Position(pointer); got != want {
			t.Errorf("%s: got %v, want %v", pointer, got, want)
		}
	}
}

// TestYAMLHeldAgainstSchema makes sure that a rule set is told what is wrong
// with it in the same way as a document.
func TestYAMLHeldAgainstSchema(t *testing.T) {
	var p page
	_, err := schema.ReadYAML("ruleset.yaml", []byte("name: House\ntitle: x\nversion: 1.0\nextend: iec\n"), schema.RuleSetSchema, &p)
	want := strings.Join([]string{
		`ruleset.yaml:1:7: name (name of the set; its requirements are called name/…): found "House", allowed small letters, digits and -, beginning with a letter; did you mean "house"?`,
		`ruleset.yaml:3:10: version (version of the set, as in 1.2.0): found 1.0, allowed a text in quotes; put it in quotes: "1.0"`,
		`ruleset.yaml:4:1: the document has no member "extend"; did you mean "extends" (set that it builds on: the name of an embedded one, or ./ or ../ and a folder)?`,
	}, "\n")
	if err == nil || err.Error() != want {
		t.Errorf("got\n%v\nwant\n%s", err, want)
	}
}

func TestReadCard(t *testing.T) {
	good := map[string]any{"id": "iec/some-rule", "level": "shall", "subject": "strings", "source": map[string]any{"document": "a book", "how": "memory"}}
	var p struct {
		schema.Pointer
		ID schema.Text `json:"id"`
	}
	if err := schema.ReadCard("x.rego", 7, good, &p); err != nil || !p.ID.Is("iec/some-rule") {
		t.Errorf("%v, %v", p, err)
	}
	good["since"] = time.Date(2026, 3, 2, 0, 0, 0, 0, time.UTC) // an unquoted date
	if err := schema.ReadCard("x.rego", 7, good, &p); err != nil {
		t.Error(err)
	}
	for _, odd := range []any{math.Inf(1), math.NaN(), 5, uint64(5), -1.5, nil, []any{1}, time.Date(2026, 3, 2, 10, 0, 0, 0, time.UTC)} {
		good["level"] = odd
		err := schema.ReadCard("x.rego", 7, good, &p)
		if err == nil || !strings.HasPrefix(err.Error(), `x.rego:7:1: level (how binding it is): found `) {
			t.Errorf("level %v: %v", odd, err)
		}
	}
}

// TestYAMLHostile makes sure that a small text cannot cost much.
func TestYAMLHostile(t *testing.T) {
	if testing.Short() {
		t.Skip("takes its time")
	}
	const size = 1<<20 - 100
	bomb := "a0: &a0 [x, x, x, x, x, x, x, x, x, x]\n"
	for i := 1; i < 12; i++ {
		bomb += fmt.Sprintf("a%d: &a%d [%s*a%d]\n", i, i, strings.Repeat(fmt.Sprintf("*a%d, ", i-1), 9), i-1)
	}
	for name, text := range map[string]string{
		"aliases":        bomb,
		"aliases merged": "a: &a {b: c}\nd:\n" + strings.Repeat("  <<: *a\n", size/10),
		"too long":       strings.Repeat("# \n", 1<<20),
		"one line":       "any: [" + strings.Repeat("é,", size/3) + "é]",
		"brackets":       strings.Repeat("[", size),
		"indents":        strings.Repeat("- ", size/2),
		"questions":      strings.Repeat("? ", size/2),
		"braces":         strings.Repeat("{a: ", size/4),
		"duplicates":     strings.Repeat("a: 1\n", size/5),
		"odd numbers":    "any: [" + strings.Repeat("0x1,", size/4) + "1]",
		"long name":      strings.Repeat("n", size) + ": 1",
		"long text":      "n: 0" + strings.Repeat("1", size),
	} {
		t.Run(name, func(t *testing.T) {
			var p page
			start := processorTime(t)
			_, err := schema.ReadYAML("x.yaml", []byte(text), "", &p)
			took := processorTime(t) - start
			t.Logf("%v: %.150v", took.Round(time.Millisecond), err)
			if took > 30*time.Second {
				t.Errorf("took %v", took)
			}
			if err != nil && len(err.Error()) > 30_000 {
				t.Errorf("told %d bytes", len(err.Error()))
			}
		})
	}
}
