package schema

import (
	"reflect"
	"strings"
)

// NumberNamed is the number of a part, given as a pointer to it, that has a name in
// the document, as under_voltage_1_v; false where no member of that name is a number.
func NumberNamed(part any, name string) (Number, bool) {
	v := reflect.ValueOf(part).Elem()
	l := layoutOf(v.Type())
	f, ok := l.named[name]
	if !ok {
		return Number{}, false
	}
	n, ok := v.Field(l.fields[f].index).Interface().(Number)
	return n, ok
}

// Place is a text of the document, stated or not, and the part that it is of. A yes or
// no is one of those texts.
type Place struct {
	Text
	Part Pointer
	ID   Text // of the part, where it has one
}

// Places lists the texts of the installation that a path leads to, in the order of
// the document: a JSON pointer in which * stands for each part of a list, or for each
// member whose parts have what comes after, and kind=contract for those parts whose
// member kind reads so. A text that is not stated is among them where its part is, and
// where a list that the path names is not stated, one that stands there.
func Places(in *Installation, path string) []Place {
	var all []Place
	v := reflect.ValueOf(in).Elem()
	layoutOf(v.Type()).follow(v, Place{}, split(path), &all)
	return all
}

// follow follows a path down from a value, in the part that has been reached.
func (l *layout) follow(v reflect.Value, part Place, path []string, all *[]Place) {
	switch l.kind {
	case aText, aReference, aFlag:
		if len(path) == 0 {
			part.Text = textOf(v)
			*all = append(*all, part)
		}
	case anObject:
		if len(path) > 0 {
			l.followObject(v, part, path, all)
		}
	case aList:
		for i := 0; i < v.Len() && len(path) > 0; i++ {
			if item := v.Index(i); l.each.suits(item, path[0]) {
				l.each.follow(item, part, path[1:], all)
			}
		}
	}
}

func (l *layout) followObject(v reflect.Value, part Place, path []string, all *[]Place) {
	if l.pointer >= 0 {
		part.Part = v.Field(l.pointer).Interface().(Pointer)
	}
	if l.id >= 0 {
		part.ID = textOf(v.Field(l.fields[l.named["id"]].index))
	}
	for i := range l.fields {
		f := &l.fields[i]
		switch below := v.Field(f.index); {
		case f.kind == aList && f.name == path[0] && below.IsNil():
			*all = append(*all, Place{Text: Text{Pointer: Pointer{at: part.Part.Member(f.name)}}})
		case f.name == path[0] || path[0] == "*" && f.kind == aList:
			f.follow(below, part, path[1:], all)
		}
	}
}

// suits reports whether a part of a list is one that a step of a path means.
func (l *layout) suits(v reflect.Value, step string) bool {
	member, word, byWord := strings.Cut(step, "=")
	if !byWord || l.kind != anObject {
		return step == "*"
	}
	f, ok := l.named[member]
	return ok && (l.fields[f].kind == aText || l.fields[f].kind == aFlag) && textOf(v.Field(l.fields[f].index)).Is(word)
}

// textOf is a text, or that of a reference, or the word for a flag.
func textOf(v reflect.Value) Text {
	if f, ok := v.Interface().(Flag); ok {
		return Text{f.Pointer, map[bool]string{true: "yes", false: "no"}[f.Value]}
	}
	if r, ok := v.Addr().Interface().(linker); ok {
		return *r.text()
	}
	return v.Interface().(Text)
}
