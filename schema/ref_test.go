package schema

import (
	"os"
	"reflect"
	"strings"
	"testing"

	"sunclause/schema/examples"
)

// decoded reads an example, or a text that is one.
func decoded(t *testing.T, raw []byte) *Installation {
	t.Helper()
	d, err := Decode("x.json", raw)
	if err != nil {
		t.Fatal(err)
	}
	return &d.Installation
}

// TestReferencesOfExamples makes sure that every stated reference leads to the part
// that bears its name, and every other one to a blank one.
func TestReferencesOfExamples(t *testing.T) {
	led, blank := 0, 0
	for _, name := range examples.Names {
		in := decoded(t, examples.Text(t, name))
		x := in.index(func(id Text, _ part) { t.Errorf("%s: %s stands twice", name, id.Value) })
		walk(in, func(l *layout, v reflect.Value) {
			for _, f := range l.names {
				for r := range f.links(v.Field(f.index)) {
					to := reflect.ValueOf(r).Elem().MethodByName("To").Call(nil)[0]
					if !r.text().Stated() {
						blank++
						checkBlank(t, r.text().At(), to.Elem())
						continue
					}
					led++
					want := x.parts[r.text().Value].is
					if strings.HasPrefix(f.refersTo, "datasheets/") {
						want = x.sheets[sheetKey{f.refersTo, r.text().Value}]
					}
					if to.Interface() != want {
						t.Errorf("%s: %s leads to something else", name, r.text().At())
					}
				}
			}
		})
	}
	if led < 2000 || blank < 300 {
		t.Errorf("%d references lead somewhere and %d do not", led, blank)
	}
}

// checkBlank makes sure that nothing of a part is stated, and that whatever would be,
// in what it refers to as well, stands at one place.
func checkBlank(t *testing.T, at string, v reflect.Value) {
	t.Helper()
	seen := map[reflect.Type]bool{}
	var check func(reflect.Value)
	check = func(v reflect.Value) {
		if p, ok := v.Interface().(Pointer); ok {
			if p.At() != at || p.Stated() {
				t.Errorf("%s: a blank part has a member at %q, stated: %t", at, p.At(), p.Stated())
			}
			if list := p.Member("list"); list != at {
				t.Errorf("%s: a list of a blank part stands at %q", at, list)
			}
			return
		}
		switch v.Kind() {
		case reflect.Struct:
			if seen[v.Type()] {
				return
			}
			for i := range v.NumField() {
				if v.Type().Field(i).IsExported() {
					check(v.Field(i))
				}
			}
			if to := v.MethodByName("To"); to.IsValid() {
				seen[v.Type()] = true
				check(to.Call(nil)[0].Elem())
			}
		case reflect.Slice, reflect.Map:
			if v.Len() != 0 {
				t.Errorf("%s: a blank part has a list", at)
			}
		}
	}
	check(v)
}

// TestEveryTypeCanBeBlank makes sure of the same for each type that something refers to.
func TestEveryTypeCanBeBlank(t *testing.T) {
	in := decoded(t, []byte(`{"project": {"reference": "x", "stage": "design", "country": "GB"}, "strings": [{"id": "S", "module": "m", "modules_in_series": 2}], "datasheets": {"modules": {"m": {"technology": "mono_si", "pmax_w": 400, "voc_v": 40, "isc_a": 10, "vmp_v": 34, "imp_a": 9}}}}`))
	checkBlank(t, "/x", reflect.ValueOf(Blank[Installation]("/x")).Elem())
	checkBlank(t, "/strings/0/plane", reflect.ValueOf(in.Strings[0].Plane.To()).Elem())
	checkBlank(t, "/x", reflect.ValueOf(Ref[Run]{Text: NewText("/x", "R1")}.To()).Elem())
	if s := in.Strings[0]; s.Module.To() != in.Datasheets.Modules["m"] {
		t.Error("the string has another datasheet than the list")
	}
	if s := in.Strings[0]; s.Module.To().VocV.Value != 40 || !s.Module.Found() || s.Plane.Found() {
		t.Error("the string does not know its module, or knows a plane")
	}
}

// TestLeaveOutTellsReferences makes sure that a reference leads to what there is
// when something was left out, and when it was stated again.
func TestLeaveOutTellsReferences(t *testing.T) {
	raw, err := os.ReadFile("../testdata/gb-island-cottage/installation.json")
	if err != nil {
		t.Fatal(err)
	}
	in := decoded(t, raw)
	s := &in.Strings[0]
	voc := s.Module.To().VocV
	for _, c := range []struct {
		leaveOut, at string // where the voltage is then missing
	}{
		{"/strings/0/module", "/strings/0/module"},
		{"/datasheets/modules/" + s.Module.Value, "/strings/0/module"},
		{"/datasheets/modules/" + s.Module.Value + "/voc_v", voc.At()},
		{"/datasheets/modules", "/strings/0/module"},
		{"/datasheets", "/strings/0/module"},
	} {
		again, err := in.LeaveOut(c.leaveOut)
		if err != nil {
			t.Fatal(err)
		}
		if got := s.Module.To().VocV; got.Stated() || got.At() != c.at {
			t.Errorf("without %s the voltage is %v", c.leaveOut, got)
		}
		if again(); s.Module.To().VocV != voc {
			t.Errorf("with %s again the voltage is %v", c.leaveOut, s.Module.To().VocV)
		}
	}
	plane := s.Plane.To()
	again, err := in.LeaveOut("/roof/planes")
	if err != nil {
		t.Fatal(err)
	}
	if s.Plane.Found() || s.Plane.To().PitchDeg.At() != "/strings/0/plane" {
		t.Error("a plane that is left out is still found")
	}
	if again(); s.Plane.To() != plane {
		t.Error("the plane is another one")
	}
	if moved := in.DesignedOn("2030-01-01"); moved.Strings[0].Plane.To() != plane || moved.Project.DesignDate.Value != "2030-01-01" {
		t.Error("designed on another day, the string lies on another plane")
	}
}

// TestSheetsReferToNothing makes sure of what Resolve relies on.
func TestSheetsReferToNothing(t *testing.T) {
	for _, kind := range layoutOf(reflect.TypeFor[Datasheets]()).fields {
		if kind.kind == aKeyed {
			checkRefersToNothing(t, kind.name, kind.each)
		}
	}
}

func checkRefersToNothing(t *testing.T, where string, l *layout) {
	t.Helper()
	for _, f := range l.fields {
		if f.refersTo != "" || l.id >= 0 {
			t.Errorf("%s.%s: a datasheet has an id or refers to something", where, f.name)
		}
		checkRefersToNothing(t, where+"."+f.name, f.layout)
		if f.each != nil {
			checkRefersToNothing(t, where+"."+f.name, f.each)
		}
	}
}
