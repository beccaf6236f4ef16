package ruleset

import (
	"fmt"

	"sunclause/engine/catalogue"
)

// Comparison holds one fact of every part of a subject to a limit. Hundreds of
// requirements share a condition; each distinct comparison of a set stands once,
// by its number. A group holds where one of its comparisons does.
type Comparison struct {
	Number  int                // among those of the set, from 0
	Subject *catalogue.Subject // whose parts are compared; the installation when the comparison looks at nothing else
	Fact    Reading
	How     string
	Limit   catalogue.Value // a plain value, times its factor; where the limit is neither a fact nor in a table
	// LimitFact is the fact that limits, and LimitCell the cell of a table; nil
	// where the limit is another.
	LimitFact *Reading
	LimitCell *CellReading
	Factor    float64       // of a limit that is a fact or a cell; 1 where there is none
	AnyOf     []*Comparison // of a group; then Number and Subject alone are set beside it
}

// Reading is a fact to be read: of the part, or of the installation.
type Reading struct {
	Whole bool
	*catalogue.Fact
}

// CellReading is a cell of a table to be read, in the row that facts pick.
type CellReading struct {
	Table  string
	Column string
	Keys   []KeyReading
}

// KeyReading is a fact that picks the row of a table.
type KeyReading struct {
	Column string
	How    string
	Reading
}

// Readings are the facts that a comparison looks at.
func (c *Comparison) Readings() []Reading {
	var all []Reading
	for _, one := range c.AnyOf {
		all = append(all, one.Readings()...)
	}
	if c.Fact.Fact != nil {
		all = append(all, c.Fact)
	}
	if c.LimitFact != nil {
		all = append(all, *c.LimitFact)
	}
	if c.LimitCell != nil {
		for _, k := range c.LimitCell.Keys {
			all = append(all, k.Reading)
		}
	}
	return all
}

// compared resolves a condition against the facts there are, which it has been
// held to, and finds it among the comparisons of the set.
func (s *RuleSet) compared(subject string, c Condition) *Comparison {
	own, _ := catalogue.Of(subject)
	out := Comparison{Subject: own, Factor: 1}
	key := ""
	for _, one := range c.AnyOf {
		part := s.compared(subject, one)
		out.AnyOf = append(out.AnyOf, part)
		key += fmt.Sprintf(" or %d", part.Number)
	}
	if c.AnyOf == nil {
		s.resolveLine(&out, own, c)
		key = fmt.Sprintf("%s %t %s %s %T %s", out.Subject.Name, out.Fact.Whole, out.Fact.Name, out.How, c.Limit.Value, c.Limit)
	} else {
		key = subject + key
	}
	if known, ok := s.comparisons[key]; ok {
		return known
	}
	out.Number = len(s.comparisons)
	s.comparisons[key] = &out
	return &out
}

// resolveLine resolves what is no group.
func (s *RuleSet) resolveLine(out *Comparison, own *catalogue.Subject, c Condition) {
	out.Fact, out.How = readingOf(own, c.Fact), c.Comparison
	factor := s.FactorOf(c.Limit)
	switch limit := c.Limit; {
	case limit.Fact != "":
		of := readingOf(own, limit.Fact)
		out.LimitFact, out.Factor = &of, factor
	case limit.Cell != nil:
		out.LimitCell, out.Factor = cellReading(own, limit.Cell), factor
	default:
		out.Limit = catalogue.ValueOf(s.Value(limit)).Times(factor)
		if out.Fact.Whole {
			out.Subject = catalogue.Installation()
		}
	}
}

func cellReading(own *catalogue.Subject, c *Cell) *CellReading {
	out := &CellReading{Table: c.Table, Column: c.Column}
	for _, k := range c.Keys {
		out.Keys = append(out.Keys, KeyReading{k.Column, k.Comparison, readingOf(own, k.Fact)})
	}
	return out
}

func readingOf(own *catalogue.Subject, name string) Reading {
	of, f, _ := own.Find(name)
	return Reading{of.Name == catalogue.Whole, f}
}

// resolve gives every requirement the comparisons that decide it.
func (s *RuleSet) resolve() {
	s.comparisons = map[string]*Comparison{}
	for i, r := range s.Requirements {
		resolved := *r
		resolved.when, resolved.row = nil, nil
		for _, w := range r.When {
			resolved.when = append(resolved.when, s.compared(r.Subject, w))
		}
		if !r.Rego {
			resolved.row = s.compared(r.Subject, r.Condition)
		}
		s.Requirements[i], s.byID[r.ID] = &resolved, &resolved
	}
}
