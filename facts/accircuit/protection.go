package accircuit

import (
	"sunclause/facts/circuit"
	"sunclause/facts/working"
	"sunclause/schema"
)

// Protection holds the overcurrent device of a circuit, at the way from which
// the circuit leaves.
type Protection struct {
	OvercurrentFitted    working.Flag   `json:"overcurrent_fitted" words:"whether the device of its way is one against overcurrent"`
	DeviceKind           working.Text   `json:"device_kind" words:"what the device of its way is"`
	Characteristic       working.Text   `json:"characteristic" words:"tripping characteristic or utilization category of that device"`
	RatedA               working.Number `json:"rated_a" words:"rated current of that device, In"`
	RatedOverDesign      working.Number `json:"rated_over_design" words:"rated current over design current, In/Ib"`
	ConductorDutyA       working.Number `json:"conductor_duty_a" words:"current its conductors must be good for: In, and the generators' current too where loads are on it"`
	DeviceMaxA           working.Number `json:"device_max_a" words:"greatest overcurrent device that the makers of its generators allow"`
	ConventionalCurrentA working.Number `json:"conventional_current_a" words:"current at which the device operates in the conventional time, I2"`
	CapacityNeededA      working.Number `json:"overload_capacity_a" words:"capacity with which the conductors bear that current for the conventional time, I2/1.45"`
	BreakingCapacityKa   working.Number `json:"breaking_capacity_ka" words:"rated breaking capacity of the device"`
	FaultLevelKa         working.Number `json:"fault_level_ka" words:"prospective fault current at the origin, which no board exceeds"`
	OneWayOnly           working.Flag   `json:"one_way_only" words:"whether power may pass one of its devices in one direction only, or nothing shows otherwise"`
	OneWayBefore         working.Flag   `json:"one_way_before" words:"whether power may pass one of the devices before its board in one direction only, or nothing shows otherwise"`
	SourceOn             working.Text   `json:"source_on" words:"terminals of the device to which the generator is connected: line or load"`
}

// The documents that the formulas of this file come from.
var (
	overload     = working.Source{Document: "IEC 60364-4-43", Clause: "433.1", How: working.Memory}
	bothEndsFed  = working.Source{Document: "IEC 60364-5-55", Clause: "551.7.2", How: working.Memory}
	overcurrents = []string{"fuse", "circuit_breaker", "rcbo", "afdd_with_rcbo"}
)

var (
	capacityNeeded = working.NewFormula("I_z,min", "A", "I_2 / k_2", overload)
	dutyWithLoads  = working.NewFormula("I_cond", "A", "I_n + I_b", bothEndsFed)
	conventional   = working.NewFormula("I_2", "A", "k_op · I_n", overload)
)

func (m *mains) protection(l *link, u Use) Protection {
	d := l.device
	p := Protection{
		DeviceKind:         working.StatedText(d.Kind),
		Characteristic:     working.StatedText(d.Characteristic),
		RatedA:             working.Stated("I_n", "A", d.RatedA),
		DeviceMaxA:         working.Least("I_n,max", "A", each(l.generators, func(g *generator) working.Number { return g.deviceMax })...),
		BreakingCapacityKa: working.Stated("I_cn", "kA", d.BreakingCapacityKa),
		FaultLevelKa:       working.Stated("I_pf", "kA", m.in.AC.Supply.ProspectiveFaultKa),
		SourceOn:           working.StatedText(l.way.SourceOn),
	}
	p.OvercurrentFitted = p.DeviceKind.OneOf(overcurrents...)
	p.RatedOverDesign = working.Ratio("I_n/I_b", p.RatedA, u.DesignCurrentA.As("I_b"))
	p.ConductorDutyA = conductorDuty(u, p.RatedA)
	p.ConventionalCurrentA = m.conventional(working.Stated("I_2", "A", d.ConventionalCurrentA), p)
	p.CapacityNeededA = capacityNeeded.Of(p.ConventionalCurrentA.As("I_2"), m.book.Number("overload_factor", "k_2"))
	p.OneWayOnly = l.oneWayOnly()
	p.OneWayBefore = l.oneWayBefore()
	return p
}

// conductorDuty is the rated current, and where loads are on the same circuit
// the current of its generators too: both can feed the conductors.
func conductorDuty(u Use, rated working.Number) working.Number {
	if !u.Dedicated.Known() {
		return working.Unknown("I_cond", "A", u.Dedicated.Missing()...)
	}
	if u.Dedicated.Value() {
		return rated
	}
	return dutyWithLoads.Of(rated, u.DesignCurrentA.As("I_b"))
}

// conventional is the current of operation in the conventional time: by the product
// standard where it fixes it, or as the sheet prints it. Where both say one, the
// greater counts: it is the worse for the cable.
func (m *mains) conventional(printed working.Number, p Protection) working.Number {
	if !p.Characteristic.Known() {
		return working.Unknown("I_2", "A", p.Characteristic.Missing()...)
	}
	factor := m.book.Keyed("overload_operation", "characteristic", p.Characteristic, "factor", "k_op")
	if p.Characteristic.Value() == "gG" {
		factor = m.book.Step("overload_operation_gg", "at_least_a", p.RatedA, "factor", "k_op")
	}
	if !factor.Known() && p.RatedA.Known() {
		return printed
	}
	return worse(conventional.Of(factor, p.RatedA), printed)
}

// worse is the greater of what a standard fixes and what a sheet prints of the same
// current: a device that needs more to operate protects less. Where the sheet prints
// none, the standard counts.
func worse(fixed, printed working.Number) working.Number {
	if !printed.Known() || !fixed.Known() || printed.Value() <= fixed.Value() {
		return fixed
	}
	return printed
}

// oneWayOnly reports whether power may pass in one direction only through the
// device of the way or the residual current device before it.
func (l *link) oneWayOnly() working.Flag {
	own := unidirectional(l.device)
	if !l.way.RCD.Stated() {
		return own
	}
	return working.Any(own, unidirectional(l.way.RCD.To()))
}

// oneWayBefore reports whether power may pass in one direction only through a
// device between the board and the supply. The generator is always on its load side.
func (l *link) oneWayBefore() working.Flag {
	if !l.traced() {
		return working.UnknownFlag(l.missing...)
	}
	return working.Any(each(l.before, func(u circuit.Upstream) working.Flag { return unidirectional(u.Device) })...)
}

// unidirectional takes a device to pass power one way only where its maker says
// so, and where line and load are marked on it and its maker does not declare
// that it passes both ways. A fuse has no direction.
func unidirectional(d *schema.ProtectiveDevice) working.Flag {
	if d.Kind.Is("fuse") {
		return working.KnownFlag(false, d.Kind.At())
	}
	flow := working.StatedText(d.Flow)
	declaredBoth := working.All(working.StatedFlag(d.FlowDeclaredByMaker), flow.OneOf("bidirectional"))
	return working.Any(flow.OneOf("unidirectional"), working.All(working.StatedFlag(d.LineLoadMarked), working.Not(declaredBoth)))
}
