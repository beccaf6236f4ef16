package commissioning

import (
	"cmp"
	"slices"

	"sunclause/facts/book"
	"sunclause/facts/working"
	"sunclause/schema"
)

// sequence is the order in which the tests follow each other. Insulation is
// free in it: some sites need it first, for safety.
var sequence = []string{"inspection", "ac_tests", "continuity", "polarity", "combiner", "open_circuit_voltage", "current", "functional"}

// underPower are the tests that close circuits or load the strings.
var underPower = []string{"combiner", "current", "functional", "iv_curve"}

// steps derives what the order of the tests shows.
func (r *Record) steps(d *deriver) {
	steps, at := d.in.Commissioning.Steps, d.at("steps")
	if steps == nil {
		r.TestsDone = working.UnknownList(at)
		r.orderUnknown(working.Unstated(at))
		return
	}
	steps, missing := inTime(steps)
	var done, first []string
	for _, s := range steps {
		if s.Passed.Yes() {
			done = append(done, s.Test.Value)
		}
		if !slices.Contains(first, s.Test.Value) {
			first = append(first, s.Test.Value)
		}
	}
	r.TestsDone = working.List(done...)
	if missing != nil {
		r.orderUnknown(missing...)
		return
	}
	r.OutOfOrder = working.Counted("n", outOfOrder(first), at)
	r.BeforePolarity = beforePolarity(first, at)
	r.FailedOpen = failedOpen(steps, at)
	r.CurrentsEarly = currentsEarly(steps, d.in.Commissioning.Strings, d.at("strings"))
}

// orderUnknown leaves open what the order of the tests would show.
func (r *Record) orderUnknown(missing ...working.Gap) {
	for _, n := range []*working.Number{&r.OutOfOrder, &r.BeforePolarity, &r.FailedOpen, &r.CurrentsEarly} {
		*n = working.Unknown("n", "", missing...)
	}
}

// inTime puts tests into the order in which they were done: by their dates and times,
// and where none is stated, or two are the same, as they stand in the list. Where only
// some state a date, or a time, those of the others are missing.
func inTime(steps []schema.TestStep) (sorted []schema.TestStep, missing []working.Gap) {
	for _, of := range []func(schema.TestStep) schema.Text{
		func(s schema.TestStep) schema.Text { return s.Time },
		func(s schema.TestStep) schema.Text { return s.Date },
	} {
		dated := slices.ContainsFunc(steps, func(s schema.TestStep) bool { return of(s).Stated() || s.Time.Stated() })
		for _, s := range steps {
			if dated && !of(s).Stated() {
				missing = append(missing, working.Unstated(of(s).At()))
			}
		}
	}
	sorted = slices.Clone(steps)
	slices.SortStableFunc(sorted, func(a, b schema.TestStep) int {
		return cmp.Compare(a.Date.Value+a.Time.Value, b.Date.Value+b.Time.Value)
	})
	return sorted, missing
}

// currentsEarly counts the readings of a string's current that were taken, by date and
// time, before its polarity was tested first.
func currentsEarly(steps []schema.TestStep, readings []schema.StringReading, at string) working.Number {
	i := slices.IndexFunc(steps, func(s schema.TestStep) bool { return s.Test.Is("polarity") })
	if i < 0 || readings == nil {
		return working.Unknown("n", "", at)
	}
	timed := steps[i].Time.Stated() && slices.ContainsFunc(readings, func(r schema.StringReading) bool { return r.Time.Stated() })
	n := 0
	var missing []working.Gap
	for _, r := range readings {
		underLoad := r.IscA.Stated() || r.OperatingCurrentA.Stated()
		switch sameDay := r.Date.Value == steps[i].Date.Value; {
		case !underLoad || !steps[i].Date.Stated():
		case !r.Date.Stated():
			missing = append(missing, working.Unstated(r.Date.At()))
		case timed && sameDay && !r.Time.Stated():
			missing = append(missing, working.Unstated(r.Time.At()))
		case r.Date.Value < steps[i].Date.Value, timed && sameDay && r.Time.Value < steps[i].Time.Value:
			n++
		}
	}
	if n == 0 && missing != nil {
		return working.Unknown("n", "", missing...)
	}
	return working.Counted("n", n, at)
}

// outOfOrder counts the tests that came after one that should have followed
// them.
func outOfOrder(first []string) int {
	n, reached := 0, -1
	for _, test := range first {
		switch place := slices.Index(sequence, test); {
		case place < 0:
		case place < reached:
			n++
		default:
			reached = place
		}
	}
	return n
}

func beforePolarity(first []string, at string) working.Number {
	n := 0
	for _, test := range first {
		if test == "polarity" {
			return working.Counted("n", n, at)
		}
		if slices.Contains(underPower, test) {
			n++
		}
	}
	return working.Unknown("n", "", at)
}

// failedOpen counts the tests that failed and were not done again with success,
// on the same part or on the whole installation.
func failedOpen(steps []schema.TestStep, at string) working.Number {
	open := make([]working.Flag, len(steps))
	for i, s := range steps {
		again := slices.ContainsFunc(steps[i+1:], func(later schema.TestStep) bool {
			samePart := !later.Part.Stated() || later.Part.Value == s.Part.Value
			return later.Test.Value == s.Test.Value && samePart && later.Passed.Yes()
		})
		open[i] = working.All(working.Not(working.StatedFlag(s.Passed)), working.KnownFlag(!again, at))
	}
	return working.Count("n", at, open...)
}

// inspection holds the points looked at against the table of points.
func (r *Record) inspection(d *deriver) {
	points, at := d.in.Commissioning.Inspections, d.at("inspections")
	table := d.book.Tables["inspection_points"]
	switch {
	case points == nil:
		r.noInspection(at)
	case table == nil:
		r.noInspection("the rule set has no table inspection_points")
	default:
		r.pointsLacking(points, at, table)
	}
	if points != nil {
		r.PointsFailed = pointsFailed(points, at)
	}
}

func (r *Record) noInspection(missing string) {
	r.PointsFailed = working.Unknown("n", "", missing)
	r.PointsLacking = working.Unknown("n", "", missing)
	r.PointsLackingNames = working.UnknownList(missing)
}

func (r *Record) pointsLacking(points []schema.InspectionPoint, at string, table *book.Table) {
	looked := map[string]bool{}
	for _, p := range points {
		if p.Result.Stated() && !p.Result.Is("not_inspected") {
			looked[p.Point.Value] = true
		}
	}
	var lacking []string
	for _, row := range table.Rows {
		if point, ok := row["point"].(string); ok && !looked[point] {
			lacking = append(lacking, point)
		}
	}
	r.PointsLackingNames = working.List(lacking...)
	r.PointsLacking = working.Counted("n", len(lacking), at)
}

func pointsFailed(points []schema.InspectionPoint, at string) working.Number {
	failed := make([]working.Flag, len(points))
	for i, p := range points {
		failed[i] = working.StatedText(p.Result).OneOf("unsatisfactory")
	}
	return working.Count("n", at, failed...)
}
