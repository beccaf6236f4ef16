package main

import (
	"context"
	"errors"
	"fmt"
	"maps"
	"os"
	"path/filepath"
	"slices"

	"sunclause/engine/ruleset"
	"sunclause/policies"
)

func runRulesetNew(_ context.Context, env *environment, args []string) (int, error) {
	f := env.flags("ruleset new")
	extends := f.String("extends", defaultRules, "embedded rule set that the new one builds on")
	if err := parse(f, args); err != nil {
		return exitError, err
	}
	if f.NArg() != 1 {
		return exitError, errors.New("name the folder of the new rule set, as in sunclause ruleset new our-house")
	}
	dir := f.Arg(0)
	if _, err := os.Stat(dir); err == nil {
		return exitError, fmt.Errorf("%s is there already; a new rule set needs a folder of its own", dir)
	}
	files, err := ruleset.Scaffold(policies.FS, filepath.Base(filepath.Clean(dir)), *extends)
	if err != nil {
		return exitError, err
	}
	if err := writeFolder(dir, files); err != nil {
		return exitError, err
	}
	fmt.Fprintf(env.stdout, "%s is a rule set that builds on %s. It passes its tests:\n\n  sunclause ruleset test %s\n", dir, *extends, dir)
	return passes, nil
}

// writeFolder writes a folder whole or not at all: beside it first, then in its
// place.
func writeFolder(dir string, files map[string]string) error {
	temp, err := os.MkdirTemp(filepath.Dir(filepath.Clean(dir)), ".new-*")
	if err != nil {
		return fmt.Errorf("cannot write %s: %w", dir, plainError(err))
	}
	defer os.RemoveAll(temp) // after the rename there is nothing left to remove
	for _, name := range slices.Sorted(maps.Keys(files)) {
		path := filepath.Join(temp, filepath.FromSlash(name))
		if err := os.MkdirAll(filepath.Dir(path), 0o755); err != nil {
			return fmt.Errorf("cannot write %s: %w", dir, plainError(err))
		}
		if err := os.WriteFile(path, []byte(files[name]), 0o644); err != nil {
			return fmt.Errorf("cannot write %s: %w", dir, plainError(err))
		}
	}
	if err := os.Chmod(temp, 0o755); err != nil {
		return fmt.Errorf("cannot write %s: %w", dir, plainError(err))
	}
	if err := os.Rename(temp, dir); err != nil {
		return fmt.Errorf("cannot write %s: %w", dir, plainError(err))
	}
	return nil
}
