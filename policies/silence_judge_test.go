package policies_test

import (
	"context"
	"reflect"
	"slices"
	"strings"
	"testing"

	"sunclause/engine/judge"
	"sunclause/engine/ruleset"
	"sunclause/facts"
	"sunclause/facts/working"
	"sunclause/schema"
)

// What a row says of a part depends on the facts of that part and on those of
// the installation, on nothing else. Where the sets hold rows only, as ours do,
// it is therefore enough to judge the parts whose facts a change touched: of
// thousands, mostly one. TestSilenceJudgesAlike holds that to whole checks.

// judging is one document judged once as it stands, and able to be judged again
// without one of its members.
type judging struct {
	set    *ruleset.RuleSet
	doc    *schema.Document
	facts  *facts.Facts
	before map[change]judge.Outcome
	parts  []map[string]reflect.Value // list by list, the parts by id
	judged map[part][]change          // what was judged of each part
	named  map[string][]string        // lists that are judged by a fact of the installation too
}

// part is one part, or "installation" where a list has none.
type part struct{ list, id string }

func newJudging(t testing.TB, set *ruleset.RuleSet, raw []byte) *judging {
	t.Helper()
	doc, err := schema.Decode("installation.json", raw)
	if err != nil {
		t.Fatal(err)
	}
	j := &judging{set: set, doc: doc, facts: facts.Derive(&doc.Installation, set.Book), judged: map[part][]change{}, named: namedFacts(t, set)}
	r, err := judge.Derived(context.Background(), set, doc, j.facts, judge.Options{})
	if err != nil {
		t.Fatal(err)
	}
	j.before = keyed(r)
	for _, l := range factLists {
		parts := l.partsIn(j.facts)
		j.parts = append(j.parts, byID(parts))
		if len(byID(parts)) != len(parts) {
			t.Fatalf("two of the %s have one id", l.name)
		}
	}
	for k := range j.before {
		q, _ := set.Requirement(k.Requirement)
		p := part{q.Subject, k.Subject}
		j.judged[p] = append(j.judged[p], k)
	}
	return j
}

// again is the same with a document of its own, from which a member can be left
// out beside another.
func (j judging) again(t testing.TB, raw []byte) *judging {
	t.Helper()
	doc, err := schema.Decode("installation.json", raw)
	if err != nil {
		t.Fatal(err)
	}
	j.doc = doc
	return &j
}

func byID(parts []reflect.Value) map[string]reflect.Value {
	all := map[string]reflect.Value{}
	for _, p := range parts {
		all[idOf(p)] = p
	}
	return all
}

// namedFacts lists, by fact of the installation, the lists of parts that are
// judged by it too.
func namedFacts(t testing.TB, set *ruleset.RuleSet) map[string][]string {
	t.Helper()
	named := map[string][]string{}
	for _, q := range set.Requirements {
		if q.Rego {
			t.Fatalf("%s is written in Rego and may look at any part; judge whole checks here", q.ID)
		}
		var names []string
		for _, c := range q.Compared() {
			names = append(names, c.Facts()...)
		}
		for _, name := range names {
			if fact, ok := strings.CutPrefix(name, "installation."); ok {
				named[fact] = append(named[fact], q.Subject)
			}
		}
	}
	return named
}

// keyed are the outcomes of a check by requirement and part.
func keyed(r *judge.Result) map[change]judge.Outcome {
	all := make(map[change]judge.Outcome, len(r.Judgments))
	for _, judged := range r.Judgments {
		all[change{Requirement: judged.Requirement.ID, Subject: judged.Subject.ID}] = judged.Outcome
	}
	return all
}

// factList is one list of facts, found in the Go struct.
type factList struct {
	name  string
	index int
	list  bool
	facts []factAt
}

type factAt struct {
	name  string
	index []int
}

var factLists = func() []factList {
	var all []factList
	for i := range reflect.TypeFor[facts.Facts]().NumField() {
		field := reflect.TypeFor[facts.Facts]().Field(i)
		part, list := field.Type, field.Type.Kind() == reflect.Slice
		if list {
			part = part.Elem()
		}
		l := factList{name: field.Tag.Get("json"), index: i, list: list}
		for _, f := range reflect.VisibleFields(part) {
			switch reflect.New(f.Type).Interface().(type) {
			case *working.Number, *working.Text, *working.Flag, *working.Names:
				l.facts = append(l.facts, factAt{f.Tag.Get("json"), f.Index})
			}
		}
		all = append(all, l)
	}
	return all
}()

func (l factList) partsIn(f *facts.Facts) []reflect.Value {
	v := reflect.ValueOf(f).Elem().Field(l.index)
	if !l.list {
		return []reflect.Value{v}
	}
	parts := make([]reflect.Value, v.Len())
	for n := range parts {
		parts[n] = v.Index(n)
	}
	return parts
}

func idOf(part reflect.Value) string {
	return part.FieldByName("Subject").Addr().Interface().(*working.Subject).ID
}

// differing lists the facts of a part that rules see otherwise.
func (l factList) differing(a, b reflect.Value) []string {
	var names []string
	for _, f := range l.facts {
		if !alike(a.FieldByIndex(f.index), b.FieldByIndex(f.index)) {
			names = append(names, f.name)
		}
	}
	return names
}

func alike(a, b reflect.Value) bool {
	switch a := a.Addr().Interface().(type) {
	case *working.Number:
		b := b.Addr().Interface().(*working.Number)
		return a.Known() == b.Known() && (!a.Known() || a.Value() == b.Value())
	case *working.Text:
		b := b.Addr().Interface().(*working.Text)
		return a.Known() == b.Known() && (!a.Known() || a.Value() == b.Value())
	case *working.Flag:
		b := b.Addr().Interface().(*working.Flag)
		return a.Known() == b.Known() && (!a.Known() || a.Value() == b.Value())
	case *working.Names:
		b := b.Addr().Interface().(*working.Names)
		return a.Known() == b.Known() && (!a.Known() || slices.Equal(a.Values(), b.Values()))
	}
	return false
}

// without judges the document again without one of its members, and gives the
// outcomes that are not as they were; "" is that of a part that is no more.
func (j *judging) without(pointer string) (map[change]judge.Outcome, error) {
	again, err := j.doc.Installation.LeaveOut(pointer)
	if err != nil {
		return nil, err
	}
	defer again()
	changed, _, err := j.changed(j.doc)
	return changed, err
}

// changed judges what is not as it was in another document, the same but for a
// change, and gives the outcomes that are not as they were; "" is that of a part
// that is no more. It reports as well whether the other document passes as far as
// it was judged.
func (j *judging) changed(doc *schema.Document) (map[change]judge.Outcome, bool, error) {
	after := facts.Derive(&doc.Installation, j.set.Book)
	changed := map[change]judge.Outcome{}
	j.cut(after, changed)
	r, err := judge.Derived(context.Background(), j.set, doc, after, judge.Options{})
	if err != nil {
		return nil, false, err
	}
	for k, o := range keyed(r) {
		if j.before[k] != o {
			changed[k] = o
		}
	}
	return changed, r.Passes, nil
}

// cut leaves of the facts only the parts that are not as they were, and notes
// what was judged of those that are gone.
func (j *judging) cut(after *facts.Facts, gone map[change]judge.Outcome) {
	whole := map[string]bool{}
	for i, l := range factLists { // that of the installation stands first
		kept := l.changed(j.parts[i], l.partsIn(after))
		if !l.list {
			for _, p := range kept {
				whole = j.judgedBy(l.differing(p, j.parts[i][idOf(p)]))
			}
			continue
		}
		j.noteGone(l, i, after, gone)
		if !whole[l.name] {
			l.keep(after, kept)
		}
	}
}

// judgedBy are the lists whose parts are judged by some fact of the installation.
func (j *judging) judgedBy(facts []string) map[string]bool {
	all := map[string]bool{}
	for _, f := range facts {
		for _, list := range j.named[f] {
			all[list] = true
		}
	}
	return all
}

// changed are the parts that are new or have other facts.
func (l factList) changed(before map[string]reflect.Value, after []reflect.Value) []reflect.Value {
	var some []reflect.Value
	for _, p := range after {
		if b, ok := before[idOf(p)]; !ok || len(l.differing(p, b)) > 0 {
			some = append(some, p)
		}
	}
	return some
}

// noteGone notes what was judged of parts that are no more. A list that had none was
// judged as a whole.
func (j *judging) noteGone(l factList, i int, after *facts.Facts, gone map[change]judge.Outcome) {
	had, have := j.parts[i], byID(l.partsIn(after))
	if len(had) == 0 && len(have) > 0 {
		had = map[string]reflect.Value{"installation": {}}
	}
	for id := range had {
		if _, still := have[id]; !still {
			for _, k := range j.judged[part{l.name, id}] {
				gone[k] = ""
			}
		}
	}
}

// keep leaves some of the parts of a list, or the first, so that a list is not
// taken for an empty one.
func (l factList) keep(f *facts.Facts, some []reflect.Value) {
	list := reflect.ValueOf(f).Elem().Field(l.index)
	if list.Len() == 0 {
		return
	}
	if len(some) == 0 {
		some = []reflect.Value{list.Index(0)}
	}
	kept := reflect.MakeSlice(list.Type(), 0, len(some))
	list.Set(reflect.Append(kept, some...))
}
