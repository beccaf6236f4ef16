package main

import (
	"bytes"
	"encoding/json"
	"errors"
	"io"
	"os/exec"
	"slices"
	"strings"
	"testing"
)

// doors says which of our packages a package may import, and who may know the
// libraries that only one floor is to know. A room is facts/<room>.
var doors = map[string][]string{
	"schema":                {},
	"schema/generate":       {},
	"schema/examples":       {},
	"schema/examples/write": {"schema/examples"},
	"schema/slips":          {"schema"},
	"schema/slips/write":    {"schema/slips"},
	"policies":              {"facts/working", "facts/book", "engine/ruleset"},
	"policies/generate":     {"engine/ruleset"},
	"facts/working":         {"schema"},
	"facts/book":            {"facts/working"},
	"facts/circuit":         {"schema", "facts/working"},
	"facts/pvstring":        {"schema", "facts/working", "facts/book", "facts/circuit"},
	"facts/cable":           {"schema", "facts/working", "facts/book", "facts/circuit", "facts/pvstring"},
	"facts/facttest":        {"schema", "facts/working", "facts/book", "facts/circuit", "facts/pvstring", "facts/cable"},
	"facts/*":               {"schema", "facts/working", "facts/book", "facts/circuit", "facts/pvstring", "facts/cable"},
	"facts":                 {"schema", "facts/*"},
	"engine/catalogue":      {"schema", "facts", "facts/working"},
	"engine/rego":           {"facts", "engine/catalogue"},
	"engine/ruleset":        {"schema", "facts", "facts/working", "facts/book", "engine/catalogue", "engine/rego"},
	"engine/judge":          {"schema", "facts", "facts/working", "facts/book", "engine/catalogue", "engine/rego", "engine/ruleset"},
	"engine/trial":          {"schema", "facts", "facts/book", "engine/catalogue", "engine/ruleset", "engine/judge"},
	"engine/record":         {"schema", "facts/working", "engine/ruleset", "engine/judge"},
	"engine/report/drawing": {"schema", "facts", "facts/working", "facts/circuit", "engine/judge"},
	"engine/report":         {"schema", "facts", "facts/working", "engine/catalogue", "engine/ruleset", "engine/judge", "engine/record", "engine/report/drawing"},
	"engine/report/sheets":  {"schema", "facts/working", "facts/circuit", "facts/commissioning", "facts/label", "engine/judge", "engine/report", "engine/report/drawing"},
	"cmd/sunclause":         {"schema", "facts", "engine/catalogue", "engine/ruleset", "engine/judge", "engine/trial", "engine/record", "engine/report", "engine/report/sheets", "policies"},
}

// kept are libraries that only one of our packages may import.
var kept = map[string]string{
	"github.com/open-policy-agent/opa/v1/ast":     "engine/rego",
	"github.com/open-policy-agent/opa/v1/rego":    "engine/rego",
	"github.com/open-policy-agent/opa/v1/storage": "engine/rego",
	"github.com/open-policy-agent/opa/v1/types":   "engine/rego",
	"github.com/open-policy-agent/opa/v1/bundle":  "engine/ruleset", // the seal
	"github.com/santhosh-tekuri/jsonschema":       "schema",
	"github.com/go-json-experiment/json":          "schema",
	"go.yaml.in/yaml":                             "schema",
	"github.com/spf13/pflag":                      "cmd/sunclause",
	"github.com/schollz/progressbar":              "cmd/sunclause",
	"golang.org/x/term":                           "cmd/sunclause",
}

func TestDoors(t *testing.T) {
	out, err := exec.Command("go", "list", "-json=ImportPath,Imports", "sunclause/...").Output()
	if err != nil {
		t.Fatal(err)
	}
	for d := json.NewDecoder(bytes.NewReader(out)); ; {
		var p struct {
			ImportPath string
			Imports    []string
		}
		if err := d.Decode(&p); errors.Is(err, io.EOF) {
			return
		} else if err != nil {
			t.Fatal(err)
		}
		name := strings.TrimPrefix(p.ImportPath, "sunclause/")
		for _, imported := range p.Imports {
			checkDoor(t, name, imported)
		}
	}
}

func checkDoor(t *testing.T, name, imported string) {
	for library, owner := range kept {
		if strings.HasPrefix(imported, library) && name != owner {
			t.Errorf("%s imports %s; only %s may", name, imported, owner)
		}
	}
	ours, ok := strings.CutPrefix(imported, "sunclause/")
	if !ok {
		return
	}
	if ours == "facts/facttest" || (ours == "schema/examples" || ours == "schema/slips") && name != ours+"/write" {
		t.Errorf("%s imports %s, which is for tests only", name, imported)
	}
	allowed, known := doors[name]
	if !known && strings.HasPrefix(name, "facts/") {
		allowed, known = doors["facts/*"], true
	}
	if !known {
		t.Errorf("package %s has no door; add it to the table", name)
	}
	if !slices.Contains(allowed, ours) && !(slices.Contains(allowed, "facts/*") && strings.HasPrefix(ours, "facts/")) {
		t.Errorf("%s imports %s, which is not among its doors: %s", name, ours, strings.Join(allowed, ", "))
	}
}
