package commissioning

import (
	"sunclause/facts/circuit"
	"sunclause/facts/working"
	"sunclause/schema"
)

// CircuitTest holds the facts of the tests of one AC circuit.
type CircuitTest struct {
	working.Subject

	Serves           working.Text   `json:"serves" words:"what the circuit serves"`
	LoopOhm          working.Number `json:"loop_ohm" words:"greatest earth fault loop impedance read on it"`
	LoopStatedOhm    working.Number `json:"loop_stated_ohm" words:"earth fault loop impedance with which the circuit is judged"`
	R1R2Ohm          working.Number `json:"r1_r2_ohm" words:"resistance of line and protective conductor read on it"`
	InsulationMegohm working.Number `json:"insulation_megohm" words:"least insulation resistance read on it"`
	InsulationTestV  working.Number `json:"insulation_test_voltage_v" words:"least test voltage among those readings"`
	SPDsConnected    working.Flag   `json:"spds_connected" words:"whether surge protective devices were connected during one of them"`
	RCDFitted        working.Flag   `json:"rcd_fitted" words:"whether a residual current device protects it"`
	RCDReadings      working.Number `json:"rcd_readings" words:"tests of that device"`
}

// RCDTest holds the facts of one test of a residual current device.
type RCDTest struct {
	working.Subject

	CurrentMultiple working.Number `json:"current_multiple" words:"test current over the rated residual current"`
	Form            working.Text   `json:"test_current_form" words:"form of the test current: AC, A or B"`
	TripTimeMs      working.Number `json:"trip_time_ms" words:"time in which it opened"`
	Tripped         working.Flag   `json:"tripped" words:"whether it opened"`
	Delayed         working.Flag   `json:"time_delayed" words:"whether the device is time-delayed"`
	ButtonWorks     working.Flag   `json:"test_button_works" words:"whether its test button opens it"`
}

// circuits derives the tests of every AC circuit stated; nil when the document
// states no circuits.
func (d *deriver) circuits() []CircuitTest {
	if d.in.AC.Circuits == nil {
		return emptyBeforeBuild[CircuitTest](d.in)
	}
	all := make([]CircuitTest, len(d.in.AC.Circuits))
	for i := range all {
		c := &d.in.AC.Circuits[i]
		way := d.find.way(c.Way)
		all[i] = CircuitTest{
			Subject:       working.Subject{ID: c.ID.Value, At: c.At(), Name: "tests of circuit " + c.ID.Value},
			Serves:        d.servesOf(c.Way, way),
			LoopStatedOhm: working.Stated("Z_s", "Ω", c.ZsOhm),
			RCDFitted:     d.rcdOn(c.Way, way),
		}
		all[i].loops(d, c.ID.Value)
		all[i].insulated(d, c.ID.Value)
		all[i].RCDReadings = d.rcdReadings(c.ID.Value)
	}
	return all
}

// servesOf is what the way of a circuit serves, where the circuit bears the word out.
func (d *deriver) servesOf(name schema.Text, way *schema.BoardWay) working.Text {
	if d.find.ways[name.Value] != way {
		return working.StatedText(way.Serves)
	}
	return d.c.Serves(name.Value)
}

// devicesOn lists the protective devices that the circuit of a way is behind: those of the
// way, then those between its board and the supply.
func (d *deriver) devicesOn(name schema.Text, way *schema.BoardWay) []*schema.ProtectiveDevice {
	all := []*schema.ProtectiveDevice{way.Device.To()}
	if way.RCD.Stated() {
		all = append(all, way.RCD.To())
	}
	if d.find.ways[name.Value] == way {
		for _, u := range d.c.Before(name.Value) {
			all = append(all, u.Device)
		}
	}
	return all
}

// rcdOn reports whether a residual current device protects a way.
func (d *deriver) rcdOn(name schema.Text, way *schema.BoardWay) working.Flag {
	var found []working.Flag
	for _, device := range d.devicesOn(name, way) {
		found = append(found, circuit.OpensOnResidual(device))
	}
	return working.Any(found...)
}

// residualDevice is the first device with a residual current that the circuit tested is
// behind; where there is none that of its way.
func (d *deriver) residualDevice(part schema.Text) *schema.ProtectiveDevice {
	name := d.find.circuit(part).Way
	all := d.devicesOn(name, d.find.way(name))
	for _, device := range all {
		if circuit.OpensOnResidual(device).Value() {
			return device
		}
	}
	return all[0]
}

func (f *CircuitTest) loops(d *deriver, id string) {
	var loops, r1r2 []working.Number
	for _, r := range d.in.Commissioning.Loops {
		if !r.Part.Stated() { // it may be of this circuit
			f.LoopOhm, f.R1R2Ohm = working.Unknown("Z", "Ω", r.Part.At()), working.Unknown("R_1+R_2", "Ω", r.Part.At())
			return
		}
		if r.Part.Is(id) {
			loops = append(loops, working.Stated("Z", "Ω", r.LoopImpedanceOhm))
			r1r2 = append(r1r2, working.Stated("R_1+R_2", "Ω", r.R1R2Ohm))
		}
	}
	f.LoopOhm, f.R1R2Ohm = working.Greatest("Z", "Ω", loops...), working.Greatest("R_1+R_2", "Ω", r1r2...)
	if loops == nil {
		f.LoopOhm = working.Unknown("Z", "Ω", d.at("loops"))
		f.R1R2Ohm = working.Unknown("R_1+R_2", "Ω", d.at("loops"))
	}
}

func (f *CircuitTest) insulated(d *deriver, id string) {
	var ohms, volts []working.Number
	var connected []working.Flag
	for _, r := range d.find.insulated[id] {
		ohms = append(ohms, working.Stated("R", "MΩ", r.ResistanceMegohm))
		volts = append(volts, working.Stated("U_test", "V", r.TestVoltageV))
		connected = append(connected, spdsConnected(d.spdsAC, r.SPDsConnected))
	}
	f.InsulationMegohm, f.InsulationTestV = working.Least("R", "MΩ", ohms...), working.Least("U_test", "V", volts...)
	f.SPDsConnected = working.Any(connected...)
	if ohms == nil {
		f.SPDsConnected = working.UnknownFlag(d.at("insulation"))
		f.InsulationMegohm = working.Unknown("R", "MΩ", d.at("insulation"))
		f.InsulationTestV = working.Unknown("U_test", "V", d.at("insulation"))
	}
}

func (d *deriver) rcdReadings(id string) working.Number {
	if d.in.Commissioning.Rcds == nil {
		return working.Unknown("n", "", d.at("rcds"))
	}
	return working.Counted("n", d.find.rcdTests[id], d.at("rcds"))
}

// rcds derives the facts of every test of a residual current device; nil when
// the document states none.
func (d *deriver) rcds() []RCDTest {
	if d.in.Commissioning.Rcds == nil {
		return emptyBeforeBuild[RCDTest](d.in)
	}
	all := make([]RCDTest, len(d.in.Commissioning.Rcds))
	for i := range all {
		r := &d.in.Commissioning.Rcds[i]
		device := d.residualDevice(r.Part)
		all[i] = RCDTest{
			Subject:         working.Subject{ID: r.ID.Value, At: r.At(), Name: "RCD test " + r.ID.Value},
			CurrentMultiple: working.Ratio("k", working.Stated("I_test", "mA", r.TestCurrentMa), working.Stated("I_Δn", "mA", device.ResidualCurrentMa)),
			Form:            working.StatedText(r.TestCurrentForm),
			TripTimeMs:      working.Stated("t", "ms", r.TripTimeMs),
			Tripped:         working.StatedFlag(r.Tripped),
			Delayed:         working.StatedFlag(device.TimeDelayed),
			ButtonWorks:     d.testButton(r),
		}
	}
	return all
}

// testButton is what pressing the test button of the device did. It is pressed once,
// however many readings are taken: a reading that does not say takes the answer
// of the others on the same part.
func (d *deriver) testButton(r *schema.RCDReading) working.Flag {
	var others []working.Flag
	for _, o := range d.in.Commissioning.Rcds {
		if o.TestButtonWorks.Stated() && o.Part.Value == r.Part.Value {
			others = append(others, working.StatedFlag(o.TestButtonWorks))
		}
	}
	if r.TestButtonWorks.Stated() || others == nil {
		return working.StatedFlag(r.TestButtonWorks)
	}
	return working.All(others...)
}
