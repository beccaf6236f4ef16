package schema

import (
	"iter"
	"reflect"
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
	text() Text
	link(part any)
}

func (r *Ref[T]) state(t Text)  { *r = Ref[T]{Text: t} }
func (r *Ref[T]) text() Text    { return r.Text }
func (r *Ref[T]) link(part any) { r.to, _ = part.(*T) }

// target is what a reference asks for: a kind of part and its id, or a kind of
// datasheet and its key.
type target struct{ kind, name string }

// Resolve makes every reference of the installation lead to the part or datasheet that
// it names now. Decode does it; a program that changes ids, references or
// datasheets has to do it again.
func (in *Installation) Resolve() {
	named := in.sheets()
	walk(in, func(l *layout, v reflect.Value) {
		if id, ok := l.idOf(v); ok {
			named[target{l.word, id.Value}] = v.Addr().Interface()
		}
	})
	walk(in, func(l *layout, v reflect.Value) {
		for i := range l.fields {
			f := &l.fields[i]
			for r := range f.links(v.Field(f.index)) {
				r.link(named[target{f.refersTo, r.text().Value}])
			}
		}
	})
}

// sheets are the datasheets, each a copy: what a map holds has no address.
func (in *Installation) sheets() map[target]any {
	named := map[target]any{}
	sheets := reflect.ValueOf(&in.Datasheets).Elem()
	for _, f := range layoutOf(sheets.Type()).fields {
		for key, sheet := range sheets.Field(f.index).Seq2() {
			held := reflect.New(sheet.Type())
			held.Elem().Set(sheet)
			named[target{"datasheets/" + f.name, key.String()}] = held.Interface()
		}
	}
	return named
}

// links are the references, one or a list of them, that a value is.
func (l *layout) links(v reflect.Value) iter.Seq[linker] {
	return func(yield func(linker) bool) {
		switch {
		case l.kind == aReference:
			yield(v.Addr().Interface().(linker))
		case l.kind == aList && l.each.kind == aReference:
			for i := range v.Len() {
				l.each.links(v.Index(i))(yield)
			}
		}
	}
}
