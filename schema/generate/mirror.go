package main

import (
	"bytes"
	"cmp"
	"errors"
	"fmt"
	"go/format"
	"io/fs"
	"maps"
	"slices"
	"strings"
	"text/template"
)

// mirror is what of the schemas one package has in Go.
type mirror struct {
	path, name string // folder as seen from that of the schemas, and name of the package
	roots      []definition
}

// mirrors are that of the document, a file a room, and those of the files of a
// rule set, in which a definition says what its Go type is called (x-go).
var mirrors = []mirror{
	{"", "schema", []definition{{file: installation}}},
	{"../engine/ruleset/", "ruleset", []definition{
		{file: "ruleset.schema.json"}, {file: "requirements.schema.json"}, {"requirements.schema.json", "card"}, {file: "table.schema.json"},
	}},
	{"../engine/trial/", "trial", []definition{{file: "trial.schema.json"}}},
}

// generate makes the Go files that follow from the schemas of a folder, by name.
func generate(folder fs.FS, mirrors []mirror) (map[string][]byte, error) {
	files := map[string][]byte{}
	for _, m := range mirrors {
		g := &generator{mirror: m, schemas: schemas{folder, map[string]*node{}}, rooms: map[string][]object{}}
		if err := g.write(files); err != nil {
			return nil, err
		}
	}
	return files, nil
}

type generator struct {
	mirror
	schemas
	rooms   map[string][]object // by file; those reached so far
	reached []definition
	kinds   []string // of parts, to which something refers
}

// write adds the files of one package.
func (g *generator) write(files map[string][]byte) (err error) {
	for _, root := range g.roots {
		if err := g.reach(root); err != nil {
			return err
		}
	}
	if !g.ofDocument() {
		files[g.path+"mirror.go"], err = g.structs(slices.Sorted(maps.Keys(g.rooms))...)
		return err
	}
	if err := errors.Join(g.kindsExist(), g.allReached()); err != nil {
		return err
	}
	for file := range g.rooms {
		files[strings.TrimSuffix(file, ".schema.json")+".go"], err = g.structs(file)
		if err != nil {
			return err
		}
	}
	files["shapes.go"], err = g.shapes()
	return err
}

// ofDocument reports whether the mirror is that of the document, in which
// nothing is of more than one type.
func (g *generator) ofDocument() bool { return g.name == "schema" }

// value is the type of a kind of value, which package schema has.
func (g *generator) value(kind string) string {
	if g.ofDocument() {
		return kind
	}
	return "schema." + kind
}

// goType is what the Go type of an object is called.
func (g *generator) goType(d definition, n *node) (string, error) {
	switch {
	case n.Go != "":
		return n.Go, nil
	case g.ofDocument():
		return goName(d.word()), nil
	}
	return "", fmt.Errorf("%s: %s does not say what its Go type is called (x-go)", d.file, d.word())
}

// word is the name of a definition, or that of its file.
func (d definition) word() string {
	return cmp.Or(d.name, strings.TrimSuffix(d.file, ".schema.json"))
}

// object is an object of the schemas, as the template of its struct takes it.
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
	o := object{definition: d, Name: d.word(), Description: sentence(n.Description)}
	if o.Go, err = g.goType(d, n); err != nil {
		return err
	}
	for _, m := range n.Properties {
		if strings.HasPrefix(m.name, "$") {
			continue // for editors: nothing in it is about the installation
		}
		f := field{Name: goName(m.name), Tag: fmt.Sprintf("json:%q", m.name), Description: withoutPlausible(m.Description)}
		if m.UniqueIn != "" {
			f.Tag += fmt.Sprintf(" unique:%q", m.UniqueIn)
		}
		if f.Type, err = g.typeOf(d.file, m.node, &f.Tag); err != nil {
			return fmt.Errorf("%s: %s.%s: %w", d.file, d.word(), m.name, err)
		}
		o.Fields = append(o.Fields, f)
	}
	return g.keep(o)
}

// keep notes an object. Two that share a Go type have the members of both there.
func (g *generator) keep(o object) error {
	for _, room := range g.rooms {
		for i := range room {
			if room[i].Go == o.Go {
				return room[i].add(o)
			}
		}
	}
	g.rooms[o.file] = append(g.rooms[o.file], o)
	return nil
}

// add adds the members of another object that are not there yet.
func (o *object) add(other object) error {
	for _, f := range other.Fields {
		i := slices.IndexFunc(o.Fields, func(have field) bool { return have.Name == f.Name })
		if i < 0 {
			o.Fields = append(o.Fields, f)
		} else if o.Fields[i].Type != f.Type {
			return fmt.Errorf("%s: %s is a %s in %s and a %s in %s", o.file, f.Name, o.Fields[i].Type, o.Name, f.Type, other.Name)
		}
	}
	o.Name += ", " + other.Name
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
		return g.value("Number"), nil
	case is.Type == "string", is.Type == "" && is.Enum != nil:
		return g.value("Text"), nil
	case is.Type == "boolean":
		return g.value("Flag"), nil
	case is.Type == "array":
		each, err := g.typeOf(d.file, is.Items, tag)
		return "[]" + each, err
	case is.Type == "object" && is.Keyed.node != nil:
		each, err := g.typeOf(d.file, is.Keyed.node, tag)
		if g.ofDocument() {
			each = "*" + each // so that references can lead to it
		}
		return "map[string]" + each, err
	case is.Type == "object" && d.name != "":
		name, err := g.goType(d, is)
		return name, cmp.Or(err, g.reach(d))
	case !g.ofDocument():
		return "any", nil // of several types, or of any
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

// structs writes the structs of some files, in the order of their definitions.
func (g *generator) structs(files ...string) ([]byte, error) {
	var all []object
	for _, file := range files {
		order := []string{""}
		for _, d := range g.files[file].Defs {
			order = append(order, d.name)
		}
		slices.SortFunc(g.rooms[file], func(a, b object) int {
			return slices.Index(order, a.definition.name) - slices.Index(order, b.definition.name)
		})
		all = append(all, g.rooms[file]...)
	}
	var b bytes.Buffer
	if err := source.Execute(&b, map[string]any{
		"Files": strings.Join(files, ", "), "Package": g.name, "Place": g.value("Pointer"), "Imports": !g.ofDocument(), "Objects": all,
	}); err != nil {
		return nil, err
	}
	return format.Source(b.Bytes())
}

var source = template.Must(template.New("").Parse(`// Code generated from {{.Files}} by go generate; DO NOT EDIT.

package {{.Package}}
{{if .Imports}}
import "sunclause/schema"
{{end}}{{range .Objects}}
// {{.Go}} mirrors {{.Name}}: {{.Description}}
type {{.Go}} struct {
	{{$.Place}}
{{- range .Fields}}
	{{.Name}} {{.Type}} ` + "`{{.Tag}}`" + `{{with .Description}} // {{.}}{{end}}
{{- end}}
}
{{end}}`))
