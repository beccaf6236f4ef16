package rego

import (
	"fmt"
	"slices"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/types"
)

// readPlace is where in the input something is.
type readPlace struct {
	path      []string // strings, *; empty for the input itself
	iteration string   // the iteration that the path goes through; empty before the first
	list      string   // for a list: what is iterated over, when not the path says so
	each      bool     // a list, made in the rule, of what is at path

	dynamicKey *ast.Term // the step that could not be seen through, when there is no place
}

func (p readPlace) String() string {
	words := strings.ReplaceAll("input."+strings.Join(p.path, "."), ".*", "[_]")
	return strings.TrimSuffix(words, ".")
}

// readShape is what is at a place, as far as reads care.
type readShape int

const (
	aFact        readShape = iota // a plain value, or a list of plain values
	aWholeObject                  // has facts as members
	aWholeList                    // has whole objects in it
)

// shape asks the types of the input what is at a place. What has no type might
// be anything, so it is taken for an object, whose members have to be named.
func (b *readBindings) shape(p readPlace) readShape {
	if p.each {
		return aWholeList
	}
	return shapeOfType(b.typeAt(p))
}

func (b *readBindings) typeAt(p readPlace) types.Type {
	ref := ast.Ref{ast.InputRootDocument}
	for _, step := range p.path {
		if step == "*" {
			ref = append(ref, ast.VarTerm("_"))
		} else {
			ref = append(ref, ast.StringTerm(step))
		}
	}
	return b.compiler.TypeEnv.GetByRef(ref)
}

func shapeOfType(t types.Type) readShape {
	switch t := t.(type) {
	case types.Null, types.Boolean, types.Number, types.String:
		return aFact
	case *types.Array:
		if shapeOfType(types.Values(t)) == aFact {
			return aFact
		}
		return aWholeList
	case types.Any:
		if len(t) > 0 && !slices.ContainsFunc(t, func(one types.Type) bool { return shapeOfType(one) != aFact }) {
			return aFact
		}
	}
	return aWholeObject
}

// readBindings knows what the names in one rule stand for.
type readBindings struct {
	compiler  *ast.Compiler
	names     map[ast.Var]*readName
	equations [][2]*ast.Term // of the rule's own body: those that hold whenever it finds something
}

// readName is what is known of one or more names that are equal.
type readName struct {
	equal    []ast.Var
	terms    []*ast.Term   // what they are equated with
	clash    *ast.Location // where they are equated once more than it takes to name something
	place    *readPlace    // nil when they stand for no whole part
	settled  bool
	settling bool
	clashed  bool
}

// bindingsOf notes all equations of a rule, also those in its comprehensions.
func bindingsOf(c *ast.Compiler, rule *ast.Rule) *readBindings {
	b := &readBindings{compiler: c, names: map[ast.Var]*readName{}}
	for _, e := range rule.Body {
		if terms, ok := equationOf(e); ok {
			b.equations = append(b.equations, [2]*ast.Term{terms[1], terms[2]})
		}
	}
	gather := func(e *ast.Expr) bool {
		if terms, ok := equationOf(e); ok {
			b.equate(terms[1], terms[2], e.Location)
		}
		if every, ok := e.Terms.(*ast.Every); ok {
			b.equate(every.Value, everyElement(every), e.Location)
		}
		return false
	}
	ast.WalkExprs(rule.Body, gather)
	ast.WalkExprs(rule.Head, gather)
	return b
}

func equationOf(e *ast.Expr) ([]*ast.Term, bool) {
	terms, ok := e.Terms.([]*ast.Term)
	return terms, ok && len(terms) == 3 && !e.Negated && isEquation(terms[0].Value.String())
}

func isEquation(operator string) bool {
	return operator == ast.Equality.Name || operator == ast.Equal.Name || operator == ast.Assign.Name
}

// everyElement is the element that "every x in list" looks at, as a reference
// into the list.
func everyElement(e *ast.Every) *ast.Term {
	key := e.Key
	if key == nil {
		key = ast.NewTerm(e.Value.Value)
	}
	ref, ok := e.Domain.Value.(ast.Ref)
	if !ok {
		ref = ast.Ref{e.Domain}
	}
	return &ast.Term{Value: append(slices.Clone(ref), key), Location: e.Domain.Location}
}

func (b *readBindings) equate(x, y *ast.Term, at *ast.Location) {
	v, ok1 := x.Value.(ast.Var)
	w, ok2 := y.Value.(ast.Var)
	switch {
	case ok1 && ok2:
		b.join(b.name(v), b.name(w), at)
	case ok1:
		b.name(v).define(y, at)
	case ok2:
		b.name(w).define(x, at)
	}
}

func (b *readBindings) name(v ast.Var) *readName {
	if b.names[v] == nil {
		b.names[v] = &readName{equal: []ast.Var{v}}
	}
	return b.names[v]
}

func (n *readName) define(t *ast.Term, at *ast.Location) {
	if len(n.terms) > 0 {
		n.clashAt(at)
	}
	n.terms = append(n.terms, t)
}

func (n *readName) clashAt(at *ast.Location) {
	if !n.clashed {
		n.clash, n.clashed = at, true
	}
}

func (b *readBindings) join(n, m *readName, at *ast.Location) {
	if n == m || len(n.terms) > 0 && len(m.terms) > 0 {
		n.clashAt(at)
	}
	if n == m {
		return
	}
	if m.clashed {
		n.clashAt(m.clash)
	}
	n.equal, n.terms = append(n.equal, m.equal...), append(n.terms, m.terms...)
	for _, v := range m.equal {
		b.names[v] = n
	}
}

// standsFor lists the terms, other than names, that a term of the rule's own
// body is equal to.
func (b *readBindings) standsFor(t *ast.Term) []*ast.Term {
	same := []*ast.Term{t}
	for i := 0; i < len(same); i++ {
		if _, ok := same[i].Value.(ast.Var); !ok {
			continue
		}
		for _, e := range b.equations {
			for side, one := range e {
				if other := e[1-side]; one.Equal(same[i]) && !slices.ContainsFunc(same, other.Equal) {
					same = append(same, other)
				}
			}
		}
	}
	return slices.DeleteFunc(same, func(t *ast.Term) bool {
		_, named := t.Value.(ast.Var)
		return named
	})
}

// locate tells where in the input a term is. A name is only known by the whole
// part it stands for.
func (b *readBindings) locate(t *ast.Term) (readPlace, bool) {
	switch v := t.Value.(type) {
	case ast.Var:
		if v.Equal(ast.InputRootDocument.Value) {
			return readPlace{}, true
		}
		if p := b.wholeOf(b.names[v]); p != nil {
			return *p, true
		}
	case ast.Ref:
		p, ok := b.locate(v[0])
		for i := 1; ok && i < len(v); i++ {
			p, ok = b.step(p, v[i])
		}
		return p, ok
	case *ast.ArrayComprehension:
		if p, ok := b.locate(v.Term); ok && !p.each && b.shape(p) != aFact {
			return readPlace{path: p.path, each: true, list: fmt.Sprintf("%p", v)}, true
		}
	}
	return readPlace{}, false
}

// step goes one step down from a place.
func (b *readBindings) step(p readPlace, by *ast.Term) (readPlace, bool) {
	name, named := by.Value.(ast.String)
	switch shape := b.shape(p); {
	case shape == aFact: // what is inside a fact is that fact
		return p, true
	case shape == aWholeObject && !named:
		return readPlace{path: p.path, dynamicKey: by}, false
	case shape == aWholeObject:
		p.path = append(slices.Clone(p.path), string(name))
	case p.each:
		return readPlace{path: p.path, iteration: p.list + "[" + by.String() + "]"}, true
	default:
		if p.iteration == "" {
			p.iteration = strings.Join(p.path, ".") + "[" + by.String() + "]"
		}
		p.path = append(slices.Clone(p.path), "*")
	}
	return p, true
}

// wholeOf is the whole part that names stand for, worked out once.
func (b *readBindings) wholeOf(n *readName) *readPlace {
	if n == nil || n.settled || n.settling {
		if n == nil {
			return nil
		}
		return n.place
	}
	n.settling = true
	for _, t := range n.terms {
		if p, ok := b.locate(t); ok && b.shape(p) != aFact {
			n.place = &p
			break
		}
	}
	n.settled = true
	return n.place
}

// readClash is a name for a whole part that is equated with something else too.
type readClash struct {
	at    *ast.Location
	place readPlace
	name  string
}

func (b *readBindings) clashes() []readClash {
	var all []readClash
	for v, n := range b.names {
		if p := b.wholeOf(n); p != nil && n.clashed && n.equal[0] == v {
			all = append(all, readClash{n.clash, *p, b.words(ast.NewTerm(v), *p)})
		}
	}
	return all
}

// words is what the rule's author calls a term.
func (b *readBindings) words(t *ast.Term, p readPlace) string {
	if v, ok := t.Value.(ast.Var); ok {
		if user, ok := b.compiler.RewrittenVars[v]; ok {
			v = user
		}
		if !v.IsGenerated() && !v.IsWildcard() && v != "_" {
			return string(v)
		}
	}
	if t.Location != nil && len(t.Location.Text) > 0 && p.path == nil {
		return string(t.Location.Text)
	}
	return p.String()
}
