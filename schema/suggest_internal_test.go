package schema

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// What people call a thing leads to the word for it, where that is on the list; else
// the letters decide.
func TestNearWordByMeaning(t *testing.T) {
	kinds := []string{"fuse", "circuit_breaker", "rccb", "rcbo", "afdd", "rcm"}
	for _, c := range []struct{ says, want string }{
		{"rcd", `did you mean "rccb"?`}, {"RCD", `did you mean "rccb"?`}, {"mcb", `did you mean "circuit_breaker"?`}, {"gfci", `did you mean "rcbo"?`},
		{"rcb", `did you mean "rccb"?`}, {"pv", ""}, {"contactor", ""},
	} {
		if got := nearWord(c.says, kinds); got != c.want {
			t.Errorf("%s: %q, want %q", c.says, got, c.want)
		}
	}
	if got := nearWord("pme", []string{"TN-S", "TN-C-S", "TT"}); got != `did you mean "TN-C-S"?` {
		t.Error("pme:", got)
	}
}

// TestMeaningsAreWords holds every meaning to the words of the schemas.
func TestMeaningsAreWords(t *testing.T) {
	files, err := filepath.Glob("*.schema.json")
	if err != nil || len(files) == 0 {
		t.Fatal("no schemas", err)
	}
	var all strings.Builder
	for _, f := range files {
		raw, err := os.ReadFile(f)
		if err != nil {
			t.Fatal(err)
		}
		all.Write(raw)
	}
	for name, words := range meanings {
		for _, w := range words {
			if !strings.Contains(all.String(), `"`+w+`"`) {
				t.Errorf("%q means %q, which is no word of the schemas", name, w)
			}
		}
	}
}
