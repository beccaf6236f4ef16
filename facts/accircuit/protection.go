package accircuit

import (
	"slices"

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
	SourceOn             working.Text   `json:"source_on" words:"terminals of the device to which the generator is connected: line or load"`
}

// The documents that the formulas of this file come from.
var (
	overload     = working.Source{Document: "IEC 60364-4-43", Clause: "433.1", How: working.Memory}
	bothEndsFed  = working.Source{Document: "IEC 60364-5-55", Clause: "551.7.2", How: working.Memory}
	overcurrents = []string{"fuse", "circuit_breaker", "rcbo", "afdd_with_rcbo"}
)

// device is the overcurrent device of the way.
func (m *mains) device(l *link) (schema.ProtectiveDevice, part) {
	way, _ := l.way()
	if l.outlet.way == nil {
		return schema.ProtectiveDevice{}, part{l.missing}
	}
	return m.in.Datasheets.ProtectiveDevices[way.Device.Value], part{[]string{way.Device.At()}}
}

func (m *mains) protection(l *link, u Use) Protection {
	d, of := m.device(l)
	way, ofWay := l.way()
	p := Protection{
		DeviceKind:         of.text(d.Kind),
		Characteristic:     of.text(d.Characteristic),
		RatedA:             of.number("I_n", "A", d.RatedA),
		DeviceMaxA:         working.Least("I_n,max", "A", each(l.generators, func(g *generator) working.Number { return g.deviceMax })...),
		BreakingCapacityKa: of.number("I_cn", "kA", d.BreakingCapacityKa),
		FaultLevelKa:       working.Stated("I_pf", "kA", m.in.AC.Supply.ProspectiveFaultKa),
		SourceOn:           ofWay.text(way.SourceOn),
	}
	p.OvercurrentFitted = working.UnknownFlag(p.DeviceKind.Missing()...)
	if p.DeviceKind.Known() {
		p.OvercurrentFitted = working.KnownFlag(slices.Contains(overcurrents, p.DeviceKind.Value()), p.DeviceKind.At())
	}
	p.RatedOverDesign = ratio("I_n/I_b", p.RatedA, u.DesignCurrentA.As("I_b"))
	p.ConductorDutyA = conductorDuty(u, p.RatedA)
	p.ConventionalCurrentA = m.conventional(of.number("I_2", "A", d.ConventionalCurrentA), p)
	f := working.Closure{Symbol: "I_z,min", Unit: "A", Text: "I_2 / k_2", Source: overload}
	p.CapacityNeededA = f.Of(func(x ...float64) float64 { return x[0] / x[1] }, p.ConventionalCurrentA.As("I_2"), m.book.Number("overload_factor", "k_2"))
	p.OneWayOnly = m.oneWay(l, d, of)
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
	f := working.Closure{Symbol: "I_cond", Unit: "A", Text: "I_n + I_b", Source: bothEndsFed}
	return f.Of(func(x ...float64) float64 { return x[0] + x[1] }, rated, u.DesignCurrentA.As("I_b"))
}

// conventional is the current of operation in the conventional time: by the
// product standard where it fixes it, else as the sheet prints it.
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
	f := working.Closure{Symbol: "I_2", Unit: "A", Text: "k_op · I_n", Source: overload}
	return f.Of(product, factor, p.RatedA)
}

// oneWay reports whether power may pass in one direction only through the device
// of the way or the residual current device before it.
func (m *mains) oneWay(l *link, d schema.ProtectiveDevice, of part) working.Flag {
	own := oneWayOnly(d, of)
	way, _ := l.way()
	if !way.RCD.Stated() {
		return own
	}
	return anyOf(l.at, own, oneWayOnly(m.in.Datasheets.ProtectiveDevices[way.RCD.Value], part{}))
}

// oneWayOnly takes a device for unidirectional where its maker says so, and
// where line and load are marked on it and its maker does not declare
// otherwise.
func oneWayOnly(d schema.ProtectiveDevice, of part) working.Flag {
	flow, marked, declared := of.text(d.Flow), of.flag(d.LineLoadMarked), of.flag(d.FlowDeclaredByMaker)
	switch {
	case flow.Known() && flow.Value() == "unidirectional":
		return working.KnownFlag(true, flow.At())
	case !flow.Known():
		return working.UnknownFlag(flow.Missing()...)
	case declared.Known() && declared.Value() && flow.Value() == "bidirectional":
		return working.KnownFlag(false, declared.At())
	case !marked.Known():
		return working.UnknownFlag(marked.Missing()...)
	case !marked.Value():
		return working.KnownFlag(false, marked.At())
	case !declared.Known():
		return working.UnknownFlag(declared.Missing()...)
	}
	return working.KnownFlag(true, marked.At())
}

func product(x ...float64) float64 {
	p := 1.0
	for _, v := range x {
		p *= v
	}
	return p
}

func ratio(symbol string, a, b working.Number) working.Number {
	f := working.Closure{Symbol: symbol, Text: a.Symbol() + " / " + b.Symbol(), Source: working.ByDefinition}
	return f.Of(func(x ...float64) float64 { return x[0] / x[1] }, a, b)
}
