package main

import (
	"cmp"
	"encoding/json"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"unicode"

	"github.com/go-json-experiment/json/jsontext"
)

// member is what the page of the document shows of a JSON Schema.
type member struct {
	Ref         string          `json:"$ref"`
	Title       string          `json:"title"`
	Description string          `json:"description"`
	Type        string          `json:"type"`
	Enum        []any           `json:"enum"`
	Minimum     *float64        `json:"minimum"`
	Maximum     *float64        `json:"maximum"`
	Above       *float64        `json:"exclusiveMinimum"`
	Required    []string        `json:"required"`
	Properties  json.RawMessage `json:"properties"`
	Defs        json.RawMessage `json:"$defs"`
	Items       *member         `json:"items"`
	Keyed       json.RawMessage `json:"additionalProperties"`
	RefersTo    string          `json:"x-refers-to"`
}

// named is a member of an object, in the order of the file.
type named struct {
	name   string
	member *member
}

// TestDocumentPage keeps docs/document.md true to the schema of the document.
func TestDocumentPage(t *testing.T) {
	if testing.Short() {
		t.Skip("takes its time")
	}
	var b strings.Builder
	b.WriteString(generated + documentIntroduction)
	writeContents(t, &b)
	whole := schemaFile(t, "installation.schema.json")
	b.WriteString("## The document\n\n")
	writeMembers(t, &b, "installation.schema.json", whole)
	for _, file := range documentFiles(t) {
		s := schemaFile(t, file)
		fmt.Fprintf(&b, "## %s\n\n", s.Title)
		for _, d := range members(t, s.Defs) {
			writeObject(t, &b, file, d)
		}
	}
	golden(t, "../../docs/document.md", b.String())
}

// writeContents lists the sections of the page, and the objects of each.
func writeContents(t *testing.T, b *strings.Builder) {
	b.WriteString("## Contents\n\n- [The document](#the-document)\n")
	for _, file := range documentFiles(t) {
		s := schemaFile(t, file)
		var objects []string
		for _, d := range members(t, s.Defs) {
			if len(d.member.Properties) > 0 {
				objects = append(objects, fmt.Sprintf("[%s](#%s)", titleOf(d), anchor(file, d.name)))
			}
		}
		fmt.Fprintf(b, "- [%s](#%s): %s\n", s.Title, heading(s.Title), strings.Join(objects, ", "))
	}
	b.WriteString("\n")
}

// heading is the anchor that a heading of Markdown gets from its words.
func heading(words string) string {
	keep := func(r rune) rune {
		switch {
		case r == ' ' || r == '-':
			return '-'
		case unicode.IsLetter(r) || unicode.IsDigit(r):
			return unicode.ToLower(r)
		}
		return -1
	}
	return strings.Map(keep, words)
}

// titleOf is what an object is called.
func titleOf(d named) string { return cmp.Or(d.member.Title, strings.ReplaceAll(d.name, "_", " ")) }

// documentFiles are the schema files of the document, in the order in which its
// members lead to them: that in which to fill them in.
func documentFiles(t *testing.T) []string {
	var files []string
	for _, m := range members(t, schemaFile(t, "installation.schema.json").Properties) {
		of := m.member
		if of.Items != nil {
			of = of.Items
		}
		if file, _, _ := strings.Cut(of.Ref, "#"); file != "" && !slices.Contains(files, file) {
			files = append(files, file)
		}
	}
	return files
}

const documentIntroduction = `# The document, member by member

Everything that can be stated of an installation. Only what is marked **must** has to be there once its object is; leave
out what you do not know, and sunclause says "not shown" and names it. The unit stands at the end of a name: ` + "`voc_v`" + ` is
in volts. A number is written with a point and without quotes, a date as "2026-03-02", and yes or no as true or false.
An id is made of letters, digits, - and _, at most 40, and is used once in the document.

`

func schemaFile(t *testing.T, name string) *member {
	t.Helper()
	raw, err := os.ReadFile(filepath.Join("../../schema", name))
	if err != nil {
		t.Fatal(err)
	}
	return parsed(t, raw)
}

func parsed(t *testing.T, raw []byte) *member {
	t.Helper()
	m := &member{}
	if err := json.Unmarshal(raw, m); err != nil {
		t.Fatal(err)
	}
	return m
}

// members lists the members of an object in the order of the file.
func members(t *testing.T, raw json.RawMessage) []named {
	t.Helper()
	if len(raw) == 0 {
		return nil
	}
	d := jsontext.NewDecoder(strings.NewReader(string(raw)))
	var all []named
	if _, err := d.ReadToken(); err != nil {
		t.Fatal(err)
	}
	for d.PeekKind() == '"' {
		name, _ := d.ReadToken()
		key := name.String()
		value, err := d.ReadValue()
		if err != nil {
			t.Fatal(err)
		}
		all = append(all, named{key, parsed(t, value)})
	}
	return all
}

func writeObject(t *testing.T, b *strings.Builder, file string, d named) {
	if len(d.member.Properties) == 0 {
		return
	}
	fmt.Fprintf(b, "<a id=\"%s\"></a>\n\n### %s\n\n", anchor(file, d.name), upper(titleOf(d)))
	if d.member.Description != "" {
		fmt.Fprintf(b, "%s\n\n", upper(d.member.Description))
	}
	writeMembers(t, b, file, d.member)
}

func writeMembers(t *testing.T, b *strings.Builder, file string, object *member) {
	b.WriteString("| member | | value | what it is |\n|---|---|---|---|\n")
	for _, m := range members(t, object.Properties) {
		must := ""
		if slices.Contains(object.Required, m.name) {
			must = "**must**"
		}
		if m.name == "note" {
			m.member.Description = "a remark for readers"
		}
		words := cmp.Or(m.member.Description, pointed(t, file, m.member).Description)
		if words == "" {
			t.Errorf("%s: %s has no description", file, m.name)
		}
		fmt.Fprintf(b, "| `%s` | %s | %s | %s |\n", m.name, must, valueOf(t, file, m.member)+unitOf(m), strings.ReplaceAll(words, "|", "\\|"))
	}
	b.WriteString("\n")
}

// pointed follows the reference of a member, if it has one.
func pointed(t *testing.T, file string, m *member) *member {
	t.Helper()
	if m.Ref == "" {
		return m
	}
	_, target := target(t, file, m.Ref)
	return target
}

// target finds what a reference points to, and the file it is in.
func target(t *testing.T, file, ref string) (string, *member) {
	t.Helper()
	name, path, _ := strings.Cut(ref, "#")
	name = cmp.Or(name, file)
	at := schemaFile(t, name)
	steps := strings.Split(strings.Trim(path, "/"), "/")
	for i := 0; i+1 < len(steps); i += 2 {
		list := at.Defs
		if steps[i] == "properties" {
			list = at.Properties
		}
		all := members(t, list)
		k := slices.IndexFunc(all, func(n named) bool { return n.name == steps[i+1] })
		if k < 0 {
			t.Fatalf("%s: no %s", file, ref)
		}
		at = all[k].member
	}
	return name, at
}

// valueOf says in words what a member may hold.
func valueOf(t *testing.T, file string, m *member) string {
	if m.RefersTo != "" {
		return reference(t, m.RefersTo)
	}
	if m.Ref != "" {
		name, at := target(t, file, m.Ref)
		if len(at.Properties) > 0 {
			def := m.Ref[strings.LastIndex(m.Ref, "/")+1:]
			return fmt.Sprintf("[%s](#%s)", cmp.Or(at.Title, strings.ReplaceAll(def, "_", " ")), anchor(name, def))
		}
		if at.Title != "" && at.Type != "boolean" && name == "quantity.schema.json" {
			return at.Title
		}
		return valueOf(t, name, at)
	}
	switch {
	case len(m.Enum) > 0:
		return "one of `" + strings.Trim(strings.Join(strings.Fields(fmt.Sprint(m.Enum)), "` `"), "[]") + "`"
	case m.Type == "array" && m.Items != nil:
		return "list: " + valueOf(t, file, m.Items)
	case m.Type == "boolean":
		return "true or false"
	case m.Type == "integer":
		return "whole number" + bounds(m)
	case m.Type == "number":
		return "number" + bounds(m)
	case m.Type == "object" && len(m.Keyed) > 0 && m.Keyed[0] == '{':
		return "by id: " + valueOf(t, file, parsed(t, m.Keyed))
	case m.Type == "string":
		return "text"
	}
	return m.Type
}

// reference says in words what an id is the id of.
func reference(t *testing.T, kind string) string {
	if sheet, ok := strings.CutPrefix(kind, "datasheets/"); ok {
		return fmt.Sprintf("key of `%s` among the [datasheets](#project-datasheets)", sheet)
	}
	for _, file := range documentFiles(t) {
		for _, d := range members(t, schemaFile(t, file).Defs) {
			if d.name == kind {
				return fmt.Sprintf("id of: [%s](#%s)", titleOf(d), anchor(file, d.name))
			}
		}
	}
	return "id of any part"
}

func bounds(m *member) string {
	switch {
	case m.Minimum != nil && m.Maximum != nil:
		return fmt.Sprintf(", %v to %v", *m.Minimum, *m.Maximum)
	case m.Minimum != nil:
		return fmt.Sprintf(", at least %v", *m.Minimum)
	case m.Above != nil && m.Maximum != nil:
		return fmt.Sprintf(", above %v, at most %v", *m.Above, *m.Maximum)
	}
	return ""
}

func anchor(file, def string) string { return strings.TrimSuffix(file, ".schema.json") + "-" + def }

// units are the endings of names that say a unit, the longer ones first.
var units = []struct{ ending, unit string }{
	{"_m_per_s", "m/s"}, {"_kn_per_m2", "kN/m²"}, {"_per_km2_yr", "per km² and year"}, {"_pct_per_k", "% per K"}, {"_v_per_k", "V per K"},
	{"_mv_per_k", "mV per K"}, {"_ma_per_k", "mA per K"}, {"_a_per_k", "A per K"}, {"_w_per_m2", "W/m²"}, {"_kg_per_m3", "kg/m³"}, {"_kg_per_m2", "kg/m²"},
	{"_ohm_per_km", "Ω/km"}, {"_mv_per_a_per_m", "mV per A and m"}, {"_n_per_mm2", "N/mm²"}, {"_k_m_per_w", "K·m/W"}, {"_a2s", "A²s"},
	{"_megohm", "MΩ"}, {"_ohm", "Ω"}, {"_mm2", "mm²"}, {"_m2", "m²"}, {"_mm", "mm"}, {"_cm", "cm"}, {"_km", "km"}, {"_kv", "kV"}, {"_ka", "kA"}, {"_ma", "mA"},
	{"_kva", "kVA"}, {"_va", "VA"}, {"_kwh", "kWh"}, {"_wh", "Wh"}, {"_kw", "kW"}, {"_ah", "Ah"}, {"_hz", "Hz"}, {"_pa", "Pa"}, {"_kn", "kN"}, {"_nm", "N·m"},
	{"_kg", "kg"}, {"_deg", "degrees"}, {"_pct", "%"}, {"_min", "minutes"}, {"_ms", "ms"}, {"_nf", "nF"}, {"_v", "V"}, {"_a", "A"}, {"_w", "W"}, {"_m", "m"},
	{"_n", "N"}, {"_s", "s"}, {"_l", "l"}, {"_h", "h"},
}

// unitOf is the unit that the name of a number ends in.
func unitOf(m named) string {
	if !strings.HasPrefix(m.member.Ref, "quantity.schema.json#") {
		return ""
	}
	for _, u := range units {
		if strings.HasSuffix(m.name, u.ending) {
			return ", in " + u.unit
		}
	}
	return ""
}
