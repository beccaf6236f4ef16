package commissioning

import (
	"sunclause/facts/circuit"
	"sunclause/facts/working"
	"sunclause/schema"
)

// InsulationTest holds the facts of one reading of insulation resistance.
type InsulationTest struct {
	working.Subject

	Side                working.Text   `json:"side" words:"side of the inverter: dc or ac"`
	Between             working.Text   `json:"between" words:"between what it was read"`
	Method              working.Number `json:"method" words:"method: 1 each pole in turn, 2 poles joined"`
	Strings             working.Names  `json:"strings" words:"strings that the reading takes in"`
	SystemVoltageV      working.Number `json:"system_voltage_v" words:"voltage that decides the test: the greatest open-circuit voltage at STC among its strings, raised"`
	TestVoltageV        working.Number `json:"test_voltage_v" words:"test voltage"`
	TestVoltageNeededV  working.Number `json:"test_voltage_needed_v" words:"test voltage of the table for that system voltage"`
	ResistanceMegohm    working.Number `json:"resistance_megohm" words:"resistance read"`
	ResistanceMinMegohm working.Number `json:"resistance_min_megohm" words:"least resistance of the table for that system voltage"`
	OverMin             working.Number `json:"resistance_over_min" words:"resistance read over that least one"`
	PowerW              working.Number `json:"power_w" words:"rated power of the modules that the reading takes in"`
	AreaM2              working.Number `json:"area_m2" words:"area of those modules"`
	WetModulesMegohm    working.Number `json:"wet_modules_megohm" words:"least that those modules may show wet by their type test"`
	ModuleVoltageMaxV   working.Number `json:"module_voltage_max_v" words:"least maximum system voltage of those modules"`
	CableVoltageMaxV    working.Number `json:"cable_voltage_max_v" words:"least rated DC voltage of the cables of those strings"`
	SPDs                working.Number `json:"spds" words:"surge protective devices in the document on that side"`
	SPDsConnected       working.Flag   `json:"spds_connected" words:"whether surge protective devices were connected during the test"`
	SPDsRemovable       working.Flag   `json:"spds_removable" words:"whether they can be disconnected"`
	SPDsReconnected     working.Flag   `json:"spds_reconnected" words:"whether they were connected again after the test"`
	InverterConnected   working.Flag   `json:"inverter_connected" words:"whether the inverter was connected during the test"`
	PolesEarthed        working.Number `json:"poles_earthed" words:"poles of arrays connected to earth on purpose"`
	EarthLifted         working.Flag   `json:"functional_earth_lifted" words:"whether a functional earth was lifted during the test"`
	ShortingSwitch      working.Flag   `json:"shorting_switch_used" words:"whether the poles were joined by a switch rated for it"`
	HeldS               working.Number `json:"held_s" words:"time the voltage was held until the reading stood still"`
	Surface             working.Text   `json:"surface" words:"state of the modules: dry, damp or wet"`
	OverRange           working.Flag   `json:"over_range" words:"whether the instrument showed more than its range"`
	RangeMegohm         working.Number `json:"instrument_range_megohm" words:"highest insulation resistance that the instrument reads"`
}

// insulation derives the facts of every reading; nil when the document states
// none.
func (d *deriver) insulation() []InsulationTest {
	if d.in.Commissioning.Insulation == nil {
		return emptyBeforeBuild[InsulationTest](d.in)
	}
	all := make([]InsulationTest, len(d.in.Commissioning.Insulation))
	parts, cables := d.stringsOfParts(), d.cableRatings()
	for i := range all {
		r := &d.in.Commissioning.Insulation[i]
		all[i] = d.insulationTest(r)
		all[i].requirements(d, r, parts, cables)
	}
	return all
}

func (d *deriver) insulationTest(r *schema.InsulationReading) InsulationTest {
	spds := d.spdsBeside(r.Side)
	return InsulationTest{
		Subject:           working.Subject{ID: r.ID.Value, At: r.At(), Name: "insulation reading " + r.ID.Value},
		Side:              working.StatedText(r.Side),
		Between:           working.StatedText(r.Between),
		Method:            working.Stated("method", "", r.Method),
		TestVoltageV:      working.Stated("U_test", "V", r.TestVoltageV),
		ResistanceMegohm:  working.Stated("R", "MΩ", r.ResistanceMegohm),
		SPDs:              spds,
		SPDsConnected:     spdsConnected(spds, r.SPDsConnected),
		SPDsRemovable:     working.StatedFlag(r.SPDsRemovable),
		SPDsReconnected:   working.StatedFlag(r.SPDsReconnected),
		InverterConnected: working.StatedFlag(r.InverterConnected),
		PolesEarthed:      working.Length("n", d.in.Earthing.Poles, d.in.Earthing.Member("poles")),
		EarthLifted:       working.StatedFlag(r.FunctionalEarthLifted),
		ShortingSwitch:    working.StatedFlag(r.ShortingSwitchUsed),
		HeldS:             working.Stated("t", "s", r.HeldS),
		Surface:           working.StatedText(r.Surface),
		OverRange:         working.StatedFlag(r.OverRange),
		RangeMegohm:       working.Stated("R_range", "MΩ", d.find.instrument(r.Instrument).InsulationMaxMegohm),
	}
}

// spdsBeside counts the surge protective devices on the side of the inverter on which
// a reading was taken.
func (d *deriver) spdsBeside(side schema.Text) working.Number {
	switch {
	case d.in.SPDs != nil && !side.Stated():
		return working.Unknown("n_SPD", "", side.At())
	case side.Is("ac"):
		return d.spdsAC
	}
	return d.spdsDC
}

// spdsOn counts the surge protective devices on circuits of some kinds.
func spdsOn(in *schema.Installation, c *circuit.Circuit, circuits ...string) working.Number {
	if in.SPDs == nil {
		return working.Unknown("n_SPD", "", "/spds")
	}
	var on []working.Flag
	for i := range in.SPDs {
		on = append(on, c.Protects(&in.SPDs[i]).OneOf(circuits...))
	}
	return working.Count("n_SPD", "/spds", on...)
}

// spdsConnected reports whether surge protective devices were in circuit during a
// reading. Where there are none, nobody has to say so.
func spdsConnected(spds working.Number, stated schema.Flag) working.Flag {
	if !stated.Stated() && spds.Known() && spds.Value() == 0 {
		return working.KnownFlag(false, "/spds")
	}
	return working.StatedFlag(stated)
}
