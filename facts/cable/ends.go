package cable

import (
	"sunclause/facts/working"
	"sunclause/schema"
)

// Ends holds how a run is made off at its ends.
type Ends struct {
	TerminalTempC working.Number `json:"terminal_temp_max_c" words:"lowest temperature for which a terminal at one of its ends is rated"`
	TempAtEndsC   working.Number `json:"conductor_temp_at_ends_c" words:"conductor temperature at the design current, in the hotter of the stretches at its ends"`
	GlandsFit     working.Flag   `json:"glands_fit" words:"whether the glands at both ends fit the cable"`
	StartEntry    working.Text   `json:"start_entry" words:"face through which it enters where it starts; none, where it enters no enclosure through a gland"`
	EndEntry      working.Text   `json:"end_entry" words:"face through which it enters where it ends; none, where it enters no enclosure through a gland"`
	StartOutdoors working.Flag   `json:"start_outdoors" words:"whether it starts in the open"`
	EndOutdoors   working.Flag   `json:"end_outdoors" words:"whether it ends in the open"`
	Strain        working.Flag   `json:"strain_relieved" words:"whether pull is kept from the terminals at both ends"`
}

func endsOf(r *schema.Run, segments []Segment) Ends {
	e := Ends{
		TerminalTempC: working.Least("T_term", "°C", working.Stated("T_start", "°C", r.Start.TerminalTempMaxC), working.Stated("T_end", "°C", r.End.TerminalTempMaxC)),
		GlandsFit:     working.All(fits(r.Start), fits(r.End)),
		StartEntry:    entry(r.Start),
		EndEntry:      entry(r.End),
		Strain:        working.All(working.StatedFlag(r.Start.StrainRelieved), working.StatedFlag(r.End.StrainRelieved)),
	}
	if n := len(segments); n > 0 {
		first, last := &segments[0], &segments[n-1]
		e.StartOutdoors, e.EndOutdoors = first.Outdoors, last.Outdoors
		e.TempAtEndsC = working.Greatest("T_end", "°C", first.ConductorTempC.As("T_first"), last.ConductorTempC.As("T_last"))
	}
	return e
}

// fits reports whether the gland of an end fits; where there is none there is
// nothing to fit.
func fits(e schema.CableEnd) working.Flag {
	if e.Gland.Is("none") {
		return working.KnownFlag(true, e.Gland.At())
	}
	return working.StatedFlag(e.GlandFits)
}

func entry(e schema.CableEnd) working.Text {
	if !e.Entry.Stated() && e.Gland.Is("none") {
		return working.KnownText("none", e.Gland.At())
	}
	return working.StatedText(e.Entry)
}
