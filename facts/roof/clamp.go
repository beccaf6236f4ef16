package roof

import (
	"math"

	"sunclause/facts/working"
	"sunclause/schema"
)

// Clamp holds the facts of one clamp.
type Clamp struct {
	working.Subject

	Kind          working.Text   `json:"kind" words:"end or mid"`
	Rail          working.Text   `json:"rail" words:"rail it is fixed to"`
	Holds         working.Number `json:"holds" words:"modules it holds"`
	Sides         working.Names  `json:"sides" words:"which sides of the modules it grips: long, short"`
	SideAllowed   working.Flag   `json:"side_allowed" words:"whether the module maker allows clamps on those sides"`
	OutsideMm     working.Number `json:"outside_zone_mm" words:"distance from the nearest zone in which the module maker allows it; 0 inside"`
	OffRailMm     working.Number `json:"off_rail_mm" words:"distance from its stated place on the module to the rail"`
	UpliftKn      working.Number `json:"uplift_kn" words:"design load away from the roof"`
	ResistanceKn  working.Number `json:"uplift_resistance_kn" words:"design resistance away from the roof"`
	FrameMinMm    working.Number `json:"frame_least_mm" words:"least frame height of the modules it holds"`
	FrameMaxMm    working.Number `json:"frame_greatest_mm" words:"greatest frame height of the modules it holds"`
	FitsFromMm    working.Number `json:"fits_frame_from_mm" words:"lowest frame it fits"`
	FitsToMm      working.Number `json:"fits_frame_to_mm" words:"highest frame it fits"`
	OverlapMm     working.Number `json:"overlap_mm" words:"how far it reaches over the frame"`
	FullyOnRail   working.Flag   `json:"fully_on_rail" words:"whether it sits on the rail with its whole length"`
	OnGlass       working.Flag   `json:"on_glass" words:"whether it touches the glass"`
	FrameDeformed working.Flag   `json:"frame_deformed" words:"whether it deforms the frame"`
	TorqueNM      working.Number `json:"torque_n_m" words:"torque read"`
	TorqueMinNM   working.Number `json:"torque_min_n_m" words:"lowest torque of the maker"`
	TorqueMaxNM   working.Number `json:"torque_max_n_m" words:"highest torque of the maker"`
}

// grip is one clamp on one module.
type grip struct {
	hold   *schema.ClampHold
	module *laid
	long   bool // on a long side
}

// grips are the clamps on each module, by its id.
func (s *slope) grips() map[string][]grip {
	all := map[string][]grip{}
	for i := range s.doc.Clamps {
		holds := s.doc.Clamps[i].Holds
		for j := range holds {
			if m := s.at[holds[j].Module.Value]; m != nil {
				sideways := holds[j].Side.Is("left") || holds[j].Side.Is("right")
				g := grip{hold: &holds[j], module: m, long: sideways == m.doc.Orientation.Is("portrait")}
				all[m.doc.ID.Value] = append(all[m.doc.ID.Value], g)
			}
		}
	}
	return all
}

// side is the kind of side that the clamp grips, in the words of a datasheet.
func (g grip) side() string {
	if g.long {
		return "long"
	}
	return "short"
}

// place works out how far the clamp is from the zones of its side, what load the
// zones that hold it are good for, and whether there are zones of that side.
func (g grip) place() (outside, push, pull working.Number, allowed bool, missing []string) {
	zones := g.module.sheet.ClampZones
	if zones == nil {
		return outside, push, pull, false, []string{g.module.sheet.Member("clamp_zones")}
	}
	at := working.Stated("a", "mm", g.hold.FromCornerMm)
	var away, pushes, pulls []working.Number
	for _, z := range zones {
		if !z.Side.Is(g.side()) {
			continue
		}
		out := working.Lookup{Symbol: "d_zone", Unit: "mm", Text: "greatest of 0, a_min − a, a − a_max", Source: makersZones}.Of(
			func(x ...float64) float64 { return max(0, x[1]-x[0], x[0]-x[2]) }, at, working.Stated("a_min", "mm", z.FromMm), working.Stated("a_max", "mm", z.ToMm))
		away = append(away, out)
		if out.Known() && out.Value() == 0 {
			pushes = append(pushes, working.Stated("p_zone", "Pa", z.LoadPushPa))
			pulls = append(pulls, working.Stated("w_zone", "Pa", z.LoadPullPa))
		}
	}
	outside = working.Least("d_out", "mm", away...)
	push, pull = working.Greatest("p_zone", "Pa", pushes...), working.Greatest("w_zone", "Pa", pulls...)
	none := []string{g.module.sheet.Member("clamp_zones")} // the maker states no zone for this place
	if !at.Known() {
		none = at.Missing()
	}
	if len(pushes) == 0 {
		push, pull = working.Unknown("p_zone", "Pa", none...), working.Unknown("w_zone", "Pa", none...)
	}
	if len(away) == 0 {
		outside = working.Unknown("d_out", "mm", none...)
	}
	return outside, push, pull, len(away) > 0, nil
}

var makersZones = working.Source{Document: "datasheet of the module", How: working.Read}

// hold works out how a module is held: how many clamps, and what load it is good
// for with the clamps where they are.
func (s *slope) hold(f *Module, m *laid, grips []grip) {
	f.PushSheetPa = working.Stated("p_sheet", "Pa", m.sheet.DesignLoadPushPa)
	pushes, pulls := []working.Number{f.PushSheetPa}, []working.Number{working.Stated("w_sheet", "Pa", m.sheet.DesignLoadPullPa)}
	at := s.doc.Member("clamps")
	if s.doc.Clamps == nil || len(grips) == 0 { // nothing holds it: no load is shown to be carried
		pushes = append(pushes, working.Unknown("p_zone", "Pa", at))
		pulls = append(pulls, working.Unknown("w_zone", "Pa", at))
	}
	sides := map[string]int{}
	for _, g := range grips {
		sides[g.hold.Side.Value]++
		_, push, pull, _, missing := g.place()
		if missing != nil {
			push, pull = working.Unknown("p_zone", "Pa", missing...), working.Unknown("w_zone", "Pa", missing...)
		}
		pushes, pulls = append(pushes, push), append(pulls, pull)
	}
	f.PushRatedPa, f.PullRatedPa = working.Least("p_Rd", "Pa", pushes...), working.Least("w_Rd", "Pa", pulls...)
	f.Clamps = working.Counted("n", len(grips), at)
	f.ClampsASide = working.Counted("n", max(min(sides["left"], sides["right"]), min(sides["top"], sides["bottom"])), at)
	f.Rails = working.Counted("n", len(s.lines(m)), s.doc.Member("rails"))
	if s.doc.Rails == nil {
		f.Rails = working.Unknown("n", "", s.doc.Member("rails"))
	}
	if s.doc.Clamps == nil {
		f.Clamps, f.ClampsASide = working.Unknown("n", "", at), working.Unknown("n", "", at)
	}
}

// offRail is how far a clamp, by its stated place on the module, is from the
// middle line of its rail: from whichever corner it comes nearer.
func (s *slope) offRail(g grip, r *bar) working.Number {
	lower, upper := g.module.box.bottom, g.module.box.top
	if !r.across {
		lower, upper = g.module.box.left, g.module.box.right
	}
	f := working.Lookup{Symbol: "d_rail", Unit: "mm", Text: "distance of the rail from a in from a corner", Source: working.ByDefinition}
	return f.Of(func(x ...float64) float64 {
		return min(math.Abs(x[0]+x[2]-x[3]), math.Abs(x[1]-x[2]-x[3]))
	}, lower, upper, working.Stated("a", "mm", g.hold.FromCornerMm), r.at)
}
