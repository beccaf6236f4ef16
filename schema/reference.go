package schema

import (
	"fmt"
	"iter"
	"reflect"
	"slices"
	"strings"
	"unicode"
)

// checkReferences makes sure that ids are unique and that every reference leads
// somewhere: to a datasheet under its key, to a part by its id, or to one of a
// part's terminals.
func checkReferences(d *Document) *findings {
	c := &references{doc: d, found: &findings{source: d.Source}, ids: map[string][]string{}, ends: map[string][]string{}}
	if c.tooManySegments(); len(c.found.list) > 0 {
		return c.found
	}
	c.index = d.Installation.index(c.duplicate)
	d.Installation.link(c.index)
	walk(&d.Installation, c.resolve)
	c.checkRuns()
	c.checkSheets()
	c.checkLabels()
	c.checkDepartures()
	return c.found
}

// tooManySegments refuses what would cost minutes to judge: every stretch of
// cable is judged by itself.
func (c *references) tooManySegments() {
	n := 0
	for _, r := range c.doc.Installation.Cables {
		n += len(r.Segments)
	}
	if n > maxSegments {
		c.found.say(0, "/cables", fmt.Sprintf("the runs of cable have %d segments in all; at most %d are read", n, maxSegments), "split the job into several documents")
	}
}

type references struct {
	index
	doc   *Document
	found *findings
	ids   map[string][]string // ids or keys in order, by kind; filled when asked for
	ends  map[string][]string // terminals, by id; filled when asked for
}

func (c *references) duplicate(id Text, first part) {
	c.add(id, func() (string, string) {
		return fmt.Sprintf("id %q stands twice; the first is on line %d", id.Value, c.doc.Position(first.id.At()).Line), "give each part an id of its own"
	})
}

// kindOf is the word for a kind of part: the name of its type in small letters,
// a new word at each capital that is not within initials: ac_circuit, spd.
func kindOf(t reflect.Type) string {
	name := []rune(t.Name())
	var b strings.Builder
	for i, r := range name {
		begins := i > 0 && unicode.IsUpper(r) &&
			(unicode.IsLower(name[i-1]) || i+1 < len(name) && unicode.IsLower(name[i+1]))
		if begins {
			b.WriteByte('_')
		}
		b.WriteRune(unicode.ToLower(r))
	}
	return b.String()
}

func (c *references) resolve(l *layout, v reflect.Value) {
	for _, f := range l.names {
		for t := range f.texts(v.Field(f.index)) {
			c.reference(f.refersTo, *t)
		}
	}
}

// texts are the text, or the texts of the list, that a value is.
func (l *layout) texts(v reflect.Value) iter.Seq[*Text] {
	return func(yield func(*Text) bool) {
		switch l.kind {
		case aText:
			yield(v.Addr().Interface().(*Text))
		case aReference:
			yield(v.Addr().Interface().(linker).text())
		case aList:
			for i := range v.Len() {
				for t := range l.each.texts(v.Index(i)) {
					if !yield(t) {
						return
					}
				}
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

// add notes a problem with a value, to be put into words later.
func (c *references) add(at interface{ At() string }, tell func() (what, remedy string)) {
	pointer := at.At()
	c.found.add(c.doc.offset(pointer), "", func() Problem {
		what, remedy := tell()
		return c.doc.ProblemAt(pointer, what, remedy)
	})
}

func (c *references) datasheet(kind string, t Text) {
	if _, ok := c.sheets[sheetKey{kind, t.Value}]; ok {
		return
	}
	c.add(t, func() (string, string) {
		sheet := strings.ReplaceAll(strings.TrimPrefix(kind, "datasheets/"), "_", " ")
		remedy := fmt.Sprintf("put the maker's figures under %s.%s", Spoken("/"+kind), t.Value)
		return fmt.Sprintf("%s: there is no datasheet %q among the %s", Spoken(t.At()), t.Value, sheet),
			closest(t.Value, c.keysOf(kind), remedy)
	})
}

// keysOf lists the keys of the datasheets of a kind in order.
func (c *references) keysOf(kind string) []string {
	keys, ok := c.ids[kind]
	if !ok {
		for k := range c.sheets {
			if k.kind == kind {
				keys = append(keys, k.key)
			}
		}
		slices.Sort(keys)
		c.ids[kind] = keys
	}
	return keys
}

func (c *references) part(kind string, t Text) {
	got, ok := c.parts[t.Value]
	if ok && (kind == anyPart || got.kind == kind) {
		return
	}
	c.add(t, func() (string, string) {
		what := fmt.Sprintf("there is no %s with the id %q", inPlainWords(kind), t.Value)
		if ok {
			what = fmt.Sprintf("%q is the id of %s; the id of %s is wanted here", t.Value, withArticle(got.kind), withArticle(kind))
		}
		return Spoken(t.At()) + ": " + what, closest(t.Value, c.idsOf(kind), "describe it, or leave the member out")
	})
}

// anyPart is the kind of reference that any part will do for.
const anyPart = "any_part"

func inPlainWords(kind string) string {
	switch kind {
	case anyPart:
		return "part"
	case "run":
		return "run of cable"
	case "plane":
		return "roof plane"
	case "spd":
		return "SPD"
	}
	return strings.ReplaceAll(kind, "_", " ")
}

func withArticle(kind string) string {
	words := inPlainWords(kind)
	if strings.ContainsRune("aeioS", rune(words[0])) {
		return "an " + words
	}
	return "a " + words
}

// idsOf lists the ids of the parts of a kind in order.
func (c *references) idsOf(kind string) []string {
	ids, ok := c.ids[kind]
	if !ok {
		for id, p := range c.parts {
			if p.kind == kind || kind == anyPart {
				ids = append(ids, id)
			}
		}
		slices.Sort(ids)
		c.ids[kind] = ids
	}
	return ids
}

// closest is the remedy for a reference that leads nowhere: the one id that is
// most like it, or those there are.
func closest(word string, known []string, otherwise string) string {
	switch near, equal := nearestOf(word, known); {
	case near != "" && equal == 1:
		return fmt.Sprintf("did you mean %q?", near)
	case len(known) == 0:
		return otherwise
	case len(known) == 1:
		return "there is only " + known[0]
	case len(known) > 12:
		return "there are " + strings.Join(known[:12], ", ") + " and others"
	}
	return "there are " + strings.Join(known, ", ")
}
