package engine

import (
	"context"
	"encoding/json"
	"fmt"
	"io/fs"
	"math"
	"path"
	"reflect"
	"sort"

	"sunclause/facts"
	"sunclause/facts/working"
	"sunclause/schema"
)

// trialsFile mirrors a file of tests/.
type trialsFile struct {
	schema.Pointer
	Requirements []trialFile       `json:"requirements"`
	Figures      []figureTrialFile `json:"figures"`
}

// trialFile mirrors the cases that try one requirement.
type trialFile struct {
	schema.Pointer
	Requirement schema.Text     `json:"requirement"`
	Cases       []trialCaseFile `json:"cases"`
}

// trialCaseFile mirrors one case.
type trialCaseFile struct {
	schema.Pointer
	Says         schema.Text                 `json:"says"`
	Outcome      schema.Text                 `json:"outcome"`
	Facts        map[string]any              `json:"facts"`
	Installation map[string]any              `json:"installation"`
	Others       map[string][]map[string]any `json:"others"`
}

// figureTrialFile mirrors a test of the figures.
type figureTrialFile struct {
	schema.Pointer
	Says         schema.Text `json:"says"`
	Installation any         `json:"installation"`
	Gives        []givenFile `json:"gives"`
}

// givenFile mirrors a fact that must come out.
type givenFile struct {
	schema.Pointer
	Subject schema.Text   `json:"subject"`
	ID      schema.Text   `json:"id"`
	Fact    schema.Text   `json:"fact"`
	Value   any           `json:"value"`
	Within  schema.Number `json:"within"`
}

// Trial is one case that tries a requirement, or one test of the figures.
type Trial struct {
	Requirement string // empty for a test of the figures
	Says        string
	File        string
	Line        int
	Want        Outcome

	facts *facts.Facts
	doc   *schema.Document
	gives []givenFile
}

// Failure is a trial that did not go as it says.
type Failure struct {
	Trial Trial
	Got   string
}

// Error says where the trial stands, what it wants and what it got.
func (f Failure) Error() string {
	what := f.Trial.Says
	if what != "" {
		what = " (" + what + ")"
	}
	if f.Trial.Requirement == "" {
		return fmt.Sprintf("%s:%d: figures%s: %s", f.Trial.File, f.Trial.Line, what, f.Got)
	}
	return fmt.Sprintf("%s:%d: %s%s: wanted %s, got %s", f.Trial.File, f.Trial.Line, f.Trial.Requirement, what, f.Trial.Want, f.Got)
}

// ReadTrials reads the tests of a rule set from the tests folder in its own.
func (s *RuleSet) ReadTrials(fsys fs.FS, shown string) ([]Trial, error) {
	names, err := fs.Glob(fsys, "tests/*.yaml")
	if err != nil {
		return nil, err
	}
	sort.Strings(names)
	var all []Trial
	var problems schema.Problems
	for _, name := range names {
		raw, err := fs.ReadFile(fsys, name)
		if err != nil {
			return nil, err
		}
		var file trialsFile
		src, err := schema.ReadYAML(path.Join(shown, name), raw, schema.TrialSchema, &file)
		if err != nil {
			return nil, err
		}
		r := trialReader{set: s, src: src}
		r.requirements(file)
		r.figures(file)
		all = append(all, r.trials...)
		problems = append(problems, r.problems...)
	}
	if len(problems) > 0 {
		return nil, problems
	}
	return all, nil
}

type trialReader struct {
	set      *RuleSet
	src      *schema.Source
	trials   []Trial
	problems schema.Problems
}

func (r *trialReader) refuse(at, what, remedy string) {
	r.problems = append(r.problems, r.src.ProblemAt(at, what, remedy))
}

func (r *trialReader) requirements(file trialsFile) {
	for _, t := range file.Requirements {
		q, ok := r.set.byID[t.Requirement.Value]
		if !ok {
			r.refuse(t.Requirement.At(), fmt.Sprintf("the rule set has no requirement %q", t.Requirement.Value), nearestID(t.Requirement.Value, r.set.ids()))
			continue
		}
		for _, c := range t.Cases {
			r.trials = append(r.trials, Trial{
				Requirement: q.ID, Says: c.Says.Value, Want: Outcome(c.Outcome.Value),
				File: r.src.Name, Line: r.src.Position(c.At()).Line, facts: r.factsOf(q, c),
			})
		}
	}
}

func (s *RuleSet) ids() []string {
	ids := make([]string, 0, len(s.byID))
	for id := range s.byID {
		ids = append(ids, id)
	}
	return ids
}

// tried is the id of the subject that a case is about.
const tried = "tried"

// factsOf makes the facts that a case puts in: one subject, and what else it
// names. Lists that it does not name are stated and empty.
func (r *trialReader) factsOf(q *Requirement, c trialCaseFile) *facts.Facts {
	f := &facts.Facts{}
	v := reflect.ValueOf(f).Elem()
	for _, k := range subjectKinds {
		if k.list {
			v.Field(k.field).Set(reflect.MakeSlice(v.Field(k.field).Type(), 0, 1))
		}
	}
	r.putWhole(v, c.Installation, c.Pointer.Member("installation"))
	if q.Subject == wholeInstallation {
		r.putWhole(v, c.Facts, c.Pointer.Member("facts"))
	} else {
		r.putPart(v, subjectKinds[q.Subject], tried, c.Facts, c.Pointer.Member("facts"))
	}
	for name, parts := range c.Others {
		k, ok := subjectKinds[name]
		at := c.Pointer.Member("others") + "/" + name
		if !ok || !k.list {
			r.refuse(at, fmt.Sprintf("there is no list of facts called %q", name), orElse(name, subjectNames()))
			continue
		}
		for i, part := range parts {
			id, _ := part["id"].(string)
			r.putPart(v, k, id, part, fmt.Sprintf("%s/%d", at, i))
		}
	}
	return f
}

func (r *trialReader) putWhole(all reflect.Value, given map[string]any, at string) {
	k := subjectKinds[wholeInstallation]
	whole := all.Field(k.field)
	whole.FieldByName("Subject").Set(reflect.ValueOf(working.Subject{ID: wholeInstallation, Name: "the installation"}))
	r.put(whole, k, given, at)
}

func (r *trialReader) putPart(all reflect.Value, k subjectKind, id string, given map[string]any, at string) {
	list := all.Field(k.field)
	part := reflect.New(list.Type().Elem()).Elem()
	part.FieldByName("Subject").Set(reflect.ValueOf(working.Subject{ID: id, Name: id}))
	r.put(part, k, given, at)
	list.Set(reflect.Append(list, part))
}

// put sets the facts that a case gives; all others stay unknown.
func (r *trialReader) put(part reflect.Value, k subjectKind, given map[string]any, at string) {
	for name, v := range given {
		f, ok := k.byName[name]
		if !ok {
			if name != "id" {
				r.refuse(at+"/"+name, fmt.Sprintf("%s have no fact called %q", k.name, name), orElse(name, k.names()))
			}
			continue
		}
		w, ok := workingOf(f, v)
		if !ok {
			r.refuse(at+"/"+name, fmt.Sprintf("%s is a %s", name, f.kind), "")
			continue
		}
		part.FieldByIndex(f.index).Set(reflect.ValueOf(w))
	}
}

// workingOf turns a plain value into a fact of a kind.
func workingOf(f factField, v any) (any, bool) {
	switch v := plainValue(v).(type) {
	case float64:
		return working.Figure(f.name, "", v, "a test", working.ByDefinition), f.kind == aNumber
	case string:
		return working.KnownText(v, ""), f.kind == aText
	case bool:
		return working.KnownFlag(v, ""), f.kind == aFlag
	case []string:
		return working.List(v...), f.kind == aList
	}
	return nil, false
}

func (r *trialReader) figures(file trialsFile) {
	for _, t := range file.Figures {
		raw, err := json.Marshal(t.Installation)
		if err != nil {
			r.refuse(t.At(), err.Error(), "")
			continue
		}
		line := r.src.Position(t.At()).Line
		doc, err := schema.Decode(fmt.Sprintf("%s:%d: installation", r.src.Name, line), raw)
		if err != nil {
			r.refuse(t.Pointer.Member("installation"), "the installation cannot be read: "+err.Error(), "")
			continue
		}
		r.trials = append(r.trials, Trial{Says: t.Says.Value, File: r.src.Name, Line: line, doc: doc, gives: t.Gives})
	}
}

// RunTrials runs trials and returns those that did not go as they say.
func (s *RuleSet) RunTrials(ctx context.Context, trials []Trial) ([]Failure, error) {
	var failures []Failure
	for _, t := range trials {
		got, err := s.run(ctx, t)
		if err != nil {
			return nil, err
		}
		if got != "" {
			failures = append(failures, Failure{t, got})
		}
	}
	return failures, nil
}

// run runs one trial; "" when it went as it says.
func (s *RuleSet) run(ctx context.Context, t Trial) (string, error) {
	if t.doc != nil {
		return s.runFigures(t), nil
	}
	got, err := s.outcome(ctx, t)
	if err != nil || got == t.Want {
		return "", err
	}
	return string(got), nil
}

// outcome is what a requirement states of the subject that a trial puts in.
func (s *RuleSet) outcome(ctx context.Context, t Trial) (Outcome, error) {
	found, err := s.ask(ctx, t.facts)
	if err != nil {
		return "", err
	}
	r := &Result{RuleSet: s, Facts: t.facts, Document: &schema.Document{Source: schema.Placed(t.File, t.Line)}}
	for _, j := range r.judge(s.byID[t.Requirement], found) {
		if j.Subject.ID == tried || j.Requirement.Subject == wholeInstallation {
			return j.Outcome, nil
		}
	}
	return "", fmt.Errorf("%s:%d: the subject was not judged", t.File, t.Line)
}

func (s *RuleSet) runFigures(t Trial) string {
	f := facts.Derive(&t.doc.Installation, s.Book)
	for _, g := range t.gives {
		got, ok := factNamed(f, g)
		switch want := plainValue(g.Value).(type) {
		case float64:
			v, isNumber := got.(float64)
			if ok && isNumber && math.Abs(v-want) <= g.Within.Value+1e-9*math.Abs(want) {
				continue
			}
		default:
			if ok && got == want {
				continue
			}
		}
		return fmt.Sprintf("%s of %s is %v, wanted %v", g.Fact.Value, g.ID.Value, got, plainValue(g.Value))
	}
	return ""
}

func factNamed(f *facts.Facts, g givenFile) (any, bool) {
	k, ok := subjectKinds[g.Subject.Value]
	if !ok {
		return nil, false
	}
	field, ok := k.byName[g.Fact.Value]
	if !ok {
		return nil, false
	}
	subjects, _ := subjectsOf(f, k)
	for _, v := range subjects {
		if subjectOf(v).ID == g.ID.Value {
			got := valueOf(v, field).plain
			return got, got != nil
		}
	}
	return nil, false
}
