package main

import (
	"bytes"
	"encoding/json"
	"fmt"
	"io/fs"
	"slices"
	"strings"
)

// node is a subschema, with those keywords that the mirror and the shapes follow from.
type node struct {
	Ref         string          `json:"$ref"`
	Title       string          `json:"title"`
	Description string          `json:"description"`
	Type        oneType         `json:"type"`
	Enum        json.RawMessage `json:"enum"`
	Items       *node           `json:"items"`
	Properties  members         `json:"properties"`
	Keyed       keyed           `json:"additionalProperties"`
	Defs        members         `json:"$defs"`
	Required    []string        `json:"required"`
	Keys        *node           `json:"propertyNames"`
	Pattern     string          `json:"pattern"`
	MinLength   int             `json:"minLength"`
	MaxLength   int             `json:"maxLength"`
	MinItems    int             `json:"minItems"`
	MaxItems    int             `json:"maxItems"`
	Minimum     json.Number     `json:"minimum"`
	Maximum     json.Number     `json:"maximum"`

	MaxProperties    int         `json:"maxProperties"`
	ExclusiveMinimum json.Number `json:"exclusiveMinimum"`
	RefersTo         string      `json:"x-refers-to"` // what an id refers to: a kind of part, any_part, or datasheets/KIND
	UniqueIn         string      `json:"x-unique-in"` // where an id counts: "part", or the document when left out
	Go               string      `json:"x-go"`        // name of its Go type, where that does not follow from its own
	Plausible        *plausible  `json:"x-plausible"` // of a number: the values that nobody has to look at again
}

// oneType is the type of a value; "" where it may be of several.
type oneType string

// UnmarshalJSON reads a word, or passes over a list of words.
func (t *oneType) UnmarshalJSON(raw []byte) error {
	if raw[0] == '[' {
		return nil
	}
	return json.Unmarshal(raw, (*string)(t))
}

// members are the members of an object in the order of the file.
type members []member

type member struct {
	name string
	*node
}

// UnmarshalJSON reads an object and keeps the order of its members.
func (m *members) UnmarshalJSON(raw []byte) error {
	d := json.NewDecoder(bytes.NewReader(raw))
	if _, err := d.Token(); err != nil {
		return err
	}
	for d.More() {
		name, err := d.Token()
		if err != nil {
			return err
		}
		one := member{fmt.Sprint(name), &node{}}
		if err := d.Decode(one.node); err != nil {
			return fmt.Errorf("%s: %w", one.name, err)
		}
		*m = append(*m, one)
	}
	return nil
}

func (m members) named(name string) *node {
	if i := slices.IndexFunc(m, func(m member) bool { return m.name == name }); i >= 0 {
		return m[i].node
	}
	return nil
}

// keyed is the subschema of whatever stands under a key; nil where no keys but
// those of the members are allowed.
type keyed struct{ *node }

// UnmarshalJSON reads a subschema, or the word false.
func (k *keyed) UnmarshalJSON(raw []byte) error {
	if string(raw) == "false" {
		return nil
	}
	k.node = &node{}
	return json.Unmarshal(raw, k.node)
}

// definition is where a subschema is defined: a file, and a name within it. The
// installation itself is a file without a name.
type definition struct{ file, name string }

// schemas are the files of the document, read.
type schemas struct {
	folder fs.FS
	files  map[string]*node
}

const installation = "installation.schema.json"

// at reads the subschema of a definition.
func (s *schemas) at(d definition) (*node, error) {
	root, err := s.file(d.file)
	if err != nil || d.name == "" {
		return root, err
	}
	if found := root.Defs.named(d.name); found != nil {
		return found, nil
	}
	return nil, fmt.Errorf("%s defines no %s", d.file, d.name)
}

func (s *schemas) file(name string) (*node, error) {
	if root, ok := s.files[name]; ok {
		return root, nil
	}
	raw, err := fs.ReadFile(s.folder, name)
	if err != nil {
		return nil, err
	}
	root := &node{}
	if err := json.Unmarshal(raw, root); err != nil {
		return nil, fmt.Errorf("%s: %w", name, err)
	}
	s.files[name] = root
	return root, nil
}

// follow goes from a subschema to the one that says what the value is, through
// each $ref, and says where that is defined.
func (s *schemas) follow(file string, n *node) (definition, *node, error) {
	d := definition{file: file}
	for n.Ref != "" {
		target, path, _ := strings.Cut(n.Ref, "#")
		if target != "" {
			d.file = target
		}
		steps := strings.Split(strings.TrimPrefix(path, "/"), "/")
		if len(steps) < 2 || steps[0] != "$defs" {
			return d, nil, fmt.Errorf("%s: $ref %s", file, n.Ref)
		}
		d.name = steps[1]
		found, err := s.at(d)
		if err != nil {
			return d, nil, err
		}
		for i := 2; i+1 < len(steps); i += 2 {
			if found = found.Properties.named(steps[i+1]); found == nil || steps[i] != "properties" {
				return d, nil, fmt.Errorf("%s: $ref %s", file, n.Ref)
			}
			d.name = ""
		}
		n = found
	}
	return d, n, nil
}
