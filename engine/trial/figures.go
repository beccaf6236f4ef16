package trial

import (
	"encoding/json"
	"fmt"
	"maps"
	"math"
	"slices"
	"strconv"
	"strings"

	"sunclause/engine/catalogue"
	"sunclause/engine/ruleset"
	"sunclause/facts"
	"sunclause/schema"
)

// figures reads the tests of figures. Each has an installation, or changes the last
// one that is stated above it.
func (r *reader) figures(file testsFile) {
	var stated any
	for _, t := range file.Figures {
		line := r.src.Position(t.At()).Line
		if t.Installation != nil {
			stated = t.Installation
		}
		raw, err := r.installation(t, stated)
		if err != nil {
			r.refuse(t.At(), err.Error(), "")
			continue
		}
		doc, err := schema.Decode(fmt.Sprintf("%s:%d: installation", r.src.Name, line), raw)
		if err != nil {
			r.refuse(t.At(), "the installation cannot be read: "+err.Error(), "")
			continue
		}
		r.cases = append(r.cases, Case{Says: t.Says.Value, File: r.src.Name, Line: line, doc: doc, gives: t.Gives})
	}
}

// installation is the one of a test as JSON.
func (r *reader) installation(t figuresFile, stated any) ([]byte, error) {
	switch {
	case t.Installation != nil && t.Changes != nil:
		return nil, fmt.Errorf("the test has both an installation and changes of one; keep one of them")
	case stated == nil:
		return nil, fmt.Errorf("the test has no installation, and none above it to change")
	}
	raw, err := json.Marshal(stated)
	if err != nil || t.Changes == nil {
		return raw, err
	}
	var whole any
	d := json.NewDecoder(strings.NewReader(string(raw)))
	d.UseNumber()
	if err := d.Decode(&whole); err != nil {
		return nil, err
	}
	for _, pointer := range slices.Sorted(maps.Keys(t.Changes)) {
		if !put(whole, strings.Split(pointer, "/")[1:], t.Changes[pointer]) {
			return nil, fmt.Errorf("there is no place %s in the installation that the test changes", pointer)
		}
	}
	return json.Marshal(whole)
}

// put sets the value at a path of names and places in lists; false where the way
// there does not exist.
func put(in any, path []string, v any) bool {
	if len(path) == 0 {
		return false
	}
	var below any
	switch in := in.(type) {
	case map[string]any:
		if len(path) == 1 {
			in[path[0]] = v
			return true
		}
		below = in[path[0]]
	case []any:
		i, err := strconv.Atoi(path[0])
		if err != nil || i < 0 || i >= len(in) {
			return false
		}
		if len(path) == 1 {
			in[i] = v
			return true
		}
		below = in[i]
	}
	return put(below, path[1:], v)
}

func (c Case) runFigures(set *ruleset.RuleSet) string {
	f := facts.Derive(&c.doc.Installation, set.Book)
	for _, g := range c.gives {
		got := factNamed(f, g)
		want := ruleset.Plain(g.Value)
		if number, ok := want.(float64); ok {
			v, isNumber := got.(float64)
			if isNumber && math.Abs(v-number) <= g.Within.Value+1e-9*math.Abs(number) {
				continue
			}
		} else if got != nil && got == want {
			continue
		}
		return fmt.Sprintf("%s of %s is %v, wanted %v", g.Fact.Value, g.ID.Value, got, want)
	}
	return ""
}

// factNamed is the plain value of a fact; nil when there is none, or it is
// unknown.
func factNamed(f *facts.Facts, g givenFile) any {
	of, ok := catalogue.Of(g.Subject.Value)
	if !ok {
		return nil
	}
	fact, ok := of.Fact(g.Fact.Value)
	if !ok {
		return nil
	}
	parts, _ := of.Parts(f)
	for _, p := range parts {
		if p.ID == g.ID.Value {
			return p.Value(fact).Plain()
		}
	}
	return nil
}
