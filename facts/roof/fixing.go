package roof

import (
	"slices"

	"sunclause/facts/working"
	"sunclause/schema"
)

// Fixing holds the facts of one hook or other fixing to the building.
type Fixing struct {
	working.Subject
	FixingPlace
	TimberFixing

	Kind             working.Text   `json:"kind" words:"what it is: hook, hanger_bolt, sheet_bracket, …"`
	Rail             working.Text   `json:"rail" words:"rail it carries"`
	Covering         working.Text   `json:"covering" words:"kind of covering it passes over or through"`
	Certified        working.Flag   `json:"certificate_names_standard" words:"whether its certificate names the standard for mounting kits"`
	Material         working.Text   `json:"material" words:"what it is made of"`
	ScrewKind        working.Text   `json:"screw_sheet_kind" words:"what the datasheet of its screws is of"`
	ScrewMaterial    working.Text   `json:"screw_material" words:"what its screws are made of"`
	TributaryMm      working.Number `json:"tributary_mm" words:"length of rail that it carries"`
	UpliftKn         working.Number `json:"uplift_kn" words:"design load away from the roof"`
	UpliftResistKn   working.Number `json:"uplift_resistance_kn" words:"design resistance away from the roof"`
	DownKn           working.Number `json:"down_kn" words:"design load towards the roof"`
	DownResistKn     working.Number `json:"down_resistance_kn" words:"design resistance towards the roof"`
	AlongKn          working.Number `json:"along_kn" words:"design load down the slope"`
	AlongResistKn    working.Number `json:"along_resistance_kn" words:"design resistance down the slope"`
	OverTiles        working.Flag   `json:"over_tiles" words:"whether it passes over tiles or slates"`
	RestsOnTile      working.Flag   `json:"rests_on_tile" words:"whether it bears on the tile below"`
	MadeToRest       working.Flag   `json:"made_to_rest_on_tile" words:"whether its maker has it rest on the tile below"`
	ClearanceMm      working.Number `json:"tile_clearance_mm" words:"clearance over the tile below, unloaded"`
	ClearanceMinMm   working.Number `json:"tile_clearance_min_mm" words:"clearance over the tile that its maker asks for"`
	DeflectionMm     working.Number `json:"deflection_mm" words:"how far it bends towards the tile under the characteristic load"`
	ClearanceUnderMm working.Number `json:"tile_clearance_loaded_mm" words:"clearance over the tile below, under load"`
	TileNotched      working.Flag   `json:"tile_notched" words:"whether the tile above it was notched to fit"`
	TileLiesFlat     working.Flag   `json:"tile_lies_flat" words:"whether the tile above it lies as flat as before"`
	Weathering       working.Text   `json:"weathering" words:"what keeps water out where it goes through the covering"`
}

// The load on a fixing: of so much rail, or of its share of a module.
var (
	onLength       = working.NewFormula("F", "kN", "k_c · p · a / 1000", beams)
	onDirectFixing = working.NewFormula("F", "kN", "p · A / n_f", statics)
)

// The length of rail that a fixing carries: halfway to the fixings beside it, or to
// the end of the rail where there is none.
var (
	tributaryLength = working.NewFormula("a", "mm", "(x − x_a) / 2 + (x_b − x) / 2", statics)
	tributaryFirst  = working.NewFormula("a", "mm", "(x − x_a) + (x_b − x) / 2", statics)
	tributaryLast   = working.NewFormula("a", "mm", "(x − x_a) / 2 + (x_b − x)", statics)
	tributaryAlone  = working.NewFormula("a", "mm", "(x − x_a) + (x_b − x)", statics)
)

func (s *slope) fixingFacts() []Fixing {
	all := make([]Fixing, len(s.doc.Fixings))
	for i := range s.doc.Fixings {
		doc := &s.doc.Fixings[i]
		sheet, screw := doc.Datasheet.To(), doc.Screw.To()
		f := Fixing{
			Subject:        working.Subject{ID: doc.ID.Value, At: doc.At(), Name: "fixing " + doc.ID.Value},
			Kind:           working.StatedText(sheet.Kind),
			Material:       working.StatedText(sheet.Material),
			ScrewKind:      working.StatedText(screw.Kind),
			ScrewMaterial:  working.StatedText(screw.Material),
			Rail:           working.StatedText(doc.Rail.Text),
			Covering:       working.StatedText(s.doc.Covering.Kind),
			Certified:      s.certified(sheet),
			UpliftResistKn: s.resistance(&sheet.Load, sheet.Load.UpliftKn),
			DownResistKn:   s.resistance(&sheet.Load, sheet.Load.DownKn),
			AlongResistKn:  s.resistance(&sheet.Load, sheet.Load.AlongSlopeKn),
		}
		f.FixingPlace = s.fixingPlace(doc)
		others := s.loadOn(&f, i)
		s.overTile(&f, doc, &sheet.Hook, others.push)
		f.TimberFixing = s.timberFixingOf(doc, sheet, &screw.Screw, screwLoads{f.UpliftKn, f.AlongKn, others.slide})
		all[i] = f
	}
	return all
}

// otherLoads are loads on a fixing that are no facts of their own: the characteristic
// load towards the roof, by which it bends, and the load down the slope while the
// wind lifts.
type otherLoads struct{ push, slide working.Number }

// loadOn works out the loads on a fixing: of the length of rail from halfway to
// the fixing before to halfway to the one after, or to the end of the rail.
func (s *slope) loadOn(f *Fixing, i int) otherLoads {
	doc := &s.doc.Fixings[i]
	r := s.railOf(doc.Rail.Text)
	if r == nil {
		return s.loadWithoutRail(f, doc)
	}
	f.TributaryMm = s.tributary(r, i)
	line, missing := s.lineLoadAt(r, i)
	if missing = slices.Concat(missing, r.layers); len(missing) > 0 {
		return f.loadsUnknown(missing...)
	}
	kc := s.param("rail_continuity_factor", "k_c")
	on := func(symbol string, line working.Number) working.Number {
		return onLength.Of(kc, line.For("p"), f.TributaryMm).As(symbol)
	}
	f.UpliftKn = on("F_d", line)
	f.DownKn = on("F_down", lineLoad(s.areal.Down, r))
	f.AlongKn = on("F_along", lineLoad(s.areal.Along, r))
	return otherLoads{on("F_k", lineLoad(s.areal.Service, r)), on("F_slide", lineLoad(s.slide, r))}
}

// loadsUnknown leaves the loads unknown because the named members are missing.
func (f *Fixing) loadsUnknown(missing ...working.Gap) otherLoads {
	unknown := func(symbol string) working.Number { return working.Unknown(symbol, "kN", missing...) }
	f.UpliftKn, f.DownKn, f.AlongKn = unknown("F_d"), unknown("F_down"), unknown("F_along")
	return otherLoads{unknown("F_k"), unknown("F_slide")}
}

// loadWithoutRail works out the loads on a fixing that holds a module without a rail:
// its share of the module.
func (s *slope) loadWithoutRail(f *Fixing, doc *schema.Fixing) otherLoads {
	f.TributaryMm = working.Unknown("a", "mm", doc.Rail.At())
	m, ok := s.moduleByID[doc.Module.Value]
	if !ok {
		return f.loadsUnknown(working.Unstated(doc.Rail.At()))
	}
	n := s.directFixings[doc.Module.Value]
	of := func(symbol string, areal working.Number) working.Number {
		return onDirectFixing.Of(areal.For("p"), m.area, working.Counted("n_f", n, s.doc.Member("fixings"))).As(symbol)
	}
	f.UpliftKn, f.DownKn, f.AlongKn = of("F_d", m.uplift), of("F_down", s.areal.Down), of("F_along", s.areal.Along)
	return otherLoads{of("F_k", s.areal.Service), of("F_slide", s.slide)}
}

// tributary is the length of rail that a fixing carries.
func (s *slope) tributary(r *rail, i int) working.Number {
	before, after, first, last := s.neighbours(r, i)
	length := tributaryLength
	switch {
	case first && last:
		length = tributaryAlone
	case first:
		length = tributaryFirst
	case last:
		length = tributaryLast
	}
	return length.Of(s.fixingAt(r, i).As("x"), before.As("x_a"), after.As("x_b"))
}

// neighbours are the fixings before and after one on its rail, or the ends of
// the rail. One that stands beyond an end holds nothing of the rail; where an end
// is not known, nor is whether the next one holds.
func (s *slope) neighbours(r *rail, i int) (before, after working.Number, first, last bool) {
	before, after, first, last = r.from, r.to, true, true
	k := s.order[i]
	if n := min(k-1, r.held[1]); n >= r.held[0] && r.from.Known() {
		before, first = s.fixingAt(r, r.fixings[n]), false
	}
	if n := max(k+1, r.held[0]); n <= r.held[1] && r.to.Known() {
		after, last = s.fixingAt(r, r.fixings[n]), false
	}
	return before, after, first, last
}

// beyondEnd reports whether a fixing is known to stand beyond an end of its rail.
func (s *slope) beyondEnd(r *rail, i int) bool {
	x := s.fixingAt(r, i)
	return x.Known() && (r.from.Known() && x.Value() < r.from.Value() || r.to.Known() && x.Value() > r.to.Value())
}

// lineLoadAt is the greatest line load of the modules between the fixings beside one;
// where none lies there, that of the whole rail.
func (s *slope) lineLoadAt(r *rail, i int) (line working.Number, missing []working.Gap) {
	if len(r.unplaced) > 0 || len(r.modules) == 0 {
		return line, slices.Concat(r.unplaced, []working.Gap{working.Unstated(s.doc.Member("modules"))})
	}
	before, after, _, _ := s.neighbours(r, i)
	best := -1
	for k, j := range r.modules {
		from, to, _, _ := r.alongBounds(&s.bounds[j])
		beside := from >= after.Value() || before.Value() >= to
		if !beside && (best < 0 || !r.line[k].Known() || r.line[best].Known() && r.line[k].Value() > r.line[best].Value()) {
			best = k
		}
	}
	if best < 0 {
		return working.Greatest("w_d", "kN/m", r.line...), nil
	}
	return r.line[best], nil
}
