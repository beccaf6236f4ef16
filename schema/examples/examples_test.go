package examples_test

import (
	"encoding/json"
	"os"
	"path/filepath"
	"slices"
	"testing"

	"sunclause/schema"
	"sunclause/schema/examples"
)

// TestExamplesAreRead decodes every example.
func TestExamplesAreRead(t *testing.T) {
	for _, name := range examples.Names {
		if _, err := schema.Decode(name, examples.Text(t, name)); err != nil {
			t.Error(err)
		}
	}
}

// TestExamplesAreAllOfThem makes sure that every folder of testdata called after
// a region is an example, and that every example has its folder.
func TestExamplesAreAllOfThem(t *testing.T) {
	folders, err := filepath.Glob("../../testdata/gb-*")
	if err != nil {
		t.Fatal(err)
	}
	for i, f := range folders {
		folders[i] = filepath.Base(f)
	}
	if !slices.Equal(folders, examples.Names) {
		t.Errorf("the folders are %v, the examples %v", folders, examples.Names)
	}
}

// TestWarehouseIsLarge counts what the template is filled in with.
func TestWarehouseIsLarge(t *testing.T) {
	var w struct {
		Strings, Cables, Labels []json.RawMessage
		Roof                    struct {
			Planes []struct{ Modules, Rails, Fixings, Clamps []json.RawMessage }
		}
	}
	if err := json.Unmarshal(examples.Text(t, examples.Warehouse), &w); err != nil {
		t.Fatal(err)
	}
	got := []int{len(w.Strings), len(w.Cables), len(w.Labels)}
	for _, p := range w.Roof.Planes {
		got = append(got, len(p.Modules), len(p.Rails), len(p.Fixings), len(p.Clamps))
	}
	if want := []int{40, 76, 352, 368, 160, 800, 896, 368, 160, 800, 896}; !slices.Equal(got, want) {
		t.Errorf("strings, cables, labels; modules, rails, fixings, clamps of each plane: %v, want %v", got, want)
	}
}

// TestWrite writes the examples, each into its folder.
func TestWrite(t *testing.T) {
	dir := t.TempDir()
	if err := examples.Write(dir); err != nil {
		t.Fatal(err)
	}
	for _, name := range examples.Names {
		got, err := os.ReadFile(filepath.Join(dir, name, "installation.json"))
		if err != nil || string(got) != string(examples.Text(t, name)) {
			t.Errorf("%s was not written as it is (%v)", name, err)
		}
	}
}
