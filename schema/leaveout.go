package schema

import (
	"fmt"
	"reflect"
	"slices"
	"strconv"
)

// LeaveOut makes the member at a JSON pointer not stated, as if the document did
// not have it, and hands back what states it again. It looks at nothing else: a
// document that could not be read without the member is not told from one that
// could. With it a program can ask at little cost what hangs on a member.
func (in *Installation) LeaveOut(pointer string) (stateAgain func(), err error) {
	return leaveOut(reflect.ValueOf(in).Elem(), split(pointer), "")
}

func leaveOut(v reflect.Value, path []string, at string) (func(), error) {
	if len(path) == 0 {
		return nil, fmt.Errorf("%s is no member of an object", Spoken(at))
	}
	below := at + "/" + escape(path[0])
	switch v.Kind() {
	case reflect.Struct:
		i := slices.IndexFunc(reflect.VisibleFields(v.Type()), func(f reflect.StructField) bool {
			name, ok := memberName(f)
			return ok && name == path[0]
		})
		if i < 0 {
			break
		}
		field := v.FieldByIndex(reflect.VisibleFields(v.Type())[i].Index)
		if len(path) > 1 {
			return leaveOut(field, path[1:], below)
		}
		return unstate(field, below)
	case reflect.Map:
		return leaveOutOfMap(v, path, below)
	case reflect.Slice:
		if i, err := strconv.Atoi(path[0]); err == nil && i >= 0 && i < v.Len() {
			return leaveOut(v.Index(i), path[1:], below)
		}
	}
	return nil, fmt.Errorf("there is no %s in the mirror", Spoken(below))
}

// unstate makes one field of the mirror what it is when nothing is stated.
func unstate(field reflect.Value, at string) (func(), error) {
	before := reflect.New(field.Type()).Elem()
	before.Set(field)
	field.SetZero()
	return func() { field.Set(before) }, fill(field, nil, at)
}

// leaveOutOfMap does it for a datasheet, or for a member of one. What a map
// holds cannot be changed in its place.
func leaveOutOfMap(m reflect.Value, path []string, at string) (func(), error) {
	key := reflect.ValueOf(path[0])
	before := m.MapIndex(key)
	if !before.IsValid() {
		return nil, fmt.Errorf("there is no %s in the mirror", Spoken(at))
	}
	if len(path) == 1 {
		m.SetMapIndex(key, reflect.Value{})
		return func() { m.SetMapIndex(key, before) }, nil
	}
	after := reflect.New(before.Type()).Elem()
	after.Set(before)
	again, err := leaveOut(after, path[1:], at)
	if err != nil {
		return nil, err
	}
	m.SetMapIndex(key, after)
	return func() { again(); m.SetMapIndex(key, before) }, nil
}
