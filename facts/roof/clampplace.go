package roof

import (
	"slices"

	"sunclause/facts/working"
	"sunclause/schema"
)

// ClampPlace is how a clamp stands to its rail and to the modules that it grips.
type ClampPlace struct {
	OffRailMm    working.Number `json:"off_rail_mm" words:"distance from its stated place on the module to the rail"`
	BeyondHalfMm working.Number `json:"beyond_half_side_mm" words:"how far its distance from the nearest corner is beyond the middle of that side"`
	CornerOnSide working.Flag   `json:"corner_on_side" words:"whether the corner that it is measured from is one of that side"`
	OffItsRail   working.Number `json:"modules_off_its_rail" words:"modules it holds that do not lie on its rail"`
	SidesFace    working.Flag   `json:"sides_face" words:"whether the two sides that it grips face each other"`
	GripGapMm    working.Number `json:"grip_gap_mm" words:"gap between the two sides that it grips"`
	GapOffMm     working.Number `json:"gap_disagreement_mm" words:"difference between that gap and the gap that the clamp makes"`
	SheetKind    working.Text   `json:"sheet_kind" words:"what its datasheet is of"`
}

// Distances of a clamp from the middle line of its rail. A rail that crosses the side
// is met at a distance from one of the corners; one along the side lies below it.
var (
	fromNearCorner = working.NewFormula("d_rail", "mm", "|e_near + a − e_rail|", working.ByDefinition)
	fromFarCorner  = working.NewFormula("d_rail", "mm", "|e_far − a − e_rail|", working.ByDefinition)
	fromAnyCorner  = working.NewFormula("d_rail", "mm", "least of |e_near + a − e_rail|, |e_far − a − e_rail|", working.ByDefinition)
	beyondHalf     = working.NewFormula("d_half", "mm", "a − (e_far − e_near) / 2", working.ByDefinition)
	gapOff         = working.NewFormula("Δd", "mm", "|d − d_sheet|", working.ByDefinition)
)

// clampPlace holds what a clamp states of its place against its rail and the modules.
func (s *slope) clampPlace(doc *schema.Clamp, holds []clampHold) ClampPlace {
	var off, beyond []working.Number
	var corners []working.Flag
	r := s.railOf(doc.Rail.Text)
	for _, h := range holds {
		near, far := h.ends()
		beyond = append(beyond, beyondHalf.Of(working.Stated("a", "mm", h.doc.FromCornerMm), near.As("e_near"), far.As("e_far")))
		corners = append(corners, h.cornerOnSide())
		if r == nil {
			off = append(off, working.Unknown("d_rail", "mm", doc.Rail.At()))
		} else {
			off = append(off, h.offRail(r))
		}
	}
	p := ClampPlace{
		OffRailMm:    working.Greatest("d_rail", "mm", off...),
		BeyondHalfMm: working.Greatest("d_half", "mm", beyond...),
		CornerOnSide: working.All(corners...),
		OffItsRail:   s.offItsRail(doc, holds),
		SheetKind:    working.StatedText(doc.Datasheet.To().Kind),
	}
	p.SidesFace, p.GripGapMm = facing(doc, holds)
	p.GapOffMm = gapOff.Of(p.GripGapMm.As("d"), working.Stated("d_sheet", "mm", doc.Datasheet.To().Clamp.GapMm))
	return p
}

// upright reports whether the side gripped runs up the slope.
func (h *clampHold) upright() bool { return h.doc.Side.Is("left") || h.doc.Side.Is("right") }

// ends are the two ends of the side gripped, measured along it.
func (h *clampHold) ends() (near, far working.Number) {
	if b := &h.module.box; h.upright() {
		return b.bottom, b.top
	}
	return h.module.box.left, h.module.box.right
}

// edge is where the side gripped lies, square to it.
func (h *clampHold) edge() working.Number {
	b := &h.module.box
	return map[string]working.Number{"left": b.left, "right": b.right, "bottom": b.bottom, "top": b.top}[h.doc.Side.Value]
}

// offRail is how far a clamp, by its stated place on the module, is from the middle
// line of its rail. Where no corner is stated, it is the one to which it comes nearer.
func (h *clampHold) offRail(r *rail) working.Number {
	at := r.at.As("e_rail")
	if h.upright() != r.across {
		return offRailLine.Of(h.edge().As("y_f"), at.As("y_rail"))
	}
	near, far := h.ends()
	from := working.Stated("a", "mm", h.doc.FromCornerMm)
	switch h.doc.Corner.Value {
	case "lower", "left":
		return fromNearCorner.Of(near.As("e_near"), from, at)
	case "upper", "right":
		return fromFarCorner.Of(far.As("e_far"), from, at)
	}
	return fromAnyCorner.Of(near.As("e_near"), far.As("e_far"), from, at)
}

// cornerOnSide reports whether the corner stated is an end of the side. None has to
// be stated.
func (h *clampHold) cornerOnSide() working.Flag {
	corner := h.doc.Corner
	if !corner.Stated() {
		return working.KnownFlag(true, h.doc.Side.At())
	}
	return working.KnownFlag((corner.Is("lower") || corner.Is("upper")) == h.upright(), corner.At())
}

// offItsRail counts the modules of a clamp that do not lie on its rail.
func (s *slope) offItsRail(doc *schema.Clamp, holds []clampHold) working.Number {
	r := s.railOf(doc.Rail.Text)
	if r == nil {
		return working.Unknown("n", "", doc.Rail.At())
	}
	if len(r.unplaced) > 0 {
		return working.Unknown("n", "", r.unplaced...)
	}
	n := len(doc.Holds) - len(holds) // those of another plane
	for i := range holds {
		if !slices.ContainsFunc(r.modules, func(j int) bool { return s.layout[j].doc.ID.Value == holds[i].module.doc.ID.Value }) {
			n++
		}
	}
	return working.Counted("n", n, doc.Member("holds"))
}

// facing reports whether the two sides that a clamp grips face each other, and measures
// the gap between them. A clamp on one module has none.
func facing(doc *schema.Clamp, holds []clampHold) (faces working.Flag, between working.Number) {
	at := doc.Member("holds")
	between = working.Unknown("d", "mm", at)
	if len(holds) != 2 {
		return working.UnknownFlag(at), between
	}
	first, second := &holds[0], &holds[1]
	if first.doc.Side.Is("left") || first.doc.Side.Is("bottom") {
		first, second = second, first
	}
	opposite := map[string]string{"right": "left", "top": "bottom"}[first.doc.Side.Value]
	if first.module == second.module || !second.doc.Side.Is(opposite) {
		return working.KnownFlag(false, second.doc.Side.At()), between
	}
	return working.KnownFlag(true, second.doc.Side.At()), working.Difference("d", "mm", second.edge().As("e_2"), first.edge().As("e_1"))
}
