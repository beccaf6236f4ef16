package record

import (
	"cmp"
	"maps"
	"slices"
	"strconv"
	"strings"

	"sunclause/schema"
)

// How a member of one document stands to another document.
const (
	Added     = "added"
	Removed   = "removed"
	Changed   = "changed"
	Reordered = "reordered" // a list of parts has the same parts in another order
)

// MemberChange is a member that two documents state differently.
type MemberChange struct {
	Change     string `json:"change"`
	Name       string `json:"name"`                // as people say it, parts by their ids: strings.S1.module
	Words      string `json:"words"`               // what the schema calls it
	BeforeAt   string `json:"before_at,omitempty"` // JSON pointers and lines; none where there is nothing
	BeforeLine int    `json:"before_line,omitempty"`
	AfterAt    string `json:"after_at,omitempty"`
	AfterLine  int    `json:"after_line,omitempty"`
	Before     any    `json:"before,omitempty"`
	After      any    `json:"after,omitempty"`
}

// CompareMembers lists what two documents state differently, in the order of
// the later one. Items of a list are matched by their ids, wherever they stand;
// items without ids by their place, after what is the same at both ends.
func CompareMembers(before, after *schema.Document) []MemberChange {
	d := &differ{before, after, []MemberChange{}}
	d.values(place{}, before.Root(), after.Root())
	return d.changes
}

// place is a value in both documents.
type place struct {
	before, after string // JSON pointers
	name          string
}

// member is the place of a member of an object.
func (p place) member(name string) place {
	step := schema.NewPointer("").Member(name)
	return place{p.before + step, p.after + step, strings.TrimPrefix(p.name+"."+name, ".")}
}

// item is the place of an item of a list, which is said by its id or number.
func (p place) item(before, after int, said string) place {
	return place{p.before + "/" + strconv.Itoa(before), p.after + "/" + strconv.Itoa(after), p.name + said}
}

type differ struct {
	before, after *schema.Document
	changes       []MemberChange
}

func (d *differ) say(change string, p place, before, after any) {
	c := MemberChange{Change: change, Name: p.name, Before: before, After: after}
	if change != Added {
		c.BeforeAt, c.BeforeLine, c.Words = p.before, d.before.Position(p.before).Line, schema.Words(p.before)
	}
	if change != Removed {
		c.AfterAt, c.AfterLine, c.Words = p.after, d.after.Position(p.after).Line, schema.Words(p.after)
	}
	d.changes = append(d.changes, c)
}

func (d *differ) values(p place, before, after any) {
	if same(before, after) {
		return // most is the same, and need not be put in order
	}
	switch x := before.(type) {
	case map[string]any:
		if y, ok := after.(map[string]any); ok {
			d.objects(p, x, y)
			return
		}
	case []any:
		if y, ok := after.([]any); ok {
			d.lists(p, x, y)
			return
		}
	}
	d.say(Changed, p, before, after)
}

func (d *differ) objects(p place, before, after map[string]any) {
	all := maps.Clone(before)
	maps.Copy(all, after)
	for _, name := range d.inOrder(p, after, slices.Sorted(maps.Keys(all))) {
		x, had := before[name]
		y, has := after[name]
		switch at := p.member(name); {
		case !had:
			d.say(Added, at, nil, y)
		case !has:
			d.say(Removed, at, x, nil)
		default:
			d.values(at, x, y)
		}
	}
}

// inOrder puts members in the order of the later document, and those that it
// has not got behind them.
func (d *differ) inOrder(p place, after map[string]any, names []string) []string {
	where := func(name string) schema.Position {
		if _, has := after[name]; has {
			return d.after.Position(p.member(name).after)
		}
		return schema.Position{Line: len(d.after.Raw) + 1}
	}
	slices.SortStableFunc(names, func(a, b string) int {
		x, y := where(a), where(b)
		return cmp.Or(cmp.Compare(x.Line, y.Line), cmp.Compare(x.Column, y.Column))
	})
	return names
}
