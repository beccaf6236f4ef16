package engine

import (
	"fmt"
	"slices"
	"strconv"

	"github.com/open-policy-agent/opa/v1/ast"
)

// origin is where in the facts a local of a rule comes from.
type origin struct {
	path   []string // strings, *, voc_max_v; cut behind the fact
	iter   string   // the variable that counts through the list; "" when there is none
	hidden bool     // a member of the path is picked by a variable
}

// isWhole tells whether it is more than one fact: all input, a list, a subject.
func (o origin) isWhole() bool {
	if len(o.path) > 0 && o.path[0] == wholeInstallation {
		return len(o.path) < 2
	}
	return len(o.path) < 3
}

func (o origin) key() string { return fmt.Sprint(o.path, o.iter, o.hidden) }

// into follows one more step of a reference.
func (o origin) into(step *ast.Term) origin {
	if !o.isWhole() || o.hidden {
		return o // below a fact nothing more is told apart
	}
	next := origin{path: slices.Clone(o.path), iter: o.iter}
	switch v := step.Value.(type) {
	case ast.String:
		next.path = append(next.path, string(v))
	case ast.Var:
		if len(o.path) != 1 || o.path[0] == wholeInstallation {
			next.hidden = true
			return next
		}
		next.path, next.iter = append(next.path, "*"), string(v)
	case ast.Number:
		next.path, next.iter = append(next.path, "*"), ""
	default:
		next.hidden = true
	}
	return next
}

// bindings are the locals of a rule with where each may come from.
type bindings map[ast.Var][]origin

// pair is two terms that a step makes equal.
type pairOfTerms struct{ a, b *ast.Term }

// bindingsOf binds the locals of a rule back to the facts. Locals have names of
// their own throughout the rule, so that one table holds for all nested bodies.
func bindingsOf(rule *ast.Rule) bindings {
	b := bindings{}
	var pairs []pairOfTerms
	var everies []*ast.Every
	ast.NewGenericVisitor(func(x any) bool {
		switch x := x.(type) {
		case *ast.Expr:
			if terms, ok := x.Terms.([]*ast.Term); ok && len(terms) == 3 && terms[0].String() == ast.Equality.Name {
				pairs = append(pairs, pairOfTerms{terms[1], terms[2]})
			}
		case *ast.Every:
			everies = append(everies, x)
		}
		return false
	}).Walk(rule)
	for changed := true; changed; {
		changed = false
		for _, p := range pairs {
			changed = b.bind(p.a, b.origins(p.b)) || changed
			changed = b.bind(p.b, b.origins(p.a)) || changed
		}
		for _, e := range everies {
			changed = b.every(e) || changed
		}
	}
	return b
}

// bind adds origins to a local; it tells whether any was new.
func (b bindings) bind(t *ast.Term, origins []origin) bool {
	v, ok := t.Value.(ast.Var)
	if !ok {
		return false
	}
	changed := false
	for _, o := range origins {
		if !slices.ContainsFunc(b[v], func(known origin) bool { return known.key() == o.key() }) {
			b[v] = append(b[v], o)
			changed = true
		}
	}
	return changed
}

// every binds the value of an every to the elements of its domain.
func (b bindings) every(e *ast.Every) bool {
	var elements []origin
	for _, o := range b.origins(e.Domain) {
		elements = append(elements, o.into(e.Value))
	}
	return b.bind(e.Value, elements)
}

// origins tells where a term may come from; none when it is not of the facts.
func (b bindings) origins(t *ast.Term) []origin {
	switch v := t.Value.(type) {
	case ast.Var:
		if v.Equal(ast.InputRootDocument.Value) {
			return []origin{{}}
		}
		return b[v]
	case ast.Ref:
		found := b.origins(v[0])
		for _, step := range v[1:] {
			next := make([]origin, len(found))
			for i, o := range found {
				next[i] = o.into(step)
			}
			found = next
		}
		return found
	case *ast.ArrayComprehension:
		return b.listOf(v.Term)
	}
	return nil
}

// listOf is the origin of a list made of whole subjects: the list they are of.
func (b bindings) listOf(element *ast.Term) []origin {
	var lists []origin
	for _, o := range b.origins(element) {
		if len(o.path) == 2 && o.path[1] == "*" {
			lists = append(lists, origin{path: o.path[:1], hidden: o.hidden})
		}
	}
	return lists
}

// whole tells whether a term may be a whole subject, list or input.
func (b bindings) whole(t *ast.Term) bool {
	return slices.ContainsFunc(b.origins(t), func(o origin) bool { return o.isWhole() })
}

// finding reads the finding that a rule hands out: its id, and the variable
// that counts through the subjects.
func (b bindings) finding(rule *ast.Rule, subject string) (id, own string, err error) {
	object := b.objectOf(rule, rule.Head.Key)
	if object == nil {
		return "", "", fmt.Errorf("%s: the rule must hand out an object written out in full, as in f := {\"id\": \"set/words\", \"subject\": s.id}", placeOf(rule.Location))
	}
	if t := object.Get(ast.StringTerm("id")); t != nil {
		s, _ := t.Value.(ast.String)
		id = string(s)
	}
	who := object.Get(ast.StringTerm("subject"))
	if who == nil {
		return id, "", fmt.Errorf("%s: the finding does not say which subject it is about; add \"subject\": s.id", placeOf(rule.Location))
	}
	if subject == wholeInstallation {
		if who.Equal(ast.StringTerm(wholeInstallation)) {
			return id, "", nil
		}
		return id, "", fmt.Errorf("%s: the finding is about the installation; write \"subject\": %s", placeOf(rule.Location), strconv.Quote(wholeInstallation))
	}
	for _, o := range b.origins(who) {
		if len(o.path) == 3 && o.path[0] == subject && o.path[2] == "id" && o.iter != "" {
			return id, o.iter, nil
		}
	}
	return id, "", fmt.Errorf("%s: the subject of the finding is not the id of one of input.%s; write some s in input.%s and \"subject\": s.id", placeOf(rule.Location), subject, subject)
}

// objectOf finds the object that the head of a rule hands out, through the
// local that the compiler has put between.
func (b bindings) objectOf(rule *ast.Rule, t *ast.Term) ast.Object {
	if t == nil {
		return nil
	}
	if o, ok := t.Value.(ast.Object); ok {
		return o
	}
	var found ast.Object
	ast.WalkExprs(rule.Body, func(e *ast.Expr) bool {
		if terms, ok := e.Terms.([]*ast.Term); ok && len(terms) == 3 && terms[0].String() == ast.Equality.Name {
			for i := 1; i <= 2; i++ {
				if o, ok := terms[3-i].Value.(ast.Object); ok && terms[i].Equal(t) {
					found = o
				}
			}
		}
		return false
	})
	return found
}
