package working

import "reflect"

// Blank leaves every fact of a part unknown because the named member is missing:
// of a list of parts that the document does not state, one part stands for all
// that there may be. Part is a pointer to a struct of facts.
func Blank(part any, missing string) {
	v := reflect.ValueOf(part).Elem()
	for _, field := range reflect.VisibleFields(v.Type()) {
		if field.Anonymous || !field.IsExported() {
			continue
		}
		switch fact := v.FieldByIndex(field.Index).Addr().Interface().(type) {
		case *Number:
			*fact = Unknown("", "", missing)
		case *Text:
			*fact = UnknownText(missing)
		case *Flag:
			*fact = UnknownFlag(missing)
		case *Names:
			*fact = UnknownList(missing)
		}
	}
}
