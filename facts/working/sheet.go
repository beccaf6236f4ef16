package working

import (
	"iter"
	"maps"
	"slices"
)

// InOrder goes through datasheets in the order of their ids.
func InOrder[S any](sheets map[string]*S) iter.Seq2[string, *S] {
	return func(yield func(string, *S) bool) {
		for _, id := range slices.Sorted(maps.Keys(sheets)) {
			if !yield(id, sheets[id]) {
				return
			}
		}
	}
}

// OfSheets derives the facts of every datasheet of a kind, in the order of their ids;
// nil when the document states none.
func OfSheets[S, F any](sheets map[string]*S, of func(id string, s *S) F) []F {
	if sheets == nil {
		return nil
	}
	all := []F{}
	for id, s := range InOrder(sheets) {
		all = append(all, of(id, s))
	}
	return all
}
