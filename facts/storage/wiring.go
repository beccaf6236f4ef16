package storage

import (
	"slices"

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
func (f *Battery) wire(in *schema.Installation, c *circuit.Circuit, cables cable.Facts, s *schema.Battery) {
	way := c.ToInverter(s.ID.Value)
	onDC := way.Untraced == nil
	f.Inverter, f.WiredSide = working.UnknownText(way.Untraced...), working.UnknownText(way.Untraced...)
	switch toSupply := c.ToSupply(s.ID.Value + ".ac"); {
	case onDC:
		f.Inverter, f.WiredSide = working.KnownText(way.Input, s.At()), working.KnownText("dc", s.At())
	case toSupply.Untraced == nil:
		f.WiredSide = working.KnownText("ac", s.At())
	}
	f.RunCapacityA = working.Unknown("I_z", "A", way.Untraced...)
	sheet := schema.Blank[schema.InverterDatasheet]("/cables")
	if onDC {
		sheet = inverterNamed(in, way.Input).Datasheet.To()
		var capacities []working.Number
		for _, r := range way.Runs {
			capacities = append(capacities, cables.Runs[r].CapacityA.As("I_z"))
		}
		f.RunCapacityA = working.Least("I_z", "A", capacities...)
	}
	f.InverterVoltageMaxV = working.Stated("U_port", "V", sheet.BatteryVoltageMaxV)
	f.InverterCurrentMaxA = working.Stated("I_port", "A", sheet.BatteryCurrentMaxA)
}

// inverterNamed is the inverter to which the circuit led.
func inverterNamed(in *schema.Installation, id string) *schema.Inverter {
	for i := range in.Inverters {
		if in.Inverters[i].ID.Value == id {
			return &in.Inverters[i]
		}
	}
	return schema.Blank[schema.Inverter]("/inverters")
}

// Port holds what there is at the battery terminals of one inverter.
type Port struct {
	Backup

	BatteryPort       working.Flag   `json:"battery_port" words:"whether it has terminals for a battery"`
	BatteryFitted     working.Flag   `json:"battery_fitted" words:"whether a battery is said to be connected"`
	BatteriesWired    working.Number `json:"batteries_wired" words:"batteries wired to its battery terminals"`
	BatteryPortCabled working.Flag   `json:"battery_port_cabled" words:"whether a run of cable ends at its battery terminals"`
}

func portOf(in *schema.Installation, c *circuit.Circuit, inv *schema.Inverter, batteries []Battery) Port {
	return Port{
		Backup:            backupOf(in, c, inv.ID.Value, inv.At(), inv.Datasheet.To().BackupOutput, inv.BackupUsed),
		BatteryPort:       hasBatteryPort(inv),
		BatteryFitted:     working.StatedFlag(inv.BatteryFitted),
		BatteriesWired:    wiredTo(inv, batteries),
		BatteryPortCabled: cabled(in, c, inv.ID.Value+".battery"),
	}
}

// hasBatteryPort reports whether an inverter has terminals for a battery.
func hasBatteryPort(inv *schema.Inverter) working.Flag {
	return working.Not(working.StatedText(inv.Datasheet.To().Kind).OneOf("pv"))
}

// wiredTo counts the batteries wired to an inverter. One of which it is not known how
// it is wired may be wired to any.
func wiredTo(inv *schema.Inverter, batteries []Battery) working.Number {
	const list = "/storage/batteries"
	if batteries == nil {
		return working.Unknown("n_bat", "", list)
	}
	wired := make([]working.Flag, len(batteries))
	for i := range batteries {
		b := &batteries[i]
		wired[i] = working.UnknownFlag(b.WiredSide.Missing()...)
		if b.WiredSide.Known() {
			wired[i] = working.KnownFlag(b.Inverter.Value() == inv.ID.Value, b.At)
		}
	}
	return working.Count("n_bat", list, wired...)
}

// cabled reports whether something is joined to a terminal, by a run of cable or by
// an isolator without one. As long as there is an isolator of a battery that may
// yet be joined to it, nothing else settles that it is bare.
func cabled(in *schema.Installation, c *circuit.Circuit, terminal string) working.Flag {
	joined := []working.Flag{
		working.Among(in.Cables, "/cables", func(r *schema.Run) bool { return r.From.Value == terminal || r.To.Value == terminal }),
		working.Among(in.Isolators, "/isolators", func(iso *schema.Isolator) bool {
			return slices.ContainsFunc(iso.Ways, func(w schema.IsolatorWay) bool { return w.JoinedIn.Value == terminal || w.JoinedOut.Value == terminal })
		}),
	}
	for i := range in.Isolators {
		iso := &in.Isolators[i]
		switch opens := c.Opens(iso); {
		case !opens.Known():
			joined = append(joined, working.UnknownFlag(opens.Missing()...))
		case opens.Value() == circuit.Battery:
			joined = append(joined, working.UnknownFlag(iso.At()))
		}
	}
	return working.Any(joined...)
}
