package slips

import (
	"encoding/json"
	"fmt"
	"maps"
	"slices"
	"strconv"
	"strings"
	"sync"

	"sunclause/schema"
)

// node is a subschema, with those keywords that slips follow from.
type node struct {
	Ref        string           `json:"$ref"`
	Type       any              `json:"type"`
	Enum       []any            `json:"enum"`
	Required   []string         `json:"required"`
	Properties map[string]*node `json:"properties"`
	Items      *node            `json:"items"`
	Keyed      json.RawMessage  `json:"additionalProperties"`
	Pattern    string           `json:"pattern"`
	RefersTo   string           `json:"x-refers-to"`
	Defs       map[string]*node `json:"$defs"`

	file string // in which it stands
	form string // the name under which it is defined: id, date, text, …
}

var schemaFiles sync.Map // name to func() (*node, error)

func readFile(name string) (*node, error) {
	read, _ := schemaFiles.LoadOrStore(name, sync.OnceValues(func() (*node, error) {
		raw, err := schema.File(name)
		if err != nil {
			return nil, err
		}
		n := &node{}
		if err := json.Unmarshal(raw, n); err != nil {
			return nil, fmt.Errorf("%s: %w", name, err)
		}
		return n, nil
	}))
	return read.(func() (*node, error))()
}

// readSchema is the schema of the document.
func readSchema() (*node, error) {
	n, err := readFile(schema.InstallationSchema)
	if err != nil {
		return nil, err
	}
	return n.in(schema.InstallationSchema), nil
}

func (n *node) in(file string) *node {
	placed := *n
	placed.file = file
	return &placed
}

// resolved follows references, and keeps what stands beside them.
func (n *node) resolved() (*node, error) {
	for n.Ref != "" {
		file, fragment, _ := strings.Cut(n.Ref, "#")
		if file == "" {
			file = n.file
		}
		whole, err := readFile(file)
		if err != nil {
			return nil, err
		}
		next, form := whole, ""
		if fragment != "" {
			next, form = whole.at(fragment)
		}
		if next == nil {
			return nil, fmt.Errorf("%s: nothing is defined as %s", n.file, n.Ref)
		}
		next = next.in(file)
		next.form = form
		if n.RefersTo != "" {
			next.RefersTo = n.RefersTo
		}
		n = next
	}
	return n, nil
}

// at is what a fragment of a reference leads to, and the last name in it; nil where
// it leads nowhere.
func (n *node) at(fragment string) (*node, string) {
	names := strings.Split(fragment, "/")[1:]
	for i := 0; n != nil && i+1 < len(names); i += 2 {
		if names[i] == "$defs" {
			n = n.Defs[names[i+1]]
		} else {
			n = n.Properties[names[i+1]]
		}
	}
	return n, names[len(names)-1]
}

// below is the subschema of a member, or of any item or keyed value when the name is "".
func (n *node) below(name string) (*node, error) {
	next := n.Properties[name]
	switch {
	case next != nil:
	case n.Items != nil:
		next = n.Items
	case len(n.Keyed) > 0 && n.Keyed[0] == '{':
		next = &node{}
		if err := json.Unmarshal(n.Keyed, next); err != nil {
			return nil, err
		}
	default:
		return nil, fmt.Errorf("the schema does not know %q", name)
	}
	return next.in(n.file).resolved()
}

// walk visits a value and all below it, each with its subschema.
func (n *node) walk(v any, at place, visit func(any, *node, place)) error {
	visit(v, n, at)
	step := func(below any, name, shown string) error {
		next, err := n.below(name)
		if err != nil {
			return fmt.Errorf("%s: %w", at.pointer(), err)
		}
		return next.walk(below, at.member(name, shown), visit)
	}
	switch v := v.(type) {
	case map[string]any:
		for _, name := range slices.Sorted(maps.Keys(v)) {
			shown := name
			if n.Properties[name] == nil {
				shown = "*"
			}
			if err := step(v[name], name, shown); err != nil {
				return err
			}
		}
	case []any:
		for i := range v {
			if err := step(v[i], strconv.Itoa(i), "[]"); err != nil {
				return err
			}
		}
	}
	return nil
}
