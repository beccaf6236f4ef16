package rego

import (
	"errors"
	"fmt"
	"slices"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"

	"github.com/open-policy-agent/opa/v1/types"
	"sunclause/engine/catalogue"
)

// readRefusal is one place where a rule hides what it reads.
type readRefusal struct {
	at         *ast.Location
	what, cure string
}

const readUnclear = "sunclause cannot see what this rule finds or reads here"

func (r *ruleReader) refuse(at *ast.Location, what, cure string) {
	if at == nil {
		at = r.at
	}
	r.refusals = append(r.refusals, readRefusal{at, what, cure})
}

// refused lists the refusals as file:line:column, in the order of the text and
// one for each place.
func (r *reader) refused() error {
	place := func(a, b readRefusal) int {
		return a.at.Compare(b.at)
	}
	slices.SortStableFunc(r.refusals, place)
	r.refusals = slices.CompactFunc(r.refusals, func(a, b readRefusal) bool { return place(a, b) == 0 })
	var lines []error
	for _, f := range r.refusals {
		lines = append(lines, fmt.Errorf("%s:%d:%d: %s; %s", f.at.File, f.at.Row, f.at.Col, f.what, f.cure))
	}
	return errors.Join(lines...)
}

// readUse is a use that hides which facts of a whole part are read: it says
// what the rule does with it, and what to write instead.
type readUse struct {
	does, to string
	cure     string // %s is an example of a member
	given    string // the member that the rule names itself, if it does
}

var (
	asFinding = readUse{does: "puts", to: " into the finding", cure: "put in the members it needs instead, as in %s"}
	asResult  = readUse{does: "gives", to: " as the result of a rule", cure: "give the members that are needed instead, as in %s"}
	asMember  = readUse{does: "puts", to: " into something it makes", cure: "put in the members it needs instead, as in %s"}
	asSet     = readUse{does: "puts", to: " into a set", cure: "put in the members it needs instead, as in %s"}
	asMatch   = readUse{does: "compares", to: " with something", cure: "give it one name of its own with := and compare members, as in %s"}
	asKey     = readUse{does: "uses", to: " as a key", cure: "use a member instead, as in %s"}
)

// handing is the use as an operand of a function.
func (r *ruleReader) handing(operator string, args []*ast.Term) readUse {
	switch operator {
	case ast.Member.Name, ast.MemberWithKey.Name:
		return readUse{does: "looks", to: " up with in", cure: "compare members instead, as in %s"}
	case ast.InternalTemplateString.Name:
		return readUse{does: "hands", to: " to a text", cure: "put in the members it needs instead, as in %s"}
	case ast.ObjectGet.Name:
		u := readUse{does: "hands", to: " to object.get()", cure: "read the member itself instead, as in %s"}
		if len(args) > 1 {
			if s, ok := args[1].Value.(ast.String); ok {
				u.given = string(s)
			}
		}
		return u
	}
	if b, ok := ast.BuiltinMap[operator]; ok {
		if b.Infix != "" {
			return readUse{does: "compares", to: " by " + b.Infix, cure: "compare members instead, as in %s"}
		}
		return readUse{does: "hands", to: " to " + operator + "()", cure: "read the members it needs instead, as in %s"}
	}
	name := operator
	if r.rule.Module != nil {
		name = strings.TrimPrefix(operator, r.rule.Module.Package.Path.String()+".")
	}
	return readUse{does: "hands", to: " to " + name + "()", cure: "pass the members it needs instead, as in " + name + "(%s)"}
}

func (r *ruleReader) refuseWhole(at *ast.Location, p readPlace, words string, u readUse) {
	example := r.example(p, words)
	if u.given != "" && r.shape(p) == aWholeObject {
		example = words + "." + u.given
	}
	r.refuse(at, "this rule "+u.does+" the whole of "+p.String()+u.to+", so sunclause cannot see which facts it reads", fmt.Sprintf(u.cure, example))
}

// example is a member of a whole part, in Rego: s.voc_max_v.
func (b *readBindings) example(p readPlace, words string) string {
	if b.shape(p) == aWholeList {
		inside := p
		if inside.each = false; !p.each {
			inside.path = append(slices.Clone(p.path), "*")
		}
		return "[x." + b.memberOf(inside) + " | some x in " + words + "]"
	}
	if len(p.path) == 0 {
		p.path = []string{catalogue.Whole}
		words += "." + catalogue.Whole
	}
	return words + "." + b.memberOf(p)
}

// memberOf is the first fact of an object, by name.
func (b *readBindings) memberOf(p readPlace) string {
	object, ok := b.typeAt(p).(*types.Object)
	if !ok {
		return "id"
	}
	for _, m := range object.StaticProperties() {
		if name, ok := m.Key.(string); ok && name != "id" && shapeOfType(m.Value) == aFact {
			return name
		}
	}
	return "id"
}

// groundWords is a reference as far as it is written out.
func groundWords(ref ast.Ref) string { return ref.GroundPrefix().String() }
