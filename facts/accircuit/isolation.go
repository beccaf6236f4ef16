package accircuit

import (
	"maps"
	"slices"

	"sunclause/facts/circuit"
	"sunclause/facts/working"
	"sunclause/schema"
)

// Isolation holds how a circuit is isolated: beside the generator, and at the
// board.
type Isolation struct {
	ACIsolators        working.Number `json:"ac_isolators" words:"isolators in the circuit, for the generator that has fewest"`
	IsolatorDistanceM  working.Number `json:"isolator_distance_m" words:"distance of the isolator nearest to the generator from it"`
	IsolatorLockable   working.Flag   `json:"isolator_lockable" words:"whether that isolator can be locked open"`
	IsolatorAccessible working.Flag   `json:"isolator_accessible" words:"whether that isolator can be reached without a ladder, tool or key"`
	IsolatorBreaksAll  working.Flag   `json:"isolator_breaks_all" words:"whether that isolator breaks all live conductors"`
	IsolatorRatedA     working.Number `json:"isolator_rated_a" words:"rated operational current of that isolator in the category it is used in"`
	IsolatorDutyA      working.Number `json:"isolator_duty_a" words:"current of the generators through that isolator"`
	WayLockableOff     working.Flag   `json:"way_lockable_off" words:"whether the device of its way can be locked open"`
	DeviceIsolates     working.Flag   `json:"device_isolates" words:"whether the device of its way is suitable for isolation"`
	DeviceOpensNeutral working.Flag   `json:"device_opens_neutral" words:"whether the device of its way opens the neutral too"`
}

// isolation takes of each generator the isolator nearest to it, and of those
// the worst.
func (m *mains) isolation(l *link) Isolation {
	f := Isolation{
		ACIsolators:        working.Unknown("n", "", l.missing...),
		WayLockableOff:     working.StatedFlag(l.way.LockableOff),
		DeviceIsolates:     working.StatedFlag(l.device.Isolating),
		DeviceOpensNeutral: working.StatedFlag(l.device.OpensNeutral),
	}
	if l.traced() {
		f.ACIsolators = working.Least("n", "", each(l.isolators, func(all []int) working.Number { return working.Counted("n_i", len(all), l.at) })...)
	}
	f.worst(m.nearest(l))
	f.IsolatorDutyA = m.isolatorDuty(l)
	return f
}

// worst takes the worst of the isolators nearest to each generator.
func (f *Isolation) worst(isolators []*schema.Isolator) {
	var distances, rated []working.Number
	var lockable, accessible, breaking []working.Flag
	for _, i := range isolators {
		distances = append(distances, working.Stated("d", "m", i.DistanceToInverterM))
		rated = append(rated, isolatorRated(i))
		lockable = append(lockable, working.StatedFlag(i.LockableOff))
		accessible = append(accessible, working.StatedFlag(i.ReadilyAccessible))
		breaking = append(breaking, circuit.BreaksAll(i))
	}
	f.IsolatorDistanceM = working.Greatest("d", "m", distances...)
	f.IsolatorRatedA = working.Least("I_e", "A", rated...)
	f.IsolatorLockable = working.All(lockable...)
	f.IsolatorAccessible = working.All(accessible...)
	f.IsolatorBreaksAll = working.All(breaking...)
}

// nearest lists for each generator the isolator nearest to it; a blank one
// where it has none.
func (m *mains) nearest(l *link) []*schema.Isolator {
	none := schema.Blank[schema.Isolator]("/isolators")
	if len(l.isolators) == 0 {
		return []*schema.Isolator{none}
	}
	return each(l.isolators, func(all []int) *schema.Isolator {
		if len(all) == 0 {
			return none
		}
		return &m.in.Isolators[all[0]]
	})
}

// isolatorDuty is the greatest current through one of the nearest isolators:
// generators may share one.
func (m *mains) isolatorDuty(l *link) working.Number {
	through := map[int][]*generator{}
	for i, all := range l.isolators {
		if len(all) > 0 {
			through[all[0]] = append(through[all[0]], l.generators[i])
		}
	}
	var duties []working.Number
	for _, i := range slices.Sorted(maps.Keys(through)) {
		duties = append(duties, m.designCurrent(through[i]))
	}
	if len(duties) == 0 {
		return working.Unknown("I_b", "A", "/isolators")
	}
	return working.Greatest("I_b", "A", duties...)
}

// isolatorRated takes the least of the rated currents that the sheet gives for
// the category the isolator is used in, which must be one of AC.
func isolatorRated(iso *schema.Isolator) working.Number {
	category, sheet := working.StatedText(iso.UtilizationCategory), working.StatedText(iso.Datasheet.Text)
	if !category.Known() || !sheet.Known() {
		return working.Unknown("I_e", "A", append(category.Missing(), sheet.Missing()...)...)
	}
	if misused := circuit.Misused(iso.UtilizationCategory, "AC", iso.At()); misused != nil {
		return working.Unknown("I_e", "A", misused...)
	}
	var rated []working.Number
	printed := iso.Datasheet.To()
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
