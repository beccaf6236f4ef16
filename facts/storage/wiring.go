package storage

import (
	"sunclause/facts/cable"
	"sunclause/facts/circuit"
	"sunclause/facts/working"
	"sunclause/schema"
)

// Wiring holds how a battery is connected.
type Wiring struct {
	Inverter            working.Text   `json:"inverter" words:"inverter to whose battery terminals it is wired"`
	WiredSide           working.Text   `json:"wired_side" words:"side on which it is wired: dc or ac"`
	InverterVoltageMaxV working.Number `json:"inverter_battery_voltage_max_v" words:"maximum voltage of those terminals"`
	InverterCurrentMaxA working.Number `json:"inverter_battery_current_max_a" words:"maximum current of those terminals"`
	RunCapacityA        working.Number `json:"run_capacity_a" words:"least current-carrying capacity of the cables to them"`
}

// wire follows the cables to the inverter, or from a built-in inverter to the
// supply.
func (f *Battery) wire(in *schema.Installation, c *circuit.Circuit, cables cable.Facts, s schema.Battery) {
	way := c.ToInverter(s.ID.Value)
	onDC := way.Input != "" && !way.Ambiguous
	f.Inverter, f.WiredSide = working.UnknownText("/cables"), working.UnknownText("/cables")
	switch toSupply := c.ToSupply(s.ID.Value + ".ac"); {
	case onDC:
		f.Inverter, f.WiredSide = working.KnownText(way.Input, s.At()), working.KnownText("dc", s.At())
	case toSupply.Input != "" && !toSupply.Ambiguous:
		f.WiredSide = working.KnownText("ac", s.At())
	}
	f.InverterVoltageMaxV = working.Unknown("U_port", "V", "/cables")
	f.InverterCurrentMaxA = working.Unknown("I_port", "A", "/cables")
	f.RunCapacityA = working.Unknown("I_z", "A", "/cables")
	for _, inv := range in.Inverters {
		if onDC && inv.ID.Value == way.Input {
			sheet := in.Datasheets.Inverters[inv.Datasheet.Value]
			f.InverterVoltageMaxV = working.Stated("U_port", "V", sheet.BatteryVoltageMaxV)
			f.InverterCurrentMaxA = working.Stated("I_port", "A", sheet.BatteryCurrentMaxA)
		}
	}
	if onDC {
		var capacities []working.Number
		for _, r := range way.Runs {
			capacities = append(capacities, cables.Runs[r].CapacityA.As("I_z"))
		}
		f.RunCapacityA = working.Least("I_z", "A", capacities...)
	}
}

// Port holds what there is at the battery terminals of one inverter.
type Port struct {
	BatteryPort       working.Flag   `json:"battery_port" words:"whether it has terminals for a battery"`
	BatteryFitted     working.Flag   `json:"battery_fitted" words:"whether a battery is said to be connected"`
	BatteriesWired    working.Number `json:"batteries_wired" words:"batteries wired to its battery terminals"`
	BatteryPortCabled working.Flag   `json:"battery_port_cabled" words:"whether a run of cable ends at its battery terminals"`
}

func portOf(in *schema.Installation, inv schema.Inverter, batteries []Battery) Port {
	kind := in.Datasheets.Inverters[inv.Datasheet.Value].Kind
	p := Port{
		BatteryPort:       working.UnknownFlag(kind.At()),
		BatteryFitted:     working.StatedFlag(inv.BatteryFitted),
		BatteriesWired:    working.Unknown("n_bat", "", "/storage/batteries"),
		BatteryPortCabled: cabled(in, inv.ID.Value+".battery"),
	}
	if kind.Stated() {
		p.BatteryPort = working.KnownFlag(!kind.Is("pv"), kind.At())
	}
	if batteries == nil {
		return p
	}
	wired := 0
	var missing []string
	for i := range batteries {
		if batteries[i].Inverter.Value() == inv.ID.Value {
			wired++
		}
		missing = append(missing, batteries[i].WiredSide.Missing()...)
	}
	p.BatteriesWired = working.Counted("n_bat", wired, "/storage/batteries")
	if missing != nil {
		p.BatteriesWired = working.Unknown("n_bat", "", missing...)
	}
	return p
}

// cabled says whether something is joined to a terminal, by a run of cable or by
// an isolator without one. As long as there is an isolator of a battery that may
// yet be joined to it, nothing else settles that it is bare.
func cabled(in *schema.Installation, terminal string) working.Flag {
	var missing []string
	if in.Cables == nil {
		missing = append(missing, "/cables")
	}
	if in.Isolators == nil {
		missing = append(missing, "/isolators")
	}
	for _, r := range in.Cables {
		if r.From.Value == terminal || r.To.Value == terminal {
			return working.KnownFlag(true, r.At())
		}
	}
	for _, iso := range in.Isolators {
		for _, w := range iso.Ways {
			if w.JoinedIn.Value == terminal || w.JoinedOut.Value == terminal {
				return working.KnownFlag(true, w.At())
			}
		}
		if !iso.Circuit.Stated() || iso.Circuit.Is("battery_dc") {
			missing = append(missing, iso.At())
		}
	}
	if missing != nil {
		return working.UnknownFlag(missing...)
	}
	return working.KnownFlag(false, "/cables")
}
