// Package cable derives the facts of runs of cable: the strings whose current
// each carries, the voltage and current that come from them, and whether it
// stays live in daylight with every isolator open.
package cable

import (
	"slices"

	"sunclause/facts/book"
	"sunclause/facts/circuit"
	"sunclause/facts/pvstring"
	"sunclause/facts/working"
	"sunclause/schema"
)

// Facts are the facts of the cables of an installation.
type Facts struct {
	Runs     []Run     // nil when the document states none
	Segments []Segment // nil when the document states no runs
	Drops    []Drop    // by string
}

// Segment holds the facts of one stretch of a run: its id is the run's with its
// number, as R1.2.
type Segment struct {
	working.Subject

	LengthM working.Number `json:"length_m" words:"length along the route"`
}

// Drop holds what the cables take from one string.
type Drop struct {
}

// Run holds the facts of one run of cable.
type Run struct {
	working.Subject

	Service         working.Text   `json:"service" words:"what it carries: pv_string, pv_array, battery, ac, …"`
	LengthM         working.Number `json:"length_m" words:"length of its route, one way"`
	Strings         working.Names  `json:"strings" words:"strings whose current it carries"`
	StringsParallel working.Number `json:"strings_in_parallel" words:"strings in parallel whose current it carries"`
	VocMaxV         working.Number `json:"voc_max_v" words:"greatest maximum voltage among them"`
	IscStcA         working.Number `json:"isc_stc_a" words:"short-circuit current at STC that it carries"`
	IscMaxA         working.Number `json:"isc_max_a" words:"design short-circuit current that it carries"`
	ImpA            working.Number `json:"imp_a" words:"current at maximum power that it carries"`
	DesignCurrentA  working.Number `json:"design_current_a" words:"design current, for which its conductors must be good"`
	CapacityA       working.Number `json:"capacity_a" words:"current-carrying capacity of its worst stretch, all factors applied"`
	DropV           working.Number `json:"drop_v" words:"voltage drop at its rated current with warm conductors"`
	LoopOhm         working.Number `json:"loop_ohm" words:"resistance of line and protective conductor, warm"`
	ProtectiveMm2   working.Number `json:"protective_mm2" words:"cross-section of its protective conductor"`
	LiveWithAllOpen working.Flag   `json:"live_with_all_open" words:"whether the strings keep it live in daylight with every isolator open"`
}

// Derive derives the facts of the cables.
func Derive(in *schema.Installation, c *circuit.Circuit, pv pvstring.Facts, b book.Book) Facts {
	return Facts{Runs: runs(in, c, pv), Drops: make([]Drop, len(in.Strings))}
}

func runs(in *schema.Installation, c *circuit.Circuit, pv pvstring.Facts) []Run {
	if in.Cables == nil {
		return nil
	}
	carried := carriedBy(c, pv)
	dark := c.Daylight(func(int) bool { return true })
	all := make([]Run, len(in.Cables))
	for i := range in.Cables {
		r := &in.Cables[i]
		all[i] = Run{
			Subject:         working.Subject{ID: r.ID.Value, At: r.At(), Name: "run " + r.ID.Value},
			Service:         working.StatedText(r.Service),
			LengthM:         lengthOf(r),
			LiveWithAllOpen: dark.Run(i),
		}
		all[i].load(r, carried[i], pv)
	}
	return all
}

// carriedBy lists, for each run, the strings on whose path it lies.
func carriedBy(c *circuit.Circuit, pv pvstring.Facts) map[int][]*pvstring.String {
	carried := map[int][]*pvstring.String{}
	for i := range pv.Strings {
		s := &pv.Strings[i]
		for _, r := range c.From(s.ID).Runs {
			carried[r] = append(carried[r], s)
		}
	}
	return carried
}

// load adds up what the strings put on the run. It is unknown for a run of the
// PV side as long as some string was not traced.
func (f *Run) load(r *schema.Run, carried []*pvstring.String, pv pvstring.Facts) {
	var ids []string
	var voc, stc, design, mp []working.Number
	for _, s := range carried {
		ids = append(ids, s.ID)
		voc, stc = append(voc, s.VocMaxV), append(stc, s.IscStcA)
		design, mp = append(design, s.IscMaxA), append(mp, s.ImpA)
	}
	f.Strings = working.List(ids...)
	f.StringsParallel = working.Counted("N_p", len(ids), r.At())
	f.VocMaxV = working.Greatest("U_oc,max", "V", voc...)
	f.IscStcA = working.Sum("I_sc,run", "A", stc...)
	f.IscMaxA = working.Sum("I_sc,max,run", "A", design...)
	f.ImpA = working.Sum("I_mp,run", "A", mp...)
	if pv.Untraced == nil || !slices.Contains([]string{"pv_string", "pv_array"}, r.Service.Value) {
		return
	}
	f.Strings = working.UnknownList(pv.Untraced...)
	for _, n := range []*working.Number{&f.StringsParallel, &f.VocMaxV, &f.IscStcA, &f.IscMaxA, &f.ImpA} {
		*n = working.Unknown(n.Symbol(), n.Unit(), pv.Untraced...)
	}
}

// lengthOf adds the lengths of the segments.
func lengthOf(r *schema.Run) working.Number {
	if r.Segments == nil {
		return working.Unknown("l", "m", r.Member("segments"))
	}
	var lengths []working.Number
	for _, s := range r.Segments {
		lengths = append(lengths, working.Stated("l_i", "m", s.LengthM))
	}
	return working.Sum("l", "m", lengths...)
}
