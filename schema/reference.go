package schema

import (
	"fmt"
	"reflect"
	"sort"
	"strings"
)

// checkReferences makes sure that ids are unique and that every reference leads
// somewhere: to a datasheet under its key, to a part by its id, or to one of a
// part's terminals.
func checkReferences(d *Document) Problems {
	c := &references{doc: d, kinds: map[string]string{}, first: map[string]string{}}
	root := reflect.ValueOf(&d.Installation).Elem()
	walk(root, c.collect)
	walk(root, c.resolve)
	c.checkRuns()
	c.checkModules()
	return c.problems
}

type references struct {
	doc      *Document
	kinds    map[string]string // kind of part, by id
	first    map[string]string // where the id was first met
	problems Problems
}

// localIDs are ids that count only inside their part: ways are numbered on
// each device anew.
var localIDs = map[string]bool{"isolator_way": true, "board_way": true}

// walk visits every struct of the mirror that the document states, parents first.
func walk(v reflect.Value, visit func(v reflect.Value)) {
	switch v.Kind() {
	case reflect.Struct:
		if v.Type() == textType || v.Type() == numberType || v.Type() == flagType || v.Type() == pointerType {
			return
		}
		visit(v)
		for i := range v.NumField() {
			walk(v.Field(i), visit)
		}
	case reflect.Slice:
		for i := range v.Len() {
			walk(v.Index(i), visit)
		}
	case reflect.Map:
		for _, k := range sortedKeys(v) {
			walk(v.MapIndex(k), visit)
		}
	}
}

func sortedKeys(m reflect.Value) []reflect.Value {
	keys := m.MapKeys()
	sort.Slice(keys, func(i, j int) bool { return keys[i].String() < keys[j].String() })
	return keys
}

func (c *references) collect(v reflect.Value) {
	f := v.FieldByName("ID")
	if !f.IsValid() || f.Type() != textType || localIDs[kindOf(v.Type())] {
		return
	}
	id := f.Interface().(Text)
	if !id.Stated() {
		return
	}
	if at, twice := c.first[id.Value]; twice {
		line := c.doc.Position(at).Line
		c.problems = append(c.problems, c.doc.problemAt(id.At(),
			fmt.Sprintf("id %q stands twice; the first is on line %d", id.Value, line), "give each part an id of its own"))
		return
	}
	c.first[id.Value] = id.At()
	c.kinds[id.Value] = kindOf(v.Type())
}

// kindOf is the word for a kind of part: the name of its type in small letters.
func kindOf(t reflect.Type) string {
	name := t.Name()
	if name == strings.ToUpper(name) {
		return strings.ToLower(name)
	}
	var b strings.Builder
	for i, r := range name {
		if i > 0 && r >= 'A' && r <= 'Z' {
			b.WriteByte('_')
		}
		b.WriteRune(r)
	}
	return strings.ToLower(b.String())
}

func (c *references) resolve(v reflect.Value) {
	for i := range v.NumField() {
		kind, ok := v.Type().Field(i).Tag.Lookup("ref")
		if !ok {
			continue
		}
		switch f := v.Field(i).Interface().(type) {
		case Text:
			c.reference(kind, f)
		case []Text:
			for _, t := range f {
				c.reference(kind, t)
			}
		}
	}
}

func (c *references) reference(kind string, t Text) {
	if !t.Stated() {
		return
	}
	switch {
	case kind == "terminal":
		c.terminal(t)
	case strings.HasPrefix(kind, "datasheets/"):
		c.datasheet(kind, t)
	default:
		c.part(kind, t)
	}
}

func (c *references) datasheet(kind string, t Text) {
	sheets, _ := c.doc.lookup("/" + kind)
	members, _ := sheets.(map[string]any)
	if _, ok := members[t.Value]; ok {
		return
	}
	var known []string
	for k := range members {
		known = append(known, k)
	}
	sort.Strings(known)
	c.unknown(t, fmt.Sprintf("there is no %q among the %s", t.Value, strings.ReplaceAll(kind, "/", " of ")), known)
}

func (c *references) part(kind string, t Text) {
	got, ok := c.kinds[t.Value]
	if !ok {
		c.unknown(t, fmt.Sprintf("there is no %s with the id %q", inPlainWords(kind), t.Value), c.idsOf(kind))
		return
	}
	if kind != "any_part" && got != kind {
		c.unknown(t, fmt.Sprintf("%q is a %s; a %s is wanted here", t.Value, inPlainWords(got), inPlainWords(kind)), c.idsOf(kind))
	}
}

func inPlainWords(kind string) string {
	if kind == "any_part" {
		return "part"
	}
	return strings.ReplaceAll(kind, "_", " ")
}

func (c *references) idsOf(kind string) []string {
	var ids []string
	for id, k := range c.kinds {
		if k == kind || kind == "any_part" {
			ids = append(ids, id)
		}
	}
	sort.Strings(ids)
	return ids
}

// unknown reports a reference that leads nowhere, with what it may have meant.
func (c *references) unknown(t Text, what string, known []string) {
	remedy := "describe it first"
	switch near := nearest(t.Value, known); {
	case near != "":
		remedy = fmt.Sprintf("did you mean %q?", near)
	case len(known) > 0 && len(known) <= 12:
		remedy = "there are " + strings.Join(known, ", ")
	case len(known) > 12:
		remedy = "there are " + strings.Join(known[:12], ", ") + " and others"
	}
	c.problems = append(c.problems, c.doc.problemAt(t.At(), Spoken(t.At())+": "+what, remedy))
}
