package earthing

import (
	"slices"

	"sunclause/facts/book"
	"sunclause/facts/pvstring"
	"sunclause/facts/working"
	"sunclause/schema"
)

// Frame holds the facts of one array frame, or of other metal of the PV work.
type Frame struct {
	working.Subject

	Conductive       working.Flag   `json:"conductive" words:"whether it is of metal"`
	Connection       working.Text   `json:"connection" words:"how it is connected to earth"`
	Reason           working.Text   `json:"reason" words:"why it is connected so, or not at all"`
	EarthedThrough   working.Text   `json:"earthed_through" words:"what the runs of cable connect it to: main_terminal or electrode"`
	LimitKohm        working.Number `json:"extraneous_limit_kohm" words:"resistance to the main earthing terminal up to which it brings in earth potential"`
	ResistanceKohm   working.Number `json:"resistance_to_main_terminal_kohm" words:"its resistance to the main earthing terminal, not yet bonded"`
	TouchesMetal     working.Flag   `json:"touches_building_metal" words:"whether it touches metal of the building that leads to earth"`
	Extraneous       working.Flag   `json:"extraneous" words:"whether it is an extraneous-conductive-part; in a design without a reading, whether it is connected as one"`
	Exposed          working.Flag   `json:"exposed" words:"whether it is an exposed-conductive-part: it carries modules of class I or 0"`
	InvertersSplit   working.Flag   `json:"inverters_separated" words:"whether all inverters that its strings feed give at least simple separation"`
	Reach            working.Text   `json:"within_reach_from" words:"from where people can touch it"`
	OutsideZone      working.Flag   `json:"outside_equipotential_zone" words:"whether it stands where the main bonding does not reach"`
	LightningGapM    working.Number `json:"gap_to_lightning_protection_m" words:"least distance from conductors of the lightning protection system"`
	BondMm2          working.Number `json:"bond_mm2" words:"cross-section of the thinnest conductor on its way to earth, as copper"`
	BesidePower      working.Flag   `json:"bond_beside_power" words:"whether the conductors on its way to earth are laid along with cables that carry power"`
	ModulesBondedBy  working.Text   `json:"modules_bonded_by" words:"what joins module frames to rails"`
	BondListed       working.Flag   `json:"bond_listed" words:"whether clamps, rails and jumpers are certified as means of bonding"`
	RemovalKeepsBond working.Flag   `json:"module_can_be_removed" words:"whether the bond of the others stays when a module is taken out"`
	MetalsCompatible working.Flag   `json:"metals_compatible" words:"whether the joints are of metals that do not corrode each other"`
	JointsLabelled   working.Flag   `json:"joints_labelled" words:"whether earthing joints outside switchgear carry a label"`
}

func frames(in *schema.Installation, pv pvstring.Facts, n network, b book.Book) []Frame {
	if in.Earthing.Frames == nil {
		return nil
	}
	all := make([]Frame, len(in.Earthing.Frames))
	for i, fr := range in.Earthing.Frames {
		f := frameOf(fr)
		f.LimitKohm = extraneousLimit(in, b)
		f.Extraneous = extraneous(f, in.Project.Stage.Is("design"))
		f.Exposed = exposed(&fr)
		f.InvertersSplit = separated(&fr, pv)
		f.EarthedThrough = n.root(f.ID)
		f.BondMm2 = n.size("S_PE", f.ID)
		f.BesidePower = n.besidePower(f.ID)
		all[i] = f
	}
	return all
}

// frameOf takes what is stated of the frame.
func frameOf(fr schema.ArrayFrame) Frame {
	return Frame{
		Subject:          working.Subject{ID: fr.ID.Value, At: fr.At(), Name: "frame " + fr.ID.Value},
		Conductive:       working.StatedFlag(fr.Conductive),
		Connection:       working.StatedText(fr.Connection),
		Reason:           working.StatedText(fr.Reason),
		ResistanceKohm:   working.Stated("R", "kΩ", fr.ResistanceToMainTerminalKohm),
		TouchesMetal:     working.StatedFlag(fr.TouchesBuildingMetal),
		Reach:            working.StatedText(fr.WithinReachFrom),
		OutsideZone:      working.StatedFlag(fr.OutsideEquipotentialZone),
		LightningGapM:    working.Stated("d", "m", fr.GapToLightningProtectionM),
		ModulesBondedBy:  working.StatedText(fr.ModulesBondedBy),
		BondListed:       working.StatedFlag(fr.BondListed),
		RemovalKeepsBond: working.StatedFlag(fr.ModuleCanBeRemoved),
		MetalsCompatible: working.StatedFlag(fr.MetalsCompatible),
		JointsLabelled:   working.StatedFlag(fr.JointsLabelled),
	}
}

var harmlessFrom = working.NewFormula("R_lim", "kΩ", "U_0 / I_B − Z_T / 1000", extraneousPart)

// extraneousLimit is the resistance at which the line voltage drives through
// part and person the current that is taken as still harmless.
func extraneousLimit(in *schema.Installation, b book.Book) working.Number {
	return harmlessFrom.Of(working.Stated("U_0", "V", in.AC.Supply.VoltageV), b.Number("body_current_max_ma", "I_B"), b.Number("body_resistance_ohm", "Z_T"))
}

// extraneous reports whether a frame brings in earth potential. Touching metal
// that leads to earth settles it; not touching any does not, for only the
// measurement shows what else the frame stands on. A design in which nothing is
// measured yet takes it for what it connects it as.
func extraneous(f Frame, design bool) working.Flag {
	low := working.AtMost(f.ResistanceKohm, f.LimitKohm)
	if design && !f.ResistanceKohm.Known() {
		low = f.Connection.OneOf("main_bonding", "lightning_bonding")
	}
	return working.Any(f.TouchesMetal, low)
}

// exposed reports whether the frame becomes live when the basic insulation of a
// module fails: one module without double insulation settles it.
func exposed(fr *schema.ArrayFrame) working.Flag {
	if fr.Strings == nil {
		return working.UnknownFlag(fr.Member("strings"))
	}
	var single []working.Flag
	for _, s := range fr.Strings {
		class := s.To().Module.To().ProtectionClass
		single = append(single, working.StatedText(class).OneOf("I", "0"))
	}
	return working.Any(single...)
}

// separated reports whether all inverters behind the frame separate their DC side
// from the supply: one that does not settles it.
func separated(fr *schema.ArrayFrame, pv pvstring.Facts) working.Flag {
	if fr.Strings == nil {
		return working.UnknownFlag(fr.Member("strings"))
	}
	var separated []working.Flag
	for i := range pv.Strings {
		if s := &pv.Strings[i]; carries(fr, s.ID) {
			separated = append(separated, working.Not(separationOf(pv, s.Inverter).OneOf("none")))
		}
	}
	return working.All(separated...)
}

func carries(fr *schema.ArrayFrame, id string) bool {
	return slices.ContainsFunc(fr.Strings, func(s schema.Ref[schema.String]) bool { return s.Value == id })
}

// separationOf is what the datasheet of an inverter says of its separation.
func separationOf(pv pvstring.Facts, inverter working.Text) working.Text {
	if !inverter.Known() {
		return working.UnknownText(inverter.Missing()...)
	}
	for i := range pv.Inverters {
		if pv.Inverters[i].ID == inverter.Value() {
			return pv.Inverters[i].Separation
		}
	}
	return working.UnknownText("/inverters")
}
