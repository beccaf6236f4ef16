package accircuit

import "sunclause/facts/working"

// Circuit holds the facts of one circuit that leaves a way of a board toward a
// generator. The one that ends at the generator bears the id of its way, as do
// the distribution circuits between it and the supply; a generator whose way to
// the supply is not known has one under the name of its own terminal.
type Circuit struct {
	working.Subject
	Use
	Protection
	Loop
	Withstand
	Residual
	Isolation
	Rise
}

func (m *mains) circuits() []Circuit {
	if m.in.Inverters == nil && m.in.Storage.Batteries == nil {
		return nil
	}
	all := []Circuit{}
	for _, l := range m.links() {
		all = append(all, m.circuitOf(l))
	}
	return all
}

func (m *mains) circuitOf(l *link) Circuit {
	f := Circuit{Subject: working.Subject{ID: l.id, At: l.at, Name: "AC circuit " + l.id}}
	f.Use = m.use(l)
	f.Protection = m.protection(l, f.Use)
	f.Loop = m.loop(l, f.Use, f.Protection)
	f.Residual = m.residual(l, f.Use)
	f.Loop.residualVoltages(f.Residual)
	f.Withstand = m.withstand(l, f.Protection, f.Loop)
	f.Isolation = m.isolation(l)
	f.Rise = m.rise(l)
	return f
}
