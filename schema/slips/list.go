package slips

import (
	"fmt"
	"maps"
	"slices"
	"strconv"
)

// The kinds of slip of OfLists.
const (
	EmptiedAll = "a list emptied with what refers to it"
	LeftOutAll = "a list left out with what refers to it"
)

// OfLists lists the slips in which a whole list of a document is gone, and with it all
// that refers to its parts, so that no reference gives it away.
func OfLists(document map[string]any) ([]Slip, error) {
	return made(document, (*generator).whole)
}

// whole notes that a list is empty, and that it is not there.
func (g *generator) whole(v any, _ *node, at place) {
	list, ok := v.([]any)
	if !ok || len(list) == 0 {
		return
	}
	var gone [][]string
	for i, item := range list {
		gone = append(gone, at.member(strconv.Itoa(i), "[]").path)
		if id := idOf(item); id != "" {
			gone = append(gone, g.hanging(id)...)
		}
	}
	slices.SortFunc(gone, slices.Compare)
	edits := cut(slices.CompactFunc(gone, slices.Equal))
	g.add(EmptiedAll, at, "emptied", edits...)
	g.add(LeftOutAll, at, "left out", append(edits, edit{path: at.path, out: true})...)
}

// Lists are the shapes of all lists that a document can have, in their order.
func Lists() ([]string, error) {
	root, err := readSchema()
	if err != nil {
		return nil, err
	}
	shapes := map[string]bool{}
	if err := root.lists("", shapes); err != nil {
		return nil, err
	}
	return slices.Sorted(maps.Keys(shapes)), nil
}

func (n *node) lists(shape string, all map[string]bool) error {
	step := func(name, shown string) error {
		next, err := n.below(name)
		if err != nil {
			return fmt.Errorf("%s: %w", shape, err)
		}
		return next.lists(shape+"/"+shown, all)
	}
	for name := range n.Properties {
		if err := step(name, name); err != nil {
			return err
		}
	}
	switch {
	case n.Items != nil:
		all[shape] = true
		return step("", "[]")
	case len(n.Keyed) > 0 && n.Keyed[0] == '{':
		return step("", "*")
	}
	return nil
}
