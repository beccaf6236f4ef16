package main

import (
	"errors"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"testing/iotest"

	"pgregory.net/rapid"
)

// namedIn lists the documents of a stream with their texts.
func namedIn(r io.Reader) []string {
	var all []string
	for s := range openStream(r).documents() {
		all = append(all, fmt.Sprintf("%s: %s %v", s.name, s.text, s.err))
	}
	return all
}

// TestStreamIsReadAsMeant holds which texts are one document and which are a
// document a line.
func TestStreamIsReadAsMeant(t *testing.T) {
	for text, want := range map[string][]string{
		"":                                 {"standard input:  <nil>"},
		"{}":                               {"standard input: {} <nil>"},
		"\n {}\n\n":                        {"standard input: \n {}\n\n <nil>"},
		"{\n\"a\":\n{\"b\": [\n]}\n}":      {"standard input: {\n\"a\":\n{\"b\": [\n]}\n} <nil>"},
		"{\"a\": [\n{}\n]}":                {"standard input: {\"a\": [\n{}\n]} <nil>"},
		"{\"a\": 1,\n{}":                   {"standard input: {\"a\": 1,\n{} <nil>"}, // could be a slip in one document
		"{}\n{}":                           {"standard input:1: {} <nil>", "standard input:2: {} <nil>"},
		"\n{}\r\n\n{\"a\": 1}\n":           {"standard input:2: {} <nil>", "standard input:4: {\"a\": 1} <nil>"},
		"{}\nnonsense\n{}\n":               {"standard input:1: {} <nil>", "standard input:2: nonsense <nil>", "standard input:3: {} <nil>"},
		"{\"a\" 1}\n{}\n":                  {"standard input:1: {\"a\" 1} <nil>", "standard input:2: {} <nil>"},
		"{\"a\":\n{\"project\": {}}\n{}\n": {"standard input:1: {\"a\": <nil>", "standard input:2: {\"project\": {}} <nil>", "standard input:3: {} <nil>"},
		"nonsense\n{}\n":                   {"standard input:1: nonsense <nil>", "standard input:2: {} <nil>"},
	} {
		if got := namedIn(strings.NewReader(text)); !slices.Equal(got, want) {
			t.Errorf("%q is read as %q, want %q", text, got, want)
		}
		if got := namedIn(iotest.OneByteReader(strings.NewReader(text))); !slices.Equal(got, want) {
			t.Errorf("byte by byte %q is read as %q, want %q", text, got, want)
		}
	}
}

// TestStreamOfWholeDocuments holds that any documents on a line each are told
// apart, and that any one document of several lines is one.
func TestStreamOfWholeDocuments(t *testing.T) {
	compact := rapid.SampledFrom([]string{`{}`, `{"a":[{"b":{}}]}`, ` {"a":"{[,:"} `, `{"a":"}\n{"}`})
	layouts := rapid.SampledFrom([]string{"{\n}", "{\"a\":\n{}}", "{\"a\": [\n{},\n{}\n]\n}", "{\"a\": {\"b\": 1},\n\"c\": {}\n}", "\n\n{\"a\"\n:\n{}\n}\n"})
	rapid.Check(t, func(t *rapid.T) {
		lines := rapid.SliceOfN(compact, 2, 6).Draw(t, "lines")
		if got := namedIn(strings.NewReader(strings.Join(lines, "\n"))); len(got) != len(lines) {
			t.Errorf("%q", got)
		}
		if got := namedIn(strings.NewReader(layouts.Draw(t, "layout"))); len(got) != 1 {
			t.Errorf("%q", got)
		}
	})
}

// TestStreamThatBreaksOff holds that what came before is kept, and that the break
// is told.
func TestStreamThatBreaksOff(t *testing.T) {
	broken := errors.New("the pipe broke")
	for text, want := range map[string]int{"{}\n{}\n{}\n": 4, "{}": 1, "": 1} {
		got := namedIn(io.MultiReader(strings.NewReader(text), iotest.ErrReader(broken)))
		if len(got) != want || !strings.Contains(got[len(got)-1], broken.Error()) {
			t.Errorf("%q: %q", text, got)
		}
	}
}

// TestOutputIsWholeOrNotThere holds that a file or folder that is not finished
// leaves nothing behind.
func TestOutputIsWholeOrNotThere(t *testing.T) {
	dir := t.TempDir()
	file, err := newWholeFile(filepath.Join(dir, "report"))
	if err != nil {
		t.Fatal(err)
	}
	fmt.Fprint(file, "half")
	file.abandon()
	folder, err := newWholeFolder(filepath.Join(dir, "pages"))
	if err != nil {
		t.Fatal(err)
	}
	f, err := folder.create("index.html")
	if err != nil {
		t.Fatal(err)
	}
	f.Close()
	folder.abandon()
	if left, err := os.ReadDir(dir); err != nil || len(left) > 0 {
		t.Error(left, err)
	}
}
