package main

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"maps"
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
			return nil, "", fmt.Errorf("standard input: %w", err)
		}
		return raw, "standard input", nil
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

// plainError leaves out the path and the system call, which the message has
// already said.
func plainError(err error) error {
	var p *fs.PathError
	if errors.As(err, &p) {
		return p.Err
	}
	return err
}

// writeWhole writes a file whole or not at all: beside it first, then in its
// place.
func writeWhole(name string, text []byte) error {
	return writeAll(map[string][]byte{name: text})
}

// writeAll writes files whole, and none of them before all are on the disk beside
// their places.
func writeAll(files map[string][]byte) error {
	beside := map[string]string{}
	defer func() {
		for _, temp := range beside {
			os.Remove(temp) // after the rename there is nothing left to remove
		}
	}()
	names := slices.Sorted(maps.Keys(files))
	for _, name := range names {
		temp, err := writeBeside(name, files[name])
		if err != nil {
			return fmt.Errorf("cannot write %s: %w", name, plainError(err))
		}
		beside[name] = temp
	}
	for _, name := range names {
		if err := os.Rename(beside[name], name); err != nil {
			return fmt.Errorf("cannot write %s: %w", name, plainError(err))
		}
	}
	return nil
}

// writeBeside writes what is to be a file into another in the same folder.
func writeBeside(name string, text []byte) (temp string, err error) {
	f, err := os.CreateTemp(filepath.Dir(name), "."+filepath.Base(name)+".*")
	if err != nil {
		return "", err
	}
	_, err = f.Write(text)
	if err == nil {
		err = f.Chmod(0o644)
	}
	if closing := f.Close(); err == nil {
		err = closing
	}
	if err != nil {
		os.Remove(f.Name())
	}
	return f.Name(), err
}
