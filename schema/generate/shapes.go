package main

import (
	"bytes"
	"cmp"
	"encoding/json"
	"fmt"
	"go/format"
	"slices"
	"strconv"
	"strings"
)

// forms are the patterns of texts, with the function of package schema that
// knows a text of that form.
var forms = map[string]string{
	`^[A-Za-z0-9][A-Za-z0-9_-]{0,39}$`:                                        "isID",
	`^[A-Za-z0-9][A-Za-z0-9_-]{0,39}(\.[A-Za-z0-9][A-Za-z0-9_-]{0,39}){0,2}$`: "isTerminal",
	`^[0-9]{4}-(0[1-9]|1[0-2])-(0[1-9]|[12][0-9]|3[01])$`:                     "isDate",
	`^IP[0-6X][0-9X]K?[A-D]?[HMSW]?(NW)?$`:                                    "isIP",
	`^[A-Z]{2}$`:                                                              "isCountry",
	`^([01][0-9]|2[0-3]):[0-5][0-9]$`:                                         "isTime",
}

// shapes writes the table against which a document is held before the schemas
// are asked: what they say, as plain data.
func (g *generator) shapes() ([]byte, error) {
	w := &shapeWriter{schemas: &g.schemas, written: map[string]definition{}}
	if _, err := w.variable(definition{file: installation}); err != nil {
		return nil, err
	}
	for len(w.queue) > 0 {
		d := w.queue[0]
		w.queue = w.queue[1:]
		if err := w.define(d); err != nil {
			return nil, err
		}
	}
	slices.Sort(w.defined)
	var b bytes.Buffer
	b.WriteString("// Code generated from the schemas of the document by go generate; DO NOT EDIT.\n\npackage schema\n\nvar (\n")
	b.WriteString(strings.Join(w.defined, "\n"))
	b.WriteString(")\n")
	return format.Source(b.Bytes())
}

type shapeWriter struct {
	*schemas
	queue   []definition
	written map[string]definition // by the name of the variable
	defined []string
}

// variable is the name of the Go variable for a definition, which is written in
// its turn.
func (w *shapeWriter) variable(d definition) (string, error) {
	name := "shapeOf" + goName(d.word())
	if before, ok := w.written[name]; ok && before != d {
		return "", fmt.Errorf("%s and %s both define %s", before.file, d.file, d.name)
	} else if !ok {
		w.written[name] = d
		w.queue = append(w.queue, d)
	}
	return name, nil
}

func (w *shapeWriter) define(d definition) error {
	n, err := w.at(d)
	if err != nil {
		return err
	}
	name, _ := w.variable(d)
	text, err := w.literal(d.file, n, d)
	if err != nil {
		return fmt.Errorf("%s: %s: %w", d.file, cmp.Or(d.name, "the document"), err)
	}
	w.defined = append(w.defined, fmt.Sprintf("%s = shape%s\n", name, text))
	return nil
}

// pointer is the Go expression for the shape of a value: the address of that of
// a definition, or of one made on the spot.
func (w *shapeWriter) pointer(file string, n *node) (string, error) {
	if n.Ref == "" {
		text, err := w.literal(file, n, definition{})
		return "&shape" + text, err
	}
	d, is, err := w.follow(file, n)
	if err != nil {
		return "", err
	}
	if d.name == "" {
		return w.pointer(d.file, is)
	}
	name, err := w.variable(d)
	return "&" + name, err
}

// literal writes the braces of a shape.
func (w *shapeWriter) literal(file string, n *node, d definition) (string, error) {
	switch {
	case n.Ref != "":
		return "", fmt.Errorf("a definition that only refers to another")
	case n.Type == "object" && n.Keyed.node != nil:
		return w.keyed(file, n)
	case n.Type == "object":
		return w.object(file, n, d)
	case n.Type == "array":
		each, err := w.pointer(file, n.Items)
		return fmt.Sprintf("{kind: isList, fewest: %d, most: %d, each: %s}", n.MinItems, n.MaxItems, each), cmp.Or(err, required(n.MaxItems > 0, "maxItems"))
	case n.Enum != nil:
		return enumerated(n)
	case n.Type == "boolean":
		return "{kind: isTrue}", nil
	case n.Type == "string":
		return textual(n)
	case n.Type == "number", n.Type == "integer":
		return numeric(n)
	}
	return "", fmt.Errorf("the type %q", n.Type)
}

func required(has bool, keyword string) error {
	if has {
		return nil
	}
	return fmt.Errorf("lacks %s", keyword)
}

func (w *shapeWriter) keyed(file string, n *node) (string, error) {
	each, err := w.pointer(file, n.Keyed.node)
	if err != nil {
		return "", err
	}
	_, key, err := w.follow(file, n.Keys)
	if err != nil {
		return "", err
	}
	form, ok := forms[key.Pattern]
	return fmt.Sprintf("{kind: isObject, most: %d, form: %s, each: %s}", n.MaxProperties, form, each), cmp.Or(required(ok, "propertyNames of a form that is known"), required(n.MaxProperties > 0, "maxProperties"))
}

func (w *shapeWriter) object(file string, n *node, d definition) (string, error) {
	var b strings.Builder
	fmt.Fprintf(&b, "{kind: isObject, defined: %q, must: %d, members: []memberShape{\n", d.file+d.fragment(), len(n.Required))
	for _, m := range slices.SortedFunc(slices.Values(n.Properties), func(a, b member) int { return cmp.Compare(a.name, b.name) }) {
		each, err := w.pointer(file, m.node)
		if err != nil {
			return "", fmt.Errorf("%s: %w", m.name, err)
		}
		believed, err := plausibleOf(m.Plausible)
		if err != nil {
			return "", fmt.Errorf("%s: x-plausible: %w", m.name, err)
		}
		fmt.Fprintf(&b, "{%q, %t, %s, %s},\n", m.name, slices.Contains(n.Required, m.name), each, believed)
	}
	b.WriteString("}}")
	return b.String(), nil
}

// fragment leads to the definition within its file.
func (d definition) fragment() string {
	if d.name == "" {
		return ""
	}
	return "#/$defs/" + d.name
}

func enumerated(n *node) (string, error) {
	var words []json.RawMessage
	if err := json.Unmarshal(n.Enum, &words); err != nil {
		return "", err
	}
	kind, all := "isText", make([]string, len(words))
	for i, word := range words {
		text := string(word)
		if word[0] != '"' {
			kind, text = "isNumber", strconv.Quote(text)
		}
		all[i] = text
	}
	if (kind == "isNumber") != (n.Type == "integer") {
		return "", fmt.Errorf("an enumeration of %s and the type %q", kind, n.Type)
	}
	return fmt.Sprintf("{kind: %s, words: []string{%s}}", kind, strings.Join(all, ", ")), nil
}

func textual(n *node) (string, error) {
	if n.Pattern == "" {
		return fmt.Sprintf("{kind: isText, fewest: %d, most: %d}", n.MinLength, n.MaxLength), required(n.MaxLength > 0, "maxLength")
	}
	form, ok := forms[n.Pattern]
	return fmt.Sprintf("{kind: isText, form: %s, pattern: %q}", form, n.Pattern), required(ok && n.MaxLength == 0 && n.MinLength == 0, "a pattern that is known")
}

func numeric(n *node) (string, error) {
	least := cmp.Or(n.ExclusiveMinimum, n.Minimum)
	return fmt.Sprintf("{kind: isNumber, whole: %t, above: %t, least: %s, greatest: %s}", n.Type == "integer", n.ExclusiveMinimum != "", least, n.Maximum),
		required(least != "" && n.Maximum != "" && (n.ExclusiveMinimum == "" || n.Minimum == ""), "one lower and one upper limit")
}
