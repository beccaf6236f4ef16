package commissioning

import (
	"slices"

	"sunclause/facts/working"
)

// group is strings that should read the same.
type group struct {
	strings []*StringTest
	median  working.Number
}

// compareAlike holds each string against the others of its kind: its voltage against
// strings with as many of the same modules, its current, brought to full sun,
// against all strings of the same module. What is compared with is the median:
// one bad string pulls a mean along with it.
func (d *deriver) compareAlike(all []StringTest) {
	voltage, current := d.groups(all, true), d.groups(all, false)
	same := d.sameReadings(all)
	for i := range all {
		f := &all[i]
		u, a := voltage[d.kind(i, true)], current[d.kind(i, false)]
		f.AlikeStrings = working.Counted("n_alike", len(u.strings), f.At)
		f.VocMedianV = u.median
		f.VocMedianPct = offAlike.Of(f.VocV.For("x"), u.median.For("x_0")).As("ΔU_med")
		f.ShortOfAlikeModules = modulesShort("n_short", d.pv.Strings[i].ModulesInSeries, f.VocV, u.median)
		f.SameModuleStrings = working.Counted("n_same", len(a.strings), f.At)
		f.IscMedianPct = offAlike.Of(f.IscFullSunA.For("x"), a.median.For("x_0")).As("ΔI_med")
		f.SameReadings = same(f)
	}
}

// kindOfString is what strings that should read the same have in common: their
// module, and how many of it stand in series where the voltage is compared.
type kindOfString struct {
	module string
	series float64
}

func (d *deriver) kind(i int, bySeries bool) kindOfString {
	k := kindOfString{module: d.in.Strings[i].Module.Value}
	if bySeries {
		k.series = d.in.Strings[i].ModulesInSeries.Value
	}
	return k
}

func (d *deriver) groups(all []StringTest, voltage bool) map[kindOfString]*group {
	groups := map[kindOfString]*group{}
	for i := range all {
		k := d.kind(i, voltage)
		if groups[k] == nil {
			groups[k] = &group{}
		}
		groups[k].strings = append(groups[k].strings, &all[i])
	}
	for _, g := range groups {
		readings := make([]working.Number, len(g.strings))
		for i, s := range g.strings {
			readings[i] = s.IscFullSunA
			if voltage {
				readings[i] = s.VocV
			}
		}
		g.median = median(readings)
	}
	return groups
}

// median needs every reading: with one left out another string would be the
// middle one, and a bad string might come out well. Of two readings it is the
// greater: the middle between them would halve what they differ by, and nearly
// every fault makes a string read less.
func median(readings []working.Number) working.Number {
	f := working.Lookup{Symbol: readings[0].Symbol() + "_med", Unit: readings[0].Unit(), Text: "median of the readings", Source: alikeStrings}
	if len(readings) == 2 {
		f.Text = "the greater of two readings"
	}
	return f.Of(func(x ...float64) float64 {
		sorted := slices.Sorted(slices.Values(x))
		n := len(sorted)
		if n == 2 {
			return sorted[1]
		}
		return (sorted[(n-1)/2] + sorted[n/2]) / 2
	}, readings...)
}

// sameReadings counts for each string the others with the same two readings to
// the last digit. It is unknown while any reading is: that may be one of them.
func (d *deriver) sameReadings(all []StringTest) func(*StringTest) working.Number {
	var missing []working.Gap
	count := map[[2]float64]int{}
	for i := range all {
		u, a := all[i].VocV, all[i].IscA
		missing = append(missing, u.Missing()...)
		missing = append(missing, a.Missing()...)
		count[[2]float64{u.Value(), a.Value()}]++
	}
	return func(f *StringTest) working.Number {
		if len(missing) > 0 {
			return working.Unknown("n", "", missing...)
		}
		return working.Counted("n", count[[2]float64{f.VocV.Value(), f.IscA.Value()}]-1, f.At)
	}
}
