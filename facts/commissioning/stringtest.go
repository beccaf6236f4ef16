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
		return emptyBeforeBuild[StringTest](d.in)
	}
	latest := d.latest()
	all := make([]StringTest, len(d.pv.Strings))
	for i := range all {
		s := &d.pv.Strings[i]
		all[i] = d.stringTest(s, latest[s.ID])
		all[i].expect(s, d.in.Strings[i].Module.To(), d)
		all[i].Curves = d.curvesOf(s.ID)
	}
	d.compareAlike(all)
	return all
}

// stringTest takes what the reading and its instrument state.
func (d *deriver) stringTest(s *pvstring.String, r *schema.StringReading) StringTest {
	instrument := d.find.instrument(r.Instrument)
	f := StringTest{
		Subject:          working.Subject{ID: s.ID, At: s.At, Name: "readings on string " + s.ID},
		Polarity:         working.StatedText(r.Polarity),
		VocV:             working.Stated("U", "V", r.VocV),
		IscA:             working.Stated("I", "A", r.IscA),
		OperatingA:       working.Stated("I_op", "A", r.OperatingCurrentA),
		IrradianceWPerM2: working.Stated("G", "W/m²", r.IrradianceWPerM2),
		CellTemperatureC: working.Stated("T", "°C", r.CellTemperatureC),
		IrradiancePlane:  working.StatedText(r.IrradiancePlane),
		Light:            working.StatedText(r.Light),
		Simultaneous:     working.StatedFlag(r.IrradianceSimultaneous),
		LoadBreakUsed:    working.StatedFlag(r.LoadBreakDeviceUsed),
		StringVocMaxV:    s.VocMaxV,
		InsulationPoles:  working.Unknown("n", "", d.at("insulation")),
		InstrumentMaxV:   working.Stated("U_inst", "V", instrument.VoltageMaxV),
		InstrumentMaxA:   working.Stated("I_inst", "A", instrument.CurrentMaxA),
	}
	if r.Stated() {
		f.At = r.At()
	}
	return f
}
