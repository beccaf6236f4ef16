package label

import (
	"maps"
	"slices"

	"sunclause/facts/circuit"
	"sunclause/facts/working"
)

// dues are the words that a label table may use for when a label is due.
var dues = map[string]func(*job) working.Flag{
	"always":               func(*job) working.Flag { return working.KnownFlag(true, "") },
	"never":                func(*job) working.Flag { return working.KnownFlag(false, "") },
	"several_dc_isolators": severalIsolators,
	"battery_fitted":       batteryFitted,
	"backup_output":        backupOutput,
	"dwelling":             dwelling,
	"not_dwelling":         notDwelling,
}

// dueWhen reports whether a label is due, as far as the word of the table decides.
func (j *job) dueWhen(word string) working.Flag {
	decide, known := dues[word]
	if !known {
		return working.UnknownFlag(unknownWord("due", word, slices.Sorted(maps.Keys(dues))))
	}
	return decide(j)
}

func dwelling(j *job) working.Flag {
	return working.StatedText(j.in.Project.Premises).OneOf("dwelling")
}

func notDwelling(j *job) working.Flag { return working.Not(dwelling(j)) }

// severalIsolators reports whether it takes more than one movement to isolate the
// strings. Of isolators one behind the other any opens the same strings: where
// one of them opens all, one is enough. One that opens none, by the cables that
// are stated, may open anything.
func severalIsolators(j *job) working.Flag {
	if j.in.Isolators == nil {
		return working.UnknownFlag("/isolators")
	}
	n, most, least := 0, 0, len(j.pv.Strings)
	for i := range j.in.Isolators {
		kind := j.c.Opens(&j.in.Isolators[i])
		if !kind.Known() {
			return working.UnknownFlag(kind.Missing()...)
		}
		if kind.Value() == circuit.PV {
			n++
			opens := j.opens(i)
			most, least = max(most, opens), min(least, opens)
		}
	}
	oneIsEnough := most == len(j.pv.Strings) && least > 0
	return working.KnownFlag(n > 1 && !oneIsEnough, "/isolators")
}

// opens counts the strings that pass through an isolator.
func (j *job) opens(isolator int) int {
	passing := map[int]bool{}
	for _, way := range j.through[isolator] {
		for _, s := range way {
			passing[s] = true
		}
	}
	return len(passing)
}

// batteryFitted reports whether there is a battery: one described, or an inverter
// to which one is connected.
func batteryFitted(j *job) working.Flag {
	flags := []working.Flag{present(len(j.in.Storage.Batteries), j.in.Storage.Batteries == nil, "/storage/batteries")}
	for _, inv := range j.in.Inverters {
		if inv.BatteryFitted.Yes() {
			flags = append(flags, working.StatedFlag(inv.BatteryFitted))
		}
	}
	return working.Any(flags...)
}

// backupOutput reports whether loads can be supplied while the public supply is
// away: by an inverter, a battery, or another source behind a switch.
func backupOutput(j *job) working.Flag {
	flags := []working.Flag{present(len(j.in.AC.Changeovers), j.in.AC.Changeovers == nil, "/ac/changeovers")}
	if j.in.Inverters == nil {
		flags = append(flags, working.UnknownFlag("/inverters"))
	}
	for _, inv := range j.in.Inverters {
		flags = append(flags, working.StatedFlag(inv.Datasheet.To().BackupOutput))
	}
	for _, b := range j.in.Storage.Batteries {
		flags = append(flags, working.StatedFlag(b.Datasheet.To().BackupOutput))
	}
	if j.in.AC.Boards == nil {
		flags = append(flags, working.UnknownFlag("/ac/boards"))
	}
	for _, b := range j.in.AC.Boards {
		flags = append(flags, working.StatedText(b.Role).OneOf("backup"))
	}
	return working.Any(flags...)
}

// present reports whether a list that is stated has members.
func present(n int, isNil bool, at string) working.Flag {
	if isNil {
		return working.UnknownFlag(at)
	}
	return working.KnownFlag(n > 0, at)
}
