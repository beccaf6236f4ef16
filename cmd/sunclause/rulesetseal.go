package main

import (
	"bytes"
	"context"
	"errors"
	"fmt"
	"os"
	"path/filepath"

	"sunclause/engine/ruleset"
)

func runRulesetSeal(ctx context.Context, env *environment, args []string) (int, error) {
	f := env.flags("ruleset seal")
	key := f.String("key", "", "private key to sign with: EC, curve P-256, in PEM")
	output := f.String("output", "", "archive to write, as our-house.tar.gz")
	if err := parse(f, args); err != nil {
		return exitError, err
	}
	if f.NArg() != 1 || *key == "" || *output == "" {
		return exitError, errors.New("name a folder, a key and an archive, as in sunclause ruleset seal our-house --key private.pem --output our-house.tar.gz")
	}
	dir := f.Arg(0)
	if info, err := os.Stat(dir); err != nil || !info.IsDir() {
		return exitError, fmt.Errorf("rule set %s: there is no such folder; only a folder can be sealed", dir)
	}
	private, err := readKey(*key)
	if err != nil {
		return exitError, err
	}
	// A set that cannot be used is not sealed.
	set, err := env.load(ctx, asFolder(dir))
	if err != nil {
		return exitError, err
	}
	var archive bytes.Buffer
	if err := ruleset.Seal(&archive, os.DirFS(dir), filepath.ToSlash(dir), private); err != nil {
		return exitError, err
	}
	if err := writeWhole(*output, archive.Bytes()); err != nil {
		return exitError, err
	}
	fmt.Fprintf(env.stdout, "%s %s is sealed in %s.\nSHA-256 of the rules, as a report in JSON gives it: %s\n", set.Name, set.Version, *output, set.SHA256)
	return passes, nil
}

// asFolder writes the path of a folder so that no embedded set of the same name
// is taken for it.
func asFolder(dir string) string {
	if filepath.IsAbs(dir) {
		return dir
	}
	return "./" + dir
}
