package earthing

import (
	"slices"
	"strings"

	"sunclause/facts/book"
	"sunclause/facts/working"
	"sunclause/schema"
)

// System holds the facts of the earthing of the premises.
type System struct {
	Lightning

	Arrangement         working.Text   `json:"arrangement" words:"system earthing at the origin: TN-S, TN-C-S, TT, …"`
	FrameRegime         working.Text   `json:"frame_regime" words:"whose advice on connecting frames the rule set follows"`
	ElectrodeCount      working.Number `json:"installation_electrodes" words:"earth electrodes that serve the installation"`
	ElectrodeOhm        working.Number `json:"electrode_resistance_ohm" words:"greatest resistance to earth of an electrode that serves the installation"`
	EarthingMm2         working.Number `json:"earthing_conductor_mm2" words:"cross-section of the earthing conductor, as copper"`
	EarthingTableMm2    working.Number `json:"earthing_conductor_table_mm2" words:"cross-section of the earthing conductor by that of the lines"`
	EarthingAdiabatic   working.Number `json:"earthing_conductor_adiabatic_mm2" words:"cross-section that stands the earth fault current until the supply's device opens"`
	EarthingDueMm2      working.Number `json:"earthing_conductor_due_mm2" words:"least cross-section of the earthing conductor, the lesser of the two ways"`
	EarthingBuried      working.Flag   `json:"earthing_conductor_buried" words:"whether the earthing conductor is buried"`
	EarthingBuriedMm2   working.Number `json:"earthing_conductor_buried_min_mm2" words:"least cross-section of the earthing conductor where it is buried"`
	EarthingConnected   working.Flag   `json:"earthing_conductor_connected" words:"whether the earthing conductor was found connected at both ends"`
	MainBondingDueMm2   working.Number `json:"main_bonding_due_mm2" words:"least cross-section of main bonding conductors"`
	SmallestMainBondMm2 working.Number `json:"smallest_main_bond_mm2" words:"cross-section of the smallest main bond, as copper"`
	MainBonded          working.Names  `json:"main_bonded" words:"what the main bonds join to the main earthing terminal"`
}

var (
	originFault    = working.NewFormula("I_f", "A", "U_0 / Z_e", faultAtOrigin)
	halfOfEarthing = working.NewFormula("S_half", "mm²", "S_E / 2, at least S_min, at most S_max", mainBonding)
)

func systemOf(in *schema.Installation, f Facts, b book.Book) System {
	earthing := in.Earthing.EarthingConductor
	s := System{
		Lightning:         lightningOf(in, b),
		Arrangement:       working.StatedText(in.Earthing.Arrangement),
		FrameRegime:       regime(b),
		EarthingMm2:       sizeOf("S_E", earthing, b),
		EarthingTableMm2:  ProtectiveSize("S_E,tab", working.Stated("S_L", "mm²", in.AC.Supply.LineMm2), b),
		EarthingAdiabatic: originAdiabatic(in, b),
		EarthingBuried:    working.StatedFlag(earthing.Buried),
		EarthingBuriedMm2: buriedLeast("S_buried", earthing, b),
		EarthingConnected: working.StatedFlag(earthing.Connected),
	}
	s.EarthingDueMm2 = leastKnown("S_E,min", s.EarthingTableMm2, s.EarthingAdiabatic)
	s.MainBondingDueMm2 = bondingDue(in, s, b)
	s.electrode(f.Electrodes)
	s.bonds(f.MainBonds)
	return s
}

// regime is the advice that the rule set follows; a word that no rule knows
// would switch rules off.
func regime(b book.Book) working.Text {
	word := b.Word("frame_regime")
	known := []string{"iec_62548", "iet_code_of_practice", "guide_2012"}
	if word.Known() && !slices.Contains(known, word.Value()) {
		return working.UnknownText("a word that frame_regime knows: " + strings.Join(known, ", "))
	}
	return word
}

// leastKnown is the least of those sizes that are known, any of which will do;
// leaving one out never makes it smaller.
func leastKnown(symbol string, sizes ...working.Number) working.Number {
	known := slices.DeleteFunc(slices.Clone(sizes), func(n working.Number) bool { return !n.Known() })
	if len(known) == 0 {
		known = sizes
	}
	return working.Least(symbol, "mm²", known...)
}

// originAdiabatic is the size that stands the earth fault current at the origin
// until the supply's device opens, as a size that is made.
func originAdiabatic(in *schema.Installation, b book.Book) working.Number {
	current := originFault.Of(working.Stated("U_0", "V", in.AC.Supply.VoltageV), working.Stated("Z_e", "Ω", in.AC.Supply.ZeOhm))
	size := Adiabatic("S_ad", current, opensWithin(in, current), adiabaticFactor(in.Earthing.EarthingConductor, b))
	return StandardSize("S_E,ad", size, b)
}

// opensWithin is the shortest time for which the maker of the supply's device
// gives a current that the fault reaches.
func opensWithin(in *schema.Installation, current working.Number) working.Number {
	device := in.AC.Supply.Device
	if !device.Stated() {
		return working.Unknown("t", "s", device.At())
	}
	if !current.Known() {
		return working.Unknown("t", "s", current.Missing()...)
	}
	d := device.To()
	for _, at := range []struct {
		seconds float64
		current schema.Number
	}{{0.2, d.Operates02sA}, {0.4, d.Operates04sA}, {1, d.Operates1sA}, {5, d.Operates5sA}} {
		if at.current.Stated() && at.current.Value <= current.Value() {
			return working.Figure("t", "s", at.seconds, "datasheet", working.ByDefinition).ChosenBy(at.current.At())
		}
	}
	return working.Unknown("t", "s", d.Operates02sA.At(), d.Operates04sA.At(), d.Operates1sA.At(), d.Operates5sA.At())
}

// bondingDue is the least size of main bonds: half of the earthing conductor,
// which counts as no larger than the lines ask for, between two bounds; or, where
// the rule set says so and the supply has protective multiple earthing, by the
// neutral of the supply.
func bondingDue(in *schema.Installation, s System, b book.Book) working.Number {
	method := b.Word("main_bonding_method")
	switch {
	case !method.Known():
		return working.Unknown("S_b,min", "mm²", method.Missing()...)
	case !slices.Contains([]string{"half", "half_or_pme"}, method.Value()):
		return working.Unknown("S_b,min", "mm²", "a word that main_bonding_method knows: half, half_or_pme")
	case method.Value() == "half":
	case !s.Arrangement.Known():
		return working.Unknown("S_b,min", "mm²", s.Arrangement.Missing()...)
	case s.Arrangement.Value() == "TN-C-S":
		return covering(b, "main_bonding_pme", "neutral_up_to_mm2", working.Stated("S_N", "mm²", in.AC.Supply.NeutralMm2), "bond_mm2", "S_b,min")
	}
	half := halfOfEarthing.Of(leastKnown("S_E", s.EarthingTableMm2, s.EarthingMm2),
		b.Number("main_bond_min_mm2", "S_min"), b.Number("main_bond_max_mm2", "S_max"))
	return StandardSize("S_b,min", half, b)
}

// electrode takes the electrodes that serve the installation. Of several, the
// worst counts: any of them may be the one that is left.
func (s *System) electrode(all []Electrode) {
	missing := []string{"/earthing/electrodes"}
	s.ElectrodeCount, s.ElectrodeOhm = working.Unknown("n_el", "", missing...), working.Unknown("R_A", "Ω", missing...)
	if all == nil {
		return
	}
	var own []working.Number
	for _, e := range all {
		if !e.Serves.Known() {
			s.ElectrodeCount, s.ElectrodeOhm = working.Unknown("n_el", "", e.Serves.Missing()...), working.Unknown("R_A", "Ω", e.Serves.Missing()...)
			return
		}
		if e.Serves.Value() == "installation" {
			own = append(own, e.ResistanceOhm)
		}
	}
	s.ElectrodeCount = working.Counted("n_el", len(own), missing[0])
	if len(own) > 0 {
		s.ElectrodeOhm = working.Greatest("R_A", "Ω", own...)
	}
}

// bonds takes what the main bonds join, and the smallest of them.
func (s *System) bonds(all []MainBond) {
	s.MainBonded = working.UnknownList("/earthing/main_bonds")
	s.SmallestMainBondMm2 = working.Unknown("S_b", "mm²", "/earthing/main_bonds")
	if all == nil {
		return
	}
	var names []string
	var sizes []working.Number
	for _, m := range all {
		names, sizes = append(names, m.Bonds.Value()), append(sizes, m.SizeMm2)
	}
	s.MainBonded = working.List(names...)
	if len(sizes) > 0 {
		s.SmallestMainBondMm2 = working.Least("S_b", "mm²", sizes...)
	}
}
