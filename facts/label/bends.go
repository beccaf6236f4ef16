package label

import (
	"math"
	"slices"

	"sunclause/facts/working"
)

// markPoint is a short length of route on which a warning is looked for: one side
// of a passage, or both sides of a bend.
type markPoint struct {
	at        float64 // the bend, or the face of the passage
	low, high float64 // how far the side reaches, to the next passage
	side      string  // from_side or to_side; "" for a bend
	edge      float64 // face that both sides of a thin passage share
	mustMark  working.Flag
}

// crossing is where the route passes through something.
type crossing struct {
	from, to      float64
	before, after working.Flag // whether the stretch must be marked on that side
}

// passageEnds are the ways in which a stretch ends at a passage.
var passageEnds = []string{"wall", "floor", "ceiling", "roof"}

// passages lists both sides of each passage, as far as the next one, and what
// is missing to know them all.
func (r *route) passages() (sides []markPoint, missing []working.Gap) {
	found, missing := r.crossings()
	for i, t := range found {
		low, high := math.Inf(-1), math.Inf(1)
		if i > 0 {
			low = found[i-1].to
		}
		if i+1 < len(found) {
			high = found[i+1].from
		}
		edge := math.NaN()
		if t.from == t.to {
			edge = t.from
		}
		sides = append(sides, markPoint{t.from, low, t.from, "from_side", edge, t.before}, markPoint{t.to, t.to, high, "to_side", edge, t.after})
	}
	return sides, missing
}

// crossings lists the passages; those that touch are one.
func (r *route) crossings() (found []crossing, missing []working.Gap) {
	add := func(from, to float64, before, after working.Flag) {
		if n := len(found); n > 0 && found[n-1].to == from {
			found[n-1].to, found[n-1].after = to, after
			return
		}
		found = append(found, crossing{from, to, before, after})
	}
	for i, s := range r.stretches {
		before, after := r.mustMarkBefore(i), r.mustMarkAfter(i)
		if s.through {
			add(s.from.Value(), s.to.Value(), before, after)
		}
		switch matters := working.MayHold(before, after); {
		case s.passage.Stated() || slices.Contains(passageEnds, s.ends.Value):
			add(s.to.Value(), s.to.Value(), before, after)
		case !s.ends.Stated() && matters:
			missing = append(missing, working.Unstated(s.ends.At()))
		case !s.place.Stated() && matters:
			missing = append(missing, working.Unstated(s.place.At()))
		}
	}
	return found, missing
}

// bends lists the changes of direction.
func (r *route) bends() (all []markPoint, missing []working.Gap) {
	for i, s := range r.stretches {
		before, after := r.mustMarkBefore(i), r.mustMarkAfter(i)
		switch {
		case s.ends.Is("bend"):
			all = append(all, markPoint{s.to.Value(), math.Inf(-1), math.Inf(1), "", math.NaN(), working.Any(before, after)})
		case !s.ends.Stated() && !s.passage.Stated() && working.MayHold(before, after):
			missing = append(missing, working.Unstated(s.ends.At()))
		}
	}
	return all, missing
}

// mustMarkBefore reports whether the route must be marked before the end of a
// stretch, and mustMarkAfter whether beyond it. Stretches that are a passage
// themselves are looked through.
func (r *route) mustMarkBefore(i int) working.Flag {
	for ; i >= 0; i-- {
		if !r.stretches[i].through {
			return r.stretches[i].mustMark
		}
	}
	return working.KnownFlag(false, r.at)
}

func (r *route) mustMarkAfter(i int) working.Flag {
	for i++; i < len(r.stretches); i++ {
		if !r.stretches[i].through {
			return r.stretches[i].mustMark
		}
	}
	return working.KnownFlag(false, r.at)
}

// countUnmarked counts the points to be marked that have no warning near.
func (r *route) countUnmarked(symbol string, near working.Number, points []markPoint, missing []working.Gap) working.Number {
	var unmarked []working.Flag
	for _, p := range points {
		covered := slices.ContainsFunc(r.labels, func(l point) bool { return p.coveredBy(l, near.Value()) })
		unmarked = append(unmarked, working.All(working.KnownFlag(!covered, r.at), p.mustMark))
	}
	if missing = append(missing, near.Missing()...); len(missing) > 0 {
		unmarked = append(unmarked, working.UnknownFlag(missing...))
	}
	return working.Count(symbol, r.at, unmarked...)
}

// coveredBy reports whether a warning stands on the point and not too far from
// the passage or bend. Right at a passage it must say on which side it is.
func (p *markPoint) coveredBy(l point, near float64) bool {
	x := l.at.Value()
	if x == p.edge {
		return l.side == p.side
	}
	return p.low <= x && x <= p.high && working.Round(math.Abs(x-p.at)) <= near
}
