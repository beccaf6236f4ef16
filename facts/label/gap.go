package label

import (
	"sunclause/facts/book"
	"sunclause/facts/working"
)

// gap is a length of route from one warning to the next, or to the end of what
// must be marked.
type gap struct {
	from, to working.Number
	span     *span
}

func (g gap) length() working.Number { return between("g", g.from, g.to) }

// on reports whether some of the gap lies on a stretch.
func (g gap) on(s stretch) bool {
	return max(g.from.Value(), s.from.Value()) < min(g.to.Value(), s.to.Value())
}

// span is a length of route that must be marked from end to end.
type span struct {
	from, to  working.Number
	stretches []stretch
	labels    int
}

// spans puts together the stretches that must be marked and follow each other.
func (r *route) spans() []*span {
	var all []*span
	open := false
	for _, s := range r.stretches {
		if !s.mustMark.Value() {
			open = false
			continue
		}
		if !open {
			all = append(all, &span{from: s.from})
			open = true
		}
		last := all[len(all)-1]
		last.to, last.stretches = s.to, append(last.stretches, s)
	}
	return all
}

// gaps cuts each span at its warnings.
func (r *route) gaps() []gap {
	var all []gap
	for _, s := range r.spans() {
		from := s.from
		for _, l := range r.labels {
			if l.at.Value() < s.from.Value() || l.at.Value() > s.to.Value() {
				continue
			}
			all = append(all, gap{from, l.at, s})
			from = l.at
			s.labels++
		}
		all = append(all, gap{from, s.to, s})
	}
	return all
}

// mustMarkMissing names what to state to know which stretches must be marked.
func (r *route) mustMarkMissing() []working.Gap {
	var missing []working.Gap
	for _, s := range r.stretches {
		missing = append(missing, s.mustMark.Missing()...)
	}
	return missing
}

// gaps finds the greatest gap of all, and the greatest that touch a stretch of
// either kind. Of a kind that the route has not got it is nothing.
func (m *Marking) gaps(r *route) {
	var all, straight, other []working.Number
	missing := r.mustMarkMissing()
	unsorted := missing
	for _, g := range r.gaps() {
		all = append(all, g.length())
		onStraight, onOther := false, false
		for _, s := range g.span.stretches {
			if !g.on(s) {
				continue
			}
			unsorted = append(unsorted, s.straight.Missing()...)
			onStraight = onStraight || s.straight.Value()
			onOther = onOther || !s.straight.Value()
		}
		if onStraight {
			straight = append(straight, g.length())
		}
		if onOther {
			other = append(other, g.length())
		}
	}
	m.GapM = greatest("g_max", all, missing)
	m.GapStraightM = greatest("g_str", straight, unsorted)
	m.GapOtherM = greatest("g_oth", other, unsorted)
}

func greatest(symbol string, gaps []working.Number, missing []working.Gap) working.Number {
	switch {
	case len(missing) > 0:
		return working.Unknown(symbol, "m", missing...)
	case len(gaps) == 0:
		return working.Sum(symbol, "m")
	}
	return working.Greatest(symbol, "m", gaps...)
}

var coveredShare = working.NewFormula("c", "%", "100 · l_cov / l_mark", working.ByDefinition)

// coverage is the share of what must be marked that lies within gaps that are
// short enough there. A span without any warning has none.
func (r *route) coverage(b book.Book) working.Number {
	var covered, total []working.Number
	missing := r.mustMarkMissing()
	for _, g := range r.gaps() {
		for _, s := range g.span.stretches {
			if !g.on(s) {
				continue
			}
			part := between("l", later(g.from, s.from), earlier(g.to, s.to))
			total = append(total, part)
			limit := s.spacing(b)
			missing = append(missing, limit.Missing()...)
			if g.span.labels > 0 && g.length().Value() <= limit.Value() {
				covered = append(covered, part)
			}
		}
	}
	if len(missing) > 0 {
		return working.Unknown("c", "%", missing...)
	}
	if len(total) == 0 {
		return working.NoNumber("c", "%")
	}
	return coveredShare.Of(working.Sum("l_cov", "m", covered...), working.Sum("l_mark", "m", total...))
}

func later(a, b working.Number) working.Number {
	if a.Value() < b.Value() {
		return b
	}
	return a
}

func earlier(a, b working.Number) working.Number {
	if a.Value() < b.Value() {
		return a
	}
	return b
}

// spansWithout counts the spans that carry no warning.
func (r *route) spansWithout() working.Number {
	if missing := r.mustMarkMissing(); len(missing) > 0 {
		return working.Unknown("n_bare", "", missing...)
	}
	bare, seen := 0, map[*span]bool{}
	for _, g := range r.gaps() {
		if !seen[g.span] && g.span.labels == 0 {
			bare++
		}
		seen[g.span] = true
	}
	return working.Counted("n_bare", bare, r.at)
}
