package main

import (
	"context"
	"fmt"
	"strings"
)

// rulesetCommand is one word of the subcommand ruleset.
type rulesetCommand struct {
	word  string
	usage string
	short string
	run   func(ctx context.Context, env *environment, args []string) (int, error)
}

// rulesetCommands lists them, in the order of the help.
func rulesetCommands() []rulesetCommand {
	return []rulesetCommand{
		{"new", "FOLDER", "begin a rule set that passes its own tests", runRulesetNew},
		{"test", "FOLDER|NAME", "run a rule set's tests and see what they do not notice", runRulesetTest},
		{"upgrade", "FOLDER", "put a rule set of an older version into the present form", runRulesetUpgrade},
		{"seal", "FOLDER", "sign a rule set into an archive that others can verify", runRulesetSeal},
	}
}

// rulesetWords are the words of the subcommand, in the order of the help.
func rulesetWords() []string {
	var words []string
	for _, c := range rulesetCommands() {
		words = append(words, c.word)
	}
	return words
}

func runRuleset(ctx context.Context, env *environment, args []string) (int, error) {
	if len(args) > 0 {
		for _, c := range rulesetCommands() {
			if c.word == args[0] {
				return c.run(ctx, env, args[1:])
			}
		}
	}
	var words []string
	for _, c := range rulesetCommands() {
		words = append(words, fmt.Sprintf("  sunclause ruleset %s %s: %s", c.word, c.usage, c.short))
	}
	help := strings.Join(words, "\n")
	if len(args) > 0 && (args[0] == "-h" || args[0] == "--help") {
		fmt.Fprintln(env.stdout, help)
		return passes, nil
	}
	return exitError, fmt.Errorf("sunclause ruleset needs one of these words:\n%s", help)
}
