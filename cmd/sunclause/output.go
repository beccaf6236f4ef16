package main

import (
	"bufio"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"maps"
	"os"
	"path/filepath"
	"slices"
)

// destination is where reports go.
type destination interface {
	// flush lets what is written be seen, where that is seen before the end.
	flush() error
	// finish ends it: a file or folder is there from then on.
	finish() error
	// abandon leaves no trace of a file or folder that is not finished.
	abandon()
}

// page is a destination that is one text.
type page interface {
	io.Writer
	destination
}

// wholeFile is a file that is written whole or not at all: beside it first, then
// in its place.
type wholeFile struct {
	name string
	file *os.File
	*bufio.Writer
}

// newWholeFile begins a file. It may take the place of an ordinary file, but of no
// folder, device or pipe, and of none of the inputs.
func newWholeFile(name string, inputs ...string) (*wholeFile, error) {
	if err := mayReplace(name, inputs); err != nil {
		return nil, fmt.Errorf("cannot write %s: %w", name, err)
	}
	f, err := os.CreateTemp(filepath.Dir(name), "."+filepath.Base(name)+".*")
	if err != nil {
		return nil, fmt.Errorf("cannot write %s: %w", name, plainError(err))
	}
	return &wholeFile{name, f, bufio.NewWriterSize(f, 64<<10)}, nil
}

// mayReplace says why a file may not be written, if it may not.
func mayReplace(name string, inputs []string) error {
	there, err := os.Stat(name)
	switch {
	case err != nil:
		return nil // there is none yet; whether one can be made shows in making it
	case there.IsDir():
		return errors.New("it is a folder; name a file")
	case !there.Mode().IsRegular():
		return errors.New("it is no ordinary file; name another")
	}
	for _, input := range inputs {
		if read, err := os.Stat(input); err == nil && os.SameFile(read, there) {
			return errors.New("it is what is read; name another file")
		}
	}
	return nil
}

func (w *wholeFile) flush() error { return nil }

func (w *wholeFile) finish() error {
	err := w.Flush()
	if err == nil {
		err = w.file.Chmod(0o644)
	}
	if closing := w.file.Close(); err == nil {
		err = closing
	}
	if err == nil {
		err = os.Rename(w.file.Name(), w.name)
	}
	if err != nil {
		return fmt.Errorf("cannot write %s: %w", w.name, plainError(err))
	}
	return nil
}

func (w *wholeFile) abandon() {
	w.file.Close()
	os.Remove(w.file.Name()) // after the rename there is nothing left to remove
}

// writeWhole writes a file whole or not at all, and over none of the inputs.
func writeWhole(name string, text []byte, inputs ...string) error {
	return writeAll(map[string][]byte{name: text}, inputs...)
}

// writeAll writes files whole, and none of them before all are on the disk beside
// their places. None takes the place of one of the inputs.
func writeAll(files map[string][]byte, inputs ...string) error {
	var all []*wholeFile
	for _, name := range slices.Sorted(maps.Keys(files)) {
		w, err := newWholeFile(name, inputs...)
		if err != nil {
			return err
		}
		defer w.abandon()
		if _, err = w.Write(files[name]); err == nil {
			err = w.Flush()
		}
		if err != nil {
			return fmt.Errorf("cannot write %s: %w", name, plainError(err))
		}
		all = append(all, w)
	}
	for _, w := range all {
		if err := w.finish(); err != nil {
			return err
		}
	}
	return nil
}

// screen is the standard output.
type screen struct{ *bufio.Writer }

func (env *environment) screen() screen { return screen{bufio.NewWriterSize(env.stdout, 64<<10)} }

func (s screen) finish() error { return s.flush() }

func (s screen) flush() error {
	if err := s.Flush(); err != nil {
		return fmt.Errorf("cannot write the report: %w", err)
	}
	return nil
}

func (screen) abandon() {}

// page is the file that is named, or the standard output.
func (env *environment) page(output string, inputs ...string) (page, error) {
	if output == "" {
		return env.screen(), nil
	}
	return newWholeFile(output, inputs...)
}

// deliver writes a text to a file, or to the screen when none is named.
func (env *environment) deliver(text []byte, output string, inputs ...string) error {
	to, err := env.page(output, inputs...)
	if err != nil {
		return err
	}
	defer to.abandon()
	if _, err := to.Write(text); err != nil {
		return fmt.Errorf("cannot write the report: %w", err)
	}
	return to.finish()
}

// wholeFolder is a folder that is written whole or not at all, and in the place of
// nothing that is there.
type wholeFolder struct{ name, temporary string }

func newWholeFolder(name string) (*wholeFolder, error) {
	if _, err := os.Lstat(name); err == nil {
		return nil, fmt.Errorf("%s is already there; name a new folder, or move that one away", name)
	}
	temporary, err := os.MkdirTemp(filepath.Dir(name), "."+filepath.Base(name)+".*")
	if err != nil {
		return nil, fmt.Errorf("cannot write %s: %w", name, plainError(err))
	}
	return &wholeFolder{name, temporary}, nil
}

// create makes a file of the folder.
func (w *wholeFolder) create(name string) (io.WriteCloser, error) {
	f, err := os.OpenFile(filepath.Join(w.temporary, name), os.O_WRONLY|os.O_CREATE|os.O_EXCL, 0o644)
	if err != nil {
		return nil, fmt.Errorf("cannot write %s: %w", w.name, plainError(err))
	}
	return f, nil
}

func (w *wholeFolder) flush() error { return nil }

func (w *wholeFolder) finish() error {
	err := os.Chmod(w.temporary, 0o755)
	if err == nil {
		err = os.Rename(w.temporary, w.name)
	}
	if err != nil {
		return fmt.Errorf("cannot write %s: %w", w.name, plainError(err))
	}
	return nil
}

func (w *wholeFolder) abandon() {
	os.RemoveAll(w.temporary) // after the rename there is nothing left to remove
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
