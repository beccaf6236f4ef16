package rego

import (
	"encoding/json"
	"strconv"

	"github.com/open-policy-agent/opa/v1/ast"

	"sunclause/engine/catalogue"
	"sunclause/facts"
)

// inputOf gives the facts to Rego. An unknown fact is simply not there; so is a
// list whose parts the document does not state.
func inputOf(f *facts.Facts) ast.Value {
	root := ast.NewObjectWithCapacity(len(catalogue.Subjects()))
	for _, s := range catalogue.Subjects() {
		parts, stated := s.Parts(f)
		if !stated {
			continue
		}
		objects := objectsOf(s, parts)
		if s.Many {
			root.Insert(ast.StringTerm(s.Name), ast.ArrayTerm(objects...))
		} else {
			root.Insert(ast.StringTerm(s.Name), objects[0])
		}
	}
	return root
}

// Input writes the facts of an installation as opa's own tools read them.
func Input(f *facts.Facts) string { return inputOf(f).String() }

// objectsOf writes the parts of one subject. The names of their facts are terms
// made once and shared.
func objectsOf(s *catalogue.Subject, parts []catalogue.Part) []*ast.Term {
	id := ast.StringTerm("id")
	names := make([]*ast.Term, len(s.Facts))
	for i, f := range s.Facts {
		names[i] = ast.StringTerm(f.Name)
	}
	objects := make([]*ast.Term, len(parts))
	for i, p := range parts {
		o := ast.NewObjectWithCapacity(len(s.Facts) + 1)
		o.Insert(id, ast.StringTerm(p.ID))
		for j, f := range s.Facts {
			if v := p.Value(f); v.Known {
				o.Insert(names[j], term(v))
			}
		}
		objects[i] = ast.NewTerm(o)
	}
	return objects
}

// term turns a value into a term. Numbers have at most twelve significant
// digits, which keeps exact comparison fast.
func term(v catalogue.Value) *ast.Term {
	switch v.Kind {
	case catalogue.Number:
		return ast.NumberTerm(decimal(v.Number))
	case catalogue.Text:
		return ast.StringTerm(v.Text)
	case catalogue.Flag:
		return ast.BooleanTerm(v.Flag)
	}
	terms := make([]*ast.Term, len(v.List))
	for i, s := range v.List {
		terms[i] = ast.StringTerm(s)
	}
	return ast.ArrayTerm(terms...)
}

// decimal writes a number in plain decimal, which Rego compares exactly and fast.
func decimal(v float64) json.Number { return json.Number(strconv.FormatFloat(v, 'f', -1, 64)) }

// Plain is a plain value of a rule set as Rego's data has it.
func Plain(v any) any {
	switch v := v.(type) {
	case float64:
		return decimal(v)
	case []float64:
		numbers := make([]any, len(v))
		for i, n := range v {
			numbers[i] = decimal(n)
		}
		return numbers
	case []string:
		words := make([]any, len(v))
		for i, w := range v {
			words[i] = w
		}
		return words
	}
	return v
}

// InputSchema is the JSON Schema of what rules see as input, made from the Go
// structs: the Rego compiler holds every rule to it, so that a misspelt fact is
// an error and not silence.
func InputSchema() map[string]any {
	properties := map[string]any{}
	for _, s := range catalogue.Subjects() {
		members := map[string]any{"id": map[string]any{"type": "string"}}
		for _, f := range s.Facts {
			members[f.Name] = schemaOf(f.Kind)
		}
		object := map[string]any{"type": "object", "properties": members, "additionalProperties": false}
		if s.Many {
			object = map[string]any{"type": "array", "items": object}
		}
		properties[s.Name] = object
	}
	return map[string]any{
		"$schema": "https://json-schema.org/draft/2020-12/schema",
		"title":   "Facts that rules judge",
		"type":    "object", "properties": properties, "additionalProperties": false,
	}
}

func schemaOf(k catalogue.Kind) any {
	switch k {
	case catalogue.Number:
		return map[string]any{"type": "number"}
	case catalogue.Flag:
		return map[string]any{"type": "boolean"}
	case catalogue.List:
		return map[string]any{"type": "array", "items": map[string]any{"type": "string"}}
	}
	return map[string]any{"type": "string"}
}
