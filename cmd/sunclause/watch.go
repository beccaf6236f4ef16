package main

import (
	"fmt"
	"os"
	"slices"

	"sunclause/engine"
	"sunclause/policies"
)

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
