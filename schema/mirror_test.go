package schema

import (
	"bytes"
	"io/fs"
	"reflect"
	"regexp"
	"slices"
	"sort"
	"strings"
	"testing"
)

// documentFiles are the schemas of the document, one a room.
var documentFiles = []string{
	"installation", "project", "pvstring", "cable", "isolator", "surge", "earthing", "label", "accircuit", "storage", "roof", "commissioning", "handover",
}

// TestMirror walks the schema of the installation and the Go mirror side by
// side: the same members, of the same kind, all the way down.
func TestMirror(t *testing.T) {
	m := mirror{t: t, seen: map[string]reflect.Type{}}
	m.object("installation.schema.json", plainSchema("installation.schema.json"), reflect.TypeFor[Installation](), "installation")
	for _, file := range documentFiles {
		for name, def := range defsOf(file) {
			if def.(map[string]any)["type"] == "object" && m.seen[name] == nil {
				t.Errorf("%s: $defs/%s is not part of the installation", file, name)
			}
		}
	}
}

func defsOf(file string) map[string]any {
	defs, _ := plainSchema(file + ".schema.json")["$defs"].(map[string]any)
	return defs
}

type mirror struct {
	t    *testing.T
	seen map[string]reflect.Type // Go type of each object of $defs
}

func (m mirror) object(file string, s map[string]any, typ reflect.Type, where string) {
	if s["additionalProperties"] != false {
		m.t.Errorf("%s is open: it lacks additionalProperties false", where)
	}
	if s["title"] == nil || s["description"] == nil {
		m.t.Errorf("%s lacks a title or description", where)
	}
	fields := map[string]reflect.StructField{}
	for i := range typ.NumField() {
		if name, ok := memberName(typ.Field(i)); ok {
			fields[name] = typ.Field(i)
		}
	}
	properties := s["properties"].(map[string]any)
	for name, p := range properties {
		f, ok := fields[name]
		if !ok {
			if name != "$schema" {
				m.t.Errorf("%s.%s has no field in %s", where, name, typ)
			}
			continue
		}
		m.property(file, p.(map[string]any), f.Type, where+"."+name)
	}
	for name := range fields {
		if properties[name] == nil {
			m.t.Errorf("%s has a field for %s, which the schema of %s has not", typ, name, where)
		}
	}
}

func (m mirror) property(file string, p map[string]any, typ reflect.Type, where string) {
	name := where[strings.LastIndexByte(where, '.')+1:]
	if p["description"] == nil && name != "id" && name != "note" && p["$ref"] == nil {
		m.t.Errorf("%s lacks a description", where)
	}
	for strings.HasPrefix(typ.String(), "map[string]") {
		p, typ = p["additionalProperties"].(map[string]any), typ.Elem()
	}
	if ref, ok := p["$ref"].(string); ok {
		target, node := follow(file, p)
		def := ref[strings.LastIndexByte(ref, '/')+1:]
		m.referred(target, def, node.(map[string]any), typ, where)
		return
	}
	m.plain(file, p, typ, where)
}

// referred follows a reference: to an object, each of which has one Go type, or
// to a kind of value.
func (m mirror) referred(file, def string, node map[string]any, typ reflect.Type, where string) {
	if node["type"] != "object" {
		m.plain(file, node, typ, where)
		return
	}
	if known := m.seen[def]; known == nil {
		m.seen[def] = typ
		if !strings.EqualFold(typ.Name(), strings.ReplaceAll(def, "_", "")) {
			m.t.Errorf("%s is %s in the schema and %s in Go", where, def, typ)
		}
		m.object(file, node, typ, def)
	} else if known != typ {
		m.t.Errorf("%s is a %s; elsewhere %s is a %s", where, typ, def, known)
	}
}

func (m mirror) plain(file string, p map[string]any, typ reflect.Type, where string) {
	var want reflect.Type
	switch kind := p["type"]; {
	case kind == "number" || kind == "integer":
		want = numberType
		m.unit(where)
	case kind == "boolean":
		want = flagType
	case kind == "string" || p["enum"] != nil:
		want = textType
	case kind == "array":
		if typ.Kind() != reflect.Slice {
			m.t.Errorf("%s is a list in the schema and a %s in Go", where, typ)
			return
		}
		if p["maxItems"] == nil {
			m.t.Errorf("%s is a list without bound", where)
		}
		m.property(file, p["items"].(map[string]any), typ.Elem(), where)
		return
	default:
		m.t.Errorf("%s is of no kind that the mirror knows: %v", where, p)
		return
	}
	if typ != want {
		m.t.Errorf("%s is a %s in Go; the schema makes it a %s", where, typ, want)
	}
}

var (
	unitSuffix = regexp.MustCompile(`_(v|kv|m2|a|ka|ma|w|kw|va|kva|ohm|kohm|megohm|m|mm|mm2|km|c|k|kg|kn|n|n_m|pa|pct|min|h|d|yr|s|ms|hz|kwh|deg|fraction|pct_per_k|v_per_k|a_per_k|pct_per_min|hz_per_s|per_km2_yr|per_yr|m_per_s|kn_per_m2|kn_per_m|w_per_m2|kg_per_m2|kg_per_m3|n_per_mm2|ohm_per_km|mv_per_a_m|k_m_per_w|km_per_h|a2s|diameters|x|y|number|count)$`)
	noUnit     = []string{
		// counts, ordinals and standard sizes, which have no unit
		"cells", "bypass_diodes", "string_inputs", "phases", "modules_in_series", "ways", "poles", "poles_in_series",
		"protected_poles", "cores", "conductors_per_pole", "grouped_circuits", "grouped_lightly_loaded",
		"current_carrying_conductors", "loaded_conductors", "conductor_class", "awg", "down_conductors", "units", "steps",
		"modules_per_unit", "class", "type", "count", "method", "service_class", "bus_position",
		"fixings", "inverters", "end_clamps", "mid_clamps", "modules", "strings", "broken_left", "broken_replaced",
		"screws", "layers", "storeys",
	}
)

// unit makes sure that the name of a quantity ends in its unit.
func (m mirror) unit(where string) {
	name := where[strings.LastIndexByte(where, '.')+1:]
	if !unitSuffix.MatchString(name) && !slices.Contains(noUnit, name) {
		m.t.Errorf("%s is a number whose name ends in no unit", where)
	}
}

// TestReferencesAreMarked makes sure that what a ref tag names is a kind that
// the document has.
func TestReferencesAreMarked(t *testing.T) {
	kinds := map[string]bool{"terminal": true, "any_part": true}
	for name := range plainSchema("project.schema.json")["$defs"].(map[string]any)["datasheets"].(map[string]any)["properties"].(map[string]any) {
		kinds["datasheets/"+name] = true
	}
	var visit func(reflect.Type, func(reflect.StructField))
	seen := map[reflect.Type]bool{}
	visit = func(typ reflect.Type, f func(reflect.StructField)) {
		for typ.Kind() == reflect.Slice || typ.Kind() == reflect.Map {
			typ = typ.Elem()
		}
		if typ.Kind() != reflect.Struct || seen[typ] {
			return
		}
		seen[typ] = true
		for i := range typ.NumField() {
			f(typ.Field(i))
			visit(typ.Field(i).Type, f)
		}
	}
	var tags []string
	visit(reflect.TypeFor[Installation](), func(f reflect.StructField) {
		if ref, ok := f.Tag.Lookup("ref"); ok {
			tags = append(tags, ref)
		}
	})
	for typ := range seen {
		kinds[kindOf(typ)] = true
	}
	sort.Strings(tags)
	for _, tag := range slices.Compact(tags) {
		if !kinds[tag] {
			t.Errorf("there is no kind %q to refer to", tag)
		}
	}
}

// TestNothingBesideRef makes sure that the schemas mean the same as draft 7,
// as which they are read: there, what stands beside $ref does not count.
func TestNothingBesideRef(t *testing.T) {
	names, err := fs.Glob(files, "*.schema.json")
	if err != nil {
		t.Fatal(err)
	}
	only2020 := []string{"unevaluatedProperties", "unevaluatedItems", "prefixItems", "dependentSchemas", "dependentRequired", "minContains", "maxContains", "$dynamicRef", "$dynamicAnchor", "$anchor"}
	for _, name := range names {
		raw, err := files.ReadFile(name)
		if err != nil {
			t.Fatal(err)
		}
		if !bytes.Contains(raw, inFile) {
			t.Errorf("%s does not say that it is JSON Schema 2020-12", name)
		}
		besideRef(t, name, plainSchema(name), only2020)
	}
}

func besideRef(t *testing.T, where string, v any, only2020 []string) {
	switch v := v.(type) {
	case map[string]any:
		_, isRef := v["$ref"].(string)
		for key, m := range v {
			if isRef && key != "$ref" && key != "description" && key != "title" {
				t.Errorf("%s has %s beside $ref", where, key)
			}
			if slices.Contains(only2020, key) {
				t.Errorf("%s has %s, which draft 7 does not know", where, key)
			}
			besideRef(t, where+"/"+key, m, only2020)
		}
	case []any:
		for _, e := range v {
			besideRef(t, where, e, only2020)
		}
	}
}
