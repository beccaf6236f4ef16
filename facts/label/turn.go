package label

import (
	"math"
	"slices"

	"sunclause/facts/working"
)

// spot is a short length of route on which a warning is looked for: one side of
// a passage, or both sides of a bend.
type spot struct {
	at        float64 // the bend, or the face of the passage
	low, high float64 // how far the side reaches, to the next passage
	side      string  // from_side or to_side; "" for a bend
	edge      float64 // face that both sides of a thin passage share
	need      working.Flag
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
func (w *way) passages() (sides []spot, missing []string) {
	found, missing := w.crossings()
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
		sides = append(sides, spot{t.from, low, t.from, "from_side", edge, t.before}, spot{t.to, t.to, high, "to_side", edge, t.after})
	}
	return sides, missing
}

// crossings lists the passages; those that touch are one.
func (w *way) crossings() (found []crossing, missing []string) {
	add := func(from, to float64, before, after working.Flag) {
		if n := len(found); n > 0 && found[n-1].to == from {
			found[n-1].to, found[n-1].after = to, after
			return
		}
		found = append(found, crossing{from, to, before, after})
	}
	for i, s := range w.stretches {
		before, after := w.needBefore(i), w.needAfter(i)
		if s.through {
			add(s.from.Value(), s.to.Value(), before, after)
		}
		switch matters := either(before, after); {
		case s.passage.Stated() || slices.Contains(passageEnds, s.ends.Value):
			add(s.to.Value(), s.to.Value(), before, after)
		case !s.ends.Stated() && matters:
			missing = append(missing, s.ends.At())
		case !s.place.Stated() && matters:
			missing = append(missing, s.place.At())
		}
	}
	return found, missing
}

// bends lists the changes of direction.
func (w *way) bends() (all []spot, missing []string) {
	for i, s := range w.stretches {
		before, after := w.needBefore(i), w.needAfter(i)
		switch {
		case s.ends.Is("bend"):
			need := before
			if either(after) {
				need = after
			}
			all = append(all, spot{s.to.Value(), math.Inf(-1), math.Inf(1), "", math.NaN(), need})
		case !s.ends.Stated() && !s.passage.Stated() && either(before, after):
			missing = append(missing, s.ends.At())
		}
	}
	return all, missing
}

// either reports whether one of the flags is, or may be, yes.
func either(flags ...working.Flag) bool {
	return slices.ContainsFunc(flags, func(f working.Flag) bool { return !f.Known() || f.Value() })
}

// needBefore reports whether the route must be marked before the end of a
// stretch, and needAfter whether beyond it. Stretches that are a passage
// themselves are looked through.
func (w *way) needBefore(i int) working.Flag {
	for ; i >= 0; i-- {
		if !w.stretches[i].through {
			return w.stretches[i].need
		}
	}
	return working.KnownFlag(false, w.at)
}

func (w *way) needAfter(i int) working.Flag {
	for i++; i < len(w.stretches); i++ {
		if !w.stretches[i].through {
			return w.stretches[i].need
		}
	}
	return working.KnownFlag(false, w.at)
}

// turns counts the spots to be marked that have no warning near.
func (w *way) turns(symbol string, near working.Number, spots []spot, missing []string) working.Number {
	missing = append(missing, near.Missing()...)
	bare := 0
	for _, s := range spots {
		switch {
		case slices.ContainsFunc(w.labels, func(l point) bool { return s.has(l, near.Value()) }):
		case !s.need.Known():
			missing = append(missing, s.need.Missing()...)
		case s.need.Value():
			bare++
		}
	}
	if len(missing) > 0 {
		return working.Unknown(symbol, "", missing...)
	}
	return working.Counted(symbol, bare, w.at)
}

// has reports whether a warning stands on the spot and not too far from the
// passage or bend. Right at a passage it must say on which side it is.
func (s *spot) has(l point, near float64) bool {
	x := l.at.Value()
	if x == s.edge {
		return l.side == s.side
	}
	return s.low <= x && x <= s.high && working.Round(math.Abs(x-s.at)) <= near
}
