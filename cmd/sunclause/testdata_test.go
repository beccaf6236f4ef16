package main

import (
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"strings"
	"testing"
)

// testdataUse says for every file of testdata which test goes by it, and with
// which words that test names it or its folder.
var testdataUse = []struct{ files, test, words string }{
	{"README.md", "", ""},
	{"broken/*.json", "schema/broken_test.go", "testdata/broken/*.json"},
	{"broken/*.txt", "schema/broken_test.go", `".txt"`},
	{"faults/*.json", "policies/faults_test.go", "testdata/faults"},
	{"faults/singly/*.json", "policies/faults_test.go", "testdata/faults"},
	{"formats/README.md", "", ""},
	{"formats/job.json", "engine/report/formats_test.go", "testdata/formats/"},
	{"formats/report.*", "engine/report/formats_test.go", `"report.`},
	{"formats/rules/*.yaml", "engine/report/formats_test.go", "rules"},
	{"gb-*/report.txt", "cmd/sunclause/golden_test.go", `"report.txt"`},
	{"gb-*/outcomes.txt", "cmd/sunclause/golden_test.go", `"outcomes.txt"`},
	{"gb-battery/faults/*.json", "policies/faults_test.go", "testdata/gb-battery/faults"},
	{"gb-battery/faults/singly/*.json", "policies/faults_test.go", "testdata/gb-battery/faults"},
	{"gb-battery/patch.json", "schema/examples/examples.go", `"patch.json"`},
	{"gb-island-cottage/drawings/*.svg", "engine/report/drawings_test.go", `"drawings"`},
	{"gb-island-cottage/facts.txt", "cmd/sunclause/golden_test.go", `"facts.txt"`},
	{"gb-island-cottage/facts-sample.txt", "cmd/sunclause/golden_test.go", `"facts-sample.txt"`},
	{"gb-island-cottage/installation.json", "schema/examples/examples.go", `"installation.json"`},
	{"gb-island-cottage/working.txt", "cmd/sunclause/golden_test.go", "gb-island-cottage/working.txt"},
	{"gb-warehouse/installation.json.tmpl", "schema/examples/warehouse.go", `"installation.json.tmpl"`},
	{"hostile/*/ruleset.yaml", "cmd/sunclause/hostile_test.go", "testdata/hostile/*"},
	{"hostile/cycle/other/ruleset.yaml", "cmd/sunclause/hostile_test.go", "testdata/hostile/*"},
	{"hostile/*/*.rego", "cmd/sunclause/hostile_test.go", "testdata/hostile/*"},
	{"hostile/*/pvstring.yaml", "cmd/sunclause/hostile_test.go", "testdata/hostile/*"},
	{"published/README.md", "", ""},
	{"published/jenkins-junit.xsd", "engine/report/junit_test.go", "published/jenkins-junit.xsd"},
	{"published/sarif-schema-2.1.0.json", "engine/report/sarif_test.go", `"sarif-schema-2.1.0.json"`},
	{"script/*.txtar", "cmd/sunclause/script_test.go", "testdata/script"},
	{"slips/lists.json", "policies/lists_test.go", "testdata/slips/lists.json"},
	{"slips/survivors.json", "policies/slips_test.go", "testdata/slips/survivors.json"},
}

// TestEveryFileOfTestdataIsUsed finds what has been left behind in testdata, and
// what the list above still names.
func TestEveryFileOfTestdataIsUsed(t *testing.T) {
	const repo = "../.."
	there := make([]int, len(testdataUse))
	root := filepath.Join(repo, "testdata")
	err := filepath.WalkDir(root, func(name string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		file := filepath.ToSlash(strings.TrimPrefix(name, root+string(filepath.Separator)))
		used := false
		for i, u := range testdataUse {
			if ok, _ := path.Match(u.files, file); ok {
				there[i]++
				used = true
			}
		}
		if !used {
			t.Errorf("testdata/%s: no test goes by it", file)
		}
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	for i, u := range testdataUse {
		if there[i] == 0 {
			t.Errorf("testdata/%s is not there any more", u.files)
		}
		if u.test == "" {
			continue // it is for whoever reads the folder
		}
		text, err := os.ReadFile(filepath.Join(repo, u.test))
		if err != nil || !strings.Contains(string(text), u.words) {
			t.Errorf("testdata/%s: %s does not say %s (%v)", u.files, u.test, u.words, err)
		}
	}
}

// TestPairsOfTestdata makes sure that what comes in pairs does: a broken document
// has the problems told of it, and the other way round.
func TestPairsOfTestdata(t *testing.T) {
	for ext, other := range map[string]string{".json": ".txt", ".txt": ".json"} {
		files, err := filepath.Glob("../../testdata/broken/*" + ext)
		if err != nil || len(files) == 0 {
			t.Fatal("no broken documents", err)
		}
		for _, name := range files {
			if _, err := os.Stat(strings.TrimSuffix(name, ext) + other); err != nil {
				t.Error(err)
			}
		}
	}
}
