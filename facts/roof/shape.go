package roof

import (
	"slices"

	"sunclause/facts/working"
)

// planPosition is where a module lies: its distances in plan, in m, to the lower and the
// upper side of the plane, to the nearer of left and right, and to the nearest hip.
type planPosition struct{ eaves, top, side, hip float64 }

// shape is a shape of roof for which EN 1991-1-4 has a table of coefficients: the
// table, and its columns for a position between strips e/10 wide, those of the wind
// square to the eaves (e0) and along them (e90).
type shape struct {
	table string
	tops  []string // what the upper side of the plane may be
	zones func(at planPosition, e0, e90 float64) []string
}

var shapes = map[string]shape{
	"duopitch":  {"duopitch_suction", []string{"ridge", "abutment", "point"}, duopitch},
	"monopitch": {"monopitch_suction", []string{"mono_ridge"}, monopitch},
	"hipped":    {"hipped_suction", []string{"ridge", "point"}, hipped},
}

// noSuctionTable names what keeps the tables from holding for the plane: another
// shape of roof, or an upper side that such a roof does not have.
func (s *slope) noSuctionTable() []working.Gap {
	is, top := s.in.Roof.Shape, s.doc.TopEdge
	switch kind, ok := shapes[is.Value]; {
	case !is.Stated():
		return []working.Gap{working.Unstated(is.At())}
	case !top.Stated():
		return []working.Gap{working.Unstated(top.At())}
	case !ok || !slices.Contains(kind.tops, top.Value):
		return []working.Gap{working.Unstated("the wind on a roof of this shape")}
	}
	return nil
}

// columnList are the columns of a table whose condition holds.
type columnList []string

func (c *columnList) when(in bool, column string) {
	if in {
		*c = append(*c, column)
	}
}

// duopitch are the zones of figure 7.8.
func duopitch(at planPosition, e0, e90 float64) []string {
	c := columnList{"windward", "leeward"}
	c.when(at.eaves < e0, "eaves")
	c.when(at.eaves < e0 && at.side < 2.5*e0, "eaves_corner")
	c.when(at.top < e0, "ridge")
	c.when(at.side < e90, "gable")
	c.when(at.side < e90 && at.eaves < 2.5*e90, "gable_corner")
	c.when(at.side < 5*e90, "gable_next")
	c.when(at.side >= 5*e90, "gable_rest")
	return c
}

// monopitch are the zones of figure 7.7: the wind may come onto the low eaves, the
// high one, or a gable, whose corners differ.
func monopitch(at planPosition, e0, e90 float64) []string {
	c := columnList{"windward", "from_high"}
	c.when(at.eaves < e0, "eaves")
	c.when(at.eaves < e0 && at.side < 2.5*e0, "eaves_corner")
	c.when(at.top < e0, "high")
	c.when(at.top < e0 && at.side < 2.5*e0, "high_corner")
	c.when(at.side < e90, "gable")
	c.when(at.side < e90 && at.eaves < 2.5*e90, "gable_corner_low")
	c.when(at.side < e90 && at.top < 2.5*e90, "gable_corner_high")
	c.when(at.side < 5*e90, "gable_next")
	c.when(at.side >= 5*e90, "gable_rest")
	return c
}

// hipped are the zones of figure 7.9. Each plane may lie to windward, to leeward or
// beside the wind. The strips along a hip are taken as wide as the wider of the two
// winds has them, and beside the wind the zone nearer to it everywhere.
func hipped(at planPosition, e0, e90 float64) []string {
	c := columnList{"windward", "leeward", "beside"}
	c.when(at.eaves < e0, "eaves")
	c.when(at.eaves < e0 && at.side < 2.5*e0, "eaves_corner")
	c.when(at.top < e0, "ridge")
	c.when(at.hip < max(e0, e90), "hip_leeward")
	c.when(at.hip < max(e0, e90), "hip_beside")
	return c
}

// toHip is the distance from a module to the nearest hip, on the slope. A hipped
// roof has one in every plane: where none is drawn, the drawing is what is missing.
func (s *slope) toHip(m *placedModule) working.Number {
	if !s.in.Roof.Shape.Is("hipped") {
		return working.Figure("d_hip", "mm", 0, "no hipped roof", working.ByDefinition)
	}
	var all []working.Number
	for _, e := range s.doc.Edges {
		if e.Kind.Is("hip") {
			all = append(all, toLine(&m.box, e))
		}
	}
	if all == nil {
		return working.Unknown("d_hip", "mm", s.doc.Member("edges"))
	}
	return working.Least("d_hip", "mm", all...)
}
