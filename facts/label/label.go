// Package label derives the facts of labels and notices: so far, which legends
// are put up at all.
package label

import (
	"sunclause/facts/working"
	"sunclause/schema"
)

// Legends lists the legends that are put up, each once; unknown when the
// document does not state the labels.
func Legends(in *schema.Installation) working.Names {
	if in.Labels == nil {
		return working.UnknownList("/labels")
	}
	var legends []string
	for _, l := range in.Labels {
		legends = append(legends, l.Legend.Value)
	}
	return working.List(legends...)
}
