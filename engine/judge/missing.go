package judge

import (
	"slices"

	"sunclause/engine/catalogue"
	"sunclause/engine/rego"
	"sunclause/engine/ruleset"
	"sunclause/facts"
	"sunclause/facts/working"
)

// missing says what a requirement would need of the part that is being judged,
// and of others, and has not got: for the conditions under which it applies, for
// what is compared, and for a Rego rule what it was seen to read. Each stands
// once, in order.
func (e *evaluation) missing(q *ruleset.Requirement) []working.Gap {
	var all []working.Gap
	name := func(f ruleset.Reading) {
		if v := e.value(f); !v.Known {
			all = append(all, v.Missing...)
		}
	}
	for _, c := range append(slices.Clone(q.Conditions()), q.Row()) {
		if c == nil {
			continue
		}
		for _, f := range c.Readings() {
			name(f)
		}
		all = append(all, e.missingCells(c)...)
	}
	if q.Rego {
		reads := e.set.Rules().Reads(q.ID)
		for _, f := range ownReads(q, reads) {
			name(f)
		}
		all = append(all, e.missingElsewhere(q, reads)...)
	}
	return working.Gaps(all)
}

// missingCells names what would have to be stated otherwise where a table has no
// row for what is known.
func (e *evaluation) missingCells(c *ruleset.Comparison) []working.Gap {
	var all []working.Gap
	for _, one := range c.AnyOf {
		all = append(all, e.missingCells(one)...)
	}
	if c.LimitCell != nil {
		all = append(all, e.cell(c.LimitCell).Missing...)
	}
	return all
}

// lacksOwn reports whether a Rego rule reads a fact of the part that is not
// known.
func (e *evaluation) lacksOwn(q *ruleset.Requirement, reads rego.Reads) bool {
	return slices.ContainsFunc(ownReads(q, reads), func(f ruleset.Reading) bool { return !e.value(f).Known })
}

// ownReads lists the facts that a Rego rule reads of the part that it judges.
func ownReads(q *ruleset.Requirement, reads rego.Reads) []ruleset.Reading {
	own, _ := catalogue.Of(q.Subject)
	var all []ruleset.Reading
	for _, read := range reads.Facts {
		if f, ok := own.Fact(read.Fact()); ok && read.Own {
			all = append(all, ruleset.Reading{Whole: q.Subject == catalogue.Whole, Fact: f})
		}
	}
	return all
}

// missingElsewhere names what a Rego rule reads from parts other than the one it
// judges, and some such part has not got. Then nothing it says can be relied
// upon for any part.
func (e *evaluation) missingElsewhere(q *ruleset.Requirement, reads rego.Reads) []working.Gap {
	if known, ok := e.elsewhere[q]; ok {
		return known
	}
	var missing []working.Gap
	for _, read := range reads.Facts {
		s, ok := catalogue.Of(read.Path[0])
		if read.Own || !ok {
			continue
		}
		parts, stated := s.Parts(e.facts)
		if !stated {
			missing = append(missing, working.Unstated(facts.Lists[s.Name]))
		}
		f, ok := s.Fact(read.Fact())
		for _, p := range parts {
			if !ok {
				break
			}
			if v := p.Value(f); !v.Known {
				missing = append(missing, append(slices.Clone(v.Missing), working.Unstated(p.At))...)
			}
		}
	}
	e.elsewhere[q] = missing
	return missing
}
