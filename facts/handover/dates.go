package handover

import (
	"cmp"
	"fmt"
	"math"
	"strings"

	"sunclause/facts/book"
	"sunclause/facts/working"
	"sunclause/schema"
)

// Order holds how the dates of one row of the table of dates stand to each other: of
// all pairs that the row names, the one that is furthest out.
type Order struct {
	working.Subject

	Ordered    working.Flag   `json:"dates_ordered" words:"whether what the dates mean leaves them one order only"`
	OutDays    working.Number `json:"days_out_of_order" words:"days by which two dates are outside the only order they can have, in the pair that is furthest out"`
	BeyondDays working.Number `json:"days_beyond_usual" words:"days by which two dates are nearer or further apart than is usual, in the pair that is furthest out"`
}

// orders derives the order of dates by the table of dates. A row names the earlier and
// the later date, each by the path of a member (schema.Places) or by the date itself;
// the days that there are at least and at most from one to the other, by what they mean
// and by what is usual; and the paths of dates that are due once the job is built.
func orders(in *schema.Installation, b book.Book) []Order {
	t := b.Tables["dates"]
	if t == nil {
		return []Order{}
	}
	c := calendar{in: in, found: map[string][]schema.Place{}}
	all := make([]Order, len(t.Rows))
	for i, row := range t.Rows {
		all[i] = c.order(row, t.Source)
	}
	return all
}

// calendar finds the dates of a document.
type calendar struct {
	in    *schema.Installation
	found map[string][]schema.Place // by path
}

func (c *calendar) order(row map[string]any, source working.Source) Order {
	word := func(column string) string { s, _ := row[column].(string); return s }
	pairs := c.pairs(word("earlier"), word("later"))
	meant, usual := spanOf(row, "least_d", "most_d"), spanOf(row, "usual_least_d", "usual_most_d")
	o := Order{
		Subject:    working.Subject{ID: word("order"), At: "/handover", Name: word("title")},
		Ordered:    working.KnownFlag(meant.bounded(), ""),
		OutDays:    furthest(pairs, meant, c.due(word("due")), source),
		BeyondDays: furthest(pairs, usual, nil, source),
	}
	for _, days := range []working.Number{o.BeyondDays, o.OutDays} {
		if dates := days.Inputs(); len(dates) == 2 && days.Value() > 0 {
			o.At = cmp.Or(dates[1].At(), dates[0].At())
			o.Name = word("title") + ": " + dates[0].Symbol() + ", but " + dates[1].Symbol()
		}
	}
	return o
}

// span is from how many days to how many.
type span struct{ least, most float64 }

// spanOf is the span that a row names; without bound where it names none.
func spanOf(row map[string]any, least, most string) span {
	s := span{math.Inf(-1), math.Inf(1)}
	if v, ok := row[least].(float64); ok {
		s.least = v
	}
	if v, ok := row[most].(float64); ok {
		s.most = v
	}
	return s
}

func (s span) bounded() bool { return !math.IsInf(s.least, 0) || !math.IsInf(s.most, 0) }

// outside is by how many days some are too few or too many.
func (s span) outside(days float64) float64 { return max(s.least-days, days-s.most, 0) }

func (s span) String() string {
	switch {
	case !s.bounded():
		return "whatever number there may be"
	case math.IsInf(s.most, 0):
		return fmt.Sprintf("%v or more", s.least)
	case math.IsInf(s.least, 0):
		return fmt.Sprintf("%v or fewer", s.most)
	}
	return fmt.Sprintf("%v to %v", s.least, s.most)
}

// pair is two dates of which one has its place before the other.
type pair struct{ earlier, later schema.Text }

// pairs are those of two paths. Two members of one part are held to each other in
// that part; of other dates each is held to each.
func (c *calendar) pairs(earlier, later string) []pair {
	var all []pair
	together := parent(earlier) == parent(later)
	for _, l := range c.dates(later) {
		for _, e := range c.dates(earlier) {
			if !together || e.Part.At() == l.Part.At() {
				all = append(all, pair{e.Text, l.Text})
			}
		}
	}
	return all
}

// due are those dates of some paths that are due and not stated.
func (c *calendar) due(paths string) []working.Gap {
	var missing []working.Gap
	if c.in.Project.Stage.Is("design") {
		return nil
	}
	for _, path := range strings.Fields(paths) {
		for _, d := range c.dates(path) {
			if !d.Stated() {
				missing = append(missing, working.Unstated(d.At()))
			}
		}
	}
	return missing
}

// parent is a path without its last member.
func parent(path string) string { return path[:max(strings.LastIndexByte(path, '/'), 0)] }

// dates are those to which a path leads, or the date that stands in its place.
func (c *calendar) dates(path string) []schema.Place {
	all, ok := c.found[path]
	switch {
	case ok:
	case strings.HasPrefix(path, "/"):
		all = schema.Places(c.in, path)
	default:
		all = []schema.Place{{Text: schema.NewText("", path)}}
	}
	c.found[path] = all
	return all
}

// furthest is by how many days that pair is outside a span which is furthest out. A
// date that is due leaves it unknown, unless a pair is out already; of others that
// are not stated nothing is said.
func furthest(pairs []pair, s span, due []working.Gap, source working.Source) working.Number {
	var worst pair
	out := -1.0
	for _, p := range pairs {
		if days := working.Days("t", p.earlier, p.later); days.Known() && s.outside(days.Value()) > out {
			worst, out = p, s.outside(days.Value())
		}
	}
	l := working.Lookup{Symbol: "t", Unit: "d", Source: source, Text: "no two such dates are stated"}
	switch {
	case due != nil && out <= 0:
		return working.Unknown("t", "d", due...)
	case out < 0:
		return l.Of(func(...float64) float64 { return 0 })
	}
	l.Text = "days from " + worst.earlier.Value + " to " + worst.later.Value + ", outside " + s.String()
	return l.Of(func(x ...float64) float64 { return s.outside(x[1] - x[0]) }, working.Day(spoken(worst.earlier), worst.earlier), working.Day(spoken(worst.later), worst.later))
}

// spoken is a date and where it stands; one of the table stands for itself.
func spoken(date schema.Text) string {
	if date.At() == "" {
		return date.Value
	}
	return date.Value + " " + schema.Spoken(date.At())
}
