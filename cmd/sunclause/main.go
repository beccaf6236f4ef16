// Command sunclause checks a rooftop PV installation, described by one JSON
// document, against a rule set.
//
// Exit status: 0 the installation passes, 1 it does not, 2 it could not be
// checked.
package main

import (
	"context"
	"errors"
	"fmt"
	"io"
	"os"
	"strings"

	"github.com/spf13/pflag"

	"sunclause/engine/report"
	"sunclause/schema"
)

// Exit statuses.
const (
	passes      = 0
	doesNotPass = 1
	exitError   = 2
)

// command is one subcommand.
type command struct {
	name  string
	usage string // arguments after the name
	short string // what it does, in one line
	run   func(ctx context.Context, env *environment, args []string) (int, error)
}

// commands lists the subcommands, in the order of the help.
func commands() []command {
	return []command{
		{"check", "FILE|FOLDER|- …", "judge installations by a rule set", runCheck},
		{"facts", "FILE|- [PART …]", "show what is derived from an installation", runFacts},
		{"rules", "[ID …]", "list the requirements of a rule set", runRules},
		{"sheets", "FILE|- --out DIR", "write the papers for the job", runSheets},
		{"record", "FILE|-", "keep the evidence of a check", runRecord},
		{"reproduce", "RECORD FILE|-", "judge again and hold the outcome against a record", runReproduce},
		{"compare", "RULES RULES FILE …", "see what differs between two rule sets, or with --documents two installations", runCompare},
		{"ruleset", strings.Join(rulesetWords(), "|") + " …", "write, test, upgrade and seal a rule set", runRuleset},
	}
}

// environment is what a subcommand may touch of the world.
type environment struct {
	stdin          io.Reader
	stdout, stderr io.Writer
}

func main() { os.Exit(run()) }

func run() int {
	collectBy(ofOne)
	env := &environment{os.Stdin, os.Stdout, os.Stderr}
	return dispatch(context.Background(), env, os.Args[1:])
}

func dispatch(ctx context.Context, env *environment, args []string) int {
	if len(args) == 0 || args[0] == "help" || args[0] == "-h" || args[0] == "--help" {
		fmt.Fprint(env.stdout, usage())
		if len(args) == 0 {
			return exitError
		}
		return passes
	}
	for _, c := range commands() {
		if c.name != args[0] {
			continue
		}
		status, err := c.run(ctx, env, args[1:])
		if errors.Is(err, pflag.ErrHelp) {
			return passes
		}
		if err != nil {
			env.tell(err)
			return exitError
		}
		return status
	}
	fmt.Fprintf(env.stderr, "sunclause has no command %q; %s\n", args[0], orNearest(args[0], commandNames()))
	return exitError
}

// orNearest says which name may have been meant, or else which names there are.
func orNearest(name string, known []string) string {
	if near := schema.Nearest(name, known); near != "" {
		return fmt.Sprintf("did you mean %q?", near)
	}
	return "there are " + strings.Join(known, ", ")
}

// tell writes an error. It may name files, whose names are anybody's.
func (env *environment) tell(err error) {
	for line := range strings.SplitSeq(err.Error(), "\n") {
		fmt.Fprintln(env.stderr, report.Visible(line))
	}
}

func commandNames() []string {
	names := make([]string, len(commands()))
	for i, c := range commands() {
		names[i] = c.name
	}
	return names
}

func usage() string {
	var b strings.Builder
	b.WriteString("sunclause checks a rooftop PV installation against the rules.\n\n")
	for _, c := range commands() {
		fmt.Fprintf(&b, "  sunclause %-9s %-18s %s\n", c.name, c.usage, c.short)
	}
	b.WriteString("\nsunclause COMMAND --help tells the options of a command.\n")
	b.WriteString("Exit status: 0 passes or is the same, 1 does not pass or differs, 2 could not be checked.\n\n")
	for _, c := range report.Cautions {
		b.WriteString(c + "\n")
	}
	return b.String()
}

// flags makes the options of a subcommand, with its help.
func (env *environment) flags(name string) *pflag.FlagSet {
	f := pflag.NewFlagSet(name, pflag.ContinueOnError)
	f.SortFlags = false
	f.SetOutput(env.stderr)
	f.Usage = func() {
		usage, short := helpOf(name)
		fmt.Fprintf(env.stdout, "sunclause %s [options] %s\n%s\n\nOptions:\n%s", name, usage, short, f.FlagUsagesWrapped(80))
	}
	return f
}

// helpOf is what a subcommand takes and does.
func helpOf(name string) (usage, short string) {
	for _, c := range commands() {
		if c.name == name {
			return c.usage, c.short
		}
	}
	for _, c := range rulesetCommands() {
		if "ruleset "+c.word == name {
			return c.usage, c.short
		}
	}
	return "", ""
}

// parse reads the options; a wrong one is told in one line.
func parse(f *pflag.FlagSet, args []string) error {
	err := f.Parse(args)
	if err == nil || errors.Is(err, pflag.ErrHelp) {
		return err
	}
	return fmt.Errorf("sunclause %s: %w; sunclause %s --help lists the options", f.Name(), err, f.Name())
}
