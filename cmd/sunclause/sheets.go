package main

import (
	"context"
	"errors"
	"fmt"
	"io"

	"sunclause/engine/judge"
	"sunclause/engine/report/sheets"
)

func runSheets(ctx context.Context, env *environment, args []string) (int, error) {
	var o rulesOptions
	f := env.flags("sheets")
	o.declare(f, defaultRules, "rule set by whose figures the sheets are filled")
	out := f.String("out", "", "folder to write; it must not be there yet")
	if err := parse(f, args); err != nil {
		return exitError, err
	}
	if f.NArg() != 1 || *out == "" {
		return exitError, errors.New("name one installation and the folder to write, as in sunclause sheets installation.json --out papers")
	}
	folder, err := newWholeFolder(*out)
	if err != nil {
		return exitError, err
	}
	defer folder.abandon()
	set, doc, err := env.loadWithDocument(ctx, o, f.Arg(0))
	if err != nil {
		return exitError, err
	}
	r, err := judge.Check(ctx, set, doc, judge.Options{})
	if err != nil {
		return exitError, fmt.Errorf("%s: %w", f.Arg(0), err)
	}
	if err := writeSheets(folder, r); err != nil {
		return exitError, err
	}
	fmt.Fprintf(env.stdout, "%s holds the sheets; they are a help, and no more sure than the document they come from.\n", *out)
	return passes, nil
}

// writeSheets writes the whole folder.
func writeSheets(folder *wholeFolder, r *judge.Result) error {
	for name, write := range papersOf(r) {
		f, err := folder.create(name)
		if err != nil {
			return err
		}
		err = write(f)
		if closing := f.Close(); err == nil {
			err = closing
		}
		if err != nil {
			return fmt.Errorf("cannot write %s: %w", folder.name, plainError(err))
		}
	}
	return folder.finish()
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
