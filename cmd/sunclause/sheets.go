package main

import (
	"bytes"
	"context"
	"errors"
	"fmt"
	"io"
	"os"
	"path/filepath"

	"sunclause/engine/judge"
	"sunclause/engine/report/sheets"
)

func runSheets(ctx context.Context, env *environment, args []string) (int, error) {
	var o rulesOptions
	f := env.flags("sheets")
	o.declare(f, defaultRules, "rule set by whose figures the sheets are filled")
	out := f.String("out", "", "folder to write; it must not be there yet")
	if err := parse(f, args); err != nil {
		return couldNot, err
	}
	if f.NArg() != 1 || *out == "" {
		return couldNot, errors.New("name one installation and the folder to write, as in sunclause sheets installation.json --out papers")
	}
	if _, err := os.Lstat(*out); err == nil {
		return couldNot, fmt.Errorf("%s is already there; name a new folder, or move that one away", *out)
	}
	set, doc, err := env.loadWithDocument(ctx, o, f.Arg(0))
	if err != nil {
		return couldNot, err
	}
	r, err := judge.Check(ctx, set, doc, judge.Options{})
	if err != nil {
		return couldNot, fmt.Errorf("%s: %w", f.Arg(0), err)
	}
	if err := writeSheets(*out, r); err != nil {
		return couldNot, err
	}
	fmt.Fprintf(env.stdout, "%s holds the sheets; they are a help, and no more sure than the document they come from.\n", *out)
	return passes, nil
}

// writeSheets writes the whole folder or nothing: into a folder beside it, which
// then takes its name.
func writeSheets(out string, r *judge.Result) error {
	parent := filepath.Dir(out)
	temporary, err := os.MkdirTemp(parent, "."+filepath.Base(out)+".*")
	if err != nil {
		return fmt.Errorf("cannot write %s: %w", out, plainError(err))
	}
	defer os.RemoveAll(temporary) // after the rename there is nothing left to remove
	for name, write := range papersOf(r) {
		var text bytes.Buffer
		if err := write(&text); err != nil {
			return err
		}
		if err := os.WriteFile(filepath.Join(temporary, name), text.Bytes(), 0o644); err != nil {
			return fmt.Errorf("cannot write %s: %w", out, plainError(err))
		}
	}
	if err := os.Chmod(temporary, 0o755); err != nil {
		return fmt.Errorf("cannot write %s: %w", out, plainError(err))
	}
	if err := os.Rename(temporary, out); err != nil {
		return fmt.Errorf("cannot write %s: %w", out, plainError(err))
	}
	return nil
}

// papersOf are the files of the folder, each with what writes it.
func papersOf(r *judge.Result) map[string]func(io.Writer) error {
	all := sheets.Of(r)
	papers := map[string]func(io.Writer) error{
		"papers.html":       func(w io.Writer) error { return sheets.Page(w, r, all) },
		"labels-print.html": func(w io.Writer) error { return sheets.Stickers(w, r) },
	}
	for _, s := range all {
		papers[s.Name+".md"], papers[s.Name+".csv"] = s.Markdown, s.CSV
	}
	return papers
}
