package main

import (
	"context"
	"fmt"
	"os"

	"github.com/spf13/pflag"

	"sunclause/engine/ruleset"
	"sunclause/policies"
	"sunclause/schema"
)

// defaultRules is the rule set used when none is named.
const defaultRules = "gb"

const keyHelp = "public key, in PEM, that the sealed rule set was sealed with"

// rulesOptions name a rule set, and the key that it was sealed with.
type rulesOptions struct{ rules, key string }

// declare adds them to the options of a subcommand; help says what the rule set
// is for.
func (o *rulesOptions) declare(f *pflag.FlagSet, rules, help string) {
	f.StringVar(&o.rules, "rules", rules, help)
	f.StringVar(&o.key, "key", "", keyHelp)
}

// load reads a rule set.
func (env *environment) load(ctx context.Context, rules string, options ...ruleset.LoadOption) (*ruleset.RuleSet, error) {
	return ruleset.Load(ctx, policies.FS, rules, options...)
}

// loadNamed reads the rule set that the options name.
func (env *environment) loadNamed(ctx context.Context, o rulesOptions) (*ruleset.RuleSet, error) {
	sealed, err := sealedWith(o.key)
	if err != nil {
		return nil, err
	}
	return env.load(ctx, o.rules, sealed...)
}

// loadWithDocument reads the rule set that the options name and one installation.
func (env *environment) loadWithDocument(ctx context.Context, o rulesOptions, name string) (*ruleset.RuleSet, *schema.Document, error) {
	set, err := env.loadNamed(ctx, o)
	if err != nil {
		return nil, nil, err
	}
	doc, err := env.readDocument(name)
	if err != nil {
		return nil, nil, err
	}
	return set, doc, nil
}

// sealedWith is the option to verify a rule set with a public key; none when
// no key is named.
func sealedWith(key string) ([]ruleset.LoadOption, error) {
	if key == "" {
		return nil, nil
	}
	text, err := readKey(key)
	if err != nil {
		return nil, err
	}
	return []ruleset.LoadOption{ruleset.WithKey(text)}, nil
}

func readKey(name string) ([]byte, error) {
	text, err := os.ReadFile(name)
	if err != nil {
		return nil, fmt.Errorf("key %s: %w", name, plainError(err))
	}
	return text, nil
}
