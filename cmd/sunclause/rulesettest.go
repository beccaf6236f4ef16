package main

import (
	"context"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"slices"

	"sunclause/engine/ruleset"
	"sunclause/engine/trial"
	"sunclause/policies"
)

func runRulesetTest(ctx context.Context, env *environment, args []string) (int, error) {
	f := env.flags("ruleset test")
	least := f.Float64("min-score", 0, "least part of the mutations, in %, that the tests have to notice")
	all := f.Bool("all", false, "list also the mutations that were noticed")
	if err := parse(f, args); err != nil {
		return exitError, err
	}
	if f.NArg() != 1 {
		return exitError, errors.New("name the folder of the rule set, or an embedded one")
	}
	ref := f.Arg(0)
	set, err := env.load(ctx, ref)
	if err != nil {
		return exitError, err
	}
	fsys, err := folderOf(ref)
	if err != nil {
		return exitError, err
	}
	trials, err := trial.Read(set, fsys, ref)
	if err != nil {
		return exitError, err
	}
	trials = append(trials, trial.Generated(set, trials)...)
	failures, err := trial.Run(ctx, set, trials)
	if err != nil {
		return exitError, err
	}
	mutations, err := trial.Mutate(ctx, set, trials, nil)
	if err != nil {
		return exitError, err
	}
	return sayTrials(env.stdout, set, trials, failures, mutations, *least, *all), nil
}

// folderOf is the folder of a rule set, on the disk or embedded.
func folderOf(ref string) (fs.FS, error) {
	if info, err := os.Stat(ref); err == nil && info.IsDir() {
		return os.DirFS(ref), nil
	}
	return fs.Sub(policies.FS, ref)
}

func sayTrials(w io.Writer, set *ruleset.RuleSet, trials []trial.Case, failures []trial.Failure, mutations []trial.Mutation, least float64, all bool) int {
	status := passes
	for _, f := range failures {
		fmt.Fprintln(w, f.Error())
		status = doesNotPass
	}
	uncovered := trial.Uncovered(set, trials)
	for _, u := range uncovered {
		fmt.Fprintln(w, u)
		status = doesNotPass
	}
	alone := trial.GeneratedAlone(set, trials)
	for _, id := range alone {
		fmt.Fprintf(w, "%s is tried by generated cases alone, which restate it\n", id)
	}
	for _, m := range mutations {
		if !m.Noticed && !slices.Contains(alone, m.Requirement) {
			fmt.Fprintf(w, "%sno test noticed: %s of %s\n", placeOf(m), m.What, m.Requirement)
		} else if all {
			fmt.Fprintf(w, "%s: noticed: %s\n", m.Requirement, m.What)
		}
	}
	score := trial.Score(mutations)
	if score < least {
		status = doesNotPass
	}
	own := len(set.Own())
	written := slices.IndexFunc(trials, func(c trial.Case) bool { return c.Generated }) // they stand last
	if written < 0 {
		written = len(trials)
	}
	fmt.Fprintf(w, "%s %s: %d tests and %d generated, %d failed; %d of %d requirements covered, %d by generated tests alone; %.1f %% of %d mutations noticed\n",
		set.Name, set.Version, written, len(trials)-written, len(failures), own-len(uncovered), own, len(alone), score, len(mutations))
	return status
}

// placeOf is where a mutation was made, for the start of a line; a parameter is
// found by its name.
func placeOf(m trial.Mutation) string {
	if m.File == "" {
		return ""
	}
	return fmt.Sprintf("%s:%d: ", m.File, m.Line)
}
