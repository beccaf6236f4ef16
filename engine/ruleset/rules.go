package ruleset

import (
	"context"
	"fmt"
	"maps"
	"slices"

	"sunclause/engine/rego"
	"sunclause/schema"
)

// addRules takes the Rego rules of all layers, from the lowest up, and makes
// requirements of their cards, where the shipped form has not got them already.
func (s *RuleSet) addRules(base *Shipped, layers []*layer) error {
	modules, err := base.modules(s.embedded)
	if err != nil {
		return err
	}
	of := map[string]*layer{}
	for _, l := range slices.Backward(layers) {
		for _, m := range l.modules {
			modules = append(modules, rego.Module{Name: m.name, Room: m.room, Package: l.namespace() + "." + m.room, Text: m.text, Untrusted: !l.embedded})
			of[m.name] = l
		}
	}
	if len(modules) == 0 {
		return nil
	}
	rules, err := rego.Parse(modules)
	if err != nil {
		return err
	}
	for _, c := range rules.Cards() {
		if l, ok := of[c.Module.Name]; ok {
			if err := s.addCard(l, c); err != nil {
				return err
			}
		}
	}
	err = rules.Compile(rego.Names{
		Subject:    func(id string) string { return s.byID[id].Subject },
		Parameters: s.parameterNames(), Tables: slices.Sorted(maps.Keys(s.Book.Tables)),
	})
	s.rules = rules
	return err
}

// addCard makes a requirement of the card of one rule.
func (s *RuleSet) addCard(l *layer, c rego.Card) error {
	var file cardFile
	src := schema.Placed(c.Module.Name, c.Module.Text, c.Line)
	if err := schema.ReadCard(c.Module.Name, c.Line, c.Custom, &file); err != nil {
		subject, _ := c.Custom["subject"].(string)
		if old := (oldCard{subject: subject, isRule: true, members: c.Custom}).problem(src, ""); old != nil {
			return schema.Problems{*old}
		}
		return err
	}
	file.Title = schema.NewText("/title", c.Title)
	if problems := s.addRequirement(l, c.Module.Room, src, file, writtenIn{rule: true}); len(problems) > 0 {
		return problems
	}
	return nil
}

// prepareRules gives the Rego rules the data of the set as it is now.
func (s *RuleSet) prepareRules(ctx context.Context) error {
	if s.rules == nil {
		return nil
	}
	ready, err := s.rules.With(ctx, s.data())
	if err != nil {
		return fmt.Errorf("rule set %s: %w", s.Name, err)
	}
	s.rules = ready
	return nil
}

// reads is what the Rego rule of a requirement looks at; nothing for a row.
func (s *RuleSet) reads(r *Requirement) rego.Reads {
	if !r.Rego || s.rules == nil {
		return rego.Reads{}
	}
	return s.rules.Reads(r.ID)
}
