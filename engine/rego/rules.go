// Package rego runs the rules of a rule set that are written in Rego. Whatever
// serves only such rules is here: parsing and bounds, compiling, the facts and
// data as Rego sees them, what a rule reads, and the watch over what a stranger's
// rules may cost. Only a set that has such rules needs any of it.
//
// Nothing else in sunclause compiles or runs Rego.
package rego

import (
	"context"
	"errors"
	"fmt"
	"maps"
	"slices"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/rego"
	"github.com/open-policy-agent/opa/v1/storage/inmem"

	"sunclause/engine/catalogue"
)

// Module is the text of one Rego module.
type Module struct {
	Name      string // of the file, as shown in errors
	Room      string
	Package   string // that it has to have, without data: house_example.pvstring
	Text      string
	Untrusted bool // it is not embedded, and is held to bounds
}

// Card is the METADATA block over a rule that hands out findings.
type Card struct {
	Module Module
	Line   int // on which the block begins
	Title  string
	Custom map[string]any
}

// Rules are the Rego rules of a rule set with all that it builds on. Parse and
// Compile make them; then they do not change: what alters them hands out others.
// They may be used from several goroutines.
type Rules struct {
	modules   map[string]*ast.Module // as parsed, by file
	cards     []Card
	rooms     []roomQuery
	untrusted bool
	compiler  *ast.Compiler
	reads     map[string]Reads // by the id of the requirement
	query     rego.PreparedEvalQuery
}

// roomQuery is a module whose rules hand out findings.
type roomQuery struct{ name, path string }

// Parse parses modules and reads the cards of the rules in them.
func Parse(modules []Module) (*Rules, error) {
	r := &Rules{modules: map[string]*ast.Module{}, reads: map[string]Reads{}}
	for _, m := range modules {
		parsed, err := m.parse()
		if err != nil {
			return nil, err
		}
		r.modules[m.Name] = parsed
		r.untrusted = r.untrusted || m.Untrusted
		if err := r.addCards(m, parsed); err != nil {
			return nil, err
		}
	}
	return r, nil
}

// parse parses a module and holds its package to its place. Only a module of
// ours may be of any size.
func (m Module) parse() (*ast.Module, error) {
	if m.Untrusted {
		if err := m.checkSize(); err != nil {
			return nil, err
		}
	}
	parsed, err := ast.ParseModuleWithOpts(m.Name, m.Text, ast.ParserOptions{
		ProcessAnnotation: true, RegoVersion: ast.RegoV2, Capabilities: capabilities(),
	})
	var problems ast.Errors
	if errors.As(err, &problems) {
		return nil, compileErrors(problems)
	} else if err != nil {
		return nil, fmt.Errorf("%s: %w", m.Name, err)
	}
	if got := strings.TrimPrefix(parsed.Package.Path.String(), "data."); got != m.Package {
		return nil, fmt.Errorf("%s:%d: the package is %s; it must be %s, after the name of the set and of the file", m.Name, parsed.Package.Location.Row, got, m.Package)
	}
	if m.Untrusted {
		return parsed, checkBounds(parsed)
	}
	return parsed, nil
}

// addCards takes the card of every rule called findings.
func (r *Rules) addCards(m Module, parsed *ast.Module) error {
	hasFindings := false
	for _, rule := range parsed.Rules {
		if !finds(rule) {
			continue
		}
		hasFindings = true
		card, err := cardOf(m, rule)
		if err != nil {
			return err
		}
		r.cards = append(r.cards, card)
	}
	if hasFindings {
		r.rooms = append(r.rooms, roomQuery{strings.ReplaceAll(m.Package, ".", "__"), "data." + m.Package + ".findings"})
	}
	return nil
}

// finds reports whether a rule is one that hands out findings, and not one that
// serves others.
func finds(rule *ast.Rule) bool { return rule.Head.Ref()[0].String() == "findings" }

// cardOf reads the METADATA block over a rule.
func cardOf(m Module, rule *ast.Rule) (Card, error) {
	for _, a := range rule.Annotations {
		if a.Scope != "rule" {
			continue
		}
		if a.Title == "" {
			return Card{}, fmt.Errorf("%s:%d: the card has no title; say in one line what is required", m.Name, a.Location.Row)
		}
		return Card{m, a.Location.Row, a.Title, a.Custom}, nil
	}
	return Card{}, fmt.Errorf("%s:%d: this rule has no card; write a METADATA block over it with custom: id, level, subject and source", m.Name, rule.Location.Row)
}

// Cards lists the cards of all rules that hand out findings.
func (r *Rules) Cards() []Card { return r.cards }

// Names are what a rule set has that its rules may refer to.
type Names struct {
	Subject    func(id string) string // of the requirement: the list of facts that it judges
	Parameters []string
	Tables     []string
}

// Compile compiles the rules and works out what each reads. A rule that reads
// what the set has not, or hides what it reads, is refused with file and line.
func (r *Rules) Compile(n Names) error {
	compiler, err := compile(r.modules)
	if err != nil {
		return err
	}
	r.compiler = compiler
	for _, file := range slices.Sorted(maps.Keys(compiler.Modules)) {
		for _, rule := range compiler.Modules[file].Rules {
			if !finds(rule) || len(rule.Annotations) == 0 {
				continue
			}
			if err := r.read(rule, n); err != nil {
				return err
			}
		}
	}
	return nil
}

// read works out what one rule reads.
func (r *Rules) read(rule *ast.Rule, n Names) error {
	id, _ := rule.Annotations[0].Custom["id"].(string)
	read, err := readsOf(r.compiler, rule, n.Subject(id))
	if err != nil {
		return err
	}
	at := rule.Location
	if read.ID != id {
		return fmt.Errorf("%s:%d: the finding is called %q and its card %q; the two must be the same", at.File, at.Row, read.ID, id)
	}
	for _, p := range read.Parameters {
		if !slices.Contains(n.Parameters, p) {
			return fmt.Errorf("%s:%d: the rule set has no parameter %q; %s", at.File, at.Row, p, catalogue.DidYouMean(p, n.Parameters))
		}
	}
	for _, t := range read.Tables {
		if !slices.Contains(n.Tables, t) {
			return fmt.Errorf("%s:%d: the rule set has no table %q", at.File, at.Row, t)
		}
	}
	r.reads[id] = read
	return nil
}

// Reads is what the rule of a requirement looks at; nothing when the requirement
// is no rule.
func (r *Rules) Reads(id string) Reads { return r.reads[id] }

// compile compiles modules strictly, with the facts as the type of the input and
// nothing but the allowed builtins.
func compile(modules map[string]*ast.Module) (*ast.Compiler, error) {
	c := ast.NewCompiler().WithCapabilities(capabilities()).WithSchemas(inputTypes()).
		WithStrict(true).WithDefaultRegoVersion(ast.RegoV2)
	if c.Compile(modules); c.Failed() {
		return nil, compileErrors(c.Errors)
	}
	return c, nil
}

func inputTypes() *ast.SchemaSet {
	types := ast.NewSchemaSet()
	types.Put(ast.SchemaRootRef, InputSchema())
	return types
}

// compileErrors writes the errors of the Rego parser and compiler as
// file:line:column, with what there is instead of a name that there is not.
func compileErrors(errs ast.Errors) error {
	lines := make([]string, 0, len(errs))
	for _, e := range errs {
		place := "rule set"
		if e.Location != nil {
			place = fmt.Sprintf("%s:%d:%d", e.Location.File, e.Location.Row, e.Location.Col)
		}
		lines = append(lines, place+": "+e.Message+detail(e))
	}
	slices.Sort(lines)
	return errors.New(strings.Join(slices.Compact(lines), "\n"))
}

// detail adds the candidates that the type checker knows for a misspelt name.
func detail(e *ast.Error) string {
	wrong, ok := e.Details.(*ast.RefErrInvalidDetail)
	if !ok {
		return ""
	}
	have := strings.Trim(wrong.Ref[wrong.Pos].String(), `"`)
	var known []string
	for _, v := range wrong.OneOf {
		known = append(known, strings.Trim(v.String(), `"`))
	}
	if len(known) == 0 {
		return ""
	}
	return fmt.Sprintf(": there is no %q; %s", have, catalogue.DidYouMean(have, known))
}

// With are the rules with the data of a rule set, ready to be asked.
func (r *Rules) With(ctx context.Context, data map[string]any) (*Rules, error) {
	if len(r.rooms) == 0 {
		return r, nil
	}
	store := inmem.NewFromObjectWithOpts(data, inmem.OptRoundTripOnWrite(false), inmem.OptReturnASTValuesOnRead(true))
	q, err := rego.New(
		rego.Query(r.Query()), rego.Compiler(r.compiler), rego.Store(store), rego.StrictBuiltinErrors(true),
		rego.GenerateJSON(func(t *ast.Term, _ *rego.EvalContext) (any, error) { return t.Value, nil }),
	).PrepareForEval(ctx)
	if err != nil {
		return nil, err
	}
	ready := *r
	ready.query = q
	return &ready, nil
}

// Query asks for what the rules of each room find.
func (r *Rules) Query() string {
	parts := make([]string, len(r.rooms))
	for i, room := range r.rooms {
		parts[i] = room.name + " = " + room.path
	}
	return strings.Join(parts, "; ")
}

// Sources are the rules as opa's own tools read them, by file.
func (r *Rules) Sources() map[string]string {
	texts := map[string]string{}
	for name, m := range r.modules {
		texts[name] = m.String()
	}
	return texts
}
