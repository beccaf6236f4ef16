package main

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
	"testing/fstest"
)

// TestFresh makes sure that the files are what go generate would write now.
func TestFresh(t *testing.T) {
	files, err := generate(os.DirFS(".."), mirrors)
	if err != nil {
		t.Fatal(err)
	}
	for name, want := range files {
		if got, err := os.ReadFile(filepath.Join("..", name)); err != nil || string(got) != string(want) {
			t.Errorf("schema/%s is not what the schemas say: run go generate ./schema", name)
		}
	}
}

// TestRefused makes sure that a schema from which no mirror follows is refused,
// with the place and the reason.
func TestRefused(t *testing.T) {
	const (
		document = `{"type": "object", "properties": {"datasheets": {"$ref": "project.schema.json#/$defs/datasheets"}, "lamps": {"type": "array", "maxItems": 9, "items": {"$ref": "room.schema.json#/$defs/lamp"}}}}`
		project  = `{"$defs": {"datasheets": {"type": "object", "properties": {"lamps": {"type": "object", "maxProperties": 9, "propertyNames": {"$ref": "room.schema.json#/$defs/id"}, "additionalProperties": {"$ref": "room.schema.json#/$defs/lamp_sheet"}}}}}}`
		room     = `{"$defs": {"id": {"type": "string", "pattern": "^[A-Z]{2}$"}, "lamp_sheet": {"type": "object"}, "lamp": {"type": "object", "properties": {"id": {"$ref": "#/$defs/id"}, "room": {"type": "string", "maxLength": 9}, "watts": {"type": "number", "minimum": 0, "maximum": 9}, "sheet": {"$ref": "#/$defs/id", "x-refers-to": "datasheets/lamps"}}}}}`
	)
	for _, c := range []struct{ old, put, want string }{
		{"", "", ""},
		{"datasheets/lamps", "lamp", ""},
		{"datasheets/lamps", "any_part", ""},
		{"datasheets/lamps", "datasheets/bulbs", "there is no member datasheets/bulbs"},
		{"datasheets/lamps", "lamp_sheet", "part of the kind \"lamp_sheet\", and there is none with an id"},
		{"datasheets/lamps", "bulb", "part of the kind \"bulb\", and there is none with an id"},
		{`"id": {"$ref": "#/$defs/id"}`, `"id": {}`, "room.schema.json: lamp.id: neither a number"},
		{`"id": {"$ref": "#/$defs/id"}`, `"id": {"type": "object"}`, "room.schema.json: lamp.id: neither a number"},
		{`"id": {"$ref": "#/$defs/id"}`, `"id": {"$ref": "#/$defs/bulb"}`, "room.schema.json defines no bulb"},
		{`"id": {"$ref": "#/$defs/id"}`, `"id": {"$ref": "nowhere.schema.json#/$defs/bulb"}`, "nowhere.schema.json"},
		{`, "maxLength": 9`, "", "lacks maxLength"},
		{"^[A-Z]{2}$", "^[a-z]$", "lacks propertyNames of a form that is known"},
		{`"maxLength": 9`, `"pattern": "^[a-z]$"`, "lacks a pattern that is known"},
		{`"minimum": 0, `, "", "lacks one lower and one upper limit"},
		{`{"id": {"type": "string", `, `{"id": {"type": "string", "minLength": 2, `, "lacks a pattern that is known"},
		{`"lamp_sheet"`, `"bulb": {"type": "object"}, "lamp_sheet"`, "nothing in the document is a bulb"},
	} {
		files := fstest.MapFS{"installation.schema.json": {Data: []byte(document)}, "project.schema.json": {Data: []byte(project)}, "room.schema.json": {Data: []byte(strings.Replace(room, c.old, c.put, 1))}}
		_, err := generate(files, mirrors[:1])
		if (err == nil) != (c.want == "") || err != nil && !strings.Contains(err.Error(), c.want) {
			t.Errorf("%s for %s: %v; want %q", c.put, c.old, err, c.want)
		}
	}
}

// TestSharedType makes sure that two definitions may share a Go type, as long as they
// agree on what their members are, and that one outside the document is named.
func TestSharedType(t *testing.T) {
	const (
		set = `{"x-go": "setFile", "type": "object", "properties": {"row": {"$ref": "#/$defs/row"}, "card": {"$ref": "#/$defs/card"}}, "$defs": {"row": {"x-go": "cardFile", "type": "object", "properties": {"id": {"type": "string"}, "any": {"type": ["number", "string"]}}}, "card": {"x-go": "cardFile", "type": "object", "properties": {"id": {"type": "string"}, "broken": {"type": "boolean"}}}}}`
		is  = "type cardFile struct {\n\tschema.Pointer\n\tID     schema.Text `json:\"id\"`\n\tAny    any         `json:\"any\"`\n\tBroken schema.Flag `json:\"broken\"`\n}"
	)
	for _, c := range []struct{ old, put, want string }{
		{"", "", ""},
		{`"id": {"type": "string"}, "broken"`, `"id": {"type": "number"}, "broken"`, "set.schema.json: ID is a schema.Text in row and a schema.Number in card"},
		{`"x-go": "setFile", `, "", "set.schema.json: set does not say what its Go type is called"},
	} {
		files, err := generate(fstest.MapFS{"set.schema.json": {Data: []byte(strings.Replace(set, c.old, c.put, 1))}}, []mirror{{"x/", "x", []definition{{file: "set.schema.json"}}}})
		if (err == nil) != (c.want == "") || err != nil && !strings.Contains(err.Error(), c.want) {
			t.Errorf("%s for %s: %v; want %q", c.put, c.old, err, c.want)
		}
		if err == nil && !strings.Contains(string(files["x/mirror.go"]), is) {
			t.Errorf("got\n%s\nwant\n%s", files["x/mirror.go"], is)
		}
	}
}

func TestGoName(t *testing.T) {
	for name, want := range map[string]string{"voc_v": "VocV", "mppt_datasheet": "MPPTDatasheet", "ac_ocpd_max_a": "ACOCPDMaxA", "spds": "SPDs", "m2": "M2"} {
		if got := goName(name); got != want {
			t.Errorf("%s: %s, want %s", name, got, want)
		}
	}
}
