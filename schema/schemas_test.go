package schema

import (
	"cmp"
	"encoding/json"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v5"
)

// object is one object of the document.
type object struct {
	file  string
	node  map[string]any
	props map[string]any
}

// objects lists the objects of the document by name.
func objects(t *testing.T) map[string]object {
	t.Helper()
	found := map[string]object{}
	for _, s := range everyShape() {
		if s.members == nil {
			continue
		}
		file, name, _ := strings.Cut(s.defined, "#/$defs/")
		name = cmp.Or(name, "installation")
		_, at := follow(file, map[string]any{"$ref": s.defined})
		node, _ := at.(map[string]any)
		if before, twice := found[name]; twice || node == nil {
			t.Errorf("%s: %s is not defined, or in %q as well", file, name, before.file)
			continue
		}
		props, _ := node["properties"].(map[string]any)
		found[name] = object{file, node, props}
	}
	if len(found) < 90 {
		t.Errorf("only %d objects", len(found))
	}
	return found
}

func schemaFiles(t *testing.T) []string {
	t.Helper()
	names, err := filepath.Glob("*.schema.json")
	if err != nil || len(names) == 0 {
		t.Fatalf("schemas: %d, %v", len(names), err)
	}
	return names
}

// resolved follows references to the subschema that says what a value is, and
// gives the name under which it is defined.
func resolved(file string, p map[string]any) (string, map[string]any, string) {
	name := ""
	for p["$ref"] != nil {
		name = lastName(p["$ref"].(string)[strings.IndexByte(p["$ref"].(string), '#')+1:])
		var node any
		file, node = follow(file, p)
		p, _ = node.(map[string]any)
	}
	return file, p, name
}

// kindIn is the JSON type of a subschema. An enumeration is of text, or of
// whole numbers when it says so.
func kindIn(p map[string]any) string {
	if kind, ok := p["type"].(string); ok {
		return kind
	}
	if p["enum"] != nil {
		return "string"
	}
	return ""
}

func TestObjectsAreClosed(t *testing.T) {
	for name, o := range objects(t) {
		if o.node["additionalProperties"] != false {
			t.Errorf("%s: %s lets unknown members in", o.file, name)
		}
		for _, r := range stringsOf(o.node["required"]) {
			if _, ok := o.props[r]; !ok {
				t.Errorf("%s: %s requires %q, which it does not have", o.file, name, r)
			}
		}
	}
}

// TestDescriptions makes sure that every member can be explained. A member
// that is itself an object defined elsewhere is described there.
func TestDescriptions(t *testing.T) {
	for name, o := range objects(t) {
		for member, v := range o.props {
			p := v.(map[string]any)
			words, _ := p["description"].(string)
			if _, target, _ := resolved(o.file, p); words == "" && kindIn(target) == "object" {
				words, _ = target["description"].(string)
			}
			if words == "" && member != "id" && member != "note" {
				t.Errorf("%s: %s.%s has no description", o.file, name, member)
			}
		}
	}
}

// measures are endings that say what a number is in beside the units: minutes where the
// thing can be nothing else, since a bare _min is the least of something, shares and
// multiples.
var measures = []string{"wait_min", "repeat_min", "separation_min", "fraction", "diameters"}

// counts are numbers without a unit: counts, the value of whatever member, and the numbers by which the books
// call a class or method.
var counts = map[string]bool{
	"broken_left": true, "broken_replaced": true, "bypass_diodes": true, "cells": true, "conductor_class": true,
	"conductors_per_pole": true, "cores": true, "count": true, "current_carrying_conductors": true,
	"down_conductors": true, "end_clamps": true, "fixings": true, "grouped_circuits": true,
	"grouped_lightly_loaded": true, "inverters": true, "layers": true, "loaded_conductors": true,
	"method": true, "mid_clamps": true, "modules": true, "modules_in_series": true, "modules_per_unit": true, "phases": true,
	"poles": true, "poles_in_series": true, "protected_poles": true, "screws": true, "screws_min": true,
	"service_class": true, "steps": true, "storeys": true, "string_inputs": true, "strings": true,
	"units": true, "value": true, "ways": true,
}

func TestUnitsStandInNames(t *testing.T) {
	used := map[string]bool{}
	for name, o := range objects(t) {
		for member, p := range o.props {
			_, p, _ := resolved(o.file, p.(map[string]any))
			if kind := kindIn(p); kind != "number" && kind != "integer" {
				continue
			}
			used[member] = true
			unit := UnitOf(member) != "" || slices.ContainsFunc(measures, func(m string) bool { return member == m || strings.HasSuffix(member, "_"+m) })
			if !unit && !counts[member] {
				t.Errorf("%s: the name of %s.%s has no unit", o.file, name, member)
			}
			if unit && counts[member] {
				t.Errorf("%s has a unit and is listed as a count", member)
			}
		}
	}
	for c := range counts {
		if !used[c] {
			t.Errorf("the list of counts names %q, which no schema has", c)
		}
	}
}

// unresolved are members in the form of an id whose target need not be in the
// document.
var unresolved = map[string]string{
	"departure.subject": "may name a subject of a rule that is not a part, such as one end of a run; the engine resolves it and says when it cannot",
}

// TestIDsAreReferences makes sure that no member in the form of an id goes
// unchecked, and that what refers to something has that form.
func TestIDsAreReferences(t *testing.T) {
	for name, o := range objects(t) {
		for member, v := range o.props {
			p := v.(map[string]any)
			if items, ok := p["items"].(map[string]any); ok {
				p = items
			}
			_, refers := p["x-refers-to"]
			isID := formOf(o.file, p) == "id" && member != "id" && unresolved[name+"."+member] == ""
			if refers != isID {
				t.Errorf("%s: %s.%s: has the form of an id: %t, says what it refers to: %t", o.file, name, member, isID, refers)
			}
		}
	}
}

// formOf is the name under which the form of a value is defined: id, text, date.
func formOf(file string, p map[string]any) string {
	_, _, name := resolved(file, p)
	return name
}

// plainKeywords are the keywords that mean the same in draft 7, as which the
// schemas are compiled, as in draft 2020-12, in which they are written.
var plainKeywords = strings.Fields(`$schema $id $ref $defs title description type enum const
	properties required additionalProperties propertyNames maxProperties items minItems maxItems
	minimum maximum exclusiveMinimum minLength maxLength pattern anyOf x-refers-to x-unique-in x-go x-plausible`)

func TestSchemasUsePlainKeywords(t *testing.T) {
	for _, file := range schemaFiles(t) {
		checkKeywords(t, file, plainSchema(file))
	}
}

func checkKeywords(t *testing.T, where string, node map[string]any) {
	t.Helper()
	for keyword, v := range node {
		if !slices.Contains(plainKeywords, keyword) {
			t.Errorf("%s: keyword %q", where, keyword)
		}
		if _, ref := node["$ref"]; ref && keyword != "$ref" && keyword != "description" && !strings.HasPrefix(keyword, "x-") {
			t.Errorf("%s: %q stands beside $ref, and draft 7 does not look at it there", where, keyword)
		}
		if keyword == "pattern" && node["description"] == nil {
			t.Errorf("%s: a pattern without a description cannot be explained", where)
		}
		checkBelow(t, where+"/"+keyword, keyword, v)
	}
}

func checkBelow(t *testing.T, where, keyword string, v any) {
	t.Helper()
	switch keyword {
	case "properties", "$defs":
		for name, sub := range v.(map[string]any) {
			checkKeywords(t, where+"/"+name, sub.(map[string]any))
		}
	case "items", "propertyNames", "additionalProperties":
		switch sub := v.(type) {
		case map[string]any:
			checkKeywords(t, where, sub)
		case []any:
			t.Errorf("%s: a list of schemas means different things in the two drafts", where)
		}
	case "anyOf":
		for _, sub := range v.([]any) {
			checkKeywords(t, where, sub.(map[string]any))
		}
	}
}

// TestSchemasAreSound compiles the files as what they say they are, with the
// meta-schema of draft 2020-12, and as they are compiled for use.
func TestSchemasAreSound(t *testing.T) {
	for _, file := range schemaFiles(t) {
		c := jsonschema.NewCompiler()
		for _, f := range schemaFiles(t) {
			raw, err := os.Open(f)
			if err != nil {
				t.Fatal(err)
			}
			defer raw.Close()
			if err := c.AddResource(f, raw); err != nil {
				t.Fatal(err)
			}
		}
		sch, err := c.Compile(file)
		if err != nil {
			t.Errorf("%s: %v", file, err)
		} else if sch.Draft != jsonschema.Draft2020 {
			t.Errorf("%s is not read as draft 2020-12", file)
		}
		if _, err := compile(file); err != nil {
			t.Errorf("%s: %v", file, err)
		}
	}
}

func TestFile(t *testing.T) {
	raw, err := File(InstallationSchema)
	if err != nil || !json.Valid(raw) {
		t.Errorf("%s: %v", InstallationSchema, err)
	}
	if _, err := File("nothing.schema.json"); err == nil {
		t.Error("a schema that is not there was found")
	}
	if slices.Sorted(maps.Keys(plainSchema("nothing.schema.json"))) != nil {
		t.Error("a schema that is not there has members")
	}
}
