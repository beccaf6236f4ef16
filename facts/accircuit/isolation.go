package accircuit

import (
	"sunclause/facts/circuit"
	"sunclause/facts/working"
	"sunclause/schema"
)

// Isolation holds how a circuit is isolated: beside the generator, and at the
// board.
type Isolation struct {
	ACIsolators        working.Number `json:"ac_isolators" words:"isolators in the circuit"`
	IsolatorDistanceM  working.Number `json:"isolator_distance_m" words:"distance of the isolator nearest to the generator from it"`
	IsolatorLockable   working.Flag   `json:"isolator_lockable" words:"whether that isolator can be locked open"`
	IsolatorAccessible working.Flag   `json:"isolator_accessible" words:"whether that isolator can be reached without a ladder, tool or key"`
	IsolatorBreaksAll  working.Flag   `json:"isolator_breaks_all" words:"whether that isolator breaks all live conductors"`
	IsolatorRatedA     working.Number `json:"isolator_rated_a" words:"rated operational current of that isolator in the category it is used in"`
	WayLockableOff     working.Flag   `json:"way_lockable_off" words:"whether the device of its way can be locked open"`
	DeviceIsolates     working.Flag   `json:"device_isolates" words:"whether the device of its way is suitable for isolation"`
	DeviceOpensNeutral working.Flag   `json:"device_opens_neutral" words:"whether the device of its way opens the neutral too"`
}

func (m *mains) isolation(l *link) Isolation {
	d, of := m.device(l)
	way, ofWay := l.way()
	f := Isolation{
		ACIsolators:        working.Counted("n", len(l.isolators), l.at),
		WayLockableOff:     ofWay.flag(way.LockableOff),
		DeviceIsolates:     of.flag(d.Isolating),
		DeviceOpensNeutral: of.flag(d.OpensNeutral),
	}
	if l.outlet.way == nil {
		f.ACIsolators = working.Unknown("n", "", l.missing...)
	}
	from := part{[]string{"/isolators"}}
	var iso schema.Isolator
	if len(l.isolators) > 0 {
		iso = m.in.Isolators[l.isolators[0]]
	}
	f.IsolatorDistanceM = from.number("d", "m", iso.DistanceToInverterM)
	f.IsolatorLockable = from.flag(iso.LockableOff)
	f.IsolatorAccessible = from.flag(iso.ReadilyAccessible)
	f.IsolatorBreaksAll = breaksAll(iso, from)
	f.IsolatorRatedA = m.isolatorRated(iso, from)
	return f
}

func breaksAll(iso schema.Isolator, from part) working.Flag {
	if len(iso.Ways) == 0 {
		return working.UnknownFlag(from.missing...)
	}
	for _, w := range iso.Ways {
		if !w.ConductorsOpened.Stated() {
			return working.UnknownFlag(w.ConductorsOpened.At())
		}
		if !circuit.BreaksAll(w.ConductorsOpened) {
			return working.Is(false, w.ConductorsOpened.At())
		}
	}
	return working.Is(true, iso.At())
}

// isolatorRated takes the least of the rated currents that the sheet gives for
// the category the isolator is used in.
func (m *mains) isolatorRated(iso schema.Isolator, from part) working.Number {
	category, sheet := from.text(iso.UtilizationCategory), from.text(iso.Datasheet)
	if !category.Known() || !sheet.Known() {
		return working.Unknown("I_e", "A", append(category.Missing(), sheet.Missing()...)...)
	}
	var rated []working.Number
	printed := m.in.Datasheets.SwitchDisconnectors[sheet.Value()]
	for _, r := range printed.Ratings {
		if r.UtilizationCategory.Is(category.Value()) {
			rated = append(rated, working.Stated("I_e", "A", r.IeA))
		}
	}
	if len(rated) == 0 {
		return working.Unknown("I_e", "A", printed.Member("ratings"))
	}
	return working.Least("I_e", "A", rated...)
}
