package ruleset

import (
	"fmt"
	"maps"
	"slices"
	"strings"

	"sunclause/engine/catalogue"
	"sunclause/schema"
)

// asking is a kind of table whose rows each ask for a thing, and name the
// requirement that asks, which stands in the same file: what is due and how binding
// it is are one edit, and neither is there without the other. Such are the tables
// labels and papers, and any whose name begins with labels_ or papers_.
type asking struct {
	prefix  string
	room    string
	subject string
	stage   string
	thing   string   // column that says what is asked for
	keys    []string // columns that decide what is asked for where; a set above cannot change them
	// asks is what a requirement compares that is named by rows: its conditions, and
	// what it requires.
	asks func(rows []map[string]any) (when []any, require string)
}

var askings = []asking{
	{prefix: "labels", room: "label", subject: "label_places", stage: "as_built", thing: "legend", keys: []string{"legend", "place", requirementColumn}, asks: labelAsked},
	{prefix: "papers", room: "handover", subject: catalogue.Whole, stage: "as_built", thing: "paper", keys: []string{"paper", "held", requirementColumn}, asks: paperAsked},
}

// requirementColumn names the requirement of a row.
const requirementColumn = "requirement"

// labelAsked asks for the label at each place where it is due.
func labelAsked(rows []map[string]any) (when []any, require string) {
	var legends []string
	for _, row := range rows {
		if l := quotedCell(row, "legend"); !slices.Contains(legends, l) {
			legends = append(legends, l)
		}
	}
	if len(legends) > 1 {
		return []any{"legend one_of " + strings.Join(legends, " ")}, "present"
	}
	return []any{"legend equals " + legends[0]}, "present"
}

// paperAsked asks for a paper: given to the customer, or, where it is held so, filed.
func paperAsked(rows []map[string]any) (when []any, require string) {
	if rows[0]["held"] == "filed" {
		return nil, "papers includes " + quotedCell(rows[0], "paper")
	}
	return nil, "papers_given includes " + quotedCell(rows[0], "paper")
}

// quotedCell is a cell as a word of a line that is no name of anything.
func quotedCell(row map[string]any, column string) string {
	word, _ := row[column].(string)
	return inQuotes(word)
}

// quotable reports whether a word can stand in quotes in a line.
func quotable(cell any) bool {
	word, _ := cell.(string)
	return !strings.Contains(word, "'") || !strings.Contains(word, `"`)
}

// askingOf is the kind of an asking table; nil for any other.
func askingOf(table string) *asking {
	for i, a := range askings {
		if table == a.prefix || strings.HasPrefix(table, a.prefix+"_") {
			return &askings[i]
		}
	}
	return nil
}

// naming lists the rows of a table that name a requirement.
func (t tableOf) naming(id string) []map[string]any {
	var all []map[string]any
	for _, row := range t.file.Rows {
		if row[requirementColumn] == id {
			all = append(all, row)
		}
	}
	return all
}

// addAsked makes the requirements that stand in a table.
func (s *RuleSet) addAsked(l *layer, t tableOf) (problems schema.Problems) {
	kind := askingOf(t.name)
	for _, a := range t.file.Requirements {
		rows := t.naming(a.ID.Value)
		switch {
		case kind == nil:
			return schema.Problems{t.source.ProblemAt("/requirements", fmt.Sprintf("table %s asks for nothing and carries no requirements", t.name), "labels and papers do, and tables whose names begin with labels_ and papers_")}
		case slices.ContainsFunc(a.When, saysPlace):
			problems = append(problems, t.source.ProblemAt(a.At()+"/when", "the requirement says at which places it applies, which the rows do", "leave it out, and let the rows for those places alone name the requirement"))
		case slices.ContainsFunc(rows, func(row map[string]any) bool { return !quotable(row[kind.thing]) }):
			problems = append(problems, t.source.ProblemAt(a.ID.At(), "what a row that names it asks for has both kinds of quotation marks in it", "leave one kind out"))
		case len(rows) == 0:
			problems = append(problems, t.source.ProblemAt(a.ID.At(), fmt.Sprintf("no row asks for what requirement %s is about", a.ID.Value), "name it in the column requirement of a row"))
		default:
			problems = append(problems, s.addRequirement(l, kind.room, t.source, kind.card(a, rows), writtenIn{table: t.name})...)
		}
	}
	return problems
}

func saysPlace(when any) bool {
	line, _ := when.(string)
	return strings.HasPrefix(line, "place ")
}

// card is a requirement of a table as a limit row.
func (k *asking) card(a askedFile, rows []map[string]any) cardFile {
	when, require := k.asks(rows)
	c := cardFile{
		Pointer: a.Pointer, ID: a.ID, Title: a.Title, Level: a.Level, Subject: schema.NewText(a.At(), k.subject),
		When: append(when, a.When...), Since: a.Since, Until: a.Until, Require: require, Remedy: a.Remedy, Source: a.Source,
	}
	if k.stage != "" {
		c.Stage = schema.NewText(a.At(), k.stage)
	}
	return c
}

// checkAsked holds every row that asks for something to name a requirement that
// asks for it.
func (s *RuleSet) checkAsked(layers []*layer) (problems schema.Problems) {
	for _, l := range layers {
		for _, t := range l.tables {
			kind := askingOf(t.name)
			if kind == nil {
				continue
			}
			for i, row := range t.file.Rows {
				if what, remedy := s.checkRow(kind, row); what != "" {
					problems = append(problems, t.source.ProblemAt(fmt.Sprintf("/rows/%d/%s", i, requirementColumn), what, remedy))
				}
			}
		}
	}
	return problems
}

func (s *RuleSet) checkRow(kind *asking, row map[string]any) (what, remedy string) {
	id, _ := row[requirementColumn].(string)
	thing, _ := row[kind.thing].(string)
	q, ok := s.byID[id]
	switch {
	case id == "":
		return fmt.Sprintf("the row asks for %s and names no requirement", thing), "name one in the column requirement: one that stands under requirements of the table, or that asks for it elsewhere; sunclause ruleset upgrade FOLDER does it for sets of older versions"
	case !ok:
		return fmt.Sprintf("the rule set has no requirement %q", id), s.NearestID(id)
	case q.Subject != kind.subject || !slices.ContainsFunc(q.Compared(), func(c Condition) bool { return c.names(thing) }):
		return fmt.Sprintf("requirement %s does not ask for %s", id, thing), "name one that does"
	}
	return "", ""
}

// names reports whether a condition is about a word.
func (c Condition) names(word string) bool {
	switch v := c.Limit.Value.(type) {
	case string:
		return v == word
	case []string:
		return slices.Contains(v, word)
	}
	return false
}

// keepPlaces narrows the requirements of label tables to the places that rows name
// for them, where another asks for the same legend elsewhere. A set adds rows to
// those of the sets below, so that the places of a requirement are found anew.
func (s *RuleSet) keepPlaces() {
	naming, places := map[string][]string{}, map[string][]string{} // requirements by legend, places by requirement
	for _, name := range slices.Sorted(maps.Keys(s.Book.Tables)) {
		if kind := askingOf(name); kind == nil || kind.thing != "legend" {
			continue
		}
		for _, row := range s.Book.Tables[name].Rows {
			id, _ := row[requirementColumn].(string)
			legend, _ := row["legend"].(string)
			place, _ := row["place"].(string)
			if !slices.Contains(naming[legend], id) {
				naming[legend] = append(naming[legend], id)
			}
			if !slices.Contains(places[id], place) {
				places[id] = append(places[id], place)
			}
		}
	}
	for _, ids := range naming {
		for _, id := range ids {
			if q := s.byID[id]; q != nil && q.Table != "" && len(ids) > 1 {
				q.When = append(slices.DeleteFunc(slices.Clone(q.When), isPlaces), Condition{Fact: "place", Comparison: "one_of", Limit: Operand{Value: places[id]}})
			}
		}
	}
}

// isPlaces reports whether a condition is about places, which in a requirement of a
// table only the rows say.
func isPlaces(c Condition) bool { return c.Fact == "place" }
