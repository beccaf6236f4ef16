package rego

import (
	"slices"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"

	"sunclause/engine/catalogue"
)

// What a rule reads is worked out from the rule itself, as it stands after
// compilation. There every body is in single steps and every name is unique:
//
//	__local2__ = input.strings[__local1__]   // some s in input.strings
//	__local3__ = __local2__.voc_max_v        // s.voc_max_v …
//	gt(__local3__, 600)                      // … > 600
//
// So it takes two passes. The first notes which names stand for a whole part of
// the input: a list, one element of it, the installation (bindings.go). The
// second walks everything the rule says and notes each fact at the end of a
// reference. A whole part may be given a name, iterated over, counted and asked
// for a member; wherever else it turns up, the facts that are looked at can no
// longer be seen, and the rule is refused (refusal.go). Whatever is not a whole
// part has been noted as read by the time it has a name, so nothing more needs
// to be known of it. Helper rules and functions are walked likewise: no whole
// part gets into or out of them.

// Read is one fact that a rule looks at.
type Read struct {
	Path []string // strings, *, voc_max_v; a list itself is one step: strings
	Own  bool     // read from the very part that the finding names; else any part matters
}

// Fact is the name of the fact at the end of the read; "" for a list itself.
func (r Read) Fact() string {
	switch {
	case r.Path[0] == catalogue.Whole && len(r.Path) == 2:
		return r.Path[1]
	case len(r.Path) < 3:
		return ""
	}
	return r.Path[2]
}

// Reads is everything that a rule looks at, sorted, and the id of its finding.
type Reads struct {
	ID         string
	Facts      []Read
	Parameters []string // names below data.parameters
	Tables     []string // names below data.tables
}

// readsOf works out what a rule of the form "findings contains f" reads. The
// rule is one of a compiler that was given the types of the input; list is the
// subject of its card.
func readsOf(c *ast.Compiler, rule *ast.Rule, list string) (Reads, error) {
	r := &reader{
		compiler: c, list: list,
		followed: map[*ast.Rule]bool{rule: true},
		facts:    map[string]Read{}, parameters: map[string]bool{}, tables: map[string]bool{},
	}
	id := r.finding(rule)
	if err := r.refused(); err != nil {
		return Reads{}, err
	}
	return Reads{id, withoutImplied(r.facts), sortedNames(r.parameters), sortedNames(r.tables)}, nil
}

// withoutImplied sorts the reads. It drops those of a whole list or object that
// a read further down implies: who reads strings.*.id reads strings.
func withoutImplied(facts map[string]Read) []Read {
	all := make([]Read, 0, len(facts))
	for _, name := range sortedNames(facts) {
		all = append(all, facts[name])
	}
	return slices.DeleteFunc(slices.Clone(all), func(short Read) bool {
		return slices.ContainsFunc(all, func(long Read) bool {
			n := len(short.Path)
			return short.Own == long.Own && len(long.Path) > n && slices.Equal(long.Path[:n], short.Path)
		})
	})
}

func sortedNames[V any](set map[string]V) []string {
	names := make([]string, 0, len(set))
	for n := range set {
		names = append(names, n)
	}
	slices.Sort(names)
	return names
}

// reader gathers what one finding reads, in its rule and in all that it refers to.
type reader struct {
	compiler           *ast.Compiler
	list               string
	followed           map[*ast.Rule]bool
	facts              map[string]Read
	parameters, tables map[string]bool
	refusals           []readRefusal
}

// ruleReader reads one rule, or one else branch of it.
type ruleReader struct {
	*reader
	*readBindings
	rule         *ast.Rule
	found        *ast.Term     // the object that the rule finds; nil in other rules
	ownIteration string        // the iteration whose id the finding names
	at           *ast.Location // of the expression being read, for terms that have none
}

func (r *reader) of(rule *ast.Rule) *ruleReader {
	return &ruleReader{reader: r, readBindings: bindingsOf(r.compiler, rule), rule: rule, at: rule.Location}
}

// follow reads a rule that was referred to, once.
func (r *reader) follow(rule *ast.Rule) {
	for ; rule != nil && !r.followed[rule]; rule = rule.Else {
		r.followed[rule] = true
		r.of(rule).scope()
	}
}

// scope reads the head and the body of the rule.
func (r *ruleReader) scope() {
	r.body(r.rule.Body)
	head := r.rule.Head
	handed := append([]*ast.Term{head.Key, head.Value}, head.Args...)
	for _, t := range append(handed, head.Reference[1:]...) {
		if t != nil {
			r.value(t, asResult)
		}
	}
	for _, c := range r.clashes() {
		r.refuseWhole(c.at, c.place, c.name, asMatch)
	}
}

func (r *ruleReader) body(b ast.Body) {
	for _, e := range b {
		r.expr(e)
	}
}

func (r *ruleReader) expr(e *ast.Expr) {
	if e.Location != nil {
		r.at = e.Location
	}
	if len(e.With) > 0 {
		r.refuse(e.Location, "with puts other facts in the place of those of the installation", "leave it to the tests of the rule set")
	}
	switch t := e.Terms.(type) {
	case *ast.Term:
		r.exists(t)
	case []*ast.Term:
		r.call(t, e.Negated)
	case *ast.Every:
		r.ref(everyElement(t))
		r.body(t.Body)
	case *ast.Not:
		r.body(t.Body)
	case *ast.LogicalAnd:
		r.body(t.Lhs)
		r.body(t.Rhs)
	case *ast.LogicalOr:
		r.body(t.Lhs)
		r.body(t.Rhs)
	case *ast.SomeDecl: // names only
	default:
		r.refuse(e.Location, readUnclear, "write it in a plainer way")
	}
}

// exists reads a term that stands alone: it only has to be there.
func (r *ruleReader) exists(t *ast.Term) {
	switch t.Value.(type) {
	case ast.Var: // what it stands for was read when it got the name
	case ast.Ref:
		r.ref(t)
	default:
		r.value(t, asMember)
	}
}

func (r *ruleReader) call(terms []*ast.Term, negated bool) {
	operator, args := terms[0].Value.String(), terms[1:]
	if ref, ok := terms[0].Value.(ast.Ref); ok && ref.HasPrefix(ast.DefaultRootRef) {
		r.data(terms[0], ref)
	}
	if isEquation(operator) && len(args) == 2 && !negated {
		r.equation(args[0], args[1])
		return
	}
	for i, t := range args {
		if operator == ast.Count.Name && i == 0 && r.counts(t) {
			continue
		}
		r.value(t, r.handing(operator, args))
	}
}

// equation reads both sides of x = y. A name may stand for a whole part.
func (r *ruleReader) equation(a, b *ast.Term) {
	_, named := a.Value.(ast.Var)
	if !named {
		a, b = b, a
		_, named = a.Value.(ast.Var)
	}
	if !named {
		r.value(a, asMatch)
		r.value(b, asMatch)
		return
	}
	r.bound(b)
}

// bound reads what gets a name.
func (r *ruleReader) bound(t *ast.Term) {
	switch v := t.Value.(type) {
	case ast.Var:
		if v.Equal(ast.DefaultRootDocument.Value) {
			r.value(t, asMember)
		}
	case ast.Ref:
		r.ref(t)
	case *ast.ArrayComprehension:
		r.array(v)
	default:
		if t == r.found {
			r.value(t, asFinding)
			return
		}
		r.value(t, asMember)
	}
}

// array reads a list comprehension that may be a list of whole elements.
func (r *ruleReader) array(v *ast.ArrayComprehension) {
	r.body(v.Body)
	if p, ok := r.locate(v.Term); ok && !p.each {
		r.bound(v.Term)
		return
	}
	r.value(v.Term, asMember)
}

// counts reads the operand of count when that is a list, whose elements count
// does not look into.
func (r *ruleReader) counts(t *ast.Term) bool {
	p, ok := r.locate(t)
	if !ok || r.shape(p) != aWholeList {
		return false
	}
	r.bound(t)
	return true
}

// value reads a term whose value is used, be it by a function, in a comparison
// or in something that is made of it.
func (r *ruleReader) value(t *ast.Term, u readUse) {
	switch v := t.Value.(type) {
	case ast.Null, ast.Boolean, ast.Number, ast.String:
	case ast.Var:
		if v.Equal(ast.DefaultRootDocument.Value) {
			r.data(t, ast.Ref{t})
		}
		r.part(t, u)
	case ast.Ref:
		r.ref(t)
		r.part(t, u)
	case *ast.ArrayComprehension:
		r.array(v)
		r.part(t, u)
	case *ast.SetComprehension:
		r.body(v.Body)
		r.value(v.Term, asSet)
	case *ast.ObjectComprehension:
		r.body(v.Body)
		r.value(v.Key, asSet)
		r.value(v.Value, asMember)
	case *ast.Array:
		v.Foreach(func(e *ast.Term) { r.value(e, u) })
	case ast.Set:
		v.Foreach(func(e *ast.Term) { r.value(e, u) })
	case ast.Object:
		v.Foreach(func(k, e *ast.Term) {
			r.value(k, u)
			r.value(e, u)
		})
	case ast.Call:
		r.call(v, false)
	default:
		r.refuse(t.Location, readUnclear, "write it in a plainer way")
	}
}

// part refuses a term that is a whole part of the input.
func (r *ruleReader) part(t *ast.Term, u readUse) {
	if p, ok := r.locate(t); ok && r.shape(p) != aFact {
		r.refuseWhole(t.Location, p, r.words(t, p), u)
	}
}

// ref notes what a reference reads: a fact, a list, a parameter, a table, a rule.
func (r *ruleReader) ref(t *ast.Term) {
	ref := t.Value.(ast.Ref)
	for _, step := range ref[1:] {
		r.value(step, asKey)
	}
	if _, ok := ref[0].Value.(ast.Var); !ok {
		r.bound(ref[0])
	}
	if ref.HasPrefix(ast.DefaultRootRef) {
		r.data(t, ref)
	}
	p, ok := r.locate(t)
	switch {
	case ok:
		r.note(p)
	case p.dynamicKey != nil:
		r.refuse(t.Location, "this rule picks a member of "+p.String()+" by "+r.words(p.dynamicKey, readPlace{})+
			", so sunclause cannot see which fact it reads", "write the member's name, as in "+r.example(p, p.String()))
	}
}

// note keeps a read. Its last step is never "*": an element is read as part of
// its list.
func (r *ruleReader) note(p readPlace) {
	path := p.path
	for len(path) > 0 && path[len(path)-1] == "*" {
		path = path[:len(path)-1]
	}
	if len(path) == 0 {
		return
	}
	own := r.ownIteration != "" && p.iteration == r.ownIteration
	if r.list == catalogue.Whole {
		own = path[0] == catalogue.Whole
	}
	name := strings.Join(path, "\x00")
	if own {
		name += "\x00\x00own"
	}
	r.facts[name] = Read{slices.Clone(path), own}
}

// data notes the parameter or table that a reference names, and follows it to
// the rules that it may mean.
func (r *ruleReader) data(t *ast.Term, ref ast.Ref) {
	var names [3]string
	for i := 1; i < min(len(ref), 3); i++ {
		s, _ := ref[i].Value.(ast.String)
		names[i] = string(s)
	}
	if names[1] == "lib" && names[2] == "limit" {
		r.refuse(t.Location, "a rule looks at what the general module finds", "compare the facts yourself")
		return
	}
	rules := r.reader.compiler.GetRulesDynamicWithOpts(ref, ast.RulesOptions{IncludeHiddenModules: true})
	for _, rule := range rules {
		r.follow(rule)
	}
	switch kind, name := names[1], names[2]; {
	case kind == "parameters" && name != "":
		r.parameters[name] = true
	case kind == "tables" && name != "":
		r.tables[name] = true
	case kind == "parameters" || kind == "tables":
		r.refuse(t.Location, "sunclause cannot see which of data."+kind+" this rule reads", "write the name, as in data."+kind+".…")
	case kind == "":
		r.refuse(t.Location, "sunclause cannot see what this rule reads of data", "write the name, as in data.parameters.…")
	case len(rules) == 0:
		r.refuse(t.Location, "there is no rule, parameter or table "+groundWords(ref), "rules are data.<set>.<file>.<name>, and names of the set are below data.parameters and data.tables")
	}
}
