// Package trial runs the tests of rule sets, which are data: cases that try a
// requirement on facts made up for it, and tests of the figures. It changes a set
// in small ways to see whether its tests would notice.
package trial

import (
	"context"
	"fmt"
	"io/fs"
	"path"
	"sort"

	"sunclause/engine/catalogue"
	"sunclause/engine/judge"
	"sunclause/engine/ruleset"
	"sunclause/facts"
	"sunclause/schema"
)

// Case tries one requirement, or is one test of the figures.
type Case struct {
	Requirement string // empty for a test of the figures
	Says        string
	File        string
	Line        int
	Want        judge.Outcome
	Generated   bool // it restates the row, and proves nothing of it

	facts *facts.Facts
	given assignment
	doc   *schema.Document
	gives []givenFile
}

// Failure is a case that did not go as it says.
type Failure struct {
	Case Case
	Got  string
}

// Error says where the case stands, what it wants and what it got.
func (f Failure) Error() string {
	what := f.Case.Says
	if what != "" {
		what = " (" + what + ")"
	}
	if f.Case.Requirement == "" {
		return fmt.Sprintf("%s:%d: figures%s: %s", f.Case.File, f.Case.Line, what, f.Got)
	}
	return fmt.Sprintf("%s:%d: %s%s: wanted %s, got %s", f.Case.File, f.Case.Line, f.Case.Requirement, what, f.Case.Want, f.Got)
}

// Read reads the tests of a rule set from the tests folder in its own.
func Read(set *ruleset.RuleSet, fsys fs.FS, shown string) ([]Case, error) {
	names, err := fs.Glob(fsys, "tests/*.yaml")
	if err != nil {
		return nil, err
	}
	sort.Strings(names)
	var all []Case
	var problems schema.Problems
	for _, name := range names {
		raw, err := fs.ReadFile(fsys, name)
		if err != nil {
			return nil, err
		}
		var file testsFile
		src, err := schema.ReadYAML(path.Join(shown, name), raw, schema.TrialSchema, &file)
		if old := ruleset.OldTrials(src); err != nil && len(old) > 0 {
			err = old
		}
		if err != nil {
			return nil, err
		}
		r := reader{set: set, src: src}
		r.requirements(file)
		r.figures(file)
		all = append(all, r.cases...)
		problems = append(problems, r.problems...)
	}
	if len(problems) > 0 {
		return nil, problems
	}
	return all, nil
}

type reader struct {
	set      *ruleset.RuleSet
	src      *schema.Source
	cases    []Case
	problems schema.Problems
}

func (r *reader) refuse(at, what, remedy string) {
	r.problems = append(r.problems, r.src.ProblemAt(at, what, remedy))
}

// Run runs the cases and returns those that did not go as they say.
func Run(ctx context.Context, set *ruleset.RuleSet, cases []Case) ([]Failure, error) {
	var failures []Failure
	for _, c := range cases {
		got, err := c.run(ctx, set)
		if err != nil {
			return nil, err
		}
		if got != "" {
			failures = append(failures, Failure{c, got})
		}
	}
	return failures, nil
}

// run runs a case by itself; "" when it went as it says.
func (c Case) run(ctx context.Context, set *ruleset.RuleSet) (string, error) {
	if c.doc != nil {
		return c.runFigures(set), nil
	}
	got, err := c.outcome(ctx, set)
	if err != nil || got == c.Want {
		return "", err
	}
	return string(got), nil
}

// outcome is what the requirement of the case states of the part that it puts in.
func (c Case) outcome(ctx context.Context, set *ruleset.RuleSet) (judge.Outcome, error) {
	q, _ := set.Requirement(c.Requirement)
	all, err := judge.Requirement(ctx, set, c.facts, q)
	if err != nil {
		return "", err
	}
	for _, j := range all {
		if j.Subject.ID == tried || q.Subject == catalogue.Whole {
			return j.Outcome, nil
		}
	}
	return "", fmt.Errorf("%s:%d: the subject was not judged", c.File, c.Line)
}
