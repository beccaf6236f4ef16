package rego

import (
	"slices"

	"github.com/open-policy-agent/opa/v1/ast"

	"sunclause/engine/catalogue"
)

// finding reads the rule that makes the finding, and gives the finding's id.
func (r *reader) finding(rule *ast.Rule) string {
	rr := r.of(rule)
	head := rule.Head
	if head.Key == nil || head.Value != nil || len(head.Reference) != 1 || rule.Else != nil {
		rr.refuse(rule.Location, readUnclear, "write it as findings contains f if { … }")
		return ""
	}
	var object ast.Object
	for _, t := range rr.standsFor(head.Key) {
		if o, ok := t.Value.(ast.Object); ok {
			object, rr.found = o, t
		}
	}
	if object == nil {
		rr.refuse(head.Key.Location, readUnclear, `write the finding out as an object, as in f := {"id": "…", "subject": s.id}`)
		return ""
	}
	id := rr.findingID(object)
	rr.findSubject(object)
	rr.scope()
	return id
}

func (r *ruleReader) findingID(finding ast.Object) string {
	if member := finding.Get(ast.StringTerm("id")); member != nil {
		for _, t := range r.standsFor(member) {
			if s, ok := t.Value.(ast.String); ok {
				return string(s)
			}
		}
	}
	r.refuse(r.found.Location, "the finding has no id that is written out", `add the id of the card, as in "id": "gb/…"`)
	return ""
}

// findSubject finds the iteration whose id is the subject of the finding.
func (r *ruleReader) findSubject(finding ast.Object) {
	place := r.found.Location
	if member := finding.Get(ast.StringTerm("subject")); member != nil {
		place = member.Location
		for _, t := range r.standsFor(member) {
			if r.isSubject(t) {
				return
			}
		}
	}
	if r.list == catalogue.Whole {
		r.refuse(place, "the finding does not name the installation as its subject", `write "subject": "installation"`)
		return
	}
	r.refuse(place, "the finding does not name an element of input."+r.list+" as its subject, as its card says",
		`iterate with some s in input.`+r.list+` and write "subject": s.id`)
}

func (r *ruleReader) isSubject(t *ast.Term) bool {
	if r.list == catalogue.Whole && t.Value.Compare(ast.String(catalogue.Whole)) == 0 {
		return true
	}
	p, ok := r.locate(t)
	if !ok {
		return false
	}
	if r.list == catalogue.Whole {
		return slices.Equal(p.path, []string{catalogue.Whole, "id"})
	}
	r.ownIteration = p.iteration
	return p.iteration != "" && slices.Equal(p.path, []string{r.list, "*", "id"})
}
