package ruleset

import (
	"fmt"
	"path"
	"regexp"
	"slices"
	"strings"

	"sunclause/schema"
)

// asker is a requirement that asks for labels, as far as an upgrade needs to know
// it: what it asks for, and where; anywhere when there are no places.
type asker struct {
	id      string
	legends []string
	places  []string
}

var (
	asksForLegend = regexp.MustCompile(`^legend (?:equals|one_of) (.+)$`)
	asksAtPlace   = regexp.MustCompile(`^place (?:equals|one_of) (.+)$`)
)

// askerOf is a row of a room as one that asks for labels; ok is false when it asks
// for something else.
func (u *upgrader) askerOf(row any) (a asker, ok bool) {
	members, _ := row.(map[string]any)
	a.id, _ = members["id"].(string)
	subject, _ := members["subject"].(string)
	old := oldCard{subject, false, members, u.parameters}
	n := newForm{}
	if old.isOld() {
		n, _ = old.upgraded()
	} else {
		n.compare, _ = members["require"].(string)
		when, _ := members["when"].([]any)
		for _, w := range when {
			line, _ := w.(string)
			n.when = append(n.when, line)
		}
	}
	if n.compare != "label_places.present" && (subject != "label_places" || n.compare != "present") {
		return a, false
	}
	for _, w := range n.when {
		if m := asksForLegend.FindStringSubmatch(w); m != nil {
			a.legends = strings.Fields(strings.ReplaceAll(m[1], "'", ""))
		}
		if m := asksAtPlace.FindStringSubmatch(w); m != nil {
			a.places = strings.Fields(strings.ReplaceAll(m[1], "'", ""))
		}
	}
	return a, len(a.legends) > 0
}

// askersOf are the requirements of a set that ask for labels.
func askersOf(s *RuleSet) []asker {
	var all []asker
	for _, q := range s.Requirements {
		if q.Subject != "label_places" || q.Fact != "present" {
			continue
		}
		a := asker{id: q.ID}
		for _, w := range q.When {
			words, isList := w.Limit.Value.([]string)
			if word, isWord := w.Limit.Value.(string); isWord {
				words, isList = []string{word}, true
			}
			switch {
			case isList && w.Fact == "legend":
				a.legends = words
			case isList && w.Fact == "place":
				a.places = words
			}
		}
		all = append(all, a)
	}
	return all
}

// table lets each row of a table of labels name the requirement that asks for it,
// which in older versions it did not.
func (u *upgrader) table(src *schema.Source) ([]edit, error) {
	name := strings.TrimSuffix(path.Base(src.Name), ".yaml")
	if kind := askingOf(name); kind == nil || kind.thing != "legend" {
		return nil, nil
	}
	root, _ := src.Root().(map[string]any)
	rows, _ := root["rows"].([]any)
	var edits []edit
	for i, r := range rows {
		row, _ := r.(map[string]any)
		legend, _ := row["legend"].(string)
		place, _ := row["place"].(string)
		if row[requirementColumn] != nil {
			continue
		}
		at := slices.IndexFunc(u.askers, func(a asker) bool {
			return slices.Contains(a.legends, legend) && (a.places == nil || slices.Contains(a.places, place))
		})
		where := fmt.Sprintf("/rows/%d", i)
		if at < 0 {
			return nil, schema.Problems{src.ProblemAt(where, fmt.Sprintf("it cannot be upgraded: no requirement asks for the label %s at %s", legend, place), "add one first, or take the row out")}
		}
		edits = append(edits, added(src, where, requirementColumn+": "+u.askers[at].id))
		u.rows++
	}
	if columns, _ := root["columns"].([]any); len(edits) > 0 && len(columns) > 0 && !slices.ContainsFunc(columns, isRequirementColumn) {
		edits = append(edits, addedColumn(src, len(columns)))
	}
	return edits, nil
}

func isRequirementColumn(column any) bool {
	c, _ := column.(map[string]any)
	return c["name"] == requirementColumn
}

// added adds a member to an object, after its last.
func added(src *schema.Source, at, member string) edit {
	raw, members := string(src.Raw), src.Members(at)
	last := members[len(members)-1].Offset
	if raw[src.Offset(at)] == '{' {
		end := closing(raw, last)
		end = last + len(strings.TrimRight(raw[last:end], " \n"))
		return edit{end, end, ", " + member}
	}
	b := cardText{src: src, at: at}.block(members, len(members)-1)
	return edit{b.to, b.to, b.indent + member + "\n"}
}

// addedColumn adds the column to a list of so many.
func addedColumn(src *schema.Source, columns int) edit {
	raw := string(src.Raw)
	first := src.Offset("/columns/0")
	last := src.Offset(fmt.Sprintf("/columns/%d", columns-1))
	if raw[src.Offset("/columns")] == '[' {
		end := closing(raw, last)
		end = last + len(strings.TrimRight(raw[last:end], " \n"))
		return edit{end, end, ", {name: " + requirementColumn + "}"}
	}
	begin := strings.LastIndexByte(raw[:first], '\n') + 1
	item := raw[begin:first] // what stands before an item: its place and sign
	if raw[last] == '{' {
		end := closing(raw, last+1)
		end += strings.IndexByte(raw[end:]+"\n", '\n') + 1
		return edit{end, end, item + "{name: " + requirementColumn + "}\n"}
	}
	at := fmt.Sprintf("/columns/%d", columns-1)
	members := src.Members(at)
	b := cardText{src: src, at: at}.block(members, len(members)-1)
	return edit{b.to, b.to, item + "name: " + requirementColumn + "\n"}
}
