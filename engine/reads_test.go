package engine

import (
	"strings"
	"testing"

	"github.com/open-policy-agent/opa/v1/ast"
)

// compileRules compiles a module of package t.pvstring as a rule set's would be.
func compileRules(t *testing.T, text string) (*ast.Compiler, *ast.Rule) {
	t.Helper()
	modules := map[string]*ast.Module{}
	if err := parseInto(modules, moduleText{"pvstring", "t.rego", "package t.pvstring\n\n" + text}, "t.pvstring"); err != nil {
		t.Fatal(err)
	}
	c, err := compileModules(modules)
	if err != nil {
		t.Fatal(err)
	}
	for _, r := range c.Modules["t.rego"].Rules {
		if r.Head.Ref()[0].String() == "findings" {
			return c, r
		}
	}
	t.Fatal("no rule called findings")
	return nil, nil
}

const about = "\n\tf := {\"id\": \"t/x\", \"subject\": s.id}\n}\n"

func TestReadsOf(t *testing.T) {
	const loop = "findings contains f if {\n\tsome s in input.strings\n\t"
	for _, c := range []struct{ name, text, want string }{
		{"comparison", loop + "s.voc_max_v > 1000" + about, "strings.*.id of its own; strings.*.voc_max_v of its own"},
		{"two facts", loop + "s.voc_max_v > s.inverter_dc_voltage_max_v" + about, "strings.*.id of its own; strings.*.inverter_dc_voltage_max_v of its own; strings.*.voc_max_v of its own"},
		{"index", "findings contains f if {\n\tinput.strings[i].voc_max_v > 1\n\ts := input.strings[i]" + about, "strings.*.id of its own; strings.*.voc_max_v of its own"},
		{"negation", loop + "not s.fuse_fitted" + about, "strings.*.fuse_fitted of its own; strings.*.id of its own"},
		{"membership", loop + "not s.fuse_kind in {\"a\", \"b\"}" + about, "strings.*.fuse_kind of its own; strings.*.id of its own"},
		{"parameter", loop + "s.voc_max_v > data.parameters.cap" + about, "strings.*.id of its own; strings.*.voc_max_v of its own; parameter cap"},
		{"table", loop + "some r in data.tables.sizes.rows\n\ts.voc_max_v > r.v" + about, "strings.*.id of its own; strings.*.voc_max_v of its own; table sizes"},
		{"installation", loop + "input.installation.country == \"GB\"" + about, "installation.country; strings.*.id of its own"},
		{"other of the same list", loop + "some o in input.strings\n\to.id != s.id\n\to.mppt == s.mppt" + about, "strings; strings.*.id; strings.*.id of its own; strings.*.mppt; strings.*.mppt of its own"},
		{"other list", loop + "some m in input.mppts\n\tm.id == s.mppt\n\tm.live_with_all_open" + about, "mppts; mppts.*.id; mppts.*.live_with_all_open; strings.*.id of its own; strings.*.mppt of its own"},
		{"every", loop + "every m in input.mppts { m.isc_max_a < s.isc_max_a }" + about, "mppts; mppts.*.isc_max_a; strings.*.id of its own; strings.*.isc_max_a of its own"},
		{"comprehension", loop + "count([o.id | some o in input.strings; o.mppt == s.mppt]) > 1" + about, "strings; strings.*.id; strings.*.id of its own; strings.*.mppt; strings.*.mppt of its own"},
		{"list of subjects counted", loop + "count([o | some o in input.strings; o.mppt == s.mppt]) > 1" + about, "strings; strings.*.id of its own; strings.*.mppt; strings.*.mppt of its own"},
		{"list counted", loop + "count(input.isolators) > 1" + about, "isolators; strings.*.id of its own"},
		{"value handed to a function", loop + "over(s.voc_max_v)" + about + "\nover(v) if v > input.installation.voc_max_v\n", "installation.voc_max_v; strings.*.id of its own; strings.*.voc_max_v of its own"},
		{"helper rule", loop + "s.id in odd" + about + "\nodd contains o.id if {\n\tsome o in input.strings\n\to.isc_max_a > 1\n}\n", "strings; strings.*.id; strings.*.id of its own; strings.*.isc_max_a"},
		{"message", "findings contains f if {\n\tsome s in input.strings\n\ts.voc_max_v > 1\n\tf := {\"id\": \"t/x\", \"subject\": s.id, \"message\": $\"{s.imp_a} A\"}\n}\n", "strings.*.id of its own; strings.*.imp_a of its own; strings.*.voc_max_v of its own"},
		{"input named", "findings contains f if {\n\tall := input\n\tsome s in all.strings\n\ts.voc_max_v > 1" + about, "strings.*.id of its own; strings.*.voc_max_v of its own"},
		{"list of ids", "findings contains f if {\n\tsome s in input.mppts\n\t\"S1\" in s.strings" + about, "mppts.*.id of its own; mppts.*.strings of its own"},
		{"object of members", loop + "o := {\"a\": s.voc_max_v}\n\to.a > 1" + about, "strings.*.id of its own; strings.*.voc_max_v of its own"},
		{"number index is another part", loop + "s.voc_max_v > input.strings[0].voc_max_v" + about, "strings.*.id of its own; strings.*.voc_max_v; strings.*.voc_max_v of its own"},
	} {
		t.Run(c.name, func(t *testing.T) {
			subject := "strings"
			if strings.Contains(c.want, "mppts.*.id of its own") {
				subject = "mppts"
			}
			compiler, rule := compileRules(t, c.text)
			got, err := readsOf(compiler, rule, subject)
			if err != nil {
				t.Fatal(err)
			}
			if got.ID != "t/x" {
				t.Errorf("id %q", got.ID)
			}
			var words []string
			for _, r := range got.Facts {
				words = append(words, r.String())
			}
			for _, p := range got.Parameters {
				words = append(words, "parameter "+p)
			}
			for _, p := range got.Tables {
				words = append(words, "table "+p)
			}
			if s := strings.Join(words, "; "); s != c.want {
				t.Errorf("reads\n %s\nwant\n %s", s, c.want)
			}
		})
	}
}

func TestReadsRefused(t *testing.T) {
	const loop = "findings contains f if {\n\tsome s in input.strings\n\t"
	for _, c := range []struct{ name, text, want string }{
		{"subject to a function", loop + "bad(s)" + about + "\nbad(x) if x.voc_max_v > 1\n", "t.rego:5:2: this rule hands the whole of input.strings[_] to data.t.pvstring.bad()"},
		{"subject to a builtin", loop + "object.get(s, \"voc_max_v\", 0) > 1" + about, "hands the whole of input.strings[_] to object.get()"},
		{"keys of a subject", loop + "count(s) > 3" + about, "hands the whole of input.strings[_] to count()"},
		{"member by variable", loop + "some k in [\"voc_max_v\"]\n\ts[k] > 1" + about, "picks the member of input.strings[_] by a variable"},
		{"any member", loop + "s[_] > 1" + about, "picks the member of input.strings[_] by a variable"},
		{"subject in the finding", "findings contains f if {\n\tsome s in input.strings\n\ts.voc_max_v > 1\n\tf := {\"id\": \"t/x\", \"subject\": s.id, \"all\": s}\n}\n", "hands the whole of input.strings[_]"},
		{"subject in a list", loop + "l := [s]\n\tl[0].voc_max_v > 1" + about, "hands the whole of input.strings[_]"},
		{"subjects compared", loop + "some o in input.strings\n\ts == o" + about, "hands the whole of input.strings[_] to"},
		{"subjects out of a helper", loop + "some o in odd\n\to.id == s.id" + about + "\nodd contains o if some o in input.strings\n", "hands the whole of input.strings[_] to the result of a rule"},
		{"subject in a set", loop + "l := {o | some o in input.strings}\n\tcount(l) > 1" + about, "hands the whole of input.strings[_]"},
		{"whole input", loop + "bad(input)" + about + "\nbad(x) if x.strings[0].voc_max_v > 1\n", "hands the whole of input to"},
		{"whole list", loop + "bad(input.strings)" + about + "\nbad(x) if x[0].voc_max_v > 1\n", "hands the whole of input.strings to"},
		{"unnamed parameter", loop + "some p in data.parameters\n\ts.voc_max_v > p" + about, "does not say plainly which of the parameters"},
		{"rows", loop + "some r in data.rows\n\tr.id == s.id" + about, "data.rows belongs to the judging of limit rows"},
		{"no such rule", loop + "data.t.nothing.x" + about, "there is no rule or table data.t.nothing.x"},
		{"with", loop + "s.voc_max_v > 1 with input.installation.country as \"GB\"" + about, "by “with”"},
		{"finding of another list", "findings contains f if {\n\tsome s in input.mppts\n\ts.isc_max_a > 1" + about, "the subject of the finding is not the id of one of input.strings"},
		{"no subject", "findings contains f if {\n\tsome s in input.strings\n\ts.voc_max_v > 1\n\tf := {\"id\": \"t/x\"}\n}\n", "does not say which subject"},
		{"built finding", "findings contains f if {\n\tsome s in input.strings\n\ts.voc_max_v > 1\n\tf := made(s.id)\n}\n\nmade(i) := {\"id\": \"t/x\", \"subject\": i}\n", "an object written out in full"},
	} {
		t.Run(c.name, func(t *testing.T) {
			compiler, rule := compileRules(t, c.text)
			got, err := readsOf(compiler, rule, "strings")
			if err == nil || !strings.Contains(err.Error(), c.want) {
				t.Errorf("got %v, %v\nwant an error with %s", got, err, c.want)
			}
		})
	}
}
