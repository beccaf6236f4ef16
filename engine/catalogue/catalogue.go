// Package catalogue knows the facts as rules see them: the lists that are
// judged, the facts of each, of what kind each is, and how one is read from a
// part. It finds them in the Go structs of package facts: a fact added there is
// known to rules at once.
package catalogue

import (
	"fmt"
	"reflect"
	"slices"
	"sort"
	"strings"

	"sunclause/facts"
	"sunclause/facts/working"
	"sunclause/schema"
)

// Kind is what a fact is, as far as a comparison cares.
type Kind string

// The kinds of facts.
const (
	Number Kind = "number"
	Text   Kind = "text"
	Flag   Kind = "yes or no"
	List   Kind = "list of ids"
)

// Whole is the subject that is no list: the installation.
const Whole = "installation"

// Fact is one fact of a subject.
type Fact struct {
	Name  string
	Kind  Kind
	Words string // what it is
	Place int    // among the facts of its subject, from 0
	index []int  // of the field in the Go struct
}

// Subject is one list of facts, or the installation as a whole.
type Subject struct {
	Name  string
	Words string
	Many  bool // false for the installation as a whole
	Facts []*Fact

	field  int // of facts.Facts
	byName map[string]*Fact
}

// subjects are the lists of facts, in the order of their names.
var subjects, byName = read()

func read() ([]*Subject, map[string]*Subject) {
	var all []*Subject
	named := map[string]*Subject{}
	t := reflect.TypeFor[facts.Facts]()
	for i := range t.NumField() {
		f := t.Field(i)
		s := &Subject{Name: jsonName(f), Words: f.Tag.Get("words"), field: i, byName: map[string]*Fact{}}
		elem := f.Type
		if elem.Kind() == reflect.Slice {
			s.Many, elem = true, elem.Elem()
		}
		s.read(elem, nil)
		all = append(all, s)
		named[s.Name] = s
	}
	sort.Slice(all, func(i, j int) bool { return all[i].Name < all[j].Name })
	return all, named
}

var kinds = map[reflect.Type]Kind{
	reflect.TypeFor[working.Number](): Number,
	reflect.TypeFor[working.Text]():   Text,
	reflect.TypeFor[working.Flag]():   Flag,
	reflect.TypeFor[working.Names]():  List,
}

// read takes the facts of a struct and of those embedded in it.
func (s *Subject) read(t reflect.Type, above []int) {
	for i := range t.NumField() {
		f := t.Field(i)
		index := append(slices.Clone(above), i)
		if k, ok := kinds[f.Type]; ok {
			fact := &Fact{jsonName(f), k, f.Tag.Get("words"), len(s.Facts), index}
			s.Facts = append(s.Facts, fact)
			s.byName[fact.Name] = fact
		} else if f.Anonymous && f.Type.Kind() == reflect.Struct {
			s.read(f.Type, index)
		}
	}
}

func jsonName(f reflect.StructField) string {
	name, _, _ := strings.Cut(f.Tag.Get("json"), ",")
	return name
}

// Subjects lists what rules can judge, by name.
func Subjects() []*Subject { return subjects }

// Of finds a subject by its name.
func Of(name string) (*Subject, bool) {
	s, ok := byName[name]
	return s, ok
}

// Installation is the subject that is no list.
func Installation() *Subject { return byName[Whole] }

// Names lists the names of the subjects, in order.
func Names() []string {
	names := make([]string, len(subjects))
	for i, s := range subjects {
		names[i] = s.Name
	}
	return names
}

// Fact finds a fact of the subject by its name.
func (s *Subject) Fact(name string) (*Fact, bool) {
	f, ok := s.byName[name]
	return f, ok
}

// Find finds a fact by the name that rules use: of the subject itself, or of
// the installation when it begins with "installation.".
func (s *Subject) Find(name string) (of *Subject, f *Fact, ok bool) {
	if own, whole := strings.CutPrefix(name, Whole+"."); whole {
		s, name = Installation(), own
	}
	f, ok = s.byName[name]
	return s, f, ok
}

// FactNames lists the names of the subject's facts, as the struct has them.
func (s *Subject) FactNames() []string {
	names := make([]string, len(s.Facts))
	for i, f := range s.Facts {
		names[i] = f.Name
	}
	return names
}

// Words says what a fact is, by the names of its subject and its own; "" when
// there is none.
func Words(subject, fact string) string {
	s, ok := byName[subject]
	if !ok {
		return ""
	}
	f, ok := s.byName[fact]
	if !ok {
		return ""
	}
	return f.Words
}

// FullName is the name of a fact with that of its subject: strings.voc_max_v.
func FullName(subject, fact string) string {
	if strings.HasPrefix(fact, Whole+".") {
		return fact
	}
	return subject + "." + fact
}

// Put appends a part of the subject to the facts, or stands in the place of the
// installation, where facts given before stay. Given are plain values of the
// kinds that the facts have; all others stay unknown. It is for those who make
// up facts, as tests of rule sets do.
func (s *Subject) Put(f *facts.Facts, id string, plain map[string]any) {
	list := reflect.ValueOf(f).Elem().Field(s.field)
	part, name := list, "the installation"
	if s.Many {
		part, name = reflect.New(list.Type().Elem()).Elem(), id
	}
	part.FieldByName("Subject").Set(reflect.ValueOf(working.Subject{ID: id, Name: name}))
	for fact, v := range plain {
		f := s.byName[fact]
		part.FieldByIndex(f.index).Set(reflect.ValueOf(f.of(v)))
	}
	if s.Many {
		list.Set(reflect.Append(list, part))
	}
}

// of turns a plain value into a fact.
func (f *Fact) of(plain any) any {
	switch v := plain.(type) {
	case float64:
		return working.Figure(f.Name, "", v, "a test", working.ByDefinition)
	case string:
		return working.KnownText(v, "")
	case bool:
		return working.KnownFlag(v, "")
	case []string:
		return working.List(v...)
	}
	return nil
}

// Blank makes facts in which every list is stated and empty.
func Blank() *facts.Facts {
	f := &facts.Facts{}
	v := reflect.ValueOf(f).Elem()
	for _, s := range subjects {
		if field := v.Field(s.field); s.Many {
			field.Set(reflect.MakeSlice(field.Type(), 0, 1))
		}
	}
	return f
}

// Changed copies the facts with one number of every part of the subject put
// through a function; ok is false when no part knows the number.
func (s *Subject) Changed(all *facts.Facts, number *Fact, change func(float64) float64) (changed *facts.Facts, ok bool) {
	c := *all
	field := reflect.ValueOf(&c).Elem().Field(s.field)
	if s.Many && !field.IsNil() {
		clone := reflect.MakeSlice(field.Type(), field.Len(), field.Len())
		reflect.Copy(clone, field)
		field.Set(clone)
	}
	parts, _ := s.Parts(&c)
	for _, p := range parts {
		if n := p.number(number); n.Known() {
			*n = working.Figure(number.Name, "", change(n.Value()), "a test", working.ByDefinition)
			ok = true
		}
	}
	return &c, ok
}

// mostNamed is how many names a message lists where none is near.
const mostNamed = 20

// DidYouMean is the remedy for a name that there is not: the one that is most
// like it, or those there are.
func DidYouMean(word string, candidates []string) string {
	if near := schema.Nearest(word, candidates); near != "" {
		return fmt.Sprintf("did you mean %q?", near)
	}
	if more := len(candidates) - mostNamed; more > 0 {
		return fmt.Sprintf("there are %s and %d more; docs/facts.md lists facts, sunclause rules figures", strings.Join(candidates[:mostNamed], ", "), more)
	}
	return "there are " + strings.Join(candidates, ", ")
}
