package engine

import (
	"fmt"
	"maps"

	"github.com/open-policy-agent/opa/v1/ast"
)

// ruleChange is one change in the body of a Rego rule: the n-th expression that
// can be changed, of the rule on a line of a module.
type ruleChange struct {
	module string
	line   int
	n      int
}

// turned is what a comparison becomes when it is turned round.
var turned = map[string]*ast.Builtin{
	ast.GreaterThan.Name: ast.LessThanEq, ast.LessThanEq.Name: ast.GreaterThan,
	ast.LessThan.Name: ast.GreaterThanEq, ast.GreaterThanEq.Name: ast.LessThan,
	ast.Equal.Name: ast.NotEqual, ast.NotEqual.Name: ast.Equal,
}

// ruleMutants turns each comparison of a Rego rule round, and drops each not. A
// change that the compiler refuses, such as a variable that nothing binds any
// more, could never be shipped and is left out.
func (s *RuleSet) ruleMutants(q *Requirement) []mutant {
	rule := ruleOf(s.modules[q.File], q.ID)
	if rule == nil {
		return nil
	}
	var all []mutant
	for n, what := range changesIn(rule, -1) {
		change := ruleChange{q.File, rule.Location.Row, n}
		if compiler, err := change.compile(s.modules); err == nil {
			all = append(all, mutant{what: what, q: q, rule: compiler})
		}
	}
	return all
}

func ruleOf(m *ast.Module, id string) *ast.Rule {
	if m == nil {
		return nil
	}
	for _, r := range m.Rules {
		for _, a := range r.Annotations {
			if a.Custom["id"] == id {
				return r
			}
		}
	}
	return nil
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

// compile compiles the modules with the change made.
func (c ruleChange) compile(modules map[string]*ast.Module) (*ast.Compiler, error) {
	changed := maps.Clone(modules)
	m := modules[c.module].Copy()
	for _, r := range m.Rules {
		if r.Location.Row == c.line {
			changesIn(r, c.n)
		}
	}
	changed[c.module] = m
	return compileModules(changed)
}
