package facts_test

import (
	"math"
	"os"
	"path/filepath"
	"reflect"
	"testing"

	"sunclause/facts"
	"sunclause/facts/book"
	"sunclause/facts/working"
	"sunclause/schema"
	"sunclause/schema/examples"
)

// rules are figures as a rule set gives them, by each method for the cold
// voltage.
func rules(method string) book.Book {
	from := working.Source{Document: "figures of the tests", How: working.CommonPractice}
	number := func(name, unit string, v float64) book.Parameter {
		return book.Parameter{Name: name, Unit: unit, Number: v, Source: from, Set: "test"}
	}
	return book.Book{
		Parameters: map[string]book.Parameter{
			"voltage_method":           {Name: "voltage_method", Text: method, IsText: true, Source: from, Set: "test"},
			"voc_factor":               number("voc_factor", "", 1.15),
			"isc_factor":               number("isc_factor", "", 1.25),
			"rear_irradiance_w_per_m2": number("rear_irradiance_w_per_m2", "W/m²", 135),
			"ocpr_test_factor":         number("ocpr_test_factor", "", 1.35),
		},
		Tables: map[string]*book.Table{
			"voc_temperature_factors": {Name: "voc_temperature_factors", Title: "voltage factors by T_min", Source: from, Set: "test",
				Columns: []book.Column{{Name: "at_least_c", Unit: "°C"}, {Name: "factor"}},
				Rows:    []map[string]any{{"at_least_c": -15.0, "factor": 1.16}, {"at_least_c": -20.0, "factor": 1.18}}},
			"cell_temperature_rise": {Name: "cell_temperature_rise", Title: "rise of the cells over the air", Source: from, Set: "test",
				Columns: []book.Column{{Name: "mounting"}, {Name: "rise_k", Unit: "K"}},
				Rows: []map[string]any{{"mounting": "in_roof", "rise_k": 40.0}, {"mounting": "on_roof", "rise_k": 35.0},
					{"mounting": "tilted_rack", "rise_k": 30.0}, {"mounting": "free_standing", "rise_k": 25.0}}},
		},
	}
}

var methods = []string{"coefficient", "table", "factor"}

// samples are the texts of all sample installations, by file.
func samples(t testing.TB) map[string][]byte {
	t.Helper()
	texts := map[string][]byte{}
	for _, name := range examples.Names {
		texts[name] = examples.Text(t, name)
	}
	files, err := filepath.Glob("testdata/*.installation.json")
	if err != nil {
		t.Fatal(err)
	}
	for _, f := range files {
		if texts[f], err = os.ReadFile(f); err != nil {
			t.Fatal(err)
		}
	}
	return texts
}

func read(t testing.TB, file string) *schema.Installation {
	t.Helper()
	text, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	return decoded(t, file, text)
}

func decoded(t testing.TB, name string, text []byte) *schema.Installation {
	t.Helper()
	d, err := schema.Decode(name, text)
	if err != nil {
		t.Fatal(err)
	}
	return &d.Installation
}

// everyNumber visits each number of the facts, and each that it came from.
// everyNumber visits every number of the facts and every number that they were
// derived from; what several were derived from, once.
func everyNumber(f *facts.Facts, visit func(path string, n working.Number)) {
	seen := map[*working.Number]bool{}
	walk(reflect.ValueOf(f).Elem(), "facts", func(path string, n working.Number) { descend(n, path, visit, seen) })
}

var numberType = reflect.TypeFor[working.Number]()

func walk(v reflect.Value, path string, visit func(path string, n working.Number)) {
	switch {
	case v.Type() == numberType:
		visit(path, v.Interface().(working.Number))
	case v.Kind() == reflect.Slice:
		for i := range v.Len() {
			walk(v.Index(i), path, visit)
		}
	case v.Kind() == reflect.Struct:
		if id := v.FieldByName("ID"); id.IsValid() {
			path += " " + id.String()
		}
		for i := range v.NumField() {
			if f := v.Type().Field(i); f.IsExported() {
				walk(v.Field(i), path+"."+f.Name, visit)
			}
		}
	}
}

func descend(n working.Number, path string, visit func(path string, n working.Number), seen map[*working.Number]bool) {
	visit(path, n)
	inputs := n.Inputs()
	if len(inputs) == 0 || seen[&inputs[0]] {
		return
	}
	seen[&inputs[0]] = true
	for _, in := range inputs {
		descend(in, path+" ← "+in.Symbol(), visit, seen)
	}
}

// checkNumbers holds for any facts: what is known is finite and lacks nothing,
// and has no more digits than it is rounded to.
func checkNumbers(t *testing.T, f *facts.Facts) {
	t.Helper()
	everyNumber(f, func(path string, n working.Number) {
		switch {
		case !n.Known():
		case math.IsNaN(n.Value()) || math.IsInf(n.Value(), 0):
			t.Errorf("%s is known and not finite: %v", path, n.Value())
		case len(n.Missing()) > 0:
			t.Errorf("%s is known and misses %v", path, n.Missing())
		case n.Formula() != "" && working.Round(n.Value()) != n.Value():
			t.Errorf("%s = %v has more than twelve digits", path, n.Value())
		}
	})
}

// A document that states next to nothing yields facts that are next to nothing,
// and lists that are nil.
func TestNothingStated(t *testing.T) {
	d, err := schema.Decode("test", []byte(`{"project": {"reference": "X", "stage": "design", "country": "GB"}}`))
	if err != nil {
		t.Fatal(err)
	}
	f := facts.Derive(&d.Installation, rules("coefficient"))
	if f.Strings != nil || f.Mppts != nil || f.Inverters != nil || f.Isolators != nil || f.Runs != nil {
		t.Error("there are facts of parts that are not stated")
	}
	for name, n := range map[string]working.Number{"strings": f.Installation.Strings, "power": f.Installation.DcPowerW, "voltage": f.Installation.VocMaxV} {
		if n.Known() || len(n.Missing()) != 1 || n.Missing()[0].At != "/strings" {
			t.Errorf("%s of the installation = %v, missing %v", name, n.Value(), n.Missing())
		}
	}
	checkNumbers(t, f)
}

func TestWholeInstallation(t *testing.T) {
	f := facts.Derive(read(t, "testdata/barn.installation.json"), rules("coefficient"))
	checkNumbers(t, f)
	if got, want := f.Installation.DcPowerW.Value(), 47*455.4+3*424.71; math.Abs(got-want) > 1e-6 {
		t.Errorf("power %v W, want %v W", got, want)
	}
	if got := f.Installation.Strings.Value(); got != 4 {
		t.Errorf("%v strings, want 4", got)
	}
	if f.Installation.VocMaxV.Value() != f.Strings[0].VocMaxV.Value() {
		t.Errorf("greatest voltage %v, want that of the first string, %v", f.Installation.VocMaxV.Value(), f.Strings[0].VocMaxV.Value())
	}
}

// TestNamesOnce makes sure that the facts which the rooms put together for one
// part do not share a name, and that each says what it is.
func TestNamesOnce(t *testing.T) {
	of := reflect.TypeFor[facts.Facts]()
	for i := range of.NumField() {
		list := of.Field(i)
		part := list.Type
		if part.Kind() == reflect.Slice {
			part = part.Elem()
			if facts.Lists[list.Tag.Get("json")] == "" {
				t.Errorf("%s: Lists does not say where its parts come from", list.Name)
			}
		}
		seen := map[string]bool{}
		for _, f := range reflect.VisibleFields(part) {
			name := f.Tag.Get("json")
			if f.Anonymous || name == "-" {
				continue
			}
			if seen[name] || seen[f.Name] {
				t.Errorf("%s has two facts called %s (%s)", list.Name, name, f.Name)
			}
			seen[name], seen[f.Name] = true, true
			if name != "id" && f.Tag.Get("words") == "" {
				t.Errorf("%s.%s does not say what it is", list.Name, name)
			}
		}
	}
}
