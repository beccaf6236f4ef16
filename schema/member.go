package schema

import "reflect"

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
