package main

import (
	"bytes"
	"context"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
)

// typed runs a command line and gives back what it wrote.
func typed(t *testing.T, args ...string) (stdout, stderr string, status int) {
	t.Helper()
	var out, errs bytes.Buffer
	env := &environment{strings.NewReader(""), &out, &errs}
	status = dispatch(context.Background(), env, args)
	return out.String(), errs.String(), status
}

// golden compares a text with a file of the repository, or writes it.
func golden(t *testing.T, name, got string) {
	t.Helper()
	if *update {
		if err := os.WriteFile(name, []byte(got), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	want, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	if d := cmp.Diff(string(want), got); d != "" {
		t.Errorf("%s differs (- kept, + now); go test ./cmd/sunclause -update writes it:\n%s", name, d)
	}
}

// TestCases holds each example to everything that it must produce.
func TestCases(t *testing.T) {
	t.Chdir("../..")
	cases, err := filepath.Glob("testdata/*/installation.json")
	if err != nil || len(cases) == 0 {
		t.Fatal("no cases", err)
	}
	for _, name := range cases {
		folder := filepath.Dir(name)
		t.Run(filepath.Base(folder), func(t *testing.T) {
			text, errs, status := typed(t, "check", "--width", "60", name)
			if status == couldNot {
				t.Fatal(errs)
			}
			golden(t, filepath.Join(folder, "report.txt"), text)
			if strings.Contains(folder, "warehouse") {
				return // its other reports say the same at great length
			}
			json, _, _ := typed(t, "check", "--format", "json", name)
			golden(t, filepath.Join(folder, "report.json"), json)
			working, _, _ := typed(t, "facts", "--working", "--width", "100", name)
			golden(t, filepath.Join(folder, "facts.txt"), working)
		})
	}
}
