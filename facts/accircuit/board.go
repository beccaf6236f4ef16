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
	RoleByCircuit        working.Text   `json:"role_by_circuit" words:"which board it is by what it hangs on"`
	RatedA               working.Number `json:"rated_a" words:"rated current of the board, InA"`
	IncomingA            working.Number `json:"incoming_a" words:"rated current of the overcurrent device before it"`
	IncomingOvercurrent  working.Flag   `json:"incoming_overcurrent" words:"whether the device before it is one against overcurrent"`
	Generators           working.Names  `json:"generators" words:"generators whose current enters it by one of its ways"`
	GeneratorsCounted    working.Number `json:"generators_counted" words:"how many those are"`
	GenerationA          working.Number `json:"generation_a" words:"greatest current of those generators in one line conductor"`
	CarriesLoads         working.Flag   `json:"carries_loads" words:"whether loads are fed from the same busbars, where its ways do not say otherwise"`
	LoadsStated          working.Text   `json:"loads_stated" words:"whether its busbars are said to carry loads"`
	LoadsByWays          working.Text   `json:"loads_by_ways" words:"whether they do by what its ways serve; the word of the document where those decide nothing"`
	BusbarDutyA          working.Number `json:"busbar_duty_a" words:"current that can flow in its busbars: the incoming device and, where loads are fed, the generators"`
	ShortCircuitRatingKa working.Number `json:"short_circuit_rating_ka" words:"short-circuit rating of the board"`
	FaultLevelKa         working.Number `json:"fault_level_ka" words:"prospective fault current at the origin, which no board exceeds"`
	MainSwitchPoles      working.Number `json:"main_switch_poles" words:"poles of its main switch"`
	MainSwitchTogether   working.Flag   `json:"main_switch_together" words:"whether one movement opens all poles of its main switch"`
	MainSwitchA          working.Number `json:"main_switch_a" words:"rated current of its main switch on AC, the least that its sheet gives"`
	SwitchCanLock        working.Flag   `json:"main_switch_can_lock" words:"whether the sheet of its main switch says that it can be locked open"`
	WaysGreatestA        working.Number `json:"ways_greatest_a" words:"greatest device of its ways that are in use"`
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
		CarriesLoads:         working.AgreedFlag(working.StatedFlag(b.BusbarCarriesLoads), m.loadsOf(b)),
		LoadsStated:          word(working.StatedFlag(b.BusbarCarriesLoads)),
		ShortCircuitRatingKa: working.Stated("I_cw", "kA", b.ShortCircuitRatingKa),
		FaultLevelKa:         working.Stated("I_pf", "kA", m.in.AC.Supply.ProspectiveFaultKa),
		MainSwitchPoles:      working.Stated("n_poles", "", mainSwitch.Poles),
		MainSwitchTogether:   working.StatedFlag(mainSwitch.BreaksAllPolesTogether),
		MainSwitchA:          ratedOnAC(b.MainSwitch),
		SwitchCanLock:        working.StatedFlag(mainSwitch.LockableOff),
		WaysGreatestA:        greatestWay(b),
		MainSwitchLockable:   working.StatedFlag(b.MainSwitchLockable),
		Combustible:          working.StatedFlag(b.Combustible),
		FireSealed:           working.StatedFlag(b.FireSealed),
	}
	f.RoleByCircuit = m.roleOf(b, f.Role)
	f.LoadsByWays = word(m.loadsOf(b))
	if !f.LoadsByWays.Known() {
		f.LoadsByWays = f.LoadsStated
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
				missing = append(missing, m.untracedOf(g)...)
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

// word is yes or no as a word.
func word(f working.Flag) working.Text {
	switch {
	case !f.Known():
		return working.UnknownText(f.Missing()...)
	case f.Value():
		return working.KnownText("yes", f.At())
	}
	return working.KnownText("no", f.At())
}

// loadsOf reports whether one of a board's ways feeds loads. Where none is said to, it is
// not known: others may be there, or behind another board.
func (m *mains) loadsOf(b *schema.Board) working.Flag {
	for i := range b.Ways {
		if serves := m.circuit.Serves(b.ID.Value + "." + b.Ways[i].ID.Value); serves.Known() && slices.Contains(loadWords, serves.Value()) {
			return working.KnownFlag(true, b.Ways[i].At())
		}
	}
	return working.UnknownFlag(b.Member("ways"))
}

// The words for ways that feed what uses current, and for those that lead on to other
// circuits.
var (
	loadWords = []string{"load", "lighting", "sockets", "heating", "ev_charger"}
	onward    = []string{"sub_board", "backup"}
)

// roleOf is which board a board is: the main one where no other stands before it. One
// from whose busbars nothing but generators is fed may be called a generation board,
// and one behind a switch between sources a backup board, as is
// one on the backup output of an inverter.
func (m *mains) roleOf(b *schema.Board, stated working.Text) working.Text {
	path := m.circuit.ToSupply(b.ID.Value + ".in")
	if by := m.circuit.OnBackup(b.ID.Value + ".in"); by != "" {
		return working.KnownText("backup", by)
	}
	if path.Input == "" || path.Ambiguous {
		return working.UnknownText("/cables")
	}
	role, at := "main", m.in.AC.Supply.At()
	if len(path.Ways) > 0 {
		role, at = "sub", m.outlets[path.Ways[0]].way.At()
	}
	loads := m.loadsOf(b)
	switch {
	case stated.Value() == "generation" && !loads.Known(),
		stated.Value() == "backup" && m.circuit.BehindSwitch(b.ID.Value+".in"):
		return working.KnownText(stated.Value(), at)
	}
	return working.KnownText(role, at)
}

// ratedOnAC is the least of the rated currents that the sheet of a switch gives for AC.
func ratedOnAC(key schema.Ref[schema.SwitchDisconnector]) working.Number {
	var rated []working.Number
	sheet := key.To()
	for _, r := range sheet.Ratings {
		if strings.HasPrefix(r.UtilizationCategory.Value, "AC") {
			rated = append(rated, working.Stated("I_e", "A", r.IeA))
		}
	}
	switch {
	case rated != nil:
		return working.Least("I_e", "A", rated...)
	case sheet.Ratings != nil:
		return working.Unknown("I_e", "A", working.OffList(sheet.Member("ratings"), "category for AC"))
	}
	return working.Unknown("I_e", "A", sheet.Member("ratings"))
}

// greatestWay is the greatest device of the ways of a board that are in use.
func greatestWay(b *schema.Board) working.Number {
	var rated []working.Number
	for i := range b.Ways {
		if w := &b.Ways[i]; w.Device.Stated() || !w.Serves.Is("spare") {
			rated = append(rated, working.Stated("I_n", "A", w.Device.To().RatedA))
		}
	}
	if rated == nil {
		return working.Unknown("I_n,max", "A", b.Member("ways"))
	}
	return working.Greatest("I_n,max", "A", rated...)
}
