package surge

import (
	"regexp"

	"sunclause/facts/book"
	"sunclause/facts/circuit"
	"sunclause/facts/working"
	"sunclause/schema"
)

// SPD holds the facts of one surge protective device.
type SPD struct {
	working.Subject

	Circuit           working.Text   `json:"circuit" words:"circuit it protects, where its terminal bears out what is stated: pv_dc, battery_dc, ac or signal"`
	CircuitStated     working.Text   `json:"circuit_stated" words:"circuit it protects as stated"`
	CircuitMade       working.Text   `json:"circuit_by_wiring" words:"circuit it protects by the terminal at which it is connected"`
	System            working.Text   `json:"system" words:"kind of circuit it is made for"`
	Type              working.Text   `json:"type" words:"type (test class): T1, T1+T2, T2, T2+T3 or T3"`
	StandardNumber    working.Text   `json:"standard_number" words:"number of its product standard, as 61643-31"`
	Modes             working.Text   `json:"modes" words:"between which conductors it is connected"`
	AtOrigin          working.Flag   `json:"at_origin" words:"whether it is connected at the supply, a meter or a main board"`
	Strings           working.Names  `json:"strings" words:"strings that meet the terminal where it is connected"`
	StringsMet        working.Number `json:"strings_met" words:"strings that meet it there: how many"`
	VocMaxV           working.Number `json:"voc_max_v" words:"greatest maximum voltage of those strings"`
	UcpvV             working.Number `json:"ucpv_v" words:"maximum continuous PV voltage between poles"`
	UcpvToEarthV      working.Number `json:"ucpv_to_earth_v" words:"maximum continuous PV voltage from pole to earth"`
	UcpvOverVocStc    working.Number `json:"ucpv_over_voc_stc" words:"maximum continuous PV voltage over the strings' greatest open-circuit voltage at STC"`
	IscMaxA           working.Number `json:"isc_max_a" words:"design short-circuit current of those strings together"`
	IscpvA            working.Number `json:"iscpv_a" words:"short-circuit current rating for PV"`
	UcV               working.Number `json:"uc_v" words:"maximum continuous operating voltage"`
	UcNeededV         working.Number `json:"uc_needed_v" words:"least such voltage for the supply"`
	UpKv              working.Number `json:"up_kv" words:"voltage protection level"`
	UwKv              working.Number `json:"uw_kv" words:"least impulse withstand of the equipment that it protects"`
	UpMostKv          working.Number `json:"up_most_kv" words:"voltage protection level that this withstand allows"`
	InKa              working.Number `json:"in_ka" words:"nominal discharge current"`
	IimpKa            working.Number `json:"iimp_ka" words:"impulse discharge current (10/350)"`
	IsccrKa           working.Number `json:"isccr_ka" words:"short-circuit current rating"`
	FaultKa           working.Number `json:"prospective_fault_ka" words:"prospective fault current at the origin"`
	BackupA           working.Number `json:"backup_a" words:"rated current of the overcurrent device in front of it"`
	BackupMaxA        working.Number `json:"backup_max_a" words:"greatest such device that the maker allows"`
	LeadsMm           working.Number `json:"leads_mm" words:"length of its leads, live and earth together"`
	LiveLeadsMm2      working.Number `json:"live_leads_mm2" words:"cross-section of its live leads"`
	EarthLeadMm2      working.Number `json:"earth_lead_mm2" words:"cross-section of its earth lead"`
	Earthed           working.Flag   `json:"earthed_to_main_terminal" words:"whether protective conductors lead from its earth terminal to the main earthing terminal"`
	DistanceM         working.Number `json:"distance_to_inverter_m" words:"length of cable from a DC device to the inverter"`
	Indicator         working.Flag   `json:"status_indicator" words:"whether it shows its state"`
	IndicatorVisible  working.Flag   `json:"indicator_visible" words:"whether that can be seen where it stands, or is told elsewhere by its remote contact"`
	StatusGood        working.Flag   `json:"status_good" words:"whether it shows that it is sound"`
	CanBeWithdrawn    working.Flag   `json:"can_be_withdrawn" words:"whether it can be taken out of circuit for an insulation test"`
	BuiltInStated     working.Flag   `json:"built_in_stated" words:"whether it is stated to be part of an inverter"`
	BuiltInto         working.Text   `json:"built_into" words:"inverter that it is stated to be part of"`
	ConnectedTo       working.Text   `json:"connected_to" words:"part at whose terminal it is connected"`
	Place             working.Text   `json:"place" words:"where it stands"`
	InverterPlace     working.Text   `json:"inverter_place" words:"where the inverter stands that it is stated to be part of"`
	LightningFitted   working.Flag   `json:"lightning_protection_fitted" words:"whether the building has a lightning protection system"`
	LightningTooClose working.Flag   `json:"lightning_protection_too_close" words:"whether such a system comes nearer to the array than its separation distance"`
}

var (
	leadLength       = working.NewFormula("l_leads", "mm", "l_live + l_earth", devices)
	continuousNeeded = working.NewFormula("U_c,min", "V", "k_Uc · U_0", devices)
	levelAllowed     = working.NewFormula("U_p,max", "kV", "k_Uw · U_w", devices)
)

// spdOf takes what the device and its datasheet state.
func spdOf(in *schema.Installation, s *schema.SPD) SPD {
	sheet := s.Datasheet.To()
	return SPD{
		Subject:          working.Subject{ID: s.ID.Value, At: s.At(), Name: "surge protective device " + s.ID.Value},
		CircuitStated:    working.StatedText(s.Circuit),
		Modes:            working.StatedText(s.Modes),
		System:           working.StatedText(sheet.System),
		Type:             working.StatedText(sheet.Type),
		StandardNumber:   standardNumber(sheet.Standard),
		UcpvV:            working.Stated("U_cpv", "V", sheet.UcpvV),
		UcpvToEarthV:     working.Stated("U_cpv,e", "V", sheet.UcpvToEarthV),
		IscpvA:           working.Stated("I_scpv", "A", sheet.IscpvA),
		UcV:              working.Stated("U_c", "V", sheet.UcV),
		UpKv:             working.Stated("U_p", "kV", sheet.UpKv),
		InKa:             working.Stated("I_n", "kA", sheet.InKa),
		IimpKa:           working.Stated("I_imp", "kA", sheet.IimpKa),
		IsccrKa:          working.Stated("I_sccr", "kA", sheet.IsccrKa),
		BackupMaxA:       working.Stated("I_backup,max", "A", sheet.BackupDeviceMaxA),
		Indicator:        working.StatedFlag(sheet.StatusIndicator),
		LeadsMm:          leads(s),
		LiveLeadsMm2:     working.Stated("S_live", "mm²", s.LiveLeadsMm2),
		EarthLeadMm2:     working.Stated("S_earth", "mm²", s.EarthLeadMm2),
		IndicatorVisible: stateSeen(s),
		StatusGood:       working.StatedFlag(s.StatusGood),
		CanBeWithdrawn:   working.StatedFlag(s.CanBeWithdrawn),
		LightningFitted:  working.StatedFlag(in.Earthing.LightningProtection.Fitted),

		BuiltInStated: working.KnownFlag(s.BuiltInto.Stated(), s.At()),
		BuiltInto:     working.StatedText(s.BuiltInto.Text),
		ConnectedTo:   working.KnownText(circuit.Part(s.ConnectedAt.Value), s.ConnectedAt.At()),
		Place:         placeOf(s),
		InverterPlace: working.StatedText(s.BuiltInto.To().Place),

		LightningTooClose: tooClose(in.Earthing.LightningProtection),
	}
}

// placeOf is where a device stands; one inside an inverter that states no place stands
// where the inverter does.
func placeOf(s *schema.SPD) working.Text {
	if s.BuiltInto.Stated() && !s.Place.Stated() {
		return working.StatedText(s.BuiltInto.To().Place)
	}
	return working.StatedText(s.Place)
}

// stateSeen reports whether anyone learns of the device's state: it is seen, or
// its remote contact reports it elsewhere. A remote contact counts only where the
// document says that it is used.
func stateSeen(s *schema.SPD) working.Flag {
	if s.RemoteContactUsed.Yes() {
		return working.StatedFlag(s.RemoteContactUsed)
	}
	return working.StatedFlag(s.IndicatorVisible)
}

var standardPart = regexp.MustCompile(`[0-9]{5}-[0-9]+`)

// standardNumber finds the number of a standard in what is printed of it, so
// that the bodies and years around it make no difference.
func standardNumber(printed schema.Text) working.Text {
	if n := standardPart.FindString(printed.Value); n != "" {
		return working.KnownText(n, printed.At())
	}
	return working.StatedText(printed)
}

// leads adds the lengths of the live and the earth leads: the surge's voltage
// drop along both comes on top of the protection level.
func leads(s *schema.SPD) working.Number {
	return leadLength.Of(working.Stated("l_live", "mm", s.LiveLeadsMm), working.Stated("l_earth", "mm", s.EarthLeadMm))
}

// tooClose reports whether a lightning protection system comes nearer to the array
// than its separation distance. Without a system it does not.
func tooClose(l schema.LightningProtection) working.Flag {
	return working.All(working.StatedFlag(l.Fitted), working.Not(working.StatedFlag(l.SeparationKept)))
}

// limits works out what the equipment and the supply ask of the device.
func (f *SPD) limits(in *schema.Installation, own *schema.SPD, at connection, b book.Book) {
	f.UcNeededV, f.FaultKa, f.BackupA = working.NoNumber("U_c,min", "V"), working.NoNumber("I_cf", "kA"), working.NoNumber("I_backup", "A")
	switch f.Circuit.Value() {
	case circuit.PV:
		f.UwKv = working.Unknown("U_w", "kV", "/cables")
		for _, inv := range in.Inverters {
			if at.traced() && inv.ID.Value == circuit.Part(at.path.Input) {
				f.UwKv = working.Stated("U_w", "kV", inv.Datasheet.To().DCImpulseWithstandKv)
			}
		}
	case circuit.AC:
		f.UwKv = b.Number("ac_impulse_withstand_kv", "U_w")
		f.UcNeededV = continuousNeeded.Of(b.Number("spd_uc_factor", "k_Uc"), working.Stated("U_0", "V", in.AC.Supply.VoltageV))
		f.FaultKa = working.Stated("I_cf", "kA", in.AC.Supply.ProspectiveFaultKa)
		f.backup(in, own, at)
	}
	f.UpMostKv = levelAllowed.Of(b.Number("spd_up_over_withstand_max", "k_Uw"), f.UwKv.For("U_w"))
}

// backup is the overcurrent device in front of it: its own, or that of the
// first way of a board on the way to the supply. With neither it hangs behind
// the fuse of the distributor.
func (f *SPD) backup(in *schema.Installation, own *schema.SPD, at connection) {
	device := own.BackupDevice
	for _, board := range in.AC.Boards {
		for _, w := range board.Ways {
			if !device.Stated() && len(at.path.Ways) > 0 && at.path.Ways[0] == board.ID.Value+"."+w.ID.Value {
				device = w.Device
			}
		}
	}
	if !device.Stated() && at.traced() && len(at.path.Ways) == 0 {
		device = in.AC.Supply.Device
	}
	f.BackupA = working.Stated("I_backup", "A", device.To().RatedA)
}
