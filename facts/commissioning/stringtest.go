package commissioning

import (
	"sunclause/facts/pvstring"
	"sunclause/facts/working"
	"sunclause/schema"
)

// StringTest holds the facts of the readings on one string of the document. A
// string without a reading has one too: its facts are unknown.
type StringTest struct {
	working.Subject

	Polarity            working.Text   `json:"polarity" words:"polarity found: correct or reversed"`
	VocV                working.Number `json:"voc_v" words:"open-circuit voltage read"`
	VocSimpleV          working.Number `json:"voc_simple_v" words:"open-circuit voltage expected by temperature alone, without regard to the irradiance"`
	VocExpectedV        working.Number `json:"voc_expected_v" words:"open-circuit voltage expected at the irradiance and cell temperature recorded"`
	VocDeviationPct     working.Number `json:"voc_deviation_pct" words:"voltage read off the expected one, whichever way"`
	VocDeficitModules   working.Number `json:"voc_deficit_modules" words:"modules whose voltage the reading lacks; below zero where it has too much"`
	VocStcDeviationPct  working.Number `json:"voc_stc_deviation_pct" words:"voltage read off that at STC, whichever way"`
	AlikeStrings        working.Number `json:"alike_strings" words:"strings with as many modules of the same kind, itself included"`
	VocMedianV          working.Number `json:"voc_median_v" words:"median of the voltages read on the strings alike; of two strings the higher"`
	VocMedianPct        working.Number `json:"voc_median_deviation_pct" words:"voltage read off that median, whichever way"`
	ShortOfAlikeModules working.Number `json:"short_of_alike_modules" words:"modules whose voltage the reading lacks against that median"`
	IscA                working.Number `json:"isc_a" words:"short-circuit current read"`
	IscExpectedA        working.Number `json:"isc_expected_a" words:"short-circuit current expected at the irradiance and cell temperature recorded"`
	IscDeviationPct     working.Number `json:"isc_deviation_pct" words:"current read off the expected one, whichever way"`
	SameModuleStrings   working.Number `json:"same_module_strings" words:"strings of the same kind of module, itself included"`
	IscFullSunA         working.Number `json:"isc_full_sun_a" words:"current read, brought to 1000 W/m² in proportion"`
	IscMedianPct        working.Number `json:"isc_median_deviation_pct" words:"current in full sun off the median of the strings of the same kind of module, whichever way; of two strings off the higher"`
	OperatingA          working.Number `json:"operating_current_a" words:"current with the inverter running"`
	IrradianceWPerM2    working.Number `json:"irradiance_w_per_m2" words:"irradiance recorded"`
	IrradiancePlane     working.Text   `json:"irradiance_plane" words:"plane in which the irradiance was read"`
	Simultaneous        working.Flag   `json:"irradiance_simultaneous" words:"whether irradiance was read together with the current"`
	Light               working.Text   `json:"light" words:"state of the light: steady or changing"`
	CellTemperatureC    working.Number `json:"cell_temperature_c" words:"cell temperature recorded"`
	CellByVoltageC      working.Number `json:"cell_temperature_by_voltage_c" words:"cell temperature that the voltage read tells"`
	CellOffK            working.Number `json:"cell_temperature_off_k" words:"cell temperature recorded off that told by the voltage, whichever way"`
	LoadBreakUsed       working.Flag   `json:"load_break_device_used" words:"whether the short circuit was made and broken by a device made for it"`
	SameReadings        working.Number `json:"same_readings" words:"other strings with the same voltage and current to the last digit"`
	InstrumentMaxV      working.Number `json:"instrument_voltage_max_v" words:"highest voltage that the instrument may be connected to"`
	InstrumentMaxA      working.Number `json:"instrument_current_max_a" words:"highest current that the instrument reads"`
	StringVocMaxV       working.Number `json:"string_voc_max_v" words:"maximum voltage of the string"`
	InsulationPoles     working.Number `json:"insulation_poles" words:"poles of the string whose insulation to earth was read"`
	Curves              working.Number `json:"curves" words:"current-voltage curves taken of it"`
}

// strings derives the readings of every string of the document; nil when it
// states no strings.
func (d *deriver) strings() []StringTest {
	if d.pv.Strings == nil || d.in.Commissioning.Strings == nil && d.in.Project.Stage.Is("design") {
		return none[StringTest](d.in)
	}
	latest := d.latest()
	all := make([]StringTest, len(d.pv.Strings))
	for i := range all {
		s := &d.pv.Strings[i]
		all[i] = d.stringTest(s, latest[s.ID])
		all[i].expect(s, d.in.Datasheets.Modules[d.in.Strings[i].Module.Value], d)
		all[i].Curves = d.curvesOf(s.ID)
	}
	d.compare(all)
	return all
}

// stringTest takes what the reading and its instrument state.
func (d *deriver) stringTest(s *pvstring.String, r reading) StringTest {
	f := StringTest{
		Subject:          working.Subject{ID: s.ID, At: s.At, Name: "readings on string " + s.ID},
		Polarity:         r.text(func(r *schema.StringReading) schema.Text { return r.Polarity }),
		VocV:             r.number("U", "V", func(r *schema.StringReading) schema.Number { return r.VocV }),
		IscA:             r.number("I", "A", func(r *schema.StringReading) schema.Number { return r.IscA }),
		OperatingA:       r.number("I_op", "A", func(r *schema.StringReading) schema.Number { return r.OperatingCurrentA }),
		IrradianceWPerM2: r.number("G", "W/m²", func(r *schema.StringReading) schema.Number { return r.IrradianceWPerM2 }),
		CellTemperatureC: r.number("T", "°C", func(r *schema.StringReading) schema.Number { return r.CellTemperatureC }),
		IrradiancePlane:  r.text(func(r *schema.StringReading) schema.Text { return r.IrradiancePlane }),
		Light:            r.text(func(r *schema.StringReading) schema.Text { return r.Light }),
		Simultaneous:     r.flag(func(r *schema.StringReading) schema.Flag { return r.IrradianceSimultaneous }),
		LoadBreakUsed:    r.flag(func(r *schema.StringReading) schema.Flag { return r.LoadBreakDeviceUsed }),
		StringVocMaxV:    s.VocMaxV,
		InsulationPoles:  working.Unknown("n", "", d.at("insulation")),
		InstrumentMaxV:   working.Unknown("U_inst", "V", r.missing...),
		InstrumentMaxA:   working.Unknown("I_inst", "A", r.missing...),
	}
	if r.StringReading != nil {
		f.At = r.At()
		f.InstrumentMaxV = d.rating(r.Instrument, "U_inst", "V", func(i *schema.Instrument) schema.Number { return i.VoltageMaxV })
		f.InstrumentMaxA = d.rating(r.Instrument, "I_inst", "A", func(i *schema.Instrument) schema.Number { return i.CurrentMaxA })
	}
	return f
}
