package sheets

import (
	"cmp"
	"slices"

	"sunclause/engine/judge"
	"sunclause/facts/working"
	"sunclause/schema"
)

// fixingSheet lists what holds each rail to the roof and the modules to the
// rail, in the order in which a fitter meets them.
func fixingSheet(r *judge.Result) Sheet {
	s := Sheet{Name: "fixings", Title: "Fixings and clamps, rail by rail", Columns: []string{
		"plane", "rail", "what", "id", "kind", "along the eaves", "up the slope", "into", "holds", "done"}}
	for _, p := range r.Document.Installation.Roof.Planes {
		for _, rail := range p.Rails {
			s.Rows = append(s.Rows, fixingsOf(p, rail.ID.Value)...)
			s.Rows = append(s.Rows, clampsOf(p, rail.ID.Value)...)
		}
		s.Rows = append(s.Rows, fixingsOf(p, "")...)
	}
	return s
}

// fixingsOf are the fixings of one rail from left to right; those of no rail
// hold a module.
func fixingsOf(p schema.Plane, rail string) [][]string {
	var on []schema.Fixing
	for _, f := range p.Fixings {
		if f.Rail.Value == rail {
			on = append(on, f)
		}
	}
	slices.SortStableFunc(on, func(a, b schema.Fixing) int {
		return cmp.Or(cmp.Compare(a.XMm.Value, b.XMm.Value), cmp.Compare(a.YMm.Value, b.YMm.Value))
	})
	var rows [][]string
	for _, f := range on {
		rows = append(rows, []string{p.ID.Value, rail, "fixing", f.ID.Value, f.Datasheet.Value, millimetres(f.XMm), millimetres(f.YMm), f.Member.Value, f.Module.Value, Blank})
	}
	return rows
}

func clampsOf(p schema.Plane, rail string) [][]string {
	var rows [][]string
	for _, c := range p.Clamps {
		if c.Rail.Value != rail {
			continue
		}
		for _, h := range c.Holds {
			place := h.Side.Value + " side, " + millimetres(h.FromCornerMm) + " from the " + h.Corner.Value + " corner"
			rows = append(rows, []string{p.ID.Value, rail, "clamp", c.ID.Value, c.Kind.Value, "", "", place, h.Module.Value, Blank})
		}
	}
	return rows
}

func millimetres(n schema.Number) string { return number(working.Stated("", "mm", n)) }
