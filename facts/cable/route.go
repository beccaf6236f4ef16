package cable

import (
	"sunclause/facts/working"
	"sunclause/schema"
)

// Route holds what is true of a run all the way.
type Route struct {
	PolesTogether    working.Flag   `json:"poles_laid_together" words:"whether positive and negative, or line and neutral, run side by side without an open loop"`
	DoubleInsulated  working.Flag   `json:"double_insulated" words:"whether double or reinforced insulation is kept all the way"`
	EachAlone        working.Flag   `json:"poles_separate_or_double" words:"whether its cable is double insulated or each pole lies in an enclosure of its own all the way"`
	Outdoors         working.Flag   `json:"outdoors" words:"whether some of it lies in the open"`
	BehindModules    working.Flag   `json:"behind_modules" words:"whether some of it lies behind modules"`
	SurroundingsMaxC working.Number `json:"surroundings_max_c" words:"highest temperature around it, with roof and sun"`
	SiteTempMinC     working.Number `json:"site_temp_min_c" words:"lowest ambient temperature of the site"`
	BendMm           working.Number `json:"bend_mm" words:"tightest bend"`
	BendOverDiameter working.Number `json:"bend_over_diameter" words:"tightest bend over the diameter of its cable"`
	Jointed          working.Flag   `json:"jointed" words:"whether it has joints under way other than the connectors listed"`
}

func (p *plan) routeOf(f *Run, r *schema.Run, segments []Segment) Route {
	w := Route{
		PolesTogether:   working.StatedFlag(r.PolesLaidTogether),
		DoubleInsulated: working.StatedFlag(r.DoubleInsulated),
		SiteTempMinC:    working.Stated("T_min", "°C", p.in.Site.TempMinC),
		BendMm:          working.Stated("r", "mm", r.BendRadiusMinMm),
		Jointed:         working.StatedFlag(r.Jointed),
	}
	w.BendOverDiameter = working.Ratio("r/D", w.BendMm, f.OutsideDiameter)
	var outdoors, behind, alone []working.Flag
	var around []working.Number
	for i := range segments {
		s := &segments[i]
		outdoors, behind, alone = append(outdoors, s.Outdoors), append(behind, s.BehindModules), append(alone, s.PolesApart)
		around = append(around, s.SurroundingsC)
	}
	w.Outdoors, w.BehindModules = working.Any(outdoors...), working.Any(behind...)
	w.EachAlone = working.Any(f.CableDouble, working.All(alone...))
	w.SurroundingsMaxC = working.Greatest("T_s,max", "°C", around...)
	return w
}
