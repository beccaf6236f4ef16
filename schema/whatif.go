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
	v := reflect.ValueOf(in).Elem()
	again, err := layoutOf(v.Type()).leaveOut(v, split(pointer), "")
	if err != nil {
		return nil, err
	}
	in.Resolve()
	return func() { again(); in.Resolve() }, nil
}

func (l *layout) leaveOut(v reflect.Value, path []string, at string) (func(), error) {
	if len(path) == 0 {
		return nil, fmt.Errorf("%s is no member of an object", Spoken(at))
	}
	below := at + "/" + escape(path[0])
	switch l.kind {
	case anObject:
		i := slices.IndexFunc(l.fields, func(f field) bool { return f.name == path[0] })
		if i < 0 {
			break
		}
		f := &l.fields[i]
		if len(path) > 1 {
			return f.leaveOut(v.Field(f.index), path[1:], below)
		}
		return f.unstate(v.Field(f.index), below)
	case aKeyed:
		return l.leaveOutOfMap(v, path, below)
	case aList:
		if i, err := strconv.Atoi(path[0]); err == nil && i >= 0 && i < v.Len() {
			return l.each.leaveOut(v.Index(i), path[1:], below)
		}
	}
	return nil, fmt.Errorf("there is no %s in the mirror", Spoken(below))
}

// unstate makes one field of the mirror what it is when nothing is stated.
func (l *layout) unstate(v reflect.Value, at string) (func(), error) {
	before := reflect.New(v.Type()).Elem()
	before.Set(v)
	v.SetZero()
	return func() { v.Set(before) }, l.fill(v, nil, at)
}

// leaveOutOfMap does it for a datasheet, or for a member of one.
func (l *layout) leaveOutOfMap(m reflect.Value, path []string, at string) (func(), error) {
	key := reflect.ValueOf(path[0])
	sheet := m.MapIndex(key)
	switch {
	case !sheet.IsValid():
		return nil, fmt.Errorf("there is no %s in the mirror", Spoken(at))
	case len(path) > 1:
		return l.each.leaveOut(sheet.Elem(), path[1:], at)
	}
	m.SetMapIndex(key, reflect.Value{})
	return func() { m.SetMapIndex(key, sheet) }, nil
}

// DesignedOn is the installation as if it had been designed on another day, a
// date as in the document.
func (in Installation) DesignedOn(day string) Installation {
	date := &in.Project.DesignDate
	date.Value, date.stated = day, true
	return in
}
