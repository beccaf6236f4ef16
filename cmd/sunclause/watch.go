package main

import (
	"context"
	"fmt"
	"os"
	"slices"

	"sunclause/engine"
	"sunclause/policies"
)

// load reads a rule set, within limits unless it is embedded.
func (env *environment) load(ctx context.Context, rules string, options ...engine.LoadOption) (*engine.RuleSet, error) {
	defer env.watch(rules, engine.LoadLimits())()
	return engine.Load(ctx, policies.FS, rules, options...)
}

// watch ends the program when a rule set that is not embedded runs over its
// limits before done is called. Nothing has been reported by then.
func (env *environment) watch(rules string, l engine.Limits) (done func()) {
	if slices.Contains(engine.Embedded(policies.FS), rules) {
		return func() {}
	}
	return engine.Watch(l, func(reason string) {
		env.tell(fmt.Errorf("rule set %s: %s", rules, reason))
		os.Exit(couldNot)
	})
}
