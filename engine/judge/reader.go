package judge

import (
	"sunclause/engine/catalogue"
	"sunclause/engine/ruleset"
	"sunclause/facts/book"
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
	if c.AnyOf != nil {
		return h.anyOf(c.AnyOf)
	}
	value, limit := h.value(c.Fact), h.limit(c)
	switch {
	case !value.Known || !limit.Known, c.LimitCell != nil && value.Kind != limit.Kind:
		return unknown
	case catalogue.Holds(c.How, *value, limit):
		return yes
	}
	return no
}

// anyOf is yes as soon as one comparison holds, no when none does, and else
// unknown.
func (h *hearing) anyOf(group []*ruleset.Comparison) truth {
	all := no
	for _, c := range group {
		switch h.holds(c) {
		case yes:
			return yes
		case unknown:
			all = unknown
		}
	}
	return all
}

// limit is what a fact is compared with.
func (h *hearing) limit(c *ruleset.Comparison) catalogue.Value {
	switch {
	case c.LimitFact != nil:
		return h.value(*c.LimitFact).Times(c.Factor)
	case c.LimitCell != nil:
		return h.cell(c.LimitCell).Times(c.Factor)
	}
	return c.Limit
}

// cell reads a cell of a table in the row that facts pick. Where one of them is
// unknown, or the table has no such row, so is the cell.
func (h *hearing) cell(c *ruleset.CellReading) catalogue.Value {
	var missing []string
	keys := make([]book.Key, len(c.Keys))
	for i, k := range c.Keys {
		if v := h.value(k.Reading); !v.Known {
			missing = append(missing, v.Missing...)
		} else {
			keys[i] = h.key(k, v)
		}
	}
	if missing != nil {
		return catalogue.Value{Missing: missing}
	}
	row := h.set.Book.Pick(c.Table, keys...)
	if number := row.Number(c.Column, c.Column); number.Known() {
		return catalogue.Value{Kind: catalogue.Number, Known: true, Number: number.Value(), Unit: number.Unit()}
	}
	word := row.Word(c.Column)
	return catalogue.Value{Kind: catalogue.Text, Known: word.Known(), Text: word.Value(), Missing: word.Missing()}
}

// key holds the cells of a column to a fact that is known.
func (h *hearing) key(k ruleset.KeyReading, v *catalogue.Value) book.Key {
	part := h.part.part
	if k.Whole {
		part = h.whole.part
	}
	if v.Kind == catalogue.Text {
		return book.Is(k.Column, part.Word(k.Fact))
	}
	number := *part.Working(k.Fact)
	switch k.How {
	case "at_least":
		return book.UpTo(k.Column, number)
	case "at_most":
		return book.DownTo(k.Column, number)
	}
	return book.Equals(k.Column, number)
}
