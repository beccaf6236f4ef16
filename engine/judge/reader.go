package judge

import (
	"sunclause/engine/catalogue"
	"sunclause/engine/ruleset"
	"sunclause/facts/book"
	"sunclause/facts/working"
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
	visit  int // goes up with every part, so that nothing need be cleared
	values []readValue
	held   []heldComparison
}

type readValue struct {
	visit int
	catalogue.Value
}

type heldComparison struct {
	visit int
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
	r.visit++
}

func (r *reader) value(f *catalogue.Fact) *catalogue.Value {
	v := &r.values[f.Place]
	if v.visit != r.visit {
		v.visit, v.Value = r.visit, r.part.Value(f)
	}
	return &v.Value
}

// value reads a fact of the part that is being judged, or of the installation.
func (e *evaluation) value(f ruleset.Reading) *catalogue.Value {
	if f.Whole {
		return e.whole.value(f.Fact)
	}
	return e.part.value(f.Fact)
}

// holds is whether the part that is being judged keeps a comparison.
func (e *evaluation) holds(c *ruleset.Comparison) truth {
	r := &e.part
	if c.Subject.Name == catalogue.Whole {
		r = &e.whole
	}
	known := &r.held[c.Number]
	if known.visit != r.visit {
		known.visit, known.truth = r.visit, e.compare(c)
	}
	return known.truth
}

func (e *evaluation) compare(c *ruleset.Comparison) truth {
	if c.AnyOf != nil {
		return e.anyOf(c.AnyOf)
	}
	value, limit := e.value(c.Fact), e.limit(c)
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
func (e *evaluation) anyOf(group []*ruleset.Comparison) truth {
	all := no
	for _, c := range group {
		switch e.holds(c) {
		case yes:
			return yes
		case unknown:
			all = unknown
		}
	}
	return all
}

// limit is what a fact is compared with.
func (e *evaluation) limit(c *ruleset.Comparison) catalogue.Value {
	switch {
	case c.LimitFact != nil:
		return e.value(*c.LimitFact).Times(c.Factor)
	case c.LimitCell != nil:
		return e.cell(c.LimitCell).Times(c.Factor)
	}
	return c.Limit
}

// cell reads a cell of a table in the row that facts pick. Where one of them is
// unknown, or the table has no such row, so is the cell.
func (e *evaluation) cell(c *ruleset.CellReading) catalogue.Value {
	var missing []working.Gap
	var keys []book.Key
	for _, k := range c.Keys {
		if v := e.value(k.Reading); !v.Known {
			missing = append(missing, v.Missing...)
		} else {
			keys = append(keys, e.key(k, v))
		}
	}
	if len(keys) < len(c.Keys) {
		return catalogue.Value{Missing: missing}
	}
	row := e.set.Book.Pick(c.Table, keys...)
	if number := row.Number(c.Column, c.Column); number.Known() {
		return catalogue.Value{Kind: catalogue.Number, Known: true, Number: number.Value(), Unit: number.Unit()}
	}
	word := row.Word(c.Column)
	return catalogue.Value{Kind: catalogue.Text, Known: word.Known(), Text: word.Value(), Missing: word.Missing()}
}

// key holds the cells of a column to a fact that is known.
func (e *evaluation) key(k ruleset.KeyReading, v *catalogue.Value) book.Key {
	part := e.part.part
	if k.Whole {
		part = e.whole.part
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
