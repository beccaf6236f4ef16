package isolator

import (
	"sunclause/facts/circuit"
	"sunclause/facts/pvstring"
	"sunclause/facts/working"
	"sunclause/schema"
)

// duty works out what the strings put on the isolator: for each of its ways the
// strings that pass through it, and from them the voltage and the current.
func (f *Isolator) duty(through [][]int, pv pvstring.Facts, builtIn map[string]working.Flag) {
	if pv.Untraced != nil {
		f.Strings = working.UnknownList(pv.Untraced...)
		f.Inverters = working.UnknownList(pv.Untraced...)
		f.unknownDuty(pv.Untraced)
		return
	}
	var ids, inverters []string
	var voltages, currents, parallel []working.Number
	for _, way := range through {
		var inWay []working.Number
		for _, i := range way {
			s := &pv.Strings[i]
			ids = append(ids, s.ID)
			inverters = append(inverters, s.Inverter.Value())
			voltages = append(voltages, s.VocMaxV)
			parallel = append(parallel, s.StringsParallel)
			inWay = append(inWay, s.IscMaxA)
		}
		currents = append(currents, backward(pv, way, working.Sum("I_way", "A", inWay...)))
	}
	f.Strings = working.List(ids...)
	f.serves(inverters, builtIn)
	f.StringsParallel = working.Greatest("N_p", "", parallel...)
	f.VocMaxV = working.Greatest("U_oc,max", "V", voltages...)
	f.IscMaxA = working.Greatest("I_duty", "A", currents...)
	if len(ids) == 0 {
		f.noStrings()
	}
}

var fromOthers = working.NewFormula("I_rev", "A", "I_sc,max,input − I_way", working.Source{Document: "IEC 60947-3", Edition: "2020", Clause: "Annex D, DC-PV2: overcurrents and reverse currents of parallel strings", How: working.Memory})

// backward is the greater of what the strings of a way drive forward and of what the
// others on the same tracking input drive back through it, wherever they are joined:
// before the isolator, behind it or inside the inverter.
func backward(pv pvstring.Facts, way []int, own working.Number) working.Number {
	if len(way) == 0 {
		return own
	}
	input := pv.Strings[way[0]].Mppt.Value()
	for i := range pv.Mppts {
		if m := &pv.Mppts[i]; m.ID == input && m.StringsParallel.Value() > float64(len(way)) {
			return working.Greatest("I_way", "A", own, fromOthers.Of(m.IscMaxA.As("I_sc,max,input"), own))
		}
	}
	return own
}

// serves takes the inverters that the strings feed, and whether one of them has
// an isolator inside.
func (f *Isolator) serves(inverters []string, builtIn map[string]working.Flag) {
	f.Inverters = working.List(inverters...)
	f.InvertersServed = working.Counted("n_inv", len(f.Inverters.Values()), f.At)
	var inside []working.Flag
	for _, id := range f.Inverters.Values() {
		inside = append(inside, builtIn[id])
	}
	f.InverterIsolator = working.Any(inside...)
}

// isolatorsInside reports for each inverter whether it has an isolator inside.
func isolatorsInside(in *schema.Installation) map[string]working.Flag {
	flags := map[string]working.Flag{}
	for _, inv := range in.Inverters {
		flags[inv.ID.Value] = working.StatedFlag(inv.Datasheet.To().DCIsolatorBuiltIn)
	}
	return flags
}

// noStrings leaves the duty of an isolator unknown through which no string passes:
// no current is not the same as none known. For one that is to open PV strings
// it is the runs to it that are missing.
func (f *Isolator) noStrings() {
	missing := f.Circuit.Missing()
	if f.Circuit.Value() == circuit.PV {
		missing = []working.Gap{working.Unstated("/cables")}
	}
	f.unknownDuty(missing)
}

// unknownDuty leaves unknown what hangs on the strings, because the named
// members are missing.
func (f *Isolator) unknownDuty(missing []working.Gap) {
	f.VocMaxV = working.Unknown("U_oc,max", "V", missing...)
	f.IscMaxA = working.Unknown("I_duty", "A", missing...)
	f.StringsParallel = working.Unknown("N_p", "", missing...)
	f.InvertersServed = working.Unknown("n_inv", "", missing...)
	f.InverterIsolator = working.UnknownFlag(missing...)
}

func stringIDs(pv pvstring.Facts) []string {
	ids := make([]string, len(pv.Strings))
	for i := range pv.Strings {
		ids[i] = pv.Strings[i].ID
	}
	return ids
}

// rating picks the row of the maker's table that holds for the isolator: of the
// rows in its utilization category and wiring, the one with the lowest rated
// voltage that still covers the duty, since the rated current belongs to a
// voltage; where none covers it, the one with the highest. A table has no
// answer between its rows.
func (f *Isolator) rating(iso *schema.Isolator) {
	sheet := iso.Datasheet.To()
	missing := f.ratingNeeds(iso)
	if len(missing) > 0 {
		f.UeV, f.IeA = working.Unknown("U_e", "V", missing...), working.Unknown("I_e", "A", missing...)
		return
	}
	var best *schema.SwitchRating
	for i := range sheet.Ratings {
		r := &sheet.Ratings[i]
		if !r.UtilizationCategory.Is(iso.UtilizationCategory.Value) || r.PolesInSeries.Value != iso.PolesInSeries.Value {
			continue
		}
		if best == nil || f.better(r.UeV.Value, best.UeV.Value) {
			best = r
		}
	}
	if best == nil { // the sheet has no row for this use: nothing is shown to carry it
		at := sheet.Member("ratings")
		f.UeV, f.IeA = working.Unknown("U_e", "V", at), working.Unknown("I_e", "A", at)
		return
	}
	f.UeV, f.IeA = working.Stated("U_e", "V", best.UeV), working.Stated("I_e", "A", best.IeA)
}

func (f *Isolator) ratingNeeds(iso *schema.Isolator) []working.Gap {
	var missing []working.Gap
	for _, t := range []schema.Text{iso.Datasheet.Text, iso.UtilizationCategory} {
		if !t.Stated() {
			missing = append(missing, working.Unstated(t.At()))
		}
	}
	if !iso.PolesInSeries.Stated() {
		missing = append(missing, working.Unstated(iso.PolesInSeries.At()))
	}
	if from := f.VocMaxV.Pointers(); len(from) > 0 {
		missing = append(missing, circuit.Misused(iso.UtilizationCategory, "DC", from[0])...)
	}
	return append(missing, f.VocMaxV.Missing()...)
}

// better reports whether a rated voltage suits the duty better than another.
func (f *Isolator) better(ue, than float64) bool {
	duty := f.VocMaxV.Value()
	if ue >= duty && than >= duty {
		return ue < than
	}
	return ue > than
}
