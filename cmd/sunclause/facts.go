package main

import (
	"context"
	"errors"
	"fmt"
	"maps"
	"slices"

	"sunclause/engine/catalogue"
	"sunclause/engine/report"
	"sunclause/facts"
	"sunclause/schema"
)

func runFacts(ctx context.Context, env *environment, args []string) (int, error) {
	var o rulesOptions
	f := env.flags("facts")
	o.declare(f, defaultRules, "rule set whose figures and tables are used")
	format := f.String("format", "text", "format: json, text")
	var selection report.FactSelection
	f.BoolVar(&selection.Working, "working", false, "show formula, numbers put in, source and lines of the document, of the parts that are named; without one, how many facts there are")
	all := f.Bool("all", false, "with --working, show that of every part")
	width := f.Int("width", 0, "columns of the text; the width of the terminal when not given")
	if err := parse(f, args); err != nil {
		return exitError, err
	}
	if f.NArg() == 0 {
		return exitError, errors.New("name one installation, or - for the standard input; ids of parts after it limit what is shown")
	}
	if err := textOrJSON(*format); err != nil {
		return exitError, err
	}
	set, doc, err := env.loadWithDocument(ctx, o, f.Arg(0))
	if err != nil {
		return exitError, err
	}
	derived := facts.Derive(&doc.Installation, set.Book)
	if selection.Parts, err = partsNamed(derived, f.Args()[1:]); err != nil {
		return exitError, err
	}
	selection.Summary = selection.Working && selection.Parts == nil && !*all
	to := env.screen()
	if *format == "json" {
		err = report.FactsJSON(to, doc, set, derived, selection)
	} else {
		err = report.FactsText(to, doc, derived, selection, env.reportOptions(checkOptions{width: *width}))
	}
	if err != nil {
		return exitError, err
	}
	return passes, to.finish()
}

// partsNamed makes sure that the installation has the parts named; none named
// is all.
func partsNamed(f *facts.Facts, ids []string) ([]string, error) {
	known := map[string]bool{}
	for _, subject := range catalogue.Subjects() {
		parts, _ := subject.Parts(f)
		for _, p := range parts {
			known[p.ID] = true
		}
	}
	for _, id := range ids {
		if !known[id] {
			return nil, fmt.Errorf("the installation has no facts about a part called %q; %s", id, nearPart(id, known))
		}
	}
	if len(ids) == 0 {
		return nil, nil
	}
	return ids, nil
}

// textOrJSON holds the format of a listing to the two that there are.
func textOrJSON(format string) error {
	if format != "text" && format != "json" {
		return fmt.Errorf("there is no format %q; there are json, text", format)
	}
	return nil
}

// nearPart says which part may have been meant, or how to see which there are.
func nearPart(id string, known map[string]bool) string {
	if near := schema.Nearest(id, slices.Sorted(maps.Keys(known))); near != "" {
		return fmt.Sprintf("did you mean %q?", near)
	}
	return "without a name it shows all parts"
}
