package label

import (
	"sunclause/facts/circuit"
	"sunclause/facts/working"
	"sunclause/schema"
)

// identification counts what a label does not name of what it should.
func (f *Label) identification(j *job, l *schema.Label) {
	named := partsNamed(l)
	f.IsolatorsNotNamed = j.unnamedIsolators("n_iso", l, named, func(int) working.Flag { return always(l.At()) })
	f.DcIsolatorsNotNamed = j.unnamedIsolators("n_iso,dc", l, named, func(i int) working.Flag { return j.c.Opens(&j.in.Isolators[i]).OneOf(circuit.PV) })
	f.SourcesNotNamed = j.unnamedSources(l, named)
}

// unnamedIsolators counts the isolators of a kind that a label does not name.
func (j *job) unnamedIsolators(symbol string, l *schema.Label, named map[string]bool, of func(isolator int) working.Flag) working.Number {
	missing := append(unstated(l.PartsNamed == nil, l.Member("parts_named")), unstated(j.in.Isolators == nil, "/isolators")...)
	if missing != nil {
		return working.Unknown(symbol, "", missing...)
	}
	var unnamed []working.Flag
	for i := range j.in.Isolators {
		if !named[j.in.Isolators[i].ID.Value] {
			unnamed = append(unnamed, of(i))
		}
	}
	return working.Count(symbol, l.At(), unnamed...)
}

// partsNamed are the parts that a label names.
func partsNamed(l *schema.Label) map[string]bool {
	named := map[string]bool{}
	for _, t := range l.PartsNamed {
		named[t.Value] = true
	}
	return named
}

// inverterWay is what parts an inverter from the public supply: the isolators
// and boards on its way there.
type inverterWay struct {
	isolators, boards []string
	missing           []working.Gap // why the way could not be followed
}

func (j *job) inverterWays() []inverterWay {
	var all []inverterWay
	for _, inv := range j.in.Inverters {
		var w inverterWay
		p := j.c.ToSupply(inv.ID.Value + ".ac")
		w.missing = p.Untraced
		for _, i := range p.Isolators {
			w.isolators = append(w.isolators, j.in.Isolators[i].ID.Value)
		}
		for _, outlet := range p.Ways {
			w.boards = append(w.boards, circuit.Part(outlet))
		}
		all = append(all, w)
	}
	return all
}

// unnamedSources counts the sources for which a label names no part that
// isolates them: the public supply, isolated at the main board or by the main
// switch of the supply, and each inverter. The main board, where the two
// supplies meet, isolates no inverter.
func (j *job) unnamedSources(l *schema.Label, named map[string]bool) working.Number {
	missing := append(unstated(l.PartsNamed == nil, l.Member("parts_named")), unstated(j.in.AC.Boards == nil, "/ac/boards")...)
	missing = append(missing, unstated(j.in.Inverters == nil, "/inverters")...)
	if missing != nil {
		return working.Unknown("n_src", "", missing...)
	}
	isMain := map[string]working.Flag{}
	supply := j.in.AC.Supply
	mains := []working.Flag{working.KnownFlag(supply.MainIsolatingSwitch.Stated() && named[supply.ID.Value], supply.At())}
	for _, b := range j.in.AC.Boards {
		main := working.StatedText(b.Role).OneOf("main")
		isMain[b.ID.Value] = main
		mains = append(mains, working.All(main, working.KnownFlag(named[b.ID.Value], l.At())))
	}
	unnamed := []working.Flag{working.Not(working.Any(mains...))}
	for _, w := range j.apart {
		unnamed = append(unnamed, working.Not(w.named(named, isMain)))
	}
	return working.Count("n_src", l.At(), unnamed...)
}

// named reports whether one of some parts that are named isolates the inverter.
func (w *inverterWay) named(named map[string]bool, isMain map[string]working.Flag) working.Flag {
	if w.missing != nil {
		return working.UnknownFlag(w.missing...)
	}
	var isolating []working.Flag
	for _, id := range w.isolators {
		isolating = append(isolating, working.KnownFlag(named[id], ""))
	}
	for _, id := range w.boards {
		isolating = append(isolating, working.All(working.KnownFlag(named[id], ""), working.Not(isMain[id])))
	}
	return working.Any(isolating...)
}
