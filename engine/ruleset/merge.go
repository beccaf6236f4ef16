package ruleset

import (
	"encoding/json"
	"fmt"
	"maps"
	"slices"
	"sort"
	"strconv"
	"strings"

	"sunclause/facts/book"
	"sunclause/schema"
)

// merge puts the layers together, from the lowest up: parameters and tables
// first, then the limit rows, then the changes that each layer makes.
func (s *RuleSet) merge(layers []*layer) error {
	var problems schema.Problems
	for _, l := range slices.Backward(layers) {
		problems = append(problems, s.mergeFigures(l)...)
		for _, t := range l.tables {
			problems = append(problems, s.addAsked(l, t)...)
		}
		for _, r := range l.rows {
			for _, row := range r.file.Requirements {
				problems = append(problems, s.addRequirement(l, r.room, r.source, row, writtenIn{})...)
			}
		}
	}
	if len(problems) == 0 {
		problems = s.checkAsked(layers)
	}
	if len(problems) > 0 {
		return problems
	}
	s.keepPlaces()
	return nil
}

// mergeFigures takes the parameters and tables of a layer. A name that a lower
// layer has is refused: to change a figure of another set is a change, with a
// reason.
func (s *RuleSet) mergeFigures(l *layer) (problems schema.Problems) {
	problems = s.addParameters(l, l.source, l.manifest.Parameters)
	for _, r := range l.rows {
		problems = append(problems, s.addParameters(l, r.source, r.file.Parameters)...)
	}
	for _, t := range l.tables {
		table, more := tableFrom(t, l.name())
		problems = append(problems, more...)
		problems = append(problems, s.replaceTable(l, t)...)
		s.Book.Tables[t.name] = table
	}
	return problems
}

// addParameters takes the parameters of the manifest or of one room.
func (s *RuleSet) addParameters(l *layer, src *schema.Source, parameters map[string]parameterFile) (problems schema.Problems) {
	for _, name := range slices.Sorted(maps.Keys(parameters)) {
		p := parameters[name]
		if known, twice := s.Book.Parameters[name]; twice {
			remedy := "to change its value, list it under changes with a reason"
			if known.Listed == l.name() {
				remedy = "keep one of the two"
			}
			problems = append(problems, src.ProblemAtName(p.At(), fmt.Sprintf("parameter %q is already in set %s", name, known.Listed), remedy))
			continue
		}
		b := parameter(name, p, l.name())
		if said := schema.UnitOf(name); p.Unit.Stated() && said != "" && said != b.Unit {
			problems = append(problems, src.ProblemAt(p.Unit.At(), fmt.Sprintf("parameter %q is in %q, and its name says %s", name, b.Unit, said), "leave unit out, or call it by what it is in"))
		}
		s.Book.Parameters[name] = b
	}
	return problems
}

// parameter takes a figure or word. A number whose name says its unit needs none
// beside it.
func parameter(name string, p parameterFile, set string) book.Parameter {
	b := book.Parameter{Name: name, Title: p.Title.Value, Unit: p.Unit.Value, Source: p.Source.source(), Set: set, Listed: set}
	b.Number, b.Text, b.IsText = numberOrWord(p.Value)
	if !p.Unit.Stated() && !b.IsText {
		b.Unit = schema.UnitOf(name)
	}
	return b
}

func numberOrWord(v any) (number float64, word string, isWord bool) {
	if n, ok := v.(json.Number); ok {
		f, _ := n.Float64()
		return f, "", false
	}
	word, _ = v.(string)
	return 0, word, true
}

// replaceTable holds a table to what it says of the one of its name below: to
// stand in its place unseen is refused, and so is replacing what is not there.
func (s *RuleSet) replaceTable(l *layer, t tableOf) schema.Problems {
	below, twice := s.Book.Tables[t.name]
	says := t.file.Replaces
	switch {
	case twice && !says.Stated():
		return schema.Problems{t.source.ProblemAt("", fmt.Sprintf("table %s is already in set %s", t.name, below.Set), "to stand in its place, say replaces with a reason and a date")}
	case !twice && says.Stated():
		return schema.Problems{t.source.ProblemAt("/replaces", fmt.Sprintf("the sets below have no table %s to replace", t.name), "")}
	case twice && askingOf(t.name) != nil:
		return schema.Problems{t.source.ProblemAt("/replaces", fmt.Sprintf("table %s carries requirements and is not replaced", t.name),
			"leave single rows out by a change with cells: {due: never}, and add others in a table whose name begins with "+askingOf(t.name).prefix+"_")}
	case twice:
		s.Changes = append(s.Changes, Change{Set: l.name(), Table: t.name, From: below.Title, To: t.file.Title.Value, Reason: says.Reason.Value, Date: says.Date.Value})
	}
	return nil
}

func tableFrom(t tableOf, set string) (*book.Table, schema.Problems) {
	var problems schema.Problems
	b := &book.Table{Name: t.name, Title: t.file.Title.Value, Source: t.file.Source.source(), Set: set}
	known := map[string]bool{}
	for _, c := range t.file.Columns {
		b.Columns = append(b.Columns, book.Column{Name: c.Name.Value, Unit: c.Unit.Value})
		known[c.Name.Value] = true
	}
	for i, row := range t.file.Rows {
		cells := map[string]any{}
		for name, cell := range row {
			if !known[name] {
				at := "/rows/" + strconv.Itoa(i) + "/" + name
				problems = append(problems, t.source.ProblemAt(at, fmt.Sprintf("the table has no column %q", name), "list it under columns"))
			}
			number, word, isWord := numberOrWord(cell)
			if cells[name] = any(number); isWord {
				cells[name] = word
			}
		}
		b.Rows = append(b.Rows, cells)
	}
	return b, problems
}

// writtenIn says of what kind of writing a requirement is made, where it is no row
// of a room.
type writtenIn struct {
	rule  bool   // a Rego rule
	table string // one that asks for things
}

// addRequirement takes a limit row or the card of a Rego rule, and holds it to
// the facts and parameters there are.
func (s *RuleSet) addRequirement(l *layer, room string, src *schema.Source, c cardFile, of writtenIn) schema.Problems {
	r := &Requirement{
		ID: c.ID.Value, Title: c.Title.Value, Room: room, Level: levelOf(c.Level),
		Broken: c.Broken.Value, Remedy: c.Remedy.Value, Source: c.Source.source(),
		Rego: of.rule, Table: of.table, Set: l.name(), File: src.Name, Line: src.Position(c.At()).Line,
	}
	p := cardProblems{s, src, nil}
	if known, twice := s.byID[r.ID]; twice {
		p.add(c.ID.At(), fmt.Sprintf("requirement %s is already in %s on line %d", r.ID, known.File, known.Line), "give it an id of its own; to change one of another set, list it under changes")
	}
	if prefix := l.name() + "/"; !strings.HasPrefix(r.ID, prefix) {
		p.add(c.ID.At(), fmt.Sprintf("requirement %s does not begin with the name of its set", r.ID), "call it "+prefix+r.ID[strings.IndexByte(r.ID, '/')+1:])
	}
	p.check(c, r)
	if len(p.found) == 0 {
		of := [2]string{r.Set, r.Room}
		r.Place = s.written[of]
		s.written[of]++
		s.byID[r.ID] = r
		s.Requirements = append(s.Requirements, r)
	}
	return p.found
}

// Plain is a value of a rule set's file as float64, string, bool or []string.
func Plain(v any) any {
	switch v := v.(type) {
	case json.Number:
		f, _ := v.Float64()
		return f
	case []any:
		words := make([]string, 0, len(v))
		for _, e := range v {
			if w, ok := e.(string); ok {
				words = append(words, w)
			}
		}
		return words
	}
	return v
}

// parameterNames lists the parameters of the set, in order.
func (s *RuleSet) parameterNames() []string {
	var names []string
	for n := range s.Book.Parameters {
		names = append(names, n)
	}
	sort.Strings(names)
	return names
}
