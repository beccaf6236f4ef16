package main

import (
	"bytes"
	"context"
	"fmt"
	"slices"

	"sunclause/engine/report"
	"sunclause/engine/ruleset"
	"sunclause/schema"
)

func runRules(ctx context.Context, env *environment, args []string) (int, error) {
	var o rulesOptions
	f := env.flags("rules")
	o.declare(f, defaultRules, "rule set: the name of an embedded one, a folder or a sealed archive")
	format := f.String("format", "text", "format: json, text")
	room := f.String("room", "", "list only the requirements of one room, as pvstring")
	width := f.Int("width", 0, "columns of the text; the width of the terminal when not given")
	if err := parse(f, args); err != nil {
		return exitError, err
	}
	if err := textOrJSON(*format); err != nil {
		return exitError, err
	}
	set, err := env.loadNamed(ctx, o)
	if err != nil {
		return exitError, err
	}
	wanted, err := requirementsNamed(set, f.Args())
	if err != nil {
		return exitError, err
	}
	if wanted = ofRoom(wanted, *room); len(wanted) == 0 {
		return exitError, fmt.Errorf("rule set %s has no requirements in a room called %q; %s", set.Name, *room, orNearest(*room, roomsOf(set)))
	}
	var text bytes.Buffer
	if *format == "json" {
		err = report.RulesJSON(&text, set, wanted)
	} else {
		err = report.RulesText(&text, set, wanted, env.reportOptions(checkOptions{width: *width}))
	}
	if err != nil {
		return exitError, err
	}
	return passes, env.deliver(text.Bytes(), "")
}

// requirementsNamed picks requirements by id, or all of them.
func requirementsNamed(set *ruleset.RuleSet, ids []string) ([]*ruleset.Requirement, error) {
	if len(ids) == 0 {
		return set.Requirements, nil
	}
	var wanted []*ruleset.Requirement
	for _, id := range ids {
		q, ok := set.Requirement(id)
		if !ok {
			return nil, noRequirement(set, id)
		}
		wanted = append(wanted, q)
	}
	return wanted, nil
}

// ofRoom keeps the requirements of one room; all when none is named.
func ofRoom(all []*ruleset.Requirement, room string) []*ruleset.Requirement {
	var kept []*ruleset.Requirement
	for _, q := range all {
		if room == "" || q.Room == room {
			kept = append(kept, q)
		}
	}
	return kept
}

// noRequirement refuses an id, with the one that may have been meant.
func noRequirement(set *ruleset.RuleSet, id string) error {
	var ids []string
	for _, q := range set.Requirements {
		ids = append(ids, q.ID)
	}
	if near := schema.Nearest(id, ids); near != "" {
		return fmt.Errorf("rule set %s has no requirement %q; did you mean %q?", set.Name, id, near)
	}
	return fmt.Errorf("rule set %s has no requirement %q; sunclause rules --rules %s lists them", set.Name, id, set.Name)
}

// roomsOf lists the rooms that a rule set has requirements in.
func roomsOf(set *ruleset.RuleSet) []string {
	var rooms []string
	for _, q := range set.Requirements {
		rooms = append(rooms, q.Room)
	}
	slices.Sort(rooms)
	return slices.Compact(rooms)
}
