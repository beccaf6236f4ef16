package main

import (
	"bytes"
	"context"
	"errors"
	"fmt"

	"sunclause/engine"
	"sunclause/engine/report"
	"sunclause/facts"
	"sunclause/schema"
)

func runFacts(ctx context.Context, env *environment, args []string) (int, error) {
	f := env.flags("facts")
	rules := f.String("rules", defaultRules, "rule set whose figures and tables are used")
	key := f.String("key", "", keyHelp)
	format := f.String("format", "text", "format: json, text")
	withWorking := f.Bool("working", false, "show formula, numbers put in, source and lines of the document")
	width := f.Int("width", 0, "columns of the text; the width of the terminal when not given")
	if err := parse(f, args); err != nil {
		return couldNot, err
	}
	if f.NArg() != 1 {
		return couldNot, errors.New("name one installation, or - for the standard input")
	}
	if *format != "text" && *format != "json" {
		return couldNot, fmt.Errorf("there is no format %q; there are json, text", *format)
	}
	schema.Prepare() // beside the loading of the rule set
	sealed, err := sealedWith(*key)
	if err != nil {
		return couldNot, err
	}
	set, err := env.load(ctx, *rules, sealed...)
	if err != nil {
		return couldNot, err
	}
	doc, err := env.readDocument(f.Arg(0))
	if err != nil {
		return couldNot, err
	}
	defer env.watch(*rules, engine.CheckLimits(len(doc.Source.Raw)))()
	derived := facts.Derive(&doc.Installation, set.Book)
	var text bytes.Buffer
	if *format == "json" {
		err = report.FactsJSON(&text, doc, set, derived, *withWorking)
	} else {
		err = report.FactsText(&text, doc, derived, *withWorking, env.reportOptions(checkOptions{width: *width}))
	}
	if err != nil {
		return couldNot, err
	}
	return passes, env.deliver(text.Bytes(), "")
}
