package roof

import (
	"math"

	"sunclause/facts/book"
	"sunclause/facts/working"
)

// Strips are the widths of the zones of raised suction, in plan: e/10 along
// the eaves and below the ridge by the wind onto the eaves, e/10 along the gables
// by the wind onto a gable, e/4 for the corners.
type Strips struct {
	Eaves working.Number `json:"eaves_strip_m" words:"width in plan of the strips of raised suction along eaves and ridge"`
	Gable working.Number `json:"gable_strip_m" words:"width in plan of the strips of raised suction along the gables"`
}

var figure78 = en1991Wind("7.2.4 to 7.2.6, figures 7.7 to 7.9", working.Memory)

var (
	twiceHeight = working.NewFormula("h_2", "m", "2 · h", figure78)
	stripWidth  = working.NewFormula("e_10", "m", "e / 10", figure78)
)

func (s *slope) strips() Strips {
	twice := twiceHeight.Of(working.Stated("h", "m", s.doc.RidgeHeightM))
	return Strips{
		Eaves: stripWidth.Of(working.Least("e", "m", working.Stated("b", "m", s.doc.BuildingLengthM), twice)),
		Gable: stripWidth.Of(working.Least("e", "m", working.Stated("b", "m", s.doc.BuildingWidthM), twice)),
	}
}

// zones are the columns of the table of pressure coefficients that hold for a
// module, by where it lies. The wind may come onto any side, so each module has a
// zone for each; the corners lie inside the strips. A party wall, or whatever else
// bounds the plane at its sides, is taken for a gable: the roof beyond it may be
// lower. Where the zones are not known, what is missing is named.
func (s *slope) zones(m *placedModule) (columns []string, missing []working.Gap) {
	st, b := s.strips(), &m.edges
	hip := s.toHip(m)
	for _, n := range []working.Number{st.Eaves, st.Gable, b.eaves, b.ridge, b.side, s.pitch, hip} {
		missing = append(missing, n.Missing()...)
	}
	if missing = append(missing, s.noSuctionTable()...); len(missing) > 0 {
		return nil, missing
	}
	plan := math.Cos(s.pitch.Value()*math.Pi/180) / 1000 // of a mm on the slope, in m
	at := planPosition{eaves: b.eaves.Value() * plan, top: b.ridge.Value() * plan, side: b.side.Value() / 1000, hip: hip.Value() * plan}
	return shapes[s.in.Roof.Shape.Value].zones(at, st.Eaves.Value(), st.Gable.Value()), nil
}

// suction is the greatest suction coefficient, as a positive number, of some
// zones of the plane: c_pe,1 of the table, since a clamp or hook has a small
// loaded area. Between two pitches of the table EN 1991-1-4 has it interpolated;
// beyond them the table has no answer.
func (s *slope) suction(columns []string) working.Number {
	if other := s.noSuctionTable(); other != nil { // no table holds for it
		return working.Unknown("c_pe", "", other...)
	}
	name := shapes[s.in.Roof.Shape.Value].table
	t, ok := s.book.Tables[name]
	if !ok {
		return working.Unknown("c_pe", "", "the rule set has no table "+name)
	}
	f := working.Lookup{Symbol: "c_pe", Text: "suction by “" + t.Title + "”, between its pitches", Source: t.Source}
	c := f.Of(func(x ...float64) float64 {
		worst := math.Inf(-1)
		for _, column := range columns {
			worst = max(worst, between(t, x[0], column))
		}
		return worst
	}, s.pitch)
	if !c.Known() && s.pitch.Known() {
		return working.Unknown("c_pe", "", s.pitch.Doubted(working.OffTable, t.Title, "")...)
	}
	return c
}

// between interpolates a column of the table over the pitch, and gives the
// suction as a positive number; not a number where the table has no answer.
func between(t *book.Table, pitch float64, column string) float64 {
	below, above := math.Inf(-1), math.Inf(1)
	var low, high float64
	for _, row := range t.Rows {
		at, ok := row["pitch_deg"].(float64)
		v, filled := row[column].(float64)
		if !ok || !filled {
			return math.NaN()
		}
		if at <= pitch && at > below {
			below, low = at, v
		}
		if at >= pitch && at < above {
			above, high = at, v
		}
	}
	switch {
	case math.IsInf(below, 0) || math.IsInf(above, 0):
		return math.NaN()
	case above == below:
		return -low
	}
	return -(low + (high-low)*(pitch-below)/(above-below))
}
