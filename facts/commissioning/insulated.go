package commissioning

import (
	"sunclause/facts/book"
	"sunclause/facts/working"
	"sunclause/schema"
)

// stringsOfParts lists the strings that hang on each part whose insulation may
// be read: the string itself, an array, a run or an inverter.
func (d *deriver) stringsOfParts() map[string]working.Names {
	parts := map[string]working.Names{}
	for i := range d.cables.Runs {
		parts[d.cables.Runs[i].ID] = d.cables.Runs[i].Strings
	}
	for i := range d.pv.Arrays {
		parts[d.pv.Arrays[i].ID] = d.pv.Arrays[i].Strings
	}
	feeding := map[string][]string{}
	for i := range d.pv.Strings {
		s := &d.pv.Strings[i]
		parts[s.ID] = working.List(s.ID)
		feeding[s.Inverter.Value()] = append(feeding[s.Inverter.Value()], s.ID)
	}
	for _, inv := range d.in.Inverters {
		parts[inv.ID.Value] = working.List(feeding[inv.ID.Value]...)
		if d.pv.Untraced != nil {
			parts[inv.ID.Value] = working.UnknownList(d.pv.Untraced...)
		}
	}
	return parts
}

// cableRatings are for each string the least rated voltage of the cables that
// carry it. A run of which the strings are not known may carry any.
func (d *deriver) cableRatings() map[string]working.Number {
	ratings := map[string][]working.Number{}
	var untraced []working.Gap
	for i := range d.cables.Runs {
		run := &d.in.Cables[i]
		rated := working.Stated("U_cable", "V", run.Cable.To().VoltageDCMaxV)
		untraced = append(untraced, d.cables.Runs[i].Strings.Missing()...)
		for _, id := range d.cables.Runs[i].Strings.Values() {
			ratings[id] = append(ratings[id], rated)
		}
	}
	least := map[string]working.Number{}
	for i := range d.pv.Strings {
		id := d.pv.Strings[i].ID
		least[id] = working.Least("U_cable", "V", ratings[id]...)
		if untraced != nil || ratings[id] == nil {
			least[id] = working.Unknown("U_cable", "V", append(untraced, working.Unstated("/cables"))...)
		}
	}
	return least
}

var (
	insulationVoltage = working.NewFormula("U_sys", "V", "k · U_oc,STC", insulationTest)
	areaOfModules     = working.NewFormula("A", "m²", "N_s · l · w / 1000000", working.ByDefinition)
	wetResistance     = working.NewFormula("R_wet", "MΩ", "40 / A", wetModule)
)

// requirements works out which strings a reading on the DC side takes in, and from
// them what the table requires of it.
func (f *InsulationTest) requirements(d *deriver, r *schema.InsulationReading, parts map[string]working.Names, cables map[string]working.Number) {
	f.Strings = stringsRead(r, parts)
	var voltages, powers, areas, ratings, cabled []working.Number
	for _, id := range f.Strings.Values() {
		i := d.find.strings[id]
		s := &d.pv.Strings[i]
		voltages = append(voltages, s.VocStcV)
		powers = append(powers, s.PowerW)
		areas = append(areas, areaOf(s.ModulesInSeries, d.in.Strings[i].Module.To()))
		ratings = append(ratings, s.SystemVoltageV)
		cabled = append(cabled, cables[id])
	}
	f.SystemVoltageV = systemVoltage(working.Greatest("U_oc,STC", "V", voltages...), d.book)
	f.PowerW, f.AreaM2 = working.Sum("P", "W", powers...), working.Sum("A", "m²", areas...)
	f.ModuleVoltageMaxV, f.CableVoltageMaxV = working.Least("U_mod", "V", ratings...), working.Least("U_cable", "V", cabled...)
	if len(voltages) == 0 {
		f.stringsUnknown(r)
	}
	f.TestVoltageNeededV, f.ResistanceMinMegohm = requiredAt(f.SystemVoltageV, d.book)
	f.OverMin = working.Ratio("R/R_min", f.ResistanceMegohm, f.ResistanceMinMegohm)
	f.WetModulesMegohm = wetResistance.Of(f.AreaM2)
}

// systemVoltage decides the test: the open-circuit voltage at STC, raised.
func systemVoltage(stc working.Number, b book.Book) working.Number {
	return insulationVoltage.Of(b.Number("insulation_voltage_factor", "k"), stc.For("U_oc,STC"))
}

// InsulationRequired is the test voltage and the least resistance that the table
// requires of a string with an open-circuit voltage at STC.
func InsulationRequired(stc working.Number, b book.Book) (voltage, least working.Number) {
	return requiredAt(systemVoltage(stc, b), b)
}

// requiredAt looks up what the table requires at a system voltage.
func requiredAt(u working.Number, b book.Book) (voltage, least working.Number) {
	return insulationCell(b, u, "test_voltage_v", "U_table"), insulationCell(b, u, "resistance_min_megohm", "R_min")
}

// stringsUnknown leaves unknown what hangs on the strings where the reading takes in
// none that are known.
func (f *InsulationTest) stringsUnknown(r *schema.InsulationReading) {
	missing := f.Strings.Missing()
	if missing == nil {
		missing = []working.Gap{working.Unstated(r.Part.At())}
	}
	for _, n := range []*working.Number{&f.SystemVoltageV, &f.PowerW, &f.AreaM2, &f.ModuleVoltageMaxV, &f.CableVoltageMaxV} {
		*n = working.Unknown(n.Symbol(), n.Unit(), missing...)
	}
}

// stringsRead are the strings of the part read and of those joined to it. Where it
// is not stated what was joined, it may be more than the part.
func stringsRead(r *schema.InsulationReading, parts map[string]working.Names) working.Names {
	if r.Side.Is("ac") {
		return working.List()
	}
	if r.TogetherWith == nil {
		return working.UnknownList(r.Member("together_with"))
	}
	var ids []string
	for _, p := range append([]schema.Text{r.Part}, r.TogetherWith...) {
		strings := parts[p.Value]
		if strings.Missing() != nil {
			return strings
		}
		ids = append(ids, strings.Values()...)
	}
	return working.List(ids...)
}

func areaOf(series working.Number, m *schema.Module) working.Number {
	return areaOfModules.Of(series.As("N_s"), working.Stated("l", "mm", m.LengthMm), working.Stated("w", "mm", m.WidthMm))
}

// insulationCell takes a cell of the first row of the insulation table that the system
// voltage falls in: below below_v, or no more than up_to_v. A row with neither
// takes in all that is left.
func insulationCell(b book.Book, u working.Number, want, symbol string) working.Number {
	const name = "insulation_test"
	t := b.Tables[name]
	if t == nil {
		return working.Unknown(symbol, "", "the rule set has no table "+name)
	}
	unit := ""
	for _, c := range t.Columns {
		if c.Name == want {
			unit = c.Unit
		}
	}
	f := working.Lookup{Symbol: symbol, Unit: unit, Text: "table “" + t.Title + "”", Source: t.Source}
	for _, row := range t.Rows {
		below, hasBelow := row["below_v"].(float64)
		most, hasMost := row["up_to_v"].(float64)
		if hasBelow && u.Value() >= below || hasMost && u.Value() > most {
			continue
		}
		if v, ok := row[want].(float64); ok {
			return f.Of(func(...float64) float64 { return v }, u)
		}
	}
	return working.Unknown(symbol, unit, u.Pointers()...)
}

// countPoles counts for each string the poles whose insulation to earth was read.
func (d *deriver) countPoles(all []StringTest, readings []InsulationTest) {
	if readings == nil {
		return
	}
	positive, negative := map[string]bool{}, map[string]bool{}
	for i := range readings {
		r := &readings[i]
		if !r.ResistanceMegohm.Known() {
			continue
		}
		for _, id := range r.Strings.Values() {
			joined := r.Between.Value() == "joined_to_earth"
			positive[id] = positive[id] || joined || r.Between.Value() == "positive_to_earth"
			negative[id] = negative[id] || joined || r.Between.Value() == "negative_to_earth"
		}
	}
	for i := range all {
		n := 0
		for _, read := range []map[string]bool{positive, negative} {
			if read[all[i].ID] {
				n++
			}
		}
		all[i].InsulationPoles = working.Counted("n", n, d.at("insulation"))
	}
}
