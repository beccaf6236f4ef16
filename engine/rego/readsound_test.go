package rego

import (
	"context"
	"fmt"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"github.com/open-policy-agent/opa/v1/ast"

	"github.com/open-policy-agent/opa/v1/rego"
	"github.com/open-policy-agent/opa/v1/storage/inmem"
	"sunclause/engine/catalogue"
)

// TestReadsAreAllThatMatters checks the reads by what rules do: a fact that is
// not listed may be taken away or changed, and a rule finds the same; one that
// is read of the part itself only matters to the finding about that part.
func TestReadsAreAllThatMatters(t *testing.T) {
	if testing.Short() {
		t.Skip("takes some seconds")
	}
	fired := 0
	for _, row := range acceptedReads {
		t.Run(row.name, func(t *testing.T) {
			c, got := row.reads(t)
			found := soundReads(t, c, got, row.list())
			if found == 0 {
				t.Error("the rule never finds anything in the inputs tried, which proves nothing")
			}
			fired += found
		})
	}
	t.Logf("%d findings", fired)
}

// soundReads tries random inputs on a rule, and counts what it finds in them.
func soundReads(t *testing.T, c *ast.Compiler, got Reads, list string) int {
	ask := askRule(t, c)
	random := rand.New(rand.NewPCG(1, 2))
	found := 0
	for range 40 {
		input := randomFacts(random)
		before := ask(input)
		found += len(before)
		for _, l := range leavesOf(input) {
			anyPart, own := got.has(l.path, false), got.has(l.path, true)
			if name := l.path[len(l.path)-1]; anyPart || own && (list == catalogue.Whole || name == "id") {
				continue // the id of the part judged names its finding
			}
			for _, change := range l.changes(random) {
				after := ask(change)
				if own {
					before, after = without(before, l.id), without(after, l.id)
				}
				if !slices.Equal(before, after) {
					t.Fatalf("%s of %s matters, own %v\ninput  %v\nchanged %v\nfirst %v\nthen  %v", strings.Join(l.path, "."), l.id, own, input, change, before, after)
				}
				before = ask(input)
			}
		}
	}
	return found
}

func askRule(t *testing.T, c *ast.Compiler) func(any) []string {
	store := inmem.NewFromObject(map[string]any{
		"parameters": map[string]any{"kinds": []any{"a"}, "most": 1, "which": "voc"},
		"tables":     map[string]any{"sizes": []any{map[string]any{"v": 3}, map[string]any{"id": "S0", "voc": 1}}},
	})
	q, err := rego.New(rego.Query("data.house.findings"), rego.Compiler(c), rego.Store(store)).PrepareForEval(context.Background())
	if err != nil {
		t.Fatal(err)
	}
	return func(input any) []string {
		rs, err := q.Eval(context.Background(), rego.EvalInput(input))
		if err != nil {
			return []string{"error"} // two values for one name, say
		}
		var all []string
		if len(rs) > 0 {
			for _, f := range rs[0].Expressions[0].Value.([]any) {
				all = append(all, fmt.Sprint(f))
			}
		}
		return all
	}
}

func without(findings []string, id string) []string {
	return slices.DeleteFunc(slices.Clone(findings), func(f string) bool { return strings.Contains(f, "subject:"+id) })
}

// has reports whether a fact is listed; a list or object also when something in
// it is.
func (r Reads) has(path []string, own bool) bool {
	return slices.ContainsFunc(r.Facts, func(f Read) bool {
		if f.Own != own {
			return false
		}
		return slices.Equal(f.Path, path) || len(path) < 2 && f.Path[0] == path[0]
	})
}

func randomFacts(r *rand.Rand) map[string]any {
	number := func() any { return r.IntN(4) }
	word := func() any { return []string{"a", "b"}[r.IntN(2)] }
	some := func(o map[string]any) map[string]any {
		for name := range o {
			if name != "id" && r.IntN(6) == 0 {
				delete(o, name)
			}
		}
		return o
	}
	stringsOf, runs := []any{}, []any{}
	for i := range 1 + r.IntN(3) {
		segments := []any{}
		for range r.IntN(3) {
			segments = append(segments, some(map[string]any{"length": number(), "place": word()}))
		}
		stringsOf = append(stringsOf, some(map[string]any{
			"id": fmt.Sprintf("S%d", i), "voc": number(), "isc": number(), "kind": word(),
			"tags": []any{word(), word()}[:r.IntN(3)], "segments": segments,
		}))
	}
	for i := range r.IntN(3) {
		runs = append(runs, some(map[string]any{"id": []string{"a", "b"}[i], "drop": number(), "kind": word()}))
	}
	return map[string]any{"strings": stringsOf, "runs": runs, "installation": some(map[string]any{"id": "installation", "country": word(), "height": number()})}
}

// leaf is one fact in an input: its path, the part it is of, and how to get at it.
type leaf struct {
	path  []string
	id    string
	at    []any // keys and indices
	input map[string]any
}

func leavesOf(input map[string]any) []leaf {
	var all []leaf
	var down func(v any, l leaf)
	down = func(v any, l leaf) {
		switch v := v.(type) {
		case map[string]any:
			if id, ok := v["id"].(string); ok {
				l.id = id
			}
			for _, k := range sortedKeys(v) {
				next := leaf{append(slices.Clone(l.path), k), l.id, append(slices.Clone(l.at), k), input}
				if next.id == "" {
					all = append(all, next)
				}
				down(v[k], next)
			}
			return
		case []any:
			if len(l.path) == 0 || l.path[len(l.path)-1] != "tags" {
				for i, e := range v {
					down(e, leaf{append(slices.Clone(l.path), "*"), l.id, append(slices.Clone(l.at), i), input})
				}
				return
			}
		}
		if len(l.path) > 1 {
			all = append(all, l)
		}
	}
	down(any(input), leaf{input: input})
	return all
}

func sortedKeys(m map[string]any) []string {
	var keys []string
	for k := range m {
		keys = append(keys, k)
	}
	slices.Sort(keys)
	return keys
}

// changes are copies of the input without the fact, and with another value.
func (l leaf) changes(r *rand.Rand) []map[string]any {
	gone := copied(l.input, l.at, nil).(map[string]any)
	if len(l.path) < 2 {
		return []map[string]any{gone}
	}
	var other any = []string{"c", "d"}[r.IntN(2)]
	switch last := l.path[len(l.path)-1]; last {
	case "voc", "isc", "drop", "height", "length":
		other = 10 + r.IntN(3)
	case "tags":
		other = []any{"a", "b", "c"}
	case "id":
		return []map[string]any{copied(l.input, l.at, other).(map[string]any)}
	}
	return []map[string]any{gone, copied(l.input, l.at, other).(map[string]any)}
}

// copied copies v with what is at the place replaced, or left out for nil.
func copied(v any, at []any, by any) any {
	switch v := v.(type) {
	case map[string]any:
		m := map[string]any{}
		for k, e := range v {
			switch {
			case len(at) == 0 || at[0] != any(k):
				m[k] = copied(e, nil, nil)
			case len(at) > 1:
				m[k] = copied(e, at[1:], by)
			case by != nil:
				m[k] = by
			}
		}
		return m
	case []any:
		l := make([]any, len(v))
		for i, e := range v {
			var below []any
			if len(at) > 0 && at[0] == any(i) {
				below = at[1:]
			}
			l[i] = copied(e, below, by)
		}
		return l
	}
	return v
}
