package accircuit

import (
	"slices"
	"strings"

	"sunclause/facts/working"
	"sunclause/schema"
)

// Board holds the facts of one distribution board.
type Board struct {
	working.Subject

	Role                 working.Text   `json:"role" words:"which board it is"`
	RatedA               working.Number `json:"rated_a" words:"rated current of the board, InA"`
	IncomingA            working.Number `json:"incoming_a" words:"rated current of the overcurrent device before it"`
	IncomingOvercurrent  working.Flag   `json:"incoming_overcurrent" words:"whether the device before it is one against overcurrent"`
	Generators           working.Names  `json:"generators" words:"generators whose current enters it by one of its ways"`
	GeneratorsCounted    working.Number `json:"generators_counted" words:"how many those are"`
	GenerationA          working.Number `json:"generation_a" words:"greatest current of those generators in one line conductor"`
	CarriesLoads         working.Flag   `json:"carries_loads" words:"whether loads are fed from the same busbars"`
	BusbarDutyA          working.Number `json:"busbar_duty_a" words:"current that can flow in its busbars: the incoming device and, where loads are fed, the generators"`
	ShortCircuitRatingKa working.Number `json:"short_circuit_rating_ka" words:"short-circuit rating of the board"`
	FaultLevelKa         working.Number `json:"fault_level_ka" words:"prospective fault current at the origin, which no board exceeds"`
	MainSwitchPoles      working.Number `json:"main_switch_poles" words:"poles of its main switch"`
	MainSwitchTogether   working.Flag   `json:"main_switch_together" words:"whether one movement opens all poles of its main switch"`
	MainSwitchLockable   working.Flag   `json:"main_switch_lockable" words:"whether its main switch can be locked open"`
	Combustible          working.Flag   `json:"combustible" words:"whether its enclosure burns"`
	FireSealed           working.Flag   `json:"fire_sealed" words:"whether its cable entries are sealed against the spread of fire"`
}

var busbarDuty = working.NewFormula("I_bus", "A", "I_n + I_g", bothEndsFed)

func (m *mains) boardFacts() []Board {
	if m.in.AC.Boards == nil {
		return nil
	}
	all := []Board{}
	for i := range m.in.AC.Boards {
		all = append(all, m.boardOf(&m.in.AC.Boards[i]))
	}
	return all
}

func (m *mains) boardOf(b *schema.Board) Board {
	mainSwitch, incoming := b.MainSwitch.To(), b.IncomingDevice.To()
	f := Board{
		Subject:              working.Subject{ID: b.ID.Value, At: b.At(), Name: "board " + b.ID.Value},
		Role:                 working.StatedText(b.Role),
		RatedA:               working.Stated("I_nA", "A", b.RatedA),
		IncomingA:            working.Stated("I_n", "A", incoming.RatedA),
		IncomingOvercurrent:  working.StatedText(incoming.Kind).OneOf(overcurrents...),
		CarriesLoads:         working.StatedFlag(b.BusbarCarriesLoads),
		ShortCircuitRatingKa: working.Stated("I_cw", "kA", b.ShortCircuitRatingKa),
		FaultLevelKa:         working.Stated("I_pf", "kA", m.in.AC.Supply.ProspectiveFaultKa),
		MainSwitchPoles:      working.Stated("n_poles", "", mainSwitch.Poles),
		MainSwitchTogether:   working.StatedFlag(mainSwitch.BreaksAllPolesTogether),
		MainSwitchLockable:   working.StatedFlag(b.MainSwitchLockable),
		Combustible:          working.StatedFlag(b.Combustible),
		FireSealed:           working.StatedFlag(b.FireSealed),
	}
	if o := f.IncomingOvercurrent; o.Known() && !o.Value() {
		f.IncomingA = working.Unknown("I_n", "A", working.OffList(b.IncomingDevice.At(), "overcurrent device"))
	}
	m.generation(&f)
	f.duty()
	return f
}

// generation adds up the generators whose way to the supply leads through one
// of the board's ways. A generator that was not traced may be one of them.
func (m *mains) generation(f *Board) {
	var on []*generator
	missing := m.undeclared()
	for _, list := range [][]generator{m.own, m.existing} {
		for i := range list {
			g := &list[i]
			if !g.traced() {
				missing = append(missing, working.Unstated(m.untraced()))
			}
			if slices.ContainsFunc(g.path.Ways, func(w string) bool { return strings.HasPrefix(w, f.ID+".") }) {
				on = append(on, g)
			}
		}
	}
	if len(missing) > 0 {
		f.Generators = working.UnknownList(missing...)
		f.GeneratorsCounted = working.Unknown("n_g", "", missing...)
		f.GenerationA = working.Unknown("I_g", "A", missing...)
		return
	}
	f.Generators = working.List(each(on, func(g *generator) string { return g.id })...)
	f.GeneratorsCounted = working.Counted("n_g", len(on), f.At)
	f.GenerationA = m.designCurrent(on).As("I_g")
}

// undeclared names the lists of generators that the document does not state.
func (m *mains) undeclared() []working.Gap {
	var missing []working.Gap
	if m.in.Inverters == nil {
		missing = append(missing, working.Unstated("/inverters"))
	}
	if m.in.AC.ExistingGeneration == nil {
		missing = append(missing, working.Unstated(m.in.AC.Member("existing_generation")))
	}
	return missing
}

// duty is what can flow in the busbars. Where no load is fed from them, the
// incoming device guards them against the generators too.
func (f *Board) duty() {
	switch {
	case !f.CarriesLoads.Known():
		f.BusbarDutyA = working.Unknown("I_bus", "A", f.CarriesLoads.Missing()...)
	case f.CarriesLoads.Value():
		f.BusbarDutyA = busbarDuty.Of(f.IncomingA, f.GenerationA)
	default:
		f.BusbarDutyA = f.IncomingA
	}
}
