package engine

import (
	"encoding/json"
	"reflect"
	"strconv"

	"github.com/open-policy-agent/opa/v1/ast"

	"sunclause/facts"
)

// keys holds the name of every fact as a term, made once and shared.
var keys = func() map[string]*ast.Term {
	terms := map[string]*ast.Term{"id": ast.StringTerm("id")}
	for name, k := range subjectKinds {
		terms[name] = ast.StringTerm(name)
		for _, f := range k.fields {
			terms[f.name] = ast.StringTerm(f.name)
		}
	}
	return terms
}()

// inputOf gives the facts to Rego. An unknown fact is simply not there; so is a
// list whose parts the document does not state.
func inputOf(f *facts.Facts) ast.Value {
	root := ast.NewObjectWithCapacity(len(subjectKinds))
	for _, name := range subjectNames() {
		k := subjectKinds[name]
		subjects, stated := subjectsOf(f, k)
		if !stated {
			continue
		}
		terms := make([]*ast.Term, len(subjects))
		for i, s := range subjects {
			terms[i] = ast.NewTerm(objectOf(s, k))
		}
		if k.list {
			root.Insert(keys[name], ast.ArrayTerm(terms...))
		} else {
			root.Insert(keys[name], terms[0])
		}
	}
	return root
}

func objectOf(subject reflect.Value, k subjectKind) ast.Object {
	o := ast.NewObjectWithCapacity(len(k.fields) + 1)
	o.Insert(keys["id"], ast.StringTerm(subjectOf(subject).ID))
	for _, f := range k.fields {
		if v := valueOf(subject, f); v.plain != nil {
			o.Insert(keys[f.name], term(v.plain))
		}
	}
	return o
}

// term turns a plain value into a term. Numbers have at most twelve significant
// digits, which keeps exact comparison fast.
func term(v any) *ast.Term {
	switch v := v.(type) {
	case float64:
		return ast.NumberTerm(json.Number(strconv.FormatFloat(v, 'f', -1, 64)))
	case string:
		return ast.StringTerm(v)
	case bool:
		return ast.BooleanTerm(v)
	case []string:
		terms := make([]*ast.Term, len(v))
		for i, s := range v {
			terms[i] = ast.StringTerm(s)
		}
		return ast.ArrayTerm(terms...)
	}
	return ast.NullTerm()
}

// InputSchema is the JSON Schema of what rules see as input, made from the Go
// structs: the Rego compiler holds every rule to it, so that a misspelt fact is
// an error and not silence.
func InputSchema() map[string]any {
	properties := map[string]any{}
	for name, k := range subjectKinds {
		members := map[string]any{"id": map[string]any{"type": "string"}}
		for _, f := range k.fields {
			members[f.name] = schemaOf(f.kind)
		}
		object := map[string]any{"type": "object", "properties": members, "additionalProperties": false}
		if k.list {
			object = map[string]any{"type": "array", "items": object}
		}
		properties[name] = object
	}
	return map[string]any{
		"$schema": "https://json-schema.org/draft/2020-12/schema",
		"title":   "Facts that rules judge",
		"type":    "object", "properties": properties, "additionalProperties": false,
	}
}

func schemaOf(k kind) any {
	switch k {
	case aNumber:
		return map[string]any{"type": "number"}
	case aFlag:
		return map[string]any{"type": "boolean"}
	case aList:
		return map[string]any{"type": "array", "items": map[string]any{"type": "string"}}
	}
	return map[string]any{"type": "string"}
}
