package storage

import (
	"sunclause/facts/book"
	"sunclause/facts/working"
	"sunclause/schema"
)

// Provision holds what is made ready for a battery to come, and what all
// batteries of the premises come to.
type Provision struct {
	Batteries            working.Number `json:"batteries" words:"batteries"`
	BatteryEnergyKwh     working.Number `json:"battery_energy_kwh" words:"rated energy of all batteries"`
	BatteryEnergyNearKwh working.Number `json:"battery_energy_near_kwh" words:"rated energy of the batteries that stand neither in the open nor in a detached building with the fire separation asked for"`
	VehiclesKwh          working.Number `json:"vehicles_kept_kwh" words:"stored energy of electric vehicles kept in the same space"`
	BackupOutput         working.Flag   `json:"backup_output" words:"whether an inverter or battery can supply loads without the grid"`
	BatteryRiskAssessed  working.Flag   `json:"battery_risk_assessed" words:"whether a record of a risk assessment of the batteries is named"`
	BatteryConformity    working.Flag   `json:"battery_conformity_stated" words:"whether the installer's statement of conformity is named"`
	SourcesIsolable      working.Flag   `json:"source_isolation_tested" words:"whether the isolation of each source was tested and passed"`
	NeutralEarthTested   working.Flag   `json:"backup_neutral_earth_tested" words:"whether the neutral to earth arrangement of the backup supply was tested and passed"`
	BatteryPlanned       working.Flag   `json:"battery_planned" words:"whether the installation is to be ready for a battery"`
	PlannedEnergyKwh     working.Number `json:"battery_planned_energy_kwh" words:"stored energy foreseen"`
	PlannedCoupling      working.Text   `json:"battery_planned_coupling" words:"side on which the battery to come is to be connected"`
	PlannedPlace         working.Text   `json:"battery_planned_place" words:"where the battery to come is to stand"`
	PlannedPort          working.Flag   `json:"battery_planned_port" words:"whether the inverter for the battery to come has terminals for one"`
	PlannedSpaceKept     working.Flag   `json:"battery_space_kept" words:"whether the space for the battery to come is kept free"`
	PlannedRouteKept     working.Flag   `json:"battery_route_kept" words:"whether a way for its cables is kept free"`
	PlannedWayKept       working.Flag   `json:"battery_way_kept" words:"whether the way of a board kept for it is spare"`
	PlannedNotified      working.Flag   `json:"battery_notified" words:"whether the network operator was told of it"`
}

func provisionOf(in *schema.Installation, batteries []Battery, b book.Book) Provision {
	p := in.Storage.Provision
	f := Provision{
		VehiclesKwh:         working.Stated("E_vehicles", "kWh", in.Storage.VehiclesKeptKwh),
		BackupOutput:        backup(in, batteries),
		BatteryRiskAssessed: documented(in, in.Storage.RiskAssessmentRecord, ""),
		BatteryConformity:   documented(in, in.Storage.ConformityStatement, "battery_conformity_statement"),
		SourcesIsolable:     tested(in, "source_isolation"),
		NeutralEarthTested:  tested(in, "backup_neutral_earth"),
		BatteryPlanned:      working.StatedFlag(p.Planned),
		PlannedEnergyKwh:    working.Stated("E_planned", "kWh", p.EnergyKwh),
		PlannedCoupling:     working.StatedText(p.Coupling),
		PlannedPlace:        working.StatedText(p.Place),
		PlannedPort:         hasBatteryPort(p.Inverter.To()),
		PlannedSpaceKept:    working.StatedFlag(p.SpaceKept),
		PlannedRouteKept:    working.StatedFlag(p.CableRouteKept),
		PlannedWayKept:      spareWay(in, p.Way),
		PlannedNotified:     working.StatedFlag(p.Notified),
	}
	f.energy(batteries, b)
	return f
}

// energy adds up the energy of the batteries.
func (f *Provision) energy(batteries []Battery, b book.Book) {
	const list = "/storage/batteries"
	if batteries == nil {
		f.Batteries = working.Unknown("n_bat", "", list)
		f.BatteryEnergyKwh, f.BatteryEnergyNearKwh = working.Unknown("E", "kWh", list), working.Unknown("E_near", "kWh", list)
		return
	}
	separation := b.Number("battery_fire_separation_min", "t_min")
	var all, near []working.Number
	for i := range batteries {
		all = append(all, batteries[i].EnergyKwh)
		switch far := batteries[i].farOff(separation); {
		case !far.Known():
			near = append(near, working.Unknown("E", "kWh", far.Missing()...))
		case !far.Value():
			near = append(near, batteries[i].EnergyKwh)
		}
	}
	f.Batteries = working.Counted("n_bat", len(batteries), list)
	f.BatteryEnergyKwh = working.Sum("E", "kWh", all...)
	f.BatteryEnergyNearKwh = working.Sum("E_near", "kWh", near...)
}

// farOff reports whether a battery stands in the open, or in a detached building
// with the fire separation required.
func (f *Battery) farOff(separation working.Number) working.Flag {
	return working.Any(f.Outdoors, working.All(f.Detached, working.AtLeast(f.SeparationMin, separation)))
}

// backup reports whether anything supplies loads without the grid; one that does
// is enough.
func backup(in *schema.Installation, batteries []Battery) working.Flag {
	var supplies []working.Flag
	for _, inv := range in.Inverters {
		supplies = append(supplies, working.StatedFlag(inv.Datasheet.To().BackupOutput))
	}
	for i := range batteries {
		supplies = append(supplies, batteries[i].BackupPossible)
	}
	if in.Inverters == nil {
		supplies = append(supplies, working.UnknownFlag("/inverters"))
	}
	if batteries == nil {
		supplies = append(supplies, working.UnknownFlag("/storage/batteries"))
	}
	return working.Any(supplies...)
}

// documented reports that a paper is named by its reference, or is among the documents
// handed over. One that is not may yet exist.
func documented(in *schema.Installation, reference schema.Text, kind string) working.Flag {
	named := []working.Flag{working.IsStated(reference)}
	for _, d := range in.Handover.Documents {
		if d.Kind.Is(kind) {
			named = append(named, working.KnownFlag(true, d.At()))
		}
	}
	return working.Any(named...)
}

// tested reports whether all tests of a kind passed. Where none was done it is not
// known.
func tested(in *schema.Installation, kind string) working.Flag {
	var passed []working.Flag
	for _, t := range in.Commissioning.Functional {
		if t.Test.Is(kind) {
			passed = append(passed, working.StatedFlag(t.Passed))
		}
	}
	if passed == nil {
		return working.UnknownFlag("/commissioning/functional")
	}
	return working.All(passed...)
}

// spareWay reports whether a way of a board serves nothing else yet.
func spareWay(in *schema.Installation, way schema.Text) working.Flag {
	for _, board := range in.AC.Boards {
		for _, w := range board.Ways {
			if way.Is(board.ID.Value + "." + w.ID.Value) {
				return working.StatedText(w.Serves).OneOf("spare", "battery_supply", "hybrid_supply")
			}
		}
	}
	return working.UnknownFlag(way.At())
}
