// Package pvstring derives the facts of PV strings, of the tracking inputs they
// feed and of the inverters: voltages cold and hot, currents, the match between
// strings in parallel, and the current that sound strings drive back into a
// faulted one.
package pvstring

import (
	"fmt"

	"sunclause/facts/book"
	"sunclause/facts/circuit"
	"sunclause/facts/working"
	"sunclause/schema"
)

// String holds the facts of one PV string.
type String struct {
	working.Subject

	Technology         working.Text   `json:"technology" words:"cell technology of the modules"`
	ModulesInSeries    working.Number `json:"modules_in_series" words:"modules in series"`
	VocCoeffPctPerK    working.Number `json:"voc_coeff_pct_per_k" words:"temperature coefficient of the module's open-circuit voltage, whatever unit the sheet prints"`
	Mounting           working.Text   `json:"mounting" words:"how the modules stand to the roof, as it is stated"`
	MountingDrawn      working.Text   `json:"mounting_drawn" words:"how the modules stand to the roof by the tilt and the gap of the plane that carries them"`
	TempMinC           working.Number `json:"temp_min_c" words:"lowest expected ambient temperature; the cells have it at dawn"`
	CellTempMaxC       working.Number `json:"cell_temp_max_c" words:"hottest cell temperature: highest ambient plus the rise of the mounting"`
	VocStcV            working.Number `json:"voc_stc_v" words:"open-circuit voltage at STC"`
	VocCoefficientV    working.Number `json:"voc_coefficient_v" words:"cold open-circuit voltage by the module's temperature coefficient"`
	VocTableV          working.Number `json:"voc_table_v" words:"cold open-circuit voltage by the table factor for crystalline silicon"`
	VocFactorV         working.Number `json:"voc_factor_v" words:"cold open-circuit voltage by the one fixed factor"`
	VocMaxV            working.Number `json:"voc_max_v" words:"maximum voltage: the cold open-circuit voltage by the method the rule set chooses"`
	VocHotV            working.Number `json:"voc_hot_v" words:"open-circuit voltage with hot cells"`
	VmpStcV            working.Number `json:"vmp_stc_v" words:"voltage at maximum power at STC"`
	VmpHotV            working.Number `json:"vmp_hot_v" words:"voltage at maximum power with hot cells"`
	VmpColdV           working.Number `json:"vmp_cold_v" words:"voltage at maximum power with cold cells"`
	VmpBy              working.Text   `json:"vmp_by" words:"what the voltage at maximum power goes by with hot and cold cells: vmp_coefficient, power_coefficient or worse_of_power_and_voc_coefficient"`
	IscStcA            working.Number `json:"isc_stc_a" words:"short-circuit current at STC"`
	IscMaxA            working.Number `json:"isc_max_a" words:"design short-circuit current, bifacial gain included"`
	ImpA               working.Number `json:"imp_a" words:"current at maximum power at STC"`
	PowerW             working.Number `json:"power_w" words:"rated power"`
	SystemVoltageV     working.Number `json:"system_voltage_max_v" words:"maximum system voltage of the module"`
	Mppt               working.Text   `json:"mppt" words:"tracking input the string feeds, as INV1.1"`
	Inverter           working.Text   `json:"inverter" words:"inverter the string feeds"`
	IsolatorsInPath    working.Number `json:"isolators_in_path" words:"DC isolators between the string and its tracking input"`
	InverterDcMaxV     working.Number `json:"inverter_dc_voltage_max_v" words:"maximum DC voltage of the inverter it feeds"`
	InverterStartV     working.Number `json:"inverter_dc_start_voltage_v" words:"voltage at which that inverter starts"`
	MpptMinV           working.Number `json:"mppt_voltage_min_v" words:"lowest tracking voltage of its input"`
	MpptMaxV           working.Number `json:"mppt_voltage_max_v" words:"highest tracking voltage of its input"`
	StringsParallel    working.Number `json:"strings_in_parallel" words:"strings on the same tracking input, itself included"`
	ReverseA           working.Number `json:"reverse_current_a" words:"current at STC that the other strings on the input can drive into a fault of this one"`
	ReverseMaxA        working.Number `json:"reverse_current_max_a" words:"current into the string backward from those in parallel, with design currents"`
	OcprMaxA           working.Number `json:"ocpr_max_a" words:"maximum overcurrent protection rating of the module"`
	ReverseWithstand   working.Number `json:"reverse_withstand_a" words:"reverse current that the module is type tested to bear"`
	FuseFitted         working.Flag   `json:"fuse_fitted" words:"whether the string has its own overcurrent protective device"`
	FuseRatedA         working.Number `json:"fuse_rated_a" words:"rated current of that device"`
	FuseRatedV         working.Number `json:"fuse_rated_v" words:"rated DC voltage of that device"`
	FuseKind           working.Text   `json:"fuse_kind" words:"kind of that device"`
	FuseCharacteristic working.Text   `json:"fuse_characteristic" words:"tripping characteristic or utilization category of that device"`
	FusePoles          working.Text   `json:"fuse_poles" words:"conductors in which the device is fitted"`
	FuseBreakingA      working.Number `json:"fuse_breaking_a" words:"breaking capacity of that device"`
	FusePolarity       working.Flag   `json:"fuse_polarity_sensitive" words:"whether that device breaks current in one direction only"`
	FuseStandard       working.Text   `json:"fuse_standard" words:"product standard of that device"`
	FuseWithoutTool    working.Flag   `json:"fuse_without_tool" words:"whether that device can be withdrawn without a tool"`
	FuseAmbientC       working.Number `json:"fuse_ambient_max_c" words:"highest ambient temperature around that device"`
	Drawn
	ConnectorSame working.Flag `json:"connector_same_type" words:"whether the mating connector is of the module connector's type"`
}

// stringOf derives the facts of a string, but for what hangs on its neighbours
// at the input, which neighbours adds.
func stringOf(in *schema.Installation, s *schema.String, drawn map[string]*schema.Plane, b book.Book) String {
	m := moduleOf(s.Module.To())
	series := working.Stated("N_s", "", s.ModulesInSeries)
	cold := working.Stated("T_min", "°C", in.Site.TempMinC)
	f := String{
		Subject:         working.Subject{ID: s.ID.Value, At: s.At(), Name: "string " + s.ID.Value},
		Technology:      working.StatedText(m.sheet.Technology),
		ModulesInSeries: series,
		VocCoeffPctPerK: m.beta,
		TempMinC:        cold,
		VocStcV:         vocStc.Of(series, m.voc),
		VmpStcV:         vmpStc.Of(series, m.vmp),
		VmpBy:           m.vmpBy(),
		Drawn:           drawnOf(in, s),
		IscStcA:         m.isc,
		Mounting:        working.StatedText(s.Mounting),
		MountingDrawn:   mountingDrawn(drawn, s),
		IscMaxA:         m.designShortCircuit(b),
		ImpA:            m.imp,
		PowerW:          power.Of(series, working.Stated("P_max", "W", m.sheet.PmaxW)),
		SystemVoltageV:  working.Stated("U_sys", "V", m.sheet.SystemVoltageMaxV),
		OcprMaxA:        working.Stated("I_OCPR", "A", m.sheet.OCPRMaxA),
		ConnectorSame:   working.Same(working.StatedText(m.sheet.Connector), working.StatedText(s.ConnectorMate)),
	}
	f.cold(m, series, cold, b)
	f.hot(m, series, in, b)
	f.overcurrent(s, b)
	return f
}

// cold works the cold voltages out by every method a region may ask for.
func (f *String) cold(m module, series, cold working.Number, b book.Book) {
	f.VocCoefficientV = m.vocAt("U_oc,cold", series, cold)
	f.VmpColdV = m.vmpAt("U_mp,cold", series, cold, working.Greatest)
	step := b.Step("voc_temperature_factors", "at_least_c", cold, "factor", "K_T")
	f.VocTableV = m.onlyCrystalline(vocByTable.Of(step, f.VocStcV))
	f.VocFactorV = m.onlyCrystalline(vocByFactor.Of(b.Number("voc_factor", "K_U"), f.VocStcV))
	f.VocMaxV = f.chosen(b.Word("voltage_method"), m.crystalline())
}

// chosen is the cold voltage by the method that the rule set chooses. Factors
// are made for crystalline silicon; any other module goes by its coefficient.
func (f *String) chosen(method working.Text, crystalline bool) working.Number {
	switch method.Value() {
	case "coefficient":
		return f.VocCoefficientV
	case "table", "factor", "greatest":
		if !crystalline {
			return f.VocCoefficientV
		}
	}
	switch method.Value() {
	case "table":
		return f.VocTableV
	case "factor":
		return f.VocFactorV
	case "greatest":
		return working.Greatest("U_oc,max", "V", f.VocFactorV, f.VocCoefficientV)
	case "":
		return working.Unknown("U_oc,max", "V", method.Missing()...)
	}
	return working.Unknown("U_oc,max", "V", fmt.Sprintf("the rule set's voltage_method is %q; it can be coefficient, table, factor, greatest", method.Value()))
}

// hot works out what is left of the voltages with the sun on the roof.
func (f *String) hot(m module, series working.Number, in *schema.Installation, b book.Book) {
	rise := b.Keyed("cell_temperature_rise", "mounting", working.Agreed(f.Mounting, f.MountingDrawn), "rise_k", "ΔT")
	f.CellTempMaxC = hottestCell.Of(working.Stated("T_max", "°C", in.Site.TempMaxC), rise)
	f.VocHotV = m.vocAt("U_oc,hot", series, f.CellTempMaxC)
	f.VmpHotV = m.vmpAt("U_mp,hot", series, f.CellTempMaxC, working.Least)
}

// path follows the cables to the tracking input and takes its limits along.
func (f *String) path(c *circuit.Circuit, all inputs) {
	p := c.From(f.ID)
	if p.Untraced != nil {
		f.untraced(p.Untraced, len(all.list) == 0)
		return
	}
	fed := all.at[p.Input]
	f.Mppt, f.Inverter = working.KnownText(p.Input, f.At), working.KnownText(circuit.Part(p.Input), f.At)
	f.IsolatorsInPath = working.Counted("n", len(p.Isolators), f.At)
	f.InverterDcMaxV = working.Stated("U_dc,max", "V", fed.sheet.DCVoltageMaxV)
	f.InverterStartV = working.Stated("U_start", "V", fed.sheet.DCStartVoltageV)
	f.MpptMinV = working.Stated("U_mppt,min", "V", fed.mppt.VoltageMinV)
	f.MpptMaxV = working.Stated("U_mppt,max", "V", fed.mppt.VoltageMaxV)
}

// untraced leaves unknown what hangs on the tracking input of a string that was not
// found to reach one, or reaches it by several ways. Without inverters it is they
// that are missing.
func (f *String) untraced(why []working.Gap, noInputs bool) {
	if noInputs {
		why = []working.Gap{working.Unstated("/inverters")}
	}
	f.Mppt, f.Inverter = working.UnknownText(why...), working.UnknownText(why...)
	f.IsolatorsInPath = working.Unknown("n", "", why...)
	f.InverterDcMaxV = working.Unknown("U_dc,max", "V", why...)
	f.InverterStartV = working.Unknown("U_start", "V", why...)
	f.MpptMinV = working.Unknown("U_mppt,min", "V", why...)
	f.MpptMaxV = working.Unknown("U_mppt,max", "V", why...)
}
