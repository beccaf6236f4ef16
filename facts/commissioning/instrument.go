package commissioning

import "sunclause/facts/working"

// Instrument holds the facts of one test instrument.
type Instrument struct {
	working.Subject

	Kind                working.Text   `json:"kind" words:"what it is"`
	DaysSinceCalibrated working.Number `json:"days_since_calibrated" words:"days from its calibration to the last test; below zero when it was calibrated after"`
	DaysCalibrationLeft working.Number `json:"days_of_calibration_left" words:"days from the last test to the end of its calibration; below zero when it had run out"`
	HasSerial           working.Flag   `json:"serial_recorded" words:"whether its serial number is recorded"`
	IrradianceSensor    working.Text   `json:"irradiance_sensor" words:"sensor of an irradiance meter"`
	UncertaintyPct      working.Number `json:"uncertainty_pct" words:"uncertainty of its readings"`
	VoltageMaxV         working.Number `json:"voltage_max_v" words:"highest voltage it may be connected to"`
	Category            working.Text   `json:"measurement_category" words:"measurement category of IEC 61010"`
}

// instrumentFacts derives the facts of every instrument; nil when the document
// states none.
func (d *deriver) instrumentFacts() []Instrument {
	if d.in.Commissioning.Instruments == nil {
		return emptyBeforeBuild[Instrument](d.in)
	}
	last := d.in.Commissioning.TestsComplete
	all := make([]Instrument, len(d.in.Commissioning.Instruments))
	for i, inst := range d.in.Commissioning.Instruments {
		all[i] = Instrument{
			Subject:             working.Subject{ID: inst.ID.Value, At: inst.At(), Name: "instrument " + inst.ID.Value},
			Kind:                working.StatedText(inst.Kind),
			DaysSinceCalibrated: working.Days("t_cal", inst.Calibrated, last),
			DaysCalibrationLeft: working.Days("t_left", last, inst.CalibrationDue),
			HasSerial:           working.IsStated(inst.Serial),
			IrradianceSensor:    working.StatedText(inst.IrradianceSensor),
			UncertaintyPct:      working.Stated("u", "%", inst.UncertaintyPct),
			VoltageMaxV:         working.Stated("U_inst", "V", inst.VoltageMaxV),
			Category:            working.StatedText(inst.MeasurementCategory),
		}
	}
	return all
}
