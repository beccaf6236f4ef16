package main

import (
	"context"
	"errors"
	"fmt"
	"path/filepath"
	"strings"

	"sunclause/engine/judge"
	"sunclause/engine/ruleset"
	"sunclause/policies"
)

func runRulesetUpgrade(ctx context.Context, env *environment, args []string) (int, error) {
	f := env.flags("ruleset upgrade")
	if err := parse(f, args); err != nil {
		return exitError, err
	}
	if f.NArg() != 1 {
		return exitError, errors.New("name the folder of the rule set, as in sunclause ruleset upgrade our-house")
	}
	dir := f.Arg(0)
	changed, err := ruleset.Upgrade(ctx, policies.FS, asFolder(dir))
	if err != nil {
		return exitError, fmt.Errorf("%w\nnothing was written", err)
	}
	if len(changed) == 0 {
		fmt.Fprintf(env.stdout, "%s is in the present form already; nothing was written\n", dir)
		return passes, nil
	}
	files := map[string][]byte{}
	for _, c := range changed {
		files[filepath.Join(dir, filepath.FromSlash(c.Name))] = c.Text
	}
	if err := writeAll(files); err != nil {
		return exitError, err
	}
	for _, c := range changed {
		fmt.Fprintf(env.stdout, "%s: %s\n", filepath.Join(dir, filepath.FromSlash(c.Name)), done(c))
	}
	return passes, nil
}

// done says what was done to a file.
func done(c ruleset.Upgraded) string {
	var rewritten []string
	if c.Cards > 0 {
		rewritten = append(rewritten, judge.Many(c.Cards, "requirement"))
	}
	if c.Figures > 0 {
		rewritten = append(rewritten, judge.Many(c.Figures, "parameter"))
	}
	switch {
	case len(rewritten) > 0:
		return strings.Join(rewritten, " and ") + " rewritten"
	case c.Rows > 0:
		return "the requirement named in " + judge.Many(c.Rows, "row")
	case c.Trials > 0:
		return "tests of " + judge.Many(c.Trials, "requirement") + " rewritten"
	}
	return "brought up to date"
}
