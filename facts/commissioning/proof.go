package commissioning

import (
	"sunclause/facts/working"
	"sunclause/schema"
)

// Proof holds what the functional tests of one inverter showed.
type Proof struct {
	Starts        working.Flag   `json:"proved_starts" words:"whether it was seen to start"`
	LossOfMains   working.Flag   `json:"proved_loss_of_mains" words:"whether it was seen to stop when the supply was opened"`
	LossOfMainsS  working.Number `json:"loss_of_mains_s" words:"longest time in which it stopped"`
	Reconnects    working.Flag   `json:"proved_reconnection" words:"whether it was seen to wait and come back when the supply returned"`
	ReconnectionS working.Number `json:"reconnection_measured_s" words:"shortest time after which it came back"`
	SettingsRead  working.Flag   `json:"proved_grid_settings" words:"whether the settings of its interface protection were read back"`
}

// proofs derives what was proved of every inverter.
func (d *deriver) proofs() []Proof {
	all := make([]Proof, len(d.in.Inverters))
	for i, inv := range d.in.Inverters {
		id := inv.ID.Value
		all[i] = Proof{
			Starts:        d.proved("inverter_starts", id),
			LossOfMains:   d.proved("loss_of_mains", id),
			LossOfMainsS:  working.Greatest("t_loss", "s", d.times("loss_of_mains", id)...),
			Reconnects:    d.proved("reconnection", id),
			ReconnectionS: working.Least("t_rec", "s", d.times("reconnection", id)...),
			SettingsRead:  d.proved("grid_settings_read_back", id),
		}
	}
	return all
}

// testsOf lists the functional tests of one kind of one part. A test of which it is
// not stated what was tested may be of any part: then none can be listed, and it
// is what is missing.
func (d *deriver) testsOf(test, part string) (some []*schema.FunctionalTest, missing []working.Gap) {
	for _, f := range d.find.functional[test] {
		switch {
		case !f.Part.Stated():
			missing = append(missing, working.Unstated(f.Part.At()))
		case f.Part.Value == part:
			some = append(some, f)
		}
	}
	if missing == nil && some == nil {
		missing = []working.Gap{working.Unstated(d.at("functional"))}
	}
	return some, missing
}

// proved reports whether a test was done and every time passed. One that was not
// done is not known to have failed.
func (d *deriver) proved(test, part string) working.Flag {
	tests, missing := d.testsOf(test, part)
	if missing != nil {
		return working.UnknownFlag(missing...)
	}
	passed := make([]working.Flag, len(tests))
	for i, t := range tests {
		passed[i] = working.StatedFlag(t.Passed)
	}
	return working.All(passed...)
}

// times are the times that a test took, or an unknown one.
func (d *deriver) times(test, part string) []working.Number {
	tests, missing := d.testsOf(test, part)
	if missing != nil {
		return []working.Number{working.Unknown("t", "s", missing...)}
	}
	var all []working.Number
	for _, t := range tests {
		all = append(all, working.Stated("t", "s", t.TimeS))
	}
	return all
}
