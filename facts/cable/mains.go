package cable

import (
	"slices"

	"sunclause/facts/circuit"
	"sunclause/facts/working"
	"sunclause/schema"
)

// source is an inverter, or a battery with one, that feeds the AC side.
type source struct {
	id      string
	current working.Number
	phases  working.Number
}

// mains knows which sources each run carries to the public supply.
type mains struct {
	by      map[int][]source
	missing []working.Gap // why some source was not traced; then nothing can be said of any run
}

func mainsOf(in *schema.Installation, c *circuit.Circuit) mains {
	m := mains{by: map[int][]source{}}
	for _, inv := range in.Inverters {
		sheet := inv.Datasheet.To()
		m.add(in, c, inv.ID.Value+".ac", source{inv.ID.Value, working.Stated("I_ac", "A", sheet.ACCurrentMaxA), working.Stated("n_ph", "", sheet.Phases)})
	}
	if in.Inverters == nil {
		m.missing = append(m.missing, working.Unstated("/inverters"))
	}
	if in.Storage.Batteries == nil {
		m.missing = append(m.missing, working.Unstated(in.Storage.Member("batteries")))
	}
	for _, bat := range in.Storage.Batteries {
		sheet := bat.Datasheet.To()
		switch {
		case sheet.Coupling.Is("ac"):
			m.add(in, c, bat.ID.Value+".ac", source{bat.ID.Value, working.Stated("I_ac", "A", sheet.ACCurrentMaxA), working.Stated("n_ph", "", sheet.Phases)})
		case !sheet.Coupling.Stated():
			m.missing = append(m.missing, working.Unstated(sheet.Coupling.At()))
		}
	}
	if in.AC.ExistingGeneration == nil {
		m.missing = append(m.missing, working.Unstated(in.AC.Member("existing_generation")))
	}
	for _, g := range in.AC.ExistingGeneration {
		m.add(in, c, g.Way.Value, source{g.ID.Value, working.Stated("I_ac", "A", g.ACCurrentMaxA), working.Stated("n_ph", "", g.Phases)})
	}
	return m
}

// add follows the way of a source from its terminal to the supply.
func (m *mains) add(in *schema.Installation, c *circuit.Circuit, terminal string, s source) {
	p := c.ToSupply(terminal)
	if p.Untraced != nil {
		m.missing = append(m.missing, p.Untraced...)
		if !in.AC.Supply.ID.Stated() {
			m.missing = append(m.missing, working.Unstated(in.AC.Supply.ID.At()))
		}
		return
	}
	for _, r := range p.Runs {
		m.by[r] = append(m.by[r], s)
	}
}

// current adds up the greatest currents of the sources on a run.
func (m *mains) current(run int) working.Number {
	if m.missing != nil {
		return working.Unknown("I_b", "A", m.missing...)
	}
	var all []working.Number
	for _, s := range m.by[run] {
		all = append(all, s.current)
	}
	return working.Sum("I_b", "A", all...)
}

// feeds lists the sources on a run.
func (f *Run) feeds(run int, p *plan) {
	if !f.Service.Known() {
		f.Inverters = working.UnknownList(f.Service.Missing()...)
		return
	}
	if f.Service.Value() == "ac" && p.mains.missing != nil {
		f.Inverters = working.UnknownList(p.mains.missing...)
		return
	}
	var ids []string
	for _, s := range p.mains.by[run] {
		ids = append(ids, s.id)
	}
	f.Inverters = working.List(ids...)
}

// loaded counts the loaded conductors: they follow from the circuit, whatever other
// cores the cable has. An AC run has as many as its sources have lines, or the
// supply, and two where that is one.
func (f *Run) loaded(i int, p *plan) {
	f.Loaded = working.Counted("n_load", 2, f.At)
	if !f.Service.Known() {
		f.Loaded = working.Unknown("n_load", "", f.Service.Missing()...)
		return
	}
	if f.Service.Value() != "ac" {
		return
	}
	switch phases := p.phasesOn(i); {
	case !phases.Known():
		f.Loaded = working.Unknown("n_load", "", phases.Missing()...)
	case phases.Value() == 3:
		f.Loaded = working.Counted("n_load", 3, f.At)
	}
}

// phasesOn is the most phases of any source on the run; of the supply where it
// carries none.
func (p *plan) phasesOn(i int) working.Number {
	var all []working.Number
	for _, s := range p.mains.by[i] {
		all = append(all, s.phases)
	}
	if len(all) == 0 || p.mains.missing != nil {
		all = append(all, working.Stated("n_ph", "", p.in.AC.Supply.Phases))
	}
	return working.Greatest("n_ph", "", all...)
}

// batteries knows the current of each run between a battery and its inverter.
type batteries map[int]working.Number

func batteriesOf(in *schema.Installation, c *circuit.Circuit) batteries {
	b := batteries{}
	for _, bat := range in.Storage.Batteries {
		path := c.ToInverter(bat.ID.Value)
		i := slices.IndexFunc(in.Inverters, func(inv schema.Inverter) bool { return inv.ID.Value == path.Input })
		if i < 0 || path.Ambiguous {
			continue // coupled on the AC side, or its run is not described
		}
		sheet := in.Inverters[i].Datasheet.To()
		for _, r := range path.Runs {
			b[r] = working.Greatest("I_b", "A", working.Stated("I_bat", "A", sheet.BatteryCurrentMaxA))
		}
	}
	return b
}

// current is the greatest current that the inverter draws from or puts into the
// batteries on a run.
func (b batteries) current(run int) working.Number {
	if n, ok := b[run]; ok {
		return n
	}
	return working.Unknown("I_b", "A", "/storage/batteries", "/cables")
}
