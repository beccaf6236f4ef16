package record

import (
	"encoding/json"
	"maps"
	"reflect"
	"slices"
	"strconv"
)

func (d *differ) lists(p place, before, after []any) {
	x, ok := byID(before)
	y, too := byID(after)
	switch {
	case ok && too:
		d.parts(p, before, after, x, y)
	case plainList(before) && plainList(after):
		d.say(Changed, p, before, after)
	default:
		d.items(p, before, after)
	}
}

// byID finds the items of a list by their ids; ok is false when one has none, or
// two have the same.
func byID(list []any) (found map[string]int, ok bool) {
	found = map[string]int{}
	for i, item := range list {
		object, _ := item.(map[string]any)
		id, has := object["id"].(string)
		if _, twice := found[id]; !has || twice {
			return nil, false
		}
		found[id] = i
	}
	return found, true
}

// plainList reports whether a list holds words or numbers, which are read as one
// value.
func plainList(list []any) bool {
	return !slices.ContainsFunc(list, func(v any) bool {
		switch v.(type) {
		case map[string]any, []any:
			return true
		}
		return false
	})
}

// parts compares lists whose items have ids.
func (d *differ) parts(p place, before, after []any, x, y map[string]int) {
	last, reordered := -1, false
	for j, item := range after {
		id := item.(map[string]any)["id"].(string)
		i, had := x[id]
		if !had {
			d.say(Added, p.item(0, j, "."+id), nil, item)
			continue
		}
		reordered = reordered || i < last
		last = max(last, i)
		d.values(p.item(i, j, "."+id), before[i], item)
	}
	for i, item := range before {
		id := item.(map[string]any)["id"].(string)
		if _, has := y[id]; !has {
			d.say(Removed, p.item(i, 0, "."+id), item, nil)
		}
	}
	if reordered {
		d.say(Reordered, p, ids(before), ids(after))
	}
}

func ids(list []any) []string {
	all := make([]string, len(list))
	for i, item := range list {
		all[i] = item.(map[string]any)["id"].(string)
	}
	return all
}

// items compares lists whose items have no ids.
func (d *differ) items(p place, before, after []any) {
	start := 0
	for start < min(len(before), len(after)) && same(before[start], after[start]) {
		start++
	}
	end := 0
	for end < min(len(before), len(after))-start && same(before[len(before)-1-end], after[len(after)-1-end]) {
		end++
	}
	for i := start; i < max(len(before), len(after))-end; i++ {
		at := p.item(i, i, "["+strconv.Itoa(i)+"]")
		switch {
		case i >= len(before)-end:
			d.say(Added, at, nil, after[i])
		case i >= len(after)-end:
			d.say(Removed, at, before[i], nil)
		default:
			d.values(at, before[i], after[i])
		}
	}
}

// same reports whether two values mean the same: numbers by what they are, not by
// how they are written.
func same(a, b any) bool {
	switch x := a.(type) {
	case json.Number:
		if y, ok := b.(json.Number); ok {
			v, _ := x.Float64() // reading has refused what is out of range
			w, _ := y.Float64()
			return v == w
		}
	case map[string]any:
		y, ok := b.(map[string]any)
		return ok && maps.EqualFunc(x, y, same)
	case []any:
		y, ok := b.([]any)
		return ok && slices.EqualFunc(x, y, same)
	}
	return reflect.DeepEqual(a, b)
}
