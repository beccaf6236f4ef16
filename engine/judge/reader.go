package judge

import (
	"sunclause/engine/catalogue"
	"sunclause/engine/ruleset"
)

// truth is the answer to a comparison.
type truth int8

const (
	unknown truth = iota // a fact that is compared is not known
	yes
	no
)

// reader reads the facts of one part at a time, each once, and compares each
// comparison once, however many requirements ask for it.
type reader struct {
	part   catalogue.Part
	turn   int // goes up with every part, so that nothing need be cleared
	values []readValue
	held   []heldComparison
}

type readValue struct {
	turn int
	catalogue.Value
}

type heldComparison struct {
	turn int
	truth
}

func newReader(set *ruleset.RuleSet) reader {
	most := 0
	for _, s := range catalogue.Subjects() {
		most = max(most, len(s.Facts))
	}
	return reader{values: make([]readValue, most), held: make([]heldComparison, set.Comparisons())}
}

// begin turns to another part.
func (r *reader) begin(p catalogue.Part) {
	r.part = p
	r.turn++
}

func (r *reader) value(f *catalogue.Fact) *catalogue.Value {
	v := &r.values[f.Place]
	if v.turn != r.turn {
		v.turn, v.Value = r.turn, r.part.Value(f)
	}
	return &v.Value
}

// value reads a fact of the part that is being judged, or of the installation.
func (h *hearing) value(f ruleset.Reading) *catalogue.Value {
	if f.Whole {
		return h.whole.value(f.Fact)
	}
	return h.part.value(f.Fact)
}

// holds is whether the part that is being judged keeps a comparison.
func (h *hearing) holds(c *ruleset.Comparison) truth {
	r := &h.part
	if c.Subject.Name == catalogue.Whole {
		r = &h.whole
	}
	known := &r.held[c.Number]
	if known.turn != r.turn {
		known.turn, known.truth = r.turn, h.compare(c)
	}
	return known.truth
}

func (h *hearing) compare(c *ruleset.Comparison) truth {
	limit := &c.Limit
	if c.LimitFact != nil {
		limit = h.value(*c.LimitFact)
	}
	value := h.value(c.Fact)
	switch {
	case !value.Known || !limit.Known:
		return unknown
	case catalogue.Holds(c.How, *value, *limit):
		return yes
	}
	return no
}
