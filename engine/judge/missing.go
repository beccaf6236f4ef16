package judge

import (
	"slices"

	"sunclause/engine/catalogue"
	"sunclause/engine/rego"
	"sunclause/engine/ruleset"
	"sunclause/facts"
)

// missing names what a requirement would need of the part that is being judged,
// and of others, and has not got: for the conditions under which it applies, for
// what is compared, and for a Rego rule what it was seen to read. Each stands
// once, in order.
func (h *hearing) missing(q *ruleset.Requirement) []string {
	var all []string
	name := func(f ruleset.Reading) {
		if v := h.value(f); !v.Known {
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
		all = append(all, h.missingCells(c)...)
	}
	if q.Rego {
		reads := h.set.Rules().Reads(q.ID)
		for _, f := range ownReads(q, reads) {
			name(f)
		}
		all = append(all, h.missingElsewhere(q, reads)...)
	}
	slices.Sort(all)
	return slices.Compact(all)
}

// missingCells names what would have to be stated otherwise where a table has no
// row for what is known.
func (h *hearing) missingCells(c *ruleset.Comparison) []string {
	var all []string
	for _, one := range c.AnyOf {
		all = append(all, h.missingCells(one)...)
	}
	if c.LimitCell != nil {
		all = append(all, h.cell(c.LimitCell).Missing...)
	}
	return all
}

// lacksOwn reports whether a Rego rule reads a fact of the part that is not
// known.
func (h *hearing) lacksOwn(q *ruleset.Requirement, reads rego.Reads) bool {
	return slices.ContainsFunc(ownReads(q, reads), func(f ruleset.Reading) bool { return !h.value(f).Known })
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
func (h *hearing) missingElsewhere(q *ruleset.Requirement, reads rego.Reads) []string {
	if known, ok := h.elsewhere[q]; ok {
		return known
	}
	var missing []string
	for _, read := range reads.Facts {
		s, ok := catalogue.Of(read.Path[0])
		if read.Own || !ok {
			continue
		}
		parts, stated := s.Parts(h.facts)
		if !stated {
			missing = append(missing, facts.Lists[s.Name])
		}
		f, ok := s.Fact(read.Fact())
		for _, p := range parts {
			if !ok {
				break
			}
			if v := p.Value(f); !v.Known {
				missing = append(missing, append(slices.Clone(v.Missing), p.At)...)
			}
		}
	}
	h.elsewhere[q] = missing
	return missing
}
