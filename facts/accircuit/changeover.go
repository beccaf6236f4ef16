package accircuit

import (
	"sunclause/facts/working"
	"sunclause/schema"
)

// Changeover holds the facts of one switch between sources.
type Changeover struct {
	working.Subject

	Kind             working.Text   `json:"kind" words:"how it changes over: manual, automatic or inverter_internal"`
	RatedA           working.Number `json:"rated_a" words:"rated current"`
	CurrentA         working.Number `json:"current_a" words:"rated current of the overcurrent device of the way that feeds it"`
	Interlocked      working.Flag   `json:"interlocked" words:"whether the two sources can never meet by its own movement"`
	SwitchesNeutral  working.Flag   `json:"switches_neutral" words:"whether it switches the neutral too"`
	NeutralEarthLink working.Text   `json:"neutral_earth_link" words:"how neutral and earth are joined when the public supply is away: none, relay or fixed"`
	ElectrodeNamed   working.Flag   `json:"electrode_named" words:"whether the earth electrode used while the public supply is away is named"`
}

func (m *mains) changeovers() []Changeover {
	if m.in.AC.Changeovers == nil {
		return nil
	}
	all := []Changeover{}
	for i := range m.in.AC.Changeovers {
		all = append(all, m.changeoverOf(&m.in.AC.Changeovers[i]))
	}
	return all
}

func (m *mains) changeoverOf(x *schema.Changeover) Changeover {
	f := Changeover{
		Subject:          working.Subject{ID: x.ID.Value, At: x.At(), Name: "changeover switch " + x.ID.Value},
		Kind:             working.StatedText(x.Kind),
		RatedA:           working.Stated("I_n", "A", x.RatedA),
		CurrentA:         working.Unknown("I_way", "A", m.untraced()),
		Interlocked:      working.StatedFlag(x.Interlocked),
		SwitchesNeutral:  working.StatedFlag(x.SwitchesNeutral),
		NeutralEarthLink: working.StatedText(x.NeutralEarthLink),
		ElectrodeNamed:   working.IsStated(x.Electrode),
	}
	switch path := m.circuit.ToSupply(x.ID.Value + ".grid"); {
	case path.Input == "" || path.Ambiguous:
	case len(path.Ways) > 0:
		f.CurrentA = working.Stated("I_way", "A", m.outlets[path.Ways[0]].way.Device.To().RatedA)
	default:
		f.CurrentA = working.Stated("I_way", "A", m.in.AC.Supply.Device.To().RatedA)
	}
	return f
}
