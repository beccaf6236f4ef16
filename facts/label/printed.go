package label

import (
	"slices"

	"sunclause/facts/circuit"
	"sunclause/facts/pvstring"
	"sunclause/facts/working"
	"sunclause/schema"
)

// values are what the strings behind a part come to: the highest voltage, and
// the greatest current of one of its ways or inputs.
type values struct{ vocMax, vocStc, iscMax, iscStc working.Number }

// behind is what the strings behind a part come to, worked out once.
func (j *job) behind(part string) values {
	v, known := j.values[part]
	if !known {
		v = j.valuesBehind(part)
		j.values[part] = v
	}
	return v
}

// valuesBehind works out what the strings behind a part come to. Of a part that
// carries no current of strings it is unknown.
func (j *job) valuesBehind(part string) values {
	ways, known := j.stringsBehind(part)
	var missing []working.Gap
	switch {
	case !known:
	case j.pv.Untraced != nil:
		missing, ways = j.pv.Untraced, nil
	case len(slices.Concat(ways...)) == 0:
		missing = []working.Gap{working.Unstated("/cables")}
	}
	v := values{working.Unknown("U_oc,max", "V", missing...), working.Unknown("U_oc,STC", "V", missing...),
		working.Unknown("I_sc,max", "A", missing...), working.Unknown("I_sc", "A", missing...)}
	if len(slices.Concat(ways...)) == 0 {
		return v
	}
	v.vocMax = greatestOf("U_oc,max", ways, func(s *pvstring.String) working.Number { return s.VocMaxV })
	v.vocStc = greatestOf("U_oc,STC", ways, func(s *pvstring.String) working.Number { return s.VocStcV })
	v.iscMax = greatestSum("I_sc,max", ways, func(s *pvstring.String) working.Number { return s.IscMaxA })
	v.iscStc = greatestSum("I_sc", ways, func(s *pvstring.String) working.Number { return s.IscStcA })
	return v
}

func greatestOf(symbol string, ways [][]*pvstring.String, member func(*pvstring.String) working.Number) working.Number {
	var all []working.Number
	for _, s := range slices.Concat(ways...) {
		all = append(all, member(s))
	}
	return working.Greatest(symbol, "V", all...)
}

func greatestSum(symbol string, ways [][]*pvstring.String, member func(*pvstring.String) working.Number) working.Number {
	var sums []working.Number
	for _, way := range ways {
		var all []working.Number
		for _, s := range way {
			all = append(all, member(s))
		}
		sums = append(sums, working.Sum("I_way", "A", all...))
	}
	return working.Greatest(symbol, "A", sums...)
}

// stringsBehind lists the strings behind a part, by its ways or inputs, and
// whether it is a part that carries the current of strings at all.
func (j *job) stringsBehind(part string) (ways [][]*pvstring.String, carries bool) {
	if i, is := j.isolator[part]; is {
		return j.throughIsolator(i), j.c.OpensMade(&j.in.Isolators[i]).Value() == circuit.PV
	}
	for _, i := range j.inputs[part] {
		ways, carries = append(ways, j.stringsByID(j.pv.Mppts[i].Strings)), true
	}
	if carries {
		return ways, true
	}
	i, is := j.runs[part]
	if j.arrays[part] {
		i, is = j.leaves[part+".out"]
	}
	if !is {
		return nil, j.arrays[part]
	}
	return [][]*pvstring.String{j.stringsByID(j.cables.Runs[i].Strings)}, j.c.CarriesPV(i)
}

func (j *job) throughIsolator(i int) [][]*pvstring.String {
	var ways [][]*pvstring.String
	for _, way := range j.through[i] {
		var inWay []*pvstring.String
		for _, s := range way {
			inWay = append(inWay, &j.pv.Strings[s])
		}
		ways = append(ways, inWay)
	}
	return ways
}

// stringsByID finds strings by their ids, in the order of the document.
func (j *job) stringsByID(ids working.Names) []*pvstring.String {
	var places []int
	for _, id := range ids.Values() {
		if i, is := j.strings[id]; is {
			places = append(places, i)
		}
	}
	slices.Sort(places)
	var found []*pvstring.String
	for _, i := range slices.Compact(places) {
		found = append(found, &j.pv.Strings[i])
	}
	return found
}

// printed holds the values on a label against those of its part.
func (f *Label) printed(j *job, l *schema.Label) {
	f.DischargeMakerMin = working.NoNumber("t_maker", "min")
	if sheet, is := j.sheets[l.On.Value]; is {
		f.DischargeMakerMin = working.Stated("t_maker", "min", sheet.DischargeWaitMin)
	}
	v := j.behind(f.On.Value())
	switch {
	case !l.ValuesAt.Stated():
		f.VoltageDerivedV, f.CurrentDerivedA = working.Unknown("U", "V", l.ValuesAt.At()), working.Unknown("I", "A", l.ValuesAt.At())
	case l.ValuesAt.Value == "stc":
		f.VoltageDerivedV, f.CurrentDerivedA = v.vocStc, v.iscStc
	default:
		f.VoltageDerivedV, f.CurrentDerivedA = v.vocMax, v.iscMax
	}
	f.VoltageRatio = working.Ratio("U_lab/U", f.VoltagePrintedV, f.VoltageDerivedV)
	f.CurrentRatio = working.Ratio("I_lab/I", f.CurrentPrintedA, f.CurrentDerivedA)
}

var unitsEnergy = working.NewFormula("E", "kWh", "n_units · E_unit", working.ByDefinition)

// battery takes what the battery that carries a label is rated for.
func (f *Label) battery(j *job, l *schema.Label) {
	list := j.in.Storage.Batteries
	f.Batteries = working.Counted("n_bat", len(list), "/storage/batteries")
	if list == nil {
		f.Batteries = working.Unknown("n_bat", "", "/storage/batteries")
	}
	f.EnergyDerivedKwh, f.BatteryNominalV = working.NoNumber("E", "kWh"), working.NoNumber("U_nom", "V")
	for i := range list {
		b := &list[i]
		if !l.On.Is(b.ID.Value) {
			continue
		}
		sheet := b.Datasheet.To()
		f.EnergyDerivedKwh = unitsEnergy.Of(working.Stated("n_units", "", b.Units), working.Stated("E_unit", "kWh", sheet.EnergyKwh))
		f.BatteryNominalV = working.Stated("U_nom", "V", sheet.VoltageNominalV)
	}
}
