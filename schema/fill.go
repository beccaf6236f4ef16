package schema

import (
	"encoding/json"
	"fmt"
	"reflect"
	"strconv"
	"strings"
)

var (
	pointerType = reflect.TypeFor[Pointer]()
	numberType  = reflect.TypeFor[Number]()
	textType    = reflect.TypeFor[Text]()
	flagType    = reflect.TypeFor[Flag]()
)

// fill copies a tree of plain values into the mirror v, giving every value its
// place, stated or not. The tree has passed its schema, so that a value of the
// wrong kind is a fault of the mirror, not of the document.
func fill(v reflect.Value, tree any, at string) error {
	switch v.Type() {
	case numberType:
		n, err := number(tree)
		v.Set(reflect.ValueOf(Number{Pointer{at, tree != nil}, n}))
		return err
	case textType:
		s, err := text(tree)
		v.Set(reflect.ValueOf(Text{Pointer{at, tree != nil}, s}))
		return err
	case flagType:
		b, _ := tree.(bool)
		v.Set(reflect.ValueOf(Flag{Pointer{at, tree != nil}, b}))
		return nil
	}
	switch v.Kind() {
	case reflect.Struct:
		return fillStruct(v, tree, at)
	case reflect.Slice:
		return fillSlice(v, tree, at)
	case reflect.Map:
		return fillMap(v, tree, at)
	case reflect.Interface:
		if tree != nil {
			v.Set(reflect.ValueOf(tree))
		}
		return nil
	}
	return fmt.Errorf("%s: the mirror has a field of type %s", Spoken(at), v.Type())
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

func fillStruct(v reflect.Value, tree any, at string) error {
	members, _ := tree.(map[string]any)
	for i := range v.NumField() {
		field := v.Type().Field(i)
		if field.Type == pointerType {
			v.Field(i).Set(reflect.ValueOf(Pointer{at, members != nil}))
			continue
		}
		name, ok := memberName(field)
		if !ok {
			continue
		}
		if err := fill(v.Field(i), members[name], at+"/"+escape(name)); err != nil {
			return err
		}
	}
	return nil
}

// memberName is the document's name of a field of the mirror.
func memberName(f reflect.StructField) (string, bool) {
	tag, ok := f.Tag.Lookup("json")
	name, _, _ := strings.Cut(tag, ",")
	return name, ok && name != "-"
}

func fillSlice(v reflect.Value, tree any, at string) error {
	items, ok := tree.([]any)
	if !ok {
		return nil // not stated: the list stays nil, and an empty one does not
	}
	list := reflect.MakeSlice(v.Type(), len(items), len(items))
	for i, item := range items {
		if err := fill(list.Index(i), item, at+"/"+strconv.Itoa(i)); err != nil {
			return err
		}
	}
	v.Set(list)
	return nil
}

func fillMap(v reflect.Value, tree any, at string) error {
	members, ok := tree.(map[string]any)
	if !ok {
		return nil
	}
	m := reflect.MakeMapWithSize(v.Type(), len(members))
	for name, member := range members {
		e := reflect.New(v.Type().Elem()).Elem()
		if err := fill(e, member, at+"/"+escape(name)); err != nil {
			return err
		}
		m.SetMapIndex(reflect.ValueOf(name), e)
	}
	v.Set(m)
	return nil
}
