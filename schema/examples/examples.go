// Package examples makes the installations that the tests and the README go by.
// One of them is kept as a document, the cottage; the others are made from what
// is kept of them in testdata:
//
//   - gb-island-cottage: the document itself
//   - gb-island-cottage-faulty: the cottage with every fault of testdata/faults
//   - gb-battery: the cottage with the patch that puts a battery in
//   - gb-warehouse: a template, in which a part that stands there many times is written once
//
// Only tests and the program that writes the examples import it.
package examples

import (
	"bytes"
	"encoding/json"
	"fmt"
	"os"
	"path/filepath"
	"runtime"
	"sync"

	jsonpatch "github.com/evanphx/json-patch/v5"
)

const (
	Cottage   = "gb-island-cottage"
	Faulty    = "gb-island-cottage-faulty"
	Battery   = "gb-battery"
	Warehouse = "gb-warehouse"
)

// Names are those of all examples, in the order in which they are listed.
var Names = []string{Battery, Cottage, Faulty, Warehouse}

var made = map[string]func() ([]byte, error){
	Cottage:   cottage,
	Faulty:    sync.OnceValues(faulty),
	Battery:   sync.OnceValues(battery),
	Warehouse: sync.OnceValues(warehouse),
}

var cottage = sync.OnceValues(func() ([]byte, error) { return os.ReadFile(kept(Cottage, "installation.json")) })

// T is what a test and a benchmark have in common.
type T interface {
	Helper()
	Fatal(args ...any)
}

// Text is the document of an example, for a test.
func Text(t T, name string) []byte {
	t.Helper()
	text, err := document(name)
	if err != nil {
		t.Fatal(err)
	}
	return text
}

// document is that of an example. It is made once; who changes it changes a copy.
func document(name string) ([]byte, error) {
	of, ok := made[name]
	if !ok {
		return nil, fmt.Errorf("there is no example %q; there are %v", name, Names)
	}
	text, err := of()
	return bytes.Clone(text), err
}

// Write writes the document of every example into a folder of its name.
func Write(folder string) error {
	for _, name := range Names {
		text, err := document(name)
		if err != nil {
			return err
		}
		if err := os.MkdirAll(filepath.Join(folder, name), 0o755); err != nil {
			return err
		}
		if err := os.WriteFile(filepath.Join(folder, name, "installation.json"), text, 0o644); err != nil {
			return err
		}
	}
	return nil
}

func battery() ([]byte, error) {
	patch, err := os.ReadFile(kept(Battery, "patch.json"))
	if err != nil {
		return nil, err
	}
	return patchedCottage(patch)
}

func faulty() ([]byte, error) {
	files, err := filepath.Glob(kept("faults", "*.json"))
	if err != nil {
		return nil, err
	}
	var patches [][]byte
	for _, name := range files {
		raw, err := os.ReadFile(name)
		if err != nil {
			return nil, err
		}
		var fault struct{ Patch json.RawMessage }
		if err := json.Unmarshal(raw, &fault); err != nil {
			return nil, fmt.Errorf("%s: %w", filepath.Base(name), err)
		}
		patches = append(patches, fault.Patch)
	}
	return patchedCottage(patches...)
}

// patchedCottage is the cottage with RFC 6902 patches applied in turn.
func patchedCottage(patches ...[]byte) ([]byte, error) {
	text, err := cottage()
	if err != nil {
		return nil, err
	}
	for _, p := range patches {
		patch, err := jsonpatch.DecodePatch(p)
		if err != nil {
			return nil, err
		}
		if text, err = patch.Apply(text); err != nil {
			return nil, err
		}
	}
	return indented(text)
}

// indented lays a document out with a value on each line.
func indented(text []byte) ([]byte, error) {
	var b bytes.Buffer
	if err := json.Indent(&b, text, "", "  "); err != nil {
		return nil, err
	}
	b.WriteByte('\n')
	return b.Bytes(), nil
}

// kept names a file of testdata, wherever a test is run.
func kept(path ...string) string {
	_, here, _, _ := runtime.Caller(0)
	return filepath.Join(append([]string{filepath.Dir(here), "..", "..", "testdata"}, path...)...)
}
