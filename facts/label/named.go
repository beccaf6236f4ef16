package label

import (
	"slices"

	"sunclause/facts/circuit"
	"sunclause/facts/working"
	"sunclause/schema"
)

// names counts what a label does not name of what it should.
func (f *Label) names(j *job, l *schema.Label) {
	named := namedOn(l)
	f.IsolatorsNotNamed = j.notNamed("n_iso", l, named, func(schema.Isolator) bool { return true })
	f.DcIsolatorsNotNamed = j.notNamed("n_iso,dc", l, named, func(iso schema.Isolator) bool { return iso.Circuit.Is("pv_dc") })
	f.SourcesNotNamed = j.sourcesNotNamed(l, named)
}

// notNamed counts the isolators of a kind that a label does not name.
func (j *job) notNamed(symbol string, l *schema.Label, named map[string]bool, of func(schema.Isolator) bool) working.Number {
	missing := append(unstated(l.PartsNamed == nil, l.Member("parts_named")), unstated(j.in.Isolators == nil, "/isolators")...)
	if missing != nil {
		return working.Unknown(symbol, "", missing...)
	}
	n := 0
	for _, iso := range j.in.Isolators {
		if of(iso) && !named[iso.ID.Value] {
			n++
		}
	}
	return working.Counted(symbol, n, l.At())
}

// namedOn are the parts that a label names.
func namedOn(l *schema.Label) map[string]bool {
	named := map[string]bool{}
	for _, t := range l.PartsNamed {
		named[t.Value] = true
	}
	return named
}

// inverterWay is what parts an inverter from the public supply: the isolators
// and boards on its way there, but for the main board, where the two supplies
// meet. It lacks something where the way could not be followed.
type inverterWay struct {
	parts   []string
	missing []string
}

func (j *job) inverterWays() []inverterWay {
	main := map[string]bool{}
	for _, b := range j.in.AC.Boards {
		main[b.ID.Value] = b.Role.Is("main")
	}
	var all []inverterWay
	for _, inv := range j.in.Inverters {
		var w inverterWay
		p := j.c.ToSupply(inv.ID.Value + ".ac")
		if p.Input == "" || p.Ambiguous {
			w.missing = []string{"/cables"}
		}
		for _, i := range p.Isolators {
			w.parts = append(w.parts, j.in.Isolators[i].ID.Value)
		}
		for _, outlet := range p.Ways {
			if board := circuit.Part(outlet); !main[board] {
				w.parts = append(w.parts, board)
			}
		}
		all = append(all, w)
	}
	return all
}

// sourcesNotNamed counts the sources for which a label names no part that
// isolates them: the public supply, isolated at the main board or by the main
// switch of the supply, and each inverter.
func (j *job) sourcesNotNamed(l *schema.Label, named map[string]bool) working.Number {
	missing := append(unstated(l.PartsNamed == nil, l.Member("parts_named")), unstated(j.in.AC.Boards == nil, "/ac/boards")...)
	missing = append(missing, unstated(j.in.Inverters == nil, "/inverters")...)
	if missing != nil {
		return working.Unknown("n_src", "", missing...)
	}
	supply := j.in.AC.Supply
	mains := supply.MainIsolatingSwitch.Stated() && named[supply.ID.Value]
	for _, b := range j.in.AC.Boards {
		missing = append(missing, unstated(!b.Role.Stated(), b.Role.At())...)
		mains = mains || b.Role.Is("main") && named[b.ID.Value]
	}
	n := 0
	if !mains {
		n = 1
	}
	for _, w := range j.apart {
		missing = append(missing, w.missing...)
		if !slices.ContainsFunc(w.parts, func(id string) bool { return named[id] }) {
			n++
		}
	}
	if missing != nil {
		return working.Unknown("n_src", "", missing...)
	}
	return working.Counted("n_src", n, l.At())
}
