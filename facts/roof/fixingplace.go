package roof

import (
	"sunclause/facts/working"
	"sunclause/schema"
)

// FixingPlace is how a fixing stands to the plane and to what it is said to carry.
type FixingPlace struct {
	CarriesRail working.Flag   `json:"carries_rail" words:"whether it carries a rail; else it holds a module without one"`
	OffRailMm   working.Number `json:"off_rail_mm" words:"distance from the middle line of its rail"`
	OffModuleMm working.Number `json:"off_module_mm" words:"distance from the module that it holds without a rail; 0 below it"`
	InsideMm    working.Number `json:"inside_plane_mm" words:"least distance to the outline of the plane; below zero it stands beyond"`
}

var offRailLine = working.NewFormula("d_rail", "mm", "|y_f − y_rail|", working.ByDefinition)

// fixingPlace measures from a fixing to the rail or the module that it names. One that
// names neither carries nobody knows what.
func (s *slope) fixingPlace(doc *schema.Fixing) FixingPlace {
	here := point(doc.XMm, doc.YMm)
	p := FixingPlace{
		CarriesRail: working.UnknownFlag(doc.Rail.At()),
		OffRailMm:   working.Unknown("d_rail", "mm", doc.Rail.At()),
		OffModuleMm: working.Unknown("d_m", "mm", doc.Module.At()),
		InsideMm:    s.inside(&here),
	}
	if m, ok := s.moduleByID[doc.Module.Value]; ok && doc.Module.Stated() {
		p.CarriesRail = working.KnownFlag(false, doc.Module.At())
		p.OffModuleMm = distanceOf("d_m", &here, &m.box)
	}
	if r := s.railOf(doc.Rail.Text); r != nil {
		p.CarriesRail = working.KnownFlag(true, doc.Rail.At())
		_, _, square, _ := r.along(&here)
		p.OffRailMm = offRailLine.Of(square.As("y_f"), r.at.As("y_rail"))
	}
	return p
}
