package main

import (
	"bytes"
	"errors"
	"fmt"
	"go/format"
	"io/fs"
	"slices"
	"strings"
	"text/template"
)

// generate makes the Go files that follow from the schemas of a folder, by name.
func generate(folder fs.FS) (map[string][]byte, error) {
	g := &generator{schemas: schemas{folder, map[string]*node{}}, rooms: map[string][]object{}}
	if err := g.reach(definition{file: installation}); err != nil {
		return nil, err
	}
	if err := errors.Join(g.kindsExist(), g.allReached()); err != nil {
		return nil, err
	}
	files := map[string][]byte{}
	for file := range g.rooms {
		text, err := g.room(file)
		if err != nil {
			return nil, fmt.Errorf("%s: %w", file, err)
		}
		files[strings.TrimSuffix(file, ".schema.json")+".go"] = text
	}
	var err error
	files["shapes.go"], err = g.shapes()
	return files, err
}

type generator struct {
	schemas
	rooms   map[string][]object // by file; those reached so far
	reached []definition
	kinds   []string // of parts, to which something refers
}

// object is an object of the document, as the template of its struct takes it.
type object struct {
	definition
	Go, Name, Description string
	Fields                []field
}

// field is a member of an object.
type field struct{ Name, Type, Tag, Description string }

// reach notes an object, and all that its members lead to.
func (g *generator) reach(d definition) error {
	if slices.Contains(g.reached, d) {
		return nil
	}
	g.reached = append(g.reached, d)
	n, err := g.at(d)
	if err != nil {
		return err
	}
	name := d.name
	if name == "" {
		name = strings.TrimSuffix(d.file, ".schema.json")
	}
	o := object{definition: d, Go: goName(name), Name: name, Description: sentence(n.Description)}
	for _, m := range n.Properties {
		if strings.HasPrefix(m.name, "$") {
			continue // for editors: nothing in it is about the installation
		}
		f := field{Name: goName(m.name), Tag: fmt.Sprintf("json:%q", m.name), Description: m.Description}
		if m.UniqueIn != "" {
			f.Tag += fmt.Sprintf(" unique:%q", m.UniqueIn)
		}
		if f.Type, err = g.typeOf(d.file, m.node, &f.Tag); err != nil {
			return fmt.Errorf("%s: %s.%s: %w", d.file, name, m.name, err)
		}
		o.Fields = append(o.Fields, f)
	}
	g.rooms[d.file] = append(g.rooms[d.file], o)
	return nil
}

// typeOf is the Go type of a value. What an id refers to is added to the tag.
func (g *generator) typeOf(file string, n *node, tag *string) (string, error) {
	d, is, err := g.follow(file, n)
	if err != nil {
		return "", err
	}
	if d.name == "terminal" {
		*tag += ` ref:"terminal"`
	}
	switch {
	case n.RefersTo != "":
		*tag += fmt.Sprintf(" ref:%q", n.RefersTo)
		return g.reference(n.RefersTo)
	case is.Type == "number", is.Type == "integer":
		return "Number", nil
	case is.Type == "string", is.Type == "" && is.Enum != nil:
		return "Text", nil
	case is.Type == "boolean":
		return "Flag", nil
	case is.Type == "array":
		each, err := g.typeOf(d.file, is.Items, tag)
		return "[]" + each, err
	case is.Type == "object" && is.Keyed.node != nil:
		each, err := g.typeOf(d.file, is.Keyed.node, tag)
		return "map[string]" + each, err
	case is.Type == "object" && d.name != "":
		return goName(d.name), g.reach(d)
	}
	return "", fmt.Errorf("neither a number, a text, a flag, a list nor an object that is defined under a name")
}

// reference is the type of an id that refers to something.
func (g *generator) reference(kind string) (string, error) {
	if kind == "any_part" {
		return "Text", nil // it can be of any type
	}
	target, err := g.target(kind)
	return "Ref[" + goName(target) + "]", err
}

// target finds the name of the object that a kind of reference leads to.
func (g *generator) target(kind string) (string, error) {
	sheet, ok := strings.CutPrefix(kind, "datasheets/")
	if !ok {
		g.kinds = append(g.kinds, kind)
		return kind, nil
	}
	file := "project.schema.json"
	sheets, err := g.at(definition{file, "datasheets"})
	if err != nil {
		return "", err
	}
	if kinds := sheets.Properties.named(sheet); kinds != nil && kinds.Keyed.node != nil {
		d, _, err := g.follow(file, kinds.Keyed.node)
		return d.name, err
	}
	return "", fmt.Errorf("there is no member %s", kind)
}

// kindsExist makes sure that what is referred to are parts with an id.
func (g *generator) kindsExist() error {
	for _, kind := range g.kinds {
		part := slices.ContainsFunc(g.reached, func(d definition) bool {
			n, err := g.at(d)
			return err == nil && d.name == kind && n.Properties.named("id") != nil
		})
		if !part {
			return fmt.Errorf("something refers to a part of the kind %q, and there is none with an id", kind)
		}
	}
	return nil
}

// allReached makes sure that no object is defined which no document can have.
func (g *generator) allReached() error {
	for file := range g.rooms {
		for _, d := range g.files[file].Defs {
			if d.Type == "object" && !slices.Contains(g.reached, definition{file, d.name}) {
				return fmt.Errorf("%s: nothing in the document is a %s", file, d.name)
			}
		}
	}
	return nil
}

// room writes the structs of one file, in the order of its definitions.
func (g *generator) room(file string) ([]byte, error) {
	order := []string{""}
	for _, d := range g.files[file].Defs {
		order = append(order, d.name)
	}
	objects := g.rooms[file]
	slices.SortFunc(objects, func(a, b object) int {
		return slices.Index(order, a.name) - slices.Index(order, b.name)
	})
	var b bytes.Buffer
	if err := structs.Execute(&b, map[string]any{"File": file, "Objects": objects}); err != nil {
		return nil, err
	}
	return format.Source(b.Bytes())
}

var structs = template.Must(template.New("").Parse(`// Code generated from {{.File}} by go generate; DO NOT EDIT.

package schema
{{range .Objects}}
// {{.Go}} mirrors {{.Name}}: {{.Description}}
type {{.Go}} struct {
	Pointer
{{- range .Fields}}
	{{.Name}} {{.Type}} ` + "`{{.Tag}}`" + `{{with .Description}} // {{.}}{{end}}
{{- end}}
}
{{end}}`))
