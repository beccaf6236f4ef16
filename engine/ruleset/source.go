package ruleset

import "sunclause/facts/working"

// source is where a requirement, figure or table comes from, as facts and reports know it.
func (s sourceFile) source() working.Source {
	return working.Source{
		Document: s.Document.Value, Edition: s.Edition.Value, Clause: s.Clause.Value,
		How: working.How(s.How.Value), Verified: s.Verified.Yes(),
	}
}
