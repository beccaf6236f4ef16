package ruleset

import (
	"fmt"
	"maps"
	"slices"
	"strconv"
	"strings"

	"sunclause/engine/catalogue"
	"sunclause/facts/book"
	"sunclause/schema"
)

// applyChanges applies what each layer changes in those below it. A change that
// names nothing there is refused, and so are two that name the same thing.
func (s *RuleSet) applyChanges(base *Shipped, layers []*layer) error {
	var problems schema.Problems
	below := map[string]bool{}
	for _, name := range base.names() {
		below[name] = true
	}
	for _, l := range slices.Backward(layers) {
		done := map[string]bool{}
		for _, c := range l.manifest.Changes {
			if p := s.change(changing{l, below}, c, done); p != nil {
				problems = append(problems, *p)
			}
		}
		below[l.name()] = true
	}
	if len(problems) > 0 {
		return problems
	}
	return nil
}

// changing is a layer that changes something, with the names of those below it.
type changing struct {
	*layer
	below map[string]bool
}

func (s *RuleSet) change(l changing, c changeFile, done map[string]bool) *schema.Problem {
	made := Change{Set: l.name(), Reason: c.Reason.Value, Date: c.Date.Value}
	what := target(c)
	switch {
	case what == "":
		return problem(l, c.At(), "a change names one of parameter, requirement and table", "name exactly one of the three")
	case done[what]:
		return problem(l, c.At(), "the set changes "+what+" twice", "keep one of the two changes")
	}
	done[what] = true
	switch {
	case c.Parameter.Stated():
		return s.changeParameter(l, c, made)
	case c.Requirement.Stated():
		return s.changeRequirement(l, c, made)
	}
	return s.changeTable(l, c, made)
}

// target names what a change is about; "" when it does not name exactly one thing.
func target(c changeFile) string {
	var named []string
	if c.Parameter.Stated() {
		named = append(named, "parameter "+c.Parameter.Value)
	}
	if c.Requirement.Stated() {
		named = append(named, "requirement "+c.Requirement.Value)
	}
	if c.Table.Stated() {
		named = append(named, fmt.Sprintf("table %s row %v", c.Table.Value, c.Row))
	}
	if len(named) != 1 {
		return ""
	}
	return named[0]
}

func problem(l changing, at, what, remedy string) *schema.Problem {
	p := l.source.ProblemAt(at, what, remedy)
	return &p
}

func (s *RuleSet) changeParameter(l changing, c changeFile, made Change) *schema.Problem {
	p, ok := s.Book.Parameters[c.Parameter.Value]
	if !ok || !l.below[p.Set] && p.Set != l.name() {
		return problem(l, c.Parameter.At(), fmt.Sprintf("the sets below have no parameter %q", c.Parameter.Value), catalogue.DidYouMean(c.Parameter.Value, s.parameterNames()))
	}
	number, word, isWord := numberOrWord(c.Value)
	switch {
	case p.Set == l.name():
		return problem(l, c.Parameter.At(), fmt.Sprintf("parameter %q is the set's own", p.Name), "change it where it is listed")
	case c.Value == nil:
		return problem(l, c.At(), "the change says no new value", "add value")
	case isWord != p.IsText:
		return problem(l, c.At()+"/value", fmt.Sprintf("parameter %q cannot take this kind of value", p.Name), "")
	}
	made.Parameter, made.From, made.To = p.Name, shown(p.Number, p.Text, p.IsText), shown(number, word, isWord)
	made.Loosens = s.loosens(l, p.Name, number-p.Number)
	p.Number, p.Text, p.Set = number, word, l.name()
	if c.Source.Stated() {
		p.Source = c.Source.source()
	}
	s.Book.Parameters[p.Name] = p
	s.record(l, made, func(r *Requirement) bool { return s.Uses(r, p.Name) })
	return nil
}

// loosens reports whether moving a parameter by so much lets a value pass that a
// shall would have stopped.
func (s *RuleSet) loosens(l changing, parameter string, by float64) bool {
	for _, r := range s.Requirements {
		if r.Level != Shall || !l.below[r.Set] && r.Set != l.name() {
			continue
		}
		for _, c := range r.Each() {
			if c.uses(parameter) && c.loosens(by) {
				return true
			}
		}
	}
	return false
}

// loosens reports whether a limit, or its factor, that is moved by so much lets
// more pass.
func (c Condition) loosens(by float64) bool {
	switch c.Comparison {
	case "at_most", "below":
		return by > 0
	case "at_least", "above":
		return by < 0
	}
	return false
}

// Uses reports whether a requirement looks at a parameter.
func (s *RuleSet) Uses(r *Requirement, parameter string) bool {
	return r.looksAt(parameter) || slices.Contains(s.reads(r).Parameters, parameter)
}

// usesTable reports whether a requirement looks a table up.
func (s *RuleSet) usesTable(r *Requirement, table string) bool {
	return slices.Contains(s.reads(r).Tables, table) || slices.ContainsFunc(r.Compared(), func(c Condition) bool { return c.looksUp(table) })
}

// record keeps a change with the set, and with each requirement of a set below
// that it touches.
func (s *RuleSet) record(l changing, made Change, touches func(*Requirement) bool) {
	s.Changes = append(s.Changes, made)
	for _, r := range s.Requirements {
		if l.below[r.Set] && touches(r) {
			r.Changes = append(r.Changes, made)
		}
	}
}

func shown(number float64, word string, isWord bool) string {
	if isWord {
		return word
	}
	return strconv.FormatFloat(number, 'f', -1, 64)
}

func (s *RuleSet) changeRequirement(l changing, c changeFile, made Change) *schema.Problem {
	r, ok := s.byID[c.Requirement.Value]
	switch {
	case !ok || !l.below[r.Set] && r.Set != l.name():
		return problem(l, c.Requirement.At(), fmt.Sprintf("the sets below have no requirement %q", c.Requirement.Value), s.NearestID(c.Requirement.Value))
	case r.Set == l.name():
		return problem(l, c.Requirement.At(), fmt.Sprintf("requirement %s is the set's own", r.ID), fmt.Sprintf("change it in %s on line %d", r.File, r.Line))
	}
	made.Requirement, made.From = r.ID, string(r.Level)
	switch {
	case c.Off.Yes():
		made.To, made.Loosens = "off", r.Level == Shall
		s.Off = append(s.Off, made)
		s.Changes = append(s.Changes, made)
		s.remove(r)
	case c.Level.Stated():
		made.To = c.Level.Value
		made.Loosens = r.Level == Shall && c.Level.Value == string(Should)
		r.Level = Level(c.Level.Value)
		s.record(l, made, func(q *Requirement) bool { return q == r })
	default:
		return problem(l, c.At(), "the change says neither level nor off", "add level: shall, level: should or off: true")
	}
	return nil
}

// NearestID is the remedy for an id that no requirement has.
func (s *RuleSet) NearestID(id string) string {
	if near := schema.Nearest(id, slices.Sorted(maps.Keys(s.byID))); near != "" {
		return fmt.Sprintf("did you mean %q?", near)
	}
	return "sunclause rules lists what there is"
}

func (s *RuleSet) remove(r *Requirement) {
	delete(s.byID, r.ID)
	s.Requirements = slices.DeleteFunc(s.Requirements, func(q *Requirement) bool { return q == r })
}

// changeTable changes cells of one row of a table.
func (s *RuleSet) changeTable(l changing, c changeFile, made Change) *schema.Problem {
	t, ok := s.Book.Tables[c.Table.Value]
	if !ok || !l.below[t.Set] {
		names := slices.Sorted(maps.Keys(s.Book.Tables))
		return problem(l, c.Table.At(), fmt.Sprintf("the sets below have no table %q", c.Table.Value), catalogue.DidYouMean(c.Table.Value, names))
	}
	if len(c.Row) == 0 || len(c.Cells) == 0 {
		return problem(l, c.At(), "a change of a table says by which cells the row is found, and which cells it is given", "add row and cells")
	}
	found := rowsWith(t, c.Row)
	if len(found) != 1 {
		return problem(l, c.At()+"/row", fmt.Sprintf("%d rows of table %s have these cells", len(found), t.Name), "name as many cells as pick out one row")
	}
	var from, to []string
	row := maps.Clone(t.Rows[found[0]])
	for _, name := range slices.Sorted(maps.Keys(c.Cells)) {
		if !slices.ContainsFunc(t.Columns, func(col book.Column) bool { return col.Name == name }) {
			return problem(l, c.At()+"/cells/"+name, fmt.Sprintf("table %s has no column %q", t.Name, name), "")
		}
		if kind := askingOf(t.Name); kind != nil && slices.Contains(kind.keys, name) {
			return problem(l, c.At()+"/cells/"+name, fmt.Sprintf("%s decides what the row asks for, and is not changed", name), "leave the row out by cells: {due: never}, and add another in a table of your own")
		}
		from = append(from, fmt.Sprintf("%s %v", name, row[name]))
		row[name] = cellOf(c.Cells[name])
		to = append(to, fmt.Sprintf("%s %v", name, row[name]))
	}
	changed := *t
	changed.Rows = slices.Clone(t.Rows)
	changed.Rows[found[0]] = row
	s.Book.Tables[t.Name] = &changed
	made.Table, made.From, made.To = t.Name, strings.Join(from, ", "), strings.Join(to, ", ")
	s.record(l, made, func(r *Requirement) bool { return s.usesTable(r, t.Name) })
	return nil
}

func cellOf(v any) any {
	if number, word, isWord := numberOrWord(v); !isWord {
		return number
	} else {
		return word
	}
}

// rowsWith lists the rows that have the cells.
func rowsWith(t *book.Table, cells map[string]any) []int {
	var found []int
	for i, row := range t.Rows {
		all := true
		for name, c := range cells {
			all = all && row[name] == cellOf(c)
		}
		if all {
			found = append(found, i)
		}
	}
	return found
}
