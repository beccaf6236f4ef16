package cable

import (
	"sunclause/facts/working"
	"sunclause/schema"
)

// Segment holds the facts of one stretch of a run: its id is the run's with its
// number, as R1.2.
type Segment struct {
	working.Subject

	Service        working.Text   `json:"service" words:"what its run carries: pv_string, pv_array, battery, ac, …"`
	LengthM        working.Number `json:"length_m" words:"length along the route"`
	Place          working.Text   `json:"place" words:"where it lies"`
	Outdoors       working.Flag   `json:"outdoors" words:"whether it lies in the open: behind modules, on a roof or on an outer wall"`
	Indoors        working.Flag   `json:"indoors" words:"whether it lies inside a building"`
	BehindModules  working.Flag   `json:"behind_modules" words:"whether it lies behind modules"`
	Concealed      working.Flag   `json:"concealed" words:"whether it is hidden in wall, floor or ceiling"`
	SiteTempMaxC   working.Number `json:"site_temp_max_c" words:"highest ambient temperature of the site"`
	CsaMm2         working.Number `json:"csa_mm2" words:"cross-section of each line or pole conductor"`
	DesignCurrentA working.Number `json:"design_current_a" words:"design current of its run"`
	Capacity
	Guard
	Laying
}

// Guard holds how a stretch is held and kept from harm.
type Guard struct {
	PolesApart          working.Flag   `json:"poles_in_separate_enclosures" words:"whether each pole lies in an enclosure of its own"`
	InDirectSun         working.Flag   `json:"in_direct_sun" words:"whether the sun shines on it"`
	CableUV             working.Flag   `json:"cable_uv_resistant" words:"whether its cable resists sunlight"`
	Enclosure           working.Text   `json:"enclosure" words:"what it is drawn into or laid on"`
	EnclosureUV         working.Flag   `json:"enclosure_uv_resistant" words:"whether its enclosure resists sunlight"`
	Drained             working.Flag   `json:"enclosure_drained" words:"whether water can leave its enclosure"`
	Support             working.Text   `json:"support" words:"what holds it up"`
	SupportMaterial     working.Text   `json:"support_material" words:"what its supports are made of"`
	SupportFire         working.Flag   `json:"support_fire_resistant" words:"whether its supports keep it up in a fire"`
	TouchesRoof         working.Flag   `json:"touches_roof_covering" words:"whether it can sag on or rub against the roof covering"`
	EdgesProtected      working.Flag   `json:"edges_protected" words:"whether it is kept from sharp edges, chafing and trapping"`
	DepthMm             working.Number `json:"concealed_depth_mm" words:"depth below the finished surface where it is concealed"`
	InSafeZone          working.Flag   `json:"in_safe_zone" words:"whether it keeps to the zones in which people expect a concealed cable"`
	Guarded             working.Flag   `json:"mechanically_protected" words:"whether it is guarded against nails, screws and blows"`
	InEscapeRoute       working.Flag   `json:"in_escape_route" words:"whether it passes through an escape route"`
	SharesWith          working.Text   `json:"shares_enclosure_with" words:"what else lies in the same enclosure"`
	Barrier             working.Flag   `json:"barrier" words:"whether a barrier keeps it apart from circuits of another kind"`
	DistanceAcMm        working.Number `json:"distance_to_ac_mm" words:"least distance from AC circuits"`
	DistanceServiceMm   working.Number `json:"distance_to_services_mm" words:"least distance from gas, water, data and other services"`
	Passage             working.Text   `json:"passage" words:"what it passes through where it ends; none, where it ends at no roof, wall, floor or ceiling"`
	PassageBy           working.Text   `json:"passage_by" words:"what carries it through"`
	PassageWeatherTight working.Flag   `json:"passage_weather_sealed" words:"whether the passage keeps the weather out"`
	PassageFireSealed   working.Flag   `json:"passage_fire_sealed" words:"whether the passage is sealed against fire"`
	PassageSleeved      working.Flag   `json:"passage_sleeved" words:"whether it is kept from the edges of the passage"`
	PassageOutward      working.Flag   `json:"passage_falls_outward" words:"whether the passage falls to the outside"`
}

var (
	indoorPlaces    = []string{"roof_space", "wall_cavity", "indoors_surface", "indoors_concealed", "floor_penetration", "switchgear"}
	concealedPlaces = []string{"wall_cavity", "indoors_concealed"}
)

// segments derives the facts of the stretches of a run.
func (p *plan) segments(f *Run, r *schema.Run) []Segment {
	if r.Segments == nil {
		return []Segment{unstatedSegments(f, r)}
	}
	var all []Segment
	for n := range r.Segments {
		all = append(all, p.segment(f, r, n))
	}
	return all
}

// segment derives the facts of one stretch.
func (p *plan) segment(f *Run, r *schema.Run, n int) Segment {
	s := &r.Segments[n]
	place := working.StatedText(s.Place)
	g := Segment{
		Subject:        working.Subject{ID: segmentID(f.ID, n), At: s.At(), Name: "segment " + segmentID(f.ID, n)},
		Service:        f.Service,
		LengthM:        working.Stated("l", "m", s.LengthM),
		Place:          place,
		Outdoors:       working.Outdoors(s.Place),
		Indoors:        place.OneOf(indoorPlaces...),
		BehindModules:  place.OneOf("behind_modules"),
		Concealed:      place.OneOf(concealedPlaces...),
		SiteTempMaxC:   working.Stated("T_max", "°C", p.in.Site.TempMaxC),
		CsaMm2:         f.CsaMm2,
		DesignCurrentA: f.DesignCurrentA,
		Guard:          guardOf(s),
		Laying:         layingOf(f, r, n),
	}
	g.CableUV = f.UVResistant
	g.Capacity = p.capacity(f, r, s)
	return g
}

func guardOf(s *schema.Segment) Guard {
	g := Guard{
		PolesApart:        working.StatedFlag(s.PolesInSeparateEnclosures),
		InDirectSun:       working.StatedFlag(s.InDirectSun),
		Enclosure:         working.StatedText(s.Enclosure),
		EnclosureUV:       working.StatedFlag(s.EnclosureUVResistant),
		Drained:           working.StatedFlag(s.EnclosureDrained),
		Support:           working.StatedText(s.Support),
		SupportMaterial:   working.StatedText(s.SupportMaterial),
		SupportFire:       working.StatedFlag(s.SupportFireResistant),
		TouchesRoof:       working.StatedFlag(s.TouchesRoofCovering),
		EdgesProtected:    working.StatedFlag(s.EdgesProtected),
		DepthMm:           working.Stated("d", "mm", s.ConcealedDepthMm),
		InSafeZone:        working.StatedFlag(s.InSafeZone),
		Guarded:           working.StatedFlag(s.MechanicallyProtected),
		InEscapeRoute:     working.StatedFlag(s.InEscapeRoute),
		SharesWith:        sharesWith(s),
		Barrier:           working.StatedFlag(s.Barrier),
		DistanceAcMm:      working.Stated("d_ac", "mm", s.DistanceToACMm),
		DistanceServiceMm: working.Stated("d_serv", "mm", s.DistanceToServicesMm),
	}
	g.passes(s)
	return g
}

// sharesWith tells what else lies in the enclosure; without one, nothing.
func sharesWith(s *schema.Segment) working.Text {
	if s.Enclosure.Is("none") && !s.SharesEnclosureWith.Stated() {
		return working.KnownText("nothing", s.Enclosure.At())
	}
	return working.StatedText(s.SharesEnclosureWith)
}

// passes takes the passage at the end of the stretch. Where it ends at a roof,
// wall, floor or ceiling and states no passage, that is unknown.
func (g *Guard) passes(s *schema.Segment) {
	x := s.Passage
	g.Passage = working.StatedText(x.Through)
	g.PassageBy = working.StatedText(x.By)
	g.PassageWeatherTight = working.StatedFlag(x.WeatherSealed)
	g.PassageFireSealed = working.StatedFlag(x.FireSealed)
	g.PassageSleeved = working.StatedFlag(x.Sleeved)
	g.PassageOutward = working.StatedFlag(x.FallsOutward)
	if x.Stated() {
		return
	}
	switch s.EndsAt.Value {
	case "roof", "wall", "floor", "ceiling":
		g.Passage = working.UnknownText(s.Member("passage"))
	case "":
		g.Passage = working.UnknownText(s.Member("passage"), s.EndsAt.At())
	default:
		g.Passage = working.KnownText("none", s.EndsAt.At())
	}
}

// unstatedSegments stands for the stretches of a run that states none: nothing is known
// of how it is laid, which is not the same as nothing to be said.
func unstatedSegments(f *Run, r *schema.Run) Segment {
	var g Segment
	working.Blank(&g, r.Member("segments"))
	g.Subject = working.Subject{ID: segmentID(f.ID, 0), At: r.At(), Name: "segments of " + f.Name}
	g.Service = f.Service
	return g
}
