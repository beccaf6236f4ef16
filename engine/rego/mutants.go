package rego

import (
	"fmt"
	"maps"

	"github.com/open-policy-agent/opa/v1/ast"
)

// Mutant is what rules become by one small change that tests ought to notice.
type Mutant struct {
	What  string
	Rules *Rules // not yet given any data
}

// turned is what a comparison becomes when it is turned round.
var turned = map[string]*ast.Builtin{
	ast.GreaterThan.Name: ast.LessThanEq, ast.LessThanEq.Name: ast.GreaterThan,
	ast.LessThan.Name: ast.GreaterThanEq, ast.GreaterThanEq.Name: ast.LessThan,
	ast.Equal.Name: ast.NotEqual, ast.NotEqual.Name: ast.Equal,
}

// Mutants turns each comparison in the rule of a requirement round, and drops
// each not. A change that the compiler refuses, such as a variable that nothing
// binds any more, could never be shipped and is left out.
func (r *Rules) Mutants(id string) []Mutant {
	file, rule := r.ruleOf(id)
	if rule == nil {
		return nil
	}
	var all []Mutant
	for n, what := range changesIn(rule, -1) {
		if changed, err := r.changed(file, rule.Location.Row, n); err == nil {
			all = append(all, Mutant{what, changed})
		}
	}
	return all
}

func (r *Rules) ruleOf(id string) (file string, rule *ast.Rule) {
	for file, m := range r.modules {
		for _, rule := range m.Rules {
			for _, a := range rule.Annotations {
				if a.Custom["id"] == id {
					return file, rule
				}
			}
		}
	}
	return "", nil
}

// changesIn describes the changes that can be made in a rule, and makes the one
// asked for.
func changesIn(rule *ast.Rule, make int) []string {
	var words []string
	ast.WalkExprs(rule, func(e *ast.Expr) bool {
		row := 0
		if e.Location != nil {
			row = e.Location.Row
		}
		if e.Negated {
			if len(words) == make {
				e.Negated = false
			}
			words = append(words, fmt.Sprintf("not dropped on line %d", row))
		}
		terms, ok := e.Terms.([]*ast.Term)
		if !ok || e.OperatorTerm() == nil {
			return false
		}
		if to, ok := turned[e.Operator().String()]; ok {
			if len(words) == make {
				terms[0] = ast.NewTerm(to.Ref())
			}
			words = append(words, fmt.Sprintf("%s turned round on line %d", e.Operator(), row))
		}
		return false
	})
	return words
}

// changed compiles the rules with the n-th change made in the rule on a line.
func (r *Rules) changed(file string, line, n int) (*Rules, error) {
	modules := maps.Clone(r.modules)
	m := modules[file].Copy()
	for _, rule := range m.Rules {
		if rule.Location.Row == line {
			changesIn(rule, n)
		}
	}
	modules[file] = m
	compiler, err := compile(modules)
	if err != nil {
		return nil, err
	}
	changed := *r
	changed.modules, changed.compiler = modules, compiler
	return &changed, nil
}
