// Package schema is the installation document: its JSON Schemas, one a room,
// the Go mirror of them, and the reading of a text into that mirror.
//
// A document is read whole or refused whole. What is wrong with it comes back
// as Problems, each with file, line and column, what was found and what is
// allowed. A member left out means "not stated", which the mirror keeps apart
// from zero, no and the empty list.
//
// Nothing else in sunclause knows the JSON Schema library or the text formats:
// the files of a rule set are read and checked here too.
package schema

//go:generate go run ./generate

import (
	"fmt"
	"maps"
	"math"
	"slices"
	"strconv"
	"strings"
	"time"
)

// Document is an installation together with the text it was read from.
type Document struct {
	*Source
	Installation Installation
}

// Decode reads one installation from a JSON text. The name is what problems
// are reported under. What is wrong with the text comes back as Problems; any
// other error is a fault of sunclause itself.
func Decode(name string, raw []byte) (*Document, error) {
	s, found := readJSON(name, raw)
	if s.root == nil || s.root.kind == isNull {
		if len(found.list) == 0 {
			found.say(0, "", "the document is null", "an installation is one JSON object that begins with {")
		}
		return nil, found.problems()
	}
	if err := s.validate(InstallationSchema, found); err != nil {
		return nil, err
	}
	if len(found.list) > 0 {
		return nil, found.problems()
	}
	d := &Document{Source: s}
	if err := fill(&d.Installation, s.root); err != nil {
		return nil, err
	}
	if found = checkReferences(d); len(found.list) > 0 {
		return nil, found.problems()
	}
	return d, nil
}

// ReadYAML reads a YAML text of a rule set into the mirror v, a pointer to a
// struct of Texts, Numbers, Flags and lists of such. When schemaName is not
// empty the text is first held against that schema; a text that is known to be
// sound, as the embedded sets are, need not be.
func ReadYAML(name string, raw []byte, schemaName string, v any) (*Source, error) {
	s, found := readYAML(name, raw)
	if len(found.list) == 0 && schemaName != "" {
		if err := s.validate(schemaName, found); err != nil {
			return s, err
		}
	}
	if len(found.list) > 0 {
		return s, found.problems()
	}
	return s, fill(v, s.root)
}

// ReadCard reads the custom block of a rule's METADATA, which the Rego parser
// has already turned into plain values, into the mirror v. Problems are given
// the line on which the block begins.
func ReadCard(name string, line int, custom map[string]any, v any) error {
	s := Placed(name, "", line)
	s.root = &node{}
	*s.root = treeOf("", custom)
	found := &findings{source: s}
	if err := s.validate(CardSchema, found); err != nil {
		return err
	}
	if len(found.list) > 0 {
		return found.problems()
	}
	return fill(v, s.root)
}

// treeOf makes a tree of plain values. What is no value of JSON becomes a text.
func treeOf(name string, v any) node {
	n := node{name: name, named: -1}
	switch v := v.(type) {
	case map[string]any:
		n.kind = isObject
		for _, k := range slices.Sorted(maps.Keys(v)) {
			n.children = append(n.children, treeOf(k, v[k]))
		}
	case []any:
		n.kind = isList
		for _, e := range v {
			n.children = append(n.children, treeOf("", e))
		}
	case nil:
		n.kind = isNull
	case bool:
		n.kind = isFalse
		if v {
			n.kind = isTrue
		}
	case int:
		n.kind, n.text = isNumber, strconv.Itoa(v)
	case float64:
		n.kind, n.text = isNumber, strconv.FormatFloat(v, 'g', -1, 64)
		if math.IsInf(v, 0) || math.IsNaN(v) {
			n.kind = isText
		}
	case time.Time: // the parser takes an unquoted date for one
		n.kind, n.text = isText, strings.TrimSuffix(v.Format(time.RFC3339), "T00:00:00Z")
	default:
		n.kind, n.text = isText, fmt.Sprint(v)
	}
	return n
}

// Validate holds a JSON text against one of the schemas, for those who write
// such texts.
func Validate(name string, raw []byte, schemaName string) error {
	s, found := readJSON(name, raw)
	if len(found.list) == 0 {
		if err := s.validate(schemaName, found); err != nil {
			return err
		}
	}
	if len(found.list) > 0 {
		return found.problems()
	}
	return nil
}
