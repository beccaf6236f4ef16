package roof

import "sunclause/facts/working"

// Module holds the facts of one module where it lies.
type Module struct {
	working.Subject

	Plane        working.Text   `json:"plane" words:"plane it lies on"`
	Orientation  working.Text   `json:"orientation" words:"portrait or landscape"`
	MassKg       working.Number `json:"mass_kg" words:"mass"`
	EavesMm      working.Number `json:"eaves_distance_mm" words:"distance to the lower side of the plane"`
	TopMm        working.Number `json:"top_distance_mm" words:"distance to the upper side of the plane"`
	LeftMm       working.Number `json:"left_distance_mm" words:"distance to the left side of the plane"`
	RightMm      working.Number `json:"right_distance_mm" words:"distance to the right side of the plane"`
	InsideMm     working.Number `json:"inside_plane_mm" words:"least distance to the outline of the plane; below zero it reaches beyond"`
	EdgeMm       working.Number `json:"edge_distance_mm" words:"least distance to an edge of the roof: ridge, eaves, verge, hip, valley or parapet"`
	PartyWalls   working.Flag   `json:"beside_party_wall" words:"whether the plane has a party or compartment wall"`
	PartyWallMm  working.Number `json:"party_wall_distance_mm" words:"least distance to a party or compartment wall"`
	Neighbours   working.Number `json:"neighbours" words:"other modules on the plane"`
	GapMm        working.Number `json:"gap_mm" words:"gap to the nearest module; below zero they overlap"`
	Openings     working.Number `json:"openings" words:"openings in the plane"`
	OpeningMm    working.Number `json:"opening_distance_mm" words:"distance to the nearest opening; 0 where it covers one"`
	WindZones    working.Names  `json:"wind_zones" words:"zones of the roof that it touches, for the wind from each side"`
	NetUplift    working.Number `json:"net_uplift_coefficient" words:"net coefficient of uplift"`
	PullPa       working.Number `json:"pull_pa" words:"characteristic pressure on its rear by the wind"`
	PullRatedPa  working.Number `json:"pull_rated_pa" words:"design load on its rear that it carries as clamped"`
	PushPa       working.Number `json:"push_pa" words:"characteristic load on its front by dead load, snow and wind"`
	PushRatedPa  working.Number `json:"push_rated_pa" words:"design load on its front that it carries as clamped"`
	UpliftKnM2   working.Number `json:"uplift_kn_per_m2" words:"design load away from the roof"`
	Rails        working.Number `json:"rails" words:"rails below it, those in one line once"`
	Direct       working.Number `json:"direct_fixings" words:"fixings that hold it without a rail"`
	Clamps       working.Number `json:"clamps" words:"clamps that hold it"`
	ClampsASide  working.Number `json:"clamps_a_side" words:"clamps on the less held of two sides that face each other"`
	Drilled      working.Flag   `json:"frame_drilled" words:"whether holes were drilled in its frame"`
	DrainageFree working.Flag   `json:"drain_holes_free" words:"whether the drain holes of its frame are free"`
}

var pushOnFront = working.NewFormula("p_push", "Pa", "1000 · p_k", combination)

func (s *slope) moduleFacts() []Module {
	all := make([]Module, len(s.layout))
	for i := range s.layout {
		m := &s.layout[i]
		f := Module{
			Subject:      working.Subject{ID: m.doc.ID.Value, At: m.doc.At(), Name: "module " + m.doc.ID.Value},
			Plane:        working.StatedText(s.doc.ID),
			Orientation:  working.StatedText(m.doc.Orientation),
			MassKg:       m.mass,
			Drilled:      working.StatedFlag(m.doc.FrameDrilled),
			DrainageFree: working.StatedFlag(m.doc.DrainHolesFree),
		}
		s.measureModule(&f, i)
		f.WindZones, f.NetUplift, f.PullPa, f.UpliftKnM2 = m.zones, m.net, m.pull, m.uplift
		f.PushPa = pushOnFront.Of(s.areal.Service)
		f.Direct = working.Length("n", s.doc.Fixings, s.doc.Member("fixings"))
		if f.Direct.Known() {
			f.Direct = working.Counted("n", s.directFixings[m.doc.ID.Value], s.doc.Member("fixings"))
		}
		s.clampedLoads(&f, m, s.clamps[m.doc.ID.Value])
		all[i] = f
	}
	return all
}

// measureModule measures where the module lies.
func (s *slope) measureModule(f *Module, i int) {
	m := &s.layout[i]
	b := &m.edges
	f.EavesMm, f.TopMm, f.LeftMm, f.RightMm = b.eaves, b.ridge, b.left, b.right
	f.InsideMm = s.inside(&m.box)
	f.EdgeMm = s.nearest("d_edge", m, roofEdges)
	f.PartyWalls = s.fireWall
	f.PartyWallMm = s.nearest("d_wall", m, fireWalls)
	f.Neighbours = working.Counted("n", len(s.layout)-1, s.doc.Member("modules"))
	f.GapMm = s.gapOf(i)
	f.Openings, f.OpeningMm = s.toOpenings(&m.box)
}

// gapOf is the gap to the nearest other module.
func (s *slope) gapOf(i int) working.Number {
	if s.unplacedReasons != nil {
		return working.Unknown("d", "mm", s.unplacedReasons...)
	}
	best := -1
	for j := range s.bounds {
		if j != i && (best < 0 || s.bounds[i].gap(&s.bounds[j]) < s.bounds[i].gap(&s.bounds[best])) {
			best = j
		}
	}
	if best < 0 {
		return working.Unknown("d", "mm", s.doc.Member("modules"))
	}
	return gap(&s.layout[i].box, &s.layout[best].box)
}

// toOpenings counts the openings of the plane and measures to the nearest.
func (s *slope) toOpenings(b *box) (count, distance working.Number) {
	at := s.doc.Member("openings")
	if s.doc.Openings == nil {
		return working.Unknown("n", "", at), working.Unknown("d_open", "mm", at)
	}
	var nearest box
	for i := range s.doc.Openings {
		o := openingBox(&s.doc.Openings[i])
		if !o.known() { // it could be the nearest
			return working.Counted("n", len(s.doc.Openings), at), working.Unknown("d_open", "mm", o.missing()...)
		}
		if i == 0 || apart(b, &o) < apart(b, &nearest) {
			nearest = o
		}
	}
	distance = working.Unknown("d_open", "mm", at)
	if len(s.doc.Openings) > 0 {
		distance = distanceOf("d_open", b, &nearest)
	}
	return working.Counted("n", len(s.doc.Openings), at), distance
}

// distanceOf is the straight distance between two boxes with its working.
func distanceOf(symbol string, a, b *box) working.Number {
	f := working.Lookup{Symbol: symbol, Unit: "mm", Text: "straight distance between the two rectangles", Source: working.ByDefinition}
	return f.Of(func(...float64) float64 { return apart(a, b) }, a.left, a.right, a.bottom, a.top, b.left, b.right, b.bottom, b.top)
}
