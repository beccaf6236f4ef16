package slips

import (
	"slices"
	"strconv"
	"strings"
)

// meet notes what parts there are, and who refers to them.
func (g *generator) meet(v any, n *node, at place) {
	switch v := v.(type) {
	case []any:
		g.family(idsOf(v))
	case map[string]any:
		if len(at.path) == 2 && at.path[0] == "datasheets" {
			var ids []string
			for id := range v {
				ids = append(ids, id)
			}
			g.family(ids)
		}
	case string:
		if n.RefersTo != "" || n.form == "terminal" {
			g.refers = append(g.refers, at)
		}
	}
}

func (g *generator) family(ids []string) {
	slices.Sort(ids)
	for _, id := range ids {
		g.families[id] = ids
	}
}

// idsOf are the ids of the parts in a list.
func idsOf(list []any) []string {
	var ids []string
	for _, item := range list {
		if id := idOf(item); id != "" {
			ids = append(ids, id)
		}
	}
	return ids
}

func idOf(v any) string {
	part, _ := v.(map[string]any)
	id, _ := part["id"].(string)
	return id
}

// reference notes that a reference leads to the next part of the kind.
func (g *generator) reference(v string, at place) {
	id, terminal, _ := strings.Cut(v, ".")
	family := g.families[id]
	i := slices.Index(family, id)
	if i < 0 || len(family) < 2 {
		return
	}
	to := family[(i+1)%len(family)]
	if terminal != "" {
		to += "." + terminal
	}
	g.change(reference, at, v, to)
}

// list notes that a list is empty, is not there, or lacks one of its items.
func (g *generator) list(v []any, _ *node, at place) {
	if len(v) > 0 {
		g.add(emptied, at, "emptied", set(at, []any{}))
	}
	g.add(leftOut, at, "left out", edit{path: at.path, out: true})
	for i, item := range v {
		below := at.member(strconv.Itoa(i), "[]")
		g.add(itemGone, below, "left out", edit{path: below.path, out: true})
		if id := idOf(item); id != "" {
			if gone := g.hanging(id); len(gone) > 0 {
				g.add(partGone, below, id+" and what refers to it left out", cut(append(gone, below.path))...)
			}
		}
	}
}

// cut takes values out, those of a list from its end, so that the others keep their places.
func cut(paths [][]string) []edit {
	slices.SortFunc(paths, func(a, b []string) int { return slices.CompareFunc(b, a, inOrder) })
	var edits []edit
	for i, p := range paths {
		within := func(q []string) bool { return len(q) <= len(p) && slices.Equal(q, p[:len(q)]) }
		if !slices.ContainsFunc(paths[i+1:], within) {
			edits = append(edits, edit{path: p, out: true})
		}
	}
	return edits
}

// inOrder compares names of members, and places in lists by number.
func inOrder(a, b string) int {
	i, errA := strconv.Atoi(a)
	j, errB := strconv.Atoi(b)
	if errA == nil && errB == nil {
		return i - j
	}
	return strings.Compare(a, b)
}

// hanging lists what has to go with a part: what refers to it, whole parts where
// they cannot be without the reference, and what refers to those in turn.
func (g *generator) hanging(id string) [][]string {
	var gone [][]string
	for parts := []string{id}; len(parts) > 0; parts = parts[1:] {
		for _, r := range g.refers {
			if to, _, _ := strings.Cut(g.at(r.path).(string), "."); to != parts[0] {
				continue
			}
			path := g.leaving(r.path)
			if slices.ContainsFunc(gone, func(p []string) bool { return slices.Equal(p, path) }) {
				continue
			}
			gone = append(gone, path)
			if next := idOf(g.at(path)); next != "" && g.families[next] != nil {
				parts = append(parts, next)
			}
		}
	}
	return gone
}

// leaving is what goes when a reference does: the part around it, when that is an
// end of a run or the part has nothing else to say where it is, as a label.
func (g *generator) leaving(path []string) []string {
	if path[0] == "labels" && len(path) == 3 {
		return path[:2]
	}
	root, err := readSchema()
	if err != nil {
		return path
	}
	n := root
	for i, name := range path {
		if slices.Contains(n.Required, name) && i == len(path)-1 {
			return path[:i]
		}
		if n, err = n.below(name); err != nil {
			return path
		}
	}
	return path
}

func (g *generator) at(path []string) any {
	var v any = g.document
	for _, name := range path {
		switch in := v.(type) {
		case map[string]any:
			v = in[name]
		case []any:
			i, _ := strconv.Atoi(name) // the path came from walking the document
			v = in[i]
		}
	}
	return v
}
