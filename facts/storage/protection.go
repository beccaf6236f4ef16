package storage

import (
	"slices"

	"sunclause/facts/circuit"
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
func (f *Battery) isolate(s *schema.Battery, sheet *schema.BatteryDatasheet) {
	f.IsolatorBuiltIn = working.StatedFlag(sheet.IsolatorBuiltIn)
	f.CanBeIsolated = working.Any(f.IsolatorBuiltIn, working.IsStated(s.Isolator.Text))
	f.IsolatorInSight = working.StatedFlag(s.IsolatorInSight)
	f.IsolatorUeV, f.IsolatorIeA = f.isolatorRating(s.Isolator.To())
}

// isolatorRating is the rated operational voltage and current of an isolator as it is
// wired.
func (f *Battery) isolatorRating(iso *schema.Isolator) (ue, ie working.Number) {
	sheet := iso.Datasheet.To()
	missing := slices.Clone(f.VoltageMaxV.Missing())
	for _, p := range []schema.Pointer{iso.Datasheet.Pointer, iso.UtilizationCategory.Pointer, iso.PolesInSeries.Pointer} {
		if !p.Stated() {
			missing = append(missing, working.Unstated(p.At()))
		}
	}
	missing = append(missing, circuit.Misused(iso.UtilizationCategory, "DC", f.At)...)
	var best *schema.SwitchRating
	for i := range sheet.Ratings {
		r := &sheet.Ratings[i]
		suits := r.UtilizationCategory.Is(iso.UtilizationCategory.Value) && r.PolesInSeries.Value == iso.PolesInSeries.Value
		if suits && (best == nil || f.better(r.UeV.Value, best.UeV.Value)) {
			best = r
		}
	}
	if best == nil && missing == nil {
		missing = []working.Gap{working.Unstated(sheet.Member("ratings"))}
	}
	if len(missing) > 0 {
		return working.Unknown("U_e", "V", missing...), working.Unknown("I_e", "A", missing...)
	}
	return working.Stated("U_e", "V", best.UeV), working.Stated("I_e", "A", best.IeA)
}

// better reports whether a rated voltage suits better than another: the lower of two
// that cover the battery's, else the higher.
func (f *Battery) better(ue, than float64) bool {
	if most := f.VoltageMaxV.Value(); ue >= most && than >= most {
		return ue < than
	}
	return ue > than
}

// protect takes the battery's own overcurrent device.
func (f *Battery) protect(s *schema.Battery, sheet *schema.BatteryDatasheet) {
	device := s.OvercurrentDevice.To()
	f.OvercurrentBuiltIn = working.StatedFlag(sheet.OvercurrentBuiltIn)
	f.Protected = working.Any(f.OvercurrentBuiltIn, working.IsStated(s.OvercurrentDevice.Text))
	f.OvercurrentA = working.Stated("I_n", "A", device.RatedA)
	f.OvercurrentV = working.Stated("U_n", "V", device.VoltageDCV)
	f.OvercurrentKa = working.Stated("I_cn", "kA", device.BreakingCapacityDCKa)
}
