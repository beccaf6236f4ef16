package main

import (
	"bytes"
	"context"
	"errors"
	"os"
	"slices"

	"sunclause/engine/judge"
	"sunclause/engine/record"
	"sunclause/engine/report"
	"sunclause/engine/ruleset"
)

// compareOptions are the options of compare.
type compareOptions struct {
	checkOptions
	documents bool
}

func runCompare(ctx context.Context, env *environment, args []string) (int, error) {
	var o compareOptions
	f := env.flags("compare")
	f.BoolVar(&o.documents, "documents", false, "compare two installations instead of two rule sets")
	f.StringVar(&o.rules, "rules", defaultRules, "with --documents, "+rulesHelp())
	f.StringVar(&o.key, "key", "", "public key, in PEM, that whichever of the rule sets is an archive was sealed with")
	f.StringVar(&o.format, "format", "text", "format: json, text")
	f.BoolVar(&o.all, "all", false, "list also values that moved where the outcome stayed, and what only one side judges and finds in order")
	f.BoolVar(&o.strict, "strict", false, strictHelp)
	f.StringVar(&o.date, "date", "", dateHelp)
	f.IntVar(&o.width, "width", 0, "columns of the text; the width of the terminal when not given")
	if err := parse(f, args); err != nil {
		return exitError, err
	}
	if err := o.checkDays(); err != nil {
		return exitError, err
	}
	if err := textOrJSON(o.format); err != nil {
		return exitError, err
	}
	var text bytes.Buffer
	var differs bool
	var err error
	switch {
	case o.documents && f.NArg() == 2:
		differs, err = env.compareDocuments(ctx, &text, f.Arg(0), f.Arg(1), o)
	case !o.documents && f.NArg() >= 3:
		differs, err = env.compareRules(ctx, &text, f.Args(), o)
	case o.documents:
		err = errors.New("name two installations, the earlier one first, as in sunclause compare --documents design.json built.json")
	default:
		err = errors.New("name two rule sets and the installations to judge by both, as in sunclause compare gb our-house jobs")
	}
	if err != nil {
		return exitError, err
	}
	if differs {
		return doesNotPass, env.deliver(text.Bytes(), "")
	}
	return passes, env.deliver(text.Bytes(), "")
}

// loadEither reads a rule set that may be a sealed one.
func (env *environment) loadEither(ctx context.Context, rules, key string) (*ruleset.RuleSet, error) {
	info, err := os.Stat(rules)
	if err != nil || !info.Mode().IsRegular() {
		return env.load(ctx, rules)
	}
	return env.loadNamed(ctx, rulesOptions{rules, key})
}

func (env *environment) compareDocuments(ctx context.Context, text *bytes.Buffer, a, b string, o compareOptions) (differs bool, err error) {
	set, err := env.loadEither(ctx, o.rules, o.key)
	if err != nil {
		return false, err
	}
	before, err := env.judgeNamed(ctx, set, a, o.checkOptions)
	if err != nil {
		return false, err
	}
	after, err := env.judgeNamed(ctx, set, b, o.checkOptions)
	if err != nil {
		return false, err
	}
	members := record.CompareMembers(before.Document, after.Document)
	c := report.Compare(recordOf(before, o.checkOptions), recordOf(after, o.checkOptions), o.all)
	c.Names = [2]string{before.Document.Name, after.Document.Name}
	if o.format == "json" {
		err = report.DocumentsJSON(text, c, members)
	} else {
		err = report.DocumentsText(text, c, members, env.reportOptions(o.checkOptions))
	}
	return len(members) > 0 || c.Otherwise(), err
}

func (env *environment) judgeNamed(ctx context.Context, set *ruleset.RuleSet, name string, o checkOptions) (*judge.Result, error) {
	doc, err := env.readDocument(name)
	if err != nil {
		return nil, err
	}
	return env.checkBy(ctx, set, doc, o)
}

func recordOf(r *judge.Result, o checkOptions) *record.Record {
	return record.Of(r, o.engine(), toolVersion(), report.Cautions)
}

func (env *environment) compareRules(ctx context.Context, text *bytes.Buffer, args []string, o compareOptions) (differs bool, err error) {
	names, err := documentsNamed(args[2:])
	if err != nil {
		return false, err
	}
	var all report.RulesCompared
	if all.Before, err = env.loadEither(ctx, args[0], o.key); err != nil {
		return false, err
	}
	if all.After, err = env.loadEither(ctx, args[1], o.key); err != nil {
		return false, err
	}
	sides := [2]*ruleset.RuleSet{all.Before, all.After}
	type compared struct {
		report.Compared
		wrong error
	}
	var wrong []error
	collectBy(ofBatch)
	tick := env.progress(len(names))
	err = inOrder(ctx, slices.Values(names), func(name string) compared {
		c, err := env.compareOne(ctx, sides, name, args, o)
		return compared{c, err}
	}, func(c compared) error {
		defer tick()
		wrong = append(wrong, c.wrong)
		all.Documents = append(all.Documents, c.Compared)
		return nil
	})
	if err := errors.Join(append(wrong, err)...); err != nil {
		return false, err
	}
	if o.format == "json" {
		err = report.RulesComparedJSON(text, all)
	} else {
		err = report.RulesComparedText(text, all, env.reportOptions(o.checkOptions))
	}
	return all.Otherwise() > 0, err
}

// compareOne judges one document by both sets.
func (env *environment) compareOne(ctx context.Context, sides [2]*ruleset.RuleSet, name string, args []string, o compareOptions) (report.Compared, error) {
	doc, err := env.readDocument(name)
	if err != nil {
		return report.Compared{}, err
	}
	var records [2]*record.Record
	for i, set := range sides {
		by := o.checkOptions
		by.rules = args[i]
		r, err := env.checkBy(ctx, set, doc, by)
		if err != nil {
			return report.Compared{}, err
		}
		records[i] = recordOf(r, by)
	}
	c := report.Compare(records[0], records[1], o.all)
	c.Names = [2]string{doc.Name, doc.Name}
	c.Before.Parts, c.After.Parts = nil, nil // of many documents only what differs is kept
	return c, nil
}
