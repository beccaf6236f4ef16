package label

import (
	"slices"

	"sunclause/facts/working"
	"sunclause/schema"
)

// names counts what a label does not name of what it should.
func (f *Label) names(j *job, l *schema.Label) {
	f.IsolatorsNotNamed = j.notNamed("n_iso", l, func(schema.Isolator) bool { return true })
	f.DcIsolatorsNotNamed = j.notNamed("n_iso,dc", l, func(iso schema.Isolator) bool { return iso.Circuit.Is("pv_dc") })
	f.SourcesNotNamed = j.sourcesNotNamed(l)
}

// notNamed counts the isolators of a kind that a label does not name.
func (j *job) notNamed(symbol string, l *schema.Label, of func(schema.Isolator) bool) working.Number {
	missing := append(unstated(l.PartsNamed == nil, l.Member("parts_named")), unstated(j.in.Isolators == nil, "/isolators")...)
	if missing != nil {
		return working.Unknown(symbol, "", missing...)
	}
	n := 0
	for _, iso := range j.in.Isolators {
		if of(iso) && !names(l, iso.ID.Value) {
			n++
		}
	}
	return working.Counted(symbol, n, l.At())
}

func names(l *schema.Label, id string) bool {
	return slices.ContainsFunc(l.PartsNamed, func(t schema.Text) bool { return t.Is(id) })
}

// sourcesNotNamed counts the sources for which a label names no part that
// isolates them: the public supply, isolated at the main board, and each
// inverter, isolated at an isolator or board on its way to the supply. The main
// board does not count for an inverter: it is where the two supplies meet.
func (j *job) sourcesNotNamed(l *schema.Label) working.Number {
	missing := append(unstated(l.PartsNamed == nil, l.Member("parts_named")), unstated(j.in.AC.Boards == nil, "/ac/boards")...)
	missing = append(missing, unstated(j.in.Inverters == nil, "/inverters")...)
	n, main := 1, map[string]bool{}
	for _, b := range j.in.AC.Boards {
		if !b.Role.Stated() {
			missing = append(missing, b.Role.At())
		}
		if main[b.ID.Value] = b.Role.Is("main"); main[b.ID.Value] && names(l, b.ID.Value) {
			n = 0
		}
	}
	if s := j.in.AC.Supply; s.MainIsolatingSwitch.Stated() && names(l, s.ID.Value) {
		n = 0
	}
	for _, inv := range j.in.Inverters {
		p := j.c.ToSupply(inv.ID.Value + ".ac")
		if p.Input == "" || p.Ambiguous {
			missing = append(missing, "/cables")
		}
		named := slices.ContainsFunc(p.Isolators, func(i int) bool { return names(l, j.in.Isolators[i].ID.Value) }) ||
			slices.ContainsFunc(p.Ways, func(w string) bool { return !main[partOf(w)] && names(l, partOf(w)) })
		if !named {
			n++
		}
	}
	if missing != nil {
		return working.Unknown("n_src", "", missing...)
	}
	return working.Counted("n_src", n, l.At())
}
