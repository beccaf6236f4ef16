package engine

import (
	"context"
	"errors"
	"fmt"
	"slices"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/rego"
	"github.com/open-policy-agent/opa/v1/storage/inmem"

	"sunclause/schema"
)

// compile parses and compiles the Rego rules of all layers, reads their cards,
// applies the changes, and prepares the one query that judges an installation.
func (s *RuleSet) compile(ctx context.Context, layers []*layer, library []moduleText) error {
	modules := map[string]*ast.Module{}
	for _, m := range library {
		if err := parseInto(modules, m, "lib."+strings.TrimSuffix(baseName(m.name), ".rego")); err != nil {
			return err
		}
	}
	for _, l := range slices.Backward(layers) {
		for _, m := range l.modules {
			if err := l.parse(modules, m); err != nil {
				return err
			}
			if err := s.addCards(l, m.room, modules[m.name]); err != nil {
				return err
			}
		}
	}
	compiler, err := compileModules(modules)
	if err != nil {
		return err
	}
	s.compiler, s.modules = compiler, modules
	if err := s.readRules(); err != nil {
		return err
	}
	if err := s.applyChanges(layers); err != nil {
		return err
	}
	return s.prepare(ctx, layers)
}

// compileModules compiles modules strictly, with the facts as the type of the
// input and nothing but the allowed builtins.
func compileModules(modules map[string]*ast.Module) (*ast.Compiler, error) {
	c := ast.NewCompiler().WithCapabilities(capabilities()).WithSchemas(inputTypes()).
		WithStrict(true).WithDefaultRegoVersion(ast.RegoV2)
	if c.Compile(modules); c.Failed() {
		return nil, compileErrors(c.Errors)
	}
	return c, nil
}

func baseName(name string) string { return name[strings.LastIndexByte(name, '/')+1:] }

// parse parses one module of a layer. Only a module of ours may be of any size.
func (l *layer) parse(modules map[string]*ast.Module, m moduleText) error {
	if !l.embedded {
		if err := m.checkSize(); err != nil {
			return err
		}
	}
	if err := parseInto(modules, m, l.namespace()+"."+m.room); err != nil || l.embedded {
		return err
	}
	return checkBounds(modules[m.name])
}

// parseInto parses one module and holds its package to its place.
func parseInto(modules map[string]*ast.Module, m moduleText, pkg string) error {
	parsed, err := ast.ParseModuleWithOpts(m.name, m.text, ast.ParserOptions{
		ProcessAnnotation: true, RegoVersion: ast.RegoV2, Capabilities: capabilities(),
	})
	var problems ast.Errors
	if errors.As(err, &problems) {
		return compileErrors(problems)
	} else if err != nil {
		return fmt.Errorf("%s: %w", m.name, err)
	}
	if got := strings.TrimPrefix(parsed.Package.Path.String(), "data."); got != pkg {
		return fmt.Errorf("%s:%d: the package is %s; it must be %s, after the name of the set and of the file", m.name, parsed.Package.Location.Row, got, pkg)
	}
	modules[m.name] = parsed
	return nil
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
	return fmt.Sprintf(": there is no %q; %s", have, orElse(have, known))
}

// addCards takes the card of every rule called findings.
func (s *RuleSet) addCards(l *layer, room string, m *ast.Module) error {
	for _, rule := range m.Rules {
		if !finds(rule) {
			continue
		}
		card, line, err := cardOf(rule)
		if err != nil {
			return err
		}
		if card == nil {
			return fmt.Errorf("%s:%d: this rule has no card; write a METADATA block over it with custom: id, level, subject and source", rule.Location.File, rule.Location.Row)
		}
		src := schema.Placed(rule.Location.File, line)
		if problems := s.addRequirement(l, room, src, *card, true); len(problems) > 0 {
			return problems
		}
	}
	return nil
}

// cardOf reads the METADATA block over a rule; nil when there is none.
func cardOf(rule *ast.Rule) (*cardFile, int, error) {
	for _, a := range rule.Annotations {
		if a.Scope != "rule" {
			continue
		}
		card := &cardFile{}
		line := a.Location.Row
		if a.Title == "" {
			return nil, line, fmt.Errorf("%s:%d: the card has no title; say in one line what is required", rule.Location.File, line)
		}
		if err := schema.ReadCard(rule.Location.File, line, a.Custom, card); err != nil {
			return nil, line, err
		}
		card.Title = schema.NewText("/title", a.Title)
		return card, line, nil
	}
	return nil, 0, nil
}

// readRules works out, from the compiled rules, which facts each looks at.
func (s *RuleSet) readRules() error {
	for _, m := range s.compiler.Modules {
		for _, rule := range m.Rules {
			if !finds(rule) || len(rule.Annotations) == 0 {
				continue
			}
			id, _ := rule.Annotations[0].Custom["id"].(string)
			r := s.byID[id]
			read, err := readsOf(s.compiler, rule, r.Subject)
			if err != nil {
				return err
			}
			if read.ID != id {
				return fmt.Errorf("%s:%d: the finding is called %q and its card %q; the two must be the same", rule.Location.File, rule.Location.Row, read.ID, id)
			}
			if err := s.known(rule, read); err != nil {
				return err
			}
			r.reads = read
		}
	}
	return nil
}

// known refuses a rule that reads a parameter or table that the set has not.
func (s *RuleSet) known(rule *ast.Rule, read reads) error {
	for _, p := range read.Parameters {
		if _, ok := s.Book.Parameters[p]; !ok {
			return fmt.Errorf("%s:%d: the rule set has no parameter %q; %s", rule.Location.File, rule.Location.Row, p, orElse(p, s.parameterNames()))
		}
	}
	for _, t := range read.Tables {
		if _, ok := s.Book.Tables[t]; !ok {
			return fmt.Errorf("%s:%d: the rule set has no table %q", rule.Location.File, rule.Location.Row, t)
		}
	}
	return nil
}

// roomQuery is a module whose Rego rules are asked.
type roomQuery struct{ name, path string }

// prepare makes the one query: the comparisons that are broken, and what the
// Rego rules of each room find.
func (s *RuleSet) prepare(ctx context.Context, layers []*layer) error {
	for _, l := range layers {
		for _, m := range l.modules {
			if hasFindings(s.modules[m.name]) {
				s.rooms = append(s.rooms, roomQuery{l.namespace() + "__" + m.room, "data." + l.namespace() + "." + m.room + ".findings"})
			}
		}
	}
	return s.prepareQuery(ctx)
}

// question is the one query.
func (s *RuleSet) question() string {
	parts := []string{"broken = data.lib.limit.broken"}
	for _, r := range s.rooms {
		parts = append(parts, r.name+" = "+r.path)
	}
	return strings.Join(parts, "; ")
}

func (s *RuleSet) prepareQuery(ctx context.Context) error {
	store := inmem.NewFromObjectWithOpts(s.data(), inmem.OptRoundTripOnWrite(false), inmem.OptReturnASTValuesOnRead(true))
	q, err := rego.New(
		rego.Query(s.question()), rego.Compiler(s.compiler), rego.Store(store), rego.StrictBuiltinErrors(true),
		rego.GenerateJSON(func(t *ast.Term, _ *rego.EvalContext) (any, error) { return t.Value, nil }),
	).PrepareForEval(ctx)
	if err != nil {
		return fmt.Errorf("rule set %s: %w", s.Name, err)
	}
	s.query = q
	return nil
}

func hasFindings(m *ast.Module) bool {
	return m != nil && slices.ContainsFunc(m.Rules, finds)
}

// finds tells whether a rule is one that hands out findings, and not a helper.
func finds(rule *ast.Rule) bool { return rule.Head.Ref()[0].String() == "findings" }
