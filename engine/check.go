package engine

import (
	"cmp"
	"context"
	"errors"
	"fmt"
	"slices"
	"strings"
	"time"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/rego"

	"sunclause/facts"
	"sunclause/schema"
)

// Options are the choices of one check.
type Options struct {
	Strict   bool   // a requirement with level should counts as one with shall
	Date     string // day on which departures are held against their term; the design date when empty
	Designed string // day of design, instead of the document's
}

// Result is everything that a check states of one installation.
type Result struct {
	Document  *schema.Document
	RuleSet   *RuleSet
	Facts     *facts.Facts
	Judgments []Judgment // every requirement and every part it is about
	Notes     []string   // what the reader should know beside them
	Passes    bool

	parts map[string][]judgedPart // by list, as they are met
}

// Check judges one installation by a rule set, whole or not at all: an error
// means that nothing was judged.
func Check(ctx context.Context, set *RuleSet, doc *schema.Document, o Options) (*Result, error) {
	in := &doc.Installation
	if o.Designed != "" {
		moved := in.DesignedOn(o.Designed)
		in = &moved
	}
	r, err := Judge(ctx, set, doc, facts.Derive(in, set.Book), o)
	if err == nil && o.Designed != "" {
		r.Notes = append(r.Notes, fmt.Sprintf("judged as if designed on %s; the document says %s", o.Designed, cmp.Or(doc.Installation.Project.DesignDate.Value, "nothing of it")))
	}
	return r, err
}

// Judge judges the facts of an installation, for those who have derived them.
func Judge(ctx context.Context, set *RuleSet, doc *schema.Document, f *facts.Facts, o Options) (*Result, error) {
	found, err := set.ask(ctx, f)
	if err != nil {
		return nil, err
	}
	r := &Result{Document: doc, RuleSet: set, Facts: f}
	all := make([][]Judgment, len(set.Requirements))
	for i, q := range set.Requirements {
		all[i] = r.judge(q, found)
	}
	r.Judgments = slices.Concat(all...)
	r.depart(o)
	r.sort()
	r.Passes = r.passes(o)
	return r, nil
}

// verdictKey names one requirement for one part.
type verdictKey struct{ id, subject string }

// findings are what the rules said.
type findings struct {
	comparisons map[brokenKey]bool     // that are known not to hold
	rules       map[verdictKey]finding // of Rego
}

// finding is what a Rego rule may say beside the fact that it is broken.
type finding struct {
	Message string
}

// maxMessage is the size of what a rule may say of one part, in bytes.
const maxMessage = 2000

// timeFor is how long a rule set that is not embedded may take to judge, a
// hundred times what a good one needs.
func (s *RuleSet) timeFor(f *facts.Facts) time.Duration {
	allowed := 800 * time.Millisecond
	for _, k := range subjectKinds {
		subjects, _ := subjectsOf(f, k)
		allowed += time.Duration(len(subjects)) * 5 * time.Millisecond
	}
	return allowed
}

// deadline bounds the evaluation of rules that are not ours.
func (s *RuleSet) deadline(ctx context.Context, f *facts.Facts) (context.Context, context.CancelFunc) {
	if !s.foreign {
		return ctx, func() {}
	}
	return context.WithTimeout(ctx, s.timeFor(f))
}

// ask puts the facts to the prepared query.
func (s *RuleSet) ask(ctx context.Context, f *facts.Facts) (findings, error) {
	got := findings{map[brokenKey]bool{}, map[verdictKey]finding{}}
	ctx, cancel := s.deadline(ctx, f)
	defer cancel()
	rs, err := s.query.Eval(ctx, rego.EvalParsedInput(inputOf(f)))
	if errors.Is(ctx.Err(), context.DeadlineExceeded) {
		return got, fmt.Errorf("rule set %s took longer than %.1f s to judge; rules from others are held to that; make its rules simpler", s.Name, s.timeFor(f).Seconds())
	}
	if err != nil {
		what, _, _ := strings.Cut(err.Error(), "\n") // what follows are the values, of any size
		return got, fmt.Errorf("rule set %s could not judge: %s", s.Name, strings.TrimSuffix(what, ":"))
	}
	if len(rs) != 1 {
		return got, fmt.Errorf("rule set %s could not judge: the rules gave %d answers", s.Name, len(rs))
	}
	longest := 0
	for name, v := range rs[0].Bindings {
		set, ok := v.(ast.Set)
		if !ok {
			return got, fmt.Errorf("rule set %s could not judge: %s is no set", s.Name, name)
		}
		set.Foreach(func(t *ast.Term) {
			if name == "broken" {
				got.comparisons[brokenComparison(t)] = true
				return
			}
			key, says := verdictKey{member(t, "id"), member(t, "subject")}, member(t, "message")
			got.rules[key] = finding{says}
			longest = max(longest, len(says))
		})
	}
	if longest > maxMessage {
		return got, fmt.Errorf("rule set %s could not judge: a rule says %d bytes of one part; at most %d; a message is one line", s.Name, longest, maxMessage)
	}
	return got, nil
}

// brokenComparison reads what the general module hands out: number and part.
func brokenComparison(t *ast.Term) brokenKey {
	pair, ok := t.Value.(*ast.Array)
	if !ok || pair.Len() != 2 {
		return brokenKey{}
	}
	n, _ := pair.Elem(0).Value.(ast.Number)
	number, _ := n.Int()
	subject, _ := pair.Elem(1).Value.(ast.String)
	return brokenKey{number, string(subject)}
}

// excludes tells whether a requirement is known not to apply to a part.
func (f findings) excludes(a asked, subject string) bool {
	return slices.ContainsFunc(a.when, func(w comparisonAsked) bool { return f.comparisons[w.key(subject)] })
}

// breaks tells whether a part does not keep a requirement, and what a Rego rule
// says of it.
func (f findings) breaks(q *Requirement, a asked, subject string) (finding, bool) {
	if !q.Rego {
		return finding{}, f.comparisons[a.row.key(subject)]
	}
	said, broken := f.rules[verdictKey{q.ID, subject}]
	return said, broken
}

func member(t *ast.Term, name string) string {
	o, ok := t.Value.(ast.Object)
	if !ok {
		return ""
	}
	v := o.Get(ast.StringTerm(name))
	if v == nil {
		return ""
	}
	s, _ := v.Value.(ast.String)
	return string(s)
}

// passes reports whether nothing binding is left open: a shall that is not met
// and not departed from, or not shown, fails the check.
func (r *Result) passes(o Options) bool {
	for _, j := range r.Judgments {
		if j.Counts(o.Strict) {
			return false
		}
	}
	return true
}
