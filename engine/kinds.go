package engine

import (
	"reflect"
	"slices"
	"sort"
	"strings"

	"sunclause/facts"
	"sunclause/facts/working"
)

// kind is what a fact is, as far as a comparison cares.
type kind string

const (
	aNumber kind = "number"
	aText   kind = "text"
	aFlag   kind = "yes or no"
	aList   kind = "list of ids"
)

// wholeInstallation is the subject that is no list.
const wholeInstallation = "installation"

// factField is one fact of a subject: its name, kind and where it is in the Go
// struct.
type factField struct {
	name  string
	kind  kind
	words string
	index []int
}

// subjectKind is one list of facts.
type subjectKind struct {
	name   string
	words  string
	field  int // of facts.Facts
	list   bool
	fields []factField
	byName map[string]factField
}

// subjectKinds are the lists of facts, found in the Go structs: a fact added
// there is known to rules at once, with its kind.
var subjectKinds = func() map[string]subjectKind {
	kinds := map[string]subjectKind{}
	t := reflect.TypeFor[facts.Facts]()
	for i := range t.NumField() {
		f := t.Field(i)
		k := subjectKind{name: jsonName(f), words: f.Tag.Get("words"), field: i, byName: map[string]factField{}}
		elem := f.Type
		if elem.Kind() == reflect.Slice {
			k.list, elem = true, elem.Elem()
		}
		k.fields = factFields(elem)
		for _, ff := range k.fields {
			k.byName[ff.name] = ff
		}
		kinds[k.name] = k
	}
	return kinds
}()

var factKinds = map[reflect.Type]kind{
	reflect.TypeFor[working.Number](): aNumber,
	reflect.TypeFor[working.Text]():   aText,
	reflect.TypeFor[working.Flag]():   aFlag,
	reflect.TypeFor[working.Names]():  aList,
}

func factFields(t reflect.Type) []factField {
	var fields []factField
	for _, f := range reflect.VisibleFields(t) {
		if k, ok := factKinds[f.Type]; ok {
			fields = append(fields, factField{jsonName(f), k, f.Tag.Get("words"), f.Index})
		}
	}
	return fields
}

func jsonName(f reflect.StructField) string {
	name, _, _ := strings.Cut(f.Tag.Get("json"), ",")
	return name
}

// names lists the facts of a subject, for the message that says which there are.
func (k subjectKind) names() []string {
	names := make([]string, len(k.fields))
	for i, f := range k.fields {
		names[i] = f.name
	}
	return names
}

// subjectNames lists what a rule can judge.
func subjectNames() []string {
	var names []string
	for n := range subjectKinds {
		names = append(names, n)
	}
	sort.Strings(names)
	return names
}

// comparisons that each kind of fact allows.
var comparisons = map[kind][]string{
	aNumber: {"at_most", "at_least", "below", "above", "equals", "differs"},
	aText:   {"equals", "differs", "one_of", "none_of", "since", "until"},
	aFlag:   {"equals", "differs"},
	aList:   {"includes", "lacks"},
}

// allComparisons are what a row or condition may say.
var allComparisons = slices.Compact(slices.Sorted(func(yield func(string) bool) {
	for _, names := range comparisons {
		for _, name := range names {
			if !yield(name) {
				return
			}
		}
	}
}))

func allows(k kind, comparison string) bool { return slices.Contains(comparisons[k], comparison) }

// value is one fact of one subject, found in the Go structs.
type value struct {
	plain   any // float64, string, bool or []string; nil when unknown
	unit    string
	missing []string
}

// valueOf reads one fact of a subject.
func valueOf(subject reflect.Value, f factField) value {
	switch w := subject.FieldByIndex(f.index).Interface().(type) {
	case working.Number:
		if w.Known() {
			return value{plain: w.Value(), unit: w.Unit()}
		}
		return value{unit: w.Unit(), missing: w.Missing()}
	case working.Text:
		if w.Known() {
			return value{plain: w.Value()}
		}
		return value{missing: w.Missing()}
	case working.Flag:
		if w.Known() {
			return value{plain: w.Value()}
		}
		return value{missing: w.Missing()}
	case working.Names:
		if w.Known() {
			return value{plain: w.Values()}
		}
		return value{missing: w.Missing()}
	}
	return value{}
}

// subjectsOf lists the subjects of a kind in the facts of an installation;
// stated is false when the document does not state the parts at all.
func subjectsOf(f *facts.Facts, k subjectKind) (subjects []reflect.Value, stated bool) {
	v := reflect.ValueOf(f).Elem().Field(k.field)
	if !k.list {
		return []reflect.Value{v}, true
	}
	for i := range v.Len() {
		subjects = append(subjects, v.Index(i))
	}
	return subjects, !v.IsNil()
}

// subjectOf is the part that a set of facts is about.
func subjectOf(v reflect.Value) working.Subject {
	return v.FieldByName("Subject").Interface().(working.Subject)
}
