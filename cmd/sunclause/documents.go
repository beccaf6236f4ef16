package main

import (
	"fmt"
	"io"
	"io/fs"
	"iter"
	"os"
	"path/filepath"
	"slices"
	"sort"
	"strings"

	"sunclause/schema"
)

// maxDocument is how much of one document is read at the most; the decoder
// refuses long before.
const maxDocument = 64 << 20

// documentsNamed lists the documents that the arguments name: a file, every
// installation below a folder, or - for the standard input.
func documentsNamed(args []string) ([]string, error) {
	var names []string
	for _, a := range args {
		info, err := os.Stat(a)
		switch {
		case a == "-":
			names = append(names, a)
		case err != nil:
			return nil, fmt.Errorf("%s: %w", a, plainError(err))
		case info.IsDir():
			found, err := installationsBelow(a)
			if err != nil {
				return nil, err
			}
			names = append(names, found...)
		default:
			names = append(names, a)
		}
	}
	return names, nil
}

// installationsBelow lists the installations in a folder and those below it.
func installationsBelow(folder string) ([]string, error) {
	var names []string
	err := filepath.WalkDir(folder, func(name string, d fs.DirEntry, err error) error {
		if err != nil {
			return fmt.Errorf("%s: %w", name, plainError(err))
		}
		if !d.IsDir() && (d.Name() == "installation.json" || strings.HasSuffix(d.Name(), ".installation.json")) {
			names = append(names, name)
		}
		return nil
	})
	if err == nil && len(names) == 0 {
		err = fmt.Errorf("%s: no installation in this folder; in a folder, files called installation.json or ending in .installation.json are checked", folder)
	}
	sort.Strings(names)
	return names, err
}

// source is a document to be read: a file, or a text of the standard input.
type source struct {
	name string // as it was named
	path string // of a file; "" where the text is here already
	text []byte
	err  error // why there is none
}

// read gives the text of the document and the name that problems are told under.
func (s source) read(env *environment) ([]byte, string, error) {
	if s.path == "" {
		return s.text, s.name, s.err
	}
	return env.readText(s.path)
}

// batch is the documents that a command line names, one after the other.
type batch struct {
	all   iter.Seq[source]
	files []string // those that are files
	total int      // how many there are; -1 where that is not known
	many  bool     // whether it is more than one document, or a folder, and wants a summary
}

// batchOf is the documents that the arguments name. A file that is not there is
// one that cannot be read; a folder without an installation is an error.
func (env *environment) batchOf(args []string) (batch, error) {
	b := batch{many: len(args) > 1}
	var sources []iter.Seq[source]
	for _, a := range args {
		if a == "-" {
			in := openStream(env.stdin)
			b.many = b.many || in.many()
			sources = append(sources, in.documents())
			continue
		}
		names := []string{a}
		if info, err := os.Stat(a); err == nil && info.IsDir() {
			b.many = true
			if names, err = installationsBelow(a); err != nil {
				return batch{}, err
			}
		}
		b.files = append(b.files, names...)
		sources = append(sources, filesOf(names))
	}
	b.total = len(b.files)
	if b.many && slices.Contains(args, "-") {
		b.total = -1
	}
	b.all = func(yield func(source) bool) {
		for _, some := range sources {
			for s := range some {
				if !yield(s) {
					return
				}
			}
		}
	}
	return b, nil
}

func filesOf(names []string) iter.Seq[source] {
	return func(yield func(source) bool) {
		for _, name := range names {
			if !yield(source{name: filepath.ToSlash(name), path: name}) {
				return
			}
		}
	}
}

// readDocument reads and decodes one installation.
func (env *environment) readDocument(name string) (*schema.Document, error) {
	raw, shown, err := env.readText(name)
	if err != nil {
		return nil, err
	}
	return schema.Decode(shown, raw)
}

func (env *environment) readText(name string) ([]byte, string, error) {
	if name == "-" {
		raw, err := io.ReadAll(io.LimitReader(env.stdin, maxDocument))
		if err != nil {
			return nil, "", fmt.Errorf("%s: %w", standardInput, err)
		}
		return raw, standardInput, nil
	}
	f, err := os.Open(name)
	if err != nil {
		return nil, "", fmt.Errorf("%s: %w", name, plainError(err))
	}
	defer f.Close()
	raw, err := io.ReadAll(io.LimitReader(f, maxDocument))
	if err != nil {
		return nil, "", fmt.Errorf("%s: %w", name, plainError(err))
	}
	return raw, filepath.ToSlash(name), nil
}
