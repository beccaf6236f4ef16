package engine

import (
	"fmt"
	"slices"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"
)

// read is one fact that a rule looks at.
type read struct {
	Path []string // strings, *, voc_max_v; or installation, country; or strings, a list itself
	Own  bool     // through the very iteration that the finding names as its subject; otherwise any part of the list matters
}

// reads is everything that a rule looks at.
type reads struct {
	ID         string // of the finding
	Facts      []read
	Parameters []string // names under data.parameters
	Tables     []string // names under data.tables
}

// readsOf works out from a compiled rule which facts, parameters and tables it
// looks at, with those of the helper rules it uses. The compiler has cut every
// body into single steps, so that binding locals back to input finds them all.
// A rule that hands a whole subject on, where it can no longer be seen what is
// read of it, is refused.
func readsOf(c *ast.Compiler, rule *ast.Rule, subject string) (reads, error) {
	r := &reader{compiler: c, seen: map[*ast.Rule]bool{}}
	b := bindingsOf(rule)
	id, own, err := b.finding(rule, subject)
	if err != nil {
		return reads{}, err
	}
	r.rule(rule, b, func(o origin) bool {
		return o.path[0] == subject && (subject == wholeInstallation || o.iter == own)
	})
	if r.err != nil {
		return reads{}, r.err
	}
	r.found.ID = id
	return r.found.sorted(), nil
}

func (r reads) sorted() reads {
	slices.SortFunc(r.Facts, func(a, b read) int { return strings.Compare(a.String(), b.String()) })
	r.Facts = slices.CompactFunc(r.Facts, func(a, b read) bool { return a.String() == b.String() })
	slices.Sort(r.Parameters)
	slices.Sort(r.Tables)
	r.Parameters, r.Tables = slices.Compact(r.Parameters), slices.Compact(r.Tables)
	return r
}

func (r read) String() string {
	if r.Own {
		return strings.Join(r.Path, ".") + " of its own"
	}
	return strings.Join(r.Path, ".")
}

// reader gathers what a rule and its helpers look at.
type reader struct {
	compiler *ast.Compiler
	seen     map[*ast.Rule]bool
	found    reads
	err      error
}

func (r *reader) refuse(at *ast.Location, format string, args ...any) {
	if r.err == nil {
		r.err = fmt.Errorf("%s: %s", placeOf(at), fmt.Sprintf(format, args...))
	}
}

func placeOf(at *ast.Location) string {
	if at == nil {
		return "rule set"
	}
	return fmt.Sprintf("%s:%d:%d", at.File, at.Row, at.Col)
}

// rule gathers what one rule looks at.
func (r *reader) rule(rule *ast.Rule, b bindings, own func(origin) bool) {
	if r.seen[rule] || r.err != nil {
		return
	}
	r.seen[rule] = true
	s := &scanner{reader: r, bindings: b, own: own, at: rule.Location}
	for ; rule != nil; rule = rule.Else {
		s.head(rule.Head)
		s.body(rule.Body)
	}
}

// helpers gathers what the rules that a reference leads to look at. Whatever
// they read may be of any part.
func (r *reader) helpers(ref ast.Ref, at *ast.Location) {
	rules := r.compiler.GetRulesDynamicWithOpts(ref, ast.RulesOptions{})
	if len(rules) == 0 {
		r.refuse(at, "there is no rule or table %s", ref)
	}
	for _, rule := range rules {
		r.rule(rule, bindingsOf(rule), func(origin) bool { return false })
	}
}

// scanner goes through one rule with its locals bound.
type scanner struct {
	*reader
	bindings bindings
	own      func(origin) bool
	at       *ast.Location // of the step that is looked at
}

// head looks at what a rule hands out: members, but no whole subject.
func (s *scanner) head(h *ast.Head) {
	for _, t := range append([]*ast.Term{h.Key, h.Value}, h.Reference[1:]...) {
		if t != nil {
			s.value(t, "the result of a rule")
		}
	}
}

func (s *scanner) body(body ast.Body) {
	for _, e := range body {
		s.expr(e)
	}
}

func (s *scanner) expr(e *ast.Expr) {
	if e.Location != nil {
		s.at = e.Location
	}
	if len(e.With) > 0 {
		s.refuse(s.at, "a rule cannot change what it judges by “with”; leave that to the tests")
		return
	}
	switch t := e.Terms.(type) {
	case *ast.Term:
		s.value(t, "a condition")
	case *ast.Every:
		s.alias(t.Domain)
		s.body(t.Body)
	case *ast.Not:
		s.body(t.Body)
	case []*ast.Term:
		s.step(t)
	default:
		s.refuse(s.at, "this rule has a step of a kind that sunclause does not know; write it with plain conditions, not, some or every")
	}
}

// step looks at a call. Giving a value a name is the one step that may take a
// whole subject, since its members can be followed from there.
func (s *scanner) step(terms []*ast.Term) {
	operator, args := terms[0], terms[1:]
	name := operator.String()
	switch {
	case name == ast.Equality.Name && len(args) == 2:
		s.equality(args[0], args[1])
		return
	case name == ast.Count.Name && s.wholeList(args[0]):
		s.alias(args[0])
		return
	}
	if ref, ok := operator.Value.(ast.Ref); ok && ref[0].Equal(ast.DefaultRootDocument) {
		s.helpers(ref, s.at)
	}
	for _, a := range args {
		s.value(a, name+"()")
	}
}

func (s *scanner) equality(a, b *ast.Term) {
	_, aVar := a.Value.(ast.Var)
	_, bVar := b.Value.(ast.Var)
	switch {
	case aVar && bVar:
		if s.bindings.whole(a) && len(s.bindings.origins(a)) > 1 {
			s.refuseWhole(a, "a comparison")
		}
	case aVar:
		s.alias(b)
	case bVar:
		s.alias(a)
	default:
		s.value(a, "a comparison")
		s.value(b, "a comparison")
	}
}

// wholeList tells whether a term is a list of subjects, of which the number may
// be asked.
func (s *scanner) wholeList(t *ast.Term) bool {
	for _, o := range s.bindings.origins(t) {
		if len(o.path) == 1 && o.path[0] != wholeInstallation {
			return true
		}
	}
	return false
}

// alias looks at a term that is given a name, and may be whole.
func (s *scanner) alias(t *ast.Term) {
	switch v := t.Value.(type) {
	case ast.Var:
	case ast.Ref:
		s.ref(v, t, "", true)
	case *ast.ArrayComprehension:
		s.body(v.Body)
		if !s.bindings.whole(v.Term) {
			s.value(v.Term, "a list")
		}
	default:
		s.value(t, "a list or object of its own")
	}
}

// value looks at a term that is used as a value: no whole subject may be.
func (s *scanner) value(t *ast.Term, where string) {
	switch v := t.Value.(type) {
	case ast.Ref:
		s.ref(v, t, where, false)
	case ast.Var:
		if s.bindings.whole(t) {
			s.refuseWhole(t, where)
		}
	case *ast.Array:
		v.Foreach(func(e *ast.Term) { s.value(e, where) })
	case ast.Set:
		v.Foreach(func(e *ast.Term) { s.value(e, where) })
	case ast.Object:
		v.Foreach(func(k, e *ast.Term) { s.value(k, where); s.value(e, where) })
	case *ast.ArrayComprehension:
		s.body(v.Body)
		s.value(v.Term, where)
	case *ast.SetComprehension:
		s.body(v.Body)
		s.value(v.Term, where)
	case *ast.ObjectComprehension:
		s.body(v.Body)
		s.value(v.Key, where)
		s.value(v.Value, where)
	case ast.Call:
		s.step(v)
	}
}

// ref looks at a reference: into the facts, the figures, or another rule.
func (s *scanner) ref(v ast.Ref, t *ast.Term, where string, mayBeWhole bool) {
	for _, index := range v[1:] {
		if _, isVar := index.Value.(ast.Var); !isVar {
			s.value(index, "an index")
		}
	}
	if v[0].Equal(ast.DefaultRootDocument) {
		s.data(v)
		return
	}
	for _, o := range s.bindings.origins(t) {
		switch {
		case o.hidden:
			s.refuse(s.at, "this rule picks the member of %s by a variable, so sunclause cannot see which fact it reads; name the member, as in s.voc_max_v", spokenPath(o.path))
		case o.isWhole() && !mayBeWhole:
			s.refuseWhole(t, where)
		default:
			s.keep(o)
		}
	}
}

// keep records a read. Of a whole list only that it is looked at.
func (s *scanner) keep(o origin) {
	if len(o.path) == 0 {
		return
	}
	own := s.own(o)
	if o.isWhole() {
		if own || o.path[0] == wholeInstallation {
			return
		}
		o.path = o.path[:1]
	}
	s.found.Facts = append(s.found.Facts, read{slices.Clone(o.path), own})
}

func (s *scanner) refuseWhole(t *ast.Term, where string) {
	path := ""
	for _, o := range s.bindings.origins(t) {
		path = spokenPath(o.path)
	}
	s.refuse(s.at, "this rule hands the whole of %s to %s, so sunclause cannot see which facts it reads; pass on the members it needs instead, as in s.voc_max_v", path, where)
}

func spokenPath(path []string) string {
	if len(path) == 0 {
		return "input"
	}
	return "input." + strings.ReplaceAll(strings.Join(path, "."), ".*", "[_]")
}

// data looks at a reference outside the facts.
func (s *scanner) data(v ast.Ref) {
	if len(v) < 2 {
		s.refuse(s.at, "this rule reads the whole of data; name the parameter, table or rule it needs")
		return
	}
	name, _ := v[1].Value.(ast.String)
	switch root := string(name); root {
	case "parameters", "tables":
		s.figure(root, v[2:])
	case "rows", "conditions":
		s.refuse(s.at, "data.%s belongs to the judging of limit rows; a rule cannot read it", root)
	default:
		s.helpers(v, s.at)
	}
}

// figure records a parameter or table, which has to be named plainly.
func (s *scanner) figure(root string, rest ast.Ref) {
	if len(rest) > 0 {
		if name, plain := rest[0].Value.(ast.String); plain && root == "parameters" {
			s.found.Parameters = append(s.found.Parameters, string(name))
			return
		} else if plain {
			s.found.Tables = append(s.found.Tables, string(name))
			return
		}
	}
	s.refuse(s.at, "this rule does not say plainly which of the %s it reads; write data.%s.NAME", root, root)
}
