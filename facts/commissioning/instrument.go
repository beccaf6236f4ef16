package commissioning

import (
	"slices"

	"sunclause/facts/working"
	"sunclause/schema"
)

// Instrument holds the facts of one test instrument.
type Instrument struct {
	working.Subject

	Kind                working.Text   `json:"kind" words:"what it is"`
	DaysSinceCalibrated working.Number `json:"days_since_calibrated" words:"days from its calibration to the first reading taken with it, below zero when it was calibrated after"`
	DaysCalibrationLeft working.Number `json:"days_of_calibration_left" words:"days from the last reading taken with it to the end of its calibration; below zero when it had run out"`
	HasSerial           working.Flag   `json:"serial_recorded" words:"whether its serial number is recorded"`
	IrradianceSensor    working.Text   `json:"irradiance_sensor" words:"sensor of an irradiance meter"`
	UncertaintyPct      working.Number `json:"uncertainty_pct" words:"uncertainty of its readings"`
	VoltageMaxV         working.Number `json:"voltage_max_v" words:"highest voltage it may be connected to"`
	OnMains             working.Flag   `json:"used_on_mains" words:"whether it was used on the supply: for its voltage, a loop or a residual current device"`
	Category            working.Text   `json:"measurement_category" words:"measurement category of IEC 61010"`
}

// instrumentFacts derives the facts of every instrument; nil when the document
// states none.
func (d *deriver) instrumentFacts() []Instrument {
	if d.in.Commissioning.Instruments == nil {
		return emptyBeforeBuild[Instrument](d.in)
	}
	used := d.useOfInstruments()
	all := make([]Instrument, len(d.in.Commissioning.Instruments))
	for i, inst := range d.in.Commissioning.Instruments {
		all[i] = Instrument{
			Subject:             working.Subject{ID: inst.ID.Value, At: inst.At(), Name: "instrument " + inst.ID.Value},
			Kind:                working.StatedText(inst.Kind),
			DaysSinceCalibrated: working.Days("t_cal", inst.Calibrated, used.first(inst.ID.Value)),
			DaysCalibrationLeft: working.Days("t_left", used.last(inst.ID.Value), inst.CalibrationDue),
			HasSerial:           working.IsStated(inst.Serial),
			IrradianceSensor:    working.StatedText(inst.IrradianceSensor),
			UncertaintyPct:      working.Stated("u", "%", inst.UncertaintyPct),
			VoltageMaxV:         working.Stated("U_inst", "V", inst.VoltageMaxV),
			OnMains:             working.KnownFlag(used.onMains[inst.ID.Value], inst.At()),
			Category:            working.StatedText(inst.MeasurementCategory),
		}
	}
	return all
}

// use is when each instrument was used.
type use struct {
	dates    map[string][]schema.Text // of the readings that name it
	anybody  []schema.Text            // of those that name none: it may have been this one
	onMains  map[string]bool          // those named by readings on the supply
	complete schema.Text              // the day of the last test, for an instrument that no reading names
}

// DatesOfReadings is the path to the date of each reading.
const DatesOfReadings = "/commissioning/*/*/date"

// useOfInstruments collects the dates of the readings by the instruments they name.
func (d *deriver) useOfInstruments() use {
	u := use{dates: map[string][]schema.Text{}, onMains: map[string]bool{}, complete: d.in.Commissioning.TestsComplete}
	for _, list := range []string{"loops", "rcds", "supply"} {
		for _, name := range schema.Places(d.in, "/commissioning/"+list+"/*/instrument") {
			u.onMains[name.Value] = true
		}
	}
	on := map[string]schema.Text{}
	for _, date := range schema.Places(d.in, DatesOfReadings) {
		on[date.Part.At()] = date.Text
	}
	for _, by := range []string{"instrument", "irradiance_instrument", "temperature_instrument"} {
		for _, name := range schema.Places(d.in, "/commissioning/*/*/"+by) {
			switch date := on[name.Part.At()]; {
			case name.Stated():
				u.dates[name.Value] = append(u.dates[name.Value], date)
			case by == "instrument":
				u.anybody = append(u.anybody, date)
			}
		}
	}
	return u
}

// first is the day on which an instrument was used first; a day that is not stated
// where it was used on any such, since that may be it.
func (u use) first(id string) schema.Text {
	return u.pick(id, func(a, b schema.Text) bool { return a.Value < b.Value })
}

// last is the day on which it was used last, likewise.
func (u use) last(id string) schema.Text {
	return u.pick(id, func(a, b schema.Text) bool { return a.Value > b.Value })
}

func (u use) pick(id string, before func(a, b schema.Text) bool) schema.Text {
	dates := slices.Concat(u.dates[id], u.anybody)
	if len(dates) == 0 {
		return u.complete
	}
	picked := dates[0]
	for _, d := range dates {
		switch {
		case !d.Stated():
			return d
		case before(d, picked):
			picked = d
		}
	}
	return picked
}
