package commissioning

import (
	"slices"

	"sunclause/facts/working"
	"sunclause/schema"
)

// Record holds the facts of the inspection and the tests as a whole.
type Record struct {
	Agreement

	PVTested           working.Flag   `json:"pv_tested" words:"whether there are readings on its strings, which nobody has before they are built"`
	Category           working.Text   `json:"test_category" words:"test regime of IEC 62446-1"`
	Instruments        working.Number `json:"test_instruments" words:"test instruments recorded"`
	TestsDone          working.Names  `json:"tests_done" words:"tests that were done and passed"`
	OutOfOrder         working.Number `json:"tests_out_of_order" words:"tests first done after one that should have come later"`
	BeforePolarity     working.Number `json:"tests_before_polarity" words:"tests under power first done before polarity was known"`
	CurrentsEarly      working.Number `json:"currents_before_polarity" words:"readings of a string's current taken, by date and time, before polarity was tested"`
	FailedOpen         working.Number `json:"tests_failed_open" words:"tests that failed and were not passed afterwards"`
	PointsFailed       working.Number `json:"inspection_points_failed" words:"points of the inspection found unsatisfactory"`
	PointsLacking      working.Number `json:"inspection_points_lacking" words:"points of the inspection table that were not looked at"`
	PointsLackingNames working.Names  `json:"inspection_points_lacking_names" words:"those points"`
	DaysToService      working.Number `json:"days_from_tests_to_service" words:"days from the last test to going into service; below zero when service came first"`
	Signed             working.Flag   `json:"test_report_signed" words:"whether the test report is signed"`
	TesterKnown        working.Flag   `json:"tester_competence_recorded" words:"whether qualification or registration of the tester is recorded"`
	Parallel           working.Number `json:"most_strings_in_parallel" words:"most strings in parallel on one array of the document"`
	SwitchesUntried    working.Number `json:"isolators_not_operated" words:"isolators without a switching test passed"`
	SPDsUnproved       working.Number `json:"spds_not_looked_at" words:"surge protective devices whose indicator was not looked at in the tests"`
	FramesUnread       working.Number `json:"frames_without_continuity" words:"frames connected to earth without a continuity reading"`
	BondsUnread        working.Number `json:"bonds_without_continuity" words:"main bonding conductors without a continuity reading"`
	SupplyPolarity     working.Flag   `json:"supply_polarity_correct" words:"whether every reading of the supply found its polarity correct"`
}

func (d *deriver) record() Record {
	c := d.in.Commissioning
	r := Record{
		Category:        working.StatedText(c.Category),
		Instruments:     working.Length("n", c.Instruments, d.at("instruments")),
		DaysToService:   working.Days("t", c.TestsComplete, c.Date),
		Signed:          working.StatedFlag(c.ReportSigned),
		TesterKnown:     working.IsStated(c.TesterCompetence),
		Parallel:        d.mostParallel(),
		PVTested:        working.KnownFlag(len(c.Strings)+len(c.Combiners)+len(c.Curves)+len(c.Insulation) > 0, c.At()),
		SwitchesUntried: untested(d, d.in.Isolators, "/isolators", "switching_device", func(i *schema.Isolator) schema.Text { return i.ID }),
		SPDsUnproved:    untested(d, d.in.SPDs, "/spds", "spd_indicator", func(s *schema.SPD) schema.Text { return s.ID }),
		FramesUnread:    d.framesUnread(),
		BondsUnread:     d.bondsUnread(),
		SupplyPolarity:  d.supplyPolarity(),
		Agreement:       d.agreement(),
	}
	r.steps(d)
	r.inspection(d)
	return r
}

func (d *deriver) mostParallel() working.Number {
	if d.pv.Arrays == nil {
		return working.Unknown("N_p", "", "/arrays")
	}
	counts := []working.Number{working.Counted("N_p", 0, "/arrays")}
	for i := range d.pv.Arrays {
		counts = append(counts, d.pv.Arrays[i].StringsParallel)
	}
	return working.Greatest("N_p", "", counts...)
}

// untested counts the parts of a list of which no functional test of a kind is
// recorded as passed.
func untested[T any](d *deriver, parts []T, list, test string, id func(*T) schema.Text) working.Number {
	switch {
	case parts == nil:
		return working.Unknown("n", "", list)
	case d.in.Commissioning.Functional == nil:
		return working.Unknown("n", "", d.at("functional"))
	}
	n := 0
	for i := range parts {
		if f := d.proved(test, id(&parts[i]).Value); !f.Known() || !f.Value() {
			n++
		}
	}
	return working.Counted("n", n, d.at("functional"))
}

// framesUnread counts the frames that are connected to earth and at which no
// lead of a continuity reading stood.
func (d *deriver) framesUnread() working.Number {
	frames, readings := d.in.Earthing.Frames, d.in.Commissioning.Continuity
	switch {
	case frames == nil:
		return working.Unknown("n", "", d.in.Earthing.Member("frames"))
	case readings == nil:
		return working.Unknown("n", "", d.at("continuity"))
	}
	unread := make([]working.Flag, len(frames))
	for i, f := range frames {
		earthed := working.Not(working.StatedText(f.Connection).OneOf("none"))
		unread[i] = working.All(earthed, working.KnownFlag(!resistanceRead(readings, f.ID.Value), d.at("continuity")))
	}
	return working.Count("n", d.at("continuity"), unread...)
}

func (d *deriver) bondsUnread() working.Number {
	bonds, readings := d.in.Earthing.MainBonds, d.in.Commissioning.Continuity
	switch {
	case bonds == nil:
		return working.Unknown("n", "", d.in.Earthing.Member("main_bonds"))
	case readings == nil:
		return working.Unknown("n", "", d.at("continuity"))
	}
	n := 0
	for _, b := range bonds {
		if !resistanceRead(readings, b.ID.Value) {
			n++
		}
	}
	return working.Counted("n", n, d.at("continuity"))
}

// resistanceRead reports whether a resistance was read on a part, or with a lead on it.
func resistanceRead(readings []schema.ContinuityReading, id string) bool {
	return slices.ContainsFunc(readings, func(r schema.ContinuityReading) bool {
		return r.ResistanceOhm.Stated() && (r.Part.Is(id) || r.From.Is(id) || r.To.Is(id))
	})
}

func (d *deriver) supplyPolarity() working.Flag {
	if len(d.in.Commissioning.Supply) == 0 {
		return working.UnknownFlag(d.at("supply"))
	}
	var correct []working.Flag
	for _, r := range d.in.Commissioning.Supply {
		correct = append(correct, working.StatedText(r.Polarity).OneOf("correct"))
	}
	return working.All(correct...)
}
