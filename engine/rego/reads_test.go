package rego

import (
	"encoding/json"
	"fmt"
	"strings"
	"testing"

	"github.com/open-policy-agent/opa/v1/ast"

	"sunclause/engine/catalogue"
)

// readTypes are the types of a small input: two lists, one with a list in it,
// and the installation.
const readTypes = `{"type": "object", "additionalProperties": false, "properties": {
	"strings": {"type": "array", "items": {"type": "object", "additionalProperties": false, "properties": {
		"id": {"type": "string"}, "voc": {"type": "number"}, "isc": {"type": "number"}, "kind": {"type": "string"},
		"tags": {"type": "array", "items": {"type": "string"}},
		"segments": {"type": "array", "items": {"type": "object", "additionalProperties": false, "properties": {
			"length": {"type": "number"}, "place": {"type": "string"}}}}}}},
	"runs": {"type": "array", "items": {"type": "object", "additionalProperties": false, "properties": {
		"id": {"type": "string"}, "drop": {"type": "number"}, "kind": {"type": "string"}}}},
	"installation": {"type": "object", "additionalProperties": false, "properties": {
		"id": {"type": "string"}, "country": {"type": "string"}, "height": {"type": "number"}}}}}`

// compileReads compiles one module, house.rego, against those types.
func compileReads(text string) (*ast.Compiler, *ast.Rule, error) {
	m, err := ast.ParseModuleWithOpts("house.rego", text, ast.ParserOptions{RegoVersion: ast.RegoV2})
	if err != nil {
		return nil, nil, err
	}
	var schema any
	if err := json.Unmarshal([]byte(readTypes), &schema); err != nil {
		return nil, nil, err
	}
	typed := ast.NewSchemaSet()
	typed.Put(ast.SchemaRootRef, schema)
	c := ast.NewCompiler().WithStrict(true).WithSchemas(typed).WithDefaultRegoVersion(ast.RegoV2)
	if c.Compile(map[string]*ast.Module{"house.rego": m}); c.Failed() {
		return nil, nil, c.Errors
	}
	for _, rule := range c.Modules["house.rego"].Rules {
		if rule.Head.Ref()[0].String() == "findings" {
			return c, rule, nil
		}
	}
	return nil, nil, fmt.Errorf("no rule called findings")
}

// readRow is a rule and what is to be seen of it. body stands, from line 4 on,
// after "some s in input.strings" and before the finding about s.id; a text with
// findings in it is the whole module after its package, from line 3 on.
type readRow struct{ name, body, want string }

// Facts of the part itself are marked own. All rows also read strings.*.id.
var acceptedReads = []readRow{
	{"comparison", `s.voc > 1`, "own strings.*.voc"},
	{"two members compared", `s.voc > s.isc`, "own strings.*.isc; own strings.*.voc"},
	{"negation", `not s.kind == "a"`, "own strings.*.kind"},
	{"negated existence", `not s.kind`, "own strings.*.kind"},
	{"in a set", `s.kind in {"a", "b"}`, "own strings.*.kind"},
	{"not in a parameter", `not s.kind in data.parameters.kinds`, "own strings.*.kind; parameter kinds"},
	{"arithmetic", `s.voc * 2 + 1 > s.isc - 1`, "own strings.*.isc; own strings.*.voc"},
	{"or", `s.voc > 1 or input.installation.height > 1`, "own strings.*.voc; installation.height"},
	{"and", `(s.voc > 1 and s.isc > 1) or not s.kind`, "own strings.*.isc; own strings.*.kind; own strings.*.voc"},
	{"member given a name", "v := s.voc\nv > 1", "own strings.*.voc"},
	{"member only given a name", "v := s.voc\nv", "own strings.*.voc"},
	{"element given a second name", "t := s\nt.voc > 1", "own strings.*.voc"},
	{"list of words", `"a" in s.tags`, "own strings.*.tags"},
	{"list of words counted", `count(s.tags) > 1`, "own strings.*.tags"},
	{"list of words iterated", "some w in s.tags\nw == s.kind", "own strings.*.kind; own strings.*.tags"},
	{"list in an element", `s.segments[_].length > 1`, "own strings.*.segments.*.length"},
	{"list in an element, named", "some g in s.segments\ng.length > 1\ng.place == s.kind", "own strings.*.kind; own strings.*.segments.*.length; own strings.*.segments.*.place"},
	{"list in an element counted", `count(s.segments) > 1`, "own strings.*.segments"},
	{"every in an element", `every g in s.segments { g.length > 0 }`, "own strings.*.segments.*.length"},
	{"every with index", `every i, g in s.segments { g.length > i }`, "own strings.*.segments.*.length"},
	{"every over another list", `every r in input.runs { r.drop < s.voc }`, "own strings.*.voc; runs.*.drop"},
	{"every over the same list", `every t in input.strings { t.voc <= s.voc }`, "own strings.*.voc; strings.*.voc"},
	{"another list", "some r in input.runs\nr.kind == s.kind\nr.drop > 1", "own strings.*.kind; runs.*.drop; runs.*.kind"},
	{"another element of the same list", "some t in input.strings\nt.id != s.id\nt.voc == s.voc", "own strings.*.voc; strings.*.id; strings.*.voc"},
	{"elements of another list only there", `input.runs[_]`, "runs"},
	{"another list counted", `count(input.runs) > 1`, "runs"},
	{"its own list counted", `count(input.strings) > 1`, "strings"},
	{"installation", `input.installation.country == "a"`, "installation.country"},
	{"installation there", `input.installation`, "installation"},
	{"installation named", "i := input.installation\ni.height > s.voc", "own strings.*.voc; installation.height"},
	{"input named", "all := input\nall.runs[_].drop > s.voc", "own strings.*.voc; runs.*.drop"},
	{"list named", "l := input.runs\nsome r in l\nr.drop > 1", "runs.*.drop"},
	{"number as index", `s.voc > input.strings[0].voc`, "own strings.*.voc; strings.*.voc"},
	{"comprehension of members", `s.voc > max([r.drop | some r in input.runs; r.kind == s.kind])`, "own strings.*.kind; own strings.*.voc; runs.*.drop; runs.*.kind"},
	{"set of members", `count({t.voc | some t in input.strings}) > 1`, "strings.*.voc"},
	{"object of members", "o := {t.id: t.voc | some t in input.strings}\no[s.id] > 1", "strings.*.id; strings.*.voc"},
	{"object written out", "o := {\"v\": s.voc}\no.v > 1", "own strings.*.voc"},
	{"comprehension of elements counted", `count([t | some t in input.strings; t.kind == s.kind]) > 1`, "own strings.*.kind; strings.*.kind"},
	{"comprehension of elements iterated", "l := [t | some t in input.strings; t.voc > 1]\nsome t in l\nt.isc > s.isc", "own strings.*.isc; strings.*.isc; strings.*.voc"},
	{"parameter and table", "some row in data.tables.sizes\nrow.v > s.voc\ns.voc > data.parameters.most", "own strings.*.voc; parameter most; table sizes"},
	{"value given to a function", "over(s.voc)\n\x00over(v) if v > input.installation.height", "own strings.*.voc; installation.height"},
	{"function with else", "grade(s.voc) == 2\n\x00grade(v) := 1 if {\n\tv > 2\n\tinput.installation.height > 1\n} else := 2 if {\n\tinput.runs[_].drop > 1\n}", "own strings.*.voc; installation.height; runs.*.drop"},
	{"function of two bodies", "odd(s.voc)\n\x00odd(v) if v == input.runs[_].drop\n\nodd(v) if v == input.installation.height", "own strings.*.voc; installation.height; runs.*.drop"},
	{"default of a function", "grade(s.voc) == 0\n\x00default grade(_) := 0\n\ngrade(v) := 1 if v > input.installation.height", "own strings.*.voc; installation.height"},
	{"helper rule", "s.id in high\n\x00high contains t.id if {\n\tsome t in input.strings\n\tt.voc > 1\n}", "strings.*.id; strings.*.voc"},
	{"helper of a helper", "s.voc > most\n\x00most := count(high)\n\nhigh contains r.id if {\n\tsome r in input.runs\n\tr.drop > 1\n}", "own strings.*.voc; runs.*.drop; runs.*.id"},
	{"helper object by key", "drops[s.kind] > 1\n\x00drops[r.id] := r.drop if some r in input.runs", "own strings.*.kind; runs.*.drop; runs.*.id"},
	{"list helper of elements' members", "s.voc > max(drops)\n\x00drops := [r.drop | some r in input.runs]", "own strings.*.voc; runs.*.drop"},
	{"index shared with a selection", "l := [t | some t in input.strings; t.voc > 1]\ninput.strings[i].id == s.id\nl[i].isc > 1", "strings.*.id; strings.*.isc; strings.*.voc"},
	{"two names compared inside not", "some t in input.strings\nx := t.kind\ny := s.kind\nnot x == y", "own strings.*.kind; strings.*.kind"},

	{"index", "findings contains f if {\n\tinput.strings[i].voc > 1\n\tf := {\"id\": \"t/x\", \"subject\": input.strings[i].id}\n}", "own strings.*.voc"},
	{"finding in the head", "findings contains {\"id\": \"t/x\", \"subject\": s.id, \"value\": s.isc} if {\n\tsome s in input.strings\n\ts.voc > 1\n}", "own strings.*.isc; own strings.*.voc"},
	{"subject named", "findings contains f if {\n\tsome s in input.strings\n\ts.voc > 1\n\twho := s.id\n\tf := {\"id\": \"t/x\", \"subject\": who}\n}", "own strings.*.voc"},
	{"text", "findings contains f if {\n\tsome s in input.strings\n\ts.voc > 1\n\tf := {\"id\": \"t/x\", \"subject\": s.id, \"message\": $\"{s.isc} A and {s.kind}\"}\n}", "own strings.*.isc; own strings.*.kind; own strings.*.voc"},
	{"selection judged", "findings contains f if {\n\tl := [t | some t in input.strings; t.voc > 1]\n\tsome s in l\n\ts.isc > 1\n\tf := {\"id\": \"t/x\", \"subject\": s.id}\n}", "own strings.*.isc; strings.*.voc"},
	{"about the installation", "findings contains f if {\n\tinput.installation.height > 1\n\tsome s in input.strings\n\ts.voc > 1\n\tf := {\"id\": \"t/x\", \"subject\": \"installation\"}\n}", "own installation.height; strings.*.voc"},
	{"about the installation by its id", "findings contains f if {\n\ti := input.installation\n\ti.height > 1\n\tf := {\"id\": \"t/x\", \"subject\": i.id}\n}", "own installation.height; own installation.id"},
}

var refusedReads = []readRow{
	{"element to a function", "bad(s)\n\x00bad(x) if x.voc > 1", "house.rego:5:6: this rule hands the whole of input.strings[_] to bad(), so sunclause cannot see which facts it reads; pass the members it needs instead, as in bad(s.isc)"},
	{"element by index to a function", "bad(input.strings[0])\n\x00bad(x) if x.voc > 1", "house.rego:5:6: this rule hands the whole of input.strings[_] to bad()"},
	{"element in a list to a function", "bad([s])\n\x00bad(x) if x[0].voc > 1", "house.rego:5:7: this rule hands the whole of input.strings[_] to bad()"},
	{"list to a function", "bad(input.strings)\n\x00bad(x) if x[0].voc > 1", "house.rego:5:6: this rule hands the whole of input.strings to bad(), so sunclause cannot see which facts it reads; pass the members it needs instead, as in bad([x.isc | some x in input.strings])"},
	{"inner list to a function", "bad(s.segments)\n\x00bad(x) if x[0].length > 1", "house.rego:5:6: this rule hands the whole of input.strings[_].segments to bad()"},
	{"input to a function", "bad(input)\n\x00bad(x) if x.strings[0].voc > 1", "house.rego:5:6: this rule hands the whole of input to bad()"},
	{"installation to a function", "bad(input.installation)\n\x00bad(x) if x.height > 1", "the whole of input.installation to bad(), so sunclause cannot see which facts it reads; pass the members it needs instead, as in bad(input.installation.country)"},
	{"selection to a function", "bad([t | some t in input.strings])\n\x00bad(x) if x[0].voc > 1", "house.rego:5:6: this rule hands the whole of input.strings[_] to bad()"},
	{"element to a function in a text", "m := $\"{bad(s)}\"\nm != \"\"\n\x00bad(x) := x.voc", "hands the whole of input.strings[_] to bad()"},
	{"function called inside a helper", "worse\n\x00worse if {\n\tsome t in input.strings\n\tbad(t)\n}\n\nbad(x) if x.voc > 1", "house.rego:11:6: this rule hands the whole of input.strings[_] to bad()"},
	{"object.get", `object.get(s, "voc", 0) > 1`, "house.rego:5:13: this rule hands the whole of input.strings[_] to object.get(), so sunclause cannot see which facts it reads; read the member itself instead, as in s.voc"},
	{"walk", "walk(s, [p, v])\nv == 1\np[0] == \"voc\"", "house.rego:5:7: this rule hands the whole of input.strings[_] to walk(), so sunclause cannot see which facts it reads; read the members it needs instead, as in s.isc"},
	{"walk over everything", "walk(input, [_, v])\nv == s.voc", "house.rego:5:7: this rule hands the whole of input to walk()"},
	{"members counted", `count(s) > 3`, "house.rego:5:8: this rule hands the whole of input.strings[_] to count()"},
	{"keys", `"voc" in object.keys(s)`, "to object.keys()"},
	{"member by variable", "some k in [\"voc\"]\ns[k] > 1", "house.rego:6:2: this rule picks a member of input.strings[_] by k, so sunclause cannot see which fact it reads; write the member's name, as in input.strings[_].isc"},
	{"member by parameter", `s[data.parameters.which] > 1`, "picks a member of input.strings[_] by data.parameters.which"},
	{"any member", `s[_] == 1`, "picks a member of input.strings[_]"},
	{"members iterated", "some k, v in s\nv == 1\nk == \"voc\"", "picks a member of input.strings[_] by k"},
	{"every member", `every k, v in s { k != "voc"; v != 1 }`, "house.rego:5:16: this rule picks a member of input.strings[_] by k"},
	{"every member's name", `every k, _ in s { k != "voc" }`, "picks a member of input.strings[_] by k"},
	{"list by variable", "some k in [\"strings\"]\ninput[k][_].voc > 1", "picks a member of input by k"},
	{"element in an object", "o := {\"s\": s}\no.s.voc > 1", "house.rego:5:13: this rule puts the whole of input.strings[_] into something it makes"},
	{"elements in a set", "l := {t | some t in input.strings}\ncount(l) > 1", "house.rego:5:8: this rule puts the whole of input.strings[_] into a set"},
	{"elements by id", "l := {t.id: t | some t in input.strings}\nl[s.id].voc > 1", "puts the whole of input.strings[_] into something it makes"},
	{"list of lists of elements", "l := [[t] | some t in input.strings]\ncount(l) > 1", "puts the whole of input.strings[_] into something it makes"},
	{"element in a text", "m := $\"{s}\"\nm != \"\"", "house.rego:5:10: this rule hands the whole of input.strings[_] to a text, so sunclause cannot see which facts it reads; put in the members it needs instead, as in s.isc"},
	{"element looked up", `s in input.strings`, "looks the whole of input.strings[_] up with in"},
	{"elements compared", "some t in input.strings\ns == t", "compares the whole of input.strings[_] with something, so sunclause cannot see which facts it reads; give it one name of its own with := and compare members, as in"},
	{"elements told apart", "some t in input.strings\ns != t", "compares the whole of input.strings[_] by !="},
	{"element compared with data", `s == data.tables.sizes[0]`, "house.rego:5:2: this rule compares the whole of input.strings[_] with something"},
	{"element compared with a name for data", "d := data.tables.sizes[_]\ns == d", "house.rego:6:2: this rule compares the whole of input.strings[_] with something"},
	{"element compared with a result", "x := made(s.voc)\nx == s\n\x00made(v) := data.tables.sizes[v]", "the whole of input.strings[_]"},
	{"element compared with an argument", "same(data.tables.sizes[0])\n\x00same(x) if {\n\tsome t in input.strings\n\tx == t\n}", "the whole of input.strings[_]"},
	{"list compared", `input.runs == []`, "compares the whole of input.runs"},
	{"list taken apart", "[a, b] := input.strings\na.voc == b.voc\ns.voc > 1", "compares the whole of input.strings"},
	{"element as a key", `data.tables.sizes[s].v > 1`, "uses the whole of input.strings[_] as a key"},
	{"elements out of a helper", "some t in high\nt.id == s.id\n\x00high contains t if some t in input.strings", "house.rego:10:15: this rule gives the whole of input.strings[_] as the result of a rule"},
	{"list out of a helper", "some t in all\nt.id == s.id\n\x00all := input.strings", "gives the whole of input.strings as the result of a rule"},
	{"element out of a function", "made(0).voc > s.voc\n\x00made(i) := input.strings[i]", "gives the whole of input.strings[_] as the result of a rule"},
	{"with", `s.voc > 1 with input.installation.height as 3`, "house.rego:5:2: with puts other facts in the place of those of the installation"},
	{"with in a helper", "high\n\x00high if input.runs[0].drop > 1 with input.runs as []", "with puts other facts"},
	{"any parameter", "some p in data.parameters\ns.voc > p", "cannot see which of data.parameters this rule reads; write the name, as in data.parameters.…"},
	{"table by variable", `data.tables[s.kind][0].v > 1`, "cannot see which of data.tables this rule reads"},
	{"no such rule", `data.house.nothing > s.voc`, "house.rego:5:2: there is no rule, parameter or table data.house.nothing"},

	{"element in the finding", "findings contains f if {\n\tsome s in input.strings\n\ts.voc > 1\n\tf := {\"id\": \"t/x\", \"subject\": s.id, \"all\": s}\n}", "house.rego:6:45: this rule puts the whole of input.strings[_] into the finding, so sunclause cannot see which facts it reads; put in the members it needs instead, as in s.isc"},
	{"no id", "findings contains f if {\n\tsome s in input.strings\n\ts.voc > 1\n\tf := {\"subject\": s.id}\n}", "the finding has no id that is written out; add the id of the card"},
	{"no subject", "findings contains f if {\n\tsome s in input.strings\n\ts.voc > 1\n\tf := {\"id\": \"t/x\"}\n}", "does not name an element of input.strings as its subject, as its card says; iterate with some s in input.strings and write \"subject\": s.id"},
	{"subject of another list", "findings contains f if {\n\tsome r in input.runs\n\tr.drop > 1\n\tf := {\"id\": \"t/x\", \"subject\": r.id}\n}", "house.rego:6:32: the finding does not name an element of input.strings"},
	{"subject is no id", "findings contains f if {\n\tsome s in input.strings\n\tf := {\"id\": \"t/x\", \"subject\": s.kind}\n}", "does not name an element of input.strings"},
	{"finding out of a function", "findings contains f if {\n\tsome s in input.strings\n\tf := made(s.id)\n}\n\nmade(i) := {\"id\": \"t/x\", \"subject\": i}", "house.rego:3:19: sunclause cannot see what this rule finds or reads here; write the finding out as an object"},
	{"finding by key", "findings[s.id] := 1 if {\n\tsome s in input.strings\n}", "write it as findings contains f if { … }"},
	{"string in place of the installation", "findings contains f if {\n\tinput.installation.height > 1\n\tf := {\"id\": \"t/x\", \"subject\": \"house\"}\n}", "does not name an element of input.strings"},
}

// module makes the module of a row.
func (row readRow) module() string {
	text := row.body
	if !strings.Contains(text, "findings") {
		body, rest, _ := strings.Cut(text, "\n\x00")
		text = "findings contains f if {\n\tsome s in input.strings\n\t" + strings.ReplaceAll(body, "\n", "\n\t") +
			"\n\tf := {\"id\": \"t/x\", \"subject\": s.id}\n}\n\n" + rest
	}
	return "package house\n\n" + text + "\n"
}

func (row readRow) list() string {
	if strings.HasPrefix(row.name, "about the installation") {
		return catalogue.Whole
	}
	return "strings"
}

func (r Reads) words() string {
	var words []string
	for _, own := range []bool{true, false} {
		for _, f := range r.Facts {
			name := strings.Join(f.Path, ".")
			switch {
			case f.Own != own || own && name == "strings.*.id":
			case own:
				words = append(words, "own "+name)
			default:
				words = append(words, name)
			}
		}
	}
	for _, p := range r.Parameters {
		words = append(words, "parameter "+p)
	}
	for _, t := range r.Tables {
		words = append(words, "table "+t)
	}
	return strings.Join(words, "; ")
}

// reads compiles a row, and says what it reads.
func (r readRow) reads(t *testing.T) (*ast.Compiler, Reads) {
	t.Helper()
	c, rule, err := compileReads(r.module())
	if err != nil {
		t.Fatal(err)
	}
	got, err := readsOf(c, rule, r.list())
	if err != nil {
		t.Fatal(err)
	}
	return c, got
}

func TestReadsOf(t *testing.T) {
	for _, row := range acceptedReads {
		t.Run(row.name, func(t *testing.T) {
			_, got := row.reads(t)
			if got.words() != row.want {
				t.Errorf("reads\n %s\nwant\n %s", got.words(), row.want)
			}
			if got.ID != "t/x" {
				t.Errorf("the finding is called %q", got.ID)
			}
		})
	}
}

func TestReadsRefused(t *testing.T) {
	for _, row := range refusedReads {
		t.Run(row.name, func(t *testing.T) {
			c, rule, err := compileReads(row.module())
			if err != nil {
				t.Fatal(err)
			}
			got, err := readsOf(c, rule, row.list())
			if err == nil || !strings.Contains(err.Error(), row.want) {
				t.Errorf("got %s, %v\nwant %s", got.words(), err, row.want)
			}
		})
	}
}

// FuzzReadsOf holds that any rule that compiles gives reads or an error, and the
// same ones every time.
func FuzzReadsOf(f *testing.F) {
	for _, row := range append(append([]readRow{}, acceptedReads...), refusedReads...) {
		f.Add(row.module())
	}
	f.Fuzz(func(t *testing.T, text string) {
		if len(text) > 2000 || strings.Count(text, "[")+strings.Count(text, "{") > 40 {
			t.Skip("the compiler takes its time over deep nesting")
		}
		c, rule, err := compileReads(text)
		if err != nil {
			return
		}
		for _, list := range []string{"strings", catalogue.Whole} {
			once, err1 := readsOf(c, rule, list)
			again, err2 := readsOf(c, rule, list)
			if once.words() != again.words() || fmt.Sprint(err1) != fmt.Sprint(err2) {
				t.Errorf("first %s, %v\nthen %s, %v", once.words(), err1, again.words(), err2)
			}
		}
	})
}
