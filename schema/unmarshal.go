package schema

import (
	"encoding/json"
	"fmt"
	"reflect"
	"strconv"
	"sync"
)

// layout is how a Go type of a mirror is filled, found out once for each type.
type layout struct {
	kind    layoutKind
	word    string  // for the kind of part, as references say it; of objects
	pointer int     // index of the field that keeps the place of an object, or -1
	id      int     // index of the field that names a part, or -1
	fields  []field // of objects
	each    *layout // of lists and keyed ones
	parts   bool    // whether references or objects stand in it, however deep
}

type layoutKind int

const (
	aNumber layoutKind = iota
	aText
	aFlag
	aReference
	anObject
	aList
	aKeyed
	anything
)

// field is a member of an object in the mirror.
type field struct {
	index    int
	name     string // the member's name in the document
	below    string // what leads from the object's pointer to the member's
	refersTo string // what kind of part its text names; "" where it names none
	*layout
}

var layouts = struct {
	sync.Mutex
	of map[reflect.Type]*layout
}{of: map[reflect.Type]*layout{}}

func layoutOf(t reflect.Type) *layout {
	layouts.Lock()
	defer layouts.Unlock()
	return makeLayout(t)
}

func makeLayout(t reflect.Type) *layout {
	if l, ok := layouts.of[t]; ok {
		return l
	}
	l := &layout{}
	layouts.of[t] = l
	switch {
	case t == reflect.TypeFor[Number]():
		l.kind = aNumber
	case t == reflect.TypeFor[Text]():
		l.kind = aText
	case t == reflect.TypeFor[Flag]():
		l.kind = aFlag
	case reflect.PointerTo(t).Implements(reflect.TypeFor[linker]()):
		l.kind, l.parts = aReference, true
	case t.Kind() == reflect.Struct:
		l.kind, l.parts = anObject, true
		l.addFields(t)
	case t.Kind() == reflect.Slice:
		l.kind, l.each = aList, makeLayout(t.Elem())
		l.parts = l.each.parts
	case t.Kind() == reflect.Map && t.Key().Kind() == reflect.String:
		l.kind, l.each = aKeyed, makeLayout(t.Elem())
		l.parts = l.each.parts
	case t.Kind() == reflect.Interface:
		l.kind = anything
	default:
		panic(fmt.Sprintf("schema: a mirror has a field of type %s", t))
	}
	return l
}

func (l *layout) addFields(t reflect.Type) {
	l.word, l.pointer, l.id = kindOf(t), -1, -1
	for i := range t.NumField() {
		f := t.Field(i)
		if f.Type == reflect.TypeFor[Pointer]() {
			l.pointer = i
			continue
		}
		name := f.Tag.Get("json")
		if name == "" || name == "-" {
			continue
		}
		if name == "id" && f.Type == reflect.TypeFor[Text]() {
			l.id = i
		}
		l.fields = append(l.fields, field{i, name, "/" + escape(name), f.Tag.Get("ref"), makeLayout(f.Type)})
	}
}

// fill copies a tree of plain values into the mirror v, a pointer to a struct,
// giving every value its place, stated or not. The tree has passed its schema,
// so that a value of the wrong kind is a fault of the mirror, not of the
// document.
func fill(v any, tree any) error {
	target := reflect.ValueOf(v).Elem()
	return layoutOf(target.Type()).fill(target, tree, "")
}

func (l *layout) fill(v reflect.Value, tree any, at string) error {
	p := Pointer{at: at, stated: tree != nil}
	switch l.kind {
	case aNumber:
		n, err := number(tree)
		*v.Addr().Interface().(*Number) = Number{p, n}
		return err
	case aText:
		s, err := text(tree)
		*v.Addr().Interface().(*Text) = Text{p, s}
		return err
	case aFlag:
		b, _ := tree.(bool)
		*v.Addr().Interface().(*Flag) = Flag{p, b}
	case aReference:
		s, err := text(tree)
		v.Addr().Interface().(linker).state(Text{p, s})
		return err
	case anObject:
		return l.fillObject(v, tree, at)
	case aList:
		return l.fillList(v, tree, at)
	case aKeyed:
		return l.fillKeyed(v, tree, at)
	case anything:
		if tree != nil {
			v.Set(reflect.ValueOf(tree))
		}
	}
	return nil
}

func number(tree any) (float64, error) {
	switch n := tree.(type) {
	case nil:
		return 0, nil
	case json.Number:
		return n.Float64()
	}
	return 0, fmt.Errorf("found %s, allowed a number", found(tree))
}

func text(tree any) (string, error) {
	switch s := tree.(type) {
	case nil:
		return "", nil
	case string:
		return s, nil
	}
	return "", fmt.Errorf("found %s, allowed a text", found(tree))
}

func (l *layout) fillObject(v reflect.Value, tree any, at string) error {
	members, stated := tree.(map[string]any)
	if l.pointer >= 0 {
		*v.Field(l.pointer).Addr().Interface().(*Pointer) = Pointer{at: at, stated: stated}
	}
	for i := range l.fields {
		f := &l.fields[i]
		if err := f.fill(v.Field(f.index), members[f.name], at+f.below); err != nil {
			return err
		}
	}
	return nil
}

func (l *layout) fillList(v reflect.Value, tree any, at string) error {
	items, ok := tree.([]any)
	if !ok {
		return nil // not stated: the list stays nil, and an empty one does not
	}
	v.Set(reflect.MakeSlice(v.Type(), len(items), len(items)))
	for i, item := range items {
		if err := l.each.fill(v.Index(i), item, at+"/"+strconv.Itoa(i)); err != nil {
			return err
		}
	}
	return nil
}

func (l *layout) fillKeyed(v reflect.Value, tree any, at string) error {
	members, ok := tree.(map[string]any)
	if !ok {
		return nil
	}
	v.Set(reflect.MakeMapWithSize(v.Type(), len(members)))
	for name, member := range members {
		e := reflect.New(v.Type().Elem()).Elem()
		if err := l.each.fill(e, member, at+"/"+escape(name)); err != nil {
			return err
		}
		v.SetMapIndex(reflect.ValueOf(name), e)
	}
	return nil
}

// leaveBlank makes every member of an object not stated, however deep, and gives
// all the one place at which something is missing.
func (l *layout) leaveBlank(v reflect.Value, at string) {
	p := Pointer{at: at, blank: true}
	switch l.kind {
	case aNumber:
		*v.Addr().Interface().(*Number) = Number{Pointer: p}
	case aText:
		*v.Addr().Interface().(*Text) = Text{Pointer: p}
	case aFlag:
		*v.Addr().Interface().(*Flag) = Flag{Pointer: p}
	case aReference:
		v.Addr().Interface().(linker).state(Text{Pointer: p})
	case anObject:
		if l.pointer >= 0 {
			*v.Field(l.pointer).Addr().Interface().(*Pointer) = p
		}
		for i := range l.fields {
			l.fields[i].leaveBlank(v.Field(l.fields[i].index), at)
		}
	default:
		v.SetZero()
	}
}
