package schema

import (
	"iter"
	"reflect"
	"strings"
)

// Ref is a text of the document that names a part by its id, or a datasheet by
// its key. The text itself is the Text; the part is To.
type Ref[T any] struct {
	Text
	to *T // nil where nothing bears the name
}

// To is the part or datasheet that the reference names. Where the reference is
// not stated, or leads nowhere, it is a blank one: no member of it is stated,
// and all of them stand where the reference does. What is derived from such a
// member is then unknown, and names the reference as what is missing.
// A blank one is made anew each time; whoever wants several members of it should
// ask once. The part must not be changed.
func (r Ref[T]) To() *T {
	if r.to != nil {
		return r.to
	}
	return Blank[T](r.at)
}

// Found reports whether the reference leads to a part or datasheet of the document.
func (r Ref[T]) Found() bool { return r.to != nil }

// Blank is a part none of whose members is stated, with the place at which
// something is missing as the place of every one of them.
func Blank[T any](at string) *T {
	part := new(T)
	v := reflect.ValueOf(part).Elem()
	layoutOf(v.Type()).leaveBlank(v, at)
	return part
}

// linker is a reference to a part of whatever type.
type linker interface {
	state(Text)
	text() *Text
	link(part any)
}

func (r *Ref[T]) state(t Text)  { *r = Ref[T]{Text: t} }
func (r *Ref[T]) text() *Text   { return &r.Text }
func (r *Ref[T]) link(part any) { r.to, _ = part.(*T) }

// index is what references can lead to.
type index struct {
	parts  map[string]part  // by id
	sheets map[sheetKey]any // a pointer to each datasheet
}

// part is a part of the installation that has an id.
type part struct {
	kind string // in words of the schema: string, board, spd
	id   *Text
	is   any // a pointer to it
}

type sheetKey struct{ kind, key string } // the kind as in datasheets/modules

// Resolve makes every reference of the installation lead to the part or datasheet that
// it names now. Decode does it; a program that changes ids, references or
// datasheets has to do it again.
func (in *Installation) Resolve() {
	in.link(in.index(func(Text, part) {}))
}

// index lists the parts and datasheets. Of parts with the same id only the first
// counts; the ids of the others are handed to twice.
func (in *Installation) index(twice func(id Text, first part)) index {
	x := index{map[string]part{}, in.sheets()}
	walk(in, func(l *layout, v reflect.Value) {
		if l.id < 0 {
			return
		}
		id := v.Field(l.id).Addr().Interface().(*Text)
		if !id.Stated() {
			return
		}
		if first, ok := x.parts[id.Value]; ok {
			twice(*id, first)
			return
		}
		x.parts[id.Value] = part{l.word, id, v.Addr().Interface()}
	})
	return x
}

// Kinds is the kind of each part by its id, in words of the schema: isolator, board;
// and behind it the part's own word for its kind or service: instrument.pv_tester, run.ac.
func (in *Installation) Kinds() map[string]string {
	kinds := map[string]string{}
	walk(in, func(l *layout, v reflect.Value) {
		if l.id < 0 {
			return
		}
		id, kind := textOf(v.Field(l.id)), l.word
		for _, word := range []string{"kind", "service"} {
			if i, ok := l.named[word]; ok && l.fields[i].kind == aText {
				kind = strings.TrimSuffix(kind+"."+textOf(v.Field(l.fields[i].index)).Value, ".")
			}
		}
		if id.Stated() && kinds[id.Value] == "" {
			kinds[id.Value] = kind
		}
	})
	return kinds
}

// sheets are the datasheets.
func (in *Installation) sheets() map[sheetKey]any {
	all := map[sheetKey]any{}
	sheets := reflect.ValueOf(&in.Datasheets).Elem()
	for _, f := range layoutOf(sheets.Type()).fields {
		if f.kind != aKeyed {
			continue
		}
		for key, sheet := range sheets.Field(f.index).Seq2() {
			all[sheetKey{"datasheets/" + f.name, key.String()}] = sheet.Interface()
		}
	}
	return all
}

// link makes the references lead to what is listed.
func (in *Installation) link(x index) {
	walk(in, func(l *layout, v reflect.Value) {
		for _, f := range l.names {
			for r := range f.links(v.Field(f.index)) {
				if strings.HasPrefix(f.refersTo, "datasheets/") {
					r.link(x.sheets[sheetKey{f.refersTo, r.text().Value}])
				} else {
					r.link(x.parts[r.text().Value].is)
				}
			}
		}
	})
}

// links are the references, one or a list of them, that a value is.
func (l *layout) links(v reflect.Value) iter.Seq[linker] {
	return func(yield func(linker) bool) {
		switch {
		case l.kind == aReference:
			yield(v.Addr().Interface().(linker))
		case l.kind == aList && l.each.kind == aReference:
			for i := range v.Len() {
				if !yield(v.Index(i).Addr().Interface().(linker)) {
					return
				}
			}
		}
	}
}

// walk visits every object of the installation, parents first. Datasheets are
// none: they neither have ids nor refer to anything.
func walk(in *Installation, visit func(l *layout, v reflect.Value)) {
	v := reflect.ValueOf(in).Elem()
	layoutOf(v.Type()).walk(v, visit)
}

func (l *layout) walk(v reflect.Value, visit func(l *layout, v reflect.Value)) {
	switch l.kind {
	case anObject:
		visit(l, v)
		for _, f := range l.inner {
			f.walk(v.Field(f.index), visit)
		}
	case aList:
		for i := range v.Len() {
			l.each.walk(v.Index(i), visit)
		}
	}
}
