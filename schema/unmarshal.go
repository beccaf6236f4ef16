package schema

import (
	"fmt"
	"reflect"
	"strconv"
	"strings"
	"sync"
)

// layout is how a Go type of a mirror is filled, found out once for each type.
type layout struct {
	kind    layoutKind
	word    string         // for the kind of part, as references say it; of objects
	pointer int            // index of the field that keeps the place of an object, or -1
	id      int            // index of the field that names a part in the whole document, or -1
	fields  []field        // of objects
	named   map[string]int // number of a field by the member's name
	below   int            // length of all that leads to the members
	each    *layout        // of lists and keyed ones
	held    reflect.Type   // of keyed ones: what stands under each key, or what the pointer there leads to
	inner   []*field       // fields that are objects or lists of such; datasheets are not among them
	names   []*field       // fields whose texts name parts or datasheets
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
		l.kind = aReference
	case t.Kind() == reflect.Struct:
		l.kind = anObject
		l.addFields(t)
	case t.Kind() == reflect.Slice:
		l.kind, l.each = aList, makeLayout(t.Elem())
	case t.Kind() == reflect.Map && t.Key().Kind() == reflect.String:
		l.kind, l.held = aKeyed, t.Elem()
		if l.held.Kind() == reflect.Pointer {
			l.held = l.held.Elem()
		}
		l.each = makeLayout(l.held)
	case t.Kind() == reflect.Interface:
		l.kind = anything
	default:
		panic(fmt.Sprintf("schema: a mirror has a field of type %s", t))
	}
	return l
}

func (l *layout) addFields(t reflect.Type) {
	l.word, l.pointer, l.id, l.named = kindOf(t), -1, -1, map[string]int{}
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
		if name == "id" && f.Type == reflect.TypeFor[Text]() && f.Tag.Get("unique") != "part" { // ways are numbered on each device anew
			l.id = i
		}
		below := "/" + escape(name)
		l.named[name], l.below = len(l.fields), l.below+len(below)
		l.fields = append(l.fields, field{i, name, below, f.Tag.Get("ref"), makeLayout(f.Type)})
	}
	for i := range l.fields {
		f := &l.fields[i]
		if f.kind == anObject || f.kind == aList && f.each.kind == anObject {
			l.inner = append(l.inner, f)
		}
		if f.refersTo != "" {
			l.names = append(l.names, f)
		}
	}
	if len(l.fields) > mostFields {
		panic(fmt.Sprintf("schema: %s has more than %d fields", t, mostFields))
	}
}

// mostFields is how many members an object of a mirror has at most.
const mostFields = 64

// fill copies a tree into the mirror v, a pointer to a struct, giving every value
// its place, stated or not. The tree has passed its schema, so that a value of
// the wrong kind is a fault of the mirror, not of the document.
func fill(v any, tree *node) error {
	target := reflect.ValueOf(v).Elem()
	return layoutOf(target.Type()).fill(target, tree, "")
}

// fill copies a value, nil where it is not stated. A value that is null is not
// stated either.
func (l *layout) fill(v reflect.Value, n *node, at string) error {
	if n != nil && n.kind == isNull {
		n = nil
	}
	p := Pointer{at: at, stated: n != nil}
	switch l.kind {
	case aNumber:
		value, err := n.number()
		*v.Addr().Interface().(*Number) = Number{p, value}
		return err
	case aText:
		value, err := n.words()
		*v.Addr().Interface().(*Text) = Text{p, value}
		return err
	case aFlag:
		*v.Addr().Interface().(*Flag) = Flag{p, n != nil && n.kind == isTrue}
	case aReference:
		value, err := n.words()
		v.Addr().Interface().(linker).state(Text{p, value})
		return err
	case anObject:
		return l.fillObject(v, n, at)
	case aList:
		return l.fillList(v, n, at)
	case aKeyed:
		return l.fillKeyed(v, n, at)
	case anything:
		if n != nil {
			v.Set(reflect.ValueOf(n.plain()))
		}
	}
	return nil
}

// number is the value of a number; zero where there is none.
func (n *node) number() (float64, error) {
	if n == nil {
		return 0, nil
	}
	if n.kind != isNumber {
		return 0, fmt.Errorf("found %s, allowed a number", describe(n.plain()))
	}
	return strconv.ParseFloat(n.text, 64)
}

// words are those of a text; none where there is none.
func (n *node) words() (string, error) {
	if n == nil {
		return "", nil
	}
	if n.kind != isText {
		return "", fmt.Errorf("found %s, allowed a text", describe(n.plain()))
	}
	return n.text, nil
}

func (l *layout) fillObject(v reflect.Value, n *node, at string) error {
	stated := n != nil && n.kind == isObject
	if l.pointer >= 0 {
		*v.Field(l.pointer).Addr().Interface().(*Pointer) = Pointer{at: at, stated: stated}
	}
	var own [mostFields]*node
	if stated {
		for i := range n.children {
			if f, ok := l.named[n.children[i].name]; ok {
				own[f] = &n.children[i]
			}
		}
	}
	// the pointers of all members are parts of one text, which is made at once
	var all strings.Builder
	all.Grow(len(l.fields)*len(at) + l.below)
	for i := range l.fields {
		from := all.Len()
		all.WriteString(at)
		all.WriteString(l.fields[i].below)
		if err := l.fields[i].fill(v.Field(l.fields[i].index), own[i], all.String()[from:]); err != nil {
			return err
		}
	}
	return nil
}

func (l *layout) fillList(v reflect.Value, n *node, at string) error {
	if n == nil || n.kind != isList {
		return nil // not stated: the list stays nil, and an empty one does not
	}
	v.Set(reflect.MakeSlice(v.Type(), len(n.children), len(n.children)))
	for i := range n.children {
		if err := l.each.fill(v.Index(i), &n.children[i], at+"/"+strconv.Itoa(i)); err != nil {
			return err
		}
	}
	return nil
}

func (l *layout) fillKeyed(v reflect.Value, n *node, at string) error {
	if n == nil || n.kind != isObject {
		return nil
	}
	v.Set(reflect.MakeMapWithSize(v.Type(), len(n.children)))
	for i := range n.children {
		held := reflect.New(l.held)
		name := n.children[i].name
		if err := l.each.fill(held.Elem(), &n.children[i], at+"/"+escape(name)); err != nil {
			return err
		}
		if v.Type().Elem() != held.Type() {
			held = held.Elem()
		}
		v.SetMapIndex(reflect.ValueOf(name), held)
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
