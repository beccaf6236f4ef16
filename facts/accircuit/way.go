package accircuit

import (
	"slices"
	"strings"

	"sunclause/facts/working"
	"sunclause/schema"
)

// Way holds how what is stated of one way of a board, and of the circuit that leaves
// it, goes together with what hangs on it.
type Way struct {
	working.Subject
	WayDevice

	ServesStated    working.Text   `json:"serves_stated" words:"what it is said to serve"`
	ServesByCircuit working.Text   `json:"serves_by_circuit" words:"what it serves by what hangs on it; the word of the document where that decides nothing"`
	Feeds           working.Flag   `json:"generator_behind" words:"whether a generator feeds through it"`
	KeptForBattery  working.Flag   `json:"kept_for_battery" words:"whether it is kept for a battery to come"`
	Bare            working.Flag   `json:"bare" words:"whether nothing is joined to it"`
	Dedicated       working.Flag   `json:"dedicated" words:"whether its circuit is said to have nothing but the generator on it"`
	LoadsStated     working.Flag   `json:"loads_stated" words:"whether loads, socket-outlets or lighting are said to be on its circuit"`
	SocketsStated   working.Flag   `json:"sockets_stated" words:"whether socket-outlets are said to be on its circuit; what the way serves where its circuit is not described"`
	LightingStated  working.Flag   `json:"lighting_stated" words:"whether lighting is said to be on its circuit; what the way serves where its circuit is not described"`
	Described       working.Flag   `json:"circuit_described" words:"whether its circuit is among those described"`
	KindStated      working.Text   `json:"kind_stated" words:"kind of its circuit as stated; of one without a generator that of what it leads to where nothing is stated"`
	KindByCircuit   working.Text   `json:"kind_by_circuit" words:"distribution where it leads to another board, final where it leads to anything else"`
	PhaseStated     working.Text   `json:"phase_stated" words:"line conductors that it is said to be connected to"`
	PhaseOfSupply   working.Text   `json:"phase_of_supply" words:"the same where the supply has them; of a supply of one phase the name that most ways give it"`
	WayPhases       working.Number `json:"way_phases" words:"line conductors that it is said to have"`
}

func (m *mains) ways() []Way {
	if m.in.AC.Boards == nil {
		return nil
	}
	untraced, entries, one := m.notTraced(), m.entries(), m.onePhase()
	all := []Way{}
	for i := range m.in.AC.Boards {
		b := &m.in.AC.Boards[i]
		for k := range b.Ways {
			all = append(all, m.wayOf(outlet{b, &b.Ways[k]}, entries, untraced, one))
		}
	}
	return all
}

// entries are the circuits that are described, by their ways.
func (m *mains) entries() map[string]*schema.ACCircuit {
	all := map[string]*schema.ACCircuit{}
	for i := range m.in.AC.Circuits {
		all[m.in.AC.Circuits[i].Way.Value] = &m.in.AC.Circuits[i]
	}
	return all
}

// notTraced says why it is not known of every generator by which ways it feeds.
func (m *mains) notTraced() []working.Gap {
	missing := m.undeclared()
	for _, list := range [][]generator{m.own, m.existing} {
		for i := range list {
			if !list[i].traced() {
				missing = append(missing, m.untracedOf(&list[i])...)
			}
		}
	}
	return working.Gaps(missing)
}

func (m *mains) wayOf(o outlet, entries map[string]*schema.ACCircuit, untraced []working.Gap, one string) Way {
	id := o.board.ID.Value + "." + o.way.ID.Value
	entry, described := entries[id]
	if !described {
		entry = schema.Blank[schema.ACCircuit](m.in.AC.Member("circuits"))
	}
	f := Way{
		WayDevice:       m.wayDevice(o, entry),
		Subject:         working.Subject{ID: id, At: o.way.At(), Name: "way " + id},
		ServesStated:    working.StatedText(o.way.Serves),
		ServesByCircuit: m.circuit.ServesMade(id),
		Feeds:           m.feeds(id, o.way.At(), untraced),
		KeptForBattery:  working.KnownFlag(m.in.Storage.Provision.Way.Is(id), o.way.At()),
		Bare:            m.circuit.Bare(id),
		Dedicated:       working.KnownFlag(entry.Dedicated.Yes(), entry.Dedicated.At()),
		LoadsStated:     loadsOn(entry),
		SocketsStated:   working.StatedFlag(entry.Sockets),
		LightingStated:  working.StatedFlag(entry.Lighting),
		Described:       working.KnownFlag(described, o.way.At()),
		KindStated:      working.StatedText(entry.Kind),
		PhaseStated:     working.StatedText(o.way.Phase),
		PhaseOfSupply:   m.phaseOfSupply(o.way.Phase, one),
		WayPhases:       wayPhases(working.StatedText(o.way.Phase)),
	}
	if !described {
		f.SocketsStated, f.LightingStated = f.ServesStated.OneOf("sockets"), f.ServesStated.OneOf("lighting")
	}
	f.KindByCircuit = m.kindOf(id, f.KindStated)
	if !f.KindStated.Known() && f.Feeds.Known() && !f.Feeds.Value() {
		f.KindStated = f.KindByCircuit
	}
	return f
}

// feeds reports whether a generator feeds through a way. One that was not traced to the
// supply may do so.
func (m *mains) feeds(way, at string, untraced []working.Gap) working.Flag {
	switch by := m.circuit.Fed(way); {
	case by != "":
		return working.KnownFlag(true, by)
	case untraced != nil:
		return working.UnknownFlag(untraced...)
	}
	return working.KnownFlag(false, at)
}

// kindOf is final or distribution, by what a way leads to; else what is stated.
func (m *mains) kindOf(way string, stated working.Text) working.Text {
	serves := m.circuit.Serves(way)
	switch on := m.circuit.LeadsOn(way); {
	case on != "":
		return working.KnownText("distribution", on)
	case m.circuit.Fed(way) != "":
		return working.KnownText("final", m.circuit.Fed(way))
	case !serves.Known():
		return stated
	case slices.Contains(onward, serves.Value()):
		return working.KnownText("distribution", serves.At())
	case slices.Contains([]string{"sockets", "lighting", "heating", "ev_charger"}, serves.Value()):
		return working.KnownText("final", serves.At())
	}
	return stated
}

// loadsOn reports whether a circuit is said to have loads on it.
func loadsOn(entry *schema.ACCircuit) working.Flag {
	others := working.UnknownFlag(entry.OtherLoadsA.At())
	if n := entry.OtherLoadsA; n.Stated() {
		others = working.KnownFlag(n.Value > 0, n.At())
	}
	return working.Any(working.StatedFlag(entry.Sockets), working.StatedFlag(entry.Lighting), others)
}

// onePhase is the name that most ways give the line conductor of a supply of one
// phase, and the first of those as often used.
func (m *mains) onePhase() string {
	counts, most := map[string]int{}, ""
	for i := range m.in.AC.Boards {
		for _, w := range m.in.AC.Boards[i].Ways {
			if w.Phase.Stated() {
				counts[w.Phase.Value]++
				if counts[w.Phase.Value] > counts[most] {
					most = w.Phase.Value
				}
			}
		}
	}
	return most
}

// phaseOfSupply is the line conductors of a way as far as the supply has them.
func (m *mains) phaseOfSupply(phase schema.Text, one string) working.Text {
	supply := m.in.AC.Supply.Phases
	switch {
	case !phase.Stated():
		return working.UnknownText(phase.At())
	case !supply.Stated():
		return working.UnknownText(supply.At())
	case supply.Value == 1:
		return working.KnownText(one, supply.At())
	case strings.Count(phase.Value, "L") > int(supply.Value):
		return working.KnownText("L1_L2", supply.At())
	}
	return working.KnownText(phase.Value, supply.At())
}
