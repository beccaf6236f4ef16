package label

import (
	"slices"

	"sunclause/facts/working"
	"sunclause/schema"
)

// Marking holds how one run is marked along its route.
type Marking struct {
	WarningDue       working.Flag   `json:"dc_warning_due" words:"whether the run needs a warning along its route: PV cable, live in daylight with every isolator open, and its function not evident all the way"`
	WarningM         working.Number `json:"dc_warning_m" words:"length of its route on which its function is not evident"`
	WarningLabels    working.Number `json:"dc_warning_labels" words:"warnings put along it"`
	GapM             working.Number `json:"label_gap_m" words:"greatest distance without a warning where its function is not evident"`
	GapStraightM     working.Number `json:"label_gap_straight_m" words:"greatest length without a warning on stretches that are straight and visible"`
	GapOtherM        working.Number `json:"label_gap_other_m" words:"greatest length without a warning on stretches that are bent or concealed"`
	CoveragePct      working.Number `json:"label_coverage_pct" words:"share of the length to be marked that lies between warnings no farther apart than the rule set allows there"`
	StretchesWithout working.Number `json:"stretches_unlabelled" words:"stretches to be marked that carry no warning at all"`
	PassagesWithout  working.Number `json:"passages_unlabelled" words:"sides of walls, floors and roofs to be marked without a warning near the passage"`
	BendsWithout     working.Number `json:"bends_unlabelled" words:"changes of direction to be marked without a warning near"`
}

// pvServices are the services of runs that daylight keeps live.
var pvServices = []string{"pv_string", "pv_array"}

// marking derives how a run is marked. Whether its function is evident, where it
// bends and where its labels stand is taken stretch by stretch.
func (j *job) marking(i int) Marking {
	r := &j.in.Cables[i]
	along := route{at: r.At()}
	along.follow(r)
	along.warnings(j, r)
	m := Marking{WarningDue: j.warningDue(i, &along)}
	m.WarningM = along.length()
	m.WarningLabels = working.Counted("n_lab", len(along.labels), r.At())
	m.gaps(&along)
	m.CoveragePct = along.coverage(j.b)
	m.StretchesWithout = along.spansWithout()
	near := j.b.Number("label_beside_turn_max_m", "d_max")
	passages, missing := along.passages()
	m.PassagesWithout = along.countUnmarked("n_pass", near, passages, missing)
	bends, missing := along.bends()
	m.BendsWithout = along.countUnmarked("n_bend", near, bends, missing)
	if along.unplaced != nil {
		m.unknown(along.unplaced)
	}
	return m
}

// unknown leaves open what hangs on where the labels are.
func (m *Marking) unknown(missing []working.Gap) {
	for _, n := range []*working.Number{&m.WarningLabels, &m.GapM, &m.GapStraightM, &m.GapOtherM, &m.CoveragePct,
		&m.StretchesWithout, &m.PassagesWithout, &m.BendsWithout} {
		*n = working.Unknown(n.Symbol(), n.Unit(), append(missing, n.Missing()...)...)
	}
}

// warningDue reports whether a run needs warnings. One that every isolator
// together makes dead needs none of its own; nor does one whose function is
// evident all the way.
func (j *job) warningDue(i int, along *route) working.Flag {
	r := &j.in.Cables[i]
	live := j.cables.Runs[i].LiveWithAllOpen
	if j.pv.Untraced != nil { // what was not traced may be live
		live = working.Any(live, working.UnknownFlag(j.pv.Untraced...))
	}
	return working.All(j.cables.Runs[i].Service.OneOf(pvServices...), live, along.mustMarkSome(r))
}

// legendAlong is the legend of the warnings along a run, as the label tables
// have it for the place pv_cable.
func (j *job) legendAlong() []string {
	var legends []string
	for _, a := range j.rows {
		if a.place == pvCable {
			legends = append(legends, a.legend)
		}
	}
	return legends
}

// alongRun lists the warnings put along a run. They may be stated to be along
// it or on it.
func (j *job) alongRun(r *schema.Run, legends []string) []*schema.Label {
	var found []*schema.Label
	for _, l := range j.byRun[r.ID.Value] {
		if slices.Contains(legends, l.Legend.Value) {
			found = append(found, l)
		}
	}
	return found
}
