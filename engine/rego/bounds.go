package rego

import (
	"fmt"
	"strconv"

	"github.com/open-policy-agent/opa/v1/ast"
)

// Bounds of one Rego module that is not embedded. The compiler cannot be
// interrupted, and the time it takes doubles with every comprehension inside
// another and grows with the cube of a long body; what people write stays far
// below.
const (
	maxModuleBytes = 64 << 10
	maxRules       = 300
	maxElse        = 20
	maxBody        = 60   // expressions in one body
	maxExprs       = 2000 // expressions in one module
	maxNested      = 4    // comprehensions, every and template strings
	maxTermDepth   = 40
	maxString      = 4 << 10 // bytes
	maxNumber      = 30      // digits
)

// checkSize holds the text of a module to its bound, before it is parsed.
func (m Module) checkSize() error {
	if len(m.Text) > maxModuleBytes {
		return fmt.Errorf("%s:1:1: the rules have %d bytes; at most %d are read from one file; split it into several", m.Name, len(m.Text), maxModuleBytes)
	}
	return nil
}

// checkBounds holds a parsed module to its bounds, before it is compiled.
func checkBounds(m *ast.Module) error {
	b := &bounds{}
	ast.NewBeforeAfterVisitor(b.enter, b.leave).Walk(m)
	return b.err
}

// bounds counts on a walk through a module.
type bounds struct {
	rules, exprs  int
	depth, nested int
	at            *ast.Location // of the last thing met that has a place
	err           error         // the first bound that is passed
}

func (b *bounds) refuse(what, remedy string, most int) {
	if b.err == nil {
		b.err = fmt.Errorf("%s:%d:%d: %s; at most %d; %s", b.at.File, b.at.Row, b.at.Col, what, most, remedy)
	}
}

// enter counts what the walk comes to; true ends the walk there.
func (b *bounds) enter(x any) bool {
	if n, ok := x.(ast.Node); ok && n.Loc() != nil {
		b.at = n.Loc()
	}
	switch x := x.(type) {
	case *ast.Rule:
		b.rule(x)
	case ast.Body:
		if len(x) > maxBody {
			b.refuse(fmt.Sprintf("a body of %d expressions", len(x)), "move some of it into rules of its own", maxBody)
		}
	case *ast.Expr:
		if b.exprs++; b.exprs > maxExprs {
			b.refuse("too many expressions in one file", "split it into several", maxExprs)
		}
	case *ast.Term:
		if b.depth++; b.depth > maxTermDepth {
			b.refuse("a term of too many parts one inside the other (brackets, calls, or a long sum)", "make it in several steps", maxTermDepth)
		}
		b.literal(x.Value)
	}
	if nests(x) {
		if b.nested++; b.nested > maxNested {
			b.refuse("too many comprehensions, every or template strings one inside the other", "move the inner ones into rules of their own", maxNested)
		}
	}
	return b.err != nil
}

func (b *bounds) leave(x any) {
	if _, ok := x.(*ast.Term); ok {
		b.depth--
	}
	if nests(x) {
		b.nested--
	}
}

func nests(x any) bool {
	switch x.(type) {
	case *ast.ArrayComprehension, *ast.SetComprehension, *ast.ObjectComprehension, *ast.Every, *ast.TemplateString:
		return true
	}
	return false
}

func (b *bounds) rule(r *ast.Rule) {
	if b.rules++; b.rules > maxRules {
		b.refuse("too many rules in one file", "split it into several", maxRules)
	}
	branches := 0
	for e := r.Else; e != nil; e = e.Else {
		branches++
	}
	if branches > maxElse {
		b.refuse(fmt.Sprintf("%d branches of else", branches), "write a rule for each case, or a table", maxElse)
	}
}

func (b *bounds) literal(v ast.Value) {
	switch v := v.(type) {
	case ast.String:
		if len(v) > maxString {
			b.refuse(fmt.Sprintf("a text of %d bytes", len(v)), "say what is wrong in one line", maxString)
		}
	case ast.Number:
		_, err := strconv.ParseFloat(string(v), 64)
		if len(v) > maxNumber || err != nil {
			b.refuse("a number of too many digits or too large", "write it shorter; no quantity of an installation needs more", maxNumber)
		}
	}
}
