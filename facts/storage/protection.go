package storage

import (
	"sunclause/facts/working"
	"sunclause/schema"
)

// Isolation holds how a battery is isolated.
type Isolation struct {
	IsolatorBuiltIn working.Flag   `json:"isolator_built_in" words:"whether an isolator is built in"`
	CanBeIsolated   working.Flag   `json:"can_be_isolated" words:"whether it has an isolator, built in or of its own"`
	IsolatorInSight working.Flag   `json:"isolator_in_sight" words:"whether it can be seen from its isolator"`
	IsolatorUeV     working.Number `json:"isolator_ue_v" words:"rated operational voltage of its isolator as wired"`
	IsolatorIeA     working.Number `json:"isolator_ie_a" words:"rated operational current of its isolator at that voltage"`
}

// Protection holds how a battery is protected against overcurrent.
type Protection struct {
	OvercurrentBuiltIn working.Flag   `json:"overcurrent_built_in" words:"whether an overcurrent device is built in"`
	Protected          working.Flag   `json:"has_overcurrent_device" words:"whether it has an overcurrent device, built in or of its own"`
	OvercurrentA       working.Number `json:"overcurrent_rated_a" words:"rated current of its own overcurrent device"`
	OvercurrentV       working.Number `json:"overcurrent_voltage_dc_v" words:"rated DC voltage of that device"`
	OvercurrentKa      working.Number `json:"overcurrent_breaking_ka" words:"DC breaking capacity of that device"`
}

// isolate finds the battery's isolator and the row of its maker's table that
// holds for it: of the rows in its utilization category and wiring the one with
// the lowest rated voltage that covers the battery's, else the one with the highest.
func (f *Battery) isolate(in *schema.Installation, s schema.Battery, sheet schema.BatteryDatasheet) {
	f.IsolatorBuiltIn = working.StatedFlag(sheet.IsolatorBuiltIn)
	f.CanBeIsolated = either(sheet.IsolatorBuiltIn, s.Isolator.Text)
	f.IsolatorInSight = working.StatedFlag(s.IsolatorInSight)
	f.IsolatorUeV = working.Unknown("U_e", "V", s.Isolator.At())
	f.IsolatorIeA = working.Unknown("I_e", "A", s.Isolator.At())
	for _, iso := range in.Isolators {
		if s.Isolator.Stated() && iso.ID.Value == s.Isolator.Value {
			f.rating(iso, in.Datasheets.SwitchDisconnectors[iso.Datasheet.Value])
		}
	}
}

func (f *Battery) rating(iso schema.Isolator, sheet schema.SwitchDisconnector) {
	missing := f.VoltageMaxV.Missing()
	for _, t := range []schema.Text{iso.Datasheet.Text, iso.UtilizationCategory} {
		if !t.Stated() {
			missing = append(missing, t.At())
		}
	}
	if !iso.PolesInSeries.Stated() {
		missing = append(missing, iso.PolesInSeries.At())
	}
	var best *schema.SwitchRating
	for i := range sheet.Ratings {
		r := &sheet.Ratings[i]
		suits := r.UtilizationCategory.Is(iso.UtilizationCategory.Value) && r.PolesInSeries.Value == iso.PolesInSeries.Value
		if suits && (best == nil || f.better(r.UeV.Value, best.UeV.Value)) {
			best = r
		}
	}
	if best == nil && missing == nil {
		missing = []string{sheet.At() + "/ratings"}
	}
	if len(missing) > 0 {
		f.IsolatorUeV, f.IsolatorIeA = working.Unknown("U_e", "V", missing...), working.Unknown("I_e", "A", missing...)
		return
	}
	f.IsolatorUeV, f.IsolatorIeA = working.Stated("U_e", "V", best.UeV), working.Stated("I_e", "A", best.IeA)
}

func (f *Battery) better(ue, than float64) bool {
	if most := f.VoltageMaxV.Value(); ue >= most && than >= most {
		return ue < than
	}
	return ue > than
}

// protect takes the battery's own overcurrent device.
func (f *Battery) protect(in *schema.Installation, s schema.Battery, sheet schema.BatteryDatasheet) {
	f.OvercurrentBuiltIn = working.StatedFlag(sheet.OvercurrentBuiltIn)
	f.Protected = either(sheet.OvercurrentBuiltIn, s.OvercurrentDevice.Text)
	at := s.OvercurrentDevice.At()
	f.OvercurrentA, f.OvercurrentV = working.Unknown("I_n", "A", at), working.Unknown("U_n", "V", at)
	f.OvercurrentKa = working.Unknown("I_cn", "kA", at)
	if s.OvercurrentDevice.Stated() {
		device := in.Datasheets.ProtectiveDevices[s.OvercurrentDevice.Value]
		f.OvercurrentA = working.Stated("I_n", "A", device.RatedA)
		f.OvercurrentV = working.Stated("U_n", "V", device.VoltageDCV)
		f.OvercurrentKa = working.Stated("I_cn", "kA", device.BreakingCapacityDCKa)
	}
}

// either is true when a device is built in or one of its own is named. None
// named is not known to be none.
func either(builtIn schema.Flag, own schema.Text) working.Flag {
	switch {
	case own.Stated():
		return working.KnownFlag(true, own.At())
	case builtIn.Stated() && builtIn.Value:
		return working.KnownFlag(true, builtIn.At())
	case !builtIn.Stated():
		return working.UnknownFlag(builtIn.At(), own.At())
	}
	return working.UnknownFlag(own.At())
}
