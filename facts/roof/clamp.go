package roof

import (
	"sunclause/facts/working"
	"sunclause/schema"
)

// Clamp holds the facts of one clamp.
type Clamp struct {
	working.Subject

	Kind        working.Text   `json:"kind" words:"end or mid"`
	Rail        working.Text   `json:"rail" words:"rail it is fixed to"`
	Holds       working.Number `json:"holds" words:"modules it holds"`
	Sides       working.Names  `json:"sides" words:"which sides of the modules it holds: long, short"`
	SideAllowed working.Flag   `json:"side_allowed" words:"whether the module maker allows clamps on those sides"`
	OutsideMm   working.Number `json:"outside_zone_mm" words:"distance from the nearest zone in which the module maker allows it; 0 inside"`
	ClampPlace
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

// clampHold is one clamp on one module.
type clampHold struct {
	doc    *schema.ClampHold
	module *placedModule
	side   string // long or short, as the datasheet of the module has it
}

// clampsOnModules are the clamps on each module, by its id.
func (s *slope) clampsOnModules() map[string][]clampHold {
	all := map[string][]clampHold{}
	for i := range s.doc.Clamps {
		for _, h := range s.holdsOf(&s.doc.Clamps[i]) {
			id := h.module.doc.ID.Value
			all[id] = append(all[id], h)
		}
	}
	return all
}

// holdsOf are the modules of this plane that a clamp holds.
func (s *slope) holdsOf(clamp *schema.Clamp) []clampHold {
	var all []clampHold
	for i := range clamp.Holds {
		doc := &clamp.Holds[i]
		m := s.moduleByID[doc.Module.Value]
		if m == nil {
			continue
		}
		h := clampHold{doc, m, "short"}
		if sideways := doc.Side.Is("left") || doc.Side.Is("right"); sideways == m.doc.Orientation.Is("portrait") {
			h.side = "long"
		}
		all = append(all, h)
	}
	return all
}

var (
	makersZones = working.Source{Document: "datasheet of the module", How: working.Read}
	outsideZone = working.NewFormula("d_zone", "mm", "greatest of 0, a_min − a, a − a_max", makersZones)
	clampUplift = working.NewFormula("F_m", "kN", "γ_Q · w_pull / 1000 · A / n_c", combination)
)

// zoneFit is how a clamp stands to the zones in which the maker of the module
// allows it: how far it is outside, and what loads the zones that hold it are good
// for.
type zoneFit struct {
	outside, push, pull working.Number
	allowed             working.Flag // there are zones of that side
}

func (h clampHold) zoneFit() zoneFit {
	list := h.module.sheet.Member("clamp_zones")
	zones := h.module.sheet.ClampZones
	if zones == nil {
		return zoneFit{working.Unknown("d_out", "mm", list), working.Unknown("p_zone", "Pa", list), working.Unknown("w_zone", "Pa", list), working.UnknownFlag(list)}
	}
	at := working.Stated("a", "mm", h.doc.FromCornerMm)
	var outside, pushes, pulls []working.Number
	for _, z := range zones {
		if !z.Side.Is(h.side) {
			continue
		}
		out := outsideZone.Of(at, working.Stated("a_min", "mm", z.FromMm), working.Stated("a_max", "mm", z.ToMm))
		outside = append(outside, out)
		if out.Known() && out.Value() == 0 {
			pushes = append(pushes, working.Stated("p_zone", "Pa", z.LoadPushPa))
			pulls = append(pulls, working.Stated("w_zone", "Pa", z.LoadPullPa))
		}
	}
	fit := zoneFit{
		outside: working.Least("d_out", "mm", outside...),
		push:    working.Greatest("p_zone", "Pa", pushes...),
		pull:    working.Greatest("w_zone", "Pa", pulls...),
		allowed: working.KnownFlag(len(outside) > 0, h.doc.Side.At()),
	}
	none := []working.Gap{working.OffList(list, "zone of the "+h.side+" side for a clamp at this place")}
	if !at.Known() {
		none = at.Missing()
	}
	if len(pushes) == 0 {
		fit.push, fit.pull = working.Unknown("p_zone", "Pa", none...), working.Unknown("w_zone", "Pa", none...)
	}
	if len(outside) == 0 {
		fit.outside = working.Unknown("d_out", "mm", none...)
	}
	return fit
}

// clampsASide counts the clamps on the less held of two sides that face each other.
// Two at one place of a side hold like one.
func clampsASide(holds []clampHold) int {
	type place struct {
		side, corner string
		from         float64
	}
	places := map[place]bool{}
	sides := map[string]int{}
	for _, h := range holds {
		p := place{h.doc.Side.Value, h.doc.Corner.Value, h.doc.FromCornerMm.Value}
		if places[p] && h.doc.Corner.Stated() && h.doc.FromCornerMm.Stated() {
			continue
		}
		places[p] = true
		sides[p.side]++
	}
	return max(min(sides["left"], sides["right"]), min(sides["top"], sides["bottom"]))
}

// clampedLoads works out how a module is held: how many clamps, and what load it is
// good for with the clamps where they are.
func (s *slope) clampedLoads(f *Module, m *placedModule, holds []clampHold) {
	pushes := []working.Number{working.Stated("p_sheet", "Pa", m.sheet.DesignLoadPushPa)}
	pulls := []working.Number{working.Stated("w_sheet", "Pa", m.sheet.DesignLoadPullPa)}
	at := s.doc.Member("clamps")
	if s.doc.Clamps == nil || len(holds) == 0 { // nothing holds it: no load is shown to be carried
		pushes = append(pushes, working.Unknown("p_zone", "Pa", at))
		pulls = append(pulls, working.Unknown("w_zone", "Pa", at))
	}
	for _, h := range holds {
		fit := h.zoneFit()
		pushes, pulls = append(pushes, fit.push), append(pulls, fit.pull)
	}
	f.PushRatedPa, f.PullRatedPa = working.Least("p_Rd", "Pa", pushes...), working.Least("w_Rd", "Pa", pulls...)
	f.Clamps = working.Counted("n", len(holds), at)
	f.ClampsASide = working.Counted("n", clampsASide(holds), at)
	f.Rails = working.Counted("n", len(s.railLines(m)), s.doc.Member("rails"))
	if s.doc.Rails == nil {
		f.Rails = working.Unknown("n", "", s.doc.Member("rails"))
	}
	if s.doc.Clamps == nil {
		f.Clamps, f.ClampsASide = working.Unknown("n", "", at), working.Unknown("n", "", at)
	}
}
