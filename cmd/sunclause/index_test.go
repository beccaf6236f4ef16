package main

import (
	"os"
	"path/filepath"
	"regexp"
	"testing"
)

// TestIndexOfDocs holds that docs/README.md lists every page of docs once, and
// leads to nothing that is not there.
func TestIndexOfDocs(t *testing.T) {
	const docs = "../../docs"
	listed := map[string]int{}
	for _, m := range regexp.MustCompile(`\]\(([^)]*)\)`).FindAllStringSubmatch(string(readTest(t, filepath.Join(docs, "README.md"))), -1) {
		readTest(t, filepath.Join(docs, m[1]))
		listed[m[1]]++
	}
	pages, err := os.ReadDir(docs)
	if err != nil {
		t.Fatal(err)
	}
	for _, p := range pages {
		if name := p.Name(); filepath.Ext(name) == ".md" && name != "README.md" && listed[name] != 1 {
			t.Errorf("docs/README.md lists %s %d times, want once", name, listed[name])
		}
	}
}
