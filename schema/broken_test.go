package schema_test

import (
	"errors"
	"flag"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"sunclause/schema"
)

var update = flag.Bool("update", false, "write the golden files anew")

// TestBroken decodes documents with the mistakes that people make, and holds
// what they are told against the text beside each.
func TestBroken(t *testing.T) {
	paths, err := filepath.Glob("../testdata/broken/*.json")
	if err != nil || len(paths) < 10 {
		t.Fatalf("broken documents: %d, %v", len(paths), err)
	}
	for _, path := range paths {
		name := filepath.Base(path)
		t.Run(strings.TrimSuffix(name, ".json"), func(t *testing.T) {
			raw, err := os.ReadFile(path)
			if err != nil {
				t.Fatal(err)
			}
			_, err = schema.Decode(name, raw)
			var problems schema.Problems
			if !errors.As(err, &problems) {
				t.Fatalf("got %v; want problems", err)
			}
			golden(t, strings.TrimSuffix(path, ".json")+".txt", problems.Error()+"\n")
		})
	}
}

// golden holds a text against the file that keeps it, or writes the file.
func golden(t *testing.T, path, got string) {
	t.Helper()
	if *update {
		if err := os.WriteFile(path, []byte(got), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	want, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff(string(want), got); diff != "" {
		t.Errorf("%s (-want +got):\n%s", path, diff)
	}
}
